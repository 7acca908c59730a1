package org.ferryglide.nav.basics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class ArgumentsTest {
  private static String refusal(Runnable check) {
    return String.valueOf(assertThrows(IllegalArgumentException.class, check::run).getMessage());
  }

  @Test
  void eachRefusalSaysWhatIsAllowedAndWhatWasGiven() {
    assertEquals(
        "height must be a finite number of metres, but was Infinity",
        refusal(() -> Arguments.finite(Double.POSITIVE_INFINITY, "height", "metres")));
    assertEquals(
        "share must be in [0, 0.5] parts, but was 0.6",
        refusal(() -> Arguments.within(0.6, 0, 0.5, "share", "parts")));
    assertEquals(
        "rate must be a finite number of knots, at least 0, but was -1.0",
        refusal(() -> Arguments.notNegative(-1, "rate", "knots")));
    assertEquals(
        "step must be a finite number of minutes above 0, but was 0.0",
        refusal(() -> Arguments.positive(0, "step", "minutes")));
    assertEquals(
        "hour must be in [-6, 6] hours, but was 8",
        refusal(() -> Arguments.within(8, -6, 6, "hour", "hours")));
  }

  @Test
  void minusZeroBecomesZero() {
    assertEquals(0L, Double.doubleToRawLongBits(Arguments.finite(-0.0, "x", "m")));
    assertEquals(0L, Double.doubleToRawLongBits(Arguments.within(-0.0, -1, 1, "x", "m")));
    assertEquals(0L, Double.doubleToRawLongBits(Arguments.notNegative(-0.0, "x", "m")));
  }
}
