package org.ferryglide.nav.bearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.note.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

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

  @ParameterizedTest
  @EnumSource
  void everyPointIsReadFromItsNameAndItsAbbreviation(CompassPoint point) {
    assertEquals(point, CompassPoint.parse(point.pointName()));
    assertEquals(point, CompassPoint.parse(point.abbreviation()));
    assertEquals(point, CompassPoint.parse(point.name().replace('_', ' ')));
  }

  @ParameterizedTest
  @CsvSource({
    "SWbW, SOUTHWEST_BY_WEST",
    "SW by W, SOUTHWEST_BY_WEST",
    "South West, SOUTHWEST",
    "ssw, SOUTH_SOUTHWEST",
    "north-north-east, NORTH_NORTHEAST"
  })
  void pointsAreReadAsTheyAreWritten(String text, CompassPoint point) {
    assertEquals(point, CompassPoint.parse(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "NNN", "WE", "northish", "by", "NEbW"})
  void whatIsNoPointIsRefused(String text) {
    assertThrows(TextFormatException.class, () -> CompassPoint.parse(text));
  }

  /**
   * Source: E. G. Draper, Lectures in Navigation (1918, US Naval Auxiliary Reserve; Project
   * Gutenberg 27642), problems on points of the compass, answers to a minute or so.
   */
  @Test
  void publishedPointsHaveTheirDegrees() {
    double answersToAMinuteOrSo = 0.02;
    assertEquals(45.0, CompassPoint.NORTHEAST.degrees(), answersToAMinuteOrSo);
    assertEquals(123.75, CompassPoint.parse("SE by E").degrees(), answersToAMinuteOrSo);
    // northwest three quarters west: three quarters of a point from northwest towards west
    assertEquals(306.5667, CompassPoint.NORTHWEST.degrees() - 0.75 * 11.25, answersToAMinuteOrSo);
  }
}
