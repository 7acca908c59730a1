package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.note.Note;
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

  private static List<String> codes(TideWindows windows) {
    return windows.notes().stream().map(Note::code).toList();
  }

  @Test
  void everyTideOpensAWindow() {
    TideWindows windows = TWELFTHS.windowsAtLeast(2.0, Tables.atHour(0), Tables.atHour(24));
    assertEquals(2, windows.windows().size());
    assertHour(2, windows.windows().get(0).opens());
    assertHour(10, windows.windows().get(0).closes());
    assertHour(14, windows.windows().get(1).opens());
    assertHour(22, windows.windows().get(1).closes());
    assertEquals(16.0 * 3600.0, windows.totalLength().toMillis() / 1000.0, 0.004);
    assertEquals(List.of("tide.twelfths"), codes(windows));
  }

  @Test
  void windowsThatTheSearchCutsSaySo() {
    TideWindows below = TWELFTHS.windowsAtMost(2.0, Tables.atHour(1), Tables.atHour(23));
    assertEquals(3, below.windows().size());
    TideWindow first = below.windows().get(0);
    assertTrue(first.openedBefore());
    assertFalse(first.openAtEnd());
    assertEquals(Tables.atHour(1), first.opens());
    TideWindow last = below.windows().get(2);
    assertFalse(last.openedBefore());
    assertTrue(last.openAtEnd());
    assertEquals(Tables.atHour(23), last.closes());
  }

  @Test
  void aLevelNeverReachedHasNoWindowAndOneNeverLeftIsOneWindow() {
    Instant from = Tables.atHour(0);
    Instant to = Tables.atHour(24);
    assertEquals(List.of(), TWELFTHS.windowsAtLeast(5.1, from, to).windows());
    assertEquals(
        List.of(new TideWindow(from, to, true, true)),
        TWELFTHS.windowsAtMost(5.1, from, to).windows());
    assertEquals(List.of(), TWELFTHS.timesAt(5.1, from, to));
  }

  @Test
  void aLevelOnlyTouchedIsNeitherPassedNorAWindow() {
    Instant from = Tables.atHour(0);
    Instant to = Tables.atHour(24);
    for (TideCurve curve : Tables.curvesThrough(TABLE)) {
      assertEquals(List.of(), curve.timesAt(5.0, from, to), curve::toString);
      assertEquals(List.of(), curve.windowsAtLeast(5.0, from, to).windows(), curve::toString);
      assertEquals(1, curve.windowsAtMost(5.0, from, to).windows().size(), curve::toString);
    }
  }

  @Test
  void theTideGoesUpAndDownThroughALevelInTurn() {
    List<TideCrossing> times = TWELFTHS.timesAt(2.0, Tables.atHour(0), Tables.atHour(24));
    assertEquals(
        List.of(true, false, true, false), times.stream().map(TideCrossing::rising).toList());
    assertHour(2, times.get(0).time());
  }

  @Test
  void aSearchBeyondTheDataIsCutAndSaysSo() {
    TideWindows windows = TWELFTHS.windowsAtLeast(2.0, Tables.atHour(-5), Tables.atHour(30));
    assertEquals(2, windows.windows().size());
    assertEquals(List.of("tide.span", "tide.twelfths"), codes(windows));
    assertEquals("2026-06-01T00:00:00Z", windows.notes().get(0).data().get("from"));
    assertEquals("2026-06-02T00:00:00Z", windows.notes().get(0).data().get("to"));
  }

  @Test
  void aSearchWithoutAnyDataFindsNothingAndSaysSo() {
    TideWindows windows = TWELFTHS.windowsAtMost(9.0, Tables.atHour(30), Tables.atHour(40));
    assertEquals(List.of(), windows.windows());
    assertEquals("There are no tide data for the time asked.", windows.notes().get(0).text());
    assertEquals(List.of(), TWELFTHS.timesAt(2.0, Tables.atHour(30), Tables.atHour(40)));
  }

  @Test
  void aSearchThatRunsBackwardsIsRefused() {
    assertEquals(
        "end of a search must not be before its start, but start was 2026-06-01T02:00:00Z and end"
            + " 2026-06-01T01:00:00Z",
        assertThrows(
                IllegalArgumentException.class,
                () -> TWELFTHS.timesAt(2.0, Tables.atHour(2), Tables.atHour(1)))
            .getMessage());
    assertEquals(
        "level must be a finite number of metres, but was NaN",
        assertThrows(
                IllegalArgumentException.class,
                () -> TWELFTHS.timesAt(Double.NaN, Tables.atHour(1), Tables.atHour(2)))
            .getMessage());
  }

  @Test
  void aLevelSeaIsAtItsLevelAllTheTime() {
    TideCurve still = TableCurve.cosine(Tables.ofHours("Lunna", 0, 1.0, 6, 1.0, 12, 1.0));
    Instant from = Tables.atHour(0);
    Instant to = Tables.atHour(12);
    assertEquals(1, still.windowsAtLeast(1.0, from, to).windows().size());
    assertEquals(1, still.windowsAtMost(1.0, from, to).windows().size());
    assertEquals(List.of(), still.timesAt(1.0, from, to));
  }

  @Test
  void aWindowIsShrunkWhereItOpensAndClosesOnly() {
    TideWindow window = new TideWindow(Tables.atHour(2), Tables.atHour(10), false, true);
    assertEquals(
        Optional.of(new TideWindow(Tables.atHour(3), Tables.atHour(10), false, true)),
        window.shrunkBy(Duration.ofHours(1)));
    TideWindow whole = new TideWindow(Tables.atHour(2), Tables.atHour(10), false, false);
    assertEquals(Optional.empty(), whole.shrunkBy(Duration.ofHours(4)));
    assertEquals(
        "margin must not be negative, but was PT-1S",
        assertThrows(IllegalArgumentException.class, () -> whole.shrunkBy(Duration.ofSeconds(-1)))
            .getMessage());
  }

  @Test
  void aWindowHoldsBothItsEnds() {
    TideWindow window = new TideWindow(Tables.atHour(2), Tables.atHour(10), false, false);
    assertTrue(window.contains(Tables.atHour(2)));
    assertTrue(window.contains(Tables.atHour(10)));
    assertFalse(window.contains(Tables.atHour(10.001)));
    assertFalse(window.contains(Tables.atHour(1.999)));
    assertThrows(
        IllegalArgumentException.class,
        () -> new TideWindow(Tables.atHour(2), Tables.atHour(1), false, false));
  }

  @Test
  void wholeMinutesRoundToTheSafeSide() {
    TideWindow window =
        new TideWindow(
            Instant.parse("2026-06-01T06:20:00.001Z"),
            Instant.parse("2026-06-01T12:47:59.999Z"),
            false,
            true);
    assertEquals(
        Optional.of(
            new TideWindow(
                Instant.parse("2026-06-01T06:21:00Z"),
                Instant.parse("2026-06-01T12:47:00Z"),
                false,
                true)),
        window.inWholeMinutes());
    TideWindow whole = new TideWindow(Tables.atHour(2), Tables.atHour(10), false, false);
    assertEquals(Optional.of(whole), whole.inWholeMinutes());
    TideWindow brief =
        new TideWindow(
            Instant.parse("2026-06-01T06:20:01Z"),
            Instant.parse("2026-06-01T06:21:59Z"),
            false,
            false);
    assertEquals(Optional.empty(), brief.inWholeMinutes());
  }
}
