package org.ferryglide.tide.height;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.ferryglide.nav.note.Note;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeanRangesTest {
  /** Mean ranges of a standard port; common practice, no source. */
  private static final MeanRanges PUBLISHED = new MeanRanges(ofMetres(6.0), ofMetres(3.2));

  @ParameterizedTest
  @CsvSource({
    "6.0, 1",
    "3.2, 0",
    "4.6, 0.5",
    // published: "0.1" for 0.5 of 2.8 below springs, which is 0.1786, rounded down hard
    "5.5, 0.821429",
    // the fraction that a published sailing article uses for a stream of 1.6 knots
    "4.8, 0.571429",
    // beyond both on the same straight line
    "7.4, 1.5",
    "1.8, -0.5"
  })
  void aRangeHasItsPlaceBetweenNeapsAndSprings(double range, double fraction) {
    assertEquals(fraction, PUBLISHED.springFraction(ofMetres(range)), 5e-7); // half a printed digit
  }

  @Test
  void levelsGiveTheRangesBetweenThem() {
    MeanRanges ranges =
        MeanRanges.ofLevels(ofMetres(4.2), ofMetres(3.4), ofMetres(1.1), ofMetres(0.4));
    assertEquals(3.8, ranges.spring().metres(), 1e-12);
    assertEquals(2.3, ranges.neap().metres(), 1e-12);
  }

  @Test
  void aRangeBeyondSpringsOrNeapsIsNoted() {
    assertEquals(List.of(), PUBLISHED.notesFor(ofMetres(6.0)));
    assertEquals(List.of(), PUBLISHED.notesFor(ofMetres(3.2)));
    Note beyond = PUBLISHED.notesFor(ofMetres(6.4)).get(0);
    assertEquals("tide.beyond-springs", beyond.code());
    assertEquals("6.4", beyond.data().get("rangeMetres"));
    assertEquals("6.0", beyond.data().get("springRangeMetres"));
    assertEquals("tide.below-neaps", PUBLISHED.notesFor(ofMetres(3.0)).get(0).code());
  }

  @Test
  void aSpringRangeThatIsNotTheLargerIsRefused() {
    assertEquals(
        "spring range must be above the neap range of 3.0 metres, but was 3.0",
        assertThrows(
                IllegalArgumentException.class, () -> new MeanRanges(ofMetres(3.0), ofMetres(3.0)))
            .getMessage());
    assertEquals(
        "neap range must be a finite number of metres, at least 0, but was -1.0",
        assertThrows(
                IllegalArgumentException.class, () -> new MeanRanges(ofMetres(3.0), ofMetres(-1.0)))
            .getMessage());
  }
}
