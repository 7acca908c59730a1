package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.tide.height.SpringNeap;
import org.ferryglide.tide.height.TableCurve;
import org.ferryglide.tide.height.TideCurve;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How far curves through high and low waters lie from the tide that the waters are taken from;
 * tides from the constants of NOAA CO-OPS (public domain).
 */
class TableCurveAccuracyTest {
  /** Half of a stated tenth of a percent, and a little for another order of additions. */
  private static final double A_STATED_TENTH = 0.0501;

  private static final Instant FROM = Instant.parse("2025-12-31T00:00:00Z");
  private static final Instant TO = Instant.parse("2027-01-01T00:00:00Z");

  private static HarmonicTide tideAt(String station) {
    return HarmonicTide.of(
        station, "mean level", UsStations.constants(station), NodalConvention.AT_INSTANT);
  }

  /** Root of the mean square, and largest, in percent of the mean rise or fall. */
  private static double[] error(HarmonicTide tide, TideTable table, TideCurve curve) {
    double squares = 0.0;
    double largest = 0.0;
    int count = 0;
    for (double t = curve.startSeconds(); t <= curve.endSeconds(); t += 600.0) {
      double error = Math.abs(curve.heightMetres(t) - tide.heightMetres(t));
      squares += error * error;
      largest = Math.max(largest, error);
      count++;
    }
    double changes = 0.0;
    List<TideEvent> events = table.events();
    for (int i = 1; i < events.size(); i++) {
      changes += Math.abs(events.get(i).height().metres() - events.get(i - 1).height().metres());
    }
    double percent = 100.0 / (changes / (events.size() - 1));
    return new double[] {percent * Math.sqrt(squares / count), percent * largest};
  }

  /** Figures: what the documentation of the curves states; a regression value each. */
  @ParameterizedTest
  @CsvSource({
    "8410140, 1.8, 5.1, 1.4, 5.2, 1.4, 5.0", // Eastport
    "8443970, 2.3, 7.0, 2.0, 7.1, 2.0, 7.2", // Boston
    "8658120, 6.0, 23.3, 6.0, 23.2, 5.9, 23.3", // Wilmington
    "9447130, 4.6, 18.2, 4.2, 17.7, 3.0, 13.2", // Seattle
    "1612340, 4.0, 47.7, 3.5, 48.1, 2.5, 44.8", // Honolulu
    "8729840, 3.8, 19.5, 3.8, 19.7, 3.7, 18.8", // Pensacola
  })
  void curvesAreAsGoodAsTheyAreSaidToBe(
      String station,
      double twelfths,
      double twelfthsLargest,
      double cosine,
      double cosineLargest,
      double smooth,
      double smoothLargest) {
    HarmonicTide tide = tideAt(station);
    TideTable table = tide.table(FROM, TO);
    assertArrayEquals(
        new double[] {twelfths, twelfthsLargest},
        error(tide, table, TableCurve.twelfths(table)),
        A_STATED_TENTH);
    assertArrayEquals(
        new double[] {cosine, cosineLargest},
        error(tide, table, TableCurve.cosine(table)),
        A_STATED_TENTH);
    assertArrayEquals(
        new double[] {smooth, smoothLargest},
        error(tide, table, TableCurve.smooth(table)),
        A_STATED_TENTH);
  }

  /** Ages from the constants of M2 and S2; the last figure is a regression value. */
  @ParameterizedTest
  @CsvSource({"8443970, 36.4, 2.9", "8410140, 39.8, 2.6", "8518750, 24.3, 2.3"})
  void nineteenOfTwentySpringsAndNeapsFallWithinDaysOfTheMoon(
      String station, double ageHours, double days) {
    Instant from = Instant.parse("2024-01-01T00:00:00Z");
    Instant to = Instant.parse("2028-01-01T00:00:00Z");
    Duration age = Duration.ofMinutes(Math.round(60.0 * ageHours));
    List<SpringNeap> moon = SpringNeap.fromMoon(age, from, to).items();
    List<Double> apart = new ArrayList<>();
    for (SpringNeap turn : SpringNeap.of(tideAt(station).table(from, to))) {
      apart.add(
          moon.stream()
              .filter(other -> other.kind() == turn.kind())
              .mapToDouble(other -> daysBetween(other.time(), turn.time()))
              .min()
              .orElseThrow());
    }
    apart.sort(null);
    double nineteenOfTwenty = apart.get(apart.size() * 19 / 20);
    assertEquals(days, nineteenOfTwenty, 0.05); // half a stated tenth
    assertTrue(nineteenOfTwenty <= moon.get(0).within().toHours() / 24.0);
  }

  private static double daysBetween(Instant one, Instant other) {
    return Duration.between(one, other).abs().toMinutes() / 1440.0;
  }
}
