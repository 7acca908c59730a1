package org.ferryglide.nav.quickest;

/**
 * Relaxes polygons for {@link ManyStarts} without any derivative: stretches of a polygon are moved
 * aside in the shape of a tent, long ones and short ones in turn, down to single corners, each by
 * the best of a few looks. Long tents settle what single corners would take thousands of sweeps
 * for. What a move does is judged where the tent ends.
 */
final class TentRelaxation {
  private static final double LEAST_STRIDE = 1e-6;

  /** A little beyond the best, since the neighbours follow. */
  private static final double BEYOND = 1.3;

  /** When the end of a straight track is reached. */
  interface Track {
    double arrival(double x0, double y0, double x1, double y1, double started);
  }

  private final Track track;
  private double[] held = new double[0];
  private double[] reached = new double[0];
  private double[][] strides = new double[0][];

  TentRelaxation(Track track) {
    this.track = track;
  }

  /**
   * Moves a polygon until a round gains less than a share of its time.
   *
   * @param path x and y of its corners in turn
   * @param stride how far a corner is moved at first; long tents move farther
   */
  void relax(double[] path, int rounds, double stride, double share) {
    int corners = path.length / 2;
    held = path.clone();
    reached = new double[corners];
    int levels = 1;
    while (8 << levels <= corners) {
      levels++;
    }
    strides = new double[levels + 1][corners];
    for (int level = 0; level <= levels; level++) {
      double first = stride * Math.sqrt(1 << Math.max(0, level - 1));
      java.util.Arrays.fill(strides[level], first);
    }
    double time = timed(path);
    for (int round = 0; round < rounds; round++) {
      for (int level = levels; level >= 1; level--) {
        tents(path, 1 << (level - 1), strides[level], true);
      }
      tents(path, 1, strides[0], false);
      double now = timed(path);
      if (time - now < share * now) {
        return;
      }
      time = now;
    }
  }

  private double timed(double[] path) {
    for (int i = 1; i < reached.length; i++) {
      reached[i] = side(path, i - 1, reached[i - 1]);
    }
    return reached[reached.length - 1];
  }

  private double side(double[] path, int i, double started) {
    int at = 2 * i;
    return track.arrival(path[at], path[at + 1], path[at + 2], path[at + 3], started);
  }

  /** Moves a tent about each of every so many corners, across the path or along it. */
  private void tents(double[] path, int half, double[] stride, boolean across) {
    int corners = reached.length;
    int before = 0;
    for (int middle = half; middle + half < corners; middle += half) {
      int from = middle - half;
      for (int i = before + 1; i <= from; i++) {
        reached[i] = side(path, i - 1, reached[i - 1]);
      }
      before = from;
      double dx = path[2 * (middle + half)] - path[2 * from];
      double dy = path[2 * (middle + half) + 1] - path[2 * from + 1];
      double length = Math.sqrt(dx * dx + dy * dy);
      if (length > 0.0) {
        double x = across ? -dy / length : dx / length;
        double y = across ? dx / length : dy / length;
        stride[middle] = moved(path, middle, half, x, y, stride[middle]);
      }
    }
  }

  /** Moves one tent for the best; gives the stride to look by next time. */
  private double moved(double[] path, int middle, int half, double x, double y, double stride) {
    int first = 2 * (middle - half);
    int count = 4 * half + 2;
    System.arraycopy(path, first, held, first, count);
    double now = arrival(path, middle, half, x, y, 0.0);
    double up = arrival(path, middle, half, x, y, stride);
    double down = arrival(path, middle, half, x, y, -stride);
    double best = now;
    double by = 0.0;
    if (up < best) {
      best = up;
      by = stride;
    }
    if (down < best) {
      best = down;
      by = -stride;
    }
    double bend = up - 2.0 * now + down;
    if (bend > 0.0) {
      double top = BEYOND * 0.5 * stride * (down - up) / bend;
      if (Math.abs(top) < 2.0 * stride && arrival(path, middle, half, x, y, top) < best) {
        by = top;
      }
    }
    shift(path, middle, half, x, y, by);
    return Math.max(
        LEAST_STRIDE, by == 0.0 ? 0.4 * stride : Math.min(2.0 * stride, 1.5 * Math.abs(by)));
  }

  /** When the end of a tent is reached that is moved so far. */
  private double arrival(double[] path, int middle, int half, double x, double y, double by) {
    shift(path, middle, half, x, y, by);
    double time = reached[middle - half];
    for (int i = middle - half; i < middle + half; i++) {
      time = side(path, i, time);
    }
    return time;
  }

  private void shift(double[] path, int middle, int half, double x, double y, double by) {
    for (int i = middle - half + 1; i < middle + half; i++) {
      double share = by * (1.0 - Math.abs(i - middle) / (double) half);
      path[2 * i] = held[2 * i] + share * x;
      path[2 * i + 1] = held[2 * i + 1] + share * y;
    }
  }
}
