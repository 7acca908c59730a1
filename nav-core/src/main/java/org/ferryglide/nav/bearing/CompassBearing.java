package org.ferryglide.nav.bearing;

import java.io.Serializable;
import org.ferryglide.nav.basics.Angles;

/**
 * A direction measured clockwise from the north of one compass on one heading.
 *
 * <pre>{@code
 * MagneticBearing m = CompassBearing.ofDegrees(67).toMagnetic(Deviation.ofDegreesEast(3)); // 070°
 * }</pre>
 *
 * @param degrees angle from the north of one compass on one heading, degrees, in [0, 360)
 */
public record CompassBearing(double degrees) implements Bearing, Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes a bearing that is already in range; {@link #ofDegrees} accepts any angle.
   *
   * @param degrees angle from the north of one compass on one heading, degrees, in [0, 360); -0.0
   *     becomes 0.0
   * @throws IllegalArgumentException if {@code degrees} is NaN or outside [0, 360)
   */
  public CompassBearing {
    degrees = BearingText.inCircle(degrees);
  }

  /**
   * Makes a bearing from any finite angle.
   *
   * @param degrees angle from the north of one compass on one heading, degrees, any finite value
   * @return the bearing reduced to [0, 360)
   * @throws IllegalArgumentException if {@code degrees} is NaN or infinite
   */
  public static CompassBearing ofDegrees(double degrees) {
    return new CompassBearing(BearingText.reducedFinite(degrees));
  }

  /**
   * Reads what {@link #toString} writes, and what a chart worker writes: {@code 045}, {@code 045°},
   * {@code 45.5°C}, {@code 045°30'C}.
   *
   * @param text degrees in [0, 360], then optionally the degree mark, minutes with theirs, and the
   *     letter C
   * @return the bearing; 360 is read as 0
   * @throws org.ferryglide.nav.note.TextFormatException if the text is anything else, another
   *     north's letter included
   */
  public static CompassBearing parse(String text) {
    return ofDegrees(BearingText.parse(text, 'C'));
  }

  @Override
  public CompassBearing reciprocal() {
    return ofDegrees(degrees + 180.0);
  }

  /**
   * The bearing after a turn.
   *
   * @param turnDegrees the turn, degrees, clockwise positive, any finite value
   * @return the bearing reduced to [0, 360)
   * @throws IllegalArgumentException if {@code turnDegrees} is NaN or infinite
   */
  public CompassBearing turnedBy(double turnDegrees) {
    return ofDegrees(degrees + turnDegrees);
  }

  /**
   * The turn the short way round to another bearing.
   *
   * @param other the bearing after the turn
   * @return the turn in (-180, 180], degrees, clockwise (to starboard) positive
   */
  public double turnDegreesTo(CompassBearing other) {
    return Angles.turn(degrees, other.degrees);
  }

  /**
   * This direction from magnetic north.
   *
   * @param deviation the deviation of the compass on the heading in question
   * @return compass bearing plus easterly deviation
   */
  public MagneticBearing toMagnetic(Deviation deviation) {
    return deviation.toMagnetic(this);
  }

  /** The angle, the degree mark and the letter of its north, without loss: {@code 45.0°C}. */
  @Override
  public String toString() {
    return degrees + "°C";
  }
}
