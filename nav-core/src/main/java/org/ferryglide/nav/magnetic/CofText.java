package org.ferryglide.nav.magnetic;

import java.io.BufferedReader;
import java.io.IOException;

/** Reads the form in which the World Magnetic Model publishes its coefficients. */
final class CofText {
  private static final double SPAN_YEARS = 5.0;
  private static final int ROW_FIELDS = 6;

  private CofText() {}

  static MagneticModel read(String source, BufferedReader reader) throws IOException {
    CoefficientRows rows = new CoefficientRows(source);
    int number = 0;
    String name = "";
    double epoch = Double.NaN;
    boolean closed = false;
    for (String line = reader.readLine(); line != null; line = reader.readLine()) {
      number++;
      String[] fields = CoefficientRows.fields(line);
      if (fields.length == 0) {
        continue;
      }
      boolean nines = isNines(fields);
      if (name.isEmpty()) {
        epoch = rows.year(fields, 0, number, "epoch");
        name = fields.length > 1 ? fields[1] : "";
        if (name.isEmpty()) {
          rows.problem(number, 2, "name of the model must follow its epoch");
        }
        rows.stopIfProblems();
      } else if (nines) {
        closed = true;
      } else if (closed) {
        rows.problem(number, 0, "nothing may follow the line of nines");
      } else {
        row(rows, fields, number);
      }
    }
    if (name.isEmpty()) {
      rows.problem(number, 0, "the line with epoch and name is missing");
    } else {
      if (!closed) {
        rows.problem(number, 0, "the closing line of nines is missing: is the file whole?");
      }
      rows.checkComplete(number);
    }
    rows.stopIfProblems();
    return new MagneticModel(
        name,
        rows.degree(),
        new double[] {epoch},
        epoch + SPAN_YEARS,
        new double[][] {rows.table(0).packed()},
        new double[][] {rows.table(1).packed()},
        null);
  }

  private static boolean isNines(String[] fields) {
    if (fields.length != 1 || fields[0].length() < 4) {
      return false;
    }
    for (int i = 0; i < fields[0].length(); i++) {
      if (fields[0].charAt(i) != '9') {
        return false;
      }
    }
    return true;
  }

  private static void row(CoefficientRows rows, String[] fields, int line) {
    int n = rows.integer(fields, 0, line, "degree");
    int m = rows.integer(fields, 1, line, "order");
    double g = rows.coefficient(fields, 2, line, "g");
    double h = rows.coefficient(fields, 3, line, "h");
    double changeOfG = rows.coefficient(fields, 4, line, "change of g");
    double changeOfH = rows.coefficient(fields, 5, line, "change of h");
    if (fields.length > ROW_FIELDS) {
      rows.problem(line, ROW_FIELDS + 1, "a row has six fields, but had " + fields.length);
    }
    if (m < 0 && m != Integer.MIN_VALUE) {
      rows.problem(line, 2, "order must not be negative, but was " + m);
    } else if (rows.fits(n, m, line)) {
      rows.add(n, m, line, g, changeOfG);
      if (m > 0) {
        rows.add(n, -m, line, h, changeOfH);
      } else if (h != 0.0 || changeOfH != 0.0) {
        rows.problem(line, 4, "h and its change must be 0 where the order is 0");
      }
    }
  }
}
