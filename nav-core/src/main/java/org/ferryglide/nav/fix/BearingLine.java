package org.ferryglide.nav.fix;

import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/**
 * The line on which a mark bears as observed.
 *
 * <p>A bearing taken with a compass keeps the variation it was corrected with, so that {@link
 * BlunderSearch} can ask whether it was applied the wrong way.
 *
 * <pre>{@code
 * BearingLine headland =
 *     BearingLine.ofMagnetic("headland", position, MagneticBearing.ofDegrees(65), variation, 3.0);
 * headland.bearing(); // true
 * }</pre>
 */
public final class BearingLine implements PositionLine {

  private static final long serialVersionUID = 1L;

  private final String name;
  private final Position mark;
  private final TrueBearing bearing;
  private final double standardDeviationDegrees;
  private final @Nullable Variation variation;

  private BearingLine(
      String name,
      Position mark,
      TrueBearing bearing,
      @Nullable Variation variation,
      double standardDeviationDegrees) {
    this.name = Objects.requireNonNull(name, "name");
    this.mark = Objects.requireNonNull(mark, "mark");
    this.bearing = Objects.requireNonNull(bearing, "bearing");
    this.variation = variation;
    this.standardDeviationDegrees =
        Arguments.positive(standardDeviationDegrees, "standard deviation", "degrees");
  }

  /**
   * A true bearing of a mark.
   *
   * @param name what the mark is called
   * @param mark where the mark is
   * @param bearing the direction from the observer to the mark
   * @param standardDeviationDegrees how uncertain the bearing is, one standard deviation, degrees,
   *     above 0; a single bearing by hand from a moving kayak about 5, the mean of several 2 to 3
   *     (common practice, no source)
   * @return the position line
   * @throws IllegalArgumentException if the standard deviation is not a finite number above 0
   */
  public static BearingLine of(
      String name, Position mark, TrueBearing bearing, double standardDeviationDegrees) {
    return new BearingLine(name, mark, bearing, null, standardDeviationDegrees);
  }

  /**
   * A magnetic bearing of a mark.
   *
   * @param name what the mark is called
   * @param mark where the mark is
   * @param bearing the direction from the observer to the mark
   * @param variation the variation at the place and date
   * @param standardDeviationDegrees one standard deviation, degrees, above 0
   * @return the position line
   * @throws IllegalArgumentException if the standard deviation is not a finite number above 0
   */
  public static BearingLine ofMagnetic(
      String name,
      Position mark,
      MagneticBearing bearing,
      Variation variation,
      double standardDeviationDegrees) {
    return new BearingLine(
        name, mark, variation.toTrue(bearing), variation, standardDeviationDegrees);
  }

  /**
   * A compass bearing of a mark.
   *
   * @param name what the mark is called
   * @param mark where the mark is
   * @param bearing the direction from the observer to the mark as the compass showed it
   * @param deviation the deviation of that compass on the heading held at the time
   * @param variation the variation at the place and date
   * @param standardDeviationDegrees one standard deviation, degrees, above 0
   * @return the position line
   * @throws IllegalArgumentException if the standard deviation is not a finite number above 0
   */
  public static BearingLine ofCompass(
      String name,
      Position mark,
      CompassBearing bearing,
      Deviation deviation,
      Variation variation,
      double standardDeviationDegrees) {
    return ofMagnetic(
        name, mark, deviation.toMagnetic(bearing), variation, standardDeviationDegrees);
  }

  @Override
  public String name() {
    return name;
  }

  /**
   * Where the mark is.
   *
   * @return its position
   */
  public Position mark() {
    return mark;
  }

  /**
   * The direction from the observer to the mark.
   *
   * @return the true bearing
   */
  public TrueBearing bearing() {
    return bearing;
  }

  /**
   * The variation the bearing was corrected with.
   *
   * @return the variation; empty if a true bearing was given
   */
  public Optional<Variation> variation() {
    return Optional.ofNullable(variation);
  }

  /**
   * How uncertain the bearing is.
   *
   * @return one standard deviation, degrees
   */
  public double standardDeviationDegrees() {
    return standardDeviationDegrees;
  }

  /**
   * The same bearing of another mark.
   *
   * @param otherName what the other mark is called
   * @param otherMark where it is
   * @return a line with everything else the same
   */
  public BearingLine toMark(String otherName, Position otherMark) {
    return new BearingLine(otherName, otherMark, bearing, variation, standardDeviationDegrees);
  }

  /**
   * The same observation read differently by some degrees.
   *
   * @param degrees the turn, clockwise positive
   * @return a line with everything else the same
   */
  public BearingLine turnedBy(double degrees) {
    return new BearingLine(
        name, mark, bearing.turnedBy(degrees), variation, standardDeviationDegrees);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BearingLine that
        && name.equals(that.name)
        && mark.equals(that.mark)
        && bearing.equals(that.bearing)
        && Objects.equals(variation, that.variation)
        && standardDeviationDegrees == that.standardDeviationDegrees;
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, mark, bearing, variation, standardDeviationDegrees);
  }

  @Override
  public String toString() {
    return name + " bears " + bearing + " ± " + standardDeviationDegrees + "°";
  }

  @Override
  public <R> R match(Kinds<R> kinds) {
    return kinds.bearing(this);
  }
}
