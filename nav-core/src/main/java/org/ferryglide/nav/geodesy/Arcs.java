package org.ferryglide.nav.geodesy;

/**
 * Sines and arctangents by polynomials, where the angle is known to be small or the branches of a
 * general function would cost more than its arithmetic. Radians unless it says degrees.
 */
@SuppressWarnings("FloatingPointLiteralPrecision") // digits of the exact coefficients
final class Arcs {
  /** The tangent of 22.5°, up to which {@link #arctangent} is a polynomial. */
  private static final double GREATEST_TANGENT = Math.sqrt(2.0) - 1.0;

  private Arcs() {}

  /** The sine of an angle of at most 0.2, within two units in the last place. */
  static double sine(double x) {
    double z = x * x;
    double high = 1.0 / 5040.0 - z * (1.0 / 362880.0 - z * (1.0 / 39916800.0));
    return x - x * z * (1.0 / 6.0 - z * (1.0 / 120.0 - z * high));
  }

  /**
   * An angle over its sine, by the square of the sine: the series of the arcsine. Relative error
   * below 1e-16 for squares up to 0.007, an angle of 5°.
   */
  static double overSine(double z) {
    double high = 105.0 / 3456.0 + z * (945.0 / 42240.0 + z * (10395.0 / 599040.0));
    return 1.0 + z * (1.0 / 6.0 + z * (3.0 / 40.0 + z * (15.0 / 336.0 + z * high)));
  }

  /**
   * The inverse hyperbolic sine over its argument, by the square of the argument: relative error
   * below 1e-17 for squares up to 0.01.
   */
  static double hyperbolicOverSine(double z) {
    double high = 35.0 / 1152.0 - z * (63.0 / 2816.0 - z * (231.0 / 13312.0 - z * 143.0 / 10240.0));
    return 1.0 - z * (1.0 / 6.0 - z * (3.0 / 40.0 - z * (5.0 / 112.0 - z * high)));
  }

  /**
   * The arctangent: up to {@link #GREATEST_TANGENT} a polynomial that interpolates it, within
   * 1.3e-18 of it.
   */
  static double arctangent(double tangent) {
    if (!(Math.abs(tangent) <= GREATEST_TANGENT)) {
      return Math.atan(tangent);
    }
    double x = tangent * tangent;
    double high =
        0.05846873503411509
            + x * (-0.05035080589113427 + x * (0.03796469507021349 - x * 0.01780477396050943));
    double middle =
        0.11111110744810647
            + x
                * (-0.09090896805912162
                    + x * (0.07692045274291998 + x * (-0.06662951162727927 + x * high)));
    double low = -0.14285714279248055 + x * middle;
    return tangent + tangent * x * (-0.3333333333333312 + x * (0.19999999999940868 + x * low));
  }

  /**
   * The course whose sine and cosine are in proportion to two numbers, degrees in [0, 360), exact
   * along the axes; NaN if both are 0. By the arctangent of half the angle to the nearer axis, and
   * signs in the place of branches, which a course at random would mislead.
   */
  static double courseDegrees(double east, double north) {
    double x = Math.abs(east);
    double y = Math.abs(north);
    double lesser = Math.min(x, y);
    double greater = Math.max(x, y);
    double tangent = lesser / (greater + Math.sqrt(lesser * lesser + greater * greater));
    double degrees = Degrees.fromRadians(2.0 * arctangent(tangent));
    degrees = 45.0 + Math.copySign(1.0, y - x) * (degrees - 45.0);
    degrees = 90.0 + Math.copySign(1.0, north) * (degrees - 90.0);
    degrees = 180.0 + Math.copySign(1.0, east) * (degrees - 180.0);
    return degrees >= 360.0 ? 0.0 : degrees;
  }
}
