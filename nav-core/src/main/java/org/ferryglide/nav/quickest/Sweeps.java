package org.ferryglide.nav.quickest;

/**
 * Moves the places of a way one by one, by strides that adapt: slow to settle, but not to be
 * stopped by waters that cannot be crossed, nor by kinks. Not thread-safe.
 */
final class Sweeps {
  /** A place goes this much farther than alone would be best, since its neighbours follow. */
  private static final double BEYOND = 1.6;

  private final TrackTimes times;

  /** How far each place is moved at first in the next sweep, metres. */
  private double[] strides = new double[0];

  Sweeps(TrackTimes times) {
    this.times = times;
  }

  /**
   * The way after so many sweeps. What a place does to the arrival is judged at the next one:
   * nobody who leaves it earlier on the same track arrives later.
   */
  Way swept(Way way, int sweeps) {
    int n = way.along().length;
    if (strides.length < n) {
      strides = new double[n];
    }
    double[] a = way.along().clone();
    double[] r = way.right().clone();
    Way swept = new Way(a, r, way.notBefore(), way.pinned());
    for (int i = 0; i < n; i++) {
      strides[i] = i > 0 ? 0.3 * way.metres(i - 1) : 0.0;
    }
    for (int sweep = 0; sweep < sweeps; sweep++) {
      double reached = 0.0;
      for (int i = 1; i + 1 < n; i++) {
        double left = Math.max(reached, way.notBefore()[i - 1]);
        if (!way.isFixed(i)) {
          sweep(swept, i, left);
        }
        reached = times.arrival(a[i - 1], r[i - 1], a[i], r[i], left);
      }
    }
    return swept;
  }

  private void sweep(Way way, int i, double left) {
    double[] a = way.along();
    double[] r = way.right();
    double along = a[i + 1] - a[i - 1];
    double right = r[i + 1] - r[i - 1];
    double length = Math.hypot(along, right);
    if (length == 0.0) {
      return;
    }
    double unitAlong = -right / length;
    double unitRight = along / length;
    double stride = strides[i];
    double now = arrivalBeyond(way, i, left, a[i], r[i]);
    double plus = arrivalBeyond(way, i, left, a[i] + stride * unitAlong, r[i] + stride * unitRight);
    double minus =
        arrivalBeyond(way, i, left, a[i] - stride * unitAlong, r[i] - stride * unitRight);
    double best = now;
    double by = 0.0;
    if (plus < best) {
      best = plus;
      by = stride;
    }
    if (minus < best) {
      best = minus;
      by = -stride;
    }
    double bend = plus - 2.0 * now + minus;
    if (bend > 0.0 && bend < Double.POSITIVE_INFINITY) {
      double top = BEYOND * 0.5 * stride * (minus - plus) / bend;
      if (Math.abs(top) < 2.0 * stride) {
        double there = arrivalBeyond(way, i, left, a[i] + top * unitAlong, r[i] + top * unitRight);
        if (there < best) {
          by = top;
        }
      }
    }
    a[i] += by * unitAlong;
    r[i] += by * unitRight;
    strides[i] = by == 0.0 ? 0.4 * stride : Math.min(length, 1.5 * Math.abs(by));
  }

  /** The arrival at the place after one that is moved; infinite if it cannot be reached. */
  private double arrivalBeyond(Way way, int i, double left, double along, double right) {
    double time = times.arrival(way.along()[i - 1], way.right()[i - 1], along, right, left);
    time = Math.max(time, way.notBefore()[i]);
    time = times.arrival(along, right, way.along()[i + 1], way.right()[i + 1], time);
    return Double.isNaN(time) ? Double.POSITIVE_INFINITY : time;
  }
}
