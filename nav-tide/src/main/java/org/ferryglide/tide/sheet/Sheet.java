package org.ferryglide.tide.sheet;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRow;
import java.io.IOException;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;

/**
 * A comma-separated sheet: a heading line, then rows; a collector of everything wrong with it.
 *
 * <p>Reading a field that does not fit records the problem and returns an empty answer, so that one
 * pass finds every mistake; {@link #refuseIfFaulty} then throws them together. A row of the wrong
 * width, and a quotation mark not closed on its line, are problems too. A sheet belongs to one
 * thread.
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
  /** Narrower than Double.parseDouble, which reads "NaN", "Infinity", "1f" and hexadecimal. */
  private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]*\\.?[0-9]*([eE][-+]?[0-9]+)?");

  private static final char BYTE_ORDER_MARK = '\ufeff';

  private final String source;
  private final Map<String, Integer> columns;
  private final List<Row> rows = new ArrayList<>();
  private final List<InputProblem> problems = new ArrayList<>();

  private Sheet(String source, Map<String, Integer> columns) {
    this.source = source;
    this.columns = columns;
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
    CsvReader csv =
        CsvReader.builder()
            .commentStrategy(CommentStrategy.SKIP)
            .skipEmptyRows(true)
            .build(withoutByteOrderMark(reader));
    try {
      Sheet sheet = null;
      for (CsvRow csvRow : csv) {
        if (csvRow.getFieldCount() == 1 && csvRow.getField(0).trim().isEmpty()) {
          continue; // a line of spaces
        }
        if (sheet == null) {
          sheet = withHeadings(source, csvRow, required, optional);
        } else {
          sheet.add(csvRow);
        }
      }
      if (sheet == null) {
        throw new InputFormatException(
            new InputProblem(source, 0, 0, "a heading line must come first: " + required));
      }
      return sheet;
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /** A mark in front of a comment would hide that it is one. */
  private static Reader withoutByteOrderMark(Reader reader) throws IOException {
    PushbackReader pushback = new PushbackReader(reader);
    int first = pushback.read();
    if (first >= 0 && first != BYTE_ORDER_MARK) {
      pushback.unread(first);
    }
    return pushback;
  }

  private static Sheet withHeadings(
      String source, CsvRow heading, List<String> required, List<String> optional) {
    Map<String, Integer> columns = new LinkedHashMap<>();
    List<InputProblem> problems = new ArrayList<>();
    int line = (int) heading.getOriginalLineNumber();
    String whole = heading.getField(0);
    if (heading.getFieldCount() == 1 && (whole.indexOf(';') >= 0 || whole.indexOf('\t') >= 0)) {
      throw new InputFormatException(
          new InputProblem(
              source,
              line,
              1,
              "fields must be parted by commas, and decimals by points, but the heading line is"
                  + " parted by "
                  + (whole.indexOf(';') >= 0 ? "semicolons" : "tabs")));
    }
    for (int i = 0; i < heading.getFieldCount(); i++) {
      String name = heading.getField(i).trim();
      if (isOverLines(name)) {
        problems.add(openQuote(source, line, i + 1));
      } else if (!required.contains(name) && !optional.contains(name)) {
        List<String> allowed = new ArrayList<>(required);
        allowed.addAll(optional);
        problems.add(
            new InputProblem(
                source,
                line,
                i + 1,
                "heading must be one of " + allowed + ", but was \"" + name + "\""));
      } else if (columns.put(name, i) != null) {
        problems.add(new InputProblem(source, line, i + 1, "heading " + name + " stands twice"));
      }
    }
    for (String name : required) {
      if (!columns.containsKey(name)) {
        problems.add(new InputProblem(source, line, 0, "heading " + name + " is missing"));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputFormatException(problems);
    }
    return new Sheet(source, columns);
  }

  /** Whether a quotation mark has swallowed the end of a line. */
  private static boolean isOverLines(String field) {
    return field.indexOf('\n') >= 0 || field.indexOf('\r') >= 0;
  }

  private static InputProblem openQuote(String source, int line, int column) {
    return new InputProblem(
        source,
        line,
        column,
        "a field must end on its own line, but its quotation mark was not closed there");
  }

  private void add(CsvRow csvRow) {
    int line = (int) csvRow.getOriginalLineNumber();
    for (int i = 0; i < csvRow.getFieldCount(); i++) {
      if (isOverLines(csvRow.getField(i))) {
        problems.add(openQuote(source, line, i + 1));
        return;
      }
    }
    if (csvRow.getFieldCount() != columns.size()) {
      problems.add(
          new InputProblem(
              source,
              line,
              0,
              "a row must have "
                  + columns.size()
                  + " fields like the heading line, but had "
                  + csvRow.getFieldCount()));
      return;
    }
    rows.add(new Row(line, csvRow.getFields()));
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
    problems.add(new InputProblem(source, 0, 0, message));
  }

  /**
   * Throws if anything was wrong with what has been read so far.
   *
   * @throws InputFormatException listing every problem, by line and column
   */
  public void refuseIfFaulty() {
    if (!problems.isEmpty()) {
      List<InputProblem> sorted = new ArrayList<>(problems);
      sorted.sort(
          (a, b) ->
              a.line() != b.line()
                  ? Integer.compare(a.line(), b.line())
                  : Integer.compare(a.column(), b.column()));
      throw new InputFormatException(sorted);
    }
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
      double value = Double.NaN;
      if (NUMBER.matcher(text).matches()) {
        try {
          value = Double.parseDouble(text);
        } catch (NumberFormatException e) {
          // stays NaN and is recorded below
        }
      }
      if (!(value >= least && value <= greatest)) {
        problem(
            heading,
            "must be a number in [" + least + ", " + greatest + "], but was \"" + text + "\"");
        return OptionalDouble.empty();
      }
      return OptionalDouble.of(value + 0.0);
    }

    /**
     * A field read by a parser of values, such as {@code Speed::parse}.
     *
     * @param heading the column's heading
     * @param parser reads the text or throws {@code IllegalArgumentException} or {@code
     *     java.time.DateTimeException}
     * @param fallback what to return if the text is refused, which is recorded as a problem with
     *     the parser's message
     * @param <T> type of the value
     * @return the value or {@code fallback}
     */
    public <T> T read(String heading, Function<String, T> parser, T fallback) {
      try {
        return parser.apply(text(heading));
      } catch (IllegalArgumentException | java.time.DateTimeException e) {
        problem(heading, String.valueOf(e.getMessage()));
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
      Integer index = columns.get(heading);
      problems.add(
          new InputProblem(source, line, index == null ? 0 : index + 1, heading + ": " + message));
    }
  }
}
