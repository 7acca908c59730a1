package org.ferryglide.nav.bearing;

import java.io.Serializable;
import org.ferryglide.nav.basics.Angles;

/**
 * A direction measured clockwise from magnetic north.
 *
 * <pre>{@code
 * TrueBearing onChart = MagneticBearing.ofDegrees(49).toTrue(Variation.ofDegreesWest(4)); // 045°
 * }</pre>
 *
 * @param degrees angle from magnetic north, degrees, in [0, 360)
 */
public record MagneticBearing(double degrees) implements Bearing, Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes a bearing that is already in range; {@link #ofDegrees} accepts any angle.
   *
   * @param degrees angle from magnetic north, degrees, in [0, 360); -0.0 becomes 0.0
   * @throws IllegalArgumentException if {@code degrees} is NaN or outside [0, 360)
   */
  public MagneticBearing {
    degrees = BearingText.inCircle(degrees);
  }

  /**
   * Makes a bearing from any finite angle.
   *
   * @param degrees angle from magnetic north, degrees, any finite value
   * @return the bearing reduced to [0, 360)
   * @throws IllegalArgumentException if {@code degrees} is NaN or infinite
   */
  public static MagneticBearing ofDegrees(double degrees) {
    return new MagneticBearing(BearingText.reducedFinite(degrees));
  }

  /**
   * Reads what {@link #toString} writes, and what a chart worker writes: {@code 045}, {@code 045°},
   * {@code 45.5°M}, {@code 045°30'M}.
   *
   * @param text degrees in [0, 360], then optionally the degree mark, minutes with theirs, and the
   *     letter M
   * @return the bearing; 360 is read as 0
   * @throws org.ferryglide.nav.note.TextFormatException if the text is anything else, another
   *     north's letter included
   */
  public static MagneticBearing parse(String text) {
    return ofDegrees(BearingText.parse(text, 'M'));
  }

  @Override
  public MagneticBearing reciprocal() {
    return ofDegrees(degrees + 180.0);
  }

  /**
   * The bearing after a turn.
   *
   * @param turnDegrees the turn, degrees, clockwise positive, any finite value
   * @return the bearing reduced to [0, 360)
   * @throws IllegalArgumentException if {@code turnDegrees} is NaN or infinite
   */
  public MagneticBearing turnedBy(double turnDegrees) {
    return ofDegrees(degrees + turnDegrees);
  }

  /**
   * The turn the short way round to another bearing.
   *
   * @param other the bearing after the turn
   * @return the turn in (-180, 180], degrees, clockwise (to starboard) positive
   */
  public double turnDegreesTo(MagneticBearing other) {
    return Angles.turn(degrees, other.degrees);
  }

  /**
   * This direction from true north.
   *
   * @param variation the variation at the place and date
   * @return magnetic bearing plus easterly variation
   */
  public TrueBearing toTrue(Variation variation) {
    return variation.toTrue(this);
  }

  /**
   * This direction as a compass with the given deviation shows it.
   *
   * @param deviation the deviation of that compass on the heading in question
   * @return magnetic bearing less easterly deviation
   */
  public CompassBearing toCompass(Deviation deviation) {
    return deviation.toCompass(this);
  }

  /** The angle, the degree mark and the letter of its north, without loss: {@code 45.0°M}. */
  @Override
  public String toString() {
    return degrees + "°M";
  }
}
