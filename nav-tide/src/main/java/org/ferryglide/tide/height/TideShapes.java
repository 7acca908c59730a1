package org.ferryglide.tide.height;

import java.util.function.DoubleUnaryOperator;

/**
 * How far the tide has come between one water and the next, as a fraction of the rise or fall,
 * against the fraction of the time between them.
 *
 * <pre>{@code
 * double height = lowWater + (highWater - lowWater) * TideShapes.twelfths(0.5); // half tide
 * }</pre>
 *
 * <p>Every shape runs from 0 at 0 to 1 at 1 and never turns back. All methods are allocation-free
 * and let NaN through.
 */
final class TideShapes {

  /**
   * The farthest that the rule of twelfths, joined by straight lines, lies from the cosine, as a
   * fraction of the rise or fall, rounded up: at 0.619 and 5.381 sixths. Derived: in the first
   * sixth |(1 − cos πx)/2 − x/2| is greatest where sin πx = 1/π.
   */
  public static final double TWELFTHS_FROM_COSINE = 0.02556;

  /** Twelfths passed at the ends of the sixths. */
  private static final double[] PASSED = {
    0.0, 1.0 / 12.0, 3.0 / 12.0, 6.0 / 12.0, 9.0 / 12.0, 11.0 / 12.0, 1.0
  };

  /** Steps in which two shapes are compared over an interval. */
  private static final int COMPARED = 48;

  /** {@link #cosine} at those steps, from 0 to 1. */
  static final double[] COSINES = atEvenSteps(TideShapes::cosine);

  /** {@link #twelfths} at those steps, from 0 to 1. */
  static final double[] TWELFTHS = atEvenSteps(TideShapes::twelfths);

  private TideShapes() {}

  private static double[] atEvenSteps(DoubleUnaryOperator shape) {
    double[] passed = new double[COMPARED + 1];
    for (int i = 0; i <= COMPARED; i++) {
      passed[i] = shape.applyAsDouble((double) i / COMPARED);
    }
    return passed;
  }

  /**
   * The rule of twelfths: 1, 2, 3, 3, 2 and 1 twelfths in the six sixths of the interval, joined by
   * straight lines. Common practice among small-boat sailors; a rule of thumb for semi-diurnal
   * tides.
   *
   * @param fractionOfInterval time since the last water as a fraction of the whole interval, in [0,
   *     1]; beyond, the nearer end counts
   * @return fraction of the rise or fall passed, in [0, 1]
   */
  public static double twelfths(double fractionOfInterval) {
    if (!(fractionOfInterval > 0.0)) { // NaN comes here
      return Double.isNaN(fractionOfInterval) ? Double.NaN : 0.0;
    }
    if (fractionOfInterval >= 1.0) {
      return 1.0;
    }
    double sixths = 6.0 * fractionOfInterval;
    int whole = Math.min((int) sixths, 5);
    return PASSED[whole] + (sixths - whole) * (PASSED[whole + 1] - PASSED[whole]);
  }

  /**
   * Slope of {@link #twelfths}.
   *
   * @param fractionOfInterval time since the last water as a fraction of the whole interval, in [0,
   *     1]
   * @return fraction of the rise or fall for a whole interval, in [0.5, 1.5]; at a corner the slope
   *     after it; NaN for NaN
   */
  public static double twelfthsSlope(double fractionOfInterval) {
    if (Double.isNaN(fractionOfInterval)) {
      return Double.NaN;
    }
    int whole = Math.max(0, Math.min((int) (6.0 * fractionOfInterval), 5));
    return 6.0 * (PASSED[whole + 1] - PASSED[whole]);
  }

  /**
   * Half a cosine wave from one water to the next: what Table 3 (height of the tide at any time) of
   * the United States' Tide Tables prints.
   *
   * @param fractionOfInterval time since the last water as a fraction of the whole interval, in [0,
   *     1]
   * @return fraction of the rise or fall passed, in [0, 1]
   */
  public static double cosine(double fractionOfInterval) {
    return 0.5 - 0.5 * Math.cos(Math.PI * fractionOfInterval);
  }

  /**
   * Slope of {@link #cosine}.
   *
   * @param fractionOfInterval time since the last water as a fraction of the whole interval, in [0,
   *     1]
   * @return fraction of the rise or fall for a whole interval, in [0, π/2]
   */
  public static double cosineSlope(double fractionOfInterval) {
    return 0.5 * Math.PI * Math.sin(Math.PI * fractionOfInterval);
  }
}
