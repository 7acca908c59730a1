package org.ferryglide.nav.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class WaterTest {
  private static final Position PLACE = Position.ofDegrees(50, -5);
  private static final Instant TIME = Instant.parse("2026-06-01T09:30:00.25Z");

  @Test
  void aSteadyStreamIsTheSameEverywhereAndAlways() {
    StreamField field = StreamField.steady(Velocity.ofEastAndNorth(1, -2));
    assertEquals(Optional.of(Velocity.ofEastAndNorth(1, -2)), field.at(PLACE, TIME));
    assertTrue(field.isUniform());
    assertEquals(Double.POSITIVE_INFINITY, field.nextSeamAfter(0));
    double[] out = new double[3];
    assertTrue(field.sample(0, 0, 0, out, 1));
    assertEquals(1.0, out[1]);
    assertEquals(-2.0, out[2]);
    assertFalse(field.sample(Double.NaN, 0, 0, out, 1));
  }

  @Test
  void aFieldWithoutDataIsEmptyAndNotSlack() {
    StreamField nowhere = (latitude, longitude, seconds, out, offset) -> false;
    assertEquals(Optional.empty(), nowhere.at(PLACE, TIME));
    assertEquals(Optional.of(Velocity.STILL), StreamField.slack().at(PLACE, TIME));
    assertEquals(Optional.empty(), nowhere.maxRate());
    assertFalse(nowhere.isUniform());
    assertEquals(FlowExplanation.NONE, nowhere.explain(PLACE, TIME));
  }

  @Test
  void instantsAndSecondsGoBackAndForth() {
    assertEquals(1780306200.25, EpochSeconds.of(TIME));
    assertEquals(TIME, EpochSeconds.toInstant(EpochSeconds.of(TIME)));
    assertEquals(Instant.EPOCH.minusMillis(1500), EpochSeconds.toInstant(-1.5));
    assertThrows(IllegalArgumentException.class, () -> EpochSeconds.toInstant(Double.NaN));
  }
}
