package org.ferryglide.nav.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.ferryglide.nav.note.TextFormatException;
import org.junit.jupiter.api.Test;

class BeaufortTest {
  /** First and last whole knots of forces 1 to 11: WMO Manual on Codes, code table 1100. */
  private static final int[][] KNOTS = {
    {1, 3}, {4, 6}, {7, 10}, {11, 16}, {17, 21}, {22, 27}, {28, 33}, {34, 40}, {41, 47}, {48, 55},
    {56, 63}
  };

  @Test
  void everyWholeKnotHasItsForce() {
    assertEquals(Beaufort.ofForce(0), Beaufort.of(Speed.ZERO));
    for (int force = 1; force <= 11; force++) {
      for (int knots = KNOTS[force - 1][0]; knots <= KNOTS[force - 1][1]; knots++) {
        assertEquals(Beaufort.ofForce(force), Beaufort.of(Speed.ofKnots(knots)), knots + " kn");
      }
      assertEquals(KNOTS[force - 1][0], Beaufort.ofForce(force).lowest().knots(), 1e-12);
      assertEquals(
          KNOTS[force - 1][1], Beaufort.ofForce(force).highest().orElseThrow().knots(), 1e-12);
    }
    assertEquals(Beaufort.ofForce(12), Beaufort.of(Speed.ofKnots(64)));
    assertEquals(Beaufort.ofForce(12), Beaufort.of(Speed.ofKnots(150)));
    assertTrue(Beaufort.ofForce(12).highest().isEmpty());
  }

  @Test
  void halfAKnotGoesUp() {
    assertEquals(Beaufort.ofForce(3), Beaufort.of(Speed.ofKnots(10.4)));
    assertEquals(Beaufort.ofForce(4), Beaufort.of(Speed.ofKnots(10.6)));
  }

  @Test
  void forecastsAreRead() {
    Map<String, Beaufort> texts =
        Map.of(
            "4", Beaufort.ofForce(4),
            "F4", Beaufort.ofForce(4),
            "force 10", Beaufort.ofForce(10),
            "4 or 5", Beaufort.ofForces(4, 5),
            "Force 4 or 5", Beaufort.ofForces(4, 5),
            "4-5", Beaufort.ofForces(4, 5),
            "3 to 5", Beaufort.ofForces(3, 5),
            "0", Beaufort.ofForce(0));
    texts.forEach((text, force) -> assertEquals(force, Beaufort.parse(text), text));
  }

  @Test
  void whatIsWrittenIsReadAgain() {
    for (int least = 0; least <= 12; least++) {
      for (int greatest = least; greatest <= 12; greatest++) {
        Beaufort range = Beaufort.ofForces(least, greatest);
        assertEquals(range, Beaufort.parse(range.toString()));
      }
    }
    assertEquals("4 or 5", Beaufort.ofForces(4, 5).toString());
    assertEquals("4 to 6", Beaufort.ofForces(4, 6).toString());
  }

  @Test
  void aRangeIsPlannedOnItsGreaterForce() {
    Beaufort forecast = Beaufort.parse("4 or 5");
    assertEquals(11, forecast.lowest().knots(), 1e-12);
    assertEquals(21, forecast.highest().orElseThrow().knots(), 1e-12);
    assertEquals(16, forecast.middle().knots(), 1e-12);
    assertEquals("moderate breeze to fresh breeze", forecast.words());
    assertEquals("calm", Beaufort.ofForce(0).words());
    assertEquals(64, Beaufort.ofForce(12).middle().knots(), 1e-12);
  }

  @Test
  void otherTextIsRefusedWithItsPlace() {
    for (String text : List.of("", "four", "13", "4 or", "4 and 5", "4 or 5 later", "123")) {
      assertThrows(TextFormatException.class, () -> Beaufort.parse(text), text);
    }
    TextFormatException wrong =
        assertThrows(TextFormatException.class, () -> Beaufort.parse("5 or 4"));
    assertEquals(5, wrong.index());
    assertTrue(String.valueOf(wrong.getMessage()).contains("the higher force must come second"));
  }

  @Test
  void forcesOffTheScaleAreRefused() {
    assertEquals(
        "wind forces must be in [0, 12] and ascend, but were 4 and 13",
        assertThrows(IllegalArgumentException.class, () -> Beaufort.ofForces(4, 13)).getMessage());
    assertThrows(IllegalArgumentException.class, () -> Beaufort.ofForces(5, 4));
    assertThrows(IllegalArgumentException.class, () -> Beaufort.ofForce(-1));
  }

  @Test
  void halfAKnotGoesUpAtEveryForce() {
    double[] first = {1, 4, 7, 11, 17, 22, 28, 34, 41, 48, 56, 64};
    for (int force = 1; force <= 12; force++) {
      double half = first[force - 1] - 0.5;
      assertEquals(Beaufort.ofForce(force), Beaufort.of(Speed.ofKnots(half)));
      assertEquals(Beaufort.ofForce(force - 1), Beaufort.of(Speed.ofKnots(half - 0.01)));
    }
  }

  @Test
  void aRefusalQuotesTheTextAsGiven() {
    assertEquals(
        true,
        String.valueOf(
                assertThrows(IllegalArgumentException.class, () -> Beaufort.parse("Force 4 OR x"))
                    .getMessage())
            .endsWith("of \"Force 4 OR x\""));
  }
}
