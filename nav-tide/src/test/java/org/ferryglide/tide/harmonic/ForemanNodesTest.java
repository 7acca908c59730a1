package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.testing.Published;
import org.junit.jupiter.api.Test;

class ForemanNodesTest {
  /** The published values are printed to twelve digits; sums of ten terms round a little. */
  private static final double TWELVE_DIGITS = 2e-12;

  private static final double HALF_A_PRINTED_THOUSANDTH = 0.0005;
  private static final double AUGUST_1975 = EpochSeconds.of(Instant.parse("1975-08-08T00:00:00Z"));

  @Test
  void correctionsAreThePublishedOnesToTwelveDigits() {
    NodalScheme scheme = NodalScheme.foreman(69.45);
    double[] correction = new double[2];
    int checked = 0;
    for (Published.Row row :
        Published.rows(
            ForemanNodesTest.class,
            "foreman-corrections-1975-08-08.csv",
            "constituent",
            "v_turns",
            "u_turns",
            "factor")) {
      Constituent constituent = scheme.constituent(row.text("constituent")).orElseThrow();
      scheme.corrections(AUGUST_1975, List.of(constituent), correction);
      double argument =
          constituent.argumentDegrees(MeanLongitudes.EXPLANATORY_SUPPLEMENT, AUGUST_1975);
      assertEquals(row.number("factor"), correction[0], TWELVE_DIGITS, constituent.name());
      assertEquals(row.number("u_turns"), correction[1] / 360.0, TWELVE_DIGITS, constituent.name());
      assertEquals(
          0.0,
          Math.IEEEremainder(argument / 360.0 - row.number("v_turns"), 1.0),
          TWELVE_DIGITS,
          constituent.name());
      checked++;
    }
    assertEquals(38, checked);
  }

  /** Recalculated by an independent program for 2024-07-01, latitude 45; printed as shown. */
  @Test
  void correctionsOfOtherConstituentsAgreeWithAnIndependentCalculation() {
    assertFactor("M2", 0.9647);
    assertFactor("K1", 1.1116);
    assertFactor("O1", 1.1727);
    assertFactor("K2", 1.3118);
    assertFactor("P1", 0.9883);
    assertFactor("OO1", 1.944);
    assertFactor("MF", 1.0);
    assertFactor("R2", 1.218);
  }

  private static void assertFactor(String name, double printed) {
    NodalScheme scheme = NodalScheme.foreman(45.0);
    double[] correction = new double[2];
    double seconds = EpochSeconds.of(Instant.parse("2024-07-01T00:00:00Z"));
    scheme.corrections(seconds, List.of(scheme.constituent(name).orElseThrow()), correction);
    assertEquals(printed, correction[0], HALF_A_PRINTED_THOUSANDTH, name);
  }

  @Test
  void nearTheEquatorFiveDegreesAreTaken() {
    double[] near = new double[2];
    double[] five = new double[2];
    NodalScheme.foreman(-1.0).corrections(0.0, List.of(Constituents.O1), near);
    NodalScheme.foreman(-5.0).corrections(0.0, List.of(Constituents.O1), five);
    assertEquals(five[0], near[0]);
    assertEquals(five[1], near[1]);
  }

  @Test
  void schuremansM1IsRefused() {
    assertEquals(
        "constituent must have a nodal correction in the scheme of Foreman at latitude 45.0, but"
            + " was M1",
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    NodalScheme.foreman(45.0)
                        .corrections(0.0, List.of(Constituents.M1), new double[2]))
            .getMessage());
  }

  @Test
  void aLatitudeBeyondThePoleIsRefused() {
    assertEquals(
        "latitude of a station must be in [-90, 90] degrees, but was 90.5",
        assertThrows(IllegalArgumentException.class, () -> NodalScheme.foreman(90.5)).getMessage());
  }
}
