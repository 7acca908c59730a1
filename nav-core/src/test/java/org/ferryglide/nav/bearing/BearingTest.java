package org.ferryglide.nav.bearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.ferryglide.nav.note.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BearingTest {
  @ParameterizedTest
  @CsvSource({
    "7, 007°",
    "0, 000°",
    "45.5, 046°",
    "359.4999, 359°",
    "359.5, 000°",
    "99.5, 100°",
    "9.5, 010°"
  })
  void threeDigitsAreWhatIsSpoken(double degrees, String expected) {
    assertEquals(expected, TrueBearing.ofDegrees(degrees).threeDigits());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNotANumberOfDegreesIsRefused(double degrees) {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> TrueBearing.ofDegrees(degrees));
    assertEquals(
        "bearing must be a finite number of degrees, but was " + degrees, refusal.getMessage());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -1e-9, 360.0, 400.0})
  void theConstructorTakesOnlyWhatIsInRange(double degrees) {
    String expected = "bearing must be in [0, 360) degrees, but was " + degrees;
    assertEquals(
        expected,
        assertThrows(IllegalArgumentException.class, () -> new TrueBearing(degrees)).getMessage());
    assertEquals(
        expected,
        assertThrows(IllegalArgumentException.class, () -> new MagneticBearing(degrees))
            .getMessage());
    assertEquals(
        expected,
        assertThrows(IllegalArgumentException.class, () -> new CompassBearing(degrees))
            .getMessage());
    assertEquals(
        expected,
        assertThrows(IllegalArgumentException.class, () -> new GridBearing(degrees, "UTM 30N"))
            .getMessage());
  }

  @Test
  void northIsOneDirectionOnly() {
    assertEquals(new TrueBearing(0.0), new TrueBearing(-0.0));
    assertEquals(TrueBearing.ofDegrees(360), TrueBearing.ofDegrees(-1e-20));
  }

  @Test
  void bearingsFromDifferentNorthsAreDifferent() {
    assertNotEquals(TrueBearing.ofDegrees(45), MagneticBearing.ofDegrees(45));
    assertNotEquals(GridBearing.ofDegrees(45, "UTM 30N"), GridBearing.ofDegrees(45, "UTM 29N"));
  }

  @ParameterizedTest
  @CsvSource({
    "045, 45",
    "045°, 45",
    "45.5°T, 45.5",
    "45.5 T, 45.5",
    "360, 0",
    "' 7 ° t', 7",
    "045°30'T, 45.5",
    "007°06′, 7.1"
  })
  void aTrueBearingIsReadAsChartWorkersWriteIt(String text, double expected) {
    assertEquals(TrueBearing.ofDegrees(expected), TrueBearing.parse(text));
  }

  @ParameterizedTest
  @CsvSource({
    "45°M, 3, 'only the degree mark and the letter T may follow: at character 4 (''M'') of"
        + " \"45°M\"'",
    "361, 0, 'bearing must be in [0, 360] degrees: at character 1 (''3'') of \"361\"'",
    "'', 0, 'a bearing starts with its degrees, as in 045°T: at the end of \"\"'",
    "'45,5', 2, 'the decimal mark must be a point: at character 3 ('','') of \"45,5\"'",
    "-5, 0, 'a bearing starts with its degrees, as in 045°T: at character 1 (''-'') of \"-5\"'",
    "045°60'T, 4, 'minutes must be in [0, 60), but were 60: at character 5 (''6'') of"
        + " \"045°60''T\"'",
    "045°15M, 6, 'minutes of a bearing need their mark, as in 049°15''T: at character 7 (''M'') of"
        + " \"045°15M\"'",
    "45.5°15'T, 5, 'no minutes may follow degrees that have decimals: at character 6 (''1'') of"
        + " \"45.5°15''T\"'",
    "45°Tx, 4, 'nothing may follow the letter T: at character 5 (''x'') of \"45°Tx\"'"
  })
  void aRefusalPointsAtTheCharacter(String text, int index, String message) {
    TextFormatException refusal =
        assertThrows(TextFormatException.class, () -> TrueBearing.parse(text));
    assertEquals(message, refusal.getMessage());
    assertEquals(index, refusal.index());
    assertEquals(text, refusal.input());
  }

  @Test
  void aGridBearingCarriesItsGridThroughText() {
    GridBearing bearing = GridBearing.ofDegrees(91.25, "UTM 30N");
    assertEquals("91.25°G[UTM 30N]", bearing.toString());
    assertEquals(bearing, GridBearing.parse(bearing.toString()));
    assertThrows(TextFormatException.class, () -> GridBearing.parse("91.25°G"));
    assertThrows(TextFormatException.class, () -> GridBearing.parse("91.25°G[]"));
  }

  @Test
  void anotherGridsConvergenceIsRefused() {
    GridBearing bearing = GridBearing.ofDegrees(91, "UTM 30N");
    GridConvergence other = GridConvergence.ofDegreesEast(1, "UTM 29N");
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> bearing.toTrue(other));
    assertEquals(
        "both must be of the same grid, but were of \"UTM 29N\" and \"UTM 30N\"",
        refusal.getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> bearing.turnDegreesTo(GridBearing.ofDegrees(1, "British National Grid")));
    assertThrows(IllegalArgumentException.class, () -> GridBearing.ofDegrees(1, ""));
    assertThrows(IllegalArgumentException.class, () -> GridBearing.ofDegrees(1, "a]"));
  }

  @Test
  void gridBearingPlusConvergenceIsTrue() {
    GridConvergence east = GridConvergence.ofDegreesEast(0.75, "UTM 30N");
    assertEquals(TrueBearing.ofDegrees(91.75), GridBearing.ofDegrees(91, "UTM 30N").toTrue(east));
    assertEquals(east, GridConvergence.parse(east.toString()));
    assertEquals("0.75°E[UTM 30N]", east.toString());
  }

  @Test
  void theReciprocalIsTheOppositeOfTheSameNorth() {
    assertEquals(MagneticBearing.ofDegrees(225), MagneticBearing.ofDegrees(45).reciprocal());
    assertEquals(CompassBearing.ofDegrees(0), CompassBearing.ofDegrees(180).reciprocal());
    assertEquals(
        GridBearing.ofDegrees(271, "UTM 30N"), GridBearing.ofDegrees(91, "UTM 30N").reciprocal());
  }

  @Test
  void whatHandRoundingPrintsIsRead() {
    assertEquals(
        MagneticBearing.ofDegrees(49.25),
        MagneticBearing.parse(HandRounding.MINUTE.bearing(49.25, 'M')));
  }

  @ParameterizedTest
  @CsvSource({"5[[], 2", "5[[]], 2", "5[a]b], 3", "5°G[x[y], 5"})
  void bracketsInTheNameOfAGridAreRefusedAtTheirPlace(String text, int index) {
    assertEquals(
        index, assertThrows(TextFormatException.class, () -> GridBearing.parse(text)).index());
    assertEquals(
        index, assertThrows(TextFormatException.class, () -> GridConvergence.parse(text)).index());
  }

  @Test
  void aTurnGoesClockwiseWhenPositiveWhateverTheNorth() {
    assertEquals(TrueBearing.ofDegrees(10), TrueBearing.ofDegrees(350).turnedBy(20));
    assertEquals(MagneticBearing.ofDegrees(10), MagneticBearing.ofDegrees(350).turnedBy(20));
    assertEquals(CompassBearing.ofDegrees(10), CompassBearing.ofDegrees(350).turnedBy(20));
    assertEquals(
        GridBearing.ofDegrees(10, "UTM 30N"), GridBearing.ofDegrees(350, "UTM 30N").turnedBy(20));
    assertEquals(20.0, TrueBearing.ofDegrees(350).turnDegreesTo(TrueBearing.ofDegrees(10)));
    assertEquals(20.0, MagneticBearing.ofDegrees(350).turnDegreesTo(MagneticBearing.ofDegrees(10)));
    assertEquals(20.0, CompassBearing.ofDegrees(350).turnDegreesTo(CompassBearing.ofDegrees(10)));
    assertEquals(
        20.0,
        GridBearing.ofDegrees(350, "UTM 30N").turnDegreesTo(GridBearing.ofDegrees(10, "UTM 30N")));
  }
}
