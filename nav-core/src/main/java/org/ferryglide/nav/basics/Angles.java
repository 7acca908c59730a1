package org.ferryglide.nav.basics;

/**
 * Arithmetic of directions on plain doubles, in degrees.
 *
 * <pre>{@code
 * double course = Angles.reduced(-10.0); // 350.0
 * double turn = Angles.turn(350.0, 10.0); // 20.0, to starboard
 * }</pre>
 *
 * <p>NaN in gives NaN out; nothing is allocated.
 */
public final class Angles {
  private Angles() {}

  /**
   * The same direction in [0, 360).
   *
   * @param degrees any angle, degrees; NaN and infinities give NaN
   * @return the angle reduced to [0, 360), degrees; a negative angle too small to matter gives 0.0,
   *     never 360 and never -0.0. Exact for angles from 0 up; below 0 one rounding of the sum
   */
  public static double reduced(double degrees) {
    if (degrees >= 0.0 && degrees < 360.0) { // most are, and a remainder costs more
      return degrees + 0.0;
    }
    boolean isNear = degrees >= -360.0 && degrees < 720.0;
    double reduced = isNear ? (degrees < 0.0 ? degrees : degrees - 360.0) : degrees % 360.0;
    if (reduced < 0.0) {
      reduced += 360.0;
    }
    return reduced >= 360.0 ? 0.0 : reduced + 0.0;
  }

  /**
   * The turn that leads from one direction to another the short way round.
   *
   * @param fromDegrees direction before the turn, degrees, any finite angle; NaN gives NaN
   * @param toDegrees direction after the turn, degrees, any finite angle; NaN gives NaN
   * @return the turn in (-180, 180], degrees, clockwise (to starboard) positive; exactly opposite
   *     directions give +180
   */
  public static double turn(double fromDegrees, double toDegrees) {
    double difference = toDegrees - fromDegrees;
    if (Double.isInfinite(difference)) { // of finite angles: both beyond any use, but no NaN
      difference = toDegrees % 360.0 - fromDegrees % 360.0;
    }
    double turn = shortWay(difference);
    return turn == -180.0 ? 180.0 : turn + 0.0;
  }

  /**
   * A difference of longitude the short way round.
   *
   * @param degrees any difference of longitudes, degrees; NaN gives NaN
   * @return the same difference in [-180, 180], degrees; ±180 keeps the sign it comes with
   */
  public static double shortWay(double degrees) {
    return Math.abs(degrees) <= 180.0 // most are, and a remainder costs more
        ? degrees
        : Math.IEEEremainder(degrees, 360.0);
  }
}
