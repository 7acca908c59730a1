package org.ferryglide.nav.magnetic;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The tables of published values beside these tests: comment lines name the source. */
final class PublishedRows {
  private PublishedRows() {}

  static List<String[]> of(String resource) {
    return text(resource)
        .lines()
        .filter(line -> !line.startsWith("#") && !line.isBlank())
        .map(line -> line.split(",", -1))
        .toList();
  }

  static String text(String resource) {
    try (InputStream stream =
            Objects.requireNonNull(PublishedRows.class.getResourceAsStream(resource), resource);
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      StringBuilder text = new StringBuilder();
      for (int c = reader.read(); c >= 0; c = reader.read()) {
        text.append((char) c);
      }
      return text.toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Half a unit in the last printed place, and the rounding of the decimal itself. */
  static double halfPrintedDigit(String printed) {
    int point = printed.indexOf('.');
    int decimals = point < 0 ? 0 : printed.length() - point - 1;
    return 0.5 * Math.pow(10.0, -decimals) + 1e-9;
  }
}
