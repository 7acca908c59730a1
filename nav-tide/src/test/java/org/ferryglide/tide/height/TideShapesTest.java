package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TideShapesTest {

  /** The rule itself; common practice. */
  @ParameterizedTest
  @CsvSource({"0, 0", "1, 1", "2, 3", "3, 6", "4, 9", "5, 11", "6, 12"})
  void twelfthsAreThoseOfTheRuleAtTheSixths(int sixths, int twelfths) {
    assertEquals(twelfths / 12.0, TideShapes.twelfths(sixths / 6.0), Math.ulp(1.0));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "1, 0.0670", "2, 0.25", "3, 0.5", "4, 0.75", "5, 0.9330", "6, 1"})
  void theCosineAtTheSixthsIsTheTextbookOne(int sixths, double passed) {
    assertEquals(passed, TideShapes.cosine(sixths / 6.0), 0.00005); // half a printed digit
  }

  @Test
  void beyondTheIntervalTwelfthsStayAtTheNearerEnd() {
    assertEquals(0.0, TideShapes.twelfths(-0.5));
    assertEquals(0.0, TideShapes.twelfths(-0.0));
    assertEquals(1.0, TideShapes.twelfths(1.5));
    assertEquals(1.0, TideShapes.twelfths(Double.POSITIVE_INFINITY));
  }

  @Test
  void nanComesThrough() {
    assertEquals(Double.NaN, TideShapes.twelfths(Double.NaN));
    assertEquals(Double.NaN, TideShapes.twelfthsSlope(Double.NaN));
    assertEquals(Double.NaN, TideShapes.cosine(Double.NaN));
    assertEquals(Double.NaN, TideShapes.cosineSlope(Double.NaN));
  }

  @Test
  void aCornerHasTheSlopeAfterIt() {
    assertEquals(0.5, TideShapes.twelfthsSlope(0.0), 1e-12);
    assertEquals(1.0, TideShapes.twelfthsSlope(1.0 / 6.0), 1e-12);
    assertEquals(1.5, TideShapes.twelfthsSlope(0.5), 1e-12);
    assertEquals(0.5, TideShapes.twelfthsSlope(1.0), 1e-12);
  }
}
