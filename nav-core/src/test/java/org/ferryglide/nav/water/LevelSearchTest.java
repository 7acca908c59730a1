package org.ferryglide.nav.water;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.ferryglide.nav.measure.TimeSpan;
import org.junit.jupiter.api.Test;

class LevelSearchTest {
  /** The search ends this close, seconds. */
  private static final double A_MILLISECOND = 1e-3;

  private static final double PERIOD_SECONDS = 12.0 * 3600.0;

  /** A sine about 3 m, 2 m high and low, that counts how often it is asked. */
  private static class Sine implements WaterLevel {
    private static final long serialVersionUID = 1L;
    final AtomicInteger asked = new AtomicInteger();

    @Override
    public double heightMetres(double epochSeconds) {
      asked.incrementAndGet();
      return 3.0 + 2.0 * Math.sin(2.0 * Math.PI * epochSeconds / PERIOD_SECONDS);
    }

    @Override
    public String datum() {
      return "chart datum";
    }
  }

  /** The same, whose slope is known. */
  private static final class Steady extends Sine {
    private static final long serialVersionUID = 1L;

    @Override
    public double greatestSlopeMetresPerSecond(double fromSeconds, double toSeconds) {
      return 4.0 * Math.PI / PERIOD_SECONDS;
    }
  }

  private static Instant at(double seconds) {
    return Instant.ofEpochMilli(Math.round(seconds * 1e3));
  }

  /** sin = 1/2 from a twelfth of the period until five twelfths, known without any search. */
  @Test
  void windowsOpenAndCloseWhereTheClosedFormHasThem() {
    for (Sine level : List.of(new Sine(), new Steady())) {
      Found<Window> found = level.windowsAtLeast(ofMetres(4.0), at(0), at(2.0 * PERIOD_SECONDS));
      assertEquals(2, found.items().size());
      for (int i = 0; i < 2; i++) {
        Window window = found.items().get(i);
        double start = PERIOD_SECONDS * (i + 1.0 / 12.0);
        assertEquals(start, window.from().toEpochMilli() / 1e3, 2.0 * A_MILLISECOND);
        double end = PERIOD_SECONDS * (i + 5.0 / 12.0);
        assertEquals(end, window.until().toEpochMilli() / 1e3, 2.0 * A_MILLISECOND);
        assertFalse(window.openBefore() || window.openAfter());
      }
      assertTrue(found.isWhole());
      assertTrue(level.windowsAtLeast(ofMetres(5.1), at(0), at(PERIOD_SECONDS)).isNever());
      Window all = level.windowsAtLeast(ofMetres(0.9), at(0), at(PERIOD_SECONDS)).items().get(0);
      assertTrue(all.openBefore() && all.openAfter());
    }
  }

  @Test
  void aBoundOfTheSlopeSavesMostLooks() {
    Sine often = new Sine();
    Sine seldom = new Steady();
    often.windowsAtLeast(ofMetres(4.0), at(0), at(2.0 * PERIOD_SECONDS));
    seldom.windowsAtLeast(ofMetres(4.0), at(0), at(2.0 * PERIOD_SECONDS));
    assertTrue(seldom.asked.get() * 5 < often.asked.get(), () -> seldom.asked + " " + often.asked);
  }

  @Test
  void whatCannotBeSeenIsToldAndOpensAWindowBothWays() {
    WaterLevel level =
        new Sine() {
          private static final long serialVersionUID = 1L;

          @Override
          public double heightMetres(double epochSeconds) {
            boolean hole = epochSeconds >= 7200.0 && epochSeconds < 10_800.0;
            return hole ? Double.NaN : super.heightMetres(epochSeconds);
          }
        };
    Found<Window> found = level.windowsAtLeast(ofMetres(4.0), at(0), at(PERIOD_SECONDS));
    assertFalse(found.isWhole());
    assertEquals(2, found.items().size());
    assertTrue(found.items().get(0).openAfter());
    assertTrue(found.items().get(1).openBefore());
    assertEquals(2, found.seen().size());
    assertEquals(7200.0, found.seen().get(0).until().toEpochMilli() / 1e3, 2.0 * A_MILLISECOND);
    assertEquals(10_800.0, found.seen().get(1).from().toEpochMilli() / 1e3, 2.0 * A_MILLISECOND);
  }

  @Test
  void depthsAreAskedOnTheirOwnDatum() {
    Sine level = new Sine();
    ChartedDepth bar = ChartedDepth.ofDryingHeight(ofMetres(3.0), "chart datum");
    assertEquals(
        level.windowsAtLeast(ofMetres(4.0), at(0), at(PERIOD_SECONDS)).items(),
        level.windowsOver(bar, ofMetres(0.6), ofMetres(0.4), at(0), at(PERIOD_SECONDS)).items());
    ChartedDepth other = ChartedDepth.ofDryingHeight(ofMetres(3.0), "mean sea level");
    assertThrows(
        IllegalArgumentException.class,
        () -> level.windowsOver(other, ofMetres(1), ofMetres(0), at(0), at(1)));
    assertThrows(
        IllegalArgumentException.class, () -> level.windowsAtLeast(ofMetres(1), at(1), at(0)));
    assertEquals(
        List.of(TimeSpan.of(at(5), at(5))), level.windowsAtLeast(ofMetres(9), at(5), at(5)).seen());
  }

  /** A level that knows its turns but not where its data end: it falls before they do. */
  @Test
  void aPassingBeforeAGapInAStretchBetweenTurnsIsFound() {
    WaterLevel level =
        new Sine() {
          private static final long serialVersionUID = 1L;

          @Override
          public double heightMetres(double epochSeconds) {
            return epochSeconds > 0.6 * PERIOD_SECONDS
                ? Double.NaN
                : super.heightMetres(epochSeconds);
          }

          @Override
          public Optional<double[]> turnsBetween(double fromSeconds, double untilSeconds) {
            return Optional.of(new double[] {0.25 * PERIOD_SECONDS, 0.75 * PERIOD_SECONDS});
          }
        };
    Found<Window> found = level.windowsAtLeast(ofMetres(3.0), at(1.0), at(PERIOD_SECONDS));
    assertEquals(1, found.items().size());
    assertFalse(found.items().get(0).openAfter());
    assertEquals(
        0.5 * PERIOD_SECONDS,
        found.items().get(0).span().until().toEpochMilli() / 1e3,
        2.0 * A_MILLISECOND);
  }
}
