package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import net.jqwik.api.constraints.Size;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.testing.Seeds;

class HourlyStreamProperties {
  /** Roundings of a few sums of parts up to 10 m/s. */
  private static final double ROUNDING = 1e-13;

  /** Instants of this century are held to 2.4e-7 s. */
  private static final double CLOCK_SECONDS = 1e-6;

  private static final double[] OUT = new double[2];

  private static double[] sample(HourlyStream stream, double t) {
    double[] out = new double[2];
    assertTrue(stream.sample(t, out, 0), "there should be data");
    return out;
  }

  @Provide
  Arbitrary<StreamTable> tables() {
    Arbitrary<double[]> rows =
        Combinators.combine(
                Arbitraries.doubles().between(0, 359.9).ofScale(9),
                Arbitraries.doubles().between(0, 12).ofScale(9),
                Arbitraries.doubles().between(0, 1).ofScale(9))
            .as((set, spring, share) -> new double[] {set, spring, spring * share});
    return rows.list()
        .ofSize(13)
        .map(
            list -> {
              List<StreamHour> hours = new ArrayList<>();
              for (int i = 0; i < 13; i++) {
                double[] row = list.get(i);
                hours.add(StreamSamples.row(i - 6, row[0], row[1], row[2]));
              }
              return StreamTable.of("P", StreamSamples.SKARRA, StreamSamples.ENNOR, hours);
            });
  }

  /** Before the data, in them, in a hole between two tides, and after them. */
  @Property(seed = Seeds.SEED, tries = 100)
  void evenTimesAreThoseOneByOne(
      @ForAll("tables") StreamTable table,
      @ForAll @Size(3) List<@IntRange(min = 660, max = 1200) Integer> minutes,
      @ForAll BetweenHours rule,
      @ForAll @DoubleRange(min = 50.0, max = 9000.0) double step) {
    HourlyStream stream =
        table
            .boundTo(
                StreamSamples.tides(4.0, minutes.stream().mapToInt(Integer::intValue).toArray()))
            .withBetweenHours(rule);
    for (double start :
        new double[] {
          stream.startSeconds() - 10.0 * step, stream.startSeconds(), stream.nextBreakAfter(0.0)
        }) {
      int count = (int) ((stream.endSeconds() - start) / step) + 5;
      double[] even = new double[2 * count + 1];
      stream.sampleEvenly(start, step, count, even, 1);
      double[] one = new double[2];
      for (int i = 0; i < count; i++) {
        if (!stream.sample(start + i * step, one, 0)) {
          one[0] = Double.NaN;
          one[1] = Double.NaN;
        }
        assertEquals(one[0], even[1 + 2 * i]);
        assertEquals(one[1], even[2 + 2 * i]);
      }
    }
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void noJumpAtAnyBreakPoint(
      @ForAll("tables") StreamTable table,
      @ForAll @Size(4) List<@IntRange(min = 660, max = 890) Integer> minutes,
      @ForAll boolean smooth) {
    HourlyStream stream =
        table
            .boundTo(
                StreamSamples.tides(4.0, minutes.stream().mapToInt(Integer::intValue).toArray()))
            .withBetweenHours(smooth ? BetweenHours.SMOOTH : BetweenHours.COMPONENTS);
    double start = EpochSeconds.of(StreamSamples.afterHigh(-6));
    // between break points at least a minute apart a part changes by at most about 40 m/s a minute
    double tolerance = CLOCK_SECONDS * 2.0;
    int breaks = 0;
    for (double t = stream.nextBreakAfter(start); ; breaks++) {
      double next = stream.nextBreakAfter(t);
      if (next == Double.POSITIVE_INFINITY) {
        break;
      }
      double[] before = sample(stream, Math.nextDown(t));
      double[] at = sample(stream, t);
      assertEquals(before[0], at[0], tolerance);
      assertEquals(before[1], at[1], tolerance);
      t = next;
    }
    assertTrue(breaks > 50, "every row is a break point");
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void partsNeverLeaveTheSpanOfTheirNeighbours(
      @ForAll("tables") StreamTable table,
      @ForAll @DoubleRange(min = -6, max = 5.999) @Scale(6) double hours) {
    HourlyStream stream = table.boundTo(StreamSamples.tides(4.0));
    double floor = Math.floor(hours);
    double[] before = sample(stream, EpochSeconds.of(StreamSamples.afterHigh(floor)));
    double[] after = sample(stream, EpochSeconds.of(StreamSamples.afterHigh(floor + 1)));
    double[] here = sample(stream, EpochSeconds.of(StreamSamples.afterHigh(hours)));
    for (int axis = 0; axis < 2; axis++) {
      assertTrue(here[axis] >= Math.min(before[axis], after[axis]) - ROUNDING);
      assertTrue(here[axis] <= Math.max(before[axis], after[axis]) + ROUNDING);
    }
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void theStreamIsLinearInTheRangeWhereTheFloorDoesNotBite(
      @ForAll("tables") StreamTable table,
      @ForAll @DoubleRange(min = -6, max = 6) @Scale(6) double hours,
      @ForAll @DoubleRange(min = 2, max = 9) @Scale(6) double range) {
    HourlyStream stream = table.boundTo(StreamSamples.tides(4.0));
    double t = EpochSeconds.of(StreamSamples.afterHigh(hours));
    double[] neaps = sample(stream.withRange(Distance.ofMetres(2.0)), t);
    double[] springs = sample(stream.withRange(Distance.ofMetres(5.0)), t);
    double[] here = sample(stream.withRange(Distance.ofMetres(range)), t);
    double w = (range - 2.0) / 3.0;
    for (int axis = 0; axis < 2; axis++) {
      assertEquals(neaps[axis] + w * (springs[axis] - neaps[axis]), here[axis], 10 * ROUNDING);
    }
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void theRateNeverExceedsTheGreatestRate(
      @ForAll("tables") StreamTable table,
      @ForAll @DoubleRange(min = -6, max = 18) @Scale(6) double hours,
      @ForAll BetweenHours rule,
      @ForAll @IntRange(min = 660, max = 890) int minutes) {
    HourlyStream stream = table.boundTo(StreamSamples.tides(4.0, minutes)).withBetweenHours(rule);
    double greatest = stream.maxRate().get().metresPerSecond();
    double t = EpochSeconds.of(StreamSamples.afterHigh(hours));
    if (stream.sample(t, OUT, 0)) {
      assertTrue(Math.hypot(OUT[0], OUT[1]) <= greatest + ROUNDING);
    }
  }

  /** High waters rounded to the minute put knots of two tides anything from no time apart. */
  @Property(seed = Seeds.SEED, tries = 300)
  void theSmoothCurvePassesTheRowsBesideItByAtMostOneInTwenty(
      @ForAll("tables") StreamTable table,
      @ForAll @Size(4) List<@IntRange(min = 600, max = 890) Integer> minutes) {
    int[] spacing = minutes.stream().mapToInt(Integer::intValue).toArray();
    passesItsRowsByAtMostOneInTwenty(table, spacing);
    spacing[1] = 720 + spacing[1] % 5; // the worst: rows of two tides nearly at one time
    passesItsRowsByAtMostOneInTwenty(table, spacing);
  }

  private static void passesItsRowsByAtMostOneInTwenty(StreamTable table, int[] spacing) {
    HourlyStream rows = table.boundTo(StreamSamples.tides(4.0, spacing));
    HourlyStream smooth = rows.withBetweenHours(BetweenHours.SMOOTH);
    double t = EpochSeconds.of(StreamSamples.afterHigh(-6));
    double[] out = new double[2];
    for (double next = rows.nextBreakAfter(t); next < 1e12; next = rows.nextBreakAfter(t)) {
      double greatest = Math.max(rate(rows, t), rate(rows, next));
      for (int i = 1; i < 16; i++) {
        assertTrue(smooth.sample(t + i * (next - t) / 16.0, out, 0));
        assertTrue(Math.hypot(out[0], out[1]) <= 1.05 * greatest + ROUNDING);
      }
      t = next;
    }
    assertTrue(
        smooth.maxRate().get().metresPerSecond()
            <= 1.05 * rows.maxRate().get().metresPerSecond() + ROUNDING);
  }

  private static double rate(HourlyStream stream, double t) {
    double[] out = sample(stream, t);
    return Math.hypot(out[0], out[1]);
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void reversingEverySetReversesTheStream(
      @ForAll("tables") StreamTable table,
      @ForAll @DoubleRange(min = -6, max = 18) @Scale(6) double hours,
      @ForAll BetweenHours rule) {
    List<StreamHour> reversed = new ArrayList<>();
    for (StreamHour row : table.hours()) {
      reversed.add(
          new StreamHour(row.hour(), row.set().reciprocal(), row.springRate(), row.neapRate()));
    }
    StreamTable other = StreamTable.of("R", StreamSamples.SKARRA, StreamSamples.ENNOR, reversed);
    double t = EpochSeconds.of(StreamSamples.afterHigh(hours));
    double[] here = sample(table.boundTo(StreamSamples.tides(4.0, 745)).withBetweenHours(rule), t);
    double[] there = sample(other.boundTo(StreamSamples.tides(4.0, 745)).withBetweenHours(rule), t);
    assertEquals(-here[0], there[0], 10 * ROUNDING);
    assertEquals(-here[1], there[1], 10 * ROUNDING);
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void theSmoothCurveHasNoCornersAndIsPeriodicWhereTheTidesAre(
      @ForAll("tables") StreamTable table, @ForAll @IntRange(min = 730, max = 760) int minutes) {
    HourlyStream stream =
        table
            .boundTo(StreamSamples.tides(4.0, minutes, minutes, minutes))
            .withBetweenHours(BetweenHours.SMOOTH);
    double high = EpochSeconds.of(StreamSamples.FIRST_HIGH) + 60.0 * minutes;
    for (int hour = -6; hour <= 6; hour++) {
      double t = high + 3600.0 * hour;
      double[] at = sample(stream, t);
      double[] before = sample(stream, t - 0.5);
      double[] after = sample(stream, t + 0.5);
      double[] next = sample(stream, t + 60.0 * minutes);
      for (int axis = 0; axis < 2; axis++) {
        // slopes of up to about 12 m/s in ten minutes, curved over half a second
        assertEquals(at[axis] - before[axis], after[axis] - at[axis], 1e-4);
        assertEquals(at[axis], next[axis], 10 * ROUNDING);
      }
    }
    for (int minute = 0; minute < minutes; minute += 7) {
      double[] here = sample(stream, high + 60.0 * minute);
      double[] next = sample(stream, high + 60.0 * (minute + minutes));
      assertEquals(here[0], next[0], 1e-9);
      assertEquals(here[1], next[1], 1e-9);
    }
  }
}
