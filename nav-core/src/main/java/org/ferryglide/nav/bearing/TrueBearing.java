package org.ferryglide.nav.bearing;

import java.io.Serializable;
import org.ferryglide.nav.basics.Angles;

/**
 * A direction measured clockwise from true north.
 *
 * <pre>{@code
 * TrueBearing course = TrueBearing.ofDegrees(45);
 * TrueBearing home = course.reciprocal(); // 225°
 * MagneticBearing onDeck = course.toMagnetic(Variation.ofDegreesWest(4)); // 049°
 * }</pre>
 *
 * @param degrees angle from true north, degrees, in [0, 360)
 */
public record TrueBearing(double degrees) implements Bearing, Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes a bearing that is already in range; {@link #ofDegrees} accepts any angle.
   *
   * @param degrees angle from true north, degrees, in [0, 360); -0.0 becomes 0.0
   * @throws IllegalArgumentException if {@code degrees} is NaN or outside [0, 360)
   */
  public TrueBearing {
    degrees = BearingText.inCircle(degrees);
  }

  /**
   * Makes a bearing from any finite angle.
   *
   * @param degrees angle from true north, degrees, any finite value
   * @return the bearing reduced to [0, 360)
   * @throws IllegalArgumentException if {@code degrees} is NaN or infinite
   */
  public static TrueBearing ofDegrees(double degrees) {
    return new TrueBearing(BearingText.reducedFinite(degrees));
  }

  /**
   * Reads what {@link #toString} writes, and what a chart worker writes: {@code 045}, {@code 045°},
   * {@code 45.5°T}, {@code 045°30'T}.
   *
   * @param text degrees in [0, 360], then optionally the degree mark, minutes with theirs, and the
   *     letter T
   * @return the bearing; 360 is read as 0
   * @throws org.ferryglide.nav.note.TextFormatException if the text is anything else, another
   *     north's letter included
   */
  public static TrueBearing parse(String text) {
    return ofDegrees(BearingText.parse(text, 'T'));
  }

  @Override
  public TrueBearing reciprocal() {
    return ofDegrees(degrees + 180.0);
  }

  /**
   * The bearing after a turn.
   *
   * @param turnDegrees the turn, degrees, clockwise positive, any finite value
   * @return the bearing reduced to [0, 360)
   * @throws IllegalArgumentException if {@code turnDegrees} is NaN or infinite
   */
  public TrueBearing turnedBy(double turnDegrees) {
    return ofDegrees(degrees + turnDegrees);
  }

  /**
   * The turn the short way round to another bearing.
   *
   * @param other the bearing after the turn
   * @return the turn in (-180, 180], degrees, clockwise (to starboard) positive
   */
  public double turnDegreesTo(TrueBearing other) {
    return Angles.turn(degrees, other.degrees);
  }

  /**
   * This direction from magnetic north. West variation makes it larger: "west, magnetic is best".
   *
   * @param variation the variation at the place and date
   * @return true bearing less easterly variation
   */
  public MagneticBearing toMagnetic(Variation variation) {
    return variation.toMagnetic(this);
  }

  /**
   * This direction from the north of a map grid.
   *
   * @param convergence the convergence of that grid at the place
   * @return true bearing less convergence, carrying the grid's name
   */
  public GridBearing toGrid(GridConvergence convergence) {
    return convergence.toGrid(this);
  }

  /** The angle, the degree mark and the letter of its north, without loss: {@code 45.0°T}. */
  @Override
  public String toString() {
    return degrees + "°T";
  }
}
