package org.ferryglide.nav.quickest;

import java.util.ArrayList;
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

  /**
   * Edges are taken to be longer by this at both ends, so that a path turns so far outside a corner
   * that the straight lines between its places a second apart clear it too, metres.
   */
  private static final double GRAZING_METRES = 1.5;

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

  private Obstacles(double[] edges, int[] after, double meridian) {
    this.edges = edges;
    this.after = after;
    this.walls = lengthened(edges);
    this.meridian = meridian;
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

  private static double[] lengthened(double[] edges) {
    double[] walls = edges.clone();
    for (int i = 0; i < edges.length; i += 4) {
      double north = edges[i + 2] - edges[i];
      double east = edges[i + 3] - edges[i + 1];
      double metres =
          Math.hypot(
              north * SearchPlane.metresPerLatitudeDegree(edges[i]),
              east * SearchPlane.metresPerLongitudeDegree(edges[i]));
      double share = GRAZING_METRES / metres;
      walls[i] -= share * north;
      walls[i + 1] -= share * east;
      walls[i + 2] += share * north;
      walls[i + 3] += share * east;
    }
    return walls;
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
    return new Obstacles(new double[0], new int[0], 0.0);
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
    return new Obstacles(edges, after, meridian);
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

  private static double near(double longitude, double other) {
    double difference = longitude - other;
    return Math.abs(difference) <= 180.0
        ? longitude
        : other + Math.IEEEremainder(difference, 360.0);
  }

  /**
   * Refuses a place inside an obstacle.
   *
   * @param position the place
   * @param name what the place is to the leg, for the message
   * @throws IllegalArgumentException if it lies inside
   */
  public void refuseInside(Position position, String name) {
    if (contains(position.latitudeDegrees(), position.longitudeDegrees())) {
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
    double from = near(longitude, meridian);
    double to = near(toLongitude, from);
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
    double here = near(longitude, meridian);
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
