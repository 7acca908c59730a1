package org.ferryglide.nav.bearing;

/**
 * A direction clockwise from some north; the subtype says which.
 *
 * <p>Two bearings from different norths cannot be compared or mixed; cross by {@link Variation},
 * {@link Deviation} or {@link GridConvergence} first.
 *
 * <pre>{@code
 * Bearing bearing = TrueBearing.ofDegrees(7);
 * bearing.threeDigits(); // 007°
 * bearing.nearestPoint(16).pointName(); // north
 * }</pre>
 */
public sealed interface Bearing permits TrueBearing, MagneticBearing, GridBearing, CompassBearing {

  /**
   * The angle from this bearing's north.
   *
   * @return degrees clockwise, in [0, 360)
   */
  double degrees();

  /**
   * The opposite direction from the same north: 180° away.
   *
   * @return the reciprocal bearing, of the same type
   */
  Bearing reciprocal();

  /**
   * The bearing as it is spoken and written on a chart: three digits, whole degrees.
   *
   * @return for example {@code 007°}; rounded to the nearest degree, halves upward, and 359.5 and
   *     above gives {@code 000°}
   */
  default String threeDigits() {
    long whole = (long) Math.floor(degrees() + 0.5) % 360;
    return (whole < 10 ? "00" : whole < 100 ? "0" : "") + whole + "°";
  }

  /**
   * The nearest of the named compass points, so that a bearing the wrong way round is noticed by
   * ear.
   *
   * @param pointsInCircle how many points to choose among: 4, 8, 16 or 32
   * @return the nearest point; halfway between two, the one further clockwise
   * @throws IllegalArgumentException if {@code pointsInCircle} is not 4, 8, 16 or 32
   */
  default CompassPoint nearestPoint(int pointsInCircle) {
    return CompassPoint.nearest(degrees(), pointsInCircle);
  }
}
