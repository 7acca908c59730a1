package org.ferryglide.tide.stream;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Break points as they are gathered, before they become segments. */
final class BreakPointList {
  private record BreakPoint(double time, double east, double north, int flags) {}

  private final List<BreakPoint> breaks = new ArrayList<>();

  void add(double time, double east, double north, int flags) {
    breaks.add(new BreakPoint(time, east, north, flags));
  }

  /** Orders the break points; of several at one time the first is kept. */
  void sortByTime() {
    breaks.sort(Comparator.comparingDouble(BreakPoint::time));
    List<BreakPoint> distinct = new ArrayList<>(breaks.size());
    for (BreakPoint point : breaks) {
      if (distinct.isEmpty() || distinct.get(distinct.size() - 1).time() < point.time()) {
        distinct.add(point);
      }
    }
    breaks.clear();
    breaks.addAll(distinct);
  }

  int size() {
    return breaks.size();
  }

  double time(int k) {
    return breaks.get(k).time();
  }

  int flags(int k) {
    return breaks.get(k).flags();
  }

  double[] times() {
    return breaks.stream().mapToDouble(BreakPoint::time).toArray();
  }

  double[] eastNorth() {
    double[] values = new double[2 * breaks.size()];
    for (int k = 0; k < breaks.size(); k++) {
      values[2 * k] = breaks.get(k).east();
      values[2 * k + 1] = breaks.get(k).north();
    }
    return values;
  }

  /** Each break point's value held until the next break point, the last until {@code end}. */
  PiecewiseStream steps(double end) {
    double[] boundaries = new double[breaks.size() + 1];
    int[] flags = new int[breaks.size()];
    for (int k = 0; k < flags.length; k++) {
      boundaries[k] = breaks.get(k).time();
      flags[k] = breaks.get(k).flags();
    }
    boundaries[flags.length] = end;
    return PiecewiseStream.steps(boundaries, eastNorth(), flags);
  }
}
