package org.ferryglide.tide.height;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.ChartedDepth;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.Window;
import org.junit.jupiter.api.Test;

class TideWindowsTest {
  private static final TideTable TABLE =
      Tables.ofHours("Skarra", 0, 1.0, 6, 5.0, 12, 1.0, 18, 5.0, 24, 1.0);

  /** Straight lines at even tides: the twelfths pass 2 m (three twelfths) at two hours. */
  private static final TideCurve TWELFTHS = TableCurve.twelfths(TABLE);

  private static void assertHour(double hour, Instant time) {
    assertTrue(
        Duration.between(Tables.atHour(hour), time).abs().toMillis() <= 1,
        "expected hour " + hour + " but was " + time);
  }

  private static List<String> codes(Found<Window> windows) {
    return windows.notes().stream().map(Note::code).toList();
  }

  @Test
  void everyTideOpensAWindow() {
    Found<Window> windows =
        TWELFTHS.windowsAtLeast(ofMetres(2.0), Tables.atHour(0), Tables.atHour(24));
    assertEquals(2, windows.items().size());
    assertHour(2, windows.items().get(0).from());
    assertHour(10, windows.items().get(0).until());
    assertHour(14, windows.items().get(1).from());
    assertHour(22, windows.items().get(1).until());
    assertEquals(List.of("tide.twelfths"), codes(windows));
  }

  @Test
  void windowsThatTheSearchCutsSaySo() {
    Found<Window> below =
        TWELFTHS.windowsAtMost(ofMetres(2.0), Tables.atHour(1), Tables.atHour(23));
    assertEquals(3, below.items().size());
    Window first = below.items().get(0);
    assertTrue(first.openBefore());
    assertFalse(first.openAfter());
    assertEquals(Tables.atHour(1), first.from());
    Window last = below.items().get(2);
    assertFalse(last.openBefore());
    assertTrue(last.openAfter());
    assertEquals(Tables.atHour(23), last.until());
  }

  @Test
  void aLevelNeverReachedHasNoWindowAndOneNeverLeftIsOneWindow() {
    Instant from = Tables.atHour(0);
    Instant to = Tables.atHour(24);
    assertEquals(List.of(), TWELFTHS.windowsAtLeast(ofMetres(5.1), from, to).items());
    assertEquals(
        List.of(new Window(TimeSpan.of(from, to), true, true)),
        TWELFTHS.windowsAtMost(ofMetres(5.1), from, to).items());
    assertTrue(Tables.crossings(TWELFTHS, 5.1, from, to).isEmpty());
  }

  @Test
  void aLevelOnlyTouchedIsNeitherPassedNorAWindow() {
    Instant from = Tables.atHour(0);
    Instant to = Tables.atHour(24);
    for (TideCurve curve : Tables.curvesThrough(TABLE)) {
      assertTrue(Tables.crossings(curve, 5.0, from, to).isEmpty(), curve::toString);
      assertEquals(
          List.of(), curve.windowsAtLeast(ofMetres(5.0), from, to).items(), curve::toString);
      assertEquals(1, curve.windowsAtMost(ofMetres(5.0), from, to).items().size(), curve::toString);
    }
  }

  @Test
  void theTideGoesUpAndDownThroughALevelInTurn() {
    List<TideCrossing> times =
        Tables.crossings(TWELFTHS, 2.0, Tables.atHour(0), Tables.atHour(24)).items();
    assertEquals(
        List.of(true, false, true, false), times.stream().map(TideCrossing::rising).toList());
    assertHour(2, times.get(0).time());
  }

  @Test
  void aSearchBeyondTheDataIsCutAndSaysSo() {
    Found<Window> windows =
        TWELFTHS.windowsAtLeast(ofMetres(2.0), Tables.atHour(-5), Tables.atHour(30));
    assertEquals(2, windows.items().size());
    assertEquals(List.of("search.not-seen", "tide.twelfths"), codes(windows));
    assertEquals(List.of(TimeSpan.of(Tables.atHour(0), Tables.atHour(24))), windows.seen());
    assertEquals(2, windows.unseen().size());
  }

  @Test
  void aSearchWithoutAnyDataFindsNothingAndSaysSo() {
    Found<Window> windows =
        TWELFTHS.windowsAtMost(ofMetres(9.0), Tables.atHour(30), Tables.atHour(40));
    assertEquals(List.of(), windows.items());
    assertEquals("search.not-seen", windows.notes().get(0).code());
    assertEquals(List.of(), windows.seen());
    assertTrue(Tables.crossings(TWELFTHS, 2.0, Tables.atHour(30), Tables.atHour(40)).isEmpty());
  }

  @Test
  void aSearchThatRunsBackwardsIsRefused() {
    assertEquals(
        "a span must not end before it begins, but was from 2026-06-01T02:00:00Z until"
            + " 2026-06-01T01:00:00Z",
        assertThrows(
                IllegalArgumentException.class,
                () -> Tables.crossings(TWELFTHS, 2.0, Tables.atHour(2), Tables.atHour(1)))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> TWELFTHS.windowsAtMost(ofMetres(2.0), Tables.atHour(2), Tables.atHour(1)));
  }

  @Test
  void aLevelSeaIsAtItsLevelAllTheTime() {
    TideCurve still = TableCurve.cosine(Tables.ofHours("Lunna", 0, 1.0, 6, 1.0, 12, 1.0));
    Instant from = Tables.atHour(0);
    Instant to = Tables.atHour(12);
    assertEquals(1, still.windowsAtLeast(ofMetres(1.0), from, to).items().size());
    assertEquals(1, still.windowsAtMost(ofMetres(1.0), from, to).items().size());
    assertTrue(Tables.crossings(still, 1.0, from, to).isEmpty());
  }

  @Test
  void waterOverABarIsFromItsOwnDatum() {
    ChartedDepth bar = ChartedDepth.ofDryingHeight(ofMetres(1.6), "chart datum");
    Found<Window> over =
        TWELFTHS.windowsOver(
            bar, ofMetres(0.2), ofMetres(0.2), Tables.atHour(0), Tables.atHour(24));
    assertEquals(TWELFTHS.windowsAtLeast(ofMetres(2.0), Tables.atHour(0), Tables.atHour(24)), over);
    ChartedDepth other = ChartedDepth.ofDryingHeight(ofMetres(1.6), "mean level");
    assertThrows(
        IllegalArgumentException.class,
        () ->
            TWELFTHS.windowsOver(
                other, ofMetres(0.2), ofMetres(0.2), Tables.atHour(0), Tables.atHour(24)));
  }

  @Test
  void noDataIsNotNever() {
    assertTrue(
        TWELFTHS.windowsAtLeast(ofMetres(5.1), Tables.atHour(0), Tables.atHour(24)).isNever());
    assertFalse(
        TWELFTHS.windowsAtLeast(ofMetres(5.1), Tables.atHour(0), Tables.atHour(25)).isNever());
    assertFalse(Tables.crossings(TWELFTHS, 5.1, Tables.atHour(30), Tables.atHour(40)).isNever());
    assertFalse(TWELFTHS.extremes(Tables.atHour(30), Tables.atHour(40)).isNever());
    assertTrue(TWELFTHS.extremes(Tables.atHour(1), Tables.atHour(5)).isNever());
  }

  @Test
  void notesComeWithAnEmptyAnswerToo() {
    assertEquals(
        List.of("tide.twelfths"),
        codes(TWELFTHS.windowsAtLeast(ofMetres(5.1), Tables.atHour(0), Tables.atHour(24))));
  }
}
