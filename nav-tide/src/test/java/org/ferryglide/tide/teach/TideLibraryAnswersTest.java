package org.ferryglide.tide.teach;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalTime;
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
import org.ferryglide.nav.note.Step;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.water.ChartedDepth;
import org.ferryglide.testing.Seeds;
import org.ferryglide.tide.height.ClockDifferences;
import org.ferryglide.tide.height.HeightCorrection;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.height.NormalisedCurve;
import org.ferryglide.tide.height.TableCurve;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.HourlyStream;
import org.ferryglide.tide.stream.StandardPort;
import org.ferryglide.tide.stream.StreamHour;
import org.ferryglide.tide.stream.StreamTable;
import org.ferryglide.tide.teach.TideProblems.Water;

/** The exact answers of the problems beside those of the rooms, over random figures. */
class TideLibraryAnswersTest {
  /** Instants hold nanoseconds of a time given in minutes. */
  private static final double ROUNDING = 1e-6;

  private static final Instant MIDNIGHT = Instant.parse("2026-06-14T00:00:00Z");
  private static final MeanRanges RANGES = new MeanRanges(ofMetres(5.0), ofMetres(2.0));
  private static final NormalisedCurve CURVE =
      NormalisedCurve.ofEvenSteps(
          new double[] {0.0, 0.12, 0.34, 0.62, 0.85, 0.97, 1.0},
          new double[] {1.0, 0.93, 0.77, 0.52, 0.27, 0.08, 0.0});

  private static Instant at(double minutes) {
    return MIDNIGHT.plusNanos(Math.round(minutes * 60e9));
  }

  private static TideEvent event(Water water, boolean high) {
    return high
        ? TideEvent.high(at(water.clockMinutes()), water.height())
        : TideEvent.low(at(water.clockMinutes()), water.height());
  }

  private static void answers(double expected, Problem problem) {
    assertEquals(expected, problem.answer(), ROUNDING, problem::toString);
    List<Step> steps = problem.working().steps();
    assertEquals("In the head", steps.get(0).name());
    assertEquals("Rounding", steps.get(steps.size() - 2).name());
    Step last = steps.get(steps.size() - 1);
    assertEquals("Check", last.name());
    assertEquals(problem.answer(), last.result().exact(), ROUNDING);
    double moved = Math.abs(last.result().byHand() - last.result().exact());
    String told = steps.get(steps.size() - 2).result().text();
    assertEquals(
        moved,
        Double.parseDouble(told.replace("nothing", "0").replaceAll("[^0-9.]", "")),
        0.005 + ROUNDING,
        problem::toString);
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void heightsBetweenTwoWaters(
      @ForAll @DoubleRange(min = 0, max = 2) double low,
      @ForAll @DoubleRange(min = 1, max = 6) double rise,
      @ForAll @IntRange(min = 330, max = 430) int minutes,
      @ForAll @DoubleRange(max = 1) double share,
      @ForAll boolean rising) {
    Water lowWater = new Water(rising ? 300 : 300 + minutes, ofMetres(low));
    Water highWater = new Water(rising ? 300 + minutes : 300, ofMetres(low + rise));
    Water before = rising ? lowWater : highWater;
    Water after = rising ? highWater : lowWater;
    double clock = 300 + Math.rint(share * minutes);
    TideTable table =
        TideTable.of("Port", "datum", List.of(event(before, !rising), event(after, rising)));
    Instant time = at(clock);
    answers(
        TableCurve.twelfths(table).heightAt(time).orElseThrow().metres(),
        TideProblems.byTwelfths(before, after, clock));
    answers(
        TableCurve.cosine(table).heightAt(time).orElseThrow().metres(),
        TideProblems.byCosine(before, after, clock));
    answers(
        TableCurve.normalised(table, CURVE).heightAt(time).orElseThrow().metres(),
        TideProblems.byCurve(CURVE, before, after, clock));
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void secondaryPorts(
      @ForAll @IntRange(max = 1439) int clock,
      @ForAll @DoubleRange(min = 1, max = 6) double metres,
      @ForAll @DoubleRange(min = -1.5, max = 1.5) double atSprings,
      @ForAll @DoubleRange(min = -1.5, max = 1.5) double atNeaps) {
    ClockDifferences differences =
        ClockDifferences.of(LocalTime.of(1, 0), 51).and(LocalTime.of(7, 0), 12);
    answers(
        clock + differences.minutesAt(LocalTime.MIDNIGHT.plusMinutes(clock)) + 60.0,
        SecondaryPortProblems.time(clock, differences, 60.0));
    answers(
        HeightCorrection.betweenLevels(
                ofMetres(5.4), ofMetres(atSprings), ofMetres(4.1), ofMetres(atNeaps))
            .height(ofMetres(metres))
            .metres(),
        SecondaryPortProblems.height(
            ofMetres(metres),
            ofMetres(5.4),
            ofMetres(atSprings),
            ofMetres(4.1),
            ofMetres(atNeaps)));
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void depths(
      @ForAll @DoubleRange(min = 0, max = 7) double tide,
      @ForAll @DoubleRange(min = -4, max = 9) double charted) {
    answers(
        new ChartedDepth(Distance.ofMetres(charted), "datum")
            .depth(Distance.ofMetres(tide))
            .metres(),
        TideProblems.depthOver(ofMetres(tide), ofMetres(charted), ofMetres(3.0)));
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void streamsAtTheHourAndBetween(
      @ForAll @IntRange(min = -160, max = 160) int minutes,
      @ForAll @DoubleRange(min = 1.5, max = 5.5) double range,
      @ForAll @IntRange(max = 359) int set,
      @ForAll @IntRange(max = 40) int turning) {
    List<StreamHour> rows = new ArrayList<>();
    for (int hour = -3; hour <= 3; hour++) {
      rows.add(
          new StreamHour(
              hour,
              TrueBearing.ofDegrees(set + (double) turning * hour),
              Speed.ofKnots(2.0 + hour / 3.0),
              Speed.ofKnots(1.0 + hour / 6.0)));
    }
    double high = 720.0;
    TideTable tides =
        TideTable.of(
            "Port",
            "datum",
            List.of(
                TideEvent.low(at(high - 370), ofMetres(1.0)),
                TideEvent.high(at(high), ofMetres(5.0)),
                TideEvent.low(at(high + 370), ofMetres(1.0))));
    HourlyStream stream =
        StreamTable.of(
                "A", Position.ofDegrees(46, -26), StandardPort.aboutHighWater("Port", RANGES), rows)
            .boundTo(tides)
            .withRange(ofMetres(range));
    StreamProblems.Day day =
        new StreamProblems.Day(high, ofMetres(5.0), ofMetres(range), high + 30.0);
    double clock = high + minutes;
    Velocity between = velocity(stream, at(clock));
    Problem problem = StreamProblems.betweenHours(rows, RANGES, day, clock);
    answers(between.rate().knots(), problem);
    assertEquals(
        0.0,
        problem.quantity("Set").difference(problem.exact("Set"), between.set().degrees()),
        ROUNDING);
    if (Math.abs(minutes) % 60 != 30) { // there two rows are as near
      answers(
          velocity(stream.inHourlySteps(), at(clock)).rate().knots(),
          StreamProblems.rate(rows, RANGES, day, clock));
    }
  }

  private static Velocity velocity(HourlyStream stream, Instant time) {
    double[] eastNorth = new double[2];
    stream.sample(time.getEpochSecond() + time.getNano() / 1e9, eastNorth, 0);
    return Velocity.ofEastAndNorth(eastNorth[0], eastNorth[1]);
  }
}
