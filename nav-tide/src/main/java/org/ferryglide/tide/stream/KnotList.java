package org.ferryglide.tide.stream;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Knots as they are gathered, before they become pieces. */
final class KnotList {
  private record Knot(double time, double east, double north, int flags) {}

  private final List<Knot> knots = new ArrayList<>();

  void add(double time, double east, double north, int flags) {
    knots.add(new Knot(time, east, north, flags));
  }

  /** Orders the knots; of several at one time the first is kept. */
  void sortByTime() {
    knots.sort(Comparator.comparingDouble(Knot::time));
    List<Knot> distinct = new ArrayList<>(knots.size());
    for (Knot knot : knots) {
      if (distinct.isEmpty() || distinct.get(distinct.size() - 1).time() < knot.time()) {
        distinct.add(knot);
      }
    }
    knots.clear();
    knots.addAll(distinct);
  }

  int size() {
    return knots.size();
  }

  double time(int k) {
    return knots.get(k).time();
  }

  int flags(int k) {
    return knots.get(k).flags();
  }

  double[] times() {
    return knots.stream().mapToDouble(Knot::time).toArray();
  }

  double[] eastNorth() {
    double[] values = new double[2 * knots.size()];
    for (int k = 0; k < knots.size(); k++) {
      values[2 * k] = knots.get(k).east();
      values[2 * k + 1] = knots.get(k).north();
    }
    return values;
  }

  /** Each knot's value held until the next knot, the last until {@code end}. */
  StreamKnots steps(double end) {
    double[] boundaries = new double[knots.size() + 1];
    int[] flags = new int[knots.size()];
    for (int k = 0; k < flags.length; k++) {
      boundaries[k] = knots.get(k).time();
      flags[k] = knots.get(k).flags();
    }
    boundaries[flags.length] = end;
    return StreamKnots.steps(boundaries, eastNorth(), flags);
  }
}
