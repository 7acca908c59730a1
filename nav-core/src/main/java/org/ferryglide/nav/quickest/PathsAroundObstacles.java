package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.jspecify.annotations.Nullable;

/**
 * The quickest path round obstacles: extremals from corner to corner, and along edges, joined by
 * earliest arrival.
 *
 * <p>A quickest path is free water between the places where it touches an obstacle, and it touches
 * at corners or runs along edges. Earliest arrival at a corner is never worse than a later one as
 * long as the craft could wait there, which holds wherever it can stem the stream. Corners are
 * passed at {@link #CLEARANCE_METRES}. Works in radians.
 */
final class PathsAroundObstacles {
  /** How far outside a corner the path turns, metres. */
  static final double CLEARANCE_METRES = 2.0;

  /** Longest piece of an edge between two places where a path may leave it, metres. */
  private static final double EDGE_PIECE_METRES = 1000.0;

  private static final int STEPS_ALONG_EDGE = 24;

  private final CraftMotion motion;
  private final double speed;
  private final Obstacles obstacles;
  private final Extremals earth;
  private final double departure;
  private final double horizon;

  private final List<double[]> nodes = new ArrayList<>();

  /** The nodes before and after each node along its obstacle; -1 for start and goal. */
  private final List<int[]> alongEdges = new ArrayList<>();

  PathsAroundObstacles(
      CraftMotion motion,
      Obstacles obstacles,
      double[] start,
      double[] goal,
      double departureSeconds,
      double horizonSeconds) {
    this.motion = motion;
    this.speed = motion.calmSpeed();
    this.obstacles = obstacles;
    this.earth = new Extremals(motion, Ellipsoid.WGS84);
    this.departure = departureSeconds;
    this.horizon = horizonSeconds;
    nodes.add(start);
    nodes.add(goal);
    alongEdges.add(new int[] {-1, -1});
    alongEdges.add(new int[] {-1, -1});
    for (int p = 0; p < obstacles.count(); p++) {
      addCorners(obstacles.latitudes(p), obstacles.longitudes(p));
    }
  }

  private void addCorners(double[] latitudes, double[] longitudes) {
    int corners = latitudes.length;
    List<double[]> around = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      around.add(outside(latitudes, longitudes, i));
    }
    int first = nodes.size();
    for (int i = 0; i < corners; i++) {
      double[] from = around.get(i);
      double[] to = around.get((i + 1) % corners);
      int pieces = (int) Math.max(1, Math.ceil(metres(from, to) / EDGE_PIECE_METRES));
      for (int piece = 0; piece < pieces; piece++) {
        double share = (double) piece / pieces;
        nodes.add(
            new double[] {
              from[0] + share * (to[0] - from[0]),
              from[1] + share * Math.IEEEremainder(to[1] - from[1], 2.0 * Math.PI)
            });
      }
    }
    int count = nodes.size() - first;
    for (int i = 0; i < count; i++) {
      alongEdges.add(new int[] {first + (i + count - 1) % count, first + (i + 1) % count});
    }
  }

  /** A place just outside a corner, along the line that halves it. */
  private double[] outside(double[] latitudes, double[] longitudes, int i) {
    int n = latitudes.length;
    double north = earth.meridianRadius(latitudes[i]);
    double east = earth.parallelRadius(latitudes[i]);
    double[] toBefore = unit(latitudes, longitudes, i, (i + n - 1) % n, north, east);
    double[] toAfter = unit(latitudes, longitudes, i, (i + 1) % n, north, east);
    double n1 = toBefore[0] + toAfter[0];
    double e1 = toBefore[1] + toAfter[1];
    double length = Math.hypot(n1, e1);
    if (length < 1e-9) { // a straight corner: square to the edge
      n1 = -toAfter[1];
      e1 = toAfter[0];
      length = 1.0;
    }
    double latitudeStep = CLEARANCE_METRES * n1 / length / north;
    double longitudeStep = CLEARANCE_METRES * e1 / length / east;
    if (obstacles.contains(latitudes[i] + latitudeStep, longitudes[i] + longitudeStep)) {
      latitudeStep = -latitudeStep;
      longitudeStep = -longitudeStep;
    }
    return new double[] {latitudes[i] + latitudeStep, longitudes[i] + longitudeStep};
  }

  private static double[] unit(
      double[] latitudes, double[] longitudes, int from, int to, double north, double east) {
    double n = (latitudes[to] - latitudes[from]) * north;
    double e = Math.IEEEremainder(longitudes[to] - longitudes[from], 2.0 * Math.PI) * east;
    double length = Math.hypot(n, e);
    return new double[] {n / length, e / length};
  }

  private double metres(double[] from, double[] to) {
    return earth.metres(from, to);
  }

  /**
   * The quickest path from start to goal.
   *
   * @return rows of time since departure (s), latitude, longitude, heading (radians); null if there
   *     is no way within the horizon
   */
  double @Nullable [][] quickest() {
    double within = Math.min(horizon, 3.0 * metres(nodes.get(0), nodes.get(1)) / speed);
    double[][] found = quickestWithin(within);
    while (found == null && within < horizon) { // a short horizon saves following lost rays all day
      within = Math.min(horizon, 3.0 * within);
      found = quickestWithin(within);
    }
    return found;
  }

  private double @Nullable [][] quickestWithin(double within) {
    int count = nodes.size();
    double[] arrival = new double[count];
    Arrays.fill(arrival, Double.POSITIVE_INFINITY);
    arrival[0] = 0.0;
    double[][][] pieces = new double[count][][];
    int[] from = new int[count];
    boolean[] settled = new boolean[count];
    while (true) {
      int next = earliestUnsettled(arrival, settled);
      if (next < 0) {
        return null;
      }
      if (next == 1) {
        return joined(pieces, from, arrival);
      }
      settled[next] = true;
      double until = Math.min(within, arrival[1]);
      ExtremalFan fan =
          new ExtremalFan(
              motion,
              obstacles,
              nodes.get(next)[0],
              nodes.get(next)[1],
              departure + arrival[next],
              until - arrival[next],
              Math.max(1.0, metres(nodes.get(next), nodes.get(1))));
      for (int m = 1; m < count; m++) {
        if (settled[m]) {
          continue;
        }
        double[][] piece = alongEdge(next, m, arrival[next]);
        if (piece == null) {
          ExtremalFan.@Nullable Arrival free = fan.quickestTo(nodes.get(m)[0], nodes.get(m)[1]);
          piece = free == null ? null : fan.path(free);
        }
        if (piece != null && arrival[next] + piece[piece.length - 1][0] < arrival[m]) {
          arrival[m] = arrival[next] + piece[piece.length - 1][0];
          pieces[m] = piece;
          from[m] = next;
        }
      }
    }
  }

  private static int earliestUnsettled(double[] arrival, boolean[] settled) {
    int best = -1;
    for (int i = 0; i < arrival.length; i++) {
      if (!settled[i]
          && arrival[i] < Double.POSITIVE_INFINITY
          && (best < 0 || arrival[i] < arrival[best])) {
        best = i;
      }
    }
    return best;
  }

  private static double[][] joined(double[][][] pieces, int[] from, double[] arrival) {
    List<double[][]> chain = new ArrayList<>();
    for (int node = 1; node != 0; node = from[node]) {
      double[][] shifted = new double[pieces[node].length][];
      for (int i = 0; i < shifted.length; i++) {
        shifted[i] = pieces[node][i].clone();
        shifted[i][0] += arrival[from[node]];
      }
      chain.add(0, shifted);
    }
    List<double[]> rows = new ArrayList<>();
    for (double[][] piece : chain) {
      rows.addAll(Arrays.asList(piece));
    }
    return rows.toArray(new double[0][]);
  }

  /** The track held from a node to its neighbour on the same obstacle; null if it is none. */
  private double @Nullable [][] alongEdge(int node, int neighbour, double started) {
    int[] along = alongEdges.get(node);
    if (along[0] != neighbour && along[1] != neighbour) {
      return null;
    }
    double[] a = nodes.get(node);
    double[] b = nodes.get(neighbour);
    if (obstacles.blocks(a[0], a[1], b[0], b[1])) {
      return null;
    }
    double length = metres(a, b);
    double dLongitude = Math.IEEEremainder(b[1] - a[1], 2.0 * Math.PI);
    double middle = 0.5 * (a[0] + b[0]);
    double track =
        Math.atan2(
            dLongitude * earth.parallelRadius(middle),
            (b[0] - a[0]) * earth.meridianRadius(middle));
    double[] flow = new double[CraftMotion.FLOW];
    double[][] rows = new double[STEPS_ALONG_EDGE + 1][];
    double t = 0.0;
    double heading = track;
    for (int i = 0; i <= STEPS_ALONG_EDGE; i++) {
      double share = (double) i / STEPS_ALONG_EDGE;
      rows[i] = new double[] {t, a[0] + share * (b[0] - a[0]), a[1] + share * dLongitude, heading};
      double half = Math.min(1.0, share + 0.5 / STEPS_ALONG_EDGE);
      if (!motion.flow(
          Math.toDegrees(a[0] + half * (b[0] - a[0])),
          Math.toDegrees(a[1] + half * dLongitude),
          departure + started + t,
          flow)) {
        return null;
      }
      double along1 = flow[0] * Math.sin(track) + flow[1] * Math.cos(track);
      double across = flow[0] * Math.cos(track) - flow[1] * Math.sin(track);
      if (!(Math.abs(across) < speed)) {
        return null;
      }
      double overGround = along1 + Math.sqrt(speed * speed - across * across);
      if (!(overGround > 0.0)) {
        return null;
      }
      heading = track - Math.asin(across / speed);
      rows[i][3] = heading;
      t += length / STEPS_ALONG_EDGE / overGround;
    }
    return rows;
  }
}
