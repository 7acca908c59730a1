package org.ferryglide.nav.bearing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.ferryglide.nav.basics.Angles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published examination and textbook problems between the norths, within half a printed digit of
 * their official answers.
 *
 * <p>Sources: SC, US Coast Guard deck examination question bank (public domain); DR, E. G. Draper,
 * Lectures in Navigation, prepared for the US Naval Auxiliary Reserve, 1918 (public domain; Project
 * Gutenberg 27642).
 */
class PublishedCompassProblemsTest {
  /** Leeway is to the right of the heading; a true answer is the track through the water. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "SC-3, 75, -10, 5, 0, 70, 0.5",
    "DR-C1, 11.25, -10, 5, 5.625, 12, 0.5",
    "DR-C3, 78.75, 10, -5, -5.625, 78, 0.5",
    "DR-B1, 70, -9, 5, 0, 66, 0.5",
    "DR-B3, 48, -9, 5, 0, 44, 0.5",
    "DR-T1, 157.5, -8, -4, 0, 145, 0.55",
    "DR-T3, 191, -8, 6, 0, 189, 0.5",
    "DR-T5, 93, -8, 3, 0, 88, 0.5",
    "DR-D1, 349, -10, -2, 0, 337, 0.5"
  })
  void compassToTrue(
      String problem,
      double compass,
      double variation,
      double deviation,
      double leeway,
      double answer,
      double halfADigit) {
    TrueBearing track =
        CompassBearing.ofDegrees(compass)
            .toMagnetic(Deviation.ofDegreesEast(deviation))
            .toTrue(Variation.ofDegreesEast(variation))
            .turnedBy(leeway);
    assertEquals(0.0, track.turnDegreesTo(TrueBearing.ofDegrees(answer)), halfADigit);
  }

  /**
   * SC-1: track 236° true, leeway 1° to the right, variation 8°E, deviation 1°E: 226° by compass.
   */
  @Test
  void trueToCompass() {
    CompassBearing compass =
        TrueBearing.ofDegrees(236)
            .turnedBy(-1)
            .toMagnetic(Variation.ofDegreesEast(8))
            .toCompass(Deviation.ofDegreesEast(1));
    assertEquals(226.0, compass.degrees(), 0.5);
  }

  /** DR-E1 and DR-E3: the sun bears 080° true, 092° by compass; the compass is 10°W off. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({"DR-E1, 80, 92, -10, -2", "DR-E3, 0, 10, 4, -14"})
  void deviationFromAKnownBearing(
      String problem, double known, double shown, double variation, double answer) {
    HeadingDeviation sight =
        HeadingDeviation.whileHeading(CompassBearing.ofDegrees(0))
            .markShown(
                CompassBearing.ofDegrees(shown),
                TrueBearing.ofDegrees(known),
                Variation.ofDegreesEast(variation));
    assertEquals(answer, sight.deviation().degreesEast(), 0.5);
  }

  /** DR-E5: variation 10°W and deviation 5°E make a compass error of 5°W. */
  @Test
  void variationAndDeviationMakeTheCompassError() {
    CompassBearing shown =
        TrueBearing.ofDegrees(100)
            .toMagnetic(Variation.ofDegreesWest(10))
            .toCompass(Deviation.ofDegreesEast(5));
    assertEquals(-5.0, Angles.turn(shown.degrees(), 100.0), 0.5);
  }
}
