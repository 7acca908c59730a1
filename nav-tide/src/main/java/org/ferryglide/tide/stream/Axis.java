package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.util.Arrays;

/**
 * Break points along an axis, usually of time, and which segment between two of them holds a value.
 *
 * <p>The segment is found through buckets of equal width, so that a lookup costs the same in a
 * day's table and in a year's.
 */
final class Axis implements Serializable {
  private static final long serialVersionUID = 1L;

  /** More segments in one bucket are searched by halving, not one after the other. */
  private static final int FEW = 8;

  /** Strictly increasing; segment k runs from breaks[k] to breaks[k + 1]. */
  private final double[] breaks;

  private final int[] buckets;
  private final double bucketsPerUnit;

  /**
   * Whether a bucket holds many segments: nearly all, where the rest of the axis is one long gap.
   */
  private final boolean crowded;

  Axis(double[] breaks) {
    this.breaks = breaks;
    int segments = segments();
    this.buckets = new int[segments + 1];
    this.bucketsPerUnit = segments == 0 ? 0.0 : segments / (breaks[segments] - breaks[0]);
    int k = 0;
    boolean many = false;
    for (int b = 0; b < buckets.length && segments > 0; b++) {
      // a little early, so that rounding never puts a value before its bucket's segment
      double bucketStart = breaks[0] + (b - 1e-6) / bucketsPerUnit;
      while (k + 1 < segments && breaks[k + 1] <= bucketStart) {
        k++;
      }
      buckets[b] = k;
      many |= b > 0 && k - buckets[b - 1] > FEW;
    }
    this.crowded = many;
  }

  int segments() {
    return Math.max(0, breaks.length - 1);
  }

  double value(int k) {
    return breaks[k];
  }

  /**
   * The segment that holds a value, the later one at a break point; -1 before the first break
   * point, after the last, and for NaN.
   */
  int segment(double t) {
    int segments = segments();
    if (segments == 0 || !(t >= breaks[0] && t <= breaks[segments])) { // written so that NaN fails
      return -1;
    }
    int bucket = (int) ((t - breaks[0]) * bucketsPerUnit);
    int k = buckets[bucket];
    if (crowded) {
      return searched(k, bucket, t);
    }
    while (k + 1 < segments && breaks[k + 1] <= t) {
      k++;
    }
    return k;
  }

  /** The same by halving what the bucket holds. */
  private int searched(int first, int bucket, double t) {
    int k = first;
    int beyond = bucket + 2 < buckets.length ? buckets[bucket + 2] + 1 : segments();
    while (beyond - k > 1) {
      int middle = (k + beyond) >>> 1;
      if (breaks[middle] <= t) {
        k = middle;
      } else {
        beyond = middle;
      }
    }
    return k;
  }

  /** The first break point; positive infinity if there is none. */
  double first() {
    return breaks.length == 0 ? Double.POSITIVE_INFINITY : breaks[0];
  }

  /** The last break point; negative infinity if there is none. */
  double last() {
    return breaks.length == 0 ? Double.NEGATIVE_INFINITY : breaks[breaks.length - 1];
  }

  /** The first break point strictly after a value; positive infinity if there is none. */
  double nextAfter(double t) {
    int last = breaks.length - 1;
    if (last < 0 || !(t < breaks[last])) {
      return Double.POSITIVE_INFINITY;
    }
    if (t < breaks[0]) {
      return breaks[0];
    }
    return breaks[segment(t) + 1];
  }

  boolean isBreak(double t) {
    return Arrays.binarySearch(breaks, t) >= 0;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Axis that && Arrays.equals(breaks, that.breaks);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(breaks);
  }
}
