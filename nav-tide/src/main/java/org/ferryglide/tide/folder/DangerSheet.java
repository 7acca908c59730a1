package org.ferryglide.tide.folder;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.Lane;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.sheet.Sheet;
import org.ferryglide.tide.stream.Shoreline;

/** Reads and writes {@code dangers.csv} and {@code lanes.csv}: a row for each corner or point. */
final class DangerSheet {
  private static final double MOST_METRES = 50_000.0;
  private static final List<String> OF_THE_DANGER =
      List.of(
          "keep_off_m",
          "port",
          "closed_hours",
          "closed_above_stream_kn",
          "closed_above_wind_kn",
          "closed_below_m",
          "closed_above_m",
          "closed_times");

  /** The rows of one name, the first of which tells what holds for all. */
  private static final class Group {
    private final Sheet.Row first;
    private final List<Position> corners = new ArrayList<>();
    private boolean whole = true;

    private Group(Sheet.Row first) {
      this.first = first;
    }

    private void add(Sheet.Row row) {
      Optional<Position> corner =
          row.read("position", text -> Optional.of(Position.parse(text)), Optional.empty());
      whole = whole && corner.isPresent();
      corners.add(corner.orElse(Position.ofDegrees(0, 0)));
    }

    /** Made of all corners; nothing of an outline in which one was refused. */
    private <T> Optional<T> make(Function<List<Position>, T> maker) {
      return whole
          ? first.read("position", text -> Optional.of(maker.apply(corners)), Optional.empty())
          : Optional.empty();
    }
  }

  private DangerSheet() {}

  static List<Danger> dangers(FolderText file, Known known) throws IOException {
    Sheet sheet =
        Sheet.read(
            file.source(),
            file.reader(),
            List.of("name", "position", "keep_off_m"),
            OF_THE_DANGER.subList(1, OF_THE_DANGER.size()));
    List<Danger> dangers = new ArrayList<>();
    groups(sheet, OF_THE_DANGER).values().forEach(group -> danger(group, known, dangers));
    sheet.refuseIfFaulty();
    return List.copyOf(dangers);
  }

  static List<Lane> lanes(FolderText file) throws IOException {
    Sheet sheet =
        Sheet.read(file.source(), file.reader(), List.of("name", "position", "width_m"), List.of());
    List<Lane> lanes = new ArrayList<>();
    groups(sheet, List.of("width_m"))
        .forEach(
            (name, group) -> {
              OptionalDouble width = group.first.number("width_m", 1.0, MOST_METRES);
              Distance wide = Distance.ofMetres(width.orElse(MOST_METRES));
              group.make(middle -> Lane.along(name, middle, wide)).ifPresent(lanes::add);
            });
    sheet.refuseIfFaulty();
    return List.copyOf(lanes);
  }

  /** Outlines to be gone round, with the berth they need, by name. */
  static Map<String, List<Position>> obstacles(FolderText file) throws IOException {
    Sheet sheet = Sheet.read(file.source(), file.reader(), List.of("name", "position"), List.of());
    Map<String, List<Position>> obstacles = new LinkedHashMap<>();
    groups(sheet, List.of())
        .forEach(
            (name, group) ->
                group
                    .make(
                        corners -> {
                          Strategy.quickestAround(List.of(corners)); // refuses bad ones
                          return List.copyOf(corners);
                        })
                    .ifPresent(corners -> obstacles.put(name, corners)));
    sheet.refuseIfFaulty();
    return obstacles;
  }

  /** Lines of the shore, as they were drawn. */
  static List<List<Position>> coast(FolderText file) throws IOException {
    Sheet sheet = Sheet.read(file.source(), file.reader(), List.of("name", "position"), List.of());
    List<List<Position>> lines = new ArrayList<>();
    groups(sheet, List.of())
        .forEach((name, group) -> group.make(DangerSheet::line).ifPresent(lines::add));
    sheet.refuseIfFaulty();
    return List.copyOf(lines);
  }

  /** A line that both the streams and the checks take. */
  private static List<Position> line(List<Position> points) {
    if (points.size() < 2) {
      throw new IllegalArgumentException(
          "line of the coast must have at least 2 points, but had " + points.size());
    }
    Lane.along("coast", points, Distance.ofMetres(1.0)); // refuses points too far apart
    Shoreline.of(List.of(points));
    return List.copyOf(points);
  }

  private static Map<String, Group> groups(Sheet sheet, List<String> ofAll) {
    Map<String, Group> groups = new LinkedHashMap<>();
    for (Sheet.Row row : sheet.rows()) {
      String name = row.text("name");
      if (name.isEmpty()) {
        row.problem("name", "must not be empty");
        continue;
      }
      Group group = groups.computeIfAbsent(name, key -> new Group(row));
      group.add(row);
      for (String heading : ofAll) {
        if (row != group.first
            && row.has(heading)
            && !row.text(heading).equals(group.first.text(heading))) {
          row.problem(
              heading,
              "must be empty or as in the first row of "
                  + name
                  + ", "
                  + group.first.text(heading)
                  + ", but was "
                  + row.text(heading));
        }
      }
    }
    return groups;
  }

  private static void danger(Group group, Known known, List<Danger> dangers) {
    Sheet.Row row = group.first;
    Distance keepOff = Distance.ofMetres(row.number("keep_off_m", 0.0, MOST_METRES).orElse(0.0));
    String name = row.text("name");
    Optional<Danger> bare =
        group.make(
            corners ->
                corners.size() == 1
                    ? Danger.point(name, corners.get(0), keepOff)
                    : Danger.area(name, corners, keepOff));
    // the other columns are looked at whatever the outline is
    dangers.add(closed(bare.orElse(Danger.point(name, group.corners.get(0), keepOff)), row, known));
  }

  private static List<TimeSpan> times(String text) {
    List<TimeSpan> spans = new ArrayList<>();
    for (String part : text.split(" and ", -1)) {
      spans.add(TimeSpan.parse(part.trim()));
    }
    return spans;
  }

  /** The file that reads as these dangers. */
  static String text(List<Danger> dangers) {
    StringBuilder rows = new StringBuilder("name,position");
    OF_THE_DANGER.forEach(heading -> rows.append(',').append(heading));
    rows.append('\n');
    for (Danger danger : dangers) {
      for (int i = 0; i < danger.outline().size(); i++) {
        rows.append(Sheet.field("name of a danger", danger.name()))
            .append(',')
            .append(Sheet.field("position", danger.outline().get(i).toString()));
        if (i == 0) {
          ofAll(danger).forEach(field -> rows.append(',').append(Sheet.field("closing", field)));
        } else {
          OF_THE_DANGER.forEach(heading -> rows.append(','));
        }
        rows.append('\n');
      }
    }
    return rows.toString();
  }

  /** In the order of {@link #OF_THE_DANGER}; stated times stand for tidal hours. */
  private static List<String> ofAll(Danger danger) {
    return List.of(
        Numbers.of(danger.keepOff()),
        danger.closingPort().orElse(""),
        "",
        danger.closedAboveStream().map(Numbers::knots).orElse(""),
        danger.closedAboveWind().map(Numbers::knots).orElse(""),
        danger.closedBelowLevel().map(Numbers::of).orElse(""),
        danger.closedAboveLevel().map(Numbers::of).orElse(""),
        danger.closedTimes().stream().map(TimeSpan::toString).collect(Collectors.joining(" and ")));
  }

  /** The file that reads as these lanes. */
  static String laneText(List<Lane> lanes) {
    StringBuilder rows = new StringBuilder("name,position,width_m\n");
    for (Lane lane : lanes) {
      for (int i = 0; i < lane.middle().size(); i++) {
        rows.append(Sheet.field("name of a lane", lane.name()))
            .append(',')
            .append(Sheet.field("position", lane.middle().get(i).toString()))
            .append(',')
            .append(i == 0 ? Numbers.of(lane.width()) : "")
            .append('\n');
      }
    }
    return rows.toString();
  }

  /** The file that reads as these lines of the shore. */
  static String coastText(List<List<Position>> lines) {
    StringBuilder rows = new StringBuilder("name,position\n");
    for (int i = 0; i < lines.size(); i++) {
      for (Position point : lines.get(i)) {
        rows.append("line ").append(i + 1).append(',');
        rows.append(Sheet.field("position", point.toString())).append('\n');
      }
    }
    return rows.toString();
  }

  private static Danger closed(Danger bare, Sheet.Row row, Known known) {
    Danger danger = bare;
    boolean asksForPort =
        row.has("closed_hours") || row.has("closed_below_m") || row.has("closed_above_m");
    String port = row.text("port");
    if (asksForPort && port.isEmpty()) {
      row.problem("port", "must be the port whose waters and heights close the danger");
    } else if (!port.isEmpty()) {
      known.requirePort(row, "port", port);
    }
    Optional<List<TidalHours>> hours = Words.of(row, "closed_hours", TidalHours::parse);
    TideTable table = known.tides().get(port);
    if (hours.isPresent() && table != null) {
      List<TimeSpan> spans = new ArrayList<>();
      hours.get().forEach(one -> spans.addAll(one.spans(table)));
      danger = danger.closedDuring(spans);
    }
    danger =
        Words.of(row, "closed_times", DangerSheet::times).map(danger::closedDuring).orElse(danger);
    danger =
        Words.knots(row, "closed_above_stream_kn", 25.0)
            .map(danger::closedAboveStream)
            .orElse(danger);
    danger =
        Words.knots(row, "closed_above_wind_kn", 150.0).map(danger::closedAboveWind).orElse(danger);
    OptionalDouble below = Words.number(row, "closed_below_m", -20.0, 30.0);
    OptionalDouble above = Words.number(row, "closed_above_m", -20.0, 30.0);
    if (below.isPresent() && !port.isEmpty()) {
      danger = danger.closedBelowLevel(port, Distance.ofMetres(below.getAsDouble()));
    }
    return above.isPresent() && !port.isEmpty()
        ? danger.closedAboveLevel(port, Distance.ofMetres(above.getAsDouble()))
        : danger;
  }
}
