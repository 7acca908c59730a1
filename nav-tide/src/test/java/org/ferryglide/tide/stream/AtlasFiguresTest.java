package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.note.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AtlasFiguresTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ' ',
      value = {"11,24 1.1 2.4", "07,19 0.7 1.9", "07.19 0.7 1.9", "00-01 0 0.1", "35,102 3.5 10.2"})
  void figuresAreTenthsOfAKnotNeapsFirst(String text, double neap, double spring) {
    AtlasFigures figures = AtlasFigures.parse(text);
    assertEquals(neap, figures.neapRate().knots(), 1e-12);
    assertEquals(spring, figures.springRate().knots(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "24,11; the neap figure comes first and must not exceed the spring figure: at character 1"
            + " ('2') of \"24,11\"",
        "11; a comma must separate the neap figure from the spring figure: at the end of \"11\"",
        ",11; a figure in tenths of a knot must stand here: at character 1 (',') of \",11\"",
        "11,24kn; nothing may follow the spring figure: at character 6 ('k') of \"11,24kn\"",
        "1.9; a figure in tenths of a knot must have two or three digits, as in 07: at character 1"
            + " ('1') of \"1.9\"",
        "07,9; a figure in tenths of a knot must have two or three digits, as in 07: at character 4"
            + " ('9') of \"07,9\"",
        "11.11,24; nothing may follow the spring figure: at character 6 (',') of \"11.11,24\""
      })
  void anythingElseIsRefusedAtItsCharacter(String text, String message) {
    assertEquals(
        message,
        assertThrows(TextFormatException.class, () -> AtlasFigures.parse(text)).getMessage());
  }

  @Test
  void figuresPrintAsTheyAreRead() {
    assertEquals("07,19", AtlasFigures.parse("07,19").inTenthsOfKnots());
  }

  @Test
  void anAtlasArrowIsARowOfATable() {
    assertEquals(
        StreamSamples.row(-3, 62, 2.4, 1.1),
        StreamHour.ofAtlas(-3, TrueBearing.ofDegrees(62), "11,24"));
  }
}
