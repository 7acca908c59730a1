package org.ferryglide.tide.height;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.tide.height.TideEvent.Kind;
import org.ferryglide.tide.sheet.Sheet;

/**
 * Reads the high and low waters of a port from a comma-separated sheet.
 *
 * <p>Columns, in any order:
 *
 * <ul>
 *   <li>{@code time}, required: {@code 2026-06-01T09:30Z} or {@code 2026-06-01T10:30+01:00} with
 *       its offset from UTC; or {@code 2026-06-01T09:30}, also with a space for the T, when the
 *       sheet or the reader states a zone. Seconds may follow.
 *   <li>{@code height_m}, required: metres above the datum, in [-20, 30].
 *   <li>{@code kind}: {@code high} or {@code low}, {@code HW} or {@code LW}, {@code H} or {@code
 *       L}. Where it is empty or there is no such column, the heights before and after decide.
 *   <li>{@code port}, {@code datum}, {@code zone}: stated in the first row; the rows beneath are
 *       empty or say the same. A zone is {@code Z}, an offset such as {@code +01:00}, or a region
 *       of the IANA time zone database.
 * </ul>
 *
 * <p>With an offset for a zone the times are taken as they stand all the year; with a region, as
 * clock times with that region's daylight saving; a time that the clocks skip or go through twice
 * is refused, and needs its own offset. A time with its own offset needs no zone.
 *
 * <pre>{@code
 * TideTable table =
 *     TideTableReader.forPort("Skarra", "chart datum")
 *         .withZone(ZoneOffset.UTC)
 *         .read("skarra.csv", reader);
 * }</pre>
 *
 * <p>Refused, by line and column: an offset from UTC that rows have for less than 20 days while
 * those before and after them have another, since no clock is changed and changed back so soon;
 * waters out of order, two high or two low waters in turn, a high water lower than the low water
 * beside it, and gaps. A gap is more than {@link #withLongestInterval 18 hours} between two waters,
 * or more than 12 hours and two and a half times the longer of the intervals beside it. In a year
 * of the harmonic tide of 38 United States stations, diurnal ones among them, no interval was
 * longer than 17.9 hours or 2.2 times its longer neighbour; a pair of waters left out of a
 * semi-diurnal table leaves 18 hours and 2.8 times. Where the tide is mixed, a pair may be left out
 * without being missed.
 *
 * <p>Doubted, by line and heading, in {@link TideTable#notes}: heights and times far from those of
 * the waters near them, rises and falls larger than any known, an offset that changes near the
 * start or the end; {@link org.ferryglide.tide.sheet.TideJudgements} has the thresholds and their
 * sources. Everything computed from the table carries these doubts.
 */
public final class TideTableReader {
  private static final Duration LONGEST_INTERVAL = Duration.ofHours(18);
  private static final double LOWEST_METRES = -20.0;
  private static final double HIGHEST_METRES = 30.0;

  private final String port;
  private final String datum;
  private final Optional<ZoneId> zone;
  private final Duration longestInterval;

  private TideTableReader(
      String port, String datum, Optional<ZoneId> zone, Duration longestInterval) {
    this.port = port;
    this.datum = datum;
    this.zone = zone;
    this.longestInterval = longestInterval;
  }

  /**
   * A reader of sheets that state their own port and datum, and their zone or the offset of every
   * time.
   *
   * @return the reader
   */
  public static TideTableReader ofCompleteSheets() {
    return new TideTableReader("", "", Optional.empty(), LONGEST_INTERVAL);
  }

  /**
   * A reader of sheets that do not state their port and datum.
   *
   * @param port name of the port
   * @param datum name of the level that heights are measured from
   * @return the reader; a sheet that states another port or datum is refused
   * @throws IllegalArgumentException if a name is empty
   */
  public static TideTableReader forPort(String port, String datum) {
    if (port.trim().isEmpty() || datum.trim().isEmpty()) {
      throw new IllegalArgumentException("port and datum of a tide table must not be empty");
    }
    return new TideTableReader(port.trim(), datum.trim(), Optional.empty(), LONGEST_INTERVAL);
  }

  /**
   * The same reader, taking times without an offset in a zone.
   *
   * @param newZone an offset for times as they stand, a region for clock times with its daylight
   *     saving
   * @return the reader; a sheet that states another zone is refused
   */
  public TideTableReader withZone(ZoneId newZone) {
    return new TideTableReader(port, datum, Optional.of(newZone), longestInterval);
  }

  /**
   * The same reader with another limit on the time between two waters.
   *
   * @param longest longest interval between two waters, above 0 and at most 25 hours
   * @return the reader
   * @throws IllegalArgumentException if {@code longest} is outside that range
   */
  public TideTableReader withLongestInterval(Duration longest) {
    if (longest.isNegative() || longest.isZero() || longest.compareTo(Duration.ofHours(25)) > 0) {
      throw new IllegalArgumentException(
          "longest interval must be above 0 and at most 25 hours, but was " + longest);
    }
    return new TideTableReader(port, datum, zone, longest);
  }

  /**
   * Reads a sheet; the reader of its text is left open.
   *
   * @param source what to call the sheet in messages, usually the file's name
   * @param reader the sheet
   * @return the table
   * @throws IOException if the sheet cannot be read
   * @throws InputFormatException listing everything wrong with the sheet by line and column
   */
  public TideTable read(String source, Reader reader) throws IOException {
    Sheet sheet =
        Sheet.read(
            source, reader, List.of("time", "height_m"), List.of("kind", "port", "datum", "zone"));
    if (sheet.rows().size() < 2) {
      if (sheet.isWhole()) {
        sheet.problem("a tide table must have at least 2 waters, but had " + sheet.rows().size());
      }
      sheet.refuseIfFaulty();
    }
    String tablePort = stated(sheet, "port", port);
    String tableDatum = stated(sheet, "datum", datum);
    TideTimes times =
        TideTimes.of(stated(sheet, "zone", zone.map(ZoneId::getId).orElse("")), sheet);
    List<Water> waters = new ArrayList<>();
    for (Sheet.Row row : sheet.rows()) {
      Optional<OffsetDateTime> time = times.read(row, "time");
      OptionalDouble height = row.number("height_m", LOWEST_METRES, HIGHEST_METRES);
      Optional<Kind> kind = kind(row);
      if (time.isPresent() && height.isPresent()) {
        waters.add(new Water(row, time.get(), height.getAsDouble(), kind));
      }
    }
    if (sheet.isFaulty()) { // waters side by side can be judged all the same
      TideTableDoubts.refuseNeighbours(waters, longestInterval);
      sheet.refuseIfFaulty();
    }
    TideTableDoubts.refuseStrayOffsets(waters);
    List<TideEvent> events = events(waters);
    TideTableDoubts.refuseExchangedKinds(waters);
    sheet.refuseIfFaulty();
    for (int i = 1; i < events.size(); i++) {
      Sheet.Row row = waters.get(i).row;
      Optional<WaterFault> fault =
          WaterFault.between(
              events.get(i - 1), events.get(i), longestInterval, waters.get(i).time.getOffset());
      if (fault.isPresent()) {
        row.problem(fault.get().heading(), fault.get().text());
      } else if (isLongBesideItsNeighbours(waters, i)) {
        row.problem(
            "time",
            "a water seems to be missing: the time since the water before, at "
                + WaterFault.text(
                    waters.get(i - 1).time.toInstant(), waters.get(i).time.getOffset())
                + ", is more than two and a half times the intervals beside it");
      }
    }
    sheet.refuseIfFaulty();
    TideTableDoubts.judge(waters);
    return TideTable.of(tablePort, tableDatum, events).withNotes(sheet.doubts());
  }

  /**
   * Reads a file in UTF-8.
   *
   * @param file the file; messages call it by its path
   * @return the table
   * @throws IOException if the file is not there or cannot be read
   * @throws InputFormatException listing everything wrong with the file by line and column
   */
  public TideTable read(Path file) throws IOException {
    try (Reader reader = Sheet.open(file)) {
      return read(file.toString(), reader);
    }
  }

  /** One row's fields. */
  static final class Water {
    final Sheet.Row row;
    final OffsetDateTime time;
    final double height;
    final Optional<Kind> kind;

    Water(Sheet.Row row, OffsetDateTime time, double height, Optional<Kind> kind) {
      this.row = row;
      this.time = time;
      this.height = height;
      this.kind = kind;
    }
  }

  /** What the reader or the sheet's first row says, the same in every row. */
  private static String stated(Sheet sheet, String heading, String byReader) {
    String text = byReader;
    for (Sheet.Row row : sheet.rows()) {
      if (!row.has(heading)) {
        continue;
      }
      if (text.isEmpty()) {
        text = row.text(heading);
      } else if (!row.text(heading).equals(text)) {
        row.problem(
            heading, "must be \"" + text + "\" throughout, but was \"" + row.text(heading) + "\"");
      }
    }
    if (text.isEmpty() && !heading.equals("zone")) {
      if (!sheet.isWhole()) {
        return "unknown"; // it may stand in the row that is refused for its form
      }
      sheet.rows().get(0).problem(heading, "must be stated in the first row or by the reader");
      return "unknown"; // the sheet is refused before it is used
    }
    return text;
  }

  private static Optional<Kind> kind(Sheet.Row row) {
    String text = row.text("kind");
    return switch (text) {
      case "" -> Optional.empty();
      case "high", "High", "HIGH", "HW", "H" -> Optional.of(Kind.HIGH);
      case "low", "Low", "LOW", "LW", "L" -> Optional.of(Kind.LOW);
      default -> {
        row.problem("kind", "must be high, low, HW, LW, H, L or nothing, but was \"" + text + "\"");
        yield Optional.empty();
      }
    };
  }

  /** The waters with their kinds, those not stated found from the heights beside them. */
  private static List<TideEvent> events(List<Water> waters) {
    List<TideEvent> events = new ArrayList<>();
    for (int i = 0; i < waters.size(); i++) {
      Water water = waters.get(i);
      double before = waters.get(i == 0 ? 1 : i - 1).height;
      double after = waters.get(i == waters.size() - 1 ? i - 1 : i + 1).height;
      boolean above = water.height > before && water.height > after;
      boolean below = water.height < before && water.height < after;
      if (!water.kind.isPresent() && !above && !below) {
        water.row.problem(
            "height_m",
            "must be above or below both waters beside it, or the kind must be stated, but was "
                + water.height
                + " between "
                + before
                + " and "
                + after);
      }
      events.add(
          new TideEvent(
              water.time.toInstant(),
              Distance.ofMetres(water.height),
              water.kind.orElse(above ? Kind.HIGH : Kind.LOW)));
    }
    return events;
  }

  private static boolean isLongBesideItsNeighbours(List<Water> waters, int i) {
    double hours = hours(waters, i);
    double before = i > 1 ? hours(waters, i - 1) : 0.0;
    double after = i < waters.size() - 1 ? hours(waters, i + 1) : 0.0;
    return hours > 12.0 && waters.size() > 2 && hours > 2.5 * Math.max(before, after);
  }

  private static double hours(List<Water> waters, int i) {
    return Seconds.of(Duration.between(waters.get(i - 1).time, waters.get(i).time)) / 3600.0;
  }
}
