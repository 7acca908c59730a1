package org.ferryglide.tide.sheet;

import de.siegmar.fastcsv.reader.CsvRow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;
import org.ferryglide.nav.reading.InputProblems;

/** Reads the heading line of a sheet. */
final class HeadingLine {
  private HeadingLine() {}

  /**
   * The columns by their headings.
   *
   * @throws InputFormatException if a heading is missing, unknown or doubled
   */
  static Map<String, Integer> columns(
      String source, CsvRow heading, List<String> required, List<String> optional) {
    Map<String, Integer> columns = new LinkedHashMap<>();
    InputProblems problems = new InputProblems(source);
    int line = (int) heading.getOriginalLineNumber();
    String whole = heading.getField(0);
    if (heading.getFieldCount() == 1 && (whole.indexOf(';') >= 0 || whole.indexOf('\t') >= 0)) {
      throw new InputFormatException(
          new InputProblem(
              source,
              line,
              1,
              "fields must be separated by commas, and decimals by points, but the heading line is"
                  + " separated by "
                  + (whole.indexOf(';') >= 0 ? "semicolons" : "tabs")));
    }
    for (int i = 0; i < heading.getFieldCount(); i++) {
      String name = heading.getField(i).trim();
      if (isOverLines(name)) { // it may have swallowed other headings
        throw new InputFormatException(openQuote(source, line, i + 1));
      } else if (!required.contains(name) && !optional.contains(name)) {
        List<String> allowed = new ArrayList<>(required);
        allowed.addAll(optional);
        problems.add(
            line,
            i + 1,
            SheetText.printable(
                "heading must be one of "
                    + allowed
                    + ", but was "
                    + SheetText.quote(name)
                    + SheetText.didYouMean(name, allowed)));
      } else if (columns.put(name, i) != null) {
        problems.add(line, i + 1, "heading " + name + " stands twice");
      }
    }
    for (String name : required) {
      if (!columns.containsKey(name)) {
        problems.add(line, heading.getFieldCount() + 1, "heading " + name + " is missing");
      }
    }
    problems.refuseIfAny();
    return columns;
  }

  /** Whether a quotation mark has swallowed the end of a line. */
  static boolean isOverLines(String field) {
    return field.indexOf('\n') >= 0 || field.indexOf('\r') >= 0;
  }

  /** The problem of such a field. */
  static InputProblem openQuote(String source, int line, int column) {
    return new InputProblem(
        source,
        line,
        column,
        "a field must end on its own line, but its quotation mark was not closed there");
  }
}
