package org.ferryglide.tide.stream;

import static org.ferryglide.tide.stream.StreamSamples.afterHigh;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.AdjustedStream;
import org.ferryglide.nav.water.Explanation;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

class AdjustedStreamTest {
  private static final double ROUNDING = 1e-12;
  private static final HourlyStream STREAM =
      StreamSamples.table().boundTo(StreamSamples.tides(5.0, 745));
  private static final Velocity DRIFT =
      Velocity.ofSetAndRate(TrueBearing.ofDegrees(90), Speed.ofKnots(0.3));

  @Test
  void aQuarterStrongerAndTwentyMinutesLateIsOneCall() {
    AdjustedStream worse = AdjustedStream.of(STREAM, 1.25, Duration.ofMinutes(20));
    Velocity predicted = STREAM.at(afterHigh(2)).get();
    Velocity adjusted = worse.at(StreamSamples.SKARRA, afterHigh(2 + 1 / 3.0)).get();
    assertEquals(1.25 * predicted.eastMetresPerSecond(), adjusted.eastMetresPerSecond(), ROUNDING);
    assertEquals(
        1.25 * predicted.northMetresPerSecond(), adjusted.northMetresPerSecond(), ROUNDING);
    assertEquals(1.25 * 3.0, worse.maxRate().get().knots(), 1e-9);
    assertTrue(worse.isUniform());
  }

  @Test
  void breakPointsMoveAlong() {
    AdjustedStream late = AdjustedStream.of(STREAM, 1, Duration.ofMinutes(20));
    double high = EpochSeconds.of(afterHigh(0));
    assertEquals(high + 1200, late.nextBreakAfter(high));
    assertEquals(high + 1200 + 3600, late.nextBreakAfter(high + 1200));
  }

  @Test
  void theAdjustmentIsNoted() {
    AdjustedStream early = AdjustedStream.of(STREAM, 0.9, Duration.ofMinutes(-10));
    Explanation explanation = early.explain(StreamSamples.SKARRA, afterHigh(2));
    assertEquals("Skarra Sound", explanation.sources().get(0).name());
    Note note = explanation.notes().get(explanation.notes().size() - 1);
    assertEquals("stream.adjusted", note.code());
    assertEquals(
        "The predicted stream is taken 0.9 times as strong and 10.0 minutes earlier.", note.text());
  }

  @Test
  void noDataStayNoData() {
    AdjustedStream late = AdjustedStream.of(STREAM, 1.25, Duration.ofMinutes(20));
    assertFalse(late.at(StreamSamples.SKARRA, afterHigh(-6)).isPresent());
    assertTrue(late.at(StreamSamples.SKARRA, afterHigh(-5.6)).isPresent());
    assertEquals(
        "factor must be a finite number of times the predicted rate, but was NaN",
        assertThrows(
                IllegalArgumentException.class,
                () -> AdjustedStream.of(STREAM, Double.NaN, Duration.ZERO))
            .getMessage());
  }

  @Test
  void streamsAdd() {
    StreamField both = StreamField.sum(List.of(STREAM, StreamField.steady(DRIFT)));
    Velocity tidal = STREAM.at(afterHigh(2)).get();
    Velocity sum = both.at(StreamSamples.SKARRA, afterHigh(2)).get();
    assertEquals(tidal.plus(DRIFT).eastMetresPerSecond(), sum.eastMetresPerSecond(), ROUNDING);
    assertEquals(tidal.northMetresPerSecond(), sum.northMetresPerSecond(), ROUNDING);
    assertEquals(3.3, both.maxRate().get().knots(), 1e-9);
    double high = EpochSeconds.of(afterHigh(0));
    assertEquals(high + 3600, both.nextBreakAfter(high));
    assertTrue(both.isUniform());
    Explanation explanation = both.explain(StreamSamples.SKARRA, afterHigh(2));
    assertEquals("stream.sum", explanation.notes().get(explanation.notes().size() - 1).code());
  }

  @Test
  void aSumWithoutDataInOnePartHasNoneAndLeavesTheArray() {
    StreamField both = StreamField.sum(List.of(StreamField.steady(DRIFT), STREAM));
    double[] out = {7, 8};
    assertFalse(both.sample(50, -5, EpochSeconds.of(afterHigh(-9)), out, 0));
    assertArrayEquals(new double[] {7, 8}, out);
    assertEquals(
        "a sum of streams must have at least one",
        assertThrows(IllegalArgumentException.class, () -> StreamField.sum(List.of()))
            .getMessage());
  }
}
