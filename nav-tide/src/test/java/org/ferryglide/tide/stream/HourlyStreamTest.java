package org.ferryglide.tide.stream;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.ferryglide.tide.stream.StreamSamples.afterHigh;
import static org.ferryglide.tide.stream.StreamSamples.tides;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.AdjustedStream;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.tide.harmonic.Constituents;
import org.ferryglide.tide.harmonic.HarmonicConstant;
import org.ferryglide.tide.harmonic.HarmonicConstants;
import org.ferryglide.tide.harmonic.HarmonicTide;
import org.ferryglide.tide.harmonic.NodalConvention;
import org.ferryglide.tide.harmonic.NodalScheme;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class HourlyStreamTest {
  /** A few roundings of rates of about one metre a second. */
  private static final double ROUNDING = 1e-12;

  private static final int USUAL_TIDE = 745;

  private static void assertFlow(Velocity expected, Velocity actual, double tolerance) {
    assertEquals(expected.eastMetresPerSecond(), actual.eastMetresPerSecond(), tolerance);
    assertEquals(expected.northMetresPerSecond(), actual.northMetresPerSecond(), tolerance);
  }

  private static List<String> codes(HourlyStream stream, Instant instant) {
    return stream.explain(instant).notes().stream().map(Note::code).collect(Collectors.toList());
  }

  @Test
  void whatIsBuiltAlikeIsEqual() {
    HourlyStream stream = StreamSamples.table().boundTo(tides(5.0, USUAL_TIDE));
    HourlyStream again = StreamSamples.table().boundTo(tides(5.0, USUAL_TIDE));
    assertEquals(stream, again);
    assertEquals(stream.hashCode(), again.hashCode());
    assertEquals(stream.smoothed(), again.smoothed());
    assertEquals(stream.asStation(), again.asStation());
    assertEquals(stream, again.smoothed().withBetweenHours(BetweenHours.COMPONENTS));
    for (HourlyStream other :
        List.of(
            stream.smoothed(),
            stream.inHourlySteps(),
            stream.withRange(ofMetres(5.0)),
            stream.withRangeOfTheDay(ZoneId.of("UTC")),
            StreamSamples.table().boundTo(tides(4.9, USUAL_TIDE)),
            StreamSamples.table("Other", StreamSamples.SKARRA, StreamSamples.ENNOR)
                .boundTo(tides(5.0, USUAL_TIDE)))) {
      assertFalse(stream.equals(other), other::toString);
    }
  }

  @ParameterizedTest
  @EnumSource(BetweenHours.class)
  void everyRowIsMetAtItsHour(BetweenHours rule) {
    HourlyStream stream =
        StreamSamples.table().boundTo(tides(5.0, USUAL_TIDE)).withBetweenHours(rule);
    for (StreamHour row : StreamSamples.table().hours()) {
      assertFlow(
          Velocity.ofSetAndRate(row.set(), row.springRate()),
          stream.at(afterHigh(row.hour())).get(),
          ROUNDING);
    }
  }

  @Test
  void neapsAreMetAtTheNeapRange() {
    HourlyStream stream = StreamSamples.table().boundTo(tides(2.0, USUAL_TIDE));
    assertEquals(1.5, stream.at(afterHigh(3)).get().rate().knots(), ROUNDING);
  }

  @Test
  void betweenHoursByComponentsKeepsClearOfNorth() {
    StreamTable table =
        StreamTable.of(
            "N",
            StreamSamples.SKARRA,
            StreamSamples.ENNOR,
            List.of(StreamSamples.row(0, 350, 2, 1), StreamSamples.row(1, 10, 2, 1)));
    Velocity halfway = table.boundTo(tides(5.0)).at(afterHigh(0.5)).get();
    assertEquals(0.0, Math.IEEEremainder(halfway.set().degrees(), 360.0), 1e-9);
    assertEquals(2 * Math.cos(Math.toRadians(10)), halfway.rate().knots(), ROUNDING);
  }

  @Test
  void hourlyStepsHoldForHalfAnHourEitherSide() {
    HourlyStream stream =
        StreamSamples.table()
            .boundTo(tides(5.0, USUAL_TIDE))
            .withBetweenHours(BetweenHours.HOURLY_STEPS);
    Velocity third = stream.at(afterHigh(3)).get();
    assertEquals(third, stream.at(afterHigh(2.5)).get());
    assertEquals(third, stream.at(afterHigh(3.4999)).get());
    assertFalse(third.equals(stream.at(afterHigh(3.5)).get()));
    assertEquals(List.of("stream.held"), codes(stream, afterHigh(3.2)));
  }

  @Test
  void stepsOfTwoTidesMeetHalfwayBetweenTheirHighWaters() {
    HourlyStream stream =
        StreamSamples.table()
            .boundTo(tides(5.0, USUAL_TIDE))
            .withBetweenHours(BetweenHours.HOURLY_STEPS);
    Instant halfway = minutesAfterHigh(USUAL_TIDE / 2.0);
    assertEquals(stream.at(afterHigh(6)), stream.at(halfway.minusSeconds(1)));
    assertEquals(stream.at(minutesAfterHigh(USUAL_TIDE - 360)), stream.at(halfway));
  }

  private static Instant minutesAfterHigh(double minutes) {
    return afterHigh(minutes / 60.0);
  }

  @Test
  void betweenTidesTheStreamGoesOverOnAStraightLine() {
    HourlyStream stream = StreamSamples.table().boundTo(tides(5.0, USUAL_TIDE));
    Velocity last = stream.at(afterHigh(6)).get();
    Velocity first = stream.at(minutesAfterHigh(USUAL_TIDE - 360)).get();
    Instant between = minutesAfterHigh(360 + (USUAL_TIDE - 720) / 2.0);
    assertFlow(last.plus(first).times(0.5), stream.at(between).get(), ROUNDING);
    assertEquals(List.of("stream.blended"), codes(stream, between));
  }

  @Test
  void overlappingRowsCrossFade() {
    HourlyStream stream = StreamSamples.table().boundTo(tides(5.0, 690, 690));
    // rows of the first tide end 6 h after high water; those of the second begin at 5 h 30 min
    StreamTable table = StreamSamples.table();
    Velocity lastAlone = table.at(6, ofMetres(5.0));
    Velocity fifthAndHalf = table.at(5, ofMetres(5.0)).plus(lastAlone).times(0.5);
    assertFlow(fifthAndHalf, stream.at(afterHigh(5.5)).get(), ROUNDING);
    Velocity nextHalfHour =
        table.at(-6, ofMetres(5.0)).plus(table.at(-5, ofMetres(5.0))).times(0.5);
    assertFlow(nextHalfHour, stream.at(afterHigh(6.0)).get(), ROUNDING);
    assertEquals(List.of("stream.cross-faded"), codes(stream, afterHigh(5.75)));
  }

  @Test
  void aLongHoleBetweenTidesHasNoData() {
    // 25 h between high waters leave 13 h without rows
    HourlyStream stream = StreamSamples.table().boundTo(tides(5.0, 25 * 60));
    assertTrue(stream.at(afterHigh(6.0)).isPresent());
    assertFalse(stream.at(afterHigh(6.01)).isPresent());
    assertFalse(stream.at(afterHigh(18.99)).isPresent());
    assertTrue(stream.at(afterHigh(19.0)).isPresent());
    assertEquals(List.of("stream.no-data"), codes(stream, afterHigh(12)));
    assertTrue(stream.explain(afterHigh(12)).sources().isEmpty());
  }

  @Test
  void noRowsMeansNoDataAndTheArrayUntouched() {
    HourlyStream stream = StreamSamples.table().boundTo(tides(5.0, USUAL_TIDE));
    double[] out = {7.0, 8.0};
    assertFalse(stream.sample(EpochSeconds.of(afterHigh(-6.01)), out, 0));
    assertFalse(stream.sample(Double.NaN, out, 0));
    assertFalse(stream.sample(Double.NaN, -5.0, 0.0, out, 0));
    assertEquals(7.0, out[0]);
    assertEquals(8.0, out[1]);
  }

  @Test
  void eachTideHasItsOwnRange() {
    TideTable tides =
        TideTable.of(
            "Port Ennor",
            "chart datum",
            List.of(
                TideEvent.low(afterHigh(-6), ofMetres(0.5)),
                TideEvent.high(afterHigh(0), ofMetres(4.5)),
                TideEvent.low(afterHigh(6.2), ofMetres(1.5)),
                TideEvent.high(afterHigh(12.4), ofMetres(5.5)),
                TideEvent.low(afterHigh(18.6), ofMetres(0.5))));
    HourlyStream stream = StreamSamples.table().boundTo(tides);
    // first tide: rise 4.0, fall 3.0, mean 3.5 m, halfway between 2.0 and 5.0 m
    assertEquals(0.75 * 3.0, stream.at(afterHigh(3)).get().rate().knots(), ROUNDING);
    // second tide: rise 4.0, fall 5.0, mean 4.5 m
    double springness = 2.5 / 3.0;
    assertEquals(1.5 + 1.5 * springness, stream.at(afterHigh(15.4)).get().rate().knots(), ROUNDING);
    HourlyStream ofTheDay = stream.withRange(TideRange.ofTheDay(ZoneId.of("UTC")));
    assertEquals(
        1.5 + 1.5 * (4.0 - 2.0) / 3.0, ofTheDay.at(afterHigh(3)).get().rate().knots(), ROUNDING);
    HourlyStream named = stream.withRange(ofMetres(5.0));
    assertEquals(3.0, named.at(afterHigh(3)).get().rate().knots(), ROUNDING);
  }

  @Test
  void theDayEndsAtTheZonesMidnight() {
    // the second high water, 18:24 UTC, is on the next day in a zone ten hours ahead
    TideTable tides =
        TideTable.of(
            "Port Ennor",
            "chart datum",
            List.of(
                TideEvent.low(afterHigh(-6), ofMetres(0.5)),
                TideEvent.high(afterHigh(0), ofMetres(4.5)),
                TideEvent.low(afterHigh(6.2), ofMetres(1.5)),
                TideEvent.high(afterHigh(12.4), ofMetres(5.5)),
                TideEvent.low(afterHigh(18.6), ofMetres(0.5))));
    HourlyStream stream =
        StreamSamples.table().boundTo(tides).withRange(TideRange.ofTheDay(ZoneId.of("+10:00")));
    assertEquals(0.75 * 3.0, stream.at(afterHigh(3)).get().rate().knots(), ROUNDING);
  }

  @Test
  void theNearestHighWaterCountsAcrossMidnight() {
    // high water 06:00 and 18:25 on 1 June, 06:50 on 2 June: 00:20 is 5.92 h after and 6.5 h before
    HourlyStream stream = StreamSamples.table().boundTo(tides(5.0, 745, 745));
    Velocity fifth = StreamSamples.table().at(5, ofMetres(5.0));
    Velocity sixth = StreamSamples.table().at(6, ofMetres(5.0));
    double w = 55.0 / 60.0;
    assertFlow(
        fifth.times(1 - w).plus(sixth.times(w)),
        stream.at(Instant.parse("2026-06-02T00:20:00Z")).get(),
        ROUNDING);
  }

  @Test
  void notesSayExtrapolatedFlooredAndOneSided() {
    HourlyStream springs = StreamSamples.table().boundTo(tides(5.5, USUAL_TIDE));
    assertEquals(List.of("stream.beyond-springs"), codes(springs, afterHigh(3)));
    HourlyStream neaps = StreamSamples.table().boundTo(tides(1.0, USUAL_TIDE));
    assertEquals(
        List.of("stream.interpolated", "stream.below-neaps"), codes(neaps, afterHigh(2.5)));
    StreamTable steep =
        StreamTable.of(
            "S",
            StreamSamples.SKARRA,
            StreamSamples.ENNOR,
            List.of(StreamSamples.row(0, 90, 3.0, 0.2), StreamSamples.row(1, 90, 3.0, 0.2)));
    assertEquals(
        List.of("stream.below-neaps", "stream.floored"),
        codes(steep.boundTo(tides(1.0, USUAL_TIDE)), afterHigh(0)));
    assertEquals(0.0, steep.boundTo(tides(1.0, USUAL_TIDE)).at(afterHigh(0)).get().rate().knots());
    TideTable edge =
        TideTable.of(
            "Port Ennor",
            "chart datum",
            List.of(
                TideEvent.high(afterHigh(0), ofMetres(4.5)),
                TideEvent.low(afterHigh(6), ofMetres(1.0))));
    HourlyStream oneSided = StreamSamples.table().boundTo(edge);
    assertEquals(List.of("stream.one-sided-range"), codes(oneSided, afterHigh(2)));
    assertEquals(0.75 * 2.1, oneSided.at(afterHigh(2)).get().rate().knots(), ROUNDING);
  }

  @Test
  void explanationsNameTheStationAndTheFigures() {
    HourlyStream stream = StreamSamples.table().boundTo(tides(5.5, USUAL_TIDE));
    assertEquals("Skarra Sound", stream.explain(afterHigh(3)).sources().get(0).name());
    Note note = stream.explain(afterHigh(3)).notes().get(0);
    assertEquals("5.5", note.data().get("rangeMetres"));
    assertEquals("3.0", note.data().get("hoursAfterHW"));
    assertEquals("Port Ennor", note.data().get("standardPort"));
  }

  @Test
  void tablesAboutLowWaterUseTheFallBeforeAndTheRiseAfter() {
    StreamTable table =
        StreamSamples.table(
            "L",
            StreamSamples.SKARRA,
            new StandardPort(
                "Port Ennor", TideEvent.Kind.LOW, new MeanRanges(ofMetres(5.0), ofMetres(2.0))));
    HourlyStream stream = table.boundTo(tides(5.0, USUAL_TIDE, USUAL_TIDE));
    Instant low = minutesAfterHigh(USUAL_TIDE / 2.0);
    assertEquals(3.0, stream.at(low.plus(Duration.ofHours(3))).get().rate().knots(), ROUNDING);
    assertTrue(
        stream.explain(low).notes().isEmpty(), "a row at its hour within the printed ranges");
  }

  @Test
  void breakPointsAreTheRows() {
    HourlyStream stream = StreamSamples.table().boundTo(tides(5.0, USUAL_TIDE));
    double high = EpochSeconds.of(afterHigh(0));
    assertEquals(high, stream.nextBreakAfter(high - 1.0));
    assertEquals(high + 3600.0, stream.nextBreakAfter(high));
    assertEquals(Double.POSITIVE_INFINITY, stream.nextBreakAfter(high + 48 * 3600.0));
    HourlyStream steps = stream.withBetweenHours(BetweenHours.HOURLY_STEPS);
    assertEquals(high + 1800.0, steps.nextBreakAfter(high));
  }

  @Test
  void anotherPortsTidesAreRefused() {
    TideTable other =
        TideTable.of(
            "Brannoc",
            "chart datum",
            List.of(
                TideEvent.high(afterHigh(0), ofMetres(4.5)),
                TideEvent.low(afterHigh(6), ofMetres(1.0))));
    assertEquals(
        "stream table Skarra Sound must be bound to the tides of Port Ennor, but was given those"
            + " of Brannoc",
        assertThrows(IllegalArgumentException.class, () -> StreamSamples.table().boundTo(other))
            .getMessage());
  }

  /** At every row of two tides that overlap, by weighing each tide's own rows by hand. */
  @Test
  void overlappingRowsCountByTheTimeSinceTheLaterTideBegan() {
    int apart = 655;
    HourlyStream stream = StreamSamples.table().boundTo(tides(5.0, apart));
    double begun = apart / 60.0 - 6.0;
    double ended = 6.0;
    for (int hour = -6; hour <= 6; hour++) {
      for (double t : new double[] {hour, hour + apart / 60.0}) {
        if (t >= begun && t <= ended) {
          double later = (t - begun) / (ended - begun);
          Velocity expected =
              ofOneTide(t).times(1.0 - later).plus(ofOneTide(t - apart / 60.0).times(later));
          assertFlow(expected, stream.at(afterHigh(t)).get(), 1e-6);
          if (later > 0.01 && later < 0.99) {
            assertTrue(codes(stream, afterHigh(t)).contains("stream.cross-faded"));
          }
        }
      }
    }
  }

  /** The rows of one tide joined by straight lines. */
  private static Velocity ofOneTide(double hours) {
    int before = Math.min(5, (int) Math.floor(hours + 1e-9));
    double share = hours - before;
    StreamTable table = StreamSamples.table();
    return table
        .at(before, ofMetres(5.0))
        .times(1.0 - share)
        .plus(table.at(before + 1, ofMetres(5.0)).times(share));
  }

  /** Three high waters within ten hours, as in a mixed tide, must not cost a whole year. */
  @ParameterizedTest
  @EnumSource(BetweenHours.class)
  void ofThreeTidesAtOnceTheOuterRowsAreLeftOut(BetweenHours rule) {
    HourlyStream stream =
        StreamSamples.table().boundTo(tides(5.0, 300, 300, USUAL_TIDE)).withBetweenHours(rule);
    for (int high : new int[] {0, 300, 600}) {
      // the middle hours of each tide are its own or half shared, never without data
      for (int minute = -120; minute <= 120; minute += 7) {
        assertTrue(stream.at(minutesAfterHigh(high + minute)).isPresent());
      }
    }
    if (rule != BetweenHours.HOURLY_STEPS) {
      assertTrue(codes(stream, minutesAfterHigh(310)).contains("stream.crowded-waters"));
      double[] before = new double[2];
      double[] here = new double[2];
      double start = EpochSeconds.of(afterHigh(-6));
      assertTrue(stream.sample(start, before, 0));
      for (double t = start + 1.0; t < start + 20 * 3600.0; t++) {
        assertTrue(stream.sample(t, here, 0));
        // the steepest segment joins 2.7 kn one way to 2.8 kn the other within a quarter of an hour
        assertEquals(before[0], here[0], 0.02);
        assertEquals(before[1], here[1], 0.02);
        before = here.clone();
      }
    }
  }

  /** Spacings at which a smooth curve once ran at 3.8, 6.9 and 62.9 kn from a table of 3 kn. */
  @ParameterizedTest
  @ValueSource(doubles = {722.0, 721.0, 720.1})
  void theSmoothCurveOfATableOfThreeKnotsStaysNearThree(double minutesBetweenHighs) {
    Instant second = minutesAfterHigh(minutesBetweenHighs);
    TideTable tides =
        TideTable.of(
            "Port Ennor",
            "chart datum",
            List.of(
                TideEvent.low(afterHigh(-6), ofMetres(0.5)),
                TideEvent.high(afterHigh(0), ofMetres(5.5)),
                TideEvent.low(afterHigh(6), ofMetres(0.5)),
                TideEvent.high(second, ofMetres(5.5)),
                TideEvent.low(second.plusSeconds(6 * 3600), ofMetres(0.5))));
    HourlyStream smooth =
        StreamSamples.table().boundTo(tides).withBetweenHours(BetweenHours.SMOOTH);
    double[] out = new double[2];
    for (double hours = -6.0; hours < 18.0; hours += 0.001) {
      double t = EpochSeconds.of(afterHigh(hours));
      assertTrue(smooth.sample(t, out, 0));
      assertTrue(Math.hypot(out[0], out[1]) / 1852.0 * 3600.0 <= 1.05 * 3.0);
    }
    assertTrue(smooth.maxRate().get().knots() <= 1.05 * 3.0);
  }

  @Test
  void aStreamKnowsItsGreatestRate() {
    HourlyStream stream = StreamSamples.table().boundTo(tides(5.0, USUAL_TIDE));
    assertEquals(3.0, stream.maxRate().get().knots(), ROUNDING);
    assertTrue(stream.isUniform());
  }

  @Test
  void thePortsTidesMayBePredictedHarmonically() {
    HarmonicTide predicted =
        HarmonicTide.of(
            "Port Ennor",
            "chart datum",
            HarmonicConstants.of(
                NodalScheme.schureman(),
                3.0,
                List.of(
                    new HarmonicConstant(Constituents.M2, 1.6, 100),
                    new HarmonicConstant(Constituents.S2, 0.5, 140))),
            NodalConvention.MID_YEAR);
    TideTable june =
        predicted.table(
            Instant.parse("2026-06-01T00:00:00Z"), Instant.parse("2026-07-01T00:00:00Z"));
    HourlyStream stream = StreamSamples.table().boundTo(june);
    TideEvent high = june.highWaters().get(20);
    double springness = (june.range(high).metres() - 2.0) / 3.0;
    assertEquals(
        1.5 + 1.5 * springness,
        stream.at(high.time().plus(Duration.ofHours(3))).get().rate().knots(),
        1e-6);
    assertTrue(stream.at(Instant.parse("2026-06-15T00:00:00Z")).isPresent());
  }

  @Test
  void manyTimesAtOnceAgreeWithSingleOnes() {
    HourlyStream stream = StreamSamples.table().boundTo(tides(5.0, USUAL_TIDE));
    double high = EpochSeconds.of(afterHigh(0));
    double[] times = {high - 1e6, high + 1234.5, Double.NaN, high};
    double[] out = new double[8];
    stream.sampleAll(times, 0, 4, out, 0);
    double[] one = new double[2];
    assertTrue(stream.sample(times[1], one, 0));
    assertEquals(one[0], out[2]);
    assertEquals(one[1], out[3]);
    for (int missing : new int[] {0, 1, 4, 5}) {
      assertTrue(Double.isNaN(out[missing]));
    }
    double[] some = new double[6];
    stream.sampleAll(times, 1, 3, some, 1);
    assertEquals(0.0, some[0]);
    assertEquals(one[0], some[1 + StreamField.EAST]);
    assertEquals(one[1], some[1 + StreamField.NORTH]);
    assertTrue(Double.isNaN(some[3]) && Double.isNaN(some[4]));
    assertEquals(0.0, some[5]);
    assertThrows(
        IndexOutOfBoundsException.class, () -> stream.sampleAll(times, 0, 4, new double[6], 0));
  }

  @Test
  void streamsTravelToOtherMachines() throws IOException, ClassNotFoundException {
    HourlyStream stream = StreamSamples.table().boundTo(tides(5.0, USUAL_TIDE));
    StationField field =
        StationField.inverseDistance(List.of(stream.asStation()), Distance.ofNauticalMiles(3));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(AdjustedStream.of(field, 1.25, Duration.ofMinutes(20)));
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      AdjustedStream read = (AdjustedStream) in.readObject();
      assertEquals(
          AdjustedStream.of(field, 1.25, Duration.ofMinutes(20))
              .at(StreamSamples.SKARRA, afterHigh(2)),
          read.at(StreamSamples.SKARRA, afterHigh(2)));
    }
  }

  /** A double high water an hour either side of the first: the dip between them is no range. */
  @Test
  void theRangeOfADoubleHighWaterIsTheLargerAndCautionedAgainst() {
    TideTable doubled =
        TideTable.of(
            "Port Ennor",
            "chart datum",
            List.of(
                TideEvent.low(afterHigh(-6), ofMetres(0.5)),
                TideEvent.high(afterHigh(-1), ofMetres(4.5)),
                TideEvent.low(afterHigh(0), ofMetres(4.3)),
                TideEvent.high(afterHigh(1), ofMetres(4.5)),
                TideEvent.low(afterHigh(7), ofMetres(0.5)),
                TideEvent.high(afterHigh(13), ofMetres(4.5)),
                TideEvent.low(afterHigh(19), ofMetres(0.5))));
    HourlyStream stream = StreamSamples.table().boundTo(doubled);
    assertTrue(codes(stream, afterHigh(-3)).contains("stream.unequal-range"));
    assertTrue(codes(stream, afterHigh(3)).contains("stream.unequal-range"));
    assertFalse(codes(stream, afterHigh(15)).contains("stream.unequal-range"));
    assertEquals(
        0.2 + 0.2 * (4.0 - 2.0) / 3.0, stream.at(afterHigh(-6)).get().rate().knots(), ROUNDING);
    HourlyStream named = stream.withRange(ofMetres(4.0));
    assertFalse(codes(named, afterHigh(-3)).contains("stream.unequal-range"));
  }

  @Test
  void aDayHoldingATideAtTheEdgeOfItsTableIsNotedForAllItsTides() {
    TideTable cut =
        TideTable.of(
            "Port Ennor",
            "chart datum",
            List.of(
                TideEvent.high(afterHigh(0), ofMetres(5.5)),
                TideEvent.low(afterHigh(6), ofMetres(0.5)),
                TideEvent.high(afterHigh(12.4), ofMetres(5.5)),
                TideEvent.low(afterHigh(19), ofMetres(0.5))));
    HourlyStream each = StreamSamples.table().boundTo(cut);
    assertFalse(codes(each, afterHigh(13)).contains("stream.one-sided-range"));
    HourlyStream day = each.withRange(TideRange.ofTheDay(ZoneId.of("UTC")));
    assertTrue(codes(day, afterHigh(13)).contains("stream.one-sided-range"));
  }
}
