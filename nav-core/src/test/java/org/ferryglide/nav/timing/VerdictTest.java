package org.ferryglide.nav.timing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class VerdictTest {
  @Test
  void theMarginIsAShareOfTheStepFromStopToWarning() {
    Verdict within = Verdict.of("depth", 1.2, "metres", 1.0, 0.5);
    assertEquals(Verdict.Answer.WITHIN, within.answer());
    assertEquals(1.4, within.margin().orElseThrow(), 1e-12);
    Verdict warned = Verdict.of("depth", 0.75, "metres", 1.0, 0.5);
    assertEquals(Verdict.Answer.WARNED, warned.answer());
    assertEquals(0.5, warned.margin().orElseThrow(), 1e-12);
    assertEquals("depth: 0.75 metres, beyond 1, where it warns", warned.message());
    Verdict stopped = Verdict.of("depth", 0.4, "metres", 1.0, 0.5);
    assertEquals(Verdict.Answer.STOPPED, stopped.answer());
    assertEquals(-0.2, stopped.margin().orElseThrow(), 1e-12);
    assertEquals("depth: 0.4 metres, beyond the limit of 0.5", stopped.message());
  }

  @Test
  void aFigureThatShouldBeSmallHasItsLimitsTheOtherWayRound() {
    assertEquals(Verdict.Answer.WITHIN, Verdict.of("stream", 1.0, "knots", 1.5, 3.0).answer());
    assertEquals(Verdict.Answer.WARNED, Verdict.of("stream", 2.25, "knots", 1.5, 3.0).answer());
    assertEquals(0.5, Verdict.of("stream", 2.25, "knots", 1.5, 3.0).margin().orElseThrow());
    assertEquals(Verdict.Answer.STOPPED, Verdict.of("stream", 3.1, "knots", 1.5, 3.0).answer());
  }

  @Test
  void aFigureOnALimitIsNotBeyondIt() {
    assertEquals(Verdict.Answer.WITHIN, Verdict.of("x", 1.0, "units", 1.0, 0.0).answer());
    assertEquals(Verdict.Answer.WARNED, Verdict.of("x", 0.0, "units", 1.0, 0.0).answer());
  }

  @Test
  void whatWasNotCheckedHasNoFigureAndDoesNotHold() {
    Verdict not = Verdict.notChecked("stream", "no stream is known there and then");
    assertFalse(not.holds());
    assertTrue(not.figure().isEmpty());
    assertTrue(not.margin().isEmpty());
    assertEquals(
        "stream: not checked, no stream is known there and then, at 2026-06-01T00:00:00Z, near"
            + " 50°00.0'N 004°00.0'W",
        not.at(Instant.parse("2026-06-01T00:00:00.9Z")).at(Position.ofDegrees(50, -4)).message());
  }

  @Test
  void limitsThatAreOneAndFiguresThatAreNoneAreRefused() {
    assertEquals(
        "the limits of depth must be two different finite numbers of metres, but the one that warns"
            + " was 1.0 and the one that stops 1.0",
        assertThrows(
                IllegalArgumentException.class, () -> Verdict.of("depth", 1, "metres", 1.0, 1.0))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> Verdict.of("depth", Double.NaN, "metres", 1.0, 0.5));
    assertThrows(
        IllegalArgumentException.class,
        () -> Condition.of("depth", "metres", 1.0, Double.NaN, passage -> 1.0));
  }
}
