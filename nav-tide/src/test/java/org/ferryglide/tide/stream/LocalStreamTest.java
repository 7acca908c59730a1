package org.ferryglide.tide.stream;

import static org.ferryglide.tide.stream.StreamSamples.afterHigh;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.LocalStream;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.StreamMoment;
import org.ferryglide.nav.water.StreamTurn;
import org.ferryglide.nav.water.WindAgainstStream;
import org.ferryglide.nav.water.WindField;
import org.ferryglide.nav.water.Window;
import org.junit.jupiter.api.Test;

class LocalStreamTest {
  /** Starts and ends are found to half a second. */
  private static final double SECONDS = 0.5;

  private static final TrueBearing EAST = TrueBearing.ofDegrees(90);
  private static final TrueBearing WEST = TrueBearing.ofDegrees(270);

  private static Instant at(String time) {
    return Instant.parse("2026-06-01T" + time + ":00Z");
  }

  /** Floods east at 3 kn from 06:00 to 12:00, ebbs west at 2 kn from 12:00 to 18:00. */
  private static final LocalStream CHANNEL =
      LocalStream.of(
          CurrentTable.of(
                  "channel",
                  StreamSamples.SKARRA,
                  List.of(
                      CurrentEvent.slack(at("06:00")),
                      CurrentEvent.flood(at("09:00"), EAST, Speed.ofKnots(3)),
                      CurrentEvent.slack(at("12:00")),
                      CurrentEvent.ebb(at("15:00"), WEST, Speed.ofKnots(2)),
                      CurrentEvent.slack(at("18:00"))))
              .asCurve(),
          StreamSamples.SKARRA);

  private static void assertTime(Instant expected, Instant actual) {
    assertEquals(0.0, Duration.between(expected, actual).toMillis() / 1000.0, SECONDS);
  }

  @Test
  void slackWindowsEndWhereTheRateReachesTheLimit() {
    List<Window> windows = CHANNEL.slackWindows(Speed.ofKnots(1), at("00:00"), at("23:00")).items();
    assertEquals(3, windows.size());
    double before = CurrentTimes.timeToReach(3 * 3600, 1, 3);
    double after = CurrentTimes.timeToReach(3 * 3600, 1, 2);
    Window noon = windows.get(1);
    assertTime(at("12:00").minusMillis((long) (before * 1000)), noon.from());
    assertTime(at("12:00").plusMillis((long) (after * 1000)), noon.until());
    assertFalse(noon.openBefore() || noon.openAfter());
    assertTrue(windows.get(0).openBefore(), "the data begin at 06:00");
    assertTime(at("06:00"), windows.get(0).from());
    assertTrue(windows.get(2).openAfter());
    assertTime(at("18:00"), windows.get(2).until());
  }

  @Test
  void aSearchThatBeginsInAWindowSaysSo() {
    List<Window> windows = CHANNEL.slackWindows(Speed.ofKnots(1), at("12:05"), at("12:10")).items();
    assertEquals(List.of(new Window(TimeSpan.of(at("12:05"), at("12:10")), true, true)), windows);
  }

  @Test
  void turnsSayWhereTheStreamGoesAfter() {
    List<StreamTurn> turns = CHANNEL.turns(at("00:00"), at("23:00")).items();
    assertEquals(1, turns.size());
    assertTime(at("12:00"), turns.get(0).time());
    assertEquals(90, turns.get(0).setBefore().degrees(), 1e-9);
    assertEquals(270, turns.get(0).setAfter().degrees(), 1e-9);
    assertEquals(0.0, turns.get(0).leastRate().knots(), 1e-3);
  }

  @Test
  void strongestOfTheDay() {
    StreamMoment strongest =
        CHANNEL.strongestOfDay(LocalDate.parse("2026-06-01"), ZoneOffset.UTC).first().get();
    assertTime(at("09:00"), strongest.time());
    assertEquals(3.0, strongest.stream().rate().knots(), 1e-9);
    assertFalse(
        CHANNEL.strongestOfDay(LocalDate.parse("2026-06-03"), ZoneOffset.UTC).first().isPresent());
  }

  @Test
  void helpingHoursAlongATrack() {
    List<Window> any =
        CHANNEL
            .helpingWindows(TrueBearing.ofDegrees(45), Speed.ZERO, at("00:00"), at("23:00"))
            .items();
    assertEquals(1, any.size());
    assertTime(at("06:00"), any.get(0).from());
    assertTime(at("12:00"), any.get(0).until());
    List<Window> aKnot =
        CHANNEL
            .helpingWindows(TrueBearing.ofDegrees(45), Speed.ofKnots(1), at("00:00"), at("23:00"))
            .items();
    double wait = CurrentTimes.timeToReach(3 * 3600, Math.sqrt(2), 3);
    assertTime(at("06:00").plusMillis((long) (wait * 1000)), aKnot.get(0).from());
    assertTrue(
        CHANNEL
            .helpingWindows(TrueBearing.ofDegrees(0), Speed.ofKnots(0.1), at("00:00"), at("23:00"))
            .isEmpty());
  }

  /** No data and never must not look alike. */
  @Test
  void aSearchBeyondTheDataSaysWhatItSaw() {
    Found<StreamTurn> turns = CHANNEL.turns(at("00:00"), at("23:00"));
    assertFalse(turns.isWhole());
    assertEquals(2, turns.unseen().size());
    assertTime(at("06:00"), turns.seen().get(0).from());
    assertTime(at("18:00"), turns.seen().get(0).until());
    assertEquals(Found.Stopped.NO_DATA, turns.stopped());
    assertEquals("search.not-seen", turns.notes().get(0).code());
    Found<Window> none = CHANNEL.slackWindows(Speed.ofKnots(1), at("19:00"), at("23:00"));
    assertTrue(none.isEmpty());
    assertFalse(none.isNever());
    Found<Window> never = CHANNEL.slackWindows(Speed.ofKnots(1), at("08:00"), at("10:00"));
    assertTrue(never.isNever());
  }

  @Test
  void theDoubtsAboutTheStreamTravelWithTheAnswer() {
    LocalStream beyondSprings =
        LocalStream.of(
            StreamSamples.table().boundTo(StreamSamples.tides(6.0, 745)), StreamSamples.SKARRA);
    assertTrue(
        beyondSprings.turns(afterHigh(-6), afterHigh(18)).notes().stream()
            .anyMatch(note -> note.code().equals("stream.beyond-springs")));
  }

  @Test
  void windFrom045IsAgainstAStreamThatSets045() {
    // common practice, no source: wind is named by where it comes from, stream by where it sets
    Velocity wind = Velocity.ofWind(TrueBearing.ofDegrees(45), Speed.ofKnots(12));
    Velocity against = Velocity.ofSetAndRate(TrueBearing.ofDegrees(45), Speed.ofKnots(4));
    WindAgainstStream rough = new WindAgainstStream(Speed.ofKnots(10), Speed.ofKnots(1), 0);
    assertTrue(rough.isMetBy(wind, against));
    assertFalse(rough.isMetBy(wind, against.times(-1)));
    assertEquals(16.0, WindAgainstStream.overWater(wind, against).rate().knots(), 1e-12);
    assertEquals(8.0, WindAgainstStream.overWater(wind, against.times(-1)).rate().knots(), 1e-12);
  }

  @Test
  void thresholdsAreTheCallers() {
    Velocity stream = Velocity.ofSetAndRate(EAST, Speed.ofKnots(2));
    WindAgainstStream rough = new WindAgainstStream(Speed.ofKnots(10), Speed.ofKnots(1.5), 45);
    assertTrue(rough.isMetBy(wind(90, 10), stream));
    assertFalse(rough.isMetBy(wind(90, 9.9), stream));
    assertFalse(rough.isMetBy(wind(90, 20), stream.times(0.7)));
    assertTrue(rough.isMetBy(wind(134.9, 15), stream));
    assertFalse(rough.isMetBy(wind(135.1, 15), stream));
    WindAgainstStream any = new WindAgainstStream(Speed.ZERO, Speed.ZERO, 90);
    assertFalse(any.isMetBy(Velocity.STILL, stream), "no wind is against nothing");
    assertFalse(any.isMetBy(Double.NaN, 0, 1, 0));
    assertEquals(
        "angle from straight against must be in [0, 90] degrees, but was 91.0",
        assertThrows(
                IllegalArgumentException.class,
                () -> new WindAgainstStream(Speed.ZERO, Speed.ZERO, 91))
            .getMessage());
  }

  private static Velocity wind(double from, double knots) {
    return Velocity.ofWind(TrueBearing.ofDegrees(from), Speed.ofKnots(knots));
  }

  @Test
  void windAgainstStreamHours() {
    WindAgainstStream rough = new WindAgainstStream(Speed.ofKnots(10), Speed.ofKnots(1.5), 30);
    List<Window> windows =
        CHANNEL
            .windAgainstStream(WindField.steady(wind(80, 15)), rough, at("00:00"), at("23:00"))
            .items();
    assertEquals(1, windows.size());
    double wait = CurrentTimes.timeToReach(3 * 3600, 1.5, 3); // half an hour short of 07:30
    assertTime(at("06:00").plusMillis((long) (wait * 1000)), windows.get(0).from());
    assertTime(at("12:00").minusMillis((long) (wait * 1000)), windows.get(0).until());
  }

  @Test
  void hourlyStepsTurnAtAStroke() {
    StreamTable table =
        StreamTable.of(
            "S",
            StreamSamples.SKARRA,
            StreamSamples.ENNOR,
            List.of(
                StreamSamples.row(-2, 90, 2, 1),
                StreamSamples.row(-1, 90, 0.5, 0.3),
                StreamSamples.row(0, 270, 0.6, 0.3),
                StreamSamples.row(1, 270, 2, 1)));
    LocalStream here =
        LocalStream.of(
            table.boundTo(StreamSamples.tides(5.0)).withBetweenHours(BetweenHours.HOURLY_STEPS),
            StreamSamples.SKARRA);
    List<StreamTurn> turns = here.turns(afterHigh(-3), afterHigh(3)).items();
    assertEquals(1, turns.size());
    assertTime(afterHigh(-0.5), turns.get(0).time());
  }

  @Test
  void aSlackRowHeldForAnHourTurnsInItsMiddle() {
    StreamTable table =
        StreamTable.of(
            "S",
            StreamSamples.SKARRA,
            StreamSamples.ENNOR,
            List.of(
                StreamSamples.row(-1, 90, 0.5, 0.3),
                StreamHour.slack(0),
                StreamSamples.row(1, 270, 2, 1)));
    LocalStream here =
        LocalStream.of(
            table.boundTo(StreamSamples.tides(5.0)).withBetweenHours(BetweenHours.HOURLY_STEPS),
            StreamSamples.SKARRA);
    List<StreamTurn> turns = here.turns(afterHigh(-3), afterHigh(3)).items();
    assertEquals(1, turns.size());
    assertEquals(
        0.0, Duration.between(afterHigh(0), turns.get(0).time()).toMillis() / 1000.0, 60.0);
    assertEquals(0.0, turns.get(0).leastRate().knots());
  }

  @Test
  void anHourlyTablesTurnsOverTwoTides() {
    LocalStream here =
        LocalStream.of(
            StreamSamples.table().boundTo(StreamSamples.tides(5.0, 745)), StreamSamples.SKARRA);
    List<StreamTurn> turns = here.turns(afterHigh(-6), afterHigh(18)).items();
    // east-going from -5 h, west-going from HW, again in the next tide: four turns
    assertEquals(4, turns.size());
    for (int i = 0; i < 4; i++) {
      double after = turns.get(i).setAfter().degrees();
      assertEquals(i % 2 == 0 ? 60 : 243, after, 3);
    }
    List<StreamMoment> least = here.slackWaters(afterHigh(-6), afterHigh(18)).items();
    assertTrue(least.size() >= 4);
  }

  @Test
  void steadyStreamsNeverTurn() {
    LocalStream here =
        LocalStream.of(
            StreamField.steady(Velocity.ofSetAndRate(EAST, Speed.ofKnots(1))),
            StreamSamples.SKARRA);
    assertTrue(here.turns(at("00:00"), at("12:00")).isNever());
    assertTrue(here.slackWaters(at("00:00"), at("12:00")).isNever());
    assertEquals(
        List.of(new Window(TimeSpan.of(at("00:00"), at("12:00")), true, true)),
        here.slackWindows(Speed.ofKnots(1), at("00:00"), at("12:00")).items());
    assertTrue(here.slackWindows(Speed.ofKnots(0.99), at("00:00"), at("12:00")).isEmpty());
  }

  @Test
  void aMonthOfWindowsAgreesWithTheTables() {
    // 60 tides a month, each with slack about its turns
    int[] minutes = new int[58];
    java.util.Arrays.fill(minutes, 745);
    LocalStream here =
        LocalStream.of(
            StreamSamples.table().boundTo(StreamSamples.tides(5.0, minutes)), StreamSamples.SKARRA);
    List<Window> windows =
        here.slackWindows(Speed.ofKnots(0.5), afterHigh(-6), afterHigh(30 * 24 - 6)).items();
    List<Window> coarse =
        here.withLooksEvery(Duration.ofMinutes(4))
            .slackWindows(Speed.ofKnots(0.5), afterHigh(-6), afterHigh(30 * 24 - 6))
            .items();
    assertEquals(windows.size(), coarse.size());
    for (int i = 0; i < windows.size(); i++) {
      assertTime(windows.get(i).from(), coarse.get(i).from());
      assertTime(windows.get(i).until(), coarse.get(i).until());
    }
  }

  @Test
  void badSearchesAreRefused() {
    assertEquals(
        "a search must end after it begins at 2026-06-01T12:00:00Z, but ended at"
            + " 2026-06-01T12:00:00Z",
        message(() -> CHANNEL.turns(at("12:00"), at("12:00"))));
    assertEquals(
        "time between two looks must be above zero, but was PT0S",
        message(() -> CHANNEL.withLooksEvery(Duration.ZERO)));
    assertTrue(
        message(() -> CHANNEL.turns(at("12:00"), Instant.parse("2326-06-01T12:00:00Z")))
            .startsWith("a search must have at most 20000000 looks, but from"));
  }

  private static String message(org.junit.jupiter.api.function.Executable call) {
    return String.valueOf(assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
