package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoublePredicate;
import org.ferryglide.nav.position.Position;

/**
 * A point, a line or a closed outline on the plane round its first corner, for distances of some
 * miles.
 *
 * <p>Metres on the plane are those of the ellipsoid's radii of curvature at the middle latitude.
 * Ten miles off, a distance comes out within one part in a thousand up to 60° of latitude, which is
 * far below what a distance to keep is good for.
 */
final class Outline {
  private static final double GREATEST_EXTENT_METRES = 60.0 * 1852.0;

  /** Segments with bounds in common, so that a long shore is not gone through at every look. */
  private static final int TOGETHER = 16;

  /** Bounds are wider than their segments by this, so that rounding hides no crossing. */
  private static final double WIDER_METRES = 1e-3;

  private final double latitude;
  private final double longitude;
  private final double metresNorth;
  private final double metresEast;
  private final double[] east;
  private final double[] north;
  private final boolean closed;

  /** West, east, south and north of each {@link #TOGETHER} segments. */
  private final double[] bounds;

  private Outline(
      double latitude, double longitude, double[] east, double[] north, boolean closed) {
    this.bounds = new double[4 * ((east.length + TOGETHER - 1) / TOGETHER)];
    this.latitude = latitude;
    this.longitude = longitude;
    this.metresNorth = PlaneMetres.north(latitude);
    this.metresEast = PlaneMetres.east(latitude);
    this.east = east;
    this.north = north;
    this.closed = closed;
  }

  /** A point, or a closed outline of three and more corners. */
  static Outline of(List<Position> corners, String name) {
    return make(corners, name, corners.size() > 2);
  }

  /** A line that is not closed. */
  static Outline line(List<Position> points, String name) {
    return make(points, name, false);
  }

  /** Lines of a shore as they are kept: at least one, each of at least two points near enough. */
  static List<List<Position>> shores(List<List<Position>> shores) {
    if (shores.isEmpty()) {
      throw new IllegalArgumentException("shores must have at least 1 line, but had none");
    }
    List<List<Position>> lines = new ArrayList<>();
    for (List<Position> line : shores) {
      if (line.size() < 2) {
        throw new IllegalArgumentException(
            "line of a shore must have at least 2 points, but had " + line.size());
      }
      line(line, "a shore");
      lines.add(Collections.unmodifiableList(new ArrayList<>(line)));
    }
    return Collections.unmodifiableList(lines);
  }

  private static Outline make(List<Position> corners, String name, boolean closed) {
    double latitude = 0.0;
    for (Position corner : corners) {
      latitude += corner.latitudeDegrees() / corners.size();
    }
    Outline outline =
        new Outline(
            latitude,
            corners.get(0).longitudeDegrees(),
            new double[corners.size()],
            new double[corners.size()],
            closed);
    for (int i = 0; i < corners.size(); i++) {
      Position corner = corners.get(i);
      outline.east[i] = outline.eastOf(corner.longitudeDegrees());
      outline.north[i] = outline.northOf(corner.latitudeDegrees());
      if (!(Math.hypot(outline.east[i] - outline.east[0], outline.north[i] - outline.north[0])
          <= GREATEST_EXTENT_METRES)) {
        throw new IllegalArgumentException(
            "corners of "
                + name
                + " must lie within 60 NM of each other, but "
                + corner
                + " is farther from "
                + corners.get(0));
      }
    }
    outline.bind();
    return outline;
  }

  private void bind() {
    int n = east.length;
    for (int at = 0; at < bounds.length; at += 4) {
      bounds[at] = Double.POSITIVE_INFINITY;
      bounds[at + 1] = Double.NEGATIVE_INFINITY;
      bounds[at + 2] = Double.POSITIVE_INFINITY;
      bounds[at + 3] = Double.NEGATIVE_INFINITY;
      int first = at / 4 * TOGETHER;
      int last = Math.min(first + TOGETHER, closed ? n : n - 1); // the end of the last too
      for (int i = first; i <= last; i++) {
        bounds[at] = Math.min(bounds[at], east[i % n] - WIDER_METRES);
        bounds[at + 1] = Math.max(bounds[at + 1], east[i % n] + WIDER_METRES);
        bounds[at + 2] = Math.min(bounds[at + 2], north[i % n] - WIDER_METRES);
        bounds[at + 3] = Math.max(bounds[at + 3], north[i % n] + WIDER_METRES);
      }
    }
  }

  /** Whether the way between two places lies outside the bounds of some segments. */
  private boolean isApart(int bound, double ax, double ay, double bx, double by) {
    int at = 4 * bound;
    return Math.max(ax, bx) < bounds[at]
        || Math.min(ax, bx) > bounds[at + 1]
        || Math.max(ay, by) < bounds[at + 2]
        || Math.min(ay, by) > bounds[at + 3];
  }

  double eastOf(double longitudeDegrees) {
    return PlaneMetres.turned(longitudeDegrees - longitude) * metresEast;
  }

  double northOf(double latitudeDegrees) {
    return (latitudeDegrees - latitude) * metresNorth;
  }

  /** Metres on the plane between two places so many degrees apart, squared. */
  double square(double latitudeDegrees, double longitudeDegrees) {
    double y = latitudeDegrees * metresNorth;
    double x = longitudeDegrees * metresEast;
    return x * x + y * y;
  }

  /** Metres to the nearest part; 0 inside a closed outline. */
  double distance(double latitudeDegrees, double longitudeDegrees) {
    double x = eastOf(longitudeDegrees);
    double y = northOf(latitudeDegrees);
    if (closed && inside(x, y)) {
      return 0.0;
    }
    int n = east.length;
    if (n == 1) {
      return PlaneMetres.length(x - east[0], y - north[0]);
    }
    double best = Double.POSITIVE_INFINITY;
    int segments = closed ? n : n - 1;
    for (int i = 0; i < segments; i++) {
      int j = i + 1 == n ? 0 : i + 1;
      best = Math.min(best, toSegment(x, y, east[i], north[i], east[j], north[j]));
    }
    return best;
  }

  /** Metres from the way between two places to the nearest part; 0 where it enters or crosses. */
  double distance(double latitudeA, double longitudeA, double latitudeB, double longitudeB) {
    if (east.length == 1) { // the ends are on the way
      double x = eastOf(longitudeA);
      double to = x + PlaneMetres.turned(longitudeB - longitudeA) * metresEast;
      return toSegment(east[0], north[0], x, northOf(latitudeA), to, northOf(latitudeB));
    }
    double best = Math.min(distance(latitudeA, longitudeA), distance(latitudeB, longitudeB));
    double ax = eastOf(longitudeA);
    double ay = northOf(latitudeA);
    double bx = ax + PlaneMetres.turned(longitudeB - longitudeA) * metresEast;
    double by = northOf(latitudeB);
    int n = east.length;
    for (int i = 0; i < n; i++) {
      best = Math.min(best, toSegment(east[i], north[i], ax, ay, bx, by));
      int j = i + 1 == n ? 0 : i + 1;
      if ((j != 0 || closed) && !Double.isNaN(crossing(ax, ay, bx, by, i, j))) {
        return 0.0;
      }
    }
    return best;
  }

  /** The part of the way from A to B at which it crosses a segment; NaN where it does not. */
  private double crossing(double ax, double ay, double bx, double by, int i, int j) {
    double sideI = (bx - ax) * (north[i] - ay) - (by - ay) * (east[i] - ax);
    double sideJ = (bx - ax) * (north[j] - ay) - (by - ay) * (east[j] - ax);
    if ((sideI < 0.0) == (sideJ < 0.0)) { // a corner belongs to one of its segments
      return Double.NaN;
    }
    double dx = east[j] - east[i];
    double dy = north[j] - north[i];
    double sideA = dx * (ay - north[i]) - dy * (ax - east[i]);
    double sideB = dx * (by - north[i]) - dy * (bx - east[i]);
    return (sideA < 0.0) == (sideB < 0.0) ? Double.NaN : sideA / (sideA - sideB);
  }

  /**
   * The first crossing found that counts.
   *
   * @param counts whether a crossing counts that lies at a part, in [0, 1], of the way from A to B
   * @return that part; NaN if none counts
   */
  double crossed(
      double latitudeA,
      double longitudeA,
      double latitudeB,
      double longitudeB,
      DoublePredicate counts) {
    double ax = eastOf(longitudeA);
    double ay = northOf(latitudeA);
    double bx = ax + PlaneMetres.turned(longitudeB - longitudeA) * metresEast;
    double by = northOf(latitudeB);
    int n = east.length;
    int segments = closed ? n : n - 1;
    for (int first = 0; first < segments; first += TOGETHER) {
      int end = isApart(first / TOGETHER, ax, ay, bx, by) ? first : first + TOGETHER;
      for (int i = first; i < Math.min(end, segments); i++) {
        int j = i + 1 == n ? 0 : i + 1;
        double part = crossing(ax, ay, bx, by, i, j);
        if (!Double.isNaN(part) && counts.test(part)) {
          return part;
        }
      }
    }
    return Double.NaN;
  }

  /** The segment of a line that is nearest, 0 for the first. */
  int nearestSegment(double latitudeDegrees, double longitudeDegrees) {
    double x = eastOf(longitudeDegrees);
    double y = northOf(latitudeDegrees);
    int nearest = 0;
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 1 < east.length; i++) {
      double distance = toSegment(x, y, east[i], north[i], east[i + 1], north[i + 1]);
      if (distance < best) {
        best = distance;
        nearest = i;
      }
    }
    return nearest;
  }

  /** True direction of a segment of a line, degrees, in (-180, 180]. */
  double directionOf(int segment) {
    return Math.toDegrees(
        Math.atan2(east[segment + 1] - east[segment], north[segment + 1] - north[segment]));
  }

  private boolean inside(double x, double y) {
    boolean in = false;
    for (int i = 0, j = east.length - 1; i < east.length; j = i++) {
      if ((north[i] > y) != (north[j] > y)
          && x < (east[j] - east[i]) * (y - north[i]) / (north[j] - north[i]) + east[i]) {
        in = !in;
      }
    }
    return in;
  }

  private static double toSegment(double x, double y, double ax, double ay, double bx, double by) {
    double dx = bx - ax;
    double dy = by - ay;
    double square = dx * dx + dy * dy;
    double along = square > 0.0 ? ((x - ax) * dx + (y - ay) * dy) / square : 0.0;
    double part = Math.max(0.0, Math.min(1.0, along));
    return PlaneMetres.length(x - ax - part * dx, y - ay - part * dy);
  }

  /** Latitude and longitude of the middle of the corners. */
  double middleLatitude() {
    double sum = 0.0;
    for (double value : north) {
      sum += value;
    }
    return latitude + sum / north.length / metresNorth;
  }

  double middleLongitude() {
    double sum = 0.0;
    for (double value : east) {
      sum += value;
    }
    double middle = longitude + sum / east.length / metresEast;
    return Math.IEEEremainder(middle, 360.0);
  }
}
