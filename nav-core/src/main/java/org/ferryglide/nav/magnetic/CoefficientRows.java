package org.ferryglide.nav.magnetic;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;

/**
 * The rows of a coefficient file while it is read: numbers checked, problems gathered with their
 * line and field, completeness judged at the end. A negative order stands for a coefficient h.
 */
final class CoefficientRows {
  /** Beyond this the sums would still hold, but no model of the Earth's core goes so far. */
  private static final int HIGHEST_DEGREE = 200;

  private static final int NAMED_MISSING = 5;

  private final String source;
  private final List<InputProblem> problems = new ArrayList<>();
  private final Map<Integer, double[]> rows = new TreeMap<>();
  private int degree;

  CoefficientRows(String source) {
    this.source = source;
  }

  void problem(int line, int field, String message) {
    problems.add(new InputProblem(source, line, field, message));
  }

  void stopIfProblems() {
    if (!problems.isEmpty()) {
      throw new InputFormatException(problems);
    }
  }

  static String[] fields(String line) {
    String trimmed = line.trim();
    return trimmed.isEmpty() ? new String[0] : trimmed.split("\\s+");
  }

  /** NaN after a problem. */
  double number(String[] fields, int index, int line, String name) {
    if (index >= fields.length) {
      problem(line, index + 1, name + " is missing");
      return Double.NaN;
    }
    try {
      double value = Double.parseDouble(fields[index]);
      if (Math.abs(value) <= Double.MAX_VALUE) {
        return value;
      }
    } catch (NumberFormatException e) {
      // told below, in one wording for both
    }
    problem(line, index + 1, name + " must be a finite number, but was \"" + fields[index] + "\"");
    return Double.NaN;
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
