package org.ferryglide.nav.grid;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Rows of the tables beside the tests: fields between commas, lines with # left out. */
final class Rows {
  private Rows() {}

  static List<String[]> of(String resource) {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(Rows.class.getResourceAsStream(resource), resource),
                StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(line -> line.split(","))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static double number(String[] row, int column) {
    return Double.parseDouble(row[column]);
  }
}
