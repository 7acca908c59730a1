package org.ferryglide.tide.sheet;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRow;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.List;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;

/** Parts a text into the rows of a {@link Sheet}, each as wide as its heading line. */
final class SheetReader {
  private static final int MOST_ROWS = 1_000_000;

  private SheetReader() {}

  static Sheet read(String source, Reader reader, List<String> required, List<String> optional)
      throws IOException {
    BoundedReader text = new BoundedReader(source, reader);
    CsvReader csv =
        CsvReader.builder().commentStrategy(CommentStrategy.SKIP).skipEmptyRows(true).build(text);
    Sheet sheet = null;
    int line = 0;
    try {
      for (CsvRow csvRow : csv) {
        line = (int) csvRow.getOriginalLineNumber();
        if (csvRow.getFieldCount() == 1 && csvRow.getField(0).trim().isEmpty()) {
          continue; // a line of spaces
        }
        if (sheet == null) {
          sheet = new Sheet(source, HeadingLine.columns(source, csvRow, required, optional));
        } else {
          add(csvRow, sheet);
        }
      }
    } catch (UncheckedIOException e) {
      if (text.isBroken()) {
        throw e.getCause();
      }
      throw new InputFormatException( // the parser's own limit on a field
          new InputProblem(
              source,
              line + 1,
              0,
              "a quotation mark is not closed here or on one of the lines that follow"));
    }
    if (sheet == null) {
      throw new InputFormatException(
          new InputProblem(source, 0, 0, "a heading line must come first: " + required));
    }
    return sheet;
  }

  private static void add(CsvRow csvRow, Sheet sheet) {
    String source = sheet.source();
    int line = (int) csvRow.getOriginalLineNumber();
    for (int i = 0; i < csvRow.getFieldCount(); i++) {
      if (HeadingLine.isOverLines(csvRow.getField(i))) {
        sheet.leaveOut(HeadingLine.openQuote(source, line, i + 1));
        return;
      }
      String fault = FieldText.fault(csvRow.getField(i));
      if (!fault.isEmpty()) {
        sheet.leaveOut(new InputProblem(source, line, i + 1, fault));
        return;
      }
    }
    int fields = csvRow.getFieldCount();
    if (fields != sheet.width()) {
      sheet.leaveOut(
          new InputProblem(
              source,
              line,
              Math.min(fields, sheet.width()) + 1,
              "a row must have "
                  + sheet.width()
                  + " fields like the heading line, but had "
                  + fields
                  + (fields > sheet.width()
                      ? "; a field with a comma in it must stand between quotation marks, and a"
                          + " decimal has a point"
                      : "")));
      return;
    }
    if (sheet.rows().size() == MOST_ROWS) {
      throw SheetText.refusal(
          source, line, 0, "a sheet must have at most " + MOST_ROWS + " rows, but had more");
    }
    sheet.addRow(line, csvRow.getFields());
  }
}
