package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Rough polygons for {@link ManyStarts} to begin from: the earliest arrivals over a plain grid by
 * Dijkstra's method, and again with the surroundings of every way found so far made slow, so that
 * ways elsewhere come out too. Where the stream outruns the craft at some time, so that it cannot
 * wait, arrivals are kept by place and by steps of time: an earlier one may be worse than a later.
 * It shares nothing with the library.
 */
final class GridStarts {
  private static final double BEYOND = 4.0;
  private static final double ASIDE = 7.0;
  private static final double NEAR = 0.7;
  private static final double SLOWED = 1.25;

  /** Steps of time in which a turning stream is looked at. */
  private static final double TIME_STEP = 0.4;

  private static final int TIME_STEPS = 64;
  private static final double LEAST_SPEED = 0.05;
  private static final double HOLDS = 0.95;

  /** In the winds of {@link EddyKind}: 1.4 of the craft's speed; ample. */
  private static final double FASTEST_THROUGH_WATER = 1.5;

  private static final float UNASKED = 0.0f;
  private static final float NONE = -1.0f;

  /** Where each step goes: columns and rows without a common divisor. */
  private static final int[][] STEPS = steps(3);

  private static final double[] LENGTH = new double[STEPS.length];
  private static final double[] EAST = new double[STEPS.length];
  private static final double[] NORTH = new double[STEPS.length];

  static {
    for (int i = 0; i < STEPS.length; i++) {
      LENGTH[i] = Math.hypot(STEPS[i][0], STEPS[i][1]);
      EAST[i] = STEPS[i][0] / LENGTH[i];
      NORTH[i] = STEPS[i][1] / LENGTH[i];
    }
  }

  /** Whether a step between two places is barred. */
  interface Bar {
    boolean bars(double x0, double y0, double x1, double y1);
  }

  private final ManyStarts.MadeGood madeGood;
  private final Bar bar;

  /** Between nodes. */
  private final double spacing;

  private final int beyond;
  private final int aside;
  private final int along;
  private final int columns;
  private final int rows;
  private final double[] slow;

  /** Steps of time that differ. */
  private final int times;

  /** The tide at each step of time. */
  private final double[] cosines;

  private final double[] sines;

  /** Streams by node, as {@link Eddies#parts} tells them. */
  private final double[] parts;

  /** No speed over the ground is greater. */
  private final double fastest;

  /** Speeds made good at a step of time, by node and step over the grid. */
  private final float[][] speeds;

  /**
   * By node and step of time, how many steps the stream has outrun the craft until then: while it
   * can hold its place the number stays, and the earliest arrival is the best.
   */
  private final byte[] outrun;

  GridStarts(Eddies eddies, ManyStarts.MadeGood madeGood, double goalX, double spacing, Bar bar) {
    this.bar = bar;
    this.spacing = spacing;
    beyond = (int) Math.round(BEYOND / spacing);
    aside = (int) Math.round(ASIDE / spacing);
    rows = 2 * aside + 1;
    this.madeGood = madeGood;
    along = (int) Math.round(goalX / spacing);
    columns = along + 2 * beyond + 1;
    slow = new double[columns * rows];
    Arrays.fill(slow, 1.0);
    times = eddies.tide == 0.0 ? 1 : TIME_STEPS;
    speeds = new float[times][];
    cosines = new double[times];
    sines = new double[times];
    for (int i = 0; i < times; i++) {
      cosines[i] = Math.cos(eddies.tide * (i + 0.5) * TIME_STEP);
      sines[i] = Math.sin(eddies.tide * (i + 0.5) * TIME_STEP);
    }
    parts = new double[4 * columns * rows];
    outrun = new byte[columns * rows * times];
    double[] flow = new double[4];
    double most = 0.0;
    for (int node = 0; node < columns * rows; node++) {
      eddies.parts(x(node), y(node), flow);
      System.arraycopy(flow, 0, parts, 4 * node, 4);
      int steps = 0;
      for (int i = 0; i < times; i++) {
        double east = east(node, i);
        double north = north(node, i);
        double square = east * east + north * north;
        most = Math.max(most, square);
        if (times > 1 && square > HOLDS * HOLDS) {
          steps++;
        }
        outrun[node * times + i] = (byte) steps;
      }
    }
    fastest = FASTEST_THROUGH_WATER + Math.sqrt(most);
  }

  private double east(int node, int timeStep) {
    return parts[4 * node] * cosines[timeStep] + parts[4 * node + 2] * sines[timeStep];
  }

  private double north(int node, int timeStep) {
    return parts[4 * node + 1] * cosines[timeStep] + parts[4 * node + 3] * sines[timeStep];
  }

  private static int[][] steps(int reach) {
    List<int[]> steps = new ArrayList<>();
    for (int c = -reach; c <= reach; c++) {
      for (int r = -reach; r <= reach; r++) {
        boolean prime = c != 0 || r != 0;
        for (int d = 2; d <= reach; d++) {
          prime &= c % d != 0 || r % d != 0;
        }
        if (prime) {
          steps.add(new int[] {c, r});
        }
      }
    }
    return steps.toArray(new int[0][]);
  }

  private double x(int node) {
    return (node / rows - beyond) * spacing;
  }

  private double y(int node) {
    return (node % rows - aside) * spacing;
  }

  /** So many ways, as polygons; fewer if none leads to the goal. */
  List<double[]> ways(int most) {
    List<double[]> ways = new ArrayList<>();
    for (int i = 0; i < most; i++) {
      List<Integer> nodes = earliest();
      if (nodes.isEmpty()) {
        return ways;
      }
      ways.add(polygon(nodes));
      slowDown(nodes);
    }
    return ways;
  }

  private int timeStep(double time) {
    return Math.min(times - 1, (int) (time / TIME_STEP));
  }

  /** The speed made good at a node on a step over the grid; not above 0 if there is none. */
  private double speed(int node, int step, double time) {
    int index = node * STEPS.length + step;
    int at = timeStep(time);
    if (speeds[at] == null) {
      speeds[at] = new float[columns * rows * STEPS.length];
    }
    if (speeds[at][index] != UNASKED) {
      return speeds[at][index];
    }
    double made = madeGood.speed(east(node, at), north(node, at), EAST[step], NORTH[step]);
    speeds[at][index] = made > LEAST_SPEED ? (float) made : NONE;
    return speeds[at][index];
  }

  /**
   * A place reached.
   *
   * @param least the earliest that the goal can be reached through it
   */
  private record Label(int place, double time, int from, double least) {}

  private Label label(int place, double time, int from, int goal) {
    int node = place / (times + 1);
    double left = Math.hypot(x(goal) - x(node), y(goal) - y(node));
    return new Label(place, time, from, time + left / fastest);
  }

  private List<Integer> earliest() {
    int start = beyond * rows + aside;
    int goal = start + along * rows;
    double[] reached = new double[columns * rows * (times + 1)];
    Arrays.fill(reached, Double.POSITIVE_INFINITY);
    List<Label> settled = new ArrayList<>();
    PriorityQueue<Label> queue = new PriorityQueue<>((a, b) -> Double.compare(a.least, b.least));
    reached[place(start, 0.0)] = 0.0;
    queue.add(label(place(start, 0.0), 0.0, -1, goal));
    while (!queue.isEmpty()) {
      Label label = queue.remove();
      if (label.time > reached[label.place]) {
        continue;
      }
      int node = label.place / (times + 1);
      settled.add(label);
      if (node == goal) {
        return nodes(settled, label);
      }
      spread(label, node, goal, settled.size() - 1, reached, queue);
    }
    return List.of();
  }

  /** A node and, where nobody can wait, a step of time. */
  private int place(int node, double time) {
    return node * (times + 1) + outrun[node * times + timeStep(time)];
  }

  private void spread(
      Label label, int node, int goal, int number, double[] reached, PriorityQueue<Label> queue) {
    for (int k = 0; k < STEPS.length; k++) {
      int column = node / rows + STEPS[k][0];
      int row = node % rows + STEPS[k][1];
      if (column < 0 || column >= columns || row < 0 || row >= rows) {
        continue;
      }
      int other = column * rows + row;
      double here = speed(node, k, label.time);
      if (here < 0.0) {
        continue;
      }
      double length = spacing * LENGTH[k];
      double there = speed(other, k, label.time + length / here);
      if (there < 0.0 || bar.bars(x(node), y(node), x(other), y(other))) {
        continue;
      }
      double time = label.time + slow[other] * 0.5 * length * (1.0 / here + 1.0 / there);
      int place = place(other, time);
      if (time < reached[place]) {
        reached[place] = time;
        queue.add(label(place, time, number, goal));
      }
    }
  }

  private List<Integer> nodes(List<Label> settled, Label last) {
    List<Integer> nodes = new ArrayList<>();
    Label label = last;
    nodes.add(label.place / (times + 1));
    while (label.from >= 0) {
      label = settled.get(label.from);
      nodes.add(0, label.place / (times + 1));
    }
    return nodes;
  }

  private void slowDown(List<Integer> nodes) {
    boolean[] near = new boolean[slow.length];
    int reach = (int) (NEAR / spacing);
    for (int node : nodes) {
      for (int c = -reach; c <= reach; c++) {
        for (int r = -reach; r <= reach; r++) {
          int column = node / rows + c;
          int row = node % rows + r;
          if (column >= 0 && column < columns && row >= 0 && row < rows) {
            near[column * rows + row] = true;
          }
        }
      }
    }
    for (int i = 0; i < near.length; i++) {
      slow[i] *= near[i] ? SLOWED : 1.0;
    }
  }

  private double[] polygon(List<Integer> nodes) {
    double[] polygon = new double[2 * nodes.size()];
    for (int i = 0; i < nodes.size(); i++) {
      polygon[2 * i] = x(nodes.get(i));
      polygon[2 * i + 1] = y(nodes.get(i));
    }
    return polygon;
  }
}
