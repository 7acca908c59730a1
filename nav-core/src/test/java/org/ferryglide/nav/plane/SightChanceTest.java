package org.ferryglide.nav.plane;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SightChanceTest {
  /** What closed forms must agree to. */
  private static final double CLOSED_FORM = 1e-8;

  /** What the class states of Rice's distribution. */
  private static final double STATED = 1e-12;

  /** What quadratures must agree to. */
  private static final double QUADRATURE = 1e-6;

  /** What the class states of ellipses. */
  private static final double STATED_ELLIPSE = 1e-12;

  @ParameterizedTest
  @CsvFileSource(resources = "rice.csv")
  void offCentreCirclesAgreeWithRice(double offset, double radius, double chance) {
    assertEquals(chance, SightChance.rice(offset, radius), STATED);
    assertEquals(
        chance,
        SightChance.withinCircle(100, 100, 60 * offset, 80 * offset, 100 * radius),
        CLOSED_FORM);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "ellipse_chance.csv")
  void ellipsesAgreeWithAnIndependentQuadrature(
      double sigmaX, double sigmaY, double offsetX, double offsetY, double radius, double chance) {
    double found = SightChance.withinCircle(sigmaX, sigmaY, offsetX, offsetY, radius);
    assertEquals(chance, found, QUADRATURE);
    assertEquals(chance, found, STATED_ELLIPSE);
  }

  /** Rayleigh: the factors of the circular normal distribution. */
  @Test
  void centredCirclesAgreeWithRayleigh() {
    for (double radius = 0; radius < 8; radius += 0.1) {
      double rayleigh = -Math.expm1(-0.5 * radius * radius);
      assertEquals(rayleigh, SightChance.withinCircle(250, 250, 0, 0, 250 * radius), CLOSED_FORM);
      assertEquals(rayleigh, SightChance.withinCircle(250, 250.0001, 0, 0, 250 * radius), 1e-6);
    }
    assertEquals(0.95, SightChance.withinCircle(1, 1, 0, 0, 2.4477), 1e-5);
  }

  /** Source: 2 drms holds from 95.45 % (a line) to 98.17 % (a circle). */
  @Test
  void twiceTheRootMeanSquareHoldsWhatItShould() {
    assertEquals(0.9817, SightChance.withinCircle(1, 1, 0, 0, 2 * Math.sqrt(2)), 0.00005);
    assertEquals(0.9545, SightChance.withinCircle(1, 0, 0, 0, 2), 0.00005);
  }

  /** Source: any table of the normal distribution: within one sigma 68.3 %, within half 38.3 %. */
  @Test
  void passingAgreesWithTheNormalTable() {
    assertEquals(0.683, SightChance.passing(400, 0, 400), 0.0005);
    assertEquals(0.383, SightChance.passing(400, 0, 200), 0.0005);
    assertEquals(1.0, SightChance.passing(0, 10, 20));
    assertEquals(0.0, SightChance.passing(0, 30, 20));
  }

  @Property(seed = Seeds.SEED, tries = 300)
  void moreSightNeverFindsLess(
      @ForAll @DoubleRange(min = 1, max = 2000) double sigmaX,
      @ForAll @DoubleRange(min = 1, max = 2000) double sigmaY,
      @ForAll @DoubleRange(min = 0, max = 3000) double offset,
      @ForAll @DoubleRange(min = 1, max = 3000) double radius) {
    double less = SightChance.withinCircle(sigmaX, sigmaY, offset, 0, radius);
    double more = SightChance.withinCircle(sigmaX, sigmaY, offset, 0, radius * 1.1);
    double mirrored = SightChance.withinCircle(sigmaX, sigmaY, -offset, 0, radius);
    double swapped = SightChance.withinCircle(sigmaY, sigmaX, 0, offset, radius);
    assertTrue(less >= 0 && more <= 1);
    assertTrue(more >= less - STATED_ELLIPSE, less + " within the smaller, " + more);
    assertEquals(less, mirrored, STATED_ELLIPSE);
    assertEquals(less, swapped, STATED_ELLIPSE);
    assertTrue(less <= SightChance.passing(sigmaX, offset, radius) + 1e-9);
  }

  /**
   * Nearly round and far smaller than the circle: the chance is 1 to the last digits, never less.
   */
  @Test
  void aCircleThatHoldsNearlyEverythingHoldsNoLessWhenItGrows() {
    double less = SightChance.withinCircle(1.0, 1.01, 0.0, 0.0, 11.06);
    double more = SightChance.withinCircle(1.0, 1.01, 0.0, 0.0, 11.06 * 1.1);
    assertEquals(1.0, less, STATED_ELLIPSE);
    assertEquals(1.0, more, STATED_ELLIPSE);
  }

  @Test
  void edgesHaveAnswers() {
    assertEquals(1.0, SightChance.withinCircle(0, 0, 0, 0, 0));
    assertEquals(0.0, SightChance.withinCircle(1, 1, 0, 0, 0));
    assertEquals(1.0, SightChance.withinCircle(0, 0, 3, 4, 5.0001));
    assertEquals(0.0, SightChance.withinCircle(0, 0, 3, 4, 4.9999));
    assertEquals(0.0, SightChance.rice(1000, 3), 1e-300);
    assertEquals(1.0, SightChance.rice(3, 1000));
    assertTrue(Double.isNaN(SightChance.rice(-1, 1)));
    assertTrue(Double.isNaN(SightChance.passing(Double.NaN, 0, 1)));
    assertTrue(Double.isNaN(SightChance.withinCircle(1, -1, 0, 0, 1)));
    assertTrue(Double.isNaN(SightChance.withinCircle(1, 1, Double.NaN, 0, 1)));
  }
}
