package org.ferryglide.nav.quickest;

/**
 * How long the moves of a front from one of its nodes take, forward in time or, for a front run
 * back from its goal, backward. Not thread-safe.
 */
final class MoveTimes {
  /** A move on which less than this share of the craft's speed is made good is barred. */
  private static final double LEAST_SHARE = 0.03;

  private final NodeSpeeds speeds;
  private final SearchGrid grid;
  private final Moves moves;
  private final double least;
  private final boolean backward;
  private final double arrivalAtGoal;
  private final NodeSpeeds.Look here = new NodeSpeeds.Look();
  private final NodeSpeeds.Look there = new NodeSpeeds.Look();

  /** Takes when the goal is reached for a front run backward, NaN for one run forward. */
  MoveTimes(NodeSpeeds speeds, double calmSpeed, double arrivalAtGoal) {
    this.speeds = speeds;
    grid = speeds.grid;
    moves = speeds.moves;
    least = LEAST_SHARE * calmSpeed;
    backward = !Double.isNaN(arrivalAtGoal);
    this.arrivalAtGoal = arrivalAtGoal;
  }

  /** Looks at the node that is left; false if the flow is not known there and then. */
  boolean leave(int node, double time) {
    return speeds.look(node, clock(time), here);
  }

  /** The speed made good on a move from the node that is left. */
  double speed(int m) {
    return speed(here, m);
  }

  /** Whether a speed is none, or hardly one. */
  boolean isBarred(double speed) {
    return !(speed > least);
  }

  /** Seconds for a move; 0 if the flow bars it, NaN if it is not known. */
  double seconds(int m, int node, double speed, int other, double time) {
    double guess = moves.metres[m] / speed;
    if (!speeds.look(other, clock(time + guess), there)) {
      return Double.NaN;
    }
    double end = speed(there, m);
    if (isBarred(end)) {
      return 0.0;
    }
    int c = moves.columns[m];
    int r = moves.rows[m];
    if (Math.abs(c) <= 1 && Math.abs(r) <= 1) {
      return 0.5 * moves.metres[m] * (1.0 / speed + 1.0 / end);
    }
    int half = c / 2 * grid.rows + r / 2;
    double one = slowness(m, node + half, time + 0.5 * guess);
    double two = slowness(m, other - half, time + 0.5 * guess);
    double middle = 0.5 * (one + two);
    return middle == Double.POSITIVE_INFINITY
        ? 0.0
        : moves.metres[m] / 6.0 * (1.0 / speed + 4.0 * middle + 1.0 / end);
  }

  /** Seconds for a metre on a move at a node; infinite if barred, NaN if not known. */
  private double slowness(int m, int node, double time) {
    if (!speeds.look(node, clock(time), there)) {
      return Double.NaN;
    }
    double speed = speed(there, m);
    return isBarred(speed) ? Double.POSITIVE_INFINITY : 1.0 / speed;
  }

  private double speed(NodeSpeeds.Look look, int m) {
    return speeds.speed(look, backward ? moves.reverse(m) : m);
  }

  /** Seconds since the departure at a time of the front. */
  double clock(double time) {
    return backward ? arrivalAtGoal - time : time;
  }
}
