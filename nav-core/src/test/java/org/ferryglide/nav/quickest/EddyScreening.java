package org.ferryglide.nav.quickest;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Judges the answers in many cases of each {@link EddyKind} by {@link Screening}: {@code FILE CASES
 * [FIRST [KIND...]]}, for so many seeds of each, or of some, from the first (0 unless told).
 * Verdicts are added to the file as they are found, kind, seed, time, the most it is slower and the
 * answer's own doubt as shares, so that it can be stopped and goes on where it was; at the end they
 * are summed up.
 */
final class EddyScreening {
  private EddyScreening() {}

  public static void main(String[] arguments) throws IOException {
    Path file = Path.of(arguments[0]);
    int cases = Integer.parseInt(arguments[1]);
    int first = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 0;
    List<EddyKind> kinds =
        arguments.length > 3
            ? Arrays.stream(arguments).skip(3).map(EddyKind::valueOf).toList()
            : List.of(EddyKind.values());
    Set<String> done = new HashSet<>();
    if (Files.exists(file)) {
      for (String row : Files.readAllLines(file)) {
        String[] columns = row.split(",");
        done.add(columns[0] + "," + columns[1]);
      }
    }
    try (Writer writer =
        Files.newBufferedWriter(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
      for (int seed = first; seed < first + cases; seed++) {
        for (EddyKind kind : kinds) {
          if (!done.contains(kind + "," + seed)) {
            List<FoundWay> ways = kind.ways(seed);
            double answer = EddyKind.time(ways);
            double doubt =
                ways.isEmpty() ? 0.0 : ways.get(0).errorSeconds() / ways.get(0).seconds();
            double loss = kind.loss(seed, answer);
            writer.write(kind + "," + seed + "," + answer + "," + loss + "," + doubt + "\n");
            writer.flush();
          }
        }
      }
    }
    sumUp(file);
  }

  private static void sumUp(Path file) throws IOException {
    List<String> rows = Files.readAllLines(file);
    for (EddyKind kind : EddyKind.values()) {
      double[] losses =
          rows.stream()
              .map(row -> row.split(","))
              .filter(row -> row[0].equals(kind.name()))
              .mapToDouble(row -> Double.parseDouble(row[3]))
              .sorted()
              .toArray();
      if (losses.length > 0) {
        System.out.printf(
            Locale.ROOT,
            "%-16s %5d cases; at most 0.01 %% slower %5d, 0.05 %% %5d, 0.1 %% %5d; worst %.4f %%%n",
            kind,
            losses.length,
            within(losses, 1e-4),
            within(losses, 5e-4),
            within(losses, 1e-3),
            100.0 * losses[losses.length - 1]);
      }
    }
  }

  private static long within(double[] losses, double share) {
    return Arrays.stream(losses).filter(loss -> loss <= share).count();
  }
}
