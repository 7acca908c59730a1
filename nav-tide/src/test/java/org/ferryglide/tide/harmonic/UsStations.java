package org.ferryglide.tide.harmonic;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.testing.Published;

/** Constants and levels of stations of the United States; each file names its source. */
final class UsStations {
  private static final Map<String, HarmonicConstants> US = usConstants();

  private UsStations() {}

  /** Constants of a US station about a mean of 0, metres. */
  static HarmonicConstants constants(String station) {
    return Optional.ofNullable(US.get(station)).orElseThrow();
  }

  private static Map<String, HarmonicConstants> usConstants() {
    Map<String, List<HarmonicConstant>> byStation = new LinkedHashMap<>();
    NodalScheme scheme = NodalScheme.schureman();
    for (Published.Row row :
        Published.rows(
            UsStations.class,
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
                  row.number("amplitude_m"),
                  row.number("phase_lag_greenwich_deg")));
    }
    Map<String, HarmonicConstants> constants = new LinkedHashMap<>();
    byStation.forEach(
        (station, list) -> constants.put(station, HarmonicConstants.of(scheme, 0.0, list)));
    return constants;
  }

  /** Mean sea level of a US station above the level of a column, metres. */
  static double mean(String station, String heading) {
    return Published.rows(
            UsStations.class,
            "us-stations.csv",
            "station",
            "name",
            "above_mllw_m",
            "above_station_datum_m")
        .stream()
        .filter(row -> row.text("station").equals(station))
        .mapToDouble(row -> row.number(heading))
        .findFirst()
        .orElseThrow();
  }
}
