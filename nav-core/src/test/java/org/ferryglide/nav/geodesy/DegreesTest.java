package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class DegreesTest {
  private static final double EXACT = 0.0;

  @Test
  void sineAndCosineAreExactAtTheCardinalPoints() {
    for (int turns = -2; turns <= 2; turns++) {
      double[] sines = {0, 1, 0, -1};
      for (int quarter = 0; quarter < 4; quarter++) {
        double angle = 360 * turns + 90 * quarter;
        assertEquals(sines[quarter], Degrees.sine(angle), EXACT);
        assertEquals(sines[(quarter + 1) % 4], Degrees.cosine(angle), EXACT);
      }
    }
    assertTrue(Double.isNaN(Degrees.sine(Double.NaN)));
    assertTrue(Double.isNaN(Degrees.cosine(Double.POSITIVE_INFINITY)));
  }

  @Test
  void sineAndCosineAgreeWithTheRadians() {
    for (double angle = -720; angle < 720; angle += 7.3) {
      assertEquals(Math.sin(Math.toRadians(angle)), Degrees.sine(angle), 2e-15);
      assertEquals(Math.cos(Math.toRadians(angle)), Degrees.cosine(angle), 2e-15);
    }
  }

  @Test
  void differencesOfLongitudeKeepWhatASubtractionLoses() {
    double east = Math.nextDown(180.0);
    double west = Math.nextUp(-180.0);
    assertEquals(2 * Math.ulp(east), Degrees.longitudeDifference(east, west), EXACT);
    assertEquals(-2 * Math.ulp(east), Degrees.longitudeDifference(west, east), EXACT);
    assertEquals(180.0, Degrees.longitudeDifference(0, -180), EXACT);
    assertEquals(180.0, Degrees.longitudeDifference(0, 180), EXACT);
    assertEquals(180.0, Degrees.longitudeDifference(-90, 90), EXACT);
    assertEquals(180.0, Degrees.longitudeDifference(90, -90), EXACT);
    assertEquals(-179.0, Degrees.longitudeDifference(0, 181), EXACT);
    assertEquals(0.0, Degrees.longitudeDifference(-180, 180), EXACT);
    assertTrue(Double.isNaN(Degrees.longitudeDifference(0, Double.NaN)));
  }

  @Test
  void longitudesRunFromMinus180To180() {
    assertEquals(-180.0, Degrees.longitude(180), EXACT);
    assertEquals(-180.0, Degrees.longitude(-180), EXACT);
    assertEquals(-180.0, Degrees.longitude(540), EXACT);
    assertEquals(-170.0, Degrees.longitude(190), EXACT);
    assertEquals("0.0", Double.toString(Degrees.longitude(-0.0)));
    assertEquals("0.0", Double.toString(Degrees.longitude(-360.0)));
  }
}
