package org.ferryglide.tide.folder;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.sheet.Sheet;

/** Reads and writes {@code places.csv} and {@code refuges.csv}. */
final class PlaceSheets {
  private static final String AIM_OFF_FOR = "aim_off_for";
  private static final Position NOWHERE = Position.ofDegrees(0, 0);

  private PlaceSheets() {}

  /** What is known of way points, by name; their positions are left at zero. */
  static Map<String, WayPoint> places(FolderText file, Known known) throws IOException {
    List<String> optional = new ArrayList<>(PlaceColumns.OF_EVERY_PLACE);
    optional.add("stop");
    optional.add(AIM_OFF_FOR);
    Sheet sheet = Sheet.read(file.source(), file.reader(), List.of("place"), optional);
    Map<String, WayPoint> places = new LinkedHashMap<>();
    for (Sheet.Row row : sheet.rows()) {
      String name = row.text("place");
      if (name.isEmpty()) {
        row.problem("place", "must not be empty");
        continue;
      }
      known.requirePlace(row, "place");
      WayPoint told = PlaceColumns.complete(WayPoint.of(name, NOWHERE), row, known);
      String mark = row.text(AIM_OFF_FOR);
      if (mark.equals(name)) {
        row.problem(AIM_OFF_FOR, "must be another way point than the place itself");
      } else if (!mark.isEmpty()) {
        known.requirePlace(row, AIM_OFF_FOR);
        told = told.aimedOffFor(WayPoint.of(mark, NOWHERE));
      }
      if (places.put(name, told) != null) {
        row.problem("place", name + " stands twice");
      }
    }
    sheet.refuseIfFaulty();
    return places;
  }

  /** Landings beside the way. */
  static List<WayPoint> refuges(FolderText file, Known known) throws IOException {
    Sheet sheet =
        Sheet.read(
            file.source(),
            file.reader(),
            List.of("place", "position", "landing"),
            PlaceColumns.OF_EVERY_PLACE);
    Map<String, WayPoint> refuges = new LinkedHashMap<>();
    for (Sheet.Row row : sheet.rows()) {
      String name = row.text("place");
      Optional<Position> position =
          row.read("position", text -> Optional.of(Position.parse(text)), Optional.empty());
      if (!row.has("landing")) {
        row.problem("landing", "must be any level or a port, since a refuge is for landing");
      }
      if (name.isEmpty()) {
        row.problem("place", "must not be empty");
      } else if (known.places().contains(name)) {
        row.problem("place", name + " is a way point: give its landing in places.csv");
      } else if (refuges.put(
              name, PlaceColumns.complete(WayPoint.of(name, position.orElse(NOWHERE)), row, known))
          != null) {
        row.problem("place", name + " stands twice");
      }
    }
    sheet.refuseIfFaulty();
    return List.copyOf(refuges.values());
  }

  /** The file that reads as what is known of way points, each told once. */
  static String text(List<WayPoint> places) {
    StringBuilder rows = heading("place", "stop", AIM_OFF_FOR);
    Map<String, WayPoint> told = new HashMap<>();
    for (WayPoint place : places) {
      WayPoint before = told.put(place.name(), place);
      if (before != null && !before.equals(place)) {
        throw new IllegalArgumentException(
            "a folder tells of a place once, for every time that it is passed, but "
                + place.name()
                + " differs from one time to another");
      }
      if (before == null) {
        rows.append(Sheet.field("name of a place", place.name()));
        add(rows, PlaceColumns.text(place));
        add(
            rows,
            List.of(
                place.stop().map(Words::text).orElse(""),
                place.aimedOffFor().map(WayPoint::name).orElse("")));
        rows.append('\n');
      }
    }
    return rows.toString();
  }

  /** The file that reads as these refuges. */
  static String refugeText(List<WayPoint> refuges) {
    StringBuilder rows = heading("place,position");
    for (WayPoint refuge : refuges) {
      rows.append(Sheet.field("name of a refuge", refuge.name()));
      add(rows, List.of(refuge.position().toString()));
      add(rows, PlaceColumns.text(refuge));
      rows.append('\n');
    }
    return rows.toString();
  }

  private static StringBuilder heading(String first, String... last) {
    StringBuilder rows = new StringBuilder(first);
    add(rows, PlaceColumns.OF_EVERY_PLACE);
    add(rows, List.of(last));
    return rows.append('\n');
  }

  private static void add(StringBuilder rows, List<String> fields) {
    fields.forEach(field -> rows.append(',').append(Sheet.field("what is told of a place", field)));
  }
}
