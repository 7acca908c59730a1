package org.ferryglide.tide.stream;

import java.io.IOException;
import java.io.Reader;
import java.io.Serializable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.sheet.Sheet;

/**
 * Lines across which a stream station says nothing about the water: coasts, islands, breakwaters,
 * or the edge of the area that a set of stations is meant for.
 *
 * <p>A line is drawn through its points in order; give the first point again at the end to close an
 * island. Between points lines are straight in latitude and longitude, which over the few miles
 * between points of a coast is the same as on a chart.
 *
 * <pre>{@code
 * List<Position> corners = List.of(northWest, northEast, southEast, southWest, northWest);
 * Shoreline island = Shoreline.of(List.of(corners));
 * StationField field = StationField.nearest(stations, reach).withShores(island);
 * }</pre>
 */
public final class Shoreline implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Segments that share a bounding box. */
  private static final int BLOCK = 16;

  private static final Shoreline NONE = new Shoreline(0.0, new double[0]);

  /** Longitudes are held as differences from this one, so that none wraps within a coast. */
  private final double originLongitude;

  /** For each segment of line: x1, y1, x2, y2, degrees. */
  private final double[] segments;

  /** For each block of segments: least x, least y, greatest x, greatest y, degrees. */
  private final double[] boxes;

  private Shoreline(double originLongitude, double[] segments) {
    this.originLongitude = originLongitude;
    this.segments = segments;
    int count = segments.length / 4;
    this.boxes = new double[4 * ((count + BLOCK - 1) / BLOCK)];
    for (int segment = 0; segment < count; segment++) {
      int box = segment / BLOCK * 4;
      int at = 4 * segment;
      boolean first = segment % BLOCK == 0;
      for (int axis = 0; axis < 2; axis++) {
        double least = Math.min(segments[at + axis], segments[at + 2 + axis]);
        double greatest = Math.max(segments[at + axis], segments[at + 2 + axis]);
        boxes[box + axis] = first ? least : Math.min(boxes[box + axis], least);
        boxes[box + 2 + axis] = first ? greatest : Math.max(boxes[box + 2 + axis], greatest);
      }
    }
  }

  /**
   * No lines.
   *
   * @return a shoreline that separates nothing
   */
  public static Shoreline none() {
    return NONE;
  }

  /**
   * Makes a shoreline from its lines.
   *
   * @param lines each with at least two points in order; all lines together span less than 180° of
   *     longitude
   * @return the shoreline
   * @throws IllegalArgumentException if a line has fewer than two points
   */
  public static Shoreline of(List<List<Position>> lines) {
    if (lines.isEmpty()) {
      return NONE;
    }
    int count = 0;
    for (List<Position> line : lines) {
      if (line.size() < 2) {
        throw new IllegalArgumentException(
            "a line of a shoreline must have at least 2 points, but had " + line.size());
      }
      count += line.size() - 1;
    }
    double origin = lines.get(0).get(0).longitudeDegrees();
    double[] segments = new double[4 * count];
    int at = 0;
    for (List<Position> line : lines) {
      for (int i = 1; i < line.size(); i++) {
        segments[at++] = Angles.shortWay(line.get(i - 1).longitudeDegrees() - origin);
        segments[at++] = line.get(i - 1).latitudeDegrees();
        segments[at++] = Angles.shortWay(line.get(i).longitudeDegrees() - origin);
        segments[at++] = line.get(i).latitudeDegrees();
      }
    }
    return new Shoreline(origin, segments);
  }

  /**
   * Reads a sheet of lines: headings {@code line} (any name, the same for all points of a line),
   * {@code latitude}, {@code longitude} in decimal degrees, north and east positive; points in
   * order.
   *
   * @param source what to call the sheet in messages
   * @param reader the text; left open
   * @return the shoreline
   * @throws IOException if the text cannot be read
   * @throws org.ferryglide.nav.note.InputFormatException listing every problem by line and column
   */
  public static Shoreline read(String source, Reader reader) throws IOException {
    Sheet sheet = Sheet.read(source, reader, List.of("line", "latitude", "longitude"), List.of());
    Map<String, List<Position>> lines = new LinkedHashMap<>();
    Map<String, Sheet.Row> firstRows = new LinkedHashMap<>();
    for (Sheet.Row row : sheet.rows()) {
      OptionalDouble latitude = row.number("latitude", -90.0, 90.0);
      OptionalDouble longitude = row.number("longitude", -180.0, 180.0);
      firstRows.putIfAbsent(row.text("line"), row);
      if (latitude.isPresent() && longitude.isPresent()) {
        lines
            .computeIfAbsent(row.text("line"), name -> new ArrayList<>())
            .add(Position.ofDegrees(latitude.getAsDouble(), longitude.getAsDouble()));
      }
    }
    sheet.refuseIfFaulty();
    lines.forEach(
        (name, points) -> {
          if (points.size() < 2) {
            Sheet.Row first = firstRows.getOrDefault(name, sheet.rows().get(0));
            first.problem("line", name + " must have at least 2 points, but had 1");
          }
        });
    sheet.refuseIfFaulty();
    return of(new ArrayList<>(lines.values()));
  }

  /**
   * Reads a file in UTF-8, as {@link #read(String, Reader)} does.
   *
   * @param file the file; messages call it by its path
   * @return the shoreline
   * @throws IOException if the file is not there or cannot be read
   * @throws org.ferryglide.nav.note.InputFormatException listing every problem by line and column
   */
  public static Shoreline read(Path file) throws IOException {
    try (Reader reader = Sheet.open(file)) {
      return read(file.toString(), reader);
    }
  }

  /**
   * Whether a line stands between two places, without allocation.
   *
   * @param latitude1 latitude of one place, degrees
   * @param longitude1 longitude of one place, degrees
   * @param latitude2 latitude of the other, degrees
   * @param longitude2 longitude of the other, degrees
   * @return true if the straight line between the places crosses a line; a place that lies on a
   *     line is not separated by it; false if an argument is NaN
   */
  public boolean separates(
      double latitude1, double longitude1, double latitude2, double longitude2) {
    if (segments.length == 0) {
      return false;
    }
    double x1 = eastOf(longitude1);
    double x2 = x1 + Angles.shortWay(longitude2 - longitude1);
    double west = Math.min(x1, x2);
    double east = Math.max(x1, x2);
    double south = Math.min(latitude1, latitude2);
    double north = Math.max(latitude1, latitude2);
    int count = segments.length / 4;
    for (int block = 0; block < boxes.length / 4; block++) {
      int box = 4 * block;
      if (boxes[box] <= east
          && boxes[box + 2] >= west
          && boxes[box + 1] <= north
          && boxes[box + 3] >= south) {
        int end = Math.min(count, (block + 1) * BLOCK);
        for (int segment = block * BLOCK; segment < end; segment++) {
          if (crosses(4 * segment, x1, latitude1, x2, latitude2)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /**
   * Whether the sight from 1 to 2 crosses a segment. Its ends must lie strictly on both sides of
   * the segment; of the segment's ends one must lie to the left or on the sight and the other to
   * the right, so that a sight through a corner crosses exactly one of the segments that meet
   * there.
   */
  boolean crosses(int at, double x1, double y1, double x2, double y2) {
    double ax = segments[at];
    double ay = segments[at + 1];
    double bx = segments[at + 2];
    double by = segments[at + 3];
    double side1 = side(ax, ay, bx, by, x1, y1);
    double side2 = side(ax, ay, bx, by, x2, y2);
    if (!(side1 > 0.0 && side2 < 0.0) && !(side1 < 0.0 && side2 > 0.0)) {
      return false;
    }
    return (side(x1, y1, x2, y2, ax, ay) >= 0.0) != (side(x1, y1, x2, y2, bx, by) >= 0.0);
  }

  int segmentCount() {
    return segments.length / 4;
  }

  /** A longitude on the plane of the shore, degrees. */
  double eastOf(double longitude) {
    return Angles.shortWay(longitude - originLongitude);
  }

  double startX(int segment) {
    return segments[4 * segment];
  }

  double startY(int segment) {
    return segments[4 * segment + 1];
  }

  double endX(int segment) {
    return segments[4 * segment + 2];
  }

  double endY(int segment) {
    return segments[4 * segment + 3];
  }

  /** How far a point of the plane is from a segment, degrees. */
  double distance(int segment, double x, double y) {
    double dx = endX(segment) - startX(segment);
    double dy = endY(segment) - startY(segment);
    double fromX = x - startX(segment);
    double fromY = y - startY(segment);
    double square = dx * dx + dy * dy;
    double part = square == 0.0 ? 0.0 : (fromX * dx + fromY * dy) / square;
    part = Math.max(0.0, Math.min(1.0, part));
    return Math.hypot(fromX - part * dx, fromY - part * dy);
  }

  /** Positive if the point lies to the left of the way from a to b. */
  private static double side(double ax, double ay, double bx, double by, double x, double y) {
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Shoreline that
        && Double.compare(originLongitude, that.originLongitude) == 0
        && Arrays.equals(segments, that.segments);
  }

  @Override
  public int hashCode() {
    return Objects.hash(originLongitude, Arrays.hashCode(segments));
  }

  /** How many segments of line. */
  @Override
  public String toString() {
    return "shoreline of " + segments.length / 4 + " segments";
  }
}
