package org.ferryglide.testing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Tables that lie beside the tests: fields between commas; lines with # name the source. */
public final class Rows {
  private Rows() {}

  /** The rows of a table in the test's own package; comments and empty lines are left out. */
  public static List<String[]> of(Class<?> test, String file) {
    return lines(test, file).stream().map(line -> line.split(",", -1)).toList();
  }

  /** The same rows as whole lines. */
  public static List<String> lines(Class<?> test, String file) {
    return text(test, file)
        .lines()
        .filter(line -> !line.startsWith("#") && !line.isBlank())
        .toList();
  }

  /** The whole file as text, comments and all. */
  public static String text(Class<?> test, String file) {
    try (InputStream stream = Objects.requireNonNull(test.getResourceAsStream(file), file)) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      stream.transferTo(bytes);
      return bytes.toString(StandardCharsets.UTF_8);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  public static double number(String field) {
    return Double.parseDouble(field.trim());
  }

  public static double number(String[] row, int column) {
    return number(row[column]);
  }

  /** Half a unit in the last printed place, and the rounding of the decimal itself. */
  public static double halfPrintedDigit(String printed) {
    int point = printed.indexOf('.');
    int decimals = point < 0 ? 0 : printed.length() - point - 1;
    return 0.5 * Math.pow(10.0, -decimals) + 1e-9;
  }
}
