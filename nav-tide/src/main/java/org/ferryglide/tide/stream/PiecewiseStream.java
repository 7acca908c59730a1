package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.util.Objects;

/**
 * A stream in segments: between two break points in time the east and north parts are polynomials.
 */
final class PiecewiseStream implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Segment without data; its flags hold this bit. */
  static final int GAP = 1 << 30;

  /**
   * By how much a cubic may pass the greater rate of the two break points beside it, as a share.
   */
  static final double MOST_OVERSHOOT = 0.05;

  /**
   * From this time between two break points on their chord counts in full for the slope, seconds.
   */
  private static final double WHOLLY_TRUSTED_SECONDS = 1800.0;

  private static final PiecewiseStream EMPTY =
      new PiecewiseStream(new Axis(new double[0]), new double[0], new int[0], 0, 0.0);

  private final Axis breaks;

  /**
   * For each segment the east polynomial, constant term first, then the north one; a gap is NaN.
   */
  private final double[] coefficients;

  private final int[] segmentFlags;
  private final int stride;
  private final double maxRate;

  private PiecewiseStream(
      Axis breaks, double[] coefficients, int[] segmentFlags, int stride, double maxRate) {
    this.breaks = breaks;
    this.coefficients = coefficients;
    this.segmentFlags = segmentFlags;
    this.stride = stride;
    this.maxRate = maxRate;
    for (int k = 0; k < segmentFlags.length; k++) {
      if ((segmentFlags[k] & GAP) != 0) {
        coefficients[k * stride] = Double.NaN;
      }
    }
  }

  static PiecewiseStream empty() {
    return EMPTY;
  }

  /**
   * Rows held constant.
   *
   * @param times boundaries, one more than there are rows
   * @param eastNorth east and north of each row in turn
   * @param flags of each row
   */
  static PiecewiseStream steps(double[] times, double[] eastNorth, int[] flags) {
    double max = 0.0;
    for (int k = 0; k < flags.length; k++) {
      if ((flags[k] & GAP) == 0) {
        max = Math.max(max, Math.hypot(eastNorth[2 * k], eastNorth[2 * k + 1]));
      }
    }
    return new PiecewiseStream(new Axis(times), eastNorth.clone(), flags, 2, max);
  }

  /**
   * Straight lines of east and north between break points.
   *
   * @param eastNorth east and north of each break point in turn
   * @param flags of each segment, one fewer than there are break points
   */
  static PiecewiseStream lines(double[] times, double[] eastNorth, int[] flags) {
    double[] coefficients = new double[4 * flags.length];
    double max = 0.0;
    for (int k = 0; k < flags.length; k++) {
      double width = times[k + 1] - times[k];
      for (int axis = 0; axis < 2; axis++) {
        double here = eastNorth[2 * k + axis];
        coefficients[4 * k + 2 * axis] = here;
        coefficients[4 * k + 2 * axis + 1] = (eastNorth[2 * k + 2 + axis] - here) / width;
      }
    }
    for (int k = 0; k < times.length; k++) {
      max = Math.max(max, Math.hypot(eastNorth[2 * k], eastNorth[2 * k + 1]));
    }
    return new PiecewiseStream(new Axis(times), coefficients, flags, 4, max);
  }

  /**
   * Cubics through the break points, which pass the greater rate of the two break points beside
   * them by at most {@link #MOST_OVERSHOOT}. The slope at a break point is that of the parabola
   * through its neighbours, as far as this allows.
   */
  static PiecewiseStream cubics(double[] times, double[] eastNorth, int[] flags) {
    double[] slopes = slopes(times, eastNorth, flags);
    limit(slopes, times, eastNorth, flags);
    double[] coefficients = new double[8 * flags.length];
    double max = 0.0;
    for (int k = 0; k < flags.length; k++) {
      double width = times[k + 1] - times[k];
      double[] controls = new double[8];
      for (int axis = 0; axis < 2; axis++) {
        double here = eastNorth[2 * k + axis];
        double there = eastNorth[2 * k + 2 + axis];
        double leaving = slopes[2 * k + axis];
        double arriving = slopes[2 * k + 2 + axis];
        double chord = (there - here) / width;
        int at = 8 * k + 4 * axis;
        coefficients[at] = here;
        coefficients[at + 1] = leaving;
        coefficients[at + 2] = (3.0 * chord - 2.0 * leaving - arriving) / width;
        coefficients[at + 3] = (leaving + arriving - 2.0 * chord) / (width * width);
        controls[axis] = here;
        controls[2 + axis] = here + leaving * width / 3.0;
        controls[4 + axis] = there - arriving * width / 3.0;
        controls[6 + axis] = there;
      }
      if ((flags[k] & GAP) == 0) {
        // a cubic stays within the hull of its four Bezier control points
        for (int c = 0; c < 8; c += 2) {
          max = Math.max(max, Math.hypot(controls[c], controls[c + 1]));
        }
      }
    }
    return new PiecewiseStream(new Axis(times), coefficients, flags, 8, max);
  }

  private static double[] slopes(double[] times, double[] eastNorth, int[] flags) {
    double[] slopes = new double[eastNorth.length];
    for (int k = 0; k < times.length; k++) {
      boolean before = k > 0 && (flags[k - 1] & GAP) == 0;
      boolean after = k < flags.length && (flags[k] & GAP) == 0;
      for (int axis = 0; axis < 2; axis++) {
        double here = eastNorth[2 * k + axis];
        double rise =
            before ? (here - eastNorth[2 * k - 2 + axis]) / (times[k] - times[k - 1]) : 0.0;
        double next =
            after ? (eastNorth[2 * k + 2 + axis] - here) / (times[k + 1] - times[k]) : 0.0;
        double slope = rise + next; // at an end one of them is zero
        if (before && after) {
          double left = times[k] - times[k - 1];
          double right = times[k + 1] - times[k];
          double weightOfRise = right * trust(left);
          double weightOfNext = left * trust(right);
          slope = (rise * weightOfRise + next * weightOfNext) / (weightOfRise + weightOfNext);
        }
        slopes[2 * k + axis] = slope;
      }
    }
    return slopes;
  }

  /**
   * How far the change between two break points tells the slope beside them. Break points of two
   * tides can fall minutes apart, and what the tides disagree by is then no slope of the stream;
   * the third power takes it out altogether as the time between goes to nothing.
   */
  private static double trust(double width) {
    double share = Math.min(1.0, width / WHOLLY_TRUSTED_SECONDS);
    return share * share * share;
  }

  /**
   * Shortens the slope at each break point until no control point beside it passes the rates
   * allowed.
   */
  private static void limit(double[] slopes, double[] times, double[] eastNorth, int[] flags) {
    for (int k = 0; k < times.length; k++) {
      double share = 1.0;
      if (k > 0 && (flags[k - 1] & GAP) == 0) {
        share = Math.min(share, share(slopes, eastNorth, k, k - 1, times[k - 1] - times[k]));
      }
      if (k < flags.length && (flags[k] & GAP) == 0) {
        share = Math.min(share, share(slopes, eastNorth, k, k + 1, times[k + 1] - times[k]));
      }
      slopes[2 * k] *= share;
      slopes[2 * k + 1] *= share;
    }
  }

  /**
   * The share of a break point's slope with which the control point towards another break point is
   * allowed.
   */
  private static double share(double[] slopes, double[] flow, int k, int other, double width) {
    double east = flow[2 * k];
    double north = flow[2 * k + 1];
    double ahead = slopes[2 * k] * width / 3.0;
    double aside = slopes[2 * k + 1] * width / 3.0;
    double here = east * east + north * north;
    double there = flow[2 * other] * flow[2 * other] + flow[2 * other + 1] * flow[2 * other + 1];
    double allowed = (1.0 + MOST_OVERSHOOT) * (1.0 + MOST_OVERSHOOT) * Math.max(here, there);
    double length = ahead * ahead + aside * aside;
    double along = east * ahead + north * aside;
    if (here + 2.0 * along + length <= allowed) {
      return 1.0;
    }
    // |flow + share * step|² = allowed; the constant term is never above zero
    return (Math.sqrt(along * along + length * (allowed - here)) - along) / length;
  }

  boolean sample(double t, double[] out, int offset) {
    return sampleIn(breaks.segment(t), t, out, offset);
  }

  /** The same where the segment is known; it may be -1. */
  boolean sampleIn(int segment, double t, double[] out, int offset) {
    int k = withData(segment, t);
    if (k < 0) {
      return false;
    }
    evaluate(k * stride, t - breaks.value(k), out, offset);
    return true;
  }

  /**
   * Samples at even steps of time, NaN where there are no data. A segment is looked up once for all
   * that lie in it.
   */
  void sampleEvenly(double start, double step, int count, double[] out, int offset) {
    Objects.checkFromIndexSize(offset, 2 * count, out.length);
    int i = 0;
    while (i < count) {
      double t = start + i * step;
      int k = withData(breaks.segment(t), t);
      if (k < 0) {
        out[offset + 2 * i] = Double.NaN;
        out[offset + 2 * i + 1] = Double.NaN;
        i++;
        continue;
      }
      double begin = breaks.value(k);
      double end = breaks.value(k + 1);
      do {
        evaluate(k * stride, t - begin, out, offset + 2 * i);
        i++;
        t = start + i * step;
      } while (i < count && t >= begin && t < end);
    }
  }

  /** The segment that answers for a time, given the one that holds it; -1 if there are no data. */
  private int withData(int segment, double t) {
    return segment < 0 || Double.isNaN(coefficients[segment * stride])
        ? beforeGap(segment, t)
        : segment;
  }

  /** The east and north polynomials that stand at an index. */
  private void evaluate(int at, double x, double[] out, int offset) {
    double[] c = coefficients;
    switch (stride) {
      case 2 -> {
        out[offset] = c[at];
        out[offset + 1] = c[at + 1];
      }
      case 4 -> {
        out[offset] = c[at] + c[at + 1] * x;
        out[offset + 1] = c[at + 2] + c[at + 3] * x;
      }
      default -> {
        out[offset] = c[at] + x * (c[at + 1] + x * (c[at + 2] + x * c[at + 3]));
        out[offset + 1] = c[at + 4] + x * (c[at + 5] + x * (c[at + 6] + x * c[at + 7]));
      }
    }
  }

  /**
   * The last break point before a gap still belongs to the segment before it; -1 for any other
   * time.
   */
  private int beforeGap(int gap, double t) {
    return gap > 0 && t == breaks.value(gap) && (segmentFlags[gap - 1] & GAP) == 0 ? gap - 1 : -1;
  }

  /** The segment that holds an instant, for {@link #sampleIn}; -1 if none does. */
  int segmentOf(double t) {
    return breaks.segment(t);
  }

  /** Whether both change from segment to segment at the same times. */
  boolean breaksWith(PiecewiseStream other) {
    return breaks.equals(other.breaks);
  }

  /**
   * The same segments on the other's equal break points, so that several streams share them in
   * memory.
   */
  PiecewiseStream onBreaksOf(PiecewiseStream other) {
    return new PiecewiseStream(other.breaks, coefficients, segmentFlags, stride, maxRate);
  }

  /** Flags of the segment that holds an instant; {@link #GAP} if none does. */
  int flagsAt(double t) {
    int k = breaks.segment(t);
    if (k >= 0 && (segmentFlags[k] & GAP) != 0) {
      k = beforeGap(k, t);
    }
    return k < 0 ? GAP : segmentFlags[k];
  }

  boolean isBreak(double t) {
    return breaks.isBreak(t);
  }

  double start() {
    return breaks.first();
  }

  double end() {
    return breaks.last();
  }

  double nextBreakAfter(double t) {
    return breaks.nextAfter(t);
  }

  /** A rate that is never exceeded, metres a second. */
  double maxRate() {
    return maxRate;
  }
}
