package org.ferryglide.tide.sheet;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.reading.InputProblems;
import org.ferryglide.nav.reading.Judgement;

/**
 * A comma-separated sheet: a heading line, then rows; a collector of everything wrong with it.
 *
 * <p>Reading a field that does not fit records the problem and returns an empty answer, so that one
 * pass finds every mistake; {@link #refuseIfFaulty} then throws them together. A row of the wrong
 * width, and a quotation mark not closed on its line, are problems too. What only looks wrong is a
 * doubt, which {@link #doubts} gives as notes for the table to carry. A sheet belongs to one
 * thread.
 *
 * <p>A field holds no control or hidden character, and does not begin as a spreadsheet's formula
 * does (=, @, or a sign without a figure). Sizes are bounded: lines of 65 536 characters, a million
 * rows, 128 million characters; of more than a hundred problems the first hundred are listed.
 *
 * <pre>{@code
 * Sheet sheet = Sheet.read("tides.csv", reader, List.of("time", "height_m"), List.of());
 * for (Sheet.Row row : sheet.rows()) {
 *   row.number("height_m", -20.0, 30.0).ifPresent(heights::add);
 * }
 * sheet.refuseIfFaulty();
 * }</pre>
 */
public final class Sheet {
  private final String source;
  private final Map<String, Integer> columns;
  private final List<Row> rows = new ArrayList<>();
  private final InputProblems problems;
  private final SheetDoubts doubts;
  private boolean whole = true;

  Sheet(String source, Map<String, Integer> columns) {
    this.source = source;
    this.columns = columns;
    this.problems = new InputProblems(source);
    this.doubts = new SheetDoubts(source);
  }

  /**
   * Reads a whole sheet; the reader is left open.
   *
   * @param source what to call the sheet in messages, usually the file's name
   * @param reader the text
   * @param required headings that must be there, in any order
   * @param optional headings that may be there; any other heading is a problem
   * @return the sheet, its rows as wide as its heading line
   * @throws IOException if the text cannot be read
   * @throws InputFormatException if there is no heading line, or a heading is missing, unknown or
   *     doubled
   */
  public static Sheet read(
      String source, Reader reader, List<String> required, List<String> optional)
      throws IOException {
    return SheetReader.read(source, reader, required, optional);
  }

  /**
   * Reads a whole sheet from a file in UTF-8.
   *
   * @param file the file; messages call it by its path
   * @param required headings that must be there, in any order
   * @param optional headings that may be there; any other heading is a problem
   * @return the sheet, its rows as wide as its heading line
   * @throws IOException if the file is not there or cannot be read
   * @throws InputFormatException as {@link #read(String, Reader, List, List)}, and if the file is a
   *     folder or not in UTF-8
   */
  public static Sheet read(Path file, List<String> required, List<String> optional)
      throws IOException {
    try (Reader reader = open(file)) {
      return read(file.toString(), reader, required, optional);
    }
  }

  /**
   * Opens a file of text in UTF-8 for a reader of sheets.
   *
   * @param file the file
   * @return its text
   * @throws IOException if the file is not there or cannot be read
   * @throws InputFormatException if the file is a folder, too large, or not in UTF-8, with the line
   *     and the column where it is not
   */
  public static Reader open(Path file) throws IOException {
    return SheetText.open(file.toString(), file);
  }

  /**
   * A field as a writer of sheets puts it down: in quotation marks where it must be.
   *
   * @param what what the text is called in a refusal
   * @param text what a reader of the sheet shall find
   * @return the field
   * @throws IllegalArgumentException if a sheet cannot hold the text: control and hidden
   *     characters, spaces at an end, and what a spreadsheet would take for a formula
   */
  public static String field(String what, String text) {
    return FieldText.written(what, text);
  }

  /**
   * Whether sheets may hold a character.
   *
   * @param character the character
   * @return false for controls other than the tab, and for what turns text round or is not seen
   */
  public static boolean isPlain(char character) {
    return FieldText.isPlain(character);
  }

  private static boolean isWithCommaForPoint(String text) {
    int comma = text.indexOf(',');
    return comma >= 0
        && SheetText.isDecimal(text.substring(0, comma) + '.' + text.substring(comma + 1));
  }

  /** A row of as many fields as the heading line. */
  void addRow(int line, List<String> fields) {
    rows.add(new Row(line, fields));
  }

  /** How many columns the heading line names. */
  int width() {
    return columns.size();
  }

  /** A row that is a problem as a whole. */
  void leaveOut(InputProblem problem) {
    whole = false;
    add(problem);
  }

  private void add(InputProblem problem) {
    problems.add(problem.line(), problem.column(), SheetText.printable(problem.message()));
  }

  /**
   * What the sheet is called in messages.
   *
   * @return the name given to {@link #read}
   */
  public String source() {
    return source;
  }

  /**
   * The rows beneath the heading line, in file order, without those that are problems as a whole.
   *
   * @return unmodifiable list of rows
   */
  public List<Row> rows() {
    return Collections.unmodifiableList(rows);
  }

  /**
   * Records something wrong with the sheet as a whole.
   *
   * @param message what was given and what is allowed
   */
  public void problem(String message) {
    add(new InputProblem(source, 0, 0, message));
  }

  /**
   * Whether every row beneath the heading line is among {@link #rows}. What is missing from a sheet
   * that is not whole may be in a row that is a problem already.
   *
   * @return false if a row was left out for its width or an open quotation mark
   */
  public boolean isWhole() {
    return whole;
  }

  /**
   * Records that the sheet as a whole looks wrong.
   *
   * @param judgement why
   * @param what one sentence under a code of its own: what was given and what would be expected
   */
  public void doubt(Judgement judgement, Note what) {
    doubts.add(judgement, 0, "", what);
  }

  /**
   * What looks wrong in the rows read so far, for the table made of them to carry.
   *
   * @return notes in the order of finding, each with file and line, the judgement's threshold and
   *     where that is from; of more than ten of one kind ten, and how many more there were
   */
  public List<Note> doubts() {
    return doubts.notes();
  }

  /**
   * Whether anything was wrong with what has been read so far.
   *
   * @return true if {@link #refuseIfFaulty} would throw
   */
  public boolean isFaulty() {
    return !problems.isEmpty();
  }

  /**
   * Throws if anything was wrong with what has been read so far.
   *
   * @throws InputFormatException listing every problem, by line and column
   */
  public void refuseIfFaulty() {
    problems.refuseIfAny();
  }

  /**
   * One row beneath the heading line.
   *
   * <pre>{@code
   * String name = row.text("name");
   * OptionalDouble rate = row.number("spring_rate_kn", 0.0, 20.0);
   * }</pre>
   */
  public final class Row {
    private final int line;
    private final List<String> fields;

    private Row(int line, List<String> fields) {
      this.line = line;
      this.fields = fields;
    }

    /**
     * Where the row stands in the file.
     *
     * @return line number, the first is 1
     */
    public int line() {
      return line;
    }

    /**
     * A field as it stands, without the spaces round it.
     *
     * @param heading the column's heading
     * @return the text; empty if the field is, or if an optional column is not in the sheet
     */
    public String text(String heading) {
      Integer index = columns.get(heading);
      return index == null ? "" : fields.get(index).trim();
    }

    /**
     * Whether a field has anything in it.
     *
     * @param heading the column's heading
     * @return false if the field is empty or its optional column is not in the sheet
     */
    public boolean has(String heading) {
      return !text(heading).isEmpty();
    }

    /**
     * A field as a decimal number within a range.
     *
     * @param heading the column's heading
     * @param least smallest value allowed
     * @param greatest largest value allowed
     * @return the number; empty if it did not fit, which is recorded as a problem
     */
    public OptionalDouble number(String heading, double least, double greatest) {
      String text = text(heading);
      double value = SheetText.isDecimal(text) ? Double.parseDouble(text) : Double.NaN;
      if (!(value >= least && value <= greatest)) {
        problem(
            heading,
            "must be a number in ["
                + least
                + ", "
                + greatest
                + "], but was "
                + SheetText.quote(text)
                + (isWithCommaForPoint(text) ? "; a decimal has a point" : ""));
        return OptionalDouble.empty();
      }
      return OptionalDouble.of(value + 0.0);
    }

    /**
     * A field read by a parser of values, such as {@code Speed::parse}.
     *
     * @param heading the column's heading
     * @param parser reads the text or throws {@code IllegalArgumentException} or {@code
     *     DateTimeException}
     * @param fallback what to return if the text is refused, which is recorded as a problem with
     *     the parser's message
     * @param <T> type of the value
     * @return the value or {@code fallback}
     */
    public <T> T read(String heading, Function<String, T> parser, T fallback) {
      return read(heading, heading, parser, fallback);
    }

    /**
     * The same for a field that its row names, not its column, as in a sheet of items and values.
     *
     * @param heading the column's heading
     * @param called what the field is called in the problem
     * @param parser as above
     * @param fallback as above
     * @param <T> type of the value
     * @return the value or {@code fallback}
     */
    public <T> T read(String heading, String called, Function<String, T> parser, T fallback) {
      try {
        return parser.apply(text(heading));
      } catch (IllegalArgumentException | DateTimeException e) {
        problemOf(heading, called, String.valueOf(e.getMessage()));
        return fallback;
      }
    }

    /**
     * Records something wrong with a field.
     *
     * @param heading the column's heading
     * @param message what was given and what is allowed; the heading is put in front
     */
    public void problem(String heading, String message) {
      problemOf(heading, heading, message);
    }

    private void problemOf(String heading, String called, String message) {
      Integer index = columns.get(heading);
      add(new InputProblem(source, line, index == null ? 0 : index + 1, called + ": " + message));
    }

    /**
     * Records that a field looks wrong, though it can be read.
     *
     * @param heading the column's heading
     * @param judgement why
     * @param what one sentence under a code of its own: what was given and what would be expected;
     *     file, line and heading are put in front
     */
    public void doubt(String heading, Judgement judgement, Note what) {
      doubts.add(judgement, line, heading, what);
    }
  }
}
