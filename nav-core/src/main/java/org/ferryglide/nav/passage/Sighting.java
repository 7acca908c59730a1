package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.landfall.Offset;
import org.ferryglide.nav.landfall.Side;
import org.ferryglide.nav.measure.Distance;
import org.jspecify.annotations.Nullable;

/**
 * The chance of sighting the mark at the end of a leg, and where it lies if it is missed.
 *
 * <pre>{@code
 * Sighting sighting = leg.sighting().get();
 * sighting.chance(); // 0.86, going on until it must be abeam
 * sighting.sideIfMissed(); // empty: as likely to the left as to the right
 * }</pre>
 *
 * <p>Aimed straight at a mark, a party misses it to either side alike. {@link TimedPlan#aimingOff}
 * lays a leg off to one side, so that a side and a turn can be given.
 */
public final class Sighting implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Below this share of the misses no side is given: aim off instead. */
  public static final double SURE_SIDE = 0.9;

  private final double chance;
  private final Distance reach;
  private final double missedToLeft;
  private final double missedToRight;
  private final @Nullable String whyUnsure;
  private final TrueBearing course;
  private final Offset aimedOff;

  Sighting(
      double chance,
      Distance reach,
      double missedToLeft,
      double missedToRight,
      @Nullable String whyUnsure,
      TrueBearing course,
      Offset aimedOff) {
    this.course = course;
    this.aimedOff = aimedOff;
    this.chance = chance;
    this.reach = reach;
    this.missedToLeft = missedToLeft;
    this.missedToRight = missedToRight;
    this.whyUnsure = whyUnsure;
  }

  /**
   * The chance of passing within sight of the mark, going on until it must be abeam.
   *
   * @return a chance in [0, 1]; 0 for a mark that is covered then, or may be
   */
  public double chance() {
    return chance;
  }

  /**
   * How far off the mark is seen: the stated visibility, or less where the horizon hides it from a
   * seated eye, by the least that stands above the water from the earliest to the latest arrival.
   *
   * @return the distance; zero for a mark that is covered
   */
  public Distance reach() {
    return reach;
  }

  /**
   * The chance of missing it with the mark to one side.
   *
   * @param side where the mark then lies, as the party travels
   * @return a chance in [0, 1]
   */
  public double missedTo(Side side) {
    return side == Side.LEFT ? missedToLeft : missedToRight;
  }

  /**
   * On which side the mark lies if it is missed.
   *
   * @return the side if at least nine misses in ten are to it; empty if not: aim off
   */
  public Optional<Side> sideIfMissed() {
    double missed = missedToLeft + missedToRight;
    if (missed > 0.0 && missedToLeft >= SURE_SIDE * missed) {
      return Optional.of(Side.LEFT);
    }
    return missed > 0.0 && missedToRight >= SURE_SIDE * missed
        ? Optional.of(Side.RIGHT)
        : Optional.empty();
  }

  /**
   * Where to turn if it is missed, going on until it must be abeam.
   *
   * @return true direction square to the course, to the side of {@link #sideIfMissed}; empty if no
   *     side is sure
   */
  public Optional<TrueBearing> turnIfMissed() {
    return sideIfMissed().map(side -> course.turnedBy(side == Side.LEFT ? -90.0 : 90.0));
  }

  /**
   * How far to which side of the mark one aims.
   *
   * @return the offset across the course; {@link Offset#NONE} for straight at it
   */
  public Offset aimedOff() {
    return aimedOff;
  }

  /**
   * Why the chance cannot be counted on.
   *
   * @return for example {@code the mark is covered then}; empty if the chance counts
   */
  public Optional<String> whyUnsure() {
    return Optional.ofNullable(whyUnsure);
  }

  @Override
  public String toString() {
    return "sighted with a chance of " + Math.floor(chance * 100.0) / 100.0 + " within " + reach;
  }
}
