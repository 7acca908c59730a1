package org.ferryglide.nav.quickest;

import java.util.Arrays;

/**
 * Moves stretches of a way sideways in the shape of a tent, long ones and short ones in turn, down
 * to single places, each by the best of a few looks. Nothing moves that cannot be made: slower than
 * Newton's method, but not led astray where streams outrun the craft, and long tents settle what
 * single places would creep to. Not thread-safe.
 */
final class Tents {
  /** Half the longest tent is such a part of the way at most. */
  private static final int PARTS = 4;

  /** A tent goes this much farther than alone would be best, since its neighbours follow. */
  private static final double BEYOND = 1.4;

  /** First strides, as a share of the length of a track; longer tents move farther. */
  private static final double FIRST_STRIDE = 0.3;

  private final TrackTimes times;
  private double[] along = new double[0];
  private double[] right = new double[0];
  private double[] heldAlong = new double[0];
  private double[] heldRight = new double[0];
  private double[] reached = new double[0];
  private Way way = new Way(along, right, reached, new boolean[0]);

  Tents(TrackTimes times) {
    this.times = times;
  }

  /** The way after so many rounds, or as many as gain more than a share of its time. */
  Way settled(Way begun, int rounds, double share) {
    int n = begun.along().length;
    along = begun.along().clone();
    right = begun.right().clone();
    heldAlong = along.clone();
    heldRight = right.clone();
    reached = new double[n];
    way = new Way(along, right, begun.notBefore(), begun.pinned());
    int levels = 1;
    while (PARTS << levels < n) {
      levels++;
    }
    double[][] strides = new double[levels][n];
    for (int level = 0; level < levels; level++) {
      double first = FIRST_STRIDE * begun.metres() / begun.tracks() * Math.sqrt(1 << level);
      Arrays.fill(strides[level], first);
    }
    double time = way.arrival(times);
    for (int round = 0; round < rounds; round++) {
      for (int level = levels - 1; level >= 0; level--) {
        swept(1 << level, strides[level]);
      }
      double now = way.arrival(times);
      if (time - now < share * now) { // false for NaN
        break;
      }
      time = now;
    }
    return way;
  }

  private void swept(int half, double[] strides) {
    int last = way.tracks();
    int timed = 0;
    for (int middle = half; middle + half <= last; middle += half) {
      int from = middle - half;
      for (int i = timed; i < from; i++) {
        reached[i + 1] = track(i, reached[i]);
      }
      timed = from;
      if (!isHeld(middle, half)) {
        strides[middle] = moved(middle, half, strides[middle]);
      }
    }
  }

  /** Whether some place of a tent stays where it is. */
  private boolean isHeld(int middle, int half) {
    for (int i = middle - half + 1; i < middle + half; i++) {
      if (way.isFixed(i)) {
        return true;
      }
    }
    return false;
  }

  private double track(int i, double time) {
    double left = Math.max(time, way.notBefore()[i]);
    return times.arrival(along[i], right[i], along[i + 1], right[i + 1], left);
  }

  /** Moves one tent for the best; gives the stride to look by next time. */
  private double moved(int middle, int half, double stride) {
    int from = middle - half;
    int to = middle + half;
    double da = along[to] - along[from];
    double dr = right[to] - right[from];
    double length = Math.hypot(da, dr);
    if (length == 0.0) {
      return stride;
    }
    System.arraycopy(along, from, heldAlong, from, to - from + 1);
    System.arraycopy(right, from, heldRight, from, to - from + 1);
    double unitAlong = -dr / length;
    double unitRight = da / length;
    double now = arrival(middle, half, 0.0, unitAlong, unitRight);
    double plus = arrival(middle, half, stride, unitAlong, unitRight);
    double minus = arrival(middle, half, -stride, unitAlong, unitRight);
    double best = Math.min(now, Math.min(plus, minus));
    double by = best == now ? 0.0 : best == plus ? stride : -stride;
    double bend = plus - 2.0 * now + minus;
    if (bend > 0.0 && bend < Double.POSITIVE_INFINITY) {
      double top = BEYOND * 0.5 * stride * (minus - plus) / bend;
      if (Math.abs(top) < 2.0 * stride && arrival(middle, half, top, unitAlong, unitRight) < best) {
        by = top;
      }
    }
    shift(middle, half, by, unitAlong, unitRight);
    return by == 0.0 ? 0.4 * stride : Math.min(2.0 * stride, 1.5 * Math.abs(by));
  }

  /** The arrival at the end of a tent that is moved so far; infinite if it cannot be made. */
  private double arrival(int middle, int half, double by, double unitAlong, double unitRight) {
    shift(middle, half, by, unitAlong, unitRight);
    double time = reached[middle - half];
    for (int i = middle - half; i < middle + half && !Double.isNaN(time); i++) {
      time = track(i, time);
    }
    return Double.isNaN(time) ? Double.POSITIVE_INFINITY : time;
  }

  private void shift(int middle, int half, double by, double unitAlong, double unitRight) {
    for (int i = middle - half + 1; i < middle + half; i++) {
      double share = by * (1.0 - Math.abs(i - middle) / (double) half);
      along[i] = heldAlong[i] + share * unitAlong;
      right[i] = heldRight[i] + share * unitRight;
    }
  }
}
