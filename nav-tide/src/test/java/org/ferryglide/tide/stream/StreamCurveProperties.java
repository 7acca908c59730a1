package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.water.Window;
import org.ferryglide.testing.Seeds;

/** Laws of the curves between slack and maximum. */
class StreamCurveProperties {
  private static final double ROUNDING = 1e-12;
  private static final Instant START = Instant.parse("2026-06-01T00:00:00Z");

  @Provide
  Arbitrary<CurrentTable> tables() {
    Arbitrary<List<Double>> pair =
        Combinators.combine(
                Arbitraries.doubles().between(40, 400).ofScale(3), // minutes to the maximum
                Arbitraries.doubles().between(40, 400).ofScale(3), // and from it to slack
                Arbitraries.doubles().between(0, 359.9).ofScale(6),
                Arbitraries.doubles().between(0.1, 9).ofScale(6))
            .as(List::of);
    return pair.list()
        .ofMinSize(1)
        .ofMaxSize(6)
        .map(
            pairs -> {
              List<CurrentEvent> events = new ArrayList<>();
              Instant time = START;
              events.add(CurrentEvent.slack(time));
              for (List<Double> p : pairs) {
                time = time.plusMillis(Math.round(p.get(0) * 60e3));
                events.add(
                    CurrentEvent.flood(
                        time, TrueBearing.ofDegrees(p.get(2)), Speed.ofKnots(p.get(3))));
                time = time.plusMillis(Math.round(p.get(1) * 60e3));
                events.add(CurrentEvent.slack(time));
              }
              return CurrentTable.of("T", StreamSamples.SKARRA, events);
            });
  }

  @Property(seed = Seeds.SEED, tries = 150)
  void everyLineIsMetAndTheRateNeverExceedsTheGreatest(
      @ForAll("tables") CurrentTable table,
      @ForAll FlowShape shape,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(9) double share) {
    StreamCurve curve = table.asCurve(shape);
    double[] out = new double[2];
    for (CurrentEvent event : table.events()) {
      assertTrue(curve.sample(EpochSeconds.of(event.time()), out, 0));
      if (event.kind() != CurrentEvent.Kind.SLACK) {
        assertEquals(event.rate().metresPerSecond(), Math.hypot(out[0], out[1]), ROUNDING);
      } else if (shape != FlowShape.THIRDS) {
        assertEquals(0.0, Math.hypot(out[0], out[1]), ROUNDING);
      }
    }
    double first = EpochSeconds.of(START);
    double last = EpochSeconds.of(table.events().get(table.events().size() - 1).time());
    assertTrue(curve.sample(first + share * (last - first), out, 0));
    assertTrue(Math.hypot(out[0], out[1]) <= curve.maxRate().get().metresPerSecond() + ROUNDING);
  }

  @Property(seed = Seeds.SEED, tries = 150)
  void sineAndFiftyNinetyHaveNoJumpAtAnyBreakPoint(
      @ForAll("tables") CurrentTable table, @ForAll boolean sine) {
    StreamCurve curve = table.asCurve(sine ? FlowShape.SINE : FlowShape.FIFTY_NINETY);
    double[] at = new double[2];
    double[] before = new double[2];
    double first = EpochSeconds.of(START);
    int breaks = 0;
    for (double t = curve.nextBreakAfter(first);
        t < Double.POSITIVE_INFINITY;
        t = curve.nextBreakAfter(t)) {
      assertTrue(curve.sample(t, at, 0) && curve.sample(Math.nextDown(t), before, 0));
      assertEquals(at[0], before[0], 1e-8); // 2.4e-7 s of a rise of 5 m/s in 40 minutes
      assertEquals(at[1], before[1], 1e-8);
      breaks++;
    }
    int segments = table.events().size() - 1;
    assertEquals(sine ? segments : 3 * segments, breaks);
  }

  @Property(seed = Seeds.SEED, tries = 150)
  void aSlackWindowOfTheTableIsFoundInItsCurve(
      @ForAll("tables") CurrentTable table,
      @ForAll @DoubleRange(min = 0.05, max = 3) @Scale(3) double knots) {
    if (table.events().size() < 5) {
      return;
    }
    CurrentEvent slack = table.events().get(2);
    Window window = table.slackWindow(slack, Speed.ofKnots(knots));
    double[] out = new double[2];
    StreamCurve curve = table.asCurve();
    if (!window.openBefore()) {
      assertTrue(curve.sample(EpochSeconds.of(window.from()), out, 0));
      assertEquals(knots, Math.hypot(out[0], out[1]) * 3600 / 1852, 1e-6);
    }
    if (!window.openAfter()) {
      assertTrue(curve.sample(EpochSeconds.of(window.until()), out, 0));
      assertEquals(knots, Math.hypot(out[0], out[1]) * 3600 / 1852, 1e-6);
    }
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void pilotStreamsAreSlackAtEveryTurnAndReverseWithTheirSets(
      @ForAll @IntRange(min = -360, max = -60) int first,
      @ForAll @IntRange(min = 30, max = 300) int length,
      @ForAll @DoubleRange(min = 0, max = 359) @Scale(6) double set,
      @ForAll @DoubleRange(min = 0.5, max = 7) @Scale(6) double range,
      @ForAll @DoubleRange(min = -6, max = 16) @Scale(6) double hours) {
    StreamCurve stream = pilot(first, length, set).boundTo(StreamSamples.tides(range, 745, 745));
    StreamCurve reversed =
        pilot(first, length, (set + 180) % 360).boundTo(StreamSamples.tides(range, 745, 745));
    double[] out = new double[2];
    double[] back = new double[2];
    double high = EpochSeconds.of(StreamSamples.FIRST_HIGH);
    assertTrue(stream.sample(high + 60.0 * (first + length), out, 0));
    assertEquals(0.0, Math.hypot(out[0], out[1]), ROUNDING);
    double t = high + 3600 * hours;
    assertEquals(stream.sample(t, out, 0), reversed.sample(t, back, 0));
    assertEquals(out[0], -back[0], ROUNDING);
    assertEquals(out[1], -back[1], ROUNDING);
  }

  private static PilotRemarks pilot(int first, int length, double set) {
    return PilotRemarks.of(
        "P",
        StreamSamples.SKARRA,
        StreamSamples.ENNOR,
        List.of(
            PilotTurn.begins(time(first), TrueBearing.ofDegrees(set), Speed.ofKnots(3)),
            PilotTurn.begins(
                    time(first + length), TrueBearing.ofDegrees(set + 170), Speed.ofKnots(2))
                .withNeapRate(Speed.ofKnots(1))));
  }

  private static String time(int minutes) {
    int size = Math.abs(minutes);
    return (minutes < 0 ? "-" : "+") + (size / 60) + ":" + (size % 60 < 10 ? "0" : "") + size % 60;
  }
}
