package org.ferryglide.nav.quickest;

import java.util.Arrays;

/**
 * The times of a front, made earlier and sure: each node is timed anew on the straight track from
 * the node from which the front came, and on that from where the straight track to this one began,
 * so that ways turn at nodes but run in any direction. Every time is that of a way which {@link
 * TrackTimes} has timed, but that after a wait the front's own time goes on; for a front run back
 * from its goal it is the latest departure by it. Not thread-safe.
 */
final class StraightTimes {
  /** Tracks are timed in steps of a square, but in no more than this. */
  private static final double MOST_STEPS = 32.0;

  /** A departure is late enough that arrives before the time by less; so little is no loss. */
  private static final double SPARE_SECONDS = 0.5;

  private static final int CORRECTIONS = 12;

  /** How far along a side a time is met is known to this share of the side. */
  static final double FINE_SHARE = 1.0 / 64.0;

  /** A place is on a line of equal time that is reached before it by no more than this share. */
  private static final double CLOSE_SHARE = 2e-5;

  private static final int CUTS = 16;

  private final SearchGrid grid;
  private final TrackTimes tracks;

  /** When the goal is reached, seconds since the departure; NaN for a front run forward. */
  private final double arrivalAtGoal;

  private final double[] times;

  /** The node at the other end of the straight track of each. */
  private final int[] roots;

  /** Takes a front that was spread, and when the goal is reached if it was run backward. */
  StraightTimes(Front front, SearchGrid grid, TrackTimes tracks, double arrivalAtGoal) {
    this.grid = grid;
    this.tracks = tracks;
    this.arrivalAtGoal = arrivalAtGoal;
    times = new double[grid.nodes()];
    Arrays.fill(times, Double.POSITIVE_INFINITY);
    roots = new int[grid.nodes()];
    for (int i = 0; i < front.settledNodes(); i++) {
      int node = front.settledNode(i);
      int before = front.nodeBefore(node);
      if (before < 0) {
        times[node] = 0.0;
        roots[node] = node;
      } else {
        settle(front, node, before);
      }
    }
  }

  private void settle(Front front, int node, int before) {
    double left = front.timeBefore(node);
    boolean first = left == front.firstReached(before); // else the craft has waited, or came again
    double along = grid.along(node);
    double right = grid.right(node);
    times[node] = reached(before, first ? times[before] : left, along, right);
    roots[node] = before;
    int root = roots[before];
    if (first && root != before) {
      double straight = reached(root, times[root], along, right);
      if (straight <= times[node] + SPARE_SECONDS) { // or as good, since the longer track leads on
        roots[node] = root;
      }
      times[node] = Math.min(straight, times[node]);
    }
  }

  /** The time of a node; infinite where there is none. */
  double at(int node) {
    return times[node];
  }

  /** The time of any place of the plane; infinite where there is none. */
  double at(double along, double right) {
    double least = Double.POSITIVE_INFINITY;
    double column = Math.floor(along / grid.spacing);
    double row = Math.floor(right / grid.spacing);
    for (int i = 0; i < 4; i++) {
      double ahead = i < 2 ? column : column + 1.0;
      double aside = i % 2 == 0 ? row : row + 1.0;
      int node = grid.nearest(ahead * grid.spacing, aside * grid.spacing);
      if (node >= 0 && times[node] < Double.POSITIVE_INFINITY) {
        least = Math.min(least, by(node, along, right));
      }
    }
    return least;
  }

  /** The time of a place by a straight track from a node or from where the track to it began. */
  private double by(int node, double along, double right) {
    int root = roots[node];
    return Math.min(
        reached(node, times[node], along, right), reached(root, times[root], along, right));
  }

  /**
   * How far from a node to its neighbour the craft gets by a time, as a share of the side between
   * them: the place there is made by then, and so are those before it.
   */
  double share(int node, int neighbour, double time) {
    return share(
        node,
        grid.along(node),
        grid.right(node),
        times[node],
        grid.along(neighbour),
        grid.right(neighbour),
        times[neighbour],
        time);
  }

  /**
   * How far from one place to another the craft gets by a time on tracks by way of a node near
   * them, as a share; 0 if not even to the first.
   */
  double share(
      int node,
      double along,
      double right,
      double reachedFirst,
      double toAlong,
      double toRight,
      double reachedOther,
      double time) {
    double low = 0.0;
    double lowTime = reachedFirst;
    double high = 1.0;
    double highTime = reachedOther;
    double ahead = toAlong - along;
    double aside = toRight - right;
    double aim = time - 0.5 * CLOSE_SHARE * time;
    for (int i = 0; i < CUTS && high - low > FINE_SHARE * high; i++) {
      if (time - lowTime <= CLOSE_SHARE * time) {
        break;
      }
      double part = (aim - lowTime) / (highTime - lowTime); // 0 where nothing is known beyond
      double share = low + (high - low) * (part > 0.0 && part < 1.0 && i % 3 < 2 ? part : 0.5);
      double reached = by(node, along + share * ahead, right + share * aside);
      if (reached <= time) {
        low = share;
        lowTime = reached;
      } else {
        high = share;
        highTime = reached;
      }
    }
    return low;
  }

  /** The time of a place by a straight track from a node; infinite if it cannot be made. */
  private double reached(int node, double time, double along, double right) {
    double metres = Math.hypot(along - grid.along(node), right - grid.right(node));
    tracks.stepAtMost(Math.max(grid.spacing, metres / MOST_STEPS));
    double reached =
        Double.isNaN(arrivalAtGoal)
            ? tracks.arrival(grid.along(node), grid.right(node), along, right, time)
            : arrivalAtGoal - latest(along, right, node, arrivalAtGoal - time);
    return Double.isNaN(reached) ? Double.POSITIVE_INFINITY : reached;
  }

  /** The latest departure from a place that makes a node in time; NaN if there is none. */
  private double latest(double along, double right, int node, double due) {
    double toAlong = grid.along(node);
    double toRight = grid.right(node);
    double leave = due;
    double before = Double.NaN;
    double lateBefore = Double.NaN;
    for (int i = 0; i < CORRECTIONS; i++) {
      double late = tracks.arrival(along, right, toAlong, toRight, leave) - due;
      if (Double.isNaN(late) || (late <= 0.0 && late > -SPARE_SECONDS)) {
        return Double.isNaN(late) ? late : leave;
      }
      double slope = (late - lateBefore) / (leave - before);
      before = leave;
      lateBefore = late;
      leave -= (late + 0.5 * SPARE_SECONDS) / (slope > 0.2 && slope < 5.0 ? slope : 1.0);
    }
    return Double.NaN;
  }
}
