package org.ferryglide.nav.quickest;

import java.util.List;
import org.ferryglide.nav.position.Position;

/**
 * Land or anything else that a path may not cross: closed polygons with straight map edges.
 *
 * <pre>{@code
 * Obstacles obstacles = Obstacles.of(List.of(island));
 * boolean aground = obstacles.contains(Math.toRadians(50.1), Math.toRadians(-5.5));
 * }</pre>
 */
public final class Obstacles {
  /** The search tries ways from corner to corner: 60 take seconds, 300 most of a minute. */
  public static final int MOST_CORNERS = 100;

  /** Latitudes and longitudes of each polygon in turn, radians. */
  private final double[][] latitudes;

  private final double[][] longitudes;

  private Obstacles(double[][] latitudes, double[][] longitudes) {
    this.latitudes = latitudes;
    this.longitudes = longitudes;
  }

  /**
   * Open water.
   *
   * @return no obstacles
   */
  public static Obstacles none() {
    return new Obstacles(new double[0][], new double[0][]);
  }

  /**
   * Obstacles of polygons.
   *
   * @param polygons polygons of at least three corners, the first not repeated at the end
   * @return the obstacles
   * @throws IllegalArgumentException if a polygon has fewer than three corners or the same one
   *     twice running, or there are more than {@link #MOST_CORNERS} in all
   */
  public static Obstacles of(List<List<Position>> polygons) {
    double[][] latitudes = new double[polygons.size()][];
    double[][] longitudes = new double[polygons.size()][];
    int all = polygons.stream().mapToInt(List::size).sum();
    if (all > MOST_CORNERS) {
      throw new IllegalArgumentException(
          "obstacles must have at most "
              + MOST_CORNERS
              + " corners together, but had "
              + all
              + "; draw them with fewer, outside the shore");
    }
    for (int i = 0; i < latitudes.length; i++) {
      List<Position> corners = polygons.get(i);
      if (corners.size() < 3) {
        throw new IllegalArgumentException(
            "obstacle " + (i + 1) + " must have at least 3 corners, but had " + corners.size());
      }
      latitudes[i] =
          corners.stream().mapToDouble(p -> Math.toRadians(p.latitudeDegrees())).toArray();
      longitudes[i] =
          corners.stream().mapToDouble(p -> Math.toRadians(p.longitudeDegrees())).toArray();
      refuseRepeated(corners, i + 1);
    }
    return new Obstacles(latitudes, longitudes);
  }

  /** A corner given twice running has no direction in which to pass it. */
  private static void refuseRepeated(List<Position> corners, int number) {
    Position before = corners.get(corners.size() - 1);
    for (Position corner : corners) {
      if (corner.latitudeDegrees() == before.latitudeDegrees()
          && near(Math.toRadians(corner.longitudeDegrees() - before.longitudeDegrees())) == 0.0) {
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

  /**
   * Refuses a place inside an obstacle.
   *
   * @param position the place
   * @param name what the place is to the leg, for the message
   * @throws IllegalArgumentException if it lies inside
   */
  public void refuseInside(Position position, String name) {
    if (contains(
        Math.toRadians(position.latitudeDegrees()), Math.toRadians(position.longitudeDegrees()))) {
      throw new IllegalArgumentException(
          name + " of the leg must not lie inside an obstacle, but was " + position);
    }
  }

  /**
   * Whether there is nothing in the way anywhere.
   *
   * @return true if there are no polygons
   */
  public boolean isEmpty() {
    return latitudes.length == 0;
  }

  int count() {
    return latitudes.length;
  }

  double[] latitudes(int polygon) {
    return latitudes[polygon];
  }

  double[] longitudes(int polygon) {
    return longitudes[polygon];
  }

  /**
   * Whether a short straight step crosses an edge.
   *
   * @param latitude from where, radians
   * @param longitude from where, radians
   * @param toLatitude to where, radians
   * @param toLongitude to where, radians
   * @return true if it does
   */
  public boolean blocks(double latitude, double longitude, double toLatitude, double toLongitude) {
    for (int p = 0; p < latitudes.length; p++) {
      double[] lat = latitudes[p];
      double[] lon = longitudes[p];
      for (int i = 0, j = lat.length - 1; i < lat.length; j = i++) {
        // every longitude as seen from the first point of the step, so that the date line is
        // nothing
        double east = near(toLongitude - longitude);
        double north = toLatitude - latitude;
        double eastI = near(lon[i] - longitude);
        double northI = lat[i] - latitude;
        double eastJ = near(lon[j] - longitude);
        double northJ = lat[j] - latitude;
        double sideI = east * northI - north * eastI;
        double sideJ = east * northJ - north * eastJ;
        if (sideI > 0.0 == sideJ > 0.0) {
          continue;
        }
        double edgeEast = eastJ - eastI;
        double edgeNorth = northJ - northI;
        double sideStart = edgeEast * -northI - edgeNorth * -eastI;
        double sideEnd = edgeEast * (north - northI) - edgeNorth * (east - eastI);
        if (sideStart > 0.0 != sideEnd > 0.0) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Whether a place lies inside a polygon, by the crossings of a ray to the north.
   *
   * @param latitude latitude, radians
   * @param longitude longitude, radians
   * @return true if it does
   */
  public boolean contains(double latitude, double longitude) {
    for (int p = 0; p < latitudes.length; p++) {
      double[] lat = latitudes[p];
      double[] lon = longitudes[p];
      boolean inside = false;
      for (int i = 0, j = lat.length - 1; i < lat.length; j = i++) {
        double eastI = near(lon[i] - longitude);
        double eastJ = near(lon[j] - longitude);
        if (eastI > 0.0 != eastJ > 0.0) {
          double crossing = lat[i] + (lat[j] - lat[i]) * -eastI / (eastJ - eastI);
          inside ^= crossing > latitude;
        }
      }
      if (inside) {
        return true;
      }
    }
    return false;
  }

  private static double near(double radians) {
    return Math.IEEEremainder(radians, 2.0 * Math.PI);
  }
}
