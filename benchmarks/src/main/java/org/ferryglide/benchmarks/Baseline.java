package org.ferryglide.benchmarks;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The ratios to peers of the last release. */
final class Baseline {
  private Baseline() {}

  /** Ratio to its peer for each benchmark with its parameters. */
  static Map<String, Double> read() throws IOException {
    Map<String, Double> ratios = new HashMap<>();
    for (String[] row : Peer.rows("baseline.csv")) {
      ratios.put(row[0], Double.parseDouble(row[1]));
    }
    return ratios;
  }

  /** A baseline of the rows of a table that have a ratio. */
  static String csv(List<String[]> rows) {
    StringBuilder csv =
        new StringBuilder(
            "# Say here which version, JDK, machine and date.\nbenchmark,ratio,bytes\n");
    for (String[] row : rows.subList(1, rows.size())) {
      if (!row[5].isEmpty()) {
        csv.append(row[0]).append(',').append(row[5]).append(',').append(row[3]).append('\n');
      }
    }
    return csv.toString();
  }
}
