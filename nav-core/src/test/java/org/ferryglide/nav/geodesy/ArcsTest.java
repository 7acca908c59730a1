package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The polynomials against the platform's own functions, which are good to a unit or two. */
class ArcsTest {
  private static final double SHARE = 4e-16;

  @Test
  void polynomialsAreThePlatformsFunctions() {
    SplittableRandom random = new SplittableRandom(4);
    for (int i = 0; i < 100_000; i++) {
      double x = 0.2 * (2.0 * random.nextDouble() - 1.0) * Math.pow(10, -8 * random.nextDouble());
      assertEquals(StrictMath.sin(x), Arcs.sine(x), SHARE * Math.abs(x));
      double half = 0.4 * x;
      double sine = StrictMath.sin(half);
      assertEquals(half, sine * Arcs.overSine(sine * sine), SHARE * Math.abs(half));
      double small = 0.5 * x;
      assertEquals(
          small,
          StrictMath.sinh(small)
              * Arcs.hyperbolicOverSine(StrictMath.sinh(small) * StrictMath.sinh(small)),
          2 * SHARE * Math.abs(small));
      double tangent = 10.0 * x;
      assertEquals(StrictMath.atan(tangent), Arcs.arctangent(tangent), SHARE * Math.abs(tangent));
    }
  }

  @Test
  void coursesAreThoseOfTheArctangentAndExactAlongTheAxes() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 100_000; i++) {
      double east = (random.nextDouble() - 0.5) * Math.pow(10, -10 * random.nextDouble());
      double north = (random.nextDouble() - 0.5) * Math.pow(10, -10 * random.nextDouble());
      double course = Arcs.courseDegrees(east, north);
      double expected = StrictMath.toDegrees(StrictMath.atan2(east, north));
      assertTrue(course >= 0.0 && course < 360.0);
      assertEquals(0.0, Math.IEEEremainder(course - expected, 360.0), 1.2e-13); // ulps of 360
    }
    for (double zero : new double[] {0.0, -0.0}) {
      assertEquals(0.0, Arcs.courseDegrees(zero, 2.0));
      assertEquals(180.0, Arcs.courseDegrees(zero, -2.0));
      assertEquals(90.0, Arcs.courseDegrees(2.0, zero));
      assertEquals(270.0, Arcs.courseDegrees(-2.0, zero));
    }
    assertTrue(Double.isNaN(Arcs.courseDegrees(0.0, 0.0)));
    assertTrue(Double.isNaN(Arcs.courseDegrees(Double.NaN, 1.0)));
  }
}
