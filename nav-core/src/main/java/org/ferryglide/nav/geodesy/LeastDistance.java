package org.ferryglide.nav.geodesy;

/**
 * Finds when two vessels are nearest: by samples of the straight distance through the earth, close
 * enough that both run all but straight between two of them, then by the slope of the true
 * distance.
 */
final class LeastDistance {
  private static final int MOST_STEPS = 100;

  /** An estimate this small is rounding: 20 nanometres, or nanoseconds, are what is known of it. */
  private static final double ROUNDING = 2e-8;

  /** A distance that depends on one number t: the way along a line, or time. */
  interface Function {
    /** The straight distance through the earth at t, metres. */
    double chord(double t);

    /** A step from the t last sampled, within which the distance has at most one minimum. */
    double step(double t);

    /**
     * How far ahead of t the distance is least, if line and distance were flat: positive while the
     * distance falls. Its zero is what is sought.
     */
    double estimate(double t);

    /** The distance over the ellipsoid at t, metres. */
    double distance(double t);
  }

  private LeastDistance() {}

  /** The t in [from, to] of least distance; the first of several alike. */
  static double search(Function function, double from, double to) {
    double best = from;
    double least = Double.POSITIVE_INFINITY;
    double before = from;
    double here = from;
    double chordBefore = Double.POSITIVE_INFINITY;
    double chordHere = function.chord(from);
    while (true) {
      double next = Math.min(to, here + function.step(here));
      boolean last = here >= to;
      double chordNext = last ? Double.POSITIVE_INFINITY : function.chord(next);
      if (chordHere <= chordBefore && chordHere <= chordNext) {
        double t = refine(function, before, here, last ? to : next);
        double distance = function.distance(t);
        if (distance < least) {
          least = distance;
          best = t;
        }
      }
      if (last) {
        return best;
      }
      before = here;
      chordBefore = chordHere;
      here = next;
      chordHere = chordNext;
    }
  }

  /** The zero of the estimate between lo and hi, or the end toward which the distance falls. */
  private static double refine(Function function, double lo, double middle, double hi) {
    if (function.estimate(lo) <= 0.0) {
      return lo;
    }
    if (function.estimate(hi) >= 0.0) {
      return hi;
    }
    double left = lo;
    double right = hi;
    double before = Double.NaN;
    double estimateBefore = Double.NaN;
    double t = middle > lo && middle < hi ? middle : 0.5 * (lo + hi);
    for (int i = 0; i < MOST_STEPS; i++) {
      double estimate = function.estimate(t);
      if (Math.abs(estimate) <= ROUNDING) {
        return t;
      }
      if (estimate > 0.0) {
        left = t;
      } else {
        right = t;
      }
      double next =
          Double.isNaN(before)
              ? t + estimate
              : t - estimate * (t - before) / (estimate - estimateBefore); // the secant
      if (!(next > left && next < right)) {
        next = 0.5 * (left + right);
      }
      if (Math.abs(next - t) <= 1e-9 + 2.0 * Math.ulp(t)) {
        return next;
      }
      before = t;
      estimateBefore = estimate;
      t = next;
    }
    return t;
  }
}
