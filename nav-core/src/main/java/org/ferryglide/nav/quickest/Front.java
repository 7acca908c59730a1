package org.ferryglide.nav.quickest;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The front of all places reached by a time, as labels on a grid settled in order of time; or, run
 * backward from the goal, of all places from which it can still be reached.
 *
 * <p>Moves take as long as the speeds made good at both ends and in the middle say. Where nobody
 * can wait, since the stream outruns the craft and turns with time, an earlier label does not do
 * away with a later one: labels are kept by place and time. Where a move is barred now but the
 * craft can hold its place, it may wait. Not thread-safe.
 */
final class Front {
  /**
   * Labels of one place are this far apart at least, and waits are this long, seconds. Labels 300 s
   * apart, and looks at the stream three and a half times as often, changed none of 100 answers
   * among eddies that outrun the craft and turn by more than 0.01 %.
   */
  private static final double APART_SECONDS = 900.0;

  /** Labels of one place at most. */
  private static final int MOST_LABELS = 40;

  private final SearchGrid grid;
  private final NodeSpeeds speeds;
  private final Moves moves;
  private final MoveTimes times;
  private final Barriers barriers;
  private final double departure;
  private final boolean backward;
  private final boolean open;
  private final boolean mayWait;
  private final Labels labels = new Labels();
  private final SettledNodes settled;

  /** The earliest label of each node that waits to be settled. */
  private final double[] waiting;

  /** Whether some area is closed for a time, and the craft may wait until it opens. */
  private final boolean closing;

  /**
   * Labels are kept only where this front has been and the two times together are below a limit.
   */
  private @Nullable Front met;

  private double togetherAtMost;

  /** Whether some move of the label now spread was barred for a time. */
  private boolean barred;

  /** Which label reached the goal; -1 if none did. */
  private int goalLabel = -1;

  /**
   * Makes a front that is not yet spread.
   *
   * @param arrivalAtGoal for a front run backward, when the goal is reached, seconds since the
   *     departure; NaN for one run forward
   */
  Front(
      NodeSpeeds speeds,
      CraftMotion motion,
      Waters waters,
      double departure,
      double arrivalAtGoal) {
    this.grid = speeds.grid;
    this.speeds = speeds;
    this.moves = speeds.moves;
    this.departure = departure;
    this.backward = !Double.isNaN(arrivalAtGoal);
    this.times = new MoveTimes(speeds, motion.calmSpeed(), arrivalAtGoal);
    this.open = waters.isOpen();
    barriers = new Barriers(grid, waters, moves.reach);
    this.mayWait = !backward && !(speeds.steady && !barriers.hasClosures());
    settled = new SettledNodes(grid.nodes());
    waiting = new double[grid.nodes()];
    Arrays.fill(waiting, Double.POSITIVE_INFINITY);
    closing = mayWait && barriers.hasClosures();
  }

  /** Keeps only labels where another front has been, both times together below a limit. */
  void keepWithin(Front other, double seconds) {
    met = other;
    togetherAtMost = seconds;
  }

  /**
   * Spreads the front until it has passed the goal (the start, if run backward) and the time given.
   *
   * @param limit no label later than this is kept, seconds
   * @param stopAtGoal whether to stop when the goal is reached
   */
  void spread(double limit, boolean stopAtGoal) {
    int origin = backward ? grid.goal : grid.start;
    int target = backward ? grid.start : grid.goal;
    offer(origin, 0.0, -1);
    while (!labels.isEmpty()) {
      int label = labels.poll();
      int node = labels.node(label);
      double time = labels.time(label);
      if (time > limit) {
        return;
      }
      if (labels.waited(label)
          ? settled.last(node) > labels.timeBefore(label)
          : time > waiting[node]) {
        continue; // another label of the node was settled since
      }
      settled.settle(node, time, label);
      waiting[node] = Double.POSITIVE_INFINITY;
      if (node == target && goalLabel < 0) {
        goalLabel = label;
        if (stopAtGoal) {
          return;
        }
      }
      barred = false;
      spreadFrom(label, node, time);
      double later = barred && mayWait ? waitsUntil(time) : time;
      if (later > time && holds(node, time, later)) {
        labels.add(node, later, label, true);
      }
    }
  }

  private void spreadFrom(int label, int node, double time) {
    if (!times.leave(node, time)) {
      return;
    }
    int column = node / grid.rows;
    int row = node % grid.rows;
    boolean once =
        backward || (!barriers.hasClosures() && (speeds.steady || speeds.holdsEverywhere()));
    for (int m = 0; m < moves.count; m++) {
      int c = column + moves.columns[m];
      int r = row + moves.rows[m];
      if (c < 0 || c >= grid.columns || r < 0 || r >= grid.rows) {
        continue;
      }
      int other = c * grid.rows + r;
      // whoever must be out of an area may have to stay out of it until it opens
      barred |= closing && departure + time < barriers.lastClosed(other);
      boolean again = settled.has(other);
      if (again && (once || time < settled.last(other) + APART_SECONDS)) {
        continue;
      }
      double metres = moves.metres[m];
      double speed = times.speed(m);
      if (times.isBarred(speed)) {
        barred |= !again;
        continue;
      }
      // as fast as can be but at its start, for which Simpson's rule counts a sixth
      double soonest = time + metres * (1.0 / speed + 5.0 / speeds.fastest()) / 6.0;
      if (soonest >= waiting[other]) {
        continue;
      }
      double took = times.seconds(m, node, speed, other, time);
      if (!(took > 0.0)) {
        barred |= !again && took == 0.0;
        continue;
      }
      if (speeds.close && !backward && time + took < waiting[other]) {
        took = speeds.secondsAlong(node, other, m, time, took);
        if (!(took > 0.0)) {
          barred |= !again;
          continue;
        }
      }
      double reached = time + took;
      if (reached >= waiting[other] || (again && isNeedless(other, reached))) {
        continue;
      }
      if (met != null && reached + met.firstReached(other) > togetherAtMost) {
        continue;
      }
      if (!open && isBarred(node, other, time, reached)) {
        continue;
      }
      offer(other, reached, label);
    }
  }

  private boolean isBarred(int node, int other, double from, double until) {
    if (barriers.isLand(node, other)) {
      return true;
    }
    boolean closed = isClosed(node, other, from, until);
    barred |= closed;
    return closed;
  }

  /** Whether a later label of a settled node can do nothing that the earlier one cannot. */
  private boolean isNeedless(int node, double time) {
    if (settled.times(node) >= MOST_LABELS) {
      return true;
    }
    if (isClosed(node, settled.last(node), time)) {
      return false; // nobody could have stayed
    }
    for (double t = settled.last(node); t < time; t += 0.5 * APART_SECONDS) {
      if (!speeds.holds(node, times.clock(t))) {
        return false;
      }
    }
    return speeds.holds(node, times.clock(time));
  }

  /** Until when a craft waits at once: until some area opens, if that is soon. */
  private double waitsUntil(double time) {
    double opens = barriers.opensAfter(departure + time) - departure;
    return Math.min(time + APART_SECONDS, opens);
  }

  private boolean holds(int node, double time, double until) {
    // what stands in tables is asked first; it looks in the middle of long stretches only
    return settled.times(node) < MOST_LABELS
        && speeds.holds(node, time)
        && speeds.holds(node, until)
        && !isClosed(node, time, until)
        && speeds.holdsAllAlong(node, time, until);
  }

  /** Whether a place is closed at some moment between two times. */
  private boolean isClosed(int node, double from, double until) {
    return isClosed(node, node, from, until);
  }

  private boolean isClosed(int node, int other, double from, double until) {
    double one = departure + times.clock(from);
    double two = departure + times.clock(until);
    return barriers.isClosed(node, other, Math.min(one, two), Math.max(one, two));
  }

  private void offer(int node, double time, int before) {
    waiting[node] = time;
    labels.add(node, time, before, false);
  }

  boolean reachedGoal() {
    return goalLabel >= 0;
  }

  /** Seconds from start to goal. */
  double goalTime() {
    return labels.time(goalLabel);
  }

  /** When a node was first reached, seconds; infinite if it was not. */
  double firstReached(int node) {
    return settled.first(node);
  }

  /** Whether the label that reached the goal has waited somewhere on its way. */
  boolean waited() {
    return labels.waitedUpTo(goalLabel);
  }

  /** The label by which the goal was reached. */
  int goalLabel() {
    return goalLabel;
  }

  /** The label that settled a node first; -1 if none did. */
  int firstLabel(int node) {
    return settled.firstLabel(node);
  }

  /** How many nodes were settled. */
  int settledNodes() {
    return settled.nodes();
  }

  /** The node that was settled as the one of a number, from 0 on. */
  int settledNode(int number) {
    return settled.node(number);
  }

  /** The node from which the label came that settled one first; -1 for the origin. */
  int nodeBefore(int node) {
    int before = labels.before(settled.firstLabel(node));
    return before < 0 ? -1 : labels.node(before);
  }

  /** The time of that label. */
  double timeBefore(int node) {
    return labels.timeBefore(settled.firstLabel(node));
  }

  /** The nodes from the origin to a label, in the order in which the craft passes them. */
  int[] nodesTo(int label) {
    int[] nodes = labels.nodes(label);
    for (int i = 0, j = nodes.length - 1; backward && i < j; i++, j--) {
      int node = nodes[i];
      nodes[i] = nodes[j];
      nodes[j] = node;
    }
    return nodes;
  }

  /** When the craft leaves each of those nodes at the earliest, as far as it waits; else 0. */
  double[] notBefore(int label) {
    return labels.waits(label);
  }
}
