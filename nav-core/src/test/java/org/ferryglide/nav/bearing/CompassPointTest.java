package org.ferryglide.nav.bearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CompassPointTest {
  /** The thirty-two points as any seamanship manual boxes the compass; common knowledge. */
  @ParameterizedTest
  @CsvSource({
    "231, 8, southwest",
    "231, 16, southwest",
    "231, 32, southwest by west",
    "0, 4, north",
    "359, 32, north",
    "11.25, 32, north by east",
    "22.5, 8, northeast",
    "22.5, 16, north-northeast",
    "337.5, 8, north",
    "168.75, 32, south by east",
    "281.25, 32, west by north",
    "-90, 8, west",
    "303.75, 32, northwest by west"
  })
  void theNearestPointIsNamed(double degrees, int points, String expected) {
    assertEquals(expected, CompassPoint.nearest(degrees, points).pointName());
  }

  @ParameterizedTest
  @EnumSource
  void everyPointIsNearestToItselfAndOppositeItsOpposite(CompassPoint point) {
    assertEquals(point, CompassPoint.nearest(point.degrees(), 32));
    assertEquals(point, point.opposite().opposite());
    assertEquals(Angles.reduced(point.degrees() + 180), point.opposite().degrees());
  }

  @Test
  void otherNumbersOfPointsAreRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class, () -> TrueBearing.ofDegrees(1).nearestPoint(12));
    assertEquals("number of points must be 4, 8, 16 or 32, but was 12", refusal.getMessage());
  }
}
