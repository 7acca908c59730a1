package org.ferryglide.nav.magnetic;

import java.util.Map;
import java.util.TreeMap;
import org.ferryglide.nav.reading.InputProblems;

/**
 * The rows of a coefficient file while it is read: numbers checked, problems gathered with their
 * line and field, completeness judged at the end. A negative order stands for a coefficient h.
 */
final class CoefficientRows {
  /** Beyond this the sums would still hold, but no model of the Earth's core goes so far. */
  private static final int HIGHEST_DEGREE = 200;

  private static final int NAMED_MISSING = 5;

  /** The largest coefficient of the Earth's field is near 30 000 nT; its change is far smaller. */
  private static final double MOST_NANOTESLA = 1e6;

  /** Models of the past reach back ten thousand years; 20250 is a slip for 2025. */
  private static final double FIRST_YEAR = -20_000.0;

  private static final double LAST_YEAR = 3000.0;

  private final InputProblems problems;
  private final Map<Integer, double[]> rows = new TreeMap<>();
  private int degree;

  CoefficientRows(String source) {
    problems = new InputProblems(source);
  }

  void problem(int line, int field, String message) {
    problems.add(line, field, message);
  }

  void stopIfProblems() {
    problems.refuseIfAny();
  }

  static String[] fields(String line) {
    String trimmed = line.trim();
    return trimmed.isEmpty() ? new String[0] : trimmed.split("\\s+");
  }

  /** Nanotesla, or nanotesla a year; NaN after a problem. */
  double coefficient(String[] fields, int index, int line, String name) {
    return number(fields, index, line, name, -MOST_NANOTESLA, MOST_NANOTESLA);
  }

  /** A decimal year; NaN after a problem. */
  double year(String[] fields, int index, int line, String name) {
    return number(fields, index, line, name, FIRST_YEAR, LAST_YEAR);
  }

  private double number(
      String[] fields, int index, int line, String name, double least, double most) {
    if (index >= fields.length) {
      problem(line, index + 1, name + " is missing");
      return Double.NaN;
    }
    double value = plainNumber(fields[index]);
    if (value >= least && value <= most) {
      return value;
    }
    problem(
        line,
        index + 1,
        name
            + " must be a number from "
            + (long) least
            + " to "
            + (long) most
            + ", but was \""
            + fields[index]
            + "\"");
    return Double.NaN;
  }

  /** Narrower than Double.parseDouble, which takes "NaN", "1f", "1d" and hexadecimal. */
  private static double plainNumber(String field) {
    for (int i = 0; i < field.length(); i++) {
      if ("0123456789+-.eE".indexOf(field.charAt(i)) < 0) {
        return Double.NaN;
      }
    }
    try {
      return Double.parseDouble(field);
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  /** The least int after a problem. */
  int integer(String[] fields, int index, int line, String name) {
    if (index >= fields.length) {
      problem(line, index + 1, name + " is missing");
      return Integer.MIN_VALUE;
    }
    try {
      return Integer.parseInt(fields[index]);
    } catch (NumberFormatException e) {
      problem(line, index + 1, name + " must be a whole number, but was \"" + fields[index] + "\"");
      return Integer.MIN_VALUE;
    }
  }

  /** Whether degree and order are such as a row may have; tells what is wrong if not. */
  boolean fits(int n, int m, int line) {
    if (n == Integer.MIN_VALUE || m == Integer.MIN_VALUE) {
      return false;
    }
    if (n < 1 || n > HIGHEST_DEGREE) {
      problem(line, 1, "degree must be from 1 to " + HIGHEST_DEGREE + ", but was " + n);
      return false;
    }
    if (Math.abs(m) > n) {
      problem(line, 2, "order must not exceed the degree " + n + ", but was " + m);
      return false;
    }
    return true;
  }

  void add(int n, int m, int line, double... values) {
    if (rows.put(key(n, m), values) != null) {
      problem(line, 1, "degree " + n + " order " + m + " must stand only once");
    }
    degree = Math.max(degree, n);
  }

  private static int key(int n, int m) {
    return n * (2 * HIGHEST_DEGREE + 1) + m + HIGHEST_DEGREE;
  }

  int degree() {
    return degree;
  }

  void checkComplete(int lastLine) {
    if (degree == 0) {
      problem(lastLine, 0, "no coefficients were found");
      return;
    }
    StringBuilder named = new StringBuilder();
    int missing = 0;
    for (int n = 1; n <= degree; n++) {
      for (int m = -n; m <= n; m++) {
        if (!rows.containsKey(key(n, m))) {
          missing++;
          if (missing <= NAMED_MISSING) {
            named.append(missing == 1 ? "" : ", ").append(n).append(' ').append(m);
          }
        }
      }
    }
    if (missing > 0) {
      problem(
          lastLine,
          0,
          "coefficients of degree and order "
              + named
              + (missing > NAMED_MISSING ? " and " + (missing - NAMED_MISSING) + " more" : "")
              + " are missing");
    }
  }

  /** The table of one column of values, once everything has been checked. */
  CoefficientTable table(int column) {
    CoefficientTable table = new CoefficientTable(degree);
    for (int n = 1; n <= degree; n++) {
      for (int m = 0; m <= n; m++) {
        table.g[n][m] = value(n, m, column);
        table.h[n][m] = m == 0 ? 0.0 : value(n, -m, column);
      }
    }
    return table;
  }

  private double value(int n, int m, int column) {
    double[] values = rows.get(key(n, m));
    if (values == null) {
      throw new IllegalStateException("checkComplete comes first");
    }
    return values[column];
  }
}
