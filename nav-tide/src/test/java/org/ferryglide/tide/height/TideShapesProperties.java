package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.testing.Seeds;

class TideShapesProperties {
  /** A few roundings of values up to 1. */
  private static final double ROUNDING = 4 * Math.ulp(1.0);

  @Provide
  Arbitrary<Double> fractions() {
    return Arbitraries.oneOf(
        Arbitraries.of(0.0, 1.0 / 6.0, 0.5, 5.0 / 6.0, 1.0, Math.nextDown(1.0), Double.MIN_VALUE),
        Arbitraries.doubles().between(0.0, 1.0).ofScale(12));
  }

  @Property(seed = Seeds.SEED)
  void twelfthsNeverTurnBack(@ForAll("fractions") double a, @ForAll("fractions") double b) {
    assertTrue(
        TideShapes.twelfths(Math.min(a, b)) <= TideShapes.twelfths(Math.max(a, b)) + ROUNDING);
  }

  @Property(seed = Seeds.SEED)
  void twelfthsAndCosineAreSymmetricAboutHalfTide(@ForAll("fractions") double fraction) {
    assertEquals(
        1.0, TideShapes.twelfths(fraction) + TideShapes.twelfths(1.0 - fraction), ROUNDING);
    assertEquals(1.0, TideShapes.cosine(fraction) + TideShapes.cosine(1.0 - fraction), ROUNDING);
  }

  @Property(seed = Seeds.SEED)
  void twelfthsStayWithinTheKnownDistanceOfTheCosine(@ForAll("fractions") double fraction) {
    double apart = Math.abs(TideShapes.twelfths(fraction) - TideShapes.cosine(fraction));
    assertTrue(apart <= TideShapes.TWELFTHS_FROM_COSINE, apart + " at " + fraction);
  }

  @Example
  void theKnownDistanceIsReachedWhereItIsDerived() {
    double fraction = Math.asin(1.0 / Math.PI) / Math.PI;
    assertEquals(0.619, 6.0 * fraction, 0.0005);
    double apart = TideShapes.twelfths(fraction) - TideShapes.cosine(fraction);
    assertEquals(TideShapes.TWELFTHS_FROM_COSINE, apart, 1e-5); // it is rounded up
  }

  @Property(seed = Seeds.SEED)
  void slopesAreThoseOfTheShapes(@ForAll("fractions") double fraction) {
    double step = 1e-6;
    double x = Math.min(Math.max(fraction, 0.0001), 0.9999);
    double sixths = 6.0 * x;
    double measured = (TideShapes.cosine(x + step) - TideShapes.cosine(x - step)) / (2.0 * step);
    assertEquals(measured, TideShapes.cosineSlope(x), 1e-8);
    if (Math.abs(sixths - Math.rint(sixths)) > 1e-4) {
      measured = (TideShapes.twelfths(x + step) - TideShapes.twelfths(x - step)) / (2.0 * step);
      assertEquals(measured, TideShapes.twelfthsSlope(x), 1e-8);
    }
  }
}
