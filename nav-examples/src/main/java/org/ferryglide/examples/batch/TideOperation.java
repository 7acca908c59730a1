package org.ferryglide.examples.batch;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import org.ferryglide.tide.harmonic.HarmonicPredictor;
import org.ferryglide.tide.harmonic.HarmonicTide;

/** The height of the tide at a time, from a station's harmonic constants. */
final class TideOperation {
  private TideOperation() {}

  static Operation operation(HarmonicTide tide) {
    HarmonicPredictor predictor = tide.predictor();
    return Operation.ofRows(
        "tide-height",
        List.of("time"),
        List.of(Added.number("height_m", 4)),
        () ->
            (row, figures) -> {
              double height = predictor.value(seconds(row));
              if (Double.isNaN(height)) {
                throw row.refused(0, "must be in the years 1800 to 2199");
              }
              figures.add(height);
            });
  }

  private static double seconds(Row row) {
    try {
      Instant time = OffsetDateTime.parse(row.word(0)).toInstant();
      return time.getEpochSecond() + 1e-9 * time.getNano();
    } catch (DateTimeException e) {
      throw row.refused(
          0, "must be a time with its offset, such as 2026-06-14T09:30:00Z or …T10:30+01:00");
    }
  }
}
