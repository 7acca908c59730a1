package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Places just outside the convex corners of land and closed areas, by number. */
final class LandCorners {
  /** The sharper a corner, the farther outside it is passed, up to three times the clearance. */
  private static final double SHARPEST = 1.0 / 3.0;

  /** Metres in the plane. */
  private final double[] cornerAlong;

  private final double[] cornerRight;

  LandCorners(Waters waters, SearchPlane plane) {
    List<double[]> corners = new ArrayList<>();
    addCorners(corners, waters.land(), plane);
    for (Waters.Closure closure : waters.closures()) {
      addCorners(corners, closure.area(), plane);
    }
    cornerAlong = corners.stream().mapToDouble(corner -> corner[0]).toArray();
    cornerRight = corners.stream().mapToDouble(corner -> corner[1]).toArray();
  }

  private static void addCorners(List<double[]> corners, Obstacles land, SearchPlane plane) {
    double[] edges = land.edges();
    for (int i = 0; i < edges.length; i += 4) {
      int next = land.edgeAfter(i);
      double a0 = plane.along(edges[i], edges[i + 1]);
      double r0 = plane.right(edges[i], edges[i + 1]);
      double a1 = plane.along(edges[i + 2], edges[i + 3]);
      double r1 = plane.right(edges[i + 2], edges[i + 3]);
      double a2 = plane.along(edges[next + 2], edges[next + 3]);
      double r2 = plane.right(edges[next + 2], edges[next + 3]);
      double before = Math.hypot(a1 - a0, r1 - r0);
      double after = Math.hypot(a2 - a1, r2 - r1);
      double turn = ((a1 - a0) * (r2 - r1) - (r1 - r0) * (a2 - a1)) / (before * after);
      if (turn < 0.0) { // to the left, with land on the left: the land juts out
        double outAlong = (a1 - a0) / before - (a2 - a1) / after;
        double outRight = (r1 - r0) / before - (r2 - r1) / after;
        double out = Math.hypot(outAlong, outRight);
        double cosine = Math.sqrt(Math.max(0.0, 1.0 - 0.25 * out * out)); // of half the turn
        double clear = Obstacles.CLEARANCE_METRES / Math.max(SHARPEST, cosine);
        if (out < 1e-6) { // a corner that is all but straight: to the right of the edge
          outAlong = -(r1 - r0) / before;
          outRight = (a1 - a0) / before;
          out = 1.0;
        }
        corners.add(new double[] {a1 + clear * outAlong / out, r1 + clear * outRight / out});
      }
    }
  }

  int count() {
    return cornerAlong.length;
  }

  /** Where a corner lies along the line from start to goal, metres. */
  double along(int corner) {
    return cornerAlong[corner];
  }

  /** How far a corner lies to the right of it, metres. */
  double right(int corner) {
    return cornerRight[corner];
  }

  /** Those within so many metres of a way. */
  int[] within(Way way, double metres) {
    int[] within = new int[cornerAlong.length];
    int n = 0;
    for (int c = 0; c < cornerAlong.length; c++) {
      boolean near = false;
      for (int i = 0; i < way.tracks() && !near; i++) {
        near = squareFrom(way, i, c, shareAt(way, i, c)) < metres * metres;
      }
      if (near) {
        within[n++] = c;
      }
    }
    return Arrays.copyOf(within, n);
  }

  /** How far along a track a corner lies abeam, as a share of it. */
  double shareAt(Way way, int i, int c) {
    double along = way.along()[i + 1] - way.along()[i];
    double right = way.right()[i + 1] - way.right()[i];
    double square = along * along + right * right;
    double share =
        square == 0.0
            ? 0.0
            : ((cornerAlong[c] - way.along()[i]) * along
                    + (cornerRight[c] - way.right()[i]) * right)
                / square;
    return Math.max(1e-6, Math.min(1.0 - 1e-6, share));
  }

  /** The square of a corner's distance from a place of a track. */
  double squareFrom(Way way, int i, int c, double share) {
    double along = cornerAlong[c] - way.along()[i] - share * (way.along()[i + 1] - way.along()[i]);
    double right = cornerRight[c] - way.right()[i] - share * (way.right()[i + 1] - way.right()[i]);
    return along * along + right * right;
  }
}
