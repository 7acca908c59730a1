package org.ferryglide.nav.grid;

/**
 * Inverse functions that are almost always asked for small values, where a few terms beat a call
 * into the mathematics library; radians. Larger values go to the library.
 */
final class SmallAngles {
  /** To here eight terms of the arctangent's series reach the last place: 0.1¹⁶ / 17 = 6e-18. */
  private static final double EIGHT_TERMS = 0.1;

  /** To here four terms of the arcsine's series reach 2e-17: the next is 35/1152 · 0.02⁹. */
  private static final double FOUR_TERMS = 0.02;

  private static final double SIXTH = 1.0 / 6.0;

  private SmallAngles() {}

  /** Angle of the point (x, y) from the x axis, in [-π, π]. */
  static double angle(double y, double x) {
    if (Math.abs(y) <= EIGHT_TERMS * x) {
      double t = y / x;
      return oddReciprocals(t, -(t * t));
    }
    return Math.atan2(y, x);
  }

  /**
   * Inverse hyperbolic tangent.
   *
   * @param u the value, in [-1, 1]
   * @param root the square root of 1 - u², which callers have by a more exact way
   */
  static double inverseHyperbolicTangent(double u, double root) {
    if (Math.abs(u) <= EIGHT_TERMS) {
      return oddReciprocals(u, u * u);
    }
    return Math.copySign(Math.log((1.0 + Math.abs(u)) / root), u);
  }

  /** Whether {@link #arcsine} may be used. */
  static boolean isSmall(double sine) {
    return Math.abs(sine) <= FOUR_TERMS;
  }

  /** Arcsine of a value for which {@link #isSmall} holds. */
  static double arcsine(double s) {
    double s2 = s * s;
    return s + s * s2 * (SIXTH + s2 * (3.0 / 40.0 + s2 * (15.0 / 336.0)));
  }

  /** Hyperbolic sine. */
  static double hyperbolicSine(double x) {
    if (Math.abs(x) <= 2.0 * EIGHT_TERMS) { // six terms: the next is 0.2¹² / 13! = 7e-19 of the sum
      double s = x * x;
      double high = 1.0 / 5040.0 + s * (1.0 / 362880.0 + s * (1.0 / 39916800.0));
      return x + x * s * (SIXTH + s * (1.0 / 120.0 + s * high));
    }
    double e = Math.exp(x);
    return 0.5 * (e - 1.0 / e);
  }

  /**
   * Sine over angle.
   *
   * @param angle2 square of the angle, at most 0.02²: the next term is 0.02⁸ / 362880 = 7e-20
   */
  static double sineOverAngle(double angle2) {
    return 1.0 - angle2 * (SIXTH - angle2 * (1.0 / 120.0 - angle2 * (1.0 / 5040.0)));
  }

  /**
   * Cosine.
   *
   * @param angle2 square of the angle, at most 0.02²: the next term is 0.02⁸ / 40320 = 6e-19
   */
  static double cosine(double angle2) {
    return 1.0 - angle2 * (0.5 - angle2 * (1.0 / 24.0 - angle2 * (1.0 / 720.0)));
  }

  /** t + t·s/3 + t·s²/5 + …: arctangent for s = -t², inverse hyperbolic tangent for s = t². */
  private static double oddReciprocals(double t, double s) {
    double high = 1.0 / 9.0 + s * (1.0 / 11.0 + s * (1.0 / 13.0 + s * (1.0 / 15.0)));
    return t + t * s * (1.0 / 3.0 + s * (1.0 / 5.0 + s * (1.0 / 7.0 + s * high)));
  }
}
