package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class PhaseLagTest {
  private static final double ROUNDING = 1e-9;

  @Test
  void aClockAheadOfUniversalTimeSeesHighWaterLater() {
    // by a clock 5 h behind, M2's high water is 5 h earlier on the dial
    HarmonicConstant m2 =
        HarmonicConstant.ofZone(Constituents.M2, 1.0, 100.0, ZoneOffset.ofHours(-5));
    assertEquals(
        100.0 + 5.0 * Constituents.M2.speedDegreesPerHour(), m2.greenwichLagDegrees(), ROUNDING);
  }

  @Test
  void aRecordByAnotherClockGivesTheLagOfThatClock() {
    HarmonicConstants greenwich =
        HarmonicConstants.of(
            NodalScheme.schureman(),
            0.0,
            java.util.List.of(
                HarmonicConstant.ofZone(Constituents.K1, 1.0, 30.0, ZoneOffset.ofHours(9))));
    // a clock 9 h ahead shows t + 9 h when it is t at Greenwich; its angle V is that of t + 9 h
    double angle = Constituents.K1.argumentDegrees(MeanLongitudes.SCHUREMAN, 1e9 + 9 * 3600.0);
    double[] correction = new double[2];
    greenwich.scheme().corrections(1e9, greenwich.constituents(), correction);
    assertEquals(
        correction[0] * Math.cos(Math.toRadians(angle + correction[1] - 30.0)),
        HarmonicPredictor.of(greenwich, NodalConvention.AT_INSTANT).value(1e9),
        1e-6);
  }

  @Test
  void theLocalMeridianCountsOncePerSpecies() {
    assertEquals(330.0, local(Constituents.M2), ROUNDING);
    assertEquals(350.0, local(Constituents.K1), ROUNDING);
    assertEquals(10.0, local(Constituents.MF), ROUNDING);
  }

  private static double local(Constituent constituent) {
    return HarmonicConstant.ofLocal(constituent, 1.0, 10.0, 20.0).greenwichLagDegrees();
  }

  private static double greenwich(double degrees) {
    return HarmonicConstant.ofGreenwich(Constituents.M2, 1.0, degrees).greenwichLagDegrees();
  }

  @Test
  void anglesAreReduced() {
    assertEquals(350.0, greenwich(-10.0));
    assertEquals(0.0, greenwich(-0.0));
    assertEquals(0.0, greenwich(-1e-17));
    assertEquals(
        HarmonicConstant.ofZone(Constituents.M2, 1, 10, ZoneOffset.UTC),
        HarmonicConstant.ofZone(Constituents.M2, 1, 370, ZoneOffset.UTC));
  }

  @Test
  void lagsThatAreNotNumbersAreRefused() {
    assertEquals(
        "phase lag must be a finite number of degrees, but was NaN",
        assertThrows(IllegalArgumentException.class, () -> greenwich(Double.NaN)).getMessage());
    assertEquals(
        "longitude of a station must be in [-180, 180] degrees, but was 181.0",
        assertThrows(
                IllegalArgumentException.class,
                () -> HarmonicConstant.ofLocal(Constituents.M2, 1.0, 0.0, 181.0))
            .getMessage());
  }
}
