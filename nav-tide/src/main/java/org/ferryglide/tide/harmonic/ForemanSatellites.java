package org.ferryglide.tide.harmonic;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.tide.sheet.Sheet;

/** Foreman's table of satellites, from the file beside this class, which tells its source. */
final class ForemanSatellites {
  private static final String FILE = "foreman-satellites.csv";
  private static final List<String> LATITUDE_RULES = List.of("none", "diurnal", "semidiurnal");

  /** By the multiples of the main constituent. */
  private static final Map<List<Integer>, List<Satellite>> TABLE = read();

  private ForemanSatellites() {}

  /** A line close to a main constituent; the share is of the main one's amplitude. */
  record Satellite(
      int perigee, int node, int solarPerigee, int quarterTurns, double share, int latitudeRule) {

    double angleRadians(double[] angles) {
      double degrees =
          perigee * angles[MeanLongitudes.P]
              + node * angles[MeanLongitudes.N_PRIME]
              + solarPerigee * angles[MeanLongitudes.P1]
              + 90.0 * quarterTurns;
      return Math.toRadians(degrees);
    }
  }

  static boolean knows(Constituent constituent) {
    return TABLE.containsKey(key(constituent));
  }

  static List<Satellite> of(Constituent constituent) {
    return TABLE.getOrDefault(key(constituent), List.of());
  }

  private static List<Integer> key(Constituent constituent) {
    List<Integer> key = new ArrayList<>();
    for (int i = 0; i < MeanLongitudes.COUNT; i++) {
      key.add(constituent.multiple(i));
    }
    return key;
  }

  private static Map<List<Integer>, List<Satellite>> read() {
    Map<String, List<Integer>> keys = new HashMap<>();
    Map<List<Integer>, List<Satellite>> table = new HashMap<>();
    for (Constituent constituent : Constituents.FOREMAN_69) {
      if (!constituent.isCompound() || constituent.equals(Constituents.MSF)) {
        keys.put(constituent.name(), key(constituent));
        table.put(key(constituent), new ArrayList<>());
      }
    }
    try (InputStream stream = ForemanSatellites.class.getResourceAsStream(FILE)) {
      if (stream == null) {
        throw new IllegalStateException(FILE + " is missing from the library");
      }
      Sheet sheet =
          Sheet.read(
              FILE,
              new InputStreamReader(stream, StandardCharsets.UTF_8),
              List.of(
                  "constituent", "p", "n_prime", "p1", "quarter_turns", "share", "latitude_rule"),
              List.of());
      for (Sheet.Row row : sheet.rows()) {
        List<Integer> key = keys.getOrDefault(row.text("constituent"), List.of());
        table
            .computeIfAbsent(key, unknown -> new ArrayList<>())
            .add(
                new Satellite(
                    (int) row.number("p", -3, 3).orElse(0),
                    (int) row.number("n_prime", -4, 4).orElse(0),
                    (int) row.number("p1", -2, 2).orElse(0),
                    (int) row.number("quarter_turns", 0, 3).orElse(0),
                    row.number("share", 0.0, 1.0).orElse(0.0),
                    LATITUDE_RULES.indexOf(row.text("latitude_rule"))));
      }
      sheet.refuseIfFaulty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    table.replaceAll((key, satellites) -> List.copyOf(satellites));
    return Map.copyOf(table);
  }
}
