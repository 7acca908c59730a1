package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.testing.Seeds;

/** The search for waters and levels on tides of every kind: diurnal, mixed, with double waters. */
class HarmonicSearchProperties {
  private static final double SPAN_SECONDS = 3 * 86_400.0;

  /** Speeds of K1, O1, M2, S2, M4, MS4 and M6, degrees an hour. */
  private static final double[] SPEEDS = {
    15.0410686, 13.9430356, 28.9841042, 30.0, 57.9682084, 58.9841042, 86.9523127
  };

  @Provide
  Arbitrary<HarmonicSum> tides() {
    Arbitrary<double[]> amplitudes =
        Arbitraries.doubles().between(0.0, 2.0).ofScale(4).array(double[].class).ofSize(7);
    Arbitrary<double[]> phases =
        Arbitraries.doubles().between(0.0, 360.0).ofScale(2).array(double[].class).ofSize(7);
    return Combinators.combine(amplitudes, phases).as((a, p) -> HarmonicSum.endless(a, SPEEDS, p));
  }

  /** A slow obvious look: every half minute the curve goes the way its waters say. */
  @Property(seed = Seeds.SEED, tries = 60)
  void betweenTwoWatersTheTideGoesOneWay(@ForAll("tides") HarmonicSum tide) {
    List<TideEvent> waters = TideExtremes.between(tide, 0.0, SPAN_SECONDS);
    for (int i = 0; i + 1 < waters.size(); i++) {
      assertNotEquals(waters.get(i).kind(), waters.get(i + 1).kind());
      double sign = waters.get(i).isHigh() ? -1.0 : 1.0;
      double end = EpochSeconds.of(waters.get(i + 1).time());
      double before = waters.get(i).height().metres();
      for (double t = EpochSeconds.of(waters.get(i).time()) + 30.0; t < end; t += 30.0) {
        double height = tide.heightMetres(t);
        assertTrue(sign * (height - before) > -1e-9, "turned back before " + t);
        before = height;
      }
    }
  }

  @Property(seed = Seeds.SEED, tries = 60)
  void everyWaterIsWithinASecondOfTheTurn(@ForAll("tides") HarmonicSum tide) {
    for (TideEvent water : TideExtremes.between(tide, 0.0, SPAN_SECONDS)) {
      double time = EpochSeconds.of(water.time());
      double sign = water.isHigh() ? 1.0 : -1.0;
      assertTrue(sign * tide.slopeMetresPerSecond(time - 1.0) > 0.0);
      assertTrue(sign * tide.slopeMetresPerSecond(time + 1.0) < 0.0);
      assertEquals(tide.heightMetres(time), water.height().metres(), 1e-9);
    }
  }

  @Property(seed = Seeds.SEED, tries = 60)
  void passingALevelIsPassingItsHeight(@ForAll("tides") HarmonicSum tide) {
    double level = 0.3;
    List<TideCrossing> crossings =
        Tables.crossings(
                tide, level, EpochSeconds.toInstant(0.0), EpochSeconds.toInstant(SPAN_SECONDS))
            .items();
    boolean above = tide.heightMetres(0.0) >= level;
    for (TideCrossing crossing : crossings) {
      assertEquals(!above, crossing.rising());
      above = !above;
      // half a millisecond at the steepest: the sum of all amplitudes times speeds, 3e-3 m/s
      assertEquals(level, tide.heightMetres(EpochSeconds.of(crossing.time())), 3e-6);
    }
    assertEquals(tide.heightMetres(SPAN_SECONDS) >= level, above);
  }
}
