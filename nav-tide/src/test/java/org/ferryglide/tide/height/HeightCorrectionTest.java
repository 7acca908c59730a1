package org.ferryglide.tide.height;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeightCorrectionTest {
  /** A training port on its standard port; common practice, no source. */
  private static final HeightCorrection LITTLEPORT_HIGH =
      HeightCorrection.betweenLevels(ofMetres(4.2), ofMetres(1.1), ofMetres(3.4), ofMetres(0.8));

  private static final HeightCorrection LITTLEPORT_LOW =
      HeightCorrection.betweenLevels(ofMetres(0.4), ofMetres(0.1), ofMetres(1.1), ofMetres(0.2));

  @ParameterizedTest
  // the first two are the printed figures; 3.8 is half way; 4.6 and 3.0 continue the line
  @CsvSource({"4.2, 5.3", "3.4, 4.2", "3.8, 4.75", "4.6, 5.85", "3.0, 3.65"})
  void highWatersOfTheTrainingPort(double standard, double secondary) {
    assertEquals(secondary, LITTLEPORT_HIGH.height(ofMetres(standard)).metres(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0.4, 0.5", "1.1, 1.3", "0.75, 0.9", "0.05, 0.1"})
  void lowWatersOfTheTrainingPort(double standard, double secondary) {
    assertEquals(secondary, LITTLEPORT_LOW.height(ofMetres(standard)).metres(), 1e-9);
  }

  @Test
  void onlyHeightsBeyondTheTwoLevelsAreBeyond() {
    assertFalse(LITTLEPORT_HIGH.isBeyondLevels(ofMetres(4.2)));
    assertFalse(LITTLEPORT_HIGH.isBeyondLevels(ofMetres(3.4)));
    assertTrue(LITTLEPORT_HIGH.isBeyondLevels(ofMetres(4.21)));
    assertTrue(LITTLEPORT_HIGH.isBeyondLevels(ofMetres(3.39)));
    assertFalse(HeightCorrection.ratio(0.95).isBeyondLevels(ofMetres(99.0)));
    assertFalse(HeightCorrection.difference(ofMetres(0.3)).isBeyondLevels(ofMetres(-9.0)));
  }

  @Test
  void ratiosMultiplyAndDifferencesAdd() {
    assertEquals(9.5, HeightCorrection.ratio(0.95).height(ofMetres(10.0)).metres(), 1e-12);
    assertEquals(
        1.2, HeightCorrection.difference(ofMetres(-0.3)).height(ofMetres(1.5)).metres(), 1e-12);
    assertEquals(
        2.6,
        HeightCorrection.ratioAndDifference(0.5, ofMetres(1.1)).height(ofMetres(3.0)).metres(),
        1e-12);
  }

  @Test
  void figuresThatAreNoneAreRefused() {
    assertEquals(
        "levels at springs and at neaps must differ, but both were 4.2 metres",
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    HeightCorrection.betweenLevels(
                        ofMetres(4.2), ofMetres(1.1), ofMetres(4.2), ofMetres(0.8)))
            .getMessage());
    assertEquals(
        "height ratio must be in [0, 10] times, but was -0.5",
        assertThrows(IllegalArgumentException.class, () -> HeightCorrection.ratio(-0.5))
            .getMessage());
    assertEquals(
        "height difference must be in [-20, 20] metres, but was 99.0",
        assertThrows(
                IllegalArgumentException.class, () -> HeightCorrection.difference(ofMetres(99.0)))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () ->
            HeightCorrection.betweenLevels(
                ofMetres(4.2), ofMetres(20.1), ofMetres(3.4), ofMetres(0.8)));
    assertThrows(IllegalArgumentException.class, () -> HeightCorrection.ratio(Double.NaN));
  }
}
