package org.ferryglide.tide.teach;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Working;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.water.ChartedDepth;
import org.ferryglide.testing.Seeds;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.height.NormalisedCurve;
import org.ferryglide.tide.height.TableCurve;
import org.ferryglide.tide.height.TideCurve;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.HourlyStream;
import org.ferryglide.tide.stream.StandardPort;
import org.ferryglide.tide.stream.StreamHour;
import org.ferryglide.tide.stream.StreamTable;
import org.junit.jupiter.api.Test;

/** What is worked by hand is what the library answers. */
class TableProblemsTest {
  /** Of sums of a few terms in doubles. */
  private static final double ROUNDING = 1e-9;

  /** Times are worked in minutes of the day, whose rounding a stream of 2 kn an hour shows. */
  private static final double ROUNDED_TIME_KNOTS = 1e-6;

  private static final double ROUNDED_TIME_DEGREES = 1e-4;

  private static final ZoneId ZONE = ZoneId.of("UTC+01:00");

  private static final TideTable TABLE =
      TideTable.of(
          "Ennor",
          "chart datum",
          List.of(
              TideEvent.low(Instant.parse("2026-06-01T00:10:00Z"), ofMetres(0.9)),
              TideEvent.high(Instant.parse("2026-06-01T06:22:00Z"), ofMetres(5.4)),
              TideEvent.low(Instant.parse("2026-06-01T12:31:00Z"), ofMetres(1.2)),
              TideEvent.high(Instant.parse("2026-06-01T18:47:00Z"), ofMetres(5.1)),
              TideEvent.low(Instant.parse("2026-06-02T01:05:00Z"), ofMetres(1.3))));

  private static final NormalisedCurve OWN =
      NormalisedCurve.ofEvenSteps(
          new double[] {0.0, 0.1, 0.35, 0.7, 1.0}, new double[] {1.0, 0.8, 0.45, 0.15, 0.0});

  @Property(seed = Seeds.SEED, tries = 300)
  void heightsAreThoseOfTheCurves(@ForAll @IntRange(min = 1, max = 1490) int minute) {
    Instant time = Instant.parse("2026-06-01T00:10:00Z").plusSeconds(60L * minute);
    same(TableCurve.twelfths(TABLE), time, TableProblems.twelfths(TABLE, time, ZONE));
    same(TableCurve.cosine(TABLE), time, TableProblems.cosine(TABLE, time, ZONE));
    same(TableCurve.normalised(TABLE, OWN), time, TableProblems.normalised(TABLE, OWN, time, ZONE));
  }

  private static void same(TideCurve curve, Instant time, Problem problem) {
    assertEquals(curve.heightAt(time).orElseThrow().metres(), problem.answer(), ROUNDING);
    Working working = problem.working();
    assertEquals(problem.answer(), working.result().exact(), ROUNDING);
    assertTrue(working.toString().contains("Rounding  "), working::toString);
  }

  @Property(seed = Seeds.SEED, tries = 300)
  void streamsAreThoseOfTheTable(
      @ForAll @IntRange(min = -179, max = 239) int minute,
      @ForAll @DoubleRange(min = 0, max = 359) double set) {
    List<StreamHour> rows = new ArrayList<>();
    for (int hour = -4; hour <= 5; hour++) {
      rows.add(
          new StreamHour(
              hour,
              TrueBearing.ofDegrees(set + 25.0 * hour),
              Speed.ofKnots(1.2 + 0.2 * Math.abs(hour)),
              Speed.ofKnots(0.6 + 0.1 * Math.abs(hour))));
    }
    HourlyStream stream =
        StreamTable.of(
                "A",
                Position.ofDegrees(46.2, -26.3),
                StandardPort.aboutHighWater("Ennor", new MeanRanges(ofMetres(4.6), ofMetres(2.1))),
                rows)
            .boundTo(TABLE);
    Instant time = Instant.parse("2026-06-01T06:22:00Z").plusSeconds(60L * minute);
    Velocity answer = stream.at(time).orElseThrow();
    Problem problem = TableProblems.stream(stream, time, ZONE);
    assertEquals(answer.rate().knots(), problem.answer(), ROUNDED_TIME_KNOTS);
    assertEquals(
        0.0,
        answer.set().turnDegreesTo(TrueBearing.ofDegrees(problem.exact("Set"))),
        ROUNDED_TIME_DEGREES);
  }

  @Test
  void depthsAreThoseOfTheChart() {
    TideCurve curve = TableCurve.cosine(TABLE);
    Instant time = Instant.parse("2026-06-01T09:00:00Z");
    for (ChartedDepth charted :
        List.of(
            ChartedDepth.ofDryingHeight(Distance.ofMetres(1.6), "chart datum"),
            ChartedDepth.ofSounding(Distance.ofMetres(2.3), "chart datum"))) {
      assertEquals(
          charted.depthAt(curve, time).orElseThrow().metres(),
          TableProblems.depth(charted, curve, time, ofMetres(3.1)).answer(),
          ROUNDING);
    }
    assertThrows(
        IllegalArgumentException.class,
        () ->
            TableProblems.depth(
                ChartedDepth.ofSounding(Distance.ofMetres(2.3), "mean sea level"),
                curve,
                time,
                ofMetres(3.1)));
    assertThrows(
        IllegalArgumentException.class,
        () -> TableProblems.cosine(TABLE, Instant.parse("2026-06-03T09:00:00Z"), ZONE));
  }
}
