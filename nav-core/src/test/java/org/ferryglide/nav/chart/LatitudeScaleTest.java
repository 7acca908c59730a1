package org.ferryglide.nav.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.nav.measure.Distance;
import org.junit.jupiter.api.Test;

class LatitudeScaleTest {
  /**
   * The first two terms of the series of the minute in the latitude, 1852.3 - 9.4 cos 2φ metres for
   * the flattening of the earth; derived, and good to a tenth of a metre with the half digits of
   * its two figures.
   */
  @Test
  void theMinuteGrowsFromEquatorToPole() {
    for (double latitude = -90.0; latitude <= 90.0; latitude += 7.5) {
      double handbook = 1852.3 - 9.4 * Math.cos(Math.toRadians(2.0 * latitude));
      assertEquals(handbook, ChartScale.minuteOfLatitude(latitude).metres(), 0.15);
    }
  }

  /** Sixty of each of ninety degrees make the quarter meridian, 10001965.729 m. */
  @Test
  void theMinutesOfAQuarterMeridianAddUp() {
    double sum = 0.0;
    for (int minute = 0; minute < 90 * 60; minute++) {
      sum += ChartScale.metresPerMinuteOfLatitude((minute + 0.5) / 60.0);
    }
    assertEquals(10001965.729, sum, 0.001);
  }

  @Test
  void dividersAndDistanceAreInverses() {
    Distance leg = Distance.ofNauticalMiles(5.2);
    double minutes = ChartScale.minutesOfLatitude(leg, 50.0);
    assertEquals(5.2 * 1852.0 / 1853.8177, minutes, 1e-6);
    assertEquals(leg.metres(), ChartScale.distanceOfMinutes(minutes, 50.0).metres(), 1e-9);
    assertEquals(-1853.818, ChartScale.distanceOfMinutes(-1.0, 50.0).metres(), 0.001);
  }

  /** Both latitudes' scales as a Mercator chart draws them: minutes as long as 1 / cos φ. */
  @Test
  void readingElsewhereFalsifiesTheDistance() {
    assertEquals(1.0, ChartScale.latitudeReadingRatio(50.0, 50.0));
    double sphere = Math.cos(Math.toRadians(51.0)) / Math.cos(Math.toRadians(50.0));
    assertEquals(sphere, ChartScale.latitudeReadingRatio(51.0, 50.0), 1e-4);
    assertTrue(ChartScale.latitudeReadingRatio(51.0, 50.0) < 1.0);
    assertEquals(
        1.0,
        ChartScale.latitudeReadingRatio(51.0, 50.0) * ChartScale.latitudeReadingRatio(50.0, 51.0),
        1e-15);
    assertEquals(
        ChartScale.latitudeReadingRatio(51.0, 50.0), ChartScale.latitudeReadingRatio(-51.0, -50.0));
  }

  @Test
  void whatDoesNotFitIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> ChartScale.minuteOfLatitude(91.0));
    assertEquals("latitude must be in [-90, 90] degrees, but was 91.0", refusal.getMessage());
    refusal =
        assertThrows(
            IllegalArgumentException.class, () -> ChartScale.distanceOfMinutes(Double.NaN, 50.0));
    assertEquals(
        "reading of the latitude scale must be a finite number of minutes, but was NaN",
        refusal.getMessage());
    refusal =
        assertThrows(
            IllegalArgumentException.class, () -> ChartScale.latitudeReadingRatio(86.0, 50.0));
    assertEquals(
        "latitude on a Mercator chart must be in [-85, 85] degrees, but was 86.0",
        refusal.getMessage());
    assertTrue(Double.isNaN(ChartScale.metresPerMinuteOfLatitude(Double.NaN)));
  }
}
