package org.ferryglide.tide.folder;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.sheet.Sheet;

/**
 * What {@code waypoints.csv} says.
 *
 * @param wayPoints in the order in which they are passed
 * @param lines the line of each in the file, the first is 1
 */
record WayPointSheet(List<PassageFolder.WayPoint> wayPoints, List<Integer> lines) {
  /** Rhumb lines spiral round a pole without end; nobody paddles there. */
  private static final double FURTHEST_LATITUDE_DEGREES = 89.0;

  static WayPointSheet read(FolderText file) throws IOException {
    Sheet sheet = Sheet.read(file.source(), file.reader(), List.of("name", "position"), List.of());
    List<PassageFolder.WayPoint> wayPoints = new ArrayList<>();
    List<Integer> lines = new ArrayList<>();
    Map<String, Position> places = new HashMap<>();
    Position fallback = Position.ofDegrees(0, 0);
    Position before = fallback;
    for (Sheet.Row row : sheet.rows()) {
      String name = row.text("name");
      if (name.isEmpty()) {
        row.problem("name", "must not be empty");
      }
      Optional<Position> read =
          row.read("position", text -> Optional.of(Position.parse(text)), Optional.empty());
      boolean isRead = read.isPresent();
      Position position = read.orElse(fallback);
      if (isRead && !wayPoints.isEmpty() && before.equals(position)) {
        row.problem("position", "must differ from the way point before");
      }
      if (Math.abs(position.latitudeDegrees()) > FURTHEST_LATITUDE_DEGREES) {
        row.problem(
            "position",
            "must lie within 89 degrees of the equator, but was " + row.text("position"));
      }
      Position other =
          isRead ? places.putIfAbsent(name.toLowerCase(Locale.ROOT), position) : position;
      if (other != null && !other.equals(position) && !name.isEmpty()) {
        row.problem(
            "name", name + " is the name of two places: every place needs a name of its own");
      }
      before = position;
      wayPoints.add(new PassageFolder.WayPoint(name.isEmpty() ? "?" : name, position));
      lines.add(row.line());
    }
    if (wayPoints.size() < 2) {
      sheet.refuseIfFaulty(); // rows that were refused are not missing
      sheet.problem("a passage must have at least 2 way points, but had " + wayPoints.size());
    }
    sheet.refuseIfFaulty();
    return new WayPointSheet(List.copyOf(wayPoints), List.copyOf(lines));
  }
}
