package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * A stream that runs from slack to a maximum and back, again and again: between two break points it
 * keeps the maximum's direction and grows or falls by a shape.
 */
final class SlackToMaximum implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Axis breaks;
  private final FlowShape shape;

  /** East and north at the maximum of each segment, metres a second. */
  private final double[] maxima;

  /** Whether a segment begins with slack; it ends with slack otherwise. */
  private final boolean[] rising;

  private final int[] segmentFlags;
  private final Axis corners;

  private SlackToMaximum(Builder builder, FlowShape shape) {
    int segments = builder.segmentFlags.size();
    double[] times = toArray(builder.times);
    this.breaks = new Axis(times);
    this.shape = shape;
    this.maxima = toArray(builder.maxima);
    this.rising = new boolean[segments];
    this.segmentFlags = new int[segments];
    List<Double> corners = new ArrayList<>(builder.times);
    for (int k = 0; k < segments; k++) {
      rising[k] = builder.rising.get(k);
      segmentFlags[k] = builder.segmentFlags.get(k);
      double width = times[k + 1] - times[k];
      for (double corner : shape.corners()) {
        corners.add(rising[k] ? times[k] + corner * width : times[k + 1] - corner * width);
      }
    }
    corners.sort(Double::compare);
    this.corners = new Axis(toArray(corners));
  }

  private static double[] toArray(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Gathers slacks and maxima in turn; a gap may take the place of a segment. */
  static final class Builder {
    private final List<Double> times = new ArrayList<>();
    private final List<Double> maxima = new ArrayList<>();
    private final List<Boolean> rising = new ArrayList<>();
    private final List<Integer> segmentFlags = new ArrayList<>();

    /** The first break point, or a break point after a gap. */
    void startAt(double time) {
      if (times.isEmpty()) {
        times.add(time);
      } else if (times.get(times.size() - 1) < time) {
        add(time, 0.0, 0.0, true, PiecewiseStream.GAP);
      }
    }

    void add(double end, double east, double north, boolean fromSlack, int flags) {
      times.add(end);
      maxima.add(east);
      maxima.add(north);
      rising.add(fromSlack);
      segmentFlags.add(flags);
    }

    SlackToMaximum build(FlowShape shape) {
      return new SlackToMaximum(this, shape);
    }
  }

  boolean sample(double t, double[] out, int offset) {
    int k = segment(t);
    if (k < 0) {
      return false;
    }
    double from = breaks.value(k);
    double to = breaks.value(k + 1);
    double share = shape.share((rising[k] ? t - from : to - t) / (to - from));
    out[offset] = share * maxima[2 * k];
    out[offset + 1] = share * maxima[2 * k + 1];
    return true;
  }

  private int segment(double t) {
    int k = breaks.segment(t);
    if (k >= 0 && (segmentFlags[k] & PiecewiseStream.GAP) != 0) {
      return k > 0 && t == breaks.value(k) && (segmentFlags[k - 1] & PiecewiseStream.GAP) == 0
          ? k - 1
          : -1;
    }
    return k;
  }

  int flagsAt(double t) {
    int k = segment(t);
    return k < 0 ? PiecewiseStream.GAP : segmentFlags[k];
  }

  double start() {
    return breaks.first();
  }

  double end() {
    return breaks.last();
  }

  double nextBreakAfter(double t) {
    return corners.nextAfter(t);
  }

  double maxRate() {
    double max = 0.0;
    for (int k = 0; k < segmentFlags.length; k++) {
      max = Math.max(max, Math.hypot(maxima[2 * k], maxima[2 * k + 1]));
    }
    return max;
  }
}
