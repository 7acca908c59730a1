package org.ferryglide.tide.harmonic;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.tide.sheet.Sheet;

/** Reads the published figures beside the tests; each file names its source. */
final class Published {
  private static final Map<String, HarmonicConstants> US = usConstants();

  private Published() {}

  static Reader open(String file) {
    return new InputStreamReader(Published.class.getResourceAsStream(file), StandardCharsets.UTF_8);
  }

  static List<Sheet.Row> rows(String file, String... headings) {
    try (Reader reader = open(file)) {
      Sheet sheet = Sheet.read(file, reader, List.of(headings), List.of());
      sheet.refuseIfFaulty();
      return sheet.rows();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static double number(Sheet.Row row, String heading) {
    return row.number(heading, -1e9, 1e9).getAsDouble();
  }

  static double seconds(Sheet.Row row) {
    return EpochSeconds.of(OffsetDateTime.parse(row.text("utc")).toInstant());
  }

  /** Constants of a US station about a mean of 0, metres. */
  static HarmonicConstants us(String station) {
    return Optional.ofNullable(US.get(station)).orElseThrow();
  }

  private static Map<String, HarmonicConstants> usConstants() {
    Map<String, List<HarmonicConstant>> byStation = new LinkedHashMap<>();
    NodalScheme scheme = NodalScheme.schureman();
    for (Sheet.Row row :
        rows(
            "us-constants.csv",
            "station",
            "constituent",
            "amplitude_m",
            "phase_lag_greenwich_deg")) {
      byStation
          .computeIfAbsent(row.text("station"), none -> new ArrayList<>())
          .add(
              new HarmonicConstant(
                  scheme.constituent(row.text("constituent")).orElseThrow(),
                  number(row, "amplitude_m"),
                  number(row, "phase_lag_greenwich_deg")));
    }
    Map<String, HarmonicConstants> constants = new LinkedHashMap<>();
    byStation.forEach(
        (station, list) -> constants.put(station, HarmonicConstants.of(scheme, 0.0, list)));
    return constants;
  }

  /** Mean sea level of a US station above the level of a column, metres. */
  static double usMean(String station, String heading) {
    return rows("us-stations.csv", "station", "name", "above_mllw_m", "above_station_datum_m")
        .stream()
        .filter(row -> row.text("station").equals(station))
        .mapToDouble(row -> number(row, heading))
        .findFirst()
        .orElseThrow();
  }
}
