package org.ferryglide.nav.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.junit.jupiter.api.Test;

class FoundTest {
  private static final Note ROUGH = Note.caution("stream.rough-rule", "A rule of thumb.");

  private static Instant hour(int hour) {
    return Instant.parse("2026-06-01T00:00:00Z").plus(Duration.ofHours(hour));
  }

  private static TimeSpan hours(int from, int until) {
    return TimeSpan.of(hour(from), hour(until));
  }

  @Test
  void neverIsSaidOnlyOfATimeThatWasAllSeen() {
    Found<String> never = Found.of(List.of(), hours(0, 12), List.of(hours(0, 12)), List.of());
    assertTrue(never.isEmpty());
    assertTrue(never.isNever());
    assertEquals(List.of(), never.unseen());
    assertEquals(List.of(), never.notes());
    assertEquals(Found.Stopped.AT_END, never.stopped());

    Found<String> unknown = Found.of(List.of(), hours(0, 12), List.of(), List.of());
    assertTrue(unknown.isEmpty());
    assertFalse(unknown.isNever());
    assertEquals(List.of(hours(0, 12)), unknown.unseen());
    assertEquals(Found.Stopped.NO_DATA, unknown.stopped());
    assertEquals(
        "There are no data for any of the time asked, from 2026-06-01T00:00:00Z until"
            + " 2026-06-01T12:00:00Z.",
        unknown.notes().get(0).text());
  }

  @Test
  void whatWasNotSeenIsToldBetweenAndAtTheEnds() {
    Found<String> found =
        Found.of(
            List.of("a", "b"),
            hours(0, 12),
            List.of(hours(1, 3), hours(3, 4), hours(6, 12)),
            List.of(ROUGH));
    assertEquals(List.of(hours(0, 1), hours(4, 6)), found.unseen());
    assertEquals(Found.Stopped.AT_END, found.stopped());
    assertFalse(found.isWhole());
    assertEquals(Duration.ofHours(9), found.seenInAll());
    assertEquals("search.not-seen", found.notes().get(0).code());
    assertEquals("2026-06-01T01:00:00Z", found.notes().get(0).data().get("until"));
    assertEquals(ROUGH, found.notes().get(1));
    assertEquals(
        "There are no data for part of the time asked, in 2 spans, the first from"
            + " 2026-06-01T00:00:00Z until 2026-06-01T01:00:00Z.",
        found.notes().get(0).text());
  }

  @Test
  void dataThatEndEarlyAreTheReasonItStopped() {
    Found<String> found = Found.of(List.of(), hours(0, 12), List.of(hours(0, 11)), List.of());
    assertEquals(Found.Stopped.NO_DATA, found.stopped());
    assertEquals("[], not seen [" + hours(11, 12) + "]", found.toString());
  }

  @Test
  void theFirstFewAreEnough() {
    Found<String> found =
        Found.of(List.of("a", "b", "c"), hours(0, 12), List.of(hours(0, 12)), List.of(ROUGH));
    assertEquals(Optional.of("a"), found.first());
    assertEquals(List.of("a", "b"), found.first(2).items());
    assertEquals(Found.Stopped.ENOUGH, found.first(2).stopped());
    assertEquals(found, found.first(3));
    assertEquals(Optional.empty(), found.filter(item -> item.equals("d")).first());
    assertEquals(List.of(1, 1, 1), found.map(String::length).items());
    assertEquals(List.of(ROUGH), found.map(String::length).notes());
    assertThrows(IllegalArgumentException.class, () -> found.first(-1));
    StringBuilder all = new StringBuilder();
    for (String item : found) {
      all.append(item);
    }
    assertEquals("abc", all.toString());
  }

  @Test
  void spansOutOfOrderOrOutsideAreRefused() {
    for (List<TimeSpan> seen :
        List.of(
            List.of(hours(5, 6), hours(1, 2)),
            List.of(hours(0, 13)),
            List.of(hours(-1, 2)),
            List.of(hours(0, 3), hours(2, 4)))) {
      assertThrows(
          IllegalArgumentException.class,
          () -> Found.of(List.<String>of(), hours(0, 12), seen, List.of()));
    }
  }
}
