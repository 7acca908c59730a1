package org.ferryglide.nav.magnetic;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.Arrays;

/** Reads the form in which the International Geomagnetic Reference Field is published. */
final class ShcText {
  private static final int HEADER_FIELDS = 5;

  private final CoefficientRows rows;
  private final BufferedReader reader;
  private int number;

  private ShcText(String source, BufferedReader reader) {
    this.rows = new CoefficientRows(source);
    this.reader = reader;
  }

  static MagneticModel read(String source, BufferedReader reader) throws IOException {
    return new ShcText(source, reader).model(name(source));
  }

  /** The source without folders and ending. */
  private static String name(String source) {
    String file = source.substring(Math.max(source.lastIndexOf('/'), source.lastIndexOf('\\')) + 1);
    int ending = file.lastIndexOf('.');
    return ending > 0 ? file.substring(0, ending) : file;
  }

  private String[] next() throws IOException {
    for (String line = reader.readLine(); line != null; line = reader.readLine()) {
      number++;
      String[] fields = CoefficientRows.fields(line);
      if (fields.length > 0 && !fields[0].startsWith("#")) {
        return fields;
      }
    }
    return new String[0];
  }

  private MagneticModel model(String name) throws IOException {
    String[] header = next();
    if (header.length == 0) {
      rows.problem(number, 0, "the line with degrees and number of dates is missing");
    }
    rows.stopIfProblems();
    int lowest = rows.integer(header, 0, number, "lowest degree");
    int highest = rows.integer(header, 1, number, "highest degree");
    int dates = rows.integer(header, 2, number, "number of dates");
    int order = rows.integer(header, 3, number, "order of the spline");
    int steps = rows.integer(header, 4, number, "number of steps");
    if (header.length > HEADER_FIELDS) {
      rows.problem(
          number,
          HEADER_FIELDS + 1,
          "the line has " + HEADER_FIELDS + " fields, but had " + header.length);
    }
    rows.stopIfProblems();
    if (lowest != 1) {
      rows.problem(number, 1, "lowest degree must be 1, but was " + lowest);
    }
    if (dates < 1 || dates > 10_000) {
      rows.problem(number, 3, "number of dates must be from 1 to 10000, but was " + dates);
    } else if (order != (dates == 1 ? 1 : 2)) {
      rows.problem(
          number,
          4,
          "order of the spline must be 2 (straight lines between the dates), or 1 for a single"
              + " date, but was "
              + order);
    }
    if (steps != 1) {
      rows.problem(number, 5, "number of steps must be 1, but was " + steps);
    }
    rows.stopIfProblems();
    double[] years = years(dates);
    rows.stopIfProblems();
    for (String[] fields = next(); fields.length > 0; fields = next()) {
      row(fields, dates);
    }
    rows.checkComplete(number);
    if (rows.degree() != highest && rows.degree() > 0) {
      rows.problem(
          number,
          0,
          "highest degree must be " + highest + ", as the file says, but was " + rows.degree());
    }
    rows.stopIfProblems();
    return model(name, years);
  }

  private double[] years(int dates) throws IOException {
    String[] fields = next();
    double[] years = new double[dates];
    if (fields.length < dates) {
      rows.problem(number, 0, "there must be " + dates + " dates, but were " + fields.length);
      return years;
    }
    for (int i = 0; i < dates; i++) {
      years[i] = rows.year(fields, i, number, "date");
      if (i > 0 && years[i] <= years[i - 1]) {
        rows.problem(number, i + 1, "dates must increase, but " + fields[i] + " does not");
      }
    }
    if (fields.length > dates) {
      rows.problem(
          number, dates + 1, "there must be " + dates + " dates, but were " + fields.length);
    }
    return years;
  }

  private void row(String[] fields, int dates) {
    int n = rows.integer(fields, 0, number, "degree");
    int m = rows.integer(fields, 1, number, "order");
    boolean complete = fields.length >= dates + 2;
    double[] values = new double[complete ? dates : 0]; // a file of short rows costs no memory
    for (int i = 0; i < values.length; i++) {
      values[i] = rows.coefficient(fields, i + 2, number, "coefficient");
    }
    if (fields.length != dates + 2) {
      rows.problem(
          number,
          complete ? dates + 3 : 0,
          "a row has " + (dates + 2) + " fields, but had " + fields.length);
    }
    if (rows.fits(n, m, number)) {
      rows.add(n, m, number, values);
    }
  }

  private MagneticModel model(String name, double[] years) {
    int stretches = Math.max(1, years.length - 1);
    double[][] values = new double[stretches][];
    double[][] changes = new double[stretches][];
    double[] here = rows.table(0).packed();
    for (int i = 0; i < stretches; i++) {
      values[i] = here;
      changes[i] = new double[here.length];
      if (years.length > 1) {
        double[] there = rows.table(i + 1).packed();
        for (int k = 0; k < here.length; k++) {
          changes[i][k] = (there[k] - here[k]) / (years[i + 1] - years[i]);
        }
        here = there;
      }
    }
    return new MagneticModel(
        name,
        rows.degree(),
        Arrays.copyOf(years, stretches),
        years[years.length - 1],
        values,
        changes,
        null);
  }
}
