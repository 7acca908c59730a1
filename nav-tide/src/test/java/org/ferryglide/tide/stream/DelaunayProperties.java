package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.testing.Seeds;

class DelaunayProperties {
  /** Determinants of coordinates up to one are taken for zero below 1e-12. */
  private static final double NOTHING = 1e-9;

  @Provide
  Arbitrary<double[][]> points() {
    // a coarse lattice, so that equal distances and points in line are common; on a thousandth
    // what is not in line is off it by far more than doubles' rounding
    Arbitrary<Double> coordinate =
        Arbitraries.oneOf(
            Arbitraries.integers().between(0, 8).map(i -> i / 8.0),
            Arbitraries.doubles().between(0, 1).ofScale(3));
    return Combinators.combine(coordinate, coordinate)
        .as(List::of)
        .list()
        .ofMinSize(3)
        .ofMaxSize(25)
        .uniqueElements()
        .map(
            list ->
                new double[][] {
                  list.stream().mapToDouble(point -> point.get(0)).toArray(),
                  list.stream().mapToDouble(point -> point.get(1)).toArray()
                });
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void noPointLiesInsideACircleAndTheTrianglesFillTheHull(@ForAll("points") double[][] points) {
    double[] x = points[0];
    double[] y = points[1];
    List<int[]> triangles = Delaunay.triangles(x, y);
    Assume.that(!triangles.isEmpty());
    double area = 0.0;
    for (int[] t : triangles) {
      double twice = turn(x, y, t[0], t[1], t[2]);
      // points all but in line can make a triangle of no area that doubles can tell
      assertTrue(twice > -1e-15, "corners run counter-clockwise");
      area += twice;
      for (int d = 0; d < x.length; d++) {
        assertTrue(inCircle(x, y, t, d) < NOTHING, "a point lies inside a circle");
      }
    }
    assertEquals(hullArea(x, y), area, NOTHING);
  }

  @Example
  void pointsInLineHaveNoTriangles() {
    assertTrue(
        Delaunay.triangles(new double[] {0, 1, 2, 3}, new double[] {0, 0.5, 1, 1.5}).isEmpty());
  }

  private static double turn(double[] x, double[] y, int a, int b, int c) {
    return (x[b] - x[a]) * (y[c] - y[a]) - (y[b] - y[a]) * (x[c] - x[a]);
  }

  private static double inCircle(double[] x, double[] y, int[] t, int d) {
    double sum = 0.0;
    for (int i = 0; i < 3; i++) {
      int a = t[i];
      int b = t[(i + 1) % 3];
      int c = t[(i + 2) % 3];
      double r = Math.pow(x[a] - x[d], 2) + Math.pow(y[a] - y[d], 2);
      sum += r * ((x[b] - x[d]) * (y[c] - y[d]) - (y[b] - y[d]) * (x[c] - x[d]));
    }
    return sum;
  }

  /** Twice the area of the convex hull, by gift wrapping. */
  private static double hullArea(double[] x, double[] y) {
    int start = 0;
    for (int i = 1; i < x.length; i++) {
      if (x[i] < x[start] || (x[i] == x[start] && y[i] < y[start])) {
        start = i;
      }
    }
    double area = 0.0;
    int here = start;
    do {
      int next = here == 0 ? 1 : 0;
      for (int i = 0; i < x.length; i++) {
        double turn = turn(x, y, here, next, i);
        boolean further =
            Math.hypot(x[i] - x[here], y[i] - y[here])
                > Math.hypot(x[next] - x[here], y[next] - y[here]);
        if (i != here && (turn < -1e-12 || (Math.abs(turn) <= 1e-12 && further))) {
          next = i;
        }
      }
      area += (x[here] - x[start]) * (y[next] - y[start]);
      area -= (y[here] - y[start]) * (x[next] - x[start]);
      here = next;
    } while (here != start);
    return area;
  }
}
