package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Rough polygons for {@link ManyStarts} to begin from: the earliest arrivals over a plain grid by
 * Dijkstra's method, and again with the surroundings of every way found so far made slow, so that
 * ways elsewhere come out too. It shares nothing with the library.
 */
final class GridStarts {
  private static final double SPACING = 0.2;
  private static final int BEYOND = 20;
  private static final int ASIDE = 35;
  private static final double NEAR = 0.7;
  private static final double SLOWED = 1.25;

  /** Steps of a knight and of a king. */
  private static final int[][] STEPS = {
    {1, 0}, {0, 1}, {-1, 0}, {0, -1}, {1, 1}, {1, -1}, {-1, 1}, {-1, -1},
    {2, 1}, {2, -1}, {-2, 1}, {-2, -1}, {1, 2}, {1, -2}, {-1, 2}, {-1, -2}
  };

  /** When the end of a straight track is reached. */
  interface Track {
    double arrival(double x0, double y0, double x1, double y1, double started);
  }

  private final Track track;
  private final int along;
  private final int columns;
  private final int rows = 2 * ASIDE + 1;
  private final double[] slow;

  GridStarts(Track track, double goalX) {
    this.track = track;
    along = (int) Math.round(goalX / SPACING);
    columns = along + 2 * BEYOND + 1;
    slow = new double[columns * rows];
    Arrays.fill(slow, 1.0);
  }

  private double x(int node) {
    return (node / rows - BEYOND) * SPACING;
  }

  private double y(int node) {
    return (node % rows - ASIDE) * SPACING;
  }

  /** So many ways, as polygons of so many sides. */
  List<double[]> ways(int most, int sides) {
    List<double[]> ways = new ArrayList<>();
    for (int i = 0; i < most; i++) {
      List<Integer> nodes = earliest();
      ways.add(polygon(nodes, sides));
      slowDown(nodes);
    }
    return ways;
  }

  private record Label(int node, double time) {}

  private List<Integer> earliest() {
    int start = BEYOND * rows + ASIDE;
    int goal = start + along * rows;
    double[] reached = new double[columns * rows];
    int[] from = new int[columns * rows];
    Arrays.fill(reached, Double.POSITIVE_INFINITY);
    reached[start] = 0.0;
    PriorityQueue<Label> queue = new PriorityQueue<>((a, b) -> Double.compare(a.time, b.time));
    queue.add(new Label(start, 0.0));
    while (!queue.isEmpty()) {
      Label label = queue.remove();
      int node = label.node;
      if (label.time > reached[node]) {
        continue;
      }
      if (node == goal) {
        break;
      }
      for (int[] step : STEPS) {
        int column = node / rows + step[0];
        int row = node % rows + step[1];
        if (column < 0 || column >= columns || row < 0 || row >= rows) {
          continue;
        }
        int other = column * rows + row;
        double time = track.arrival(x(node), y(node), x(other), y(other), label.time);
        time = label.time + slow[other] * (time - label.time);
        if (time < reached[other]) {
          reached[other] = time;
          from[other] = node;
          queue.add(new Label(other, time));
        }
      }
    }
    List<Integer> nodes = new ArrayList<>();
    for (int node = goal; node != start; node = from[node]) {
      nodes.add(0, node);
    }
    nodes.add(0, start);
    return nodes;
  }

  private void slowDown(List<Integer> nodes) {
    boolean[] near = new boolean[slow.length];
    int reach = (int) (NEAR / SPACING);
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

  /** The way cut into sides of equal length. */
  private double[] polygon(List<Integer> nodes, int sides) {
    double length = 0.0;
    for (int i = 1; i < nodes.size(); i++) {
      length += side(nodes, i);
    }
    double[] polygon = new double[2 * (sides + 1)];
    int at = 1;
    double passed = 0.0;
    for (int k = 0; k <= sides; k++) {
      double wanted = length * k / sides;
      while (at < nodes.size() - 1 && passed + side(nodes, at) < wanted) {
        passed += side(nodes, at++);
      }
      double share = Math.min(1.0, (wanted - passed) / side(nodes, at));
      int before = nodes.get(at - 1);
      int after = nodes.get(at);
      polygon[2 * k] = x(before) + share * (x(after) - x(before));
      polygon[2 * k + 1] = y(before) + share * (y(after) - y(before));
    }
    return polygon;
  }

  private double side(List<Integer> nodes, int i) {
    int a = nodes.get(i - 1);
    int b = nodes.get(i);
    return Math.hypot(x(b) - x(a), y(b) - y(a));
  }
}
