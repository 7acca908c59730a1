package org.ferryglide.nav.magnetic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.note.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class CompassRoseTest {
  @ParameterizedTest(name = "{0} in {1} is {2}")
  @CsvFileSource(resources = "rose-examples.csv", delimiter = ';')
  void publishedExamplesAreMet(String rose, int year, String expected, String source) {
    assertEquals(
        expected, CompassRose.parse(rose).variationInYear(year).degreesAndMinutes(), source);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "4°15'W 2019 (8'E); 4.25°W 2019 (8'E)",
        "4°15′W 2019 (8′E); 4.25°W 2019 (8'E)",
        "W 4° 15' 2019 (E 8'); 4.25°W 2019 (8'E)",
        "4 15 W 2019, 8' decreasing; 4.25°W 2019 (8'E)",
        "Var 4°15'W (2019), Annual change 8'E; 4.25°W 2019 (8'E)",
        "VAR 4°15'W (2019) ANNUAL DECREASE 8'; 4.25°W 2019 (8'E)",
        "VAR. 4°15'E (2019) ANNUAL INCREASE 2'; 4.25°E 2019 (2'E)",
        "4.25W 2019 (7.6'W); 4.25°W 2019 (7.6'W)",
        "4°15'W 2019 (8'E decreasing); 4.25°W 2019 (8'E)",
        "4°15'W 2019 (8'W increasing annually); 4.25°W 2019 (8'W)",
        "4°15'W 2019 (0°08'E); 4.25°W 2019 (8'E)",
        "4°15'W 2019 (nil); 4.25°W 2019 (nil)",
        "4°15'W 2019 (annual change nil); 4.25°W 2019 (nil)",
        "4°15'W 2019 (no annual change); 4.25°W 2019 (nil)",
        "4°15'W 2019 (0'); 4.25°W 2019 (nil)",
        "0°00' 2019 (3'W); 0.0° 2019 (3'W)",
        "4°15'W 2019 decreasing about 8' annually; 4.25°W 2019 (8'E)",
        "4°15'W (2019), increasing 8' annually; 4.25°W 2019 (8'W)",
        "4°15'W 2019 Annual Change: NIL; 4.25°W 2019 (nil)",
        "MAG VAR 4°15'W (2019) ANNUAL INCREASE 2'; 4.25°W 2019 (2'W)",
        "4°15' West 2019 (8' East); 4.25°W 2019 (8'E)",
        "4°15'W 2019 (8'E per annum); 4.25°W 2019 (8'E)",
        "4°15'W 2019 (8'E yearly).; 4.25°W 2019 (8'E)",
        "4°15'W 2019 (7' decrease); 4.25°W 2019 (7'E)",
        "4°15'W 2019 (1°00'E); 4.25°W 2019 (60'E)",
        "4°15'W 2019 (480'E); 4.25°W 2019 (480'E)",
        "2019 4°15'W (8'E); 4.25°W 2019 (8'E)",
        "2019, W 4°15' (8' decreasing); 4.25°W 2019 (8'E)",
        "(2019) Var 4°15'W, 8'E; 4.25°W 2019 (8'E)",
        "VAR 2019: 4°15'E DECREASING 8' ANNUALLY; 4.25°E 2019 (8'W)",
        "1.0E-5°E 2019 (1.0E-4'W); 1.0E-5°E 2019 (1.0E-4'W)",
      })
  void whatChartsPrintIsRead(String printed, String expected) {
    assertEquals(expected, CompassRose.parse(printed).toString());
    assertEquals(expected, CompassRose.parse(expected).toString());
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "rose-refusals.csv", delimiter = ';')
  void anythingElseIsRefusedAtItsCharacter(String text, int index, String reason) {
    TextFormatException refusal =
        assertThrows(TextFormatException.class, () -> CompassRose.parse(text));
    String message = String.valueOf(refusal.getMessage());
    assertEquals(reason, message.substring(0, message.indexOf(": at ")));
    assertEquals(index, refusal.index());
  }

  /** The two-line form of charts: variation and year above, the change below. */
  @Test
  void aRoseOfTwoLinesIsRead() {
    assertEquals(
        "14.0°E 2013 (7'W)",
        CompassRose.parse("VAR 14°00'E (2013)\nANNUAL DECREASE 7'").toString());
  }

  @Test
  void theStartOfAYearIsTheWholeYearsOfTheTrade() {
    CompassRose rose = CompassRose.parse("4°15'W 2019 (8'E)");
    assertEquals(rose.variationInYear(2026), rose.variationAt(LocalDate.of(2026, 1, 1)));
    assertEquals("3°19'W", rose.variationInYear(2026).degreesAndMinutes());
    assertEquals("3°16'W", rose.variationAt(LocalDate.of(2026, 6, 1)).degreesAndMinutes());
    assertEquals(Variation.parse("4°15'W"), rose.variationAt(LocalDate.of(2019, 1, 1)));
  }

  @Test
  void aRoseIsPrintedAsItStandsOnTheChart() {
    assertEquals("4°15'W 2019 (8'E)", CompassRose.parse("4.25°W 2019, 8.2'E").printed());
    assertEquals("0°00' 2019 (nil)", CompassRose.parse("0°00' 2019 (nil)").printed());
  }

  /**
   * Eight degrees a year for eight minutes: 55° east in 2026, once with no more than a mild note.
   */
  @ParameterizedTest
  @CsvSource({
    "(8°E), 12, 'annual change must not exceed a degree when it is given in degrees'",
    "(1°90'E), 14, 'minutes after degrees must be in [0, 60), but were 90.0'",
    "(8°75'E), 14, 'minutes after degrees must be in [0, 60), but were 75.0'",
    "(8''E), 14, ''",
    "(1°01'E), 12, 'annual change must not exceed a degree'"
  })
  void aChangeThatIsNoneIsRefused(String change, int index, String reason) {
    TextFormatException refusal =
        assertThrows(
            TextFormatException.class,
            () -> CompassRose.parse("4°15'W 2019 " + change.replace("''", "\u2032\u2032")));
    assertEquals(true, String.valueOf(refusal.getMessage()).startsWith(reason));
    if (!reason.isEmpty()) {
      assertEquals(index + 1, refusal.index());
    }
  }
}
