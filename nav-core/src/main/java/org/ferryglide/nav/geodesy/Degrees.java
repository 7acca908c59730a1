package org.ferryglide.nav.geodesy;

/** Angles in degrees where the last figures matter. */
final class Degrees {
  private static final double RADIANS_IN_DEGREE = Math.PI / 180.0;
  private static final double DEGREES_IN_RADIAN = 180.0 / Math.PI;

  /** Beyond this a longitude is brought into range first, lest its rounding reach the answer. */
  private static final double MANY_TURNS = 3600.0;

  private Degrees() {}

  static double toRadians(double degrees) {
    return degrees * RADIANS_IN_DEGREE;
  }

  static double fromRadians(double radians) {
    return radians * DEGREES_IN_RADIAN;
  }

  /** The same direction in [0, 360). */
  static double reduced(double degrees) {
    if (degrees >= 0.0 && degrees < 360.0) { // most are, and a remainder costs more
      return degrees + 0.0;
    }
    return org.ferryglide.nav.basics.Angles.reduced(degrees);
  }

  /** A longitude in [-180, 180). */
  static double longitude(double degrees) {
    if (degrees >= -180.0 && degrees < 180.0) {
      return degrees + 0.0;
    }
    double reduced = Math.IEEEremainder(degrees, 360.0);
    return reduced == 180.0 ? -180.0 : reduced + 0.0;
  }

  /**
   * The difference of longitude the short way, with one rounding at most, in [-180, 180]; exactly
   * opposite meridians give +180.
   */
  static double longitudeDifference(double lon1, double lon2) {
    return Math.abs(lon1) <= MANY_TURNS && Math.abs(lon2) <= MANY_TURNS
        ? shortWay(lon1, lon2)
        : shortWay(longitude(lon1), longitude(lon2));
  }

  private static double shortWay(double lon1, double lon2) {
    double difference = lon2 - lon1;
    // What the subtraction lost, exactly (Knuth's two-sum); it matters once 360 is taken off.
    double part = difference - lon2;
    double lost = (lon2 - (difference - part)) - (lon1 + part);
    if (Math.abs(difference) > 180.0) {
      difference = Math.IEEEremainder(difference, 360.0);
    }
    difference += lost;
    return difference <= -180.0 ? difference + 360.0 : difference;
  }

  /** Sine of an angle in degrees, exact at multiples of 90. */
  static double sine(double degrees) {
    double quarter = Math.rint(degrees / 90.0);
    double rest = toRadians(degrees - 90.0 * quarter);
    return switch ((int) (quarter - 4.0 * Math.floor(quarter / 4.0))) {
      case 0 -> Math.sin(rest);
      case 1 -> Math.cos(rest);
      case 2 -> -Math.sin(rest) + 0.0;
      default -> -Math.cos(rest);
    };
  }

  /** Cosine of an angle in degrees, exact at multiples of 90. */
  static double cosine(double degrees) {
    double quarter = Math.rint(degrees / 90.0);
    double rest = toRadians(degrees - 90.0 * quarter);
    return switch ((int) (quarter - 4.0 * Math.floor(quarter / 4.0))) {
      case 0 -> Math.cos(rest);
      case 1 -> -Math.sin(rest) + 0.0;
      case 2 -> -Math.cos(rest);
      default -> Math.sin(rest) + 0.0;
    };
  }
}
