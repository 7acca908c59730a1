package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.testing.Published;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.sheet.Plausibility;
import org.junit.jupiter.api.Test;

/** What the judgements say of a year of honest tables, and of tables with one wrong figure. */
class PlausibilityOfPredictionsTest {
  private static final Instant FROM = Instant.parse("2026-01-01T00:00:00Z");
  private static final Instant UNTIL = Instant.parse("2026-12-31T00:00:00Z");

  private final List<double[]> allSeconds = new ArrayList<>();
  private final List<double[]> allHeights = new ArrayList<>();

  PlausibilityOfPredictionsTest() {
    for (Published.Row row :
        Published.rows(
            PlausibilityOfPredictionsTest.class,
            "us-stations.csv",
            "station",
            "name",
            "above_mllw_m",
            "above_station_datum_m")) {
      HarmonicTide tide =
          HarmonicTide.of(
              row.text("station"),
              "mean",
              UsStations.constants(row.text("station")),
              NodalConvention.MID_YEAR);
      List<TideEvent> waters = tide.extremes(FROM, UNTIL).items();
      // rounded to minutes and centimetres, as tables are printed
      allSeconds.add(
          waters.stream()
              .mapToDouble(water -> 60.0 * Math.rint(EpochSeconds.of(water.time()) / 60.0))
              .toArray());
      allHeights.add(
          waters.stream()
              .mapToDouble(water -> Math.rint(100.0 * water.height().metres()) / 100.0)
              .toArray());
    }
  }

  @Test
  void hardlyAnHonestFigureIsDoubted() {
    int heights = 0;
    int times = 0;
    int count = 0;
    for (int s = 0; s < allSeconds.size(); s++) {
      for (int i = 0; i < allSeconds.get(s).length; i++) {
        count++;
        heights += Plausibility.heightIsFar(allHeights.get(s), i) ? 1 : 0;
        times += Plausibility.timeIsFar(allSeconds.get(s), i) ? 1 : 0;
      }
    }
    assertTrue(count > 53_000);
    assertEquals(0, heights);
    assertEquals(3, times, "all of mixed tides");
  }

  /** Station 8443970 is semi-diurnal; a wrong figure there is seen, and its own row is named. */
  @Test
  void oneWrongFigureOfASemidiurnalTableIsSeen() {
    int station = indexOfBoston();
    Random random = new Random(20261126);
    int trials = 400;
    int heightsSeen = 0;
    int timesSeen = 0;
    for (int n = 0; n < trials; n++) {
      double[] heights = allHeights.get(station).clone();
      double[] seconds = allSeconds.get(station).clone();
      int i = 14 + random.nextInt(heights.length - 28);
      heights[i] += random.nextBoolean() ? 10.0 : 3.0;
      seconds[i] += random.nextBoolean() ? 3600.0 : -3600.0;
      heightsSeen += Plausibility.heightIsFar(heights, i) ? 1 : 0;
      timesSeen += Plausibility.timeIsFar(seconds, i) ? 1 : 0;
      for (int k = Math.max(0, i - 12); k <= i + 12; k++) {
        assertTrue(k == i || !Plausibility.timeIsFar(seconds, k), "another time is blamed");
      }
    }
    assertEquals(trials, timesSeen);
    assertTrue(heightsSeen >= 0.95 * trials, "a low water 3 m too high: " + heightsSeen);
  }

  private int indexOfBoston() {
    List<Published.Row> rows =
        Published.rows(
            PlausibilityOfPredictionsTest.class,
            "us-stations.csv",
            "station",
            "name",
            "above_mllw_m",
            "above_station_datum_m");
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).text("station").equals("8443970")) {
        return i;
      }
    }
    throw new AssertionError("station 8443970 is missing");
  }
}
