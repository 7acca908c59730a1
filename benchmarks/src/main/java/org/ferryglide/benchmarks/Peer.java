package org.ferryglide.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * What a benchmark is measured beside.
 *
 * @param benchmark class and method
 * @param peer class and method of the peer in the same run, or empty
 * @param atMost the greatest ratio allowed, infinite without a guard
 * @param isShort whether the short run has it
 */
record Peer(String benchmark, String peer, double atMost, boolean isShort) {

  /** The table beside this class. */
  static List<Peer> readAll() throws IOException {
    List<Peer> peers = new ArrayList<>();
    for (String[] row : rows("peers.csv")) {
      double atMost = row[2].isEmpty() ? Double.POSITIVE_INFINITY : Double.parseDouble(row[2]);
      peers.add(new Peer(row[0], row[1], atMost, row[3].equals("yes")));
    }
    return peers;
  }

  static Peer of(String benchmark, List<Peer> peers) {
    return peers.stream()
        .filter(peer -> peer.benchmark.equals(benchmark))
        .findFirst()
        .orElse(new Peer(benchmark, "", Double.POSITIVE_INFINITY, false));
  }

  /** Rows of a table among the resources, without notes and heading. */
  static List<String[]> rows(String resource) throws IOException {
    try (InputStream in = Peer.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IOException("no resource " + resource);
      }
      List<String[]> rows = new ArrayList<>();
      for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
        if (!line.isBlank() && !line.startsWith("#") && !line.startsWith("benchmark,")) {
          rows.add(line.trim().split(",", -1));
        }
      }
      return rows;
    }
  }
}
