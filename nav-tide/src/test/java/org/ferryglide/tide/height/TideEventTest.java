package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.tide.height.TideEvent.Kind;
import org.junit.jupiter.api.Test;

class TideEventTest {
  private static final Instant TIME = Instant.parse("2026-06-01T09:30:00Z");

  @Test
  void highAndLowAreEachOthersOpposite() {
    assertTrue(TideEvent.high(TIME, Distance.ofMetres(4.2)).isHigh());
    assertFalse(TideEvent.low(TIME, Distance.ofMetres(0.7)).isHigh());
    assertEquals(Kind.LOW, Kind.HIGH.opposite());
    assertEquals(Kind.HIGH, Kind.LOW.opposite());
  }

  @Test
  void negativeZeroIsTheSameHeightAsZero() {
    assertEquals(
        TideEvent.low(TIME, Distance.ofMetres(0.0)), TideEvent.low(TIME, Distance.ofMetres(-0.0)));
  }
}
