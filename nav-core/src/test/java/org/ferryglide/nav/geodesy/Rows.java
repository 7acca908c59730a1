package org.ferryglide.nav.geodesy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The rows of a table that lies beside the tests; lines that begin with # say its source. */
final class Rows {
  private Rows() {}

  static List<String[]> of(String file) {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(Rows.class.getResourceAsStream(file), StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(line -> line.split(",", -1))
          .toList();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  static double number(String text) {
    return Double.parseDouble(text.trim());
  }
}
