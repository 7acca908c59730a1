package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.util.Arrays;

/**
 * Knots along an axis, usually of time, and which piece between two of them holds a value.
 *
 * <p>The piece is found through buckets of equal width, so that a lookup costs the same in a day's
 * table and in a year's.
 */
final class AxisKnots implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Strictly increasing; piece k runs from knots[k] to knots[k + 1]. */
  private final double[] knots;

  private final int[] buckets;
  private final double bucketsPerUnit;

  AxisKnots(double[] knots) {
    this.knots = knots;
    int pieces = pieces();
    this.buckets = new int[pieces + 1];
    this.bucketsPerUnit = pieces == 0 ? 0.0 : pieces / (knots[pieces] - knots[0]);
    int k = 0;
    for (int b = 0; b < buckets.length && pieces > 0; b++) {
      // a little early, so that rounding never puts a value before its bucket's piece
      double bucketStart = knots[0] + (b - 1e-6) / bucketsPerUnit;
      while (k + 1 < pieces && knots[k + 1] <= bucketStart) {
        k++;
      }
      buckets[b] = k;
    }
  }

  int pieces() {
    return Math.max(0, knots.length - 1);
  }

  double knot(int k) {
    return knots[k];
  }

  /**
   * The piece that holds a value, the later one at a knot; -1 before the first knot, after the
   * last, and for NaN.
   */
  int piece(double t) {
    int pieces = pieces();
    if (pieces == 0 || !(t >= knots[0] && t <= knots[pieces])) { // written so that NaN fails
      return -1;
    }
    int k = buckets[(int) ((t - knots[0]) * bucketsPerUnit)];
    while (k + 1 < pieces && knots[k + 1] <= t) {
      k++;
    }
    return k;
  }

  /** The first knot; positive infinity if there is none. */
  double first() {
    return knots.length == 0 ? Double.POSITIVE_INFINITY : knots[0];
  }

  /** The last knot; negative infinity if there is none. */
  double last() {
    return knots.length == 0 ? Double.NEGATIVE_INFINITY : knots[knots.length - 1];
  }

  /** The first knot strictly after a value; positive infinity if there is none. */
  double nextAfter(double t) {
    int last = knots.length - 1;
    if (last < 0 || !(t < knots[last])) {
      return Double.POSITIVE_INFINITY;
    }
    if (t < knots[0]) {
      return knots[0];
    }
    return knots[piece(t) + 1];
  }

  boolean isKnot(double t) {
    return Arrays.binarySearch(knots, t) >= 0;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof AxisKnots that && Arrays.equals(knots, that.knots);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(knots);
  }
}
