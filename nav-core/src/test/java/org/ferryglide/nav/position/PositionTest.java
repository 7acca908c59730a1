package org.ferryglide.nav.position;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.nav.note.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PositionTest {
  /** A hundred-thousandth of the last digit in the texts below. */
  private static final double READ_TOLERANCE_DEGREES = 1e-12;

  @Test
  void theDateLineIsStoredOneWay() {
    assertEquals(Position.ofDegrees(10, -180), Position.ofDegrees(10, 180));
    assertEquals(Position.ofDegrees(0, 0), Position.ofDegrees(-0.0, -0.0));
  }

  @Test
  void aPoleKeepsItsLongitude() {
    assertEquals(30.0, Position.ofDegrees(90, 30).longitudeDegrees());
  }

  @ParameterizedTest
  @CsvSource({
    "91.5, 0, 'latitude must be in [-90, 90] degrees, but was 91.5'",
    "NaN, 0, 'latitude must be in [-90, 90] degrees, but was NaN'",
    "0, 180.5, 'longitude must be in [-180, 180] degrees, but was 180.5'",
    "0, NaN, 'longitude must be in [-180, 180] degrees, but was NaN'"
  })
  void whatLiesOffTheEarthIsRefused(double latitude, double longitude, String message) {
    assertEquals(
        message,
        assertThrows(IllegalArgumentException.class, () -> Position.ofDegrees(latitude, longitude))
            .getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "50°06.3'N 005°32.1'W",
        "50°06.3′N, 5°32.1′W",
        "N50°06.3' W005°32.1'",
        "50 06.3 N 5 32.1 W",
        "50-06.3N 005-32.1W",
        "50º06’18”N; 5º32’06”W",
        "50°06'18''N 5°32'06''W",
        "50:06:18N 5:32:06W",
        "50d06m18N 5d32m06W",
        "50.105N 5.535W",
        "50.105, -5.535",
        "50.105 -5.535",
        "+50.105, \u22125.535",
        "W5.535 N50.105",
        "5°32.1'w 50°06.3'n",
        "+50.105-005.535/",
        "+50.105-005.535",
        "+5006.3-00532.1/",
        "+500618-0053206/",
        "+500618.0-0053206.0/"
      })
  void onePlaceIsReadFromManyForms(String text) {
    Position position = Position.parse(text);
    assertEquals(50.105, position.latitudeDegrees(), READ_TOLERANCE_DEGREES);
    assertEquals(-5.535, position.longitudeDegrees(), READ_TOLERANCE_DEGREES);
  }

  /**
   * Source: ISO 6709:1983 annex examples as quoted in public descriptions of the standard (Atlantic
   * Ocean +00-025/, Rear of the pole +90+000/, and the minutes form +4852-12345 patterns).
   */
  @Test
  void theStandardsOwnShapesAreRead() {
    assertEquals(Position.ofDegrees(0, -25), Position.parse("+00-025/"));
    assertEquals(Position.ofDegrees(46, 2), Position.parse("+46+002/"));
    assertEquals(Position.ofDegrees(90, 0), Position.parse("+90+000/"));
    assertEquals(Position.ofDegrees(-90, 0), Position.parse("-90+000/"));
    assertEquals(48.8577, Position.parse("+48.8577+002.295/").latitudeDegrees());
  }

  @ParameterizedTest
  @CsvSource({
    "91N 5W, 0, 'latitude must be in [-90, 90] degrees, but was 91.0: at character 1 (''9'') of"
        + " \"91N 5W\"'",
    "50N 181W, 4, 'longitude must be in [-180, 180] degrees, but was -181.0: at character 5 (''1'')"
        + " of \"50N 181W\"'",
    "50°60.0'N 5W, 3, 'minutes must be in [0, 60), but were 60.0: at character 4 (''6'') of"
        + " \"50°60.0''N 5W\"'",
    "50°06'60\"N 5W, 6, 'seconds must be in [0, 60), but were 60: at character 7 (''6'') of"
        + " \"50°06''60\"N 5W\"'",
    "50N, 3, 'a second part must follow, longitude after latitude: at the end of \"50N\"'",
    "50N 5N, 4, 'one part must be north or south and the other east or west: at character 5 (''5'')"
        + " of \"50N 5N\"'",
    "50N 5W x, 7, 'nothing may follow the second part: at character 8 (''x'') of \"50N 5W x\"'",
    "north, 1, 'latitude starts with its degrees: at character 2 (''o'') of \"north\"'",
    "'50,105 5,535', 2, 'the decimal mark must be a point: at character 3 ('','') of \"50,105"
        + " 5,535\"'",
    "+50.105-05.535/, 8, 'longitude must have 3, 5 or 7 digits before its fraction, but had 2: at"
        + " character 9 (''0'') of \"+50.105-05.535/\"'",
    "+27.5916+086.5640+8850CRSWGS_84/, 17, 'only a solidus may follow the longitude; heights are"
        + " not kept: at character 18 (''+'') of \"+27.5916+086.5640+8850CRSWGS_84/\"'",
    "+9100-00000/, 0, 'latitude must be in [-90, 90] degrees, but was 91.0: at character 1 (''+'')"
        + " of \"+9100-00000/\"'",
    "+5061-00000/, 3, 'minutes must be in [0, 60), but were 61: at character 4 (''6'') of"
        + " \"+5061-00000/\"'"
  })
  void aRefusalPointsAtTheCharacter(String text, int index, String message) {
    TextFormatException refusal =
        assertThrows(TextFormatException.class, () -> Position.parse(text));
    assertEquals(message, refusal.getMessage());
    assertEquals(index, refusal.index());
  }

  @Test
  void aForgottenLetterIsNotTakenForEastOrNorth() {
    assertEquals(
        "the longitude must have a letter, E or W, as the latitude has one: at character 12 ('0')"
            + " of \"46°14.6'N, 026°11.2\"",
        assertThrows(TextFormatException.class, () -> Position.parse("46°14.6'N, 026°11.2"))
            .getMessage());
    assertThrows(TextFormatException.class, () -> Position.parse("46°14.6' 026°11.2'W"));
    assertThrows(TextFormatException.class, () -> Position.parse("46.2, 26.1W"));
    assertThrows(TextFormatException.class, () -> Position.parse("26.1W, 46.2"));
    assertEquals(Position.ofDegrees(46.2, -26.1), Position.parse("46.2N, -26.1"));
  }

  @Test
  void unmarkedFiguresAreNotGuessedAt() {
    assertThrows(TextFormatException.class, () -> Position.parse("50 5"));
    assertThrows(TextFormatException.class, () -> Position.parse("50.1 5.5"));
    assertThrows(TextFormatException.class, () -> Position.parse(""));
    assertEquals(Position.ofDegrees(50.1, 5.5), Position.parse("50.1, 5.5"));
  }

  @Test
  void aPositionIsPrintedInEveryForm() {
    Position position = Position.ofDegrees(50.105, -5.535);
    assertEquals("50.105°N 005.535°W", position.text(AngleForm.DEGREES, 3));
    assertEquals("50°06.3'N 005°32.1'W", position.text(AngleForm.DEGREES_MINUTES, 1));
    assertEquals("50°06'18\"N 005°32'06\"W", position.text(AngleForm.DEGREES_MINUTES_SECONDS, 0));
    assertEquals("+50.105-005.535/", position.iso6709(AngleForm.DEGREES, 3));
    assertEquals("+5006.30-00532.10/", position.iso6709(AngleForm.DEGREES_MINUTES, 2));
    assertEquals("+500618-0053206/", position.iso6709(AngleForm.DEGREES_MINUTES_SECONDS, 0));
    assertEquals("50.105°N 5.535°W", position.toString());
    assertThrows(IllegalArgumentException.class, () -> position.text(AngleForm.DEGREES, -1));
  }

  @Test
  void sixtyMinutesAreNeverPrinted() {
    Position position = Position.ofDegrees(-49.99999, 179.999999);
    assertEquals("50°00.0'S 180°00.0'W", position.text(AngleForm.DEGREES_MINUTES, 1));
    assertEquals("50°00'00\"S 180°00'00\"W", position.text(AngleForm.DEGREES_MINUTES_SECONDS, 0));
    assertEquals("50.00°S 180.00°W", position.text(AngleForm.DEGREES, 2));
    assertEquals(
        "59°59'59.9\"N 000°00'00.0\"E",
        Position.ofDegrees(59.99998, -1e-9).text(AngleForm.DEGREES_MINUTES_SECONDS, 1));
  }

  /** 50°06' 5°32' south or 50°06'05" 32° west: after hyphens a minus is not told from a hyphen. */
  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"50-06-5-32", "50-06-05-5-32-00", "50-06-18-005.5"})
  void aMinusGluedAfterHyphensIsRefused(String text) {
    TextFormatException refusal =
        assertThrows(TextFormatException.class, () -> Position.parse(text));
    assertTrue(String.valueOf(refusal.getMessage()).startsWith("after hyphens"), text);
    assertEquals('-', text.charAt(refusal.index()));
  }

  @Test
  void aMinusApartFromHyphensIsRead() {
    assertEquals(Position.parse("50°06'N 5°32'W"), Position.parse("50-06 -5-32"));
    assertEquals(Position.parse("50°06'N 5°32'W"), Position.parse("50-06,-5-32"));
    assertEquals(Position.parse("50°06'N 5°32'W"), Position.parse("50-06N 5-32W"));
    assertEquals(Position.parse("50°06'N 5°32'W"), Position.parse("50-06N5-32W"));
  }

  /**
   * The sentence form is that of NMEA 0183, field by field; the others stand in pilots and on the
   * screens of receivers (common practice, no source).
   */
  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "5006.3,N,00532.1,W",
        "5006.3N 00532.1W",
        "5006.3N00532.1W",
        "5006.300,N,00532.100,W",
        "500618N 0053206W",
        "50d06m18sN 5d32m06sW",
        "50d06m18s N, 5d32m06s W",
        "50d06.3m N 5d32.1m W",
        "50°\u200906.3'\u2009N 5°\u200932.1'\u2009W",
        "50°06.3\u00b4N 5°32.1\u00b4W",
        "50°06\u00b418\u00b4\u00b4N 5°32\u00b406\u00b4\u00b4W",
        "50°06\u02b918\u02baN 5°32\u02b906\u02baW"
      })
  void furtherFormsOfReceiversAndPilotsAreRead(String text) {
    Position read = Position.parse(text);
    assertEquals(50.105, read.latitudeDegrees(), 1e-14);
    assertEquals(-5.535, read.longitudeDegrees(), 1e-14);
  }

  @Test
  void aCommaBetweenTwoNumbersPartsThem() {
    assertEquals(Position.ofDegrees(50, 5.5), Position.parse("50,5.5"));
    assertEquals(Position.ofDegrees(0, 0), Position.parse("0,0"));
    assertEquals(Position.ofDegrees(50.1, 5), Position.parse("50.1,5"));
    assertThrows(TextFormatException.class, () -> Position.parse("50,1 5,5"));
    assertThrows(TextFormatException.class, () -> Position.parse("50,1,5,5"));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "91,0; 0; latitude must be in [-90, 90] degrees, but was 91.0",
        "50,181; 3; longitude must be in [-180, 180] degrees, but was 181.0",
        "5061.3,N,00532.1,W; 2; minutes must be in [0, 60), but were 61.3",
        "5006.3,N,00572.1,W; 12; minutes must be in [0, 60), but were 72.1",
        "9106.3,N,00532.1,W; 0; latitude must be in [-90, 90] degrees, but was 91.105",
        "5006.3N 18132.1W; 8; longitude must be in [-180, 180] degrees, but was -181.535"
      })
  void whatDoesNotFitInThemIsPointedAt(String text, int index, String reason) {
    TextFormatException refusal =
        assertThrows(TextFormatException.class, () -> Position.parse(text));
    assertEquals(reason, refusal.reason());
    assertEquals(index, refusal.index());
    assertEquals(text, refusal.input());
  }
}
