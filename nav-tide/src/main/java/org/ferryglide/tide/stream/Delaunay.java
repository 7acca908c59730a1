package org.ferryglide.tide.stream;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The Delaunay triangles of a few hundred points of a plane: no point lies inside the circle
 * through the corners of any triangle, and the triangles fill the hull of the points.
 *
 * <p>Points are added from left to right, each joined to the hull's edges that it sees; then edges
 * are flipped until every pair of neighbours is right (Lawson, 1977). The decisions are exact, so
 * that points in line or on one circle cannot confuse them.
 */
final class Delaunay {
  /**
   * A determinant larger than this share of its terms is right in sign: its rounding is below 20
   * units of 1.1e-16 of them. Smaller ones are worked out exactly.
   */
  private static final double SURE = 1e-14;

  private final double[] x;
  private final double[] y;
  private final List<int[]> triangles = new ArrayList<>();

  private Delaunay(double[] x, double[] y) {
    this.x = x;
    this.y = y;
  }

  /**
   * Corners of each triangle, counter-clockwise; none if all points are in line.
   *
   * <p>No point may be given twice.
   */
  static List<int[]> triangles(double[] x, double[] y) {
    Delaunay delaunay = new Delaunay(x, y);
    if (x.length >= 3) {
      delaunay.sweep();
      while (delaunay.flipped()) {
        // each flip makes the smallest angles larger, so this ends
      }
    }
    return delaunay.triangles;
  }

  private void sweep() {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      order.add(i);
    }
    order.sort(Comparator.<Integer>comparingDouble(i -> x[i]).thenComparingDouble(i -> y[i]));
    int first = 2; // the first point not in line with those before it
    while (first < x.length && turn(order.get(0), order.get(first - 1), order.get(first)) == 0) {
      first++;
    }
    if (first == x.length) {
      return;
    }
    int tip = order.get(first);
    List<Integer> hull = new ArrayList<>(order.subList(0, first));
    if (turn(order.get(0), order.get(first - 1), tip) < 0) {
      Collections.reverse(hull);
    }
    for (int i = 1; i < hull.size(); i++) {
      triangles.add(new int[] {hull.get(i - 1), hull.get(i), tip});
    }
    hull.add(tip);
    for (int point : order.subList(first + 1, order.size())) {
      hull = joined(hull, point);
    }
  }

  /** Joins a point outside the hull to the edges it sees; returns the new hull. */
  private List<Integer> joined(List<Integer> hull, int point) {
    int size = hull.size();
    boolean[] seen = new boolean[size];
    for (int i = 0; i < size; i++) {
      int from = hull.get(i);
      int to = hull.get((i + 1) % size);
      seen[i] = turn(from, to, point) < 0;
      if (seen[i]) {
        triangles.add(new int[] {to, from, point});
      }
    }
    List<Integer> grown = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      boolean seenBefore = seen[(i + size - 1) % size];
      if (!(seen[i] && seenBefore)) {
        grown.add(hull.get(i));
      }
      if (seen[i] && !seenBefore) {
        grown.add(point);
      }
    }
    return grown;
  }

  /** Flips every edge that is wrong, each triangle once at most; false if all were right. */
  private boolean flipped() {
    Map<Long, int[]> edges = new HashMap<>();
    boolean[] touched = new boolean[triangles.size()];
    boolean any = false;
    for (int t = 0; t < triangles.size(); t++) {
      int[] corners = triangles.get(t);
      for (int c = 0; c < 3 && !touched[t]; c++) {
        int from = corners[c];
        int to = corners[(c + 1) % 3];
        int opposite = corners[(c + 2) % 3];
        int[] neighbour = edges.get((long) to * x.length + from);
        if (neighbour != null
            && !touched[neighbour[0]]
            && inCircle(from, to, opposite, neighbour[1])) {
          triangles.set(t, new int[] {opposite, from, neighbour[1]});
          triangles.set(neighbour[0], new int[] {neighbour[1], to, opposite});
          touched[t] = true;
          touched[neighbour[0]] = true;
          any = true;
        }
        edges.put((long) from * x.length + to, new int[] {t, opposite});
      }
    }
    return any;
  }

  /** Sign of the turn at b on the way from a to c, counter-clockwise positive; exact. */
  private int turn(int a, int b, int c) {
    double left = (x[b] - x[a]) * (y[c] - y[a]);
    double right = (y[b] - y[a]) * (x[c] - x[a]);
    if (Math.abs(left - right) > SURE * (Math.abs(left) + Math.abs(right))) {
      return left > right ? 1 : -1;
    }
    return difference(x, b, a)
        .multiply(difference(y, c, a))
        .subtract(difference(y, b, a).multiply(difference(x, c, a)))
        .signum();
  }

  /** Whether d lies inside the circle through a, b and c, which run counter-clockwise; exact. */
  private boolean inCircle(int a, int b, int c, int d) {
    int[] corners = {a, b, c, a, b};
    double determinant = 0.0;
    double size = 0.0;
    for (int i = 0; i < 3; i++) {
      double east = x[corners[i]] - x[d];
      double north = y[corners[i]] - y[d];
      double left = (x[corners[i + 1]] - x[d]) * (y[corners[i + 2]] - y[d]);
      double right = (y[corners[i + 1]] - y[d]) * (x[corners[i + 2]] - x[d]);
      determinant += (east * east + north * north) * (left - right);
      size += (east * east + north * north) * (Math.abs(left) + Math.abs(right));
    }
    if (Math.abs(determinant) > SURE * size) {
      return determinant > 0.0;
    }
    BigDecimal sum = BigDecimal.ZERO;
    for (int i = 0; i < 3; i++) {
      BigDecimal east = difference(x, corners[i], d);
      BigDecimal north = difference(y, corners[i], d);
      BigDecimal cross =
          difference(x, corners[i + 1], d)
              .multiply(difference(y, corners[i + 2], d))
              .subtract(
                  difference(y, corners[i + 1], d).multiply(difference(x, corners[i + 2], d)));
      sum = sum.add(east.multiply(east).add(north.multiply(north)).multiply(cross));
    }
    return sum.signum() > 0;
  }

  private static BigDecimal difference(double[] values, int i, int j) {
    return new BigDecimal(values[i]).subtract(new BigDecimal(values[j]));
  }
}
