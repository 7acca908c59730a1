package org.ferryglide.nav.bearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.ferryglide.nav.note.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Variation and deviation: the angles between true, magnetic and compass bearings. */
class NorthAnglesTest {
  /** Half the last printed digit of whole-degree examples. */
  private static final double HALF_A_PRINTED_DEGREE = 0.5;

  @Test
  void westMagneticIsBestEastLeast() {
    TrueBearing course = TrueBearing.ofDegrees(45);
    assertEquals(49.0, course.toMagnetic(Variation.ofDegreesWest(4)).degrees());
    assertEquals(41.0, course.toMagnetic(Variation.ofDegreesEast(4)).degrees());
  }

  /**
   * Common practice, no source: true 056°, variation 14° W, deviation 3° E gives 067° by compass.
   */
  @Test
  void aCompassCourseComesOut() {
    CompassBearing compass =
        TrueBearing.ofDegrees(56)
            .toMagnetic(Variation.ofDegreesWest(14))
            .toCompass(Deviation.ofDegreesEast(3));
    assertEquals(67.0, compass.degrees(), HALF_A_PRINTED_DEGREE);
  }

  /** Common practice, no source: 345° by compass, deviation 3° W, variation 14° W is 328° true. */
  @Test
  void aCompassCourseGoesBack() {
    TrueBearing course =
        CompassBearing.ofDegrees(345)
            .toMagnetic(Deviation.ofDegreesWest(3))
            .toTrue(Variation.ofDegreesWest(14));
    assertEquals(328.0, course.degrees(), HALF_A_PRINTED_DEGREE);
  }

  @ParameterizedTest
  @CsvSource({
    "4°15'W, -4.25",
    "4°15′ W, -4.25",
    "4.25W, -4.25",
    "4 15 E, 4.25",
    "0°, 0",
    "0°00', 0",
    "3-45 w, -3.75",
    "1°30'36\"E, 1.51",
    "4.25°W, -4.25",
    "1.0E-5°E, 0.00001",
    "W 4°15', -4.25",
    "E4.25, 4.25",
    "15'W, -0.25",
    "W 15', -0.25"
  })
  void variationIsReadAsChartsPrintIt(String text, double degreesEast) {
    assertEquals(degreesEast, Variation.parse(text).degreesEast());
  }

  @ParameterizedTest
  @CsvSource({
    "4°15', 5, 'variation ends with E or W: at the end of \"4°15''\"'",
    "4°60'W, 2, 'minutes must be in [0, 60), but were 60: at character 3 (''6'') of \"4°60''W\"'",
    "181E, 0, 'variation must be in [0, 180] degrees: at character 1 (''1'') of \"181E\"'",
    "4.5°15'W, 4, 'no minutes may follow degrees that have decimals: at character 5 (''1'') of"
        + " \"4.5°15''W\"'",
    "75'W, 0, 'minutes must be in [0, 60), but were 75: at character 1 (''7'') of \"75''W\"'",
    "W 4°E, 4, 'nothing may follow the letter E or W: at character 5 (''E'') of \"W 4°E\"'",
    "4°W5, 3, 'nothing may follow the letter E or W: at character 4 (''5'') of \"4°W5\"'"
  })
  void whatIsNoVariationIsRefusedAtTheCharacter(String text, int index, String message) {
    TextFormatException refusal =
        assertThrows(TextFormatException.class, () -> Variation.parse(text));
    assertEquals(message, refusal.getMessage());
    assertEquals(index, refusal.index());
  }

  @Test
  void bothWaysOfWritingSayTheSame() {
    assertEquals("4°15'W", Variation.ofDegreesWest(4.25).degreesAndMinutes());
    assertEquals("0°30'E", Variation.ofDegreesEast(0.5).degreesAndMinutes());
    assertEquals("0°00'", Variation.ofDegreesWest(0.001).degreesAndMinutes());
    assertEquals("5°00'W", Variation.ofDegreesWest(4.9999).degreesAndMinutes());
    assertEquals("4.25°W", Variation.ofDegreesWest(4.25).toString());
    assertEquals("0.0°", Variation.ZERO.toString());
    assertEquals("3.0°E", Deviation.ofDegreesEast(3).toString());
    assertEquals(Deviation.ofDegreesEast(3), Deviation.parse("3°E"));
  }

  @Test
  void anglesBeyondHalfACircleAreRefused() {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> Variation.ofDegreesEast(180.5));
    assertEquals(
        "variation must be in [-180, 180] degrees east, but was 180.5", refusal.getMessage());
    assertThrows(IllegalArgumentException.class, () -> Deviation.ofDegreesWest(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Variation.ofDegreesWest(-181));
  }
}
