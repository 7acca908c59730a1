package org.ferryglide.nav.plane;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class GaussianTest {
  /** The stated absolute error of the cumulative distribution. */
  private static final double STATED = 3e-16;

  @ParameterizedTest
  @CsvFileSource(resources = "normal_distribution.csv")
  void cumulativeAgreesWithManyDigits(double x, double chance) {
    assertEquals(chance, Gaussian.cumulative(x), STATED);
  }

  /**
   * Source: the table of an aim-off by k standard deviations; any table of the normal distribution.
   */
  @Test
  void aimOffTableIsReproduced() {
    double[][] table = {{1, 84.1}, {1.5, 93.3}, {2, 97.7}, {2.5, 99.4}, {3, 99.87}};
    for (double[] row : table) {
      assertEquals(row[1], 100 * Gaussian.cumulative(row[0]), row[0] == 3 ? 0.005 : 0.05);
    }
  }

  @Property(seed = Seeds.SEED)
  void quantileUndoesCumulative(@ForAll("chances") double chance) {
    double x = Gaussian.quantile(chance);
    assertEquals(chance, Gaussian.cumulative(x), 4e-16);
  }

  @Provide
  Arbitrary<Double> chances() {
    return Arbitraries.oneOf(
        Arbitraries.of(1e-300, 1e-20, 1e-9, 0.5, Math.nextDown(1.0), 0.1, 0.9, 0.4999999),
        Arbitraries.doubles().between(1e-9, 0.999999999).ofScale(12));
  }

  @Test
  void smallTailsKeepTheirDigits() {
    double x = Gaussian.quantile(1e-100);
    assertEquals(1.0, Gaussian.cumulative(x) / 1e-100, 1e-11);
  }

  @Test
  void edgesAreTheLimits() {
    assertEquals(Double.NEGATIVE_INFINITY, Gaussian.quantile(0.0));
    assertEquals(Double.POSITIVE_INFINITY, Gaussian.quantile(1.0));
    assertTrue(Double.isNaN(Gaussian.quantile(-0.1)));
    assertTrue(Double.isNaN(Gaussian.quantile(Double.NaN)));
    assertEquals(0.0, Gaussian.quantile(0.5));
    assertEquals(0.0, Gaussian.cumulative(Double.NEGATIVE_INFINITY));
    assertEquals(1.0, Gaussian.cumulative(Double.POSITIVE_INFINITY));
    assertTrue(Double.isNaN(Gaussian.cumulative(Double.NaN)));
    assertTrue(Double.isNaN(Gaussian.density(Double.NaN)));
  }

  /** Source: tables of the chi-square distribution, upper 5 % points to three decimals. */
  @Test
  void chiSquarePointsAreThoseOfTheTables() {
    double[] fivePercent = {3.841, 5.991, 7.815, 9.488, 11.070, 12.592, 14.067};
    for (int i = 0; i < fivePercent.length; i++) {
      assertEquals(0.05, Gaussian.chiSquareExceeds(fivePercent[i], i + 1), 2e-5);
    }
    assertEquals(1.0, Gaussian.chiSquareExceeds(0.0, 1));
    assertEquals(1.0, Gaussian.chiSquareExceeds(0.0, 4));
  }
}
