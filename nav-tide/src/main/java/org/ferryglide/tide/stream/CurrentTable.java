package org.ferryglide.tide.stream;

import java.io.IOException;
import java.io.Reader;
import java.io.Serializable;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.Window;
import org.ferryglide.tide.sheet.Sheet;
import org.ferryglide.tide.stream.CurrentEvent.Kind;
import org.jspecify.annotations.Nullable;

/**
 * A published current table: for one position, times of slack and times and rates of maximum
 * current, in turn.
 *
 * <pre>{@code
 * CurrentTable table = CurrentTable.read("narrows.csv", reader);
 * Optional<Velocity> atEleven = table.asCurve().at(Instant.parse("2026-06-01T11:00:00Z"));
 * }</pre>
 */
public final class CurrentTable implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * Between slack and maximum lie about three hours, six where the current is diurnal; two lines
   * left out of a semi-diurnal table leave more than nine, and may hide a stream the other way.
   */
  private static final Duration LONGEST_INTERVAL = Duration.ofHours(9);

  private final String station;
  private final Position position;
  private final CurrentEvent[] events;
  private final Note[] notes;

  private CurrentTable(String station, Position position, CurrentEvent[] events, List<Note> notes) {
    this.station = station;
    this.position = position;
    this.events = events;
    this.notes = notes.toArray(new Note[0]);
  }

  /**
   * Makes a table from its lines.
   *
   * @param station the station's name, not empty
   * @param position where the table holds
   * @param events slack and maximum in turn, in order of time, at least two
   * @return the table
   * @throws IllegalArgumentException if the name is empty, there are fewer than two events, two
   *     slacks or two maxima follow each other, or the times are not in order
   */
  public static CurrentTable of(String station, Position position, List<CurrentEvent> events) {
    return of(station, position, events, "", List.of(), List.of());
  }

  /** The same with notes it comes with, from a sheet whose name and lines the doubts tell. */
  static CurrentTable of(
      String station,
      Position position,
      List<CurrentEvent> events,
      String source,
      List<Integer> lines,
      List<Note> before) {
    if (station.isEmpty()) {
      throw new IllegalArgumentException("name of a current table's station must not be empty");
    }
    if (events.size() < 2) {
      throw new IllegalArgumentException(
          "current table " + station + " must have at least 2 lines, but had " + events.size());
    }
    for (int i = 1; i < events.size(); i++) {
      String fault = faultBetween(events.get(i - 1), events.get(i));
      if (!fault.isEmpty()) {
        throw new IllegalArgumentException("current table " + station + ": " + fault);
      }
    }
    CurrentEvent[] inTurn = events.toArray(new CurrentEvent[0]);
    List<Note> notes = new ArrayList<>(before);
    for (StreamTableDoubts.Doubt doubt : CurrentTableDoubts.of(inTurn)) {
      int row = doubt.row();
      StreamTableDoubts.@Nullable Line line =
          row >= 0 && row < lines.size()
              ? new StreamTableDoubts.Line(source, lines.get(row))
              : null;
      Note place =
          row < 0
              ? StreamTableDoubts.place(station, line)
              : StreamTableDoubts.place(station, "at", inTurn[row].time().toString(), line);
      notes.add(doubt.note(place));
    }
    return new CurrentTable(station, position, inTurn, notes);
  }

  /** Whether lines seem to be missing between two that follow each other. */
  static boolean isHole(CurrentEvent before, CurrentEvent after) {
    return Duration.between(before.time(), after.time()).compareTo(LONGEST_INTERVAL) > 0;
  }

  /** What is wrong between two lines that follow each other; empty if nothing. */
  static String faultBetween(CurrentEvent before, CurrentEvent after) {
    if (!before.time().isBefore(after.time())) {
      return "times must ascend, but " + after.time() + " follows " + before.time();
    }
    if ((before.kind() == Kind.SLACK) == (after.kind() == Kind.SLACK)) {
      return "slack and maximum must come in turn, but "
          + before.kind()
          + " at "
          + before.time()
          + " is followed by "
          + after.kind()
          + " at "
          + after.time();
    }
    return "";
  }

  /**
   * Reads one station's table. Headings: {@code station}, {@code latitude}, {@code longitude}
   * (decimal degrees) in the first row, later rows empty or the same; {@code time} with its offset
   * from UTC, such as {@code 2026-06-01T09:31Z} or {@code 2026-06-01T10:31+01:00}; {@code kind}:
   * {@code slack}, {@code flood} or {@code ebb}; {@code set_deg} (true) and {@code rate_kn}, empty
   * for slack.
   *
   * @param source what to call the sheet in messages
   * @param reader the text; left open
   * @return the table
   * @throws IOException if the text cannot be read
   * @throws org.ferryglide.nav.note.InputFormatException listing every problem by line and column
   */
  public static CurrentTable read(String source, Reader reader) throws IOException {
    return CurrentSheet.read(source, reader);
  }

  /**
   * Reads a file in UTF-8, as {@link #read(String, Reader)} does.
   *
   * @param file the file; messages call it by its path
   * @return the table
   * @throws IOException if the file is not there or cannot be read
   * @throws org.ferryglide.nav.note.InputFormatException listing every problem by line and column
   */
  public static CurrentTable read(Path file) throws IOException {
    try (Reader reader = Sheet.open(file)) {
      return read(file.toString(), reader);
    }
  }

  /**
   * The current at any time by the method of the published tables: sine between slack and maximum.
   *
   * @return the curve; no data before the first line and after the last, nor between two lines more
   *     than nine hours apart
   */
  public StreamCurve asCurve() {
    return asCurve(FlowShape.SINE);
  }

  /**
   * The current at any time by another shape between slack and maximum.
   *
   * @param shape the shape
   * @return the curve; no data before the first line and after the last, nor between two lines more
   *     than nine hours apart
   */
  public StreamCurve asCurve(FlowShape shape) {
    return CurrentCurve.of(this, shape);
  }

  /**
   * How long the current stays below a rate about a slack, each side worked with its own maximum.
   *
   * @param slack a slack of this table with a maximum within nine hours on both sides
   * @param limit the rate not to be exceeded
   * @return the window, open towards a maximum that does not reach the limit
   * @throws IllegalArgumentException if {@code slack} is not such a slack
   */
  public Window slackWindow(CurrentEvent slack, Speed limit) {
    int at = List.of(events).indexOf(slack);
    if (at <= 0 || at >= events.length - 1 || slack.kind() != Kind.SLACK) {
      throw new IllegalArgumentException(
          "must be a slack of table " + station + " between two maxima, but was " + slack);
    }
    if (isHole(events[at - 1], slack) || isHole(slack, events[at + 1])) {
      throw new IllegalArgumentException(
          "must be a slack with a maximum within "
              + LONGEST_INTERVAL.toHours()
              + " hours on both sides, but lines of table "
              + station
              + " seem to be missing beside "
              + slack);
    }
    double turn = EpochSeconds.of(slack.time());
    double before = timeToReach(at - 1, turn, limit.metresPerSecond());
    double after = timeToReach(at + 1, turn, limit.metresPerSecond());
    return new Window(
        TimeSpan.of(EpochSeconds.toInstant(turn - before), EpochSeconds.toInstant(turn + after)),
        events[at - 1].rate().compareTo(limit) <= 0,
        events[at + 1].rate().compareTo(limit) <= 0);
  }

  private double timeToReach(int maximum, double slack, double limit) {
    return CurrentTimes.timeToReach(
        Math.abs(EpochSeconds.of(events[maximum].time()) - slack),
        limit,
        events[maximum].rate().metresPerSecond());
  }

  /**
   * The station's name.
   *
   * @return the name, not empty
   */
  public String station() {
    return station;
  }

  /**
   * Where the table holds.
   *
   * @return the position
   */
  public Position position() {
    return position;
  }

  /**
   * The lines of the table.
   *
   * @return unmodifiable list in order of time
   */
  public List<CurrentEvent> events() {
    return List.of(events);
  }

  /**
   * What looks wrong in the table: a maximum far above those of its kind near it or beyond any
   * known, a set turned round once, an ebb that sets as the flood does, an offset from UTC that
   * changes near the table's start or end. Every current made of the table carries these notes.
   *
   * @return unmodifiable list; each note has its threshold and where that is from, and if the table
   *     was read from a sheet its file and line
   */
  public List<Note> notes() {
    return List.of(notes);
  }

  /**
   * The maximum that a slack leads to: the one after it, or at the end of the table the opposite of
   * the one before.
   */
  Kind leadsTo(int slack) {
    if (slack + 1 < events.length) {
      return events[slack + 1].kind();
    }
    return events[slack - 1].kind() == Kind.FLOOD ? Kind.EBB : Kind.FLOOD;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CurrentTable that
        && station.equals(that.station)
        && position.equals(that.position)
        && events().equals(that.events());
  }

  @Override
  public int hashCode() {
    return 31 * station.hashCode() + events().hashCode();
  }

  /** Station, position and number of lines. */
  @Override
  public String toString() {
    return "current table " + station + " at " + position + ", " + events.length + " lines";
  }
}
