package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class StreamRatesTest {
  /** Rates are printed to a tenth of a knot. */
  private static final double HALF_A_PRINTED_TENTH = 0.05;

  @Test
  void publishedExampleOfRateByRange() {
    // Source: a published sailing article on computing rates: 1.0 kn at neaps, 2.1 kn at springs,
    // range 4.8 m, answer 1.6 kn. It does not print the mean ranges of its standard port; 3.2 m and
    // 6.0 m are those of another published example for the same port (Dover).
    assertEquals(1.6, StreamRates.byRange(1.0, 2.1, 4.8, 3.2, 6.0), HALF_A_PRINTED_TENTH);
  }

  @Test
  void publishedExampleOfSpringnessIsRoundedHard() {
    // Source: a public training page: spring range 6.0 m, neap 3.2 m, range 5.5 m, "fraction .5/2.8
    // = .1" down from springs. The arithmetic gives 0.179; the page rounds down to a printed tenth.
    assertEquals(1.0 - 0.5 / 2.8, StreamRates.springness(5.5, 3.2, 6.0), 1e-15);
    assertEquals(0.1, 1.0 - StreamRates.springness(5.5, 3.2, 6.0), 0.1);
  }

  @Test
  void bothEndsAreReproducedExactly() {
    assertEquals(0.7, StreamRates.byRange(0.7, 2.3, 2.1, 2.1, 4.9));
    assertEquals(2.3, StreamRates.byRange(0.7, 2.3, 4.9, 2.1, 4.9));
  }

  @Test
  void theLineGoesOnBeyondBothEndsButNeverBelowZero() {
    assertEquals(3.0, StreamRates.byRange(1.0, 2.0, 6.0, 2.0, 4.0), 1e-15);
    assertEquals(0.5, StreamRates.byRange(1.0, 2.0, 1.0, 2.0, 4.0), 1e-15);
    assertEquals(0.0, StreamRates.byRange(0.1, 2.0, 1.0, 2.0, 4.0));
    assertEquals(0.0, StreamRates.byRange(1.0, 0.5, 9.0, 2.0, 4.0));
  }

  @Test
  void nanGoesThrough() {
    assertTrue(Double.isNaN(StreamRates.byRange(1.0, 2.0, Double.NaN, 2.0, 4.0)));
    assertTrue(Double.isNaN(StreamRates.atSpringness(Double.NaN, 2.0, 0.5)));
  }
}
