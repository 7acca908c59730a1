package org.ferryglide.nav.quickest;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The front of all places reached by a time, as labels on a grid settled in order of time; or, run
 * backward from the goal, of all places from which it can still be reached.
 *
 * <p>Moves go in 80 directions, five squares at the farthest, at the speed that is made good at
 * both ends and in the middle, so that times come out up to 1.5 % late. Where nobody can wait,
 * since the stream outruns the craft and turns with time, an earlier label does not do away with a
 * later one: labels are kept by place and time. Where a move is barred now but the craft can hold
 * its place, it may wait. Not thread-safe.
 */
final class Front {
  /** Moves go this many squares at most, either way. */
  private static final int REACH = 5;

  /** A move on which less than this share of the craft's speed is made good is barred. */
  private static final double LEAST_SHARE = 0.03;

  /** A craft holds its place in a stream below this share of its speed. */
  private static final double HOLDS = 0.95;

  /** Labels of one place are this far apart at least, and waits are this long, seconds. */
  private static final double APART_SECONDS = 900.0;

  /** Labels of one place at most. */
  private static final int MOST_LABELS = 40;

  private static final byte WEAK = 1;
  private static final byte STRONG = 2;

  private final FlowGrid grid;
  private final CourseSpeed speeds;
  private final Waters waters;
  private final double departure;
  private final boolean backward;
  private final double arrivalAtGoal;
  private final double calm;
  private final double least;
  private final boolean windless;
  private final boolean open;
  private final boolean mayWait;

  private final int[] moveColumns = new int[96];
  private final int[] moveRows = new int[96];
  private final double[] moveMetres = new double[96];
  private final double[] moveSine = new double[96];
  private final double[] moveCosine = new double[96];
  private int moves;

  private final LabelQueue queue = new LabelQueue();
  private int[] labelNode = new int[4096];
  private double[] labelTime = new double[4096];
  private int[] labelBefore = new int[4096];
  private boolean[] labelWaited = new boolean[4096];
  private int labels;

  /** When each node was settled first and last; infinite before. */
  private final double[] first;

  private final double[] last;

  /** The earliest label of each node that waits to be settled. */
  private final double[] waiting;

  private final byte[] strength;
  private final byte[] count;

  /** Whether land is within a move of each node; null in open water. */
  private final boolean[] nearLand;

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
      FlowGrid grid,
      CraftMotion motion,
      CourseSpeed speeds,
      Waters waters,
      double departure,
      double arrivalAtGoal) {
    this.grid = grid;
    this.speeds = speeds;
    this.waters = waters;
    this.departure = departure;
    this.backward = !Double.isNaN(arrivalAtGoal);
    this.arrivalAtGoal = arrivalAtGoal;
    this.calm = motion.calmSpeed();
    this.least = LEAST_SHARE * calm;
    this.windless = motion.isWindless();
    this.open = waters.isOpen();
    this.mayWait = !backward && !(grid.steady && waters.closures().isEmpty());
    int nodes = grid.nodes();
    first = filled(nodes);
    last = filled(nodes);
    waiting = filled(nodes);
    strength = new byte[nodes];
    count = new byte[nodes];
    nearLand = open ? new boolean[0] : nearLand();
    layMoves();
  }

  private static double[] filled(int nodes) {
    double[] times = new double[nodes];
    Arrays.fill(times, Double.POSITIVE_INFINITY);
    return times;
  }

  private void layMoves() {
    double turn = backward ? -1.0 : 1.0;
    for (int c = -REACH; c <= REACH; c++) {
      for (int r = -REACH; r <= REACH; r++) {
        if (divisor(Math.abs(c), Math.abs(r)) == 1) {
          double squares = Math.hypot(c, r);
          moveColumns[moves] = c;
          moveRows[moves] = r;
          moveMetres[moves] = squares * grid.spacing;
          moveSine[moves] = turn * (c * grid.plane.sine + r * grid.plane.cosine) / squares;
          moveCosine[moves] = turn * (c * grid.plane.cosine - r * grid.plane.sine) / squares;
          moves++;
        }
      }
    }
  }

  private static int divisor(int a, int b) {
    return b == 0 ? a : divisor(b, a % b);
  }

  private boolean[] nearLand() {
    boolean[] near = new boolean[grid.nodes()];
    double[] edges = waters.land().edges();
    for (int i = 0; i < edges.length; i += 4) {
      mark(near, edges, i);
    }
    return near;
  }

  private void mark(boolean[] near, double[] edges, int i) {
    double along0 = grid.plane.along(edges[i], edges[i + 1]);
    double right0 = grid.plane.right(edges[i], edges[i + 1]);
    double along1 = grid.plane.along(edges[i + 2], edges[i + 3]);
    double right1 = grid.plane.right(edges[i + 2], edges[i + 3]);
    double metres = Math.hypot(along1 - along0, right1 - right0);
    int steps = (int) Math.min(1e5, Math.ceil(metres / grid.spacing) + 1);
    for (int k = 0; k <= steps; k++) {
      double share = (double) k / steps;
      long column = Math.round((along0 + share * (along1 - along0)) / grid.spacing);
      long row = Math.round((right0 + share * (right1 - right0)) / grid.spacing);
      for (long c = column - REACH - 1; c <= column + REACH + 1; c++) {
        for (long r = row - REACH - 1; r <= row + REACH + 1; r++) {
          int node = grid.nearest(c * grid.spacing, r * grid.spacing);
          if (node >= 0) {
            near[node] = true;
          }
        }
      }
    }
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
    offer(origin, 0.0, -1, false);
    while (!queue.isEmpty()) {
      double time = queue.earliest();
      int label = queue.poll();
      int node = labelNode[label];
      if (time > limit) {
        return;
      }
      if (labelWaited[label] ? last[node] > labelTime[labelBefore[label]] : time > waiting[node]) {
        continue; // another label of the node was settled since
      }
      if (last[node] == Double.POSITIVE_INFINITY) {
        first[node] = time;
      }
      last[node] = time;
      waiting[node] = Double.POSITIVE_INFINITY;
      count[node]++;
      if (node == target && goalLabel < 0) {
        goalLabel = label;
        if (stopAtGoal) {
          return;
        }
      }
      barred = false;
      spreadFrom(label, node, time);
      if (barred && mayWait && holds(node, time)) {
        push(node, time + APART_SECONDS, label, true);
      }
    }
  }

  private void spreadFrom(int label, int node, double time) {
    int column = node / grid.rows;
    int row = node % grid.rows;
    int layer = grid.layerOf(clock(time));
    float[] held = grid.layer(layer);
    int at = grid.at(held, node, layer);
    if (FlowGrid.isUnknown(held, at)) {
      return;
    }
    boolean looked = !open && nearLand[node];
    for (int m = 0; m < moves; m++) {
      int c = column + moveColumns[m];
      int r = row + moveRows[m];
      if (c < 0 || c >= grid.columns || r < 0 || r >= grid.rows) {
        continue;
      }
      int other = c * grid.rows + r;
      boolean again = last[other] != Double.POSITIVE_INFINITY;
      if (again && (grid.steady || backward || time < last[other] + APART_SECONDS)) {
        continue;
      }
      double speed = speed(held, at, m);
      if (!(speed > least)) {
        barred |= !again;
        continue;
      }
      double reached = time + moveMetres[m] / speed;
      if (!(reached - time < 4.0 * moveMetres[m] / least)) {
        continue;
      }
      double took = seconds(m, node, speed, other, time);
      if (!(took > 0.0)) {
        barred |= !again && took == 0.0;
        continue;
      }
      reached = time + took;
      if (reached >= waiting[other] || (again && isNeedless(other, reached))) {
        continue;
      }
      if (met != null && reached + met.first[other] > togetherAtMost) {
        continue;
      }
      if (!open && isBarred(node, other, looked || nearLand[other], time, reached)) {
        continue;
      }
      offer(other, reached, label, false);
    }
  }

  /** Seconds for a move; 0 if the flow bars it, NaN if it is not known. */
  private double seconds(int m, int node, double speed, int other, double time) {
    int c = moveColumns[m];
    int r = moveRows[m];
    double guess = moveMetres[m] / speed;
    int layer = grid.layerOf(clock(time + guess));
    float[] held = grid.layer(layer);
    int at = grid.at(held, other, layer);
    if (FlowGrid.isUnknown(held, at)) {
      return Double.NaN;
    }
    double end = speed(held, at, m);
    if (!(end > least)) {
      return 0.0;
    }
    if (c * c + r * r == 1) {
      return 0.5 * moveMetres[m] * (1.0 / speed + 1.0 / end);
    }
    layer = grid.layerOf(clock(time + 0.5 * guess));
    held = grid.layer(layer);
    int one = node + c / 2 * grid.rows + r / 2;
    int two = node + (c - c / 2) * grid.rows + (r - r / 2);
    double middle = 0.0;
    for (int i = 0; i < 2; i++) {
      at = grid.at(held, i == 0 ? one : two, layer);
      if (FlowGrid.isUnknown(held, at)) {
        return Double.NaN;
      }
      double here = speed(held, at, m);
      if (!(here > least)) {
        return 0.0;
      }
      middle += 0.5 / here;
    }
    return moveMetres[m] / 6.0 * (1.0 / speed + 4.0 * middle + 1.0 / end);
  }

  private double speed(float[] held, int at, int m) {
    double east = held[at];
    double north = held[at + 1];
    if (windless) {
      double along = east * moveSine[m] + north * moveCosine[m];
      double across = east * moveCosine[m] - north * moveSine[m];
      return along + Math.sqrt(calm * calm - across * across);
    }
    return speeds.madeGood(east, north, held[at + 2], held[at + 3], moveSine[m], moveCosine[m]);
  }

  private double clock(double time) {
    return backward ? arrivalAtGoal - time : time;
  }

  private boolean isBarred(int node, int other, boolean nearLand, double from, double until) {
    if (!nearLand && waters.closures().isEmpty()) {
      return false;
    }
    SearchPlane plane = grid.plane;
    double along = grid.along(node);
    double right = grid.right(node);
    double latitude = plane.latitude(along, right);
    double longitude = plane.longitude(along, right);
    double toAlong = grid.along(other);
    double toRight = grid.right(other);
    double toLatitude = plane.latitude(toAlong, toRight);
    double toLongitude = plane.longitude(toAlong, toRight);
    if (nearLand && waters.land().blocks(latitude, longitude, toLatitude, toLongitude)) {
      return true;
    }
    double start = departure + Math.min(clock(from), clock(until));
    double end = departure + Math.max(clock(from), clock(until));
    if (waters.isClosed(latitude, longitude, toLatitude, toLongitude, start, end)) {
      barred = true;
      return true;
    }
    return false;
  }

  /** Whether a later label of a settled node can do nothing that the earlier one cannot. */
  private boolean isNeedless(int node, double time) {
    if (strength[node] == 0) {
      strength[node] = STRONG;
      double fastest = 0.0;
      for (double t = first[node]; t < first[node] + 6.5 * 3600.0; t += 3600.0) {
        fastest = Math.max(fastest, stream(node, t));
      }
      strength[node] = fastest < HOLDS * calm ? WEAK : STRONG;
    }
    if (strength[node] == WEAK || count[node] >= MOST_LABELS) {
      return true;
    }
    for (double t = last[node]; t < time; t += 0.5 * APART_SECONDS) {
      if (stream(node, t) >= HOLDS * calm) {
        return false;
      }
    }
    return stream(node, time) < HOLDS * calm;
  }

  private boolean holds(int node, double time) {
    return stream(node, time) < HOLDS * calm
        && stream(node, time + APART_SECONDS) < HOLDS * calm
        && count[node] < MOST_LABELS;
  }

  private double stream(int node, double time) {
    int layer = grid.layerOf(clock(time));
    float[] held = grid.layer(layer);
    int at = grid.at(held, node, layer);
    return FlowGrid.isUnknown(held, at)
        ? Double.POSITIVE_INFINITY
        : Math.hypot(held[at], held[at + 1]);
  }

  private void offer(int node, double time, int before, boolean waited) {
    waiting[node] = time;
    push(node, time, before, waited);
  }

  private void push(int node, double time, int before, boolean waited) {
    if (labels == labelNode.length) {
      int longer = 2 * labels;
      labelNode = Arrays.copyOf(labelNode, longer);
      labelTime = Arrays.copyOf(labelTime, longer);
      labelBefore = Arrays.copyOf(labelBefore, longer);
      labelWaited = Arrays.copyOf(labelWaited, longer);
    }
    labelNode[labels] = node;
    labelTime[labels] = time;
    labelBefore[labels] = before;
    labelWaited[labels] = waited;
    queue.add(time, labels++);
  }

  boolean reachedGoal() {
    return goalLabel >= 0;
  }

  /** Seconds from start to goal. */
  double goalTime() {
    return labelTime[goalLabel];
  }

  /** When a node was first reached, seconds; infinite if it was not. */
  double firstReached(int node) {
    return first[node];
  }

  /** Whether the label that reached the goal has waited somewhere on its way. */
  boolean waited() {
    for (int label = goalLabel; label >= 0; label = labelBefore[label]) {
      if (labelWaited[label]) {
        return true;
      }
    }
    return false;
  }

  /** The label by which the goal was reached. */
  int goalLabel() {
    return goalLabel;
  }

  /** The label that settled a node first; -1 if none did. */
  int firstLabel(int node) {
    for (int label = 0; label < labels; label++) {
      if (labelNode[label] == node && labelTime[label] == first[node]) {
        return label;
      }
    }
    return -1;
  }

  /** The nodes from the origin to a label, in the order in which the craft passes them. */
  int[] nodesTo(int label) {
    int n = 0;
    for (int l = label; l >= 0; l = labelBefore[l]) {
      n++;
    }
    int[] nodes = new int[n];
    int i = backward ? 0 : n - 1;
    for (int l = label; l >= 0; l = labelBefore[l]) {
      nodes[i] = labelNode[l];
      i += backward ? 1 : -1;
    }
    return nodes;
  }

  /** When the craft leaves each of those nodes at the earliest, as far as it waits; else 0. */
  double[] notBefore(int label) {
    int[] nodes = nodesTo(label);
    double[] times = new double[nodes.length];
    int i = nodes.length - 1;
    for (int l = label; l >= 0; l = labelBefore[l]) {
      times[i--] = labelWaited[l] ? labelTime[l] : 0.0;
    }
    return times;
  }
}
