package org.ferryglide.tide.height;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.time.LocalTime;
import java.util.List;
import java.util.function.Supplier;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.stream.Shoreline;
import org.junit.jupiter.api.Test;

/** What is built alike is equal, what is built otherwise is not, and all print in a few words. */
class ValuesAreEqualTest {
  private static void check(Supplier<Object> made, Object other) {
    Object value = made.get();
    assertEquals(value, made.get());
    assertEquals(value.hashCode(), made.get().hashCode());
    assertNotEquals(value, other);
    assertNotEquals(value, "");
    assertFalse(value.toString().contains("@"), value.toString());
  }

  @Test
  void correctionsAreValues() {
    check(() -> HeightCorrection.ratio(0.9), HeightCorrection.ratio(0.8));
    check(
        () ->
            HeightCorrection.betweenLevels(
                ofMetres(4.2), ofMetres(1.1), ofMetres(3.4), ofMetres(0.8)),
        HeightCorrection.betweenLevels(ofMetres(4.2), ofMetres(1.1), ofMetres(3.4), ofMetres(0.7)));
    LocalTime six = LocalTime.of(6, 0);
    check(
        () -> ClockDifferences.of(LocalTime.MIDNIGHT, 35).and(six, 23),
        ClockDifferences.of(LocalTime.MIDNIGHT, 35).and(six, 24));
  }

  @Test
  void shoresAreValues() {
    check(() -> shore(6.5), shore(6.6));
  }

  private static Shoreline shore(double west) {
    return Shoreline.of(
        List.of(
            List.of(
                Position.ofDegrees(57.0, -west),
                Position.ofDegrees(57.1, -6.0),
                Position.ofDegrees(56.9, -6.0))));
  }
}
