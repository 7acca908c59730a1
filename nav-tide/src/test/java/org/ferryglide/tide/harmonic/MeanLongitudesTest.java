package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import org.ferryglide.nav.basics.EpochSeconds;
import org.junit.jupiter.api.Test;

class MeanLongitudesTest {
  private static final double START = EpochSeconds.of(Instant.parse("1899-12-31T12:00:00Z"));

  @Test
  void theSeriesStartAtTheirPrintedConstants() {
    double[] angles = new double[6];
    MeanLongitudes.SCHUREMAN.at(START, angles, 0);
    assertEquals(270 + 26 / 60.0 + 14.72 / 3600.0, angles[MeanLongitudes.S], 1e-9);
    assertEquals(279 + 41 / 60.0 + 48.04 / 3600.0, angles[MeanLongitudes.H], 1e-9);
    assertEquals(334 + 19 / 60.0 + 40.87 / 3600.0, angles[MeanLongitudes.P], 1e-9);
    assertEquals(360 - (259 + 10 / 60.0 + 57.12 / 3600.0), angles[MeanLongitudes.N_PRIME], 1e-9);
    assertEquals(281 + 13 / 60.0 + 15.0 / 3600.0, angles[MeanLongitudes.P1], 1e-9);
  }

  @Test
  void theTwoSeriesHardlyDiffer() {
    double[] one = new double[6];
    double[] other = new double[6];
    for (int year = 1900; year <= 2100; year++) {
      MeanLongitudes.SCHUREMAN.at(CalendarYears.startSeconds(year), one, 0);
      MeanLongitudes.EXPLANATORY_SUPPLEMENT.at(CalendarYears.startSeconds(year), other, 0);
      for (int i = 0; i < 6; i++) {
        assertEquals(0.0, Math.IEEEremainder(one[i] - other[i], 360.0), 0.04, year + " " + i);
      }
    }
  }

  @Test
  void ratesAreTheSlopesOfTheAngles() {
    double[] before = new double[6];
    double[] after = new double[6];
    double[] rates = new double[6];
    for (MeanLongitudes series : MeanLongitudes.values()) {
      series.at(1.7e9 - 3600.0, before, 0);
      series.at(1.7e9 + 3600.0, after, 0);
      series.ratesAt(1.7e9, rates, 0);
      for (int i = 0; i < 6; i++) {
        assertEquals(Math.IEEEremainder(after[i] - before[i], 360.0), 2.0 * rates[i], 1e-9);
      }
    }
  }

  @Test
  void nanGivesNan() {
    double[] angles = new double[6];
    MeanLongitudes.SCHUREMAN.at(Double.NaN, angles, 0);
    assertTrue(Double.isNaN(angles[MeanLongitudes.TAU]));
    assertTrue(Double.isNaN(angles[MeanLongitudes.S]));
  }

  @Test
  void yearsStartWhereTheCalendarSays() {
    for (int year = 1797; year < 2203; year++) {
      double start = java.time.LocalDate.of(year, 1, 1).toEpochDay() * 86400.0;
      assertEquals(start, CalendarYears.startSeconds(year));
      assertEquals(year, CalendarYears.yearOf(start));
      assertEquals(year - 1, CalendarYears.yearOf(Math.nextDown(start)));
    }
  }
}
