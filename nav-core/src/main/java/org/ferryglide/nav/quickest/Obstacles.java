package org.ferryglide.nav.quickest;

import java.util.Arrays;
import java.util.List;
import org.ferryglide.nav.position.Position;

/**
 * Land or anything else that a path may not cross: closed polygons with straight map edges.
 *
 * <p>Edges are kept by squares of a grid over them, so that a short step looks at the few near it.
 *
 * <pre>{@code
 * Obstacles obstacles = Obstacles.of(List.of(island));
 * boolean aground = obstacles.contains(50.1, -5.5);
 * }</pre>
 */
public final class Obstacles {
  /** How far off the lines of both edges a path turns at their corner, metres. */
  static final double CLEARANCE_METRES = 2.0;

  private static final int MOST_SQUARES_A_SIDE = 256;

  /** Ends of each edge in degrees: latitude, longitude, latitude, longitude; land on the left. */
  private final double[] edges;

  /** The edges made a little longer at both ends, so that a step that grazes a corner is caught. */
  private final double[] walls;

  /** The edge after each round its polygon, by number. */
  private final int[] after;

  /** Longitude that all others are held near to. */
  private final double meridian;

  private final double south;
  private final double west;
  private final double squareLatitude;
  private final double squareLongitude;
  private final int side;

  /** The edges of each square, by number. */
  private final int[][] squares;

  private Obstacles(ObstacleEdges all) {
    edges = all.ends();
    after = all.after();
    walls = all.lengthened();
    meridian = all.meridian();
    double s = Double.POSITIVE_INFINITY;
    double w = Double.POSITIVE_INFINITY;
    double n = Double.NEGATIVE_INFINITY;
    double e = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < walls.length; i += 2) {
      s = Math.min(s, walls[i]);
      n = Math.max(n, walls[i]);
      w = Math.min(w, walls[i + 1]);
      e = Math.max(e, walls[i + 1]);
    }
    side = (int) Math.min(MOST_SQUARES_A_SIDE, Math.ceil(Math.sqrt(edges.length)));
    south = s;
    west = w;
    squareLatitude = Math.max(1e-9, (n - s) / Math.max(1, side));
    squareLongitude = Math.max(1e-9, (e - w) / Math.max(1, side));
    squares = new int[side * side][];
    for (int i = 0; i < edges.length; i += 4) {
      int fromRow = row(Math.min(walls[i], walls[i + 2]));
      int toRow = row(Math.max(walls[i], walls[i + 2]));
      int fromColumn = column(Math.min(walls[i + 1], walls[i + 3]));
      int toColumn = column(Math.max(walls[i + 1], walls[i + 3]));
      for (int r = fromRow; r <= toRow; r++) {
        for (int c = fromColumn; c <= toColumn; c++) {
          int[] held = squares[r * side + c];
          int count = held == null ? 0 : held.length;
          held = held == null ? new int[1] : Arrays.copyOf(held, count + 1);
          held[count] = i;
          squares[r * side + c] = held;
        }
      }
    }
  }

  private int row(double latitude) {
    return (int) Math.max(0, Math.min(side - 1, Math.floor((latitude - south) / squareLatitude)));
  }

  private int column(double longitude) {
    return (int) Math.max(0, Math.min(side - 1, Math.floor((longitude - west) / squareLongitude)));
  }

  /**
   * Open water.
   *
   * @return no obstacles
   */
  public static Obstacles none() {
    return new Obstacles(ObstacleEdges.none());
  }

  /**
   * Obstacles of polygons.
   *
   * @param polygons polygons of at least three corners, the first not repeated at the end
   * @return the obstacles
   * @throws IllegalArgumentException if a polygon has fewer than three corners or the same one
   *     twice running
   */
  public static Obstacles of(List<List<Position>> polygons) {
    if (polygons.isEmpty()) {
      return none();
    }
    return new Obstacles(ObstacleEdges.of(polygons));
  }

  /**
   * Refuses a place inside an obstacle.
   *
   * @param position the place
   * @param name what the place is, for the message
   * @throws IllegalArgumentException if it lies inside
   */
  public void refuseInside(Position position, String name) {
    if (contains(position.latitudeDegrees(), position.longitudeDegrees())) {
      throw new IllegalArgumentException(
          name + " must not lie inside an obstacle, but was " + position);
    }
  }

  /**
   * Whether there is nothing in the way anywhere.
   *
   * @return true if there are no polygons
   */
  public boolean isEmpty() {
    return edges.length == 0;
  }

  /** The ends of all edges, degrees: latitude, longitude, latitude, longitude; land on the left. */
  double[] edges() {
    return edges;
  }

  /** The number of the edge that follows one round its polygon. */
  int edgeAfter(int edge) {
    return after[edge / 4];
  }

  /**
   * Whether a straight step crosses an edge.
   *
   * @param latitude from where, degrees
   * @param longitude from where, degrees
   * @param toLatitude to where, degrees
   * @param toLongitude to where, degrees
   * @return true if it does
   */
  public boolean blocks(double latitude, double longitude, double toLatitude, double toLongitude) {
    if (isEmpty()) {
      return false;
    }
    double from = ObstacleEdges.near(longitude, meridian);
    double to = ObstacleEdges.near(toLongitude, from);
    double low = Math.min(from, to);
    double high = Math.max(from, to);
    double lowest = Math.min(latitude, toLatitude);
    double highest = Math.max(latitude, toLatitude);
    if (highest < south
        || lowest > south + side * squareLatitude
        || high < west
        || low > west + side * squareLongitude) {
      return false;
    }
    int lastRow = row(highest);
    int lastColumn = column(high);
    for (int r = row(lowest); r <= lastRow; r++) {
      for (int c = column(low); c <= lastColumn; c++) {
        int[] held = squares[r * side + c];
        if (held != null && crossesOne(held, latitude, from, toLatitude, to)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean crossesOne(
      int[] held, double latitude, double longitude, double toLatitude, double toLongitude) {
    double east = toLongitude - longitude;
    double north = toLatitude - latitude;
    for (int i : held) {
      double northI = walls[i] - latitude;
      double eastI = walls[i + 1] - longitude;
      double northJ = walls[i + 2] - latitude;
      double eastJ = walls[i + 3] - longitude;
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
    return false;
  }

  /**
   * Whether a place lies inside a polygon: how often they wind round it, by the crossings of a ray
   * to the north.
   *
   * @param latitude latitude, degrees
   * @param longitude longitude, degrees
   * @return true if it does
   */
  public boolean contains(double latitude, double longitude) {
    if (isEmpty()) {
      return false;
    }
    double here = ObstacleEdges.near(longitude, meridian);
    if (here < west || here > west + side * squareLongitude) {
      return false;
    }
    int winding = 0;
    int c = column(here);
    for (int r = row(latitude); r < side; r++) {
      int[] held = squares[r * side + c];
      if (held == null) {
        continue;
      }
      for (int i : held) {
        boolean fromEast = edges[i + 1] > here;
        boolean toEast = edges[i + 3] > here;
        if (fromEast != toEast) {
          double share = (here - edges[i + 1]) / (edges[i + 3] - edges[i + 1]);
          double crossing = edges[i] + share * (edges[i + 2] - edges[i]);
          // an edge stands in several squares, and counts in that of its crossing
          if (crossing > latitude && row(crossing) == r) {
            winding += toEast ? 1 : -1;
          }
        }
      }
    }
    return winding != 0;
  }
}
