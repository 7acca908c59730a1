package org.ferryglide.nav.basics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnglesTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "360, 0",
    "-360, 0",
    "720.5, 0.5",
    "-10, 350",
    "-1e-17, 0",
    "359.5, 359.5",
    "-725, 355"
  })
  void anAngleIsReducedToTheCircle(double degrees, double expected) {
    assertEquals(expected, Angles.reduced(degrees));
  }

  @Test
  void aTinyNegativeAngleIsNorthAndHasNoSign() {
    assertEquals(0L, Double.doubleToRawLongBits(Angles.reduced(-1e-300)));
    assertEquals(0L, Double.doubleToRawLongBits(Angles.reduced(-0.0)));
  }

  @Test
  void theReducedAngleNeverReaches360() {
    for (double tiny = 1e-20; tiny < 1; tiny *= 3) {
      assertTrue(Angles.reduced(-tiny) < 360.0);
    }
  }

  @Test
  void notANumberStaysNotANumber() {
    assertTrue(Double.isNaN(Angles.reduced(Double.NaN)));
    assertTrue(Double.isNaN(Angles.reduced(Double.POSITIVE_INFINITY)));
    assertTrue(Double.isNaN(Angles.turn(Double.NaN, 0)));
  }

  @ParameterizedTest
  @CsvSource({
    "350, 10, 20",
    "10, 350, -20",
    "0, 180, 180",
    "180, 0, 180",
    "90, 270, 180",
    "0, 181, -179",
    "45, 45, 0",
    "359, 1, 2"
  })
  void theTurnGoesTheShortWay(double from, double to, double expected) {
    assertEquals(expected, Angles.turn(from, to));
  }

  @Test
  void theTurnBetweenFiniteAnglesIsFinite() {
    double turn = Angles.turn(1e300, -1.79e308);
    assertTrue(turn > -180.0 && turn <= 180.0, "" + turn);
    assertTrue(Double.isNaN(Angles.turn(0.0, Double.POSITIVE_INFINITY)));
  }
}
