package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class TurnsTest {
  private static final double THREE_ROUNDINGS = 3.5e-16;

  @Test
  void sineAndCosineAreThoseOfThePlatform() {
    Random random = new Random(7L);
    double worst = 0.0;
    for (int i = 0; i < 200_000; i++) {
      double turns = 2.0 * random.nextDouble() - 1.0;
      double radians = 2.0 * Math.PI * turns;
      worst =
          Math.max(worst, Math.abs(Turns.cos(turns) - StrictMath.cos(radians)) - ofAngle(radians));
      worst =
          Math.max(worst, Math.abs(Turns.sin(turns) - StrictMath.sin(radians)) - ofAngle(radians));
    }
    assertTrue(worst <= THREE_ROUNDINGS, "worst " + worst);
  }

  /** What rounding the platform's own angle may cost. */
  private static double ofAngle(double radians) {
    return Math.ulp(radians);
  }

  @Test
  void wholeAndQuarterTurnsAreExact() {
    for (double whole : new double[] {0.0, -0.0, 1.0, -3000.0, 1e9}) {
      assertEquals(1.0, Turns.cos(whole), 1e-16);
      assertEquals(0.0, Turns.sin(whole) + 0.0, 1e-16);
      assertEquals(0.0, Turns.cos(whole + 0.25) + 0.0, 1e-16);
      assertEquals(-1.0, Turns.cos(whole + 0.5), 1e-16);
      assertEquals(-1.0, Turns.sin(whole - 0.25), 1e-16);
    }
  }

  @Test
  void nanGivesNan() {
    assertTrue(Double.isNaN(Turns.cos(Double.NaN)));
    assertTrue(Double.isNaN(Turns.sin(Double.POSITIVE_INFINITY)));
  }
}
