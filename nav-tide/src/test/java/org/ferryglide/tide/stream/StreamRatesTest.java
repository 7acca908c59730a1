package org.ferryglide.tide.stream;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.tide.height.MeanRanges;
import org.junit.jupiter.api.Test;

class StreamRatesTest {
  /** By arithmetic; the rule is the straight line of the official "computation of rates" graph. */
  @Test
  void theRateLiesOnTheStraightLineBetweenNeapsAndSprings() {
    assertEquals(
        1.0 + 1.1 * 1.6 / 2.8,
        StreamRates.byRange(1.0, 2.1, ofMetres(4.8), new MeanRanges(ofMetres(6.0), ofMetres(3.2))),
        1e-15);
  }

  @Test
  void bothEndsAreReproducedExactly() {
    assertEquals(
        0.7,
        StreamRates.byRange(0.7, 2.3, ofMetres(2.1), new MeanRanges(ofMetres(4.9), ofMetres(2.1))));
    assertEquals(
        2.3,
        StreamRates.byRange(0.7, 2.3, ofMetres(4.9), new MeanRanges(ofMetres(4.9), ofMetres(2.1))));
  }

  @Test
  void theLineGoesOnBeyondBothEndsButNeverBelowZero() {
    assertEquals(
        3.0,
        StreamRates.byRange(1.0, 2.0, ofMetres(6.0), new MeanRanges(ofMetres(4.0), ofMetres(2.0))),
        1e-15);
    assertEquals(
        0.5,
        StreamRates.byRange(1.0, 2.0, ofMetres(1.0), new MeanRanges(ofMetres(4.0), ofMetres(2.0))),
        1e-15);
    assertEquals(
        0.0,
        StreamRates.byRange(0.1, 2.0, ofMetres(1.0), new MeanRanges(ofMetres(4.0), ofMetres(2.0))));
    assertEquals(
        0.0,
        StreamRates.byRange(1.0, 0.5, ofMetres(9.0), new MeanRanges(ofMetres(4.0), ofMetres(2.0))));
  }

  @Test
  void nanGoesThrough() {
    assertTrue(
        Double.isNaN(
            StreamRates.byRange(
                Double.NaN, 2.0, ofMetres(3.0), new MeanRanges(ofMetres(4.0), ofMetres(2.0)))));
    assertTrue(Double.isNaN(StreamRates.atSpringFraction(Double.NaN, 2.0, 0.5)));
  }
}
