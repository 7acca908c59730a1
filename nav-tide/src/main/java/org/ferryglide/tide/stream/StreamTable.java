package org.ferryglide.tide.stream;

import java.io.IOException;
import java.io.Reader;
import java.io.Serializable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.sheet.Sheet;
import org.jspecify.annotations.Nullable;

/**
 * A printed hourly stream table: for one position, set and rates hour by hour about the high (or
 * low) waters of a standard port.
 *
 * <pre>{@code
 * List<StreamTable> tables = StreamTable.readAll("streams.csv", reader);
 * HourlyStream stream = tables.get(0).boundTo(tidesAtPortEnnor);
 * Optional<Velocity> atNine = stream.at(Instant.parse("2026-06-01T09:00:00Z"));
 * }</pre>
 *
 * <p>A table says nothing of dates; {@link #boundTo} lays it along the tides of its port.
 */
public final class StreamTable implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Rows of a complete table: from six hours before high (or low) water to six after. */
  public static final int COMPLETE_ROWS = 13;

  private final String station;
  private final Position position;
  private final StandardPort standardPort;
  private final StreamHour[] hours;
  private final Note[] notes;

  private StreamTable(
      String station,
      Position position,
      StandardPort standardPort,
      StreamHour[] hours,
      Note[] notes) {
    this.station = station;
    this.position = position;
    this.standardPort = standardPort;
    this.hours = hours;
    this.notes = notes;
  }

  /**
   * Makes a table from its rows.
   *
   * @param station the station's name or letter, as notes shall call it, not empty
   * @param position where the table holds
   * @param standardPort the port its hours are counted from, with the ranges its rates hold for
   * @param hours the rows in any order, at least one, no hour twice; where hours are missing, gaps
   *     up to three hours are bridged and longer ones have no data
   * @return the table
   * @throws IllegalArgumentException if the name or the list is empty, or an hour occurs twice
   */
  public static StreamTable of(
      String station, Position position, StandardPort standardPort, List<StreamHour> hours) {
    return of(station, position, standardPort, hours, "", Map.of());
  }

  /** The same from a sheet, whose name and lines the doubts are to tell. */
  static StreamTable of(
      String station,
      Position position,
      StandardPort standardPort,
      List<StreamHour> hours,
      String source,
      Map<Integer, Integer> lineOfHour) {
    if (station.isEmpty()) {
      throw new IllegalArgumentException("name of a stream table's station must not be empty");
    }
    if (hours.isEmpty()) {
      throw new IllegalArgumentException("stream table " + station + " must have at least one row");
    }
    List<StreamHour> sorted = new ArrayList<>(hours);
    sorted.sort(Comparator.comparingInt(StreamHour::hour));
    for (int i = 1; i < sorted.size(); i++) {
      if (sorted.get(i).hour() == sorted.get(i - 1).hour()) {
        throw new IllegalArgumentException(
            "stream table " + station + " must not have hour " + sorted.get(i).hour() + " twice");
      }
    }
    List<Note> notes = new ArrayList<>();
    List<StreamTableDoubts.Doubt> doubts = new ArrayList<>(StreamTableDoubts.of(sorted));
    doubts.addAll(StreamTableDoubts.ofRanges(standardPort));
    for (StreamTableDoubts.Doubt doubt : doubts) {
      int hour = sorted.get(Math.max(0, doubt.row())).hour();
      StreamTableDoubts.@Nullable Line line =
          StreamTableDoubts.Line.of(source, lineOfHour.get(hour));
      Note place =
          doubt.row() < 0
              ? StreamTableDoubts.place(station, line)
              : StreamTableDoubts.place(
                  station, "hour", StreamHour.label(hour, standardPort.mark()), line);
      notes.add(doubt.note(place));
    }
    return new StreamTable(
        station,
        position,
        standardPort,
        sorted.toArray(new StreamHour[0]),
        notes.toArray(new Note[0]));
  }

  /**
   * Reads a sheet of complete tables, one row for each station and hour from -6 to 6, in any order.
   *
   * <p>Headings: {@code station}, {@code latitude} and {@code longitude} (decimal degrees, north
   * and east positive), {@code port}, {@code neap_range_m}, {@code spring_range_m}, {@code hour},
   * {@code set_deg} (true; may be empty if both rates are 0), {@code spring_rate_kn}, {@code
   * neap_rate_kn}; optionally {@code about} ({@code HW}, the default, or {@code LW}). What is the
   * same for a whole station stands in its first row; later rows repeat it or leave it empty.
   *
   * <pre>{@code
   * station,latitude,longitude,port,neap_range_m,spring_range_m,hour,set_deg,spring_rate_kn,neap_rate_kn
   * Skarra Sound,50.11,-5.52,Port Ennor,2.3,4.9,-6,245,0.8,0.4
   * Skarra Sound,,,,,,-5,61,0.3,0.1
   * }</pre>
   *
   * @param source what to call the sheet in messages, usually the file's name
   * @param reader the text; left open
   * @return the tables in the order in which their stations first appear
   * @throws IOException if the text cannot be read
   * @throws org.ferryglide.nav.note.InputFormatException listing every problem, with line and
   *     column: a number out of range, a row missing or doubled, a station that contradicts itself,
   *     neap rates above the spring rates in most rows
   */
  public static List<StreamTable> readAll(String source, Reader reader) throws IOException {
    return StreamSheet.read(source, reader);
  }

  /**
   * Reads a file of complete tables in UTF-8, as {@link #readAll(String, Reader)} does.
   *
   * @param file the file; messages call it by its path
   * @return the tables in the order in which their stations first appear
   * @throws IOException if the file is not there or cannot be read
   * @throws org.ferryglide.nav.note.InputFormatException listing every problem, with line and
   *     column
   */
  public static List<StreamTable> readAll(Path file) throws IOException {
    try (Reader reader = Sheet.open(file)) {
      return readAll(file.toString(), reader);
    }
  }

  /**
   * Writes complete tables as a sheet from which {@link #readAll(String, Reader)} reads the same
   * values back.
   *
   * @param tables the tables, each complete from hour -6 to 6 and without other rows
   * @param out where to; left open
   * @throws IOException if it cannot be written
   * @throws IllegalArgumentException if a table is not complete, has rows beyond six hours, or its
   *     name or its port's begins or ends with a space or holds a line end
   */
  public static void writeAll(List<StreamTable> tables, Appendable out) throws IOException {
    StreamSheet.write(tables, out);
  }

  /**
   * The table of a station among others.
   *
   * @param tables tables, for example those of a sheet
   * @param station the station's name
   * @return its table
   * @throws IllegalArgumentException if there is none, with the names that there are
   */
  public static StreamTable named(List<StreamTable> tables, String station) {
    List<String> names = new ArrayList<>();
    for (StreamTable table : tables) {
      if (table.station.equals(station)) {
        return table;
      }
      names.add(table.station);
    }
    throw new IllegalArgumentException(
        "there is no stream table \"" + station + "\"; there are " + names);
  }

  /**
   * Lays this table along the tides of its standard port. Where three high (or low) waters lie so
   * close that the rows of three tides would overlap, as in mixed tides, the rows farthest from
   * their own water are left out, with the note {@code stream.crowded-waters}.
   *
   * @param tides the tide table of {@link #standardPort}
   * @return the stream as a function of time, between hours by components, each tide with its own
   *     range
   * @throws IllegalArgumentException if {@code tides} is another port's
   */
  public HourlyStream boundTo(TideTable tides) {
    return HourlyStream.of(this, tides);
  }

  /**
   * The stream of one row at a given range of the tide.
   *
   * @param hour hours after the port's high (or low) water
   * @param range range at the standard port, at least 0
   * @return set as printed and rate on the line from neaps to springs, never below zero
   * @throws IllegalArgumentException if the table has no such row, or the range is negative
   */
  public Velocity at(int hour, Distance range) {
    Arguments.notNegative(range.metres(), "range of the tide", "metres");
    for (StreamHour row : hours) {
      if (row.hour() == hour) {
        return Velocity.ofSetAndRate(
            row.set(),
            Speed.ofMetresPerSecond(
                StreamRates.byRange(
                    row.neapRate().metresPerSecond(),
                    row.springRate().metresPerSecond(),
                    range,
                    standardPort.meanRanges())));
      }
    }
    throw new IllegalArgumentException("stream table " + station + " has no row for hour " + hour);
  }

  /**
   * The station's name.
   *
   * @return name or letter, not empty
   */
  public String station() {
    return station;
  }

  /**
   * Where the table holds.
   *
   * @return the station's position
   */
  public Position position() {
    return position;
  }

  /**
   * The port the table's hours are counted from.
   *
   * @return the port with its mean ranges
   */
  public StandardPort standardPort() {
    return standardPort;
  }

  /**
   * The rows by hour.
   *
   * @return unmodifiable list, earliest hour first, at least one
   */
  public List<StreamHour> hours() {
    return List.of(hours);
  }

  /**
   * What looks wrong in the table: neap rates above spring rates, a rate far above those beside it,
   * a set turned round for one hour, an ebb that sets as the flood does. Every stream made of the
   * table carries these notes.
   *
   * @return unmodifiable list; each note has its threshold and where that is from, and if the table
   *     was read from a sheet its file and line
   */
  public List<Note> notes() {
    return List.of(notes);
  }

  /**
   * Whether all thirteen rows from -6 to +6 are there.
   *
   * @return true for a complete table
   */
  public boolean isComplete() {
    int inside = 0;
    for (StreamHour row : hours) {
      inside += Math.abs(row.hour()) <= 6 ? 1 : 0;
    }
    return inside == COMPLETE_ROWS;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StreamTable that
        && station.equals(that.station)
        && position.equals(that.position)
        && standardPort.equals(that.standardPort)
        && hours().equals(that.hours());
  }

  @Override
  public int hashCode() {
    return 31 * station.hashCode() + hours().hashCode();
  }

  /** Station, position and standard port. */
  @Override
  public String toString() {
    return "stream table " + station + " at " + position + " about " + standardPort;
  }
}
