package org.ferryglide.nav.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.ferryglide.nav.note.TextFormatException;
import org.junit.jupiter.api.Test;

class TimeSpanTest {
  private static final Instant NINE = Instant.parse("2026-06-01T09:00:00Z");

  private static TimeSpan hours(int from, int until) {
    return TimeSpan.of(NINE.plus(Duration.ofHours(from)), NINE.plus(Duration.ofHours(until)));
  }

  @Test
  void aSpanThatEndsBeforeItBeginsIsRefusedByBothEnds() {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> hours(1, 0));
    assertEquals(
        "a span must not end before it begins, but was from 2026-06-01T10:00:00Z until"
            + " 2026-06-01T09:00:00Z",
        refused.getMessage());
  }

  @Test
  void bothEndsBelongToTheSpan() {
    assertTrue(hours(0, 2).contains(NINE));
    assertTrue(hours(0, 2).contains(NINE.plus(Duration.ofHours(2))));
    assertFalse(hours(0, 2).contains(NINE.minusNanos(1)));
    assertFalse(hours(0, 2).contains(NINE.plus(Duration.ofHours(2)).plusNanos(1)));
  }

  @Test
  void theOverlapIsWhatBothHold() {
    assertEquals(Optional.of(hours(1, 2)), hours(0, 2).overlap(hours(1, 5)));
    assertEquals(Optional.of(hours(1, 2)), hours(1, 5).overlap(hours(0, 2)));
    assertEquals(Optional.of(hours(2, 2)), hours(0, 2).overlap(hours(2, 5)));
    assertEquals(Optional.empty(), hours(0, 1).overlap(hours(2, 5)));
    assertTrue(hours(0, 5).contains(hours(1, 5)));
    assertFalse(hours(1, 5).contains(hours(0, 5)));
  }

  @Test
  void whatIsPrintedIsReadBack() {
    TimeSpan span = TimeSpan.of(NINE.plusNanos(1), Duration.ofMinutes(90));
    assertEquals("2026-06-01T09:00:00.000000001Z/2026-06-01T10:30:00.000000001Z", span.toString());
    assertEquals(span, TimeSpan.parse(span.toString()));
    assertEquals(Duration.ofMinutes(90), span.duration());
  }

  @Test
  void otherTextIsRefusedAtTheCharacter() {
    assertEquals(
        20, refusedAt("2026-06-01T09:00:00Z"), "the slash is missing at the end of the text");
    assertEquals(21, refusedAt("2026-06-01T09:00:00Z/noon"));
    assertEquals(21, refusedAt("2026-06-01T09:00:00Z/2026-06-01T08:00:00Z"));
  }

  private static int refusedAt(String text) {
    return assertThrows(TextFormatException.class, () -> TimeSpan.parse(text)).index();
  }
}
