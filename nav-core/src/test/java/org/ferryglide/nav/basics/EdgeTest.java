package org.ferryglide.nav.basics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class EdgeTest {

  @Test
  void theLastYesIsWithinWhatWasAskedOfTheFirstNo() {
    double edge = Edge.of(x -> x * x < 2.0, 1.0, 2.0, 1e-9);
    assertTrue(edge * edge < 2.0);
    assertEquals(Math.sqrt(2.0), edge, 1e-9);
    double down = Edge.of(x -> x * x >= 2.0, 2.0, 1.0, 1e-9);
    assertTrue(down * down >= 2.0);
    assertEquals(Math.sqrt(2.0), down, 1e-9);
  }

  @Test
  void halvingEndsBetweenNeighbours() {
    double edge = Edge.of(x -> x < 1.7e9 + 0.3, 1.7e9, 1.7e9 + 1.0, 0.0);
    assertEquals(Math.nextDown(1.7e9 + 0.3), edge);
  }

  @Test
  void secondsOfADurationAndBack() {
    assertEquals(-0.25, Seconds.of(Duration.ofMillis(-250)));
    assertEquals(Duration.ofMillis(-250), Seconds.toDuration(-0.25));
    assertEquals(Duration.ofNanos(1_000_000_001), Seconds.toDuration(1.000000001));
    assertEquals(3600.0, Seconds.of(Duration.ofHours(1)));
  }
}
