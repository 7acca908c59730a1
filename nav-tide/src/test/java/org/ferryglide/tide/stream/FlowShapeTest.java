package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FlowShapeTest {
  private static final double ROUNDING = 1e-15;

  @ParameterizedTest
  @EnumSource(FlowShape.class)
  void everyShapeReachesTheWholeMaximumAndNeverTurnsBack(FlowShape shape) {
    assertEquals(1.0, shape.share(1.0));
    assertEquals(1.0, shape.share(1.5));
    assertEquals(shape.share(0.0), shape.share(-0.5));
    double before = 0.0;
    for (int i = 0; i <= 1000; i++) {
      double share = shape.share(i / 1000.0);
      assertTrue(share >= before && share <= 1.0);
      before = share;
    }
    assertTrue(Double.isNaN(shape.share(Double.NaN)));
  }

  // 50/90 rule and rule of thirds: common practice; the figures of the sine by arithmetic
  @ParameterizedTest
  @CsvSource({"0, 0, 0", "1, 0.5, 0.5", "2, 0.9, 0.8660254037844386", "3, 1, 1"})
  void fiftyNinetyAndSineAtTheThirds(int third, double fiftyNinety, double sine) {
    assertEquals(fiftyNinety, FlowShape.FIFTY_NINETY.share(third / 3.0), ROUNDING);
    assertEquals(sine, FlowShape.SINE.share(third / 3.0), ROUNDING);
  }

  @Test
  void theRuleOfThirdsHoldsEachThird() {
    assertEquals(1 / 3.0, FlowShape.THIRDS.share(0.2));
    assertEquals(2 / 3.0, FlowShape.THIRDS.share(0.4));
    assertEquals(1.0, FlowShape.THIRDS.share(0.7));
  }

  @Test
  void driftOverSixHoursIsAsDocumented() {
    assertEquals(3.8197, drift(FlowShape.SINE), 5e-5); // 12 / pi
    assertEquals(3.8, drift(FlowShape.FIFTY_NINETY), 1e-5);
    assertEquals(4.0, drift(FlowShape.THIRDS), 1e-5);
  }

  /** Six hours in units of the maximum held for one hour: three from slack to maximum, twice. */
  private static double drift(FlowShape shape) {
    int steps = 300_000;
    double sum = 0.0;
    for (int i = 0; i < steps; i++) {
      sum += shape.share((i + 0.5) / steps);
    }
    return 6.0 * sum / steps;
  }

  @Test
  void fiftyNinetyIsAsFarFromTheSineAsDocumented() {
    double widest = 0.0;
    for (int i = 0; i <= 3; i++) {
      widest =
          Math.max(
              widest,
              Math.abs(FlowShape.SINE.share(i / 3.0) - FlowShape.FIFTY_NINETY.share(i / 3.0)));
    }
    assertEquals(0.034, widest, 5e-4);
  }
}
