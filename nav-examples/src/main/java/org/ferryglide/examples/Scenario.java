package org.ferryglide.examples;

import java.io.IOException;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.sheet.Sheet;
import org.ferryglide.tide.stream.StreamTable;

/**
 * A passage as its paddler has it on paper: way points, tide tables, stream tables, a printed rose,
 * a speed and a start, read from a folder of plain text files.
 *
 * <p>The folder holds {@code passage.csv} (items and values), {@code waypoints.csv} (names and
 * positions in the order they are passed), {@code streams.csv} (any number of hourly stream tables)
 * and a folder {@code tides} with a sheet for each port.
 *
 * <pre>{@code
 * Scenario scenario = Scenario.read(Path.of("scenarios/ollen-skerries"));
 * }</pre>
 *
 * @param name what the passage is called
 * @param start when the first way point is left; its offset is used for every clock time
 * @param speed paddling speed through still water
 * @param rose the compass rose printed on the chart
 * @param landingPort the port whose tide holds at the last way point
 * @param wayPoints at least two, in order
 * @param tides tide tables by port
 * @param streams at least one stream table, each counted from a port of {@code tides}
 */
public record Scenario(
    String name,
    OffsetDateTime start,
    Speed speed,
    CompassRose rose,
    String landingPort,
    List<WayPoint> wayPoints,
    Map<String, TideTable> tides,
    List<StreamTable> streams) {

  /** Stands in for a rose that could not be read until the file is refused. */
  private static final CompassRose NO_ROSE = CompassRose.parse("0°00' 2000 (nil)");

  /**
   * A named place on the passage.
   *
   * @param name what the paddler calls it
   * @param position where it is
   */
  public record WayPoint(String name, Position position) {}

  /**
   * Reads a folder.
   *
   * @param folder the scenario's folder
   * @return the scenario
   * @throws IOException if a file is missing or cannot be read
   * @throws InputFormatException if a file is malformed, listing every problem found in it by line
   *     and column
   */
  public static Scenario read(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new NoSuchFileException(folder.toString(), null, "there is no such scenario folder");
    }
    Map<String, TideTable> tides = readTides(folder.resolve("tides"));
    List<StreamTable> streams =
        read(folder.resolve("streams.csv"), in -> StreamTable.readAll(in.source, in.reader));
    List<WayPoint> wayPoints = read(folder.resolve("waypoints.csv"), Scenario::readWayPoints);
    Items items = read(folder.resolve("passage.csv"), Items::read);
    Scenario scenario =
        new Scenario(
            items.read("name", text -> text, ""),
            items.read("start", Scenario::startTime, OffsetDateTime.MIN),
            items.read("paddling speed", Scenario::movingSpeed, Speed.ZERO),
            items.read("printed rose", CompassRose::parse, NO_ROSE),
            items.read("landing port", port -> known(port, tides), ""),
            wayPoints,
            tides,
            streams);
    items.sheet.refuseIfFaulty();
    for (StreamTable stream : streams) {
      String port = stream.standardPort().name();
      if (!tides.containsKey(port)) {
        throw refusal(
            folder.resolve("streams.csv"),
            "station "
                + stream.station()
                + " counts its hours from "
                + port
                + ", but the tide tables are of "
                + tides.keySet());
      }
      try {
        stream.boundTo(Objects.requireNonNull(tides.get(port)));
      } catch (IllegalArgumentException e) {
        throw refusal(
            folder.resolve("streams.csv"),
            "station " + stream.station() + " about " + port + ": " + e.getMessage());
      }
    }
    return scenario;
  }

  private static OffsetDateTime startTime(String text) {
    try {
      OffsetDateTime start = OffsetDateTime.parse(text);
      if (start.getYear() < 1900 || start.getYear() > 2100) {
        throw new IllegalArgumentException("the year must be in [1900, 2100], but was " + text);
      }
      return start;
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException(
          "must be a date and time with its offset, as in 2026-06-14T11:40+01:00, but was " + text,
          e);
    }
  }

  private static String known(String port, Map<String, TideTable> tides) {
    if (!tides.containsKey(port)) {
      throw new IllegalArgumentException(
          "must be one of the ports with a tide table, " + tides.keySet() + ", but was " + port);
    }
    return port;
  }

  private static Speed movingSpeed(String text) {
    Speed speed = Speed.parse(text);
    if (!(speed.knots() > 0.0 && speed.knots() <= 12.0)) {
      throw new IllegalArgumentException(
          "a paddling speed must be above 0 and at most 12 kn, but was " + text);
    }
    return speed;
  }

  private static Map<String, TideTable> readTides(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new NoSuchFileException(
          folder.toString(), null, "the folder of tide tables is missing");
    }
    List<Path> files = new ArrayList<>();
    try (Stream<Path> all = Files.list(folder)) {
      all.filter(file -> file.toString().endsWith(".csv")).sorted().forEach(files::add);
    }
    if (files.isEmpty()) {
      throw new NoSuchFileException(folder.toString(), null, "there is no tide table in it");
    }
    Map<String, TideTable> tides = new LinkedHashMap<>();
    for (Path file : files) {
      TideTable table = read(file, in -> TideTable.read(in.source, in.reader));
      if (tides.put(table.port(), table) != null) {
        throw refusal(file, "there is another tide table of " + table.port());
      }
    }
    return tides;
  }

  private static List<WayPoint> readWayPoints(Input in) throws IOException {
    Sheet sheet = Sheet.read(in.source, in.reader, List.of("name", "position"), List.of());
    List<WayPoint> wayPoints = new ArrayList<>();
    Position fallback = Position.ofDegrees(0, 0);
    for (Sheet.Row row : sheet.rows()) {
      if (!row.has("name")) {
        row.problem("name", "must not be empty");
      }
      Position position = row.read("position", Position::parse, fallback);
      if (!wayPoints.isEmpty()
          && wayPoints.get(wayPoints.size() - 1).position().equals(position)
          && !position.equals(fallback)) {
        row.problem("position", "must differ from the way point before");
      }
      if (Math.abs(position.latitudeDegrees()) > 89.0) {
        row.problem(
            "position",
            "must lie within 89 degrees of the equator, but was " + row.text("position"));
      }
      wayPoints.add(new WayPoint(row.text("name"), position));
    }
    if (wayPoints.size() < 2) {
      sheet.problem("a passage must have at least 2 way points, but had " + wayPoints.size());
    }
    sheet.refuseIfFaulty();
    return List.copyOf(wayPoints);
  }

  private static InputFormatException refusal(Path file, String message) {
    return new InputFormatException(new InputProblem(file.toString(), 0, 0, message));
  }

  private static <T> T read(Path file, ReaderOf<T> reading) throws IOException {
    try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      return reading.read(new Input(file.toString(), reader));
    } catch (NoSuchFileException e) {
      throw new NoSuchFileException(e.getFile(), null, "the file is missing");
    } catch (CharacterCodingException e) {
      throw new InputFormatException(
          new InputProblem(
              file.toString(),
              firstLineNotUtf8(file),
              0,
              "the text must be in UTF-8, but here it is not; save the file as UTF-8"));
    }
  }

  /** Number of the first line that is not text in UTF-8; 0 if every one is. */
  private static int firstLineNotUtf8(Path file) throws IOException {
    String[] lines = Files.readString(file, StandardCharsets.ISO_8859_1).split("\\R", -1);
    for (int i = 0; i < lines.length; i++) {
      ByteBuffer bytes = ByteBuffer.wrap(lines[i].getBytes(StandardCharsets.ISO_8859_1));
      try {
        StandardCharsets.UTF_8.newDecoder().decode(bytes);
      } catch (CharacterCodingException e) {
        return i + 1;
      }
    }
    return 0;
  }

  /** What a file is called, and its text. */
  private record Input(String source, Reader reader) {}

  /** Makes a value of a file. */
  private interface ReaderOf<T> {
    T read(Input input) throws IOException;
  }

  /** The items of {@code passage.csv} with the rows they stand in. */
  private record Items(Sheet sheet, Map<String, Sheet.Row> rows) {
    private static final List<String> NAMES =
        List.of("name", "start", "paddling speed", "printed rose", "landing port");

    static Items read(Input in) throws IOException {
      Sheet sheet = Sheet.read(in.source, in.reader, List.of("item", "value"), List.of());
      Map<String, Sheet.Row> rows = new LinkedHashMap<>();
      for (Sheet.Row row : sheet.rows()) {
        if (!NAMES.contains(row.text("item"))) {
          row.problem("item", "must be one of " + NAMES + ", but was " + row.text("item"));
        } else if (rows.put(row.text("item"), row) != null) {
          row.problem("item", row.text("item") + " stands twice");
        }
      }
      for (String name : NAMES) {
        if (!rows.containsKey(name)) {
          sheet.problem("item " + name + " is missing");
        }
      }
      return new Items(sheet, rows);
    }

    <T> T read(String name, Function<String, T> parser, T fallback) {
      Sheet.Row row = rows.get(name);
      return row == null ? fallback : row.read("value", parser, fallback);
    }
  }
}
