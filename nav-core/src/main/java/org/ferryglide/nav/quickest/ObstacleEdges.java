package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.position.Position;

/**
 * The edges of polygons that may not be crossed, all turned so that their inside lies on the left.
 *
 * @param ends ends of each edge in degrees: latitude, longitude, latitude, longitude
 * @param after the edge after each round its polygon, by number
 * @param meridian longitude that all others are held near to
 */
@SuppressWarnings("ArrayRecordComponent") // handed on inside the engine, never compared
record ObstacleEdges(double[] ends, int[] after, double meridian) {
  /**
   * Edges are taken to be longer by this at both ends, so that a path turns so far outside a corner
   * that the straight lines between its places a second apart clear it too, metres.
   */
  private static final double GRAZING_METRES = 1.5;

  static ObstacleEdges none() {
    return new ObstacleEdges(new double[0], new int[0], 0.0);
  }

  /** The edges of at least one polygon; refused as {@link Obstacles#of} says. */
  static ObstacleEdges of(List<List<Position>> polygons) {
    List<double[]> rings = new ArrayList<>();
    double meridian = Double.NaN;
    int count = 0;
    for (List<Position> corners : polygons) {
      int number = rings.size() + 1;
      if (corners.size() < 3) {
        throw new IllegalArgumentException(
            "obstacle " + number + " must have at least 3 corners, but had " + corners.size());
      }
      refuseRepeated(corners, number);
      if (Double.isNaN(meridian)) {
        meridian = corners.get(0).longitudeDegrees();
      }
      rings.add(ring(corners, meridian));
      count += corners.size();
    }
    double[] edges = new double[4 * count];
    int at = 0;
    int[] after = new int[count];
    for (double[] ring : rings) {
      int first = at;
      for (int i = 0; i < ring.length; i += 2) {
        after[at / 4] = i + 2 == ring.length ? first : at + 4;
        int next = (i + 2) % ring.length;
        edges[at++] = ring[i];
        edges[at++] = ring[i + 1];
        edges[at++] = ring[next];
        edges[at++] = ring[next + 1];
      }
    }
    return new ObstacleEdges(edges, after, meridian);
  }

  /** The corners of a polygon, turned so that its inside lies on the left. */
  private static double[] ring(List<Position> corners, double meridian) {
    int n = corners.size();
    double[] ring = new double[2 * n];
    double first = near(corners.get(0).longitudeDegrees(), meridian);
    double area = 0.0;
    for (int i = 0; i < n; i++) {
      ring[2 * i] = corners.get(i).latitudeDegrees();
      ring[2 * i + 1] = near(corners.get(i).longitudeDegrees(), first);
    }
    for (int i = 0, j = n - 1; i < n; j = i++) {
      area += ring[2 * j + 1] * ring[2 * i] - ring[2 * i + 1] * ring[2 * j];
    }
    if (area < 0.0) {
      double[] turned = new double[2 * n];
      for (int i = 0; i < n; i++) {
        turned[2 * i] = ring[2 * (n - 1 - i)];
        turned[2 * i + 1] = ring[2 * (n - 1 - i) + 1];
      }
      return turned;
    }
    return ring;
  }

  /** A corner given twice running has no direction in which to pass it. */
  private static void refuseRepeated(List<Position> corners, int number) {
    Position before = corners.get(corners.size() - 1);
    for (Position corner : corners) {
      if (corner.latitudeDegrees() == before.latitudeDegrees()
          && near(corner.longitudeDegrees(), before.longitudeDegrees())
              == before.longitudeDegrees()) {
        throw new IllegalArgumentException(
            "obstacle "
                + number
                + " must not have the same corner twice running, its first after its last neither,"
                + " but had "
                + corner);
      }
      before = corner;
    }
  }

  /** The edges a little longer at both ends, so that a step that grazes a corner is caught. */
  double[] lengthened() {
    double[] walls = ends.clone();
    for (int i = 0; i < ends.length; i += 4) {
      double north = ends[i + 2] - ends[i];
      double east = ends[i + 3] - ends[i + 1];
      double metres =
          Math.hypot(
              north * SearchPlane.metresPerLatitudeDegree(ends[i]),
              east * SearchPlane.metresPerLongitudeDegree(ends[i]));
      double share = GRAZING_METRES / metres;
      walls[i] -= share * north;
      walls[i + 1] -= share * east;
      walls[i + 2] += share * north;
      walls[i + 3] += share * east;
    }
    return walls;
  }

  /** A longitude on the same turn as another. */
  static double near(double longitude, double other) {
    double difference = longitude - other;
    return Math.abs(difference) <= 180.0
        ? longitude
        : other + Math.IEEEremainder(difference, 360.0);
  }
}
