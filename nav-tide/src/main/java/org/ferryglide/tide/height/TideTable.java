package org.ferryglide.tide.height;

import java.io.IOException;
import java.io.Reader;
import java.io.Serializable;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.Note;
import org.ferryglide.tide.sheet.Plausibility;
import org.ferryglide.tide.sheet.TideJudgements;

/**
 * The high and low waters of one port, in order of time.
 *
 * <p>Highs and lows alternate, however many there are in a day: a diurnal tide has one of each. A
 * table is immutable.
 *
 * <pre>{@code
 * TideTable table =
 *     TideTable.of(
 *         "Skarra",
 *         "chart datum",
 *         List.of(
 *             TideEvent.low(Instant.parse("2026-06-01T03:20:00Z"), Distance.ofMetres(0.7)),
 *             TideEvent.high(Instant.parse("2026-06-01T09:30:00Z"), Distance.ofMetres(4.2)),
 *             TideEvent.low(Instant.parse("2026-06-01T15:45:00Z"), Distance.ofMetres(0.9))));
 * TideEvent highWater = table.highWaterNearest(instant);
 * table.range(highWater); // 3.4 m, the mean of a rise of 3.5 m and a fall of 3.3 m
 * }</pre>
 */
public final class TideTable implements Serializable {

  private static final long serialVersionUID = 1L;

  private final String port;
  private final String datum;
  private final WatersInOrder waters;

  @SuppressWarnings("serial") // List.copyOf gives a serializable list of serializable notes
  private final List<Note> notes;

  private TideTable(String port, String datum, WatersInOrder waters, List<Note> notes) {
    this.port = port;
    this.datum = datum;
    this.waters = waters;
    this.notes = notes;
  }

  /**
   * Makes a table from its high and low waters.
   *
   * @param port name of the port; spaces round it are taken off
   * @param datum name of the level that heights are measured from, for example {@code chart datum};
   *     spaces round it are taken off
   * @param events at least two waters in order of time, high and low in turn, no high water lower
   *     than the low waters beside it, never more than 25 hours apart
   * @return the table
   * @throws IllegalArgumentException if a name is empty or the waters are not as described; the
   *     message names the water
   */
  public static TideTable of(String port, String datum, List<TideEvent> events) {
    requireText(port, "port");
    requireText(datum, "datum");
    return new TideTable(port.trim(), datum.trim(), WatersInOrder.of(events), List.of());
  }

  /**
   * Reads a table from a sheet that states its own port, datum and zone; {@link TideTableReader}
   * lists the columns, and reads sheets that leave those to the reader.
   *
   * @param source what to call the sheet in messages, usually the file's name
   * @param reader the sheet
   * @return the table
   * @throws IOException if the sheet cannot be read
   * @throws InputFormatException listing everything wrong with the sheet by line and column
   */
  public static TideTable read(String source, Reader reader) throws IOException {
    return TideTableReader.ofCompleteSheets().read(source, reader);
  }

  /**
   * Reads a file in UTF-8 that states its own port, datum and zone.
   *
   * @param file the file; messages call it by its path
   * @return the table
   * @throws IOException if the file is not there or cannot be read
   * @throws InputFormatException listing everything wrong with the file by line and column
   */
  public static TideTable read(Path file) throws IOException {
    return TideTableReader.ofCompleteSheets().read(file);
  }

  /**
   * Writes the table as a sheet that {@link #read} takes and that holds the same waters to the last
   * digit. Times are in UTC. The notes come first as comments, for people; they are not read back.
   *
   * @param out receives the sheet; left open
   * @throws IOException if {@code out} cannot be written to
   * @throws IllegalArgumentException if the name of the port or the datum has control characters,
   *     or a water is outside the years 0 to 9999; nothing is written then
   */
  public void write(Appendable out) throws IOException {
    TideTableWriter.write(this, out);
  }

  private static void requireText(String text, String name) {
    if (text.trim().isEmpty()) {
      throw new IllegalArgumentException(name + " of a tide table must not be empty");
    }
  }

  /**
   * The table of a port among others.
   *
   * @param tables tables, for example those of a folder
   * @param port the port's name
   * @return its table
   * @throws IllegalArgumentException if there is none, with the names that there are
   */
  public static TideTable named(List<TideTable> tables, String port) {
    List<String> names = new ArrayList<>();
    for (TideTable table : tables) {
      if (table.port().equals(port)) {
        return table;
      }
      names.add(table.port());
    }
    throw new IllegalArgumentException(
        "there is no tide table \"" + port + "\"; there are " + names);
  }

  /**
   * The same table with more notes, for example on how a secondary port's waters were made.
   *
   * @param more notes to add
   * @return a table whose notes are this table's and {@code more}
   */
  public TideTable withNotes(List<Note> more) {
    List<Note> all = new ArrayList<>(notes);
    all.addAll(more);
    return new TideTable(port, datum, waters, List.copyOf(all));
  }

  /**
   * Whose waters these are.
   *
   * @return name of the port
   */
  public String port() {
    return port;
  }

  /**
   * The level that heights are measured from.
   *
   * @return the datum's name, for example {@code chart datum}
   */
  public String datum() {
    return datum;
  }

  /**
   * What a reader of the table should know.
   *
   * @return the notes, unmodifiable: the doubts of its sheet, how a secondary port's waters were
   *     made; empty for a table as published in which nothing looks wrong
   */
  public List<Note> notes() {
    return notes;
  }

  /**
   * Every high and low water.
   *
   * @return the waters in order of time, at least two, unmodifiable
   */
  public List<TideEvent> events() {
    return waters.events();
  }

  /**
   * The high waters.
   *
   * @return the high waters in order of time, unmodifiable
   */
  public List<TideEvent> highWaters() {
    return waters.ofKind(TideEvent.Kind.HIGH);
  }

  /**
   * The low waters.
   *
   * @return the low waters in order of time, unmodifiable
   */
  public List<TideEvent> lowWaters() {
    return waters.ofKind(TideEvent.Kind.LOW);
  }

  /**
   * Time of the first water, before which the table says nothing.
   *
   * @return the first water's time
   */
  public Instant start() {
    return waters.event(0).time();
  }

  /**
   * Time of the last water, after which the table says nothing.
   *
   * @return the last water's time
   */
  public Instant end() {
    return waters.event(waters.count() - 1).time();
  }

  /**
   * The next water after a time.
   *
   * @param instant when
   * @return the first water strictly later; empty if the table ends before
   */
  public Optional<TideEvent> firstAfter(Instant instant) {
    return waters.at(waters.indexAfter(instant));
  }

  /**
   * The last water up to a time.
   *
   * @param instant when
   * @return the last water at that time or earlier; empty if the table starts later
   */
  public Optional<TideEvent> lastUpTo(Instant instant) {
    return waters.at(waters.indexAfter(instant) - 1);
  }

  /**
   * The next high or low water after a time.
   *
   * @param instant when
   * @param kind high or low
   * @return the first water of that kind strictly later; empty if the table ends before
   */
  public Optional<TideEvent> firstAfter(Instant instant, TideEvent.Kind kind) {
    int i = waters.indexAfter(instant);
    return waters.at(i < waters.count() && waters.event(i).kind() != kind ? i + 1 : i);
  }

  /**
   * The last high or low water up to a time.
   *
   * @param instant when
   * @param kind high or low
   * @return the last water of that kind at that time or earlier; empty if the table starts later
   */
  public Optional<TideEvent> lastUpTo(Instant instant, TideEvent.Kind kind) {
    int i = waters.indexAfter(instant) - 1;
    return waters.at(i >= 0 && waters.event(i).kind() != kind ? i - 1 : i);
  }

  /**
   * The high water nearest in time, from which a stream table counts its hours.
   *
   * @param instant when; outside the table too, where the answer is its first or last high water
   *     however long ago or ahead that is
   * @return the nearest high water of the table, the later one of two equally near
   */
  public TideEvent highWaterNearest(Instant instant) {
    Optional<TideEvent> before = lastUpTo(instant, TideEvent.Kind.HIGH);
    Optional<TideEvent> after = firstAfter(instant, TideEvent.Kind.HIGH);
    if (before.isPresent() && after.isPresent()) {
      Duration since = Duration.between(before.get().time(), instant);
      Duration until = Duration.between(instant, after.get().time());
      return since.compareTo(until) < 0 ? before.get() : after.get();
    }
    return before.isPresent() ? before.get() : after.get(); // of two waters one is high
  }

  /**
   * The range of the tide at a high water: the mean of the rise before it and the fall after it. At
   * the edge of the table, where only one of the two is there, that one; see {@link
   * #isRangeOneSided}. Where one is less than half of the other, as beside a double high water, the
   * larger, and {@link #notesFor} says so.
   *
   * @param highWater a high water of this table
   * @return the range, never negative
   * @throws IllegalArgumentException if {@code highWater} is not a high water of this table
   */
  public Distance range(TideEvent highWater) {
    int i = indexOfHighWater(highWater);
    return Distance.ofMetres(Plausibility.rangeMetres(waters.rise(i), waters.fall(i)));
  }

  /**
   * What to know about the range of the tide at a high water.
   *
   * @param highWater a high water of this table
   * @return the caution {@code tide.doubt.unequal-range} where the rise and the fall differ so much
   *     that the larger is taken, else none; unmodifiable
   * @throws IllegalArgumentException if {@code highWater} is not a high water of this table
   */
  public List<Note> notesFor(TideEvent highWater) {
    int i = indexOfHighWater(highWater);
    return Plausibility.rangeIsUnequal(waters.rise(i), waters.fall(i))
        ? List.of(
            TideJudgements.RANGE_UNEQUAL
                .note(
                    "The rise and the fall of this tide are very unlike, as beside a double high"
                        + " water or in a mixed tide; the larger is taken for its range.")
                .with("highWater", highWater.time().toString())
                .with("riseMetres", waters.rise(i))
                .with("fallMetres", waters.fall(i)))
        : List.of();
  }

  /**
   * Whether a high water is the first or the last of the table, so that its range rests on its fall
   * or its rise alone.
   *
   * @param highWater a high water of this table
   * @return true if the low water before or after it is not in the table
   * @throws IllegalArgumentException if {@code highWater} is not a high water of this table
   */
  public boolean isRangeOneSided(TideEvent highWater) {
    int i = indexOfHighWater(highWater);
    return i == 0 || i == waters.count() - 1;
  }

  private int indexOfHighWater(TideEvent highWater) {
    int i = waters.indexAfter(highWater.time()) - 1;
    if (i < 0 || !highWater.isHigh() || !waters.event(i).equals(highWater)) {
      throw new IllegalArgumentException(
          "must be a high water of the table of " + port + ", but was " + highWater);
    }
    return i;
  }

  /** Number of intervals between waters. */
  int segments() {
    return waters.count() - 1;
  }

  /** Which interval holds a time: -1 for a time outside the table or NaN. */
  int segmentAt(double epochSeconds) {
    return waters.segmentAt(epochSeconds);
  }

  /** Time of a water, seconds since 1970. */
  double seconds(int index) {
    return waters.seconds(index);
  }

  /** Height of a water, metres. */
  double height(int index) {
    return waters.height(index);
  }

  /** Whether a water is a high one. */
  boolean isHigh(int index) {
    return waters.event(index).isHigh();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TideTable that
        && port.equals(that.port)
        && datum.equals(that.datum)
        && waters.equals(that.waters)
        && notes.equals(that.notes);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * port.hashCode() + datum.hashCode()) + waters.hashCode();
  }

  /** Port, number of waters and their span; not the waters themselves. */
  @Override
  public String toString() {
    return port + ", " + waters.count() + " waters from " + start() + " to " + end();
  }
}
