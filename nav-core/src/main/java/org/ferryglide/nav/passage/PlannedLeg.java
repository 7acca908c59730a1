package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.DeviationTable;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.magnetic.VariationReading;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.steer.SteeredLeg;
import org.jspecify.annotations.Nullable;

/**
 * One leg of a timed plan.
 *
 * <pre>{@code
 * PlannedLeg leg = plan.legs().get(0);
 * leg.course().threeDigits(); // as laid off
 * leg.heading().threeDigits(); // what to steer
 * leg.arrival(); // likely; leg.earliest() and leg.latest() hold it 95 times in a hundred
 * }</pre>
 */
public final class PlannedLeg implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Standard deviations to either side of the middle that leave 25 of a thousand beyond each. */
  static final double SPREADS = 1.96;

  private final PassageLeg leg;
  private final SteeredLeg steered;
  private final List<PlannedHour> hours;
  private final Covariance spread;
  private final double arrivalSpreadSeconds;
  private final @Nullable VariationReading variation;
  private final @Nullable DeviationTable deviation;
  private final @Nullable Sighting sighting;

  PlannedLeg(
      PassageLeg leg,
      SteeredLeg steered,
      List<PlannedHour> hours,
      Covariance spread,
      double arrivalSpreadSeconds,
      @Nullable VariationReading variation,
      @Nullable DeviationTable deviation,
      @Nullable Sighting sighting) {
    this.variation = variation;
    this.deviation = deviation;
    this.sighting = sighting;
    this.leg = leg;
    this.steered = steered;
    this.hours = hours;
    this.spread = spread;
    this.arrivalSpreadSeconds = arrivalSpreadSeconds;
  }

  /**
   * The leg of the passage.
   *
   * @return from where to where
   */
  public PassageLeg leg() {
    return leg;
  }

  /**
   * The leg as it is steered.
   *
   * @return headings, ground track, reserve
   */
  public SteeredLeg steered() {
    return steered;
  }

  /**
   * The leg hour by hour.
   *
   * @return at least one, none longer than an hour; unmodifiable
   */
  public List<PlannedHour> hours() {
    return hours;
  }

  /**
   * The course, as laid off.
   *
   * @return true course at the start
   */
  public TrueBearing course() {
    return leg.leg().initialCourse();
  }

  /**
   * The heading to set out on.
   *
   * @return true heading
   */
  public TrueBearing heading() {
    return steered.courseToSteer();
  }

  /**
   * The back bearing of the track: where the way point left behind lies while the party is on the
   * line.
   *
   * @return the reciprocal of the course at the end
   */
  public TrueBearing backBearing() {
    return leg.leg().finalCourse().reciprocal();
  }

  /**
   * The variation at the start of the leg, with its doubts.
   *
   * @return the reading; empty if the passage has no source of variation, or none in force
   */
  public Optional<VariationReading> variation() {
    return Optional.ofNullable(variation);
  }

  /**
   * A direction of this leg from magnetic north.
   *
   * @param direction a true direction, for example {@link #heading}
   * @return the magnetic bearing; empty if the passage has no source of variation
   */
  public Optional<MagneticBearing> magnetic(TrueBearing direction) {
    return variation().map(reading -> direction.toMagnetic(reading.variation()));
  }

  /**
   * A heading of this leg by the compass on deck.
   *
   * @param heading a true heading; bearings need the deviation of the heading they are taken on
   * @return what the compass shows; empty if the passage has no deviation table or no variation
   */
  public Optional<CompassBearing> compass(TrueBearing heading) {
    return deviation == null ? Optional.empty() : magnetic(heading).map(deviation::toCompass);
  }

  /**
   * The chance of sighting the mark at the end of the leg.
   *
   * @return the chance and the likely side; empty if there is no mark or no visibility was stated
   */
  public Optional<Sighting> sighting() {
    return Optional.ofNullable(sighting);
  }

  /**
   * When the leg begins.
   *
   * @return the departure from its first way point
   */
  public Instant departure() {
    return steered.departure();
  }

  /**
   * The likely arrival.
   *
   * @return when its end is reached if everything is as the tables have it
   */
  public Instant arrival() {
    return steered.arrival();
  }

  /**
   * The earliest arrival: earlier in fewer than 25 of a thousand passages, by the error model.
   *
   * @return the arrival less 1.96 standard deviations
   */
  public Instant earliest() {
    return arrival().minusMillis(Math.round(1000.0 * SPREADS * arrivalSpreadSeconds));
  }

  /**
   * The latest arrival: later in fewer than 25 of a thousand passages, by the error model. What the
   * model does not know, such as a party much slower than planned, is not in it.
   *
   * @return the arrival plus 1.96 standard deviations
   */
  public Instant latest() {
    return arrival().plusMillis(Math.round(1000.0 * SPREADS * arrivalSpreadSeconds));
  }

  /**
   * How long it takes.
   *
   * @return likely arrival less departure
   */
  public Duration duration() {
    return Duration.between(departure(), arrival());
  }

  /**
   * The least reserve of its hours.
   *
   * @return the speed to spare as in {@link PlannedHour#reserve}; empty if it is not known for some
   *     hour, or the leg has no length
   */
  public Optional<Speed> reserve() {
    Speed least = null;
    for (PlannedHour hour : hours) {
      Speed spare = hour.reserve().orElse(null);
      if (spare == null) {
        return Optional.empty();
      }
      least = least == null || spare.compareTo(least) < 0 ? spare : least;
    }
    return Optional.ofNullable(least);
  }

  /**
   * The speed made good along the leg.
   *
   * @return its length over the time it takes
   */
  public Speed speedMadeGood() {
    return steered.speedMadeGood();
  }

  /**
   * The greatest cross-track distance, with its side.
   *
   * @return to the right positive
   */
  public Distance greatestCrossTrack() {
    return steered.greatestCrossTrack();
  }

  /**
   * How uncertain the position is at the end of the leg.
   *
   * @return the covariance of the position since the last stop ashore
   */
  public Covariance spread() {
    return spread;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PlannedLeg that && leg.equals(that.leg) && steered.equals(that.steered);
  }

  @Override
  public int hashCode() {
    return 31 * leg.hashCode() + steered.hashCode();
  }

  @Override
  public String toString() {
    return leg + ", " + heading().threeDigits() + ", " + departure() + " to " + arrival();
  }
}
