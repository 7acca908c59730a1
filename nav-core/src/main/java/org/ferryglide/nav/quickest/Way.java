package org.ferryglide.nav.quickest;

import java.util.Arrays;

/**
 * A way from start to goal as straight tracks between places of the plane, metres, with the time at
 * which each place is left at the earliest, seconds since the departure: where that is later than
 * the arrival, the craft holds its place until then.
 *
 * @param along metres along the line from start to goal
 * @param right metres to the right of it
 * @param notBefore when each place is left at the earliest; 0 where the craft never waits
 * @param pinned the places at corners of the land, which stay where they are
 */
@SuppressWarnings("ArrayRecordComponent") // handed on inside the engine, never compared
record Way(double[] along, double[] right, double[] notBefore, boolean[] pinned) {

  /** The places of a front's path; one that stands twice, since the craft waits, stands once. */
  static Way of(SearchGrid grid, int[] nodes, double[] notBefore) {
    double[] along = new double[nodes.length];
    double[] right = new double[nodes.length];
    double[] left = new double[nodes.length];
    int n = 0;
    for (int i = 0; i < nodes.length; i++) {
      if (i > 0 && nodes[i] == nodes[i - 1]) {
        n--;
      }
      along[n] = grid.along(nodes[i]);
      right[n] = grid.right(nodes[i]);
      left[n++] = notBefore[i];
    }
    return new Way(
        Arrays.copyOf(along, n), Arrays.copyOf(right, n), Arrays.copyOf(left, n), new boolean[n]);
  }

  int tracks() {
    return along.length - 1;
  }

  double metres() {
    double sum = 0.0;
    for (int i = 0; i < tracks(); i++) {
      sum += metres(i);
    }
    return sum;
  }

  double metres(int track) {
    return Math.hypot(along[track + 1] - along[track], right[track + 1] - right[track]);
  }

  /** Whether a place stays where it is: the start, the goal and pinned ones. */
  boolean isFixed(int place) {
    return place == 0 || place == tracks() || pinned[place];
  }

  boolean waits() {
    for (double time : notBefore) {
      if (time > 0.0) {
        return true;
      }
    }
    return false;
  }

  /** Arrival at the goal, seconds since the departure; NaN if the way cannot be made. */
  double arrival(TrackTimes times) {
    double time = 0.0;
    for (int i = 0; i < tracks(); i++) {
      if (notBefore[i] > time) {
        if (!times.isHeld(along[i], right[i], time, notBefore[i])) {
          return Double.NaN;
        }
        time = notBefore[i];
      }
      time = times.arrival(along[i], right[i], along[i + 1], right[i + 1], time);
      if (Double.isNaN(time)) {
        return Double.NaN;
      }
    }
    return time;
  }

  /** The same where a track that cannot be made for want of speed counts as a very slow one. */
  double lenientArrival(TrackTimes times) {
    boolean before = times.setLenient(true);
    double time = arrival(times);
    times.setLenient(before);
    return time;
  }

  /**
   * The same way in about so many tracks of even weight; places where it waits, pinned ones, the
   * start and the goal stay.
   *
   * @param weights what each track weighs, above 0
   */
  Way evenly(int tracks, double[] weights) {
    double all = 0.0;
    for (int i = 0; i < tracks(); i++) {
      all += weights[i];
    }
    double each = all / tracks;
    int most = tracks + 2 * along.length + 2;
    double[] a = new double[most];
    double[] r = new double[most];
    double[] t = new double[most];
    boolean[] p = new boolean[most];
    int n = 0;
    int from = 0;
    for (int to = 1; to < along.length; to++) {
      if (to < tracks() && notBefore[to] == 0.0 && notBefore[to - 1] == 0.0 && !pinned[to]) {
        continue;
      }
      double stretch = 0.0;
      for (int i = from; i < to; i++) {
        stretch += weights[i];
      }
      int parts = (int) Math.max(1, Math.round(stretch / each));
      a[n] = along[from];
      r[n] = right[from];
      t[n] = notBefore[from];
      p[n++] = pinned[from];
      int track = from;
      double passed = 0.0;
      for (int k = 1; k < parts; k++) {
        double wanted = stretch * k / parts;
        while (track < to - 1 && passed + weights[track] < wanted) {
          passed += weights[track++];
        }
        double share = Math.min(1.0, (wanted - passed) / weights[track]);
        a[n] = along[track] + share * (along[track + 1] - along[track]);
        r[n++] = right[track] + share * (right[track + 1] - right[track]);
      }
      from = to;
    }
    a[n] = along[tracks()];
    r[n++] = right[tracks()];
    return new Way(
        Arrays.copyOf(a, n), Arrays.copyOf(r, n), Arrays.copyOf(t, n), Arrays.copyOf(p, n));
  }

  /** In tracks that share out both the length and the time evenly, as far as it is known. */
  Way evenly(int tracks, TrackTimes times) {
    double[] weights = new double[tracks()];
    double length = metres();
    boolean before = times.setLenient(true);
    double time = 0.0;
    for (int i = 0; i < weights.length; i++) {
      double left = Math.max(time, notBefore[i]);
      time = times.arrival(along[i], right[i], along[i + 1], right[i + 1], left);
      weights[i] = time - left;
    }
    times.setLenient(before);
    double all = 0.0;
    for (double weight : weights) {
      all += weight;
    }
    for (int i = 0; i < weights.length; i++) {
      double share = all > 0.0 ? weights[i] / all : 0.0;
      weights[i] = Math.max(1e-9, metres(i) / length + share);
    }
    return evenly(tracks, weights);
  }

  /** The same way with every track cut in the middle. */
  Way halved() {
    int n = 2 * tracks() + 1;
    double[] a = new double[n];
    double[] r = new double[n];
    double[] t = new double[n];
    boolean[] p = new boolean[n];
    for (int i = 0; i < n; i++) {
      int before = i / 2;
      int after = before + i % 2;
      a[i] = 0.5 * (along[before] + along[after]);
      r[i] = 0.5 * (right[before] + right[after]);
      if (before == after) {
        t[i] = notBefore[before];
        p[i] = pinned[before];
      }
    }
    return new Way(a, r, t, p);
  }

  /** The greatest distance between two ways at equal shares of their lengths, metres. */
  double apart(Way other) {
    final int looks = 16;
    Way one = free().evenly(looks, lengths());
    Way two = other.free().evenly(looks, other.lengths());
    double most = 0.0;
    for (int i = 0; i < Math.min(one.along.length, two.along.length); i++) {
      most = Math.max(most, Math.hypot(one.along[i] - two.along[i], one.right[i] - two.right[i]));
    }
    return most;
  }

  /** The same with every place free to move. */
  Way unpinned() {
    return new Way(along, right, notBefore, new boolean[along.length]);
  }

  /** Without waits and pins. */
  private Way free() {
    return new Way(along, right, new double[along.length], new boolean[along.length]);
  }

  private double[] lengths() {
    double[] lengths = new double[tracks()];
    for (int i = 0; i < lengths.length; i++) {
      lengths[i] = Math.max(1e-9, metres(i));
    }
    return lengths;
  }
}
