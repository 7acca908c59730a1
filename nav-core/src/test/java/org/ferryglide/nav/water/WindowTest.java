package org.ferryglide.nav.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.ferryglide.nav.measure.TimeSpan;
import org.junit.jupiter.api.Test;

class WindowTest {
  private static final Instant NINE = Instant.parse("2026-06-01T09:00:20Z");
  private static final Instant TEN = Instant.parse("2026-06-01T10:00:40Z");
  private static final Window WINDOW = Window.of(NINE, TEN);

  @Test
  void aWindowHoldsItsEnds() {
    assertTrue(WINDOW.contains(NINE));
    assertTrue(WINDOW.contains(TEN));
    assertFalse(WINDOW.contains(TEN.plusNanos(1)));
    assertFalse(WINDOW.contains(NINE.minusNanos(1)));
    assertEquals(Duration.ofSeconds(3620), WINDOW.duration());
    assertThrows(IllegalArgumentException.class, () -> Window.of(TEN, NINE));
  }

  @Test
  void onlyKnownEndsAreShrunk() {
    Duration margin = Duration.ofMinutes(10);
    assertEquals(
        Optional.of(Window.of(NINE.plus(margin), TEN.minus(margin))), WINDOW.shrunkBy(margin));
    Window openBefore = new Window(TimeSpan.of(NINE, TEN), true, false);
    assertEquals(NINE, openBefore.shrunkBy(margin).get().from());
    assertEquals(TEN.minus(margin), openBefore.shrunkBy(margin).get().until());
    assertTrue(openBefore.shrunkBy(margin).get().openBefore());
    Window openAfter = new Window(TimeSpan.of(NINE, TEN), false, true);
    assertEquals(NINE.plus(margin), openAfter.shrunkBy(margin).get().from());
    assertEquals(TEN, openAfter.shrunkBy(margin).get().until());
    assertEquals(Optional.empty(), WINDOW.shrunkBy(Duration.ofMinutes(31)));
    assertThrows(IllegalArgumentException.class, () -> WINDOW.shrunkBy(Duration.ofSeconds(-1)));
  }

  @Test
  void wholeMinutesLieInside() {
    assertEquals(
        Optional.of(
            Window.of(
                Instant.parse("2026-06-01T09:01:00Z"), Instant.parse("2026-06-01T10:00:00Z"))),
        WINDOW.inWholeMinutes());
    assertEquals(Optional.empty(), Window.of(NINE, NINE.plusSeconds(45)).inWholeMinutes());
  }
}
