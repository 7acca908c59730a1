package org.ferryglide.nav.passage;

import static org.ferryglide.nav.timing.Verdict.Answer.NOT_CHECKED;
import static org.ferryglide.nav.timing.Verdict.Answer.STOPPED;
import static org.ferryglide.nav.timing.Verdict.Answer.WARNED;
import static org.ferryglide.nav.timing.Verdict.Answer.WITHIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.sky.SunDay;
import org.ferryglide.nav.sky.SunThreshold;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.junit.jupiter.api.Test;

/** Each check of the water, the party and the light: within, beyond, and not checked. */
class CheckFiguresTest {
  /** A leg due north, six nautical miles of 1852 m to a tenth of one in a hundred. */
  private static final Position SOUTH = Position.ofDegrees(46.0, -26.0);

  private static final Position NORTH = Position.ofDegrees(46.1, -26.0);

  private static final String DAYLIGHT = "daylight";

  /** Six minutes of latitude at 46° are 11.116 km on WGS84: metres of a degree by its series. */
  private static final double LENGTH_METRES =
      0.1
          * (111_132.954
              - 559.822 * Math.cos(Math.toRadians(2 * 46.05))
              + 1.175 * Math.cos(Math.toRadians(4 * 46.05)));

  /** A minute of rounding and a metre of the series. */
  private static final double MINUTES = 0.02;

  /** A parabola through looks a minute apart against a bump ten minutes wide. */
  private static final double PARABOLA_KNOTS = 2e-4;

  private static PassageBuilder northward(double knots) {
    return Passage.builder("north", ZoneOffset.UTC, Scenes.party(knots))
        .from(WayPoint.of("South", SOUTH))
        .to(WayPoint.of("North", NORTH))
        .stream(Told.stream(0.0, 0.0));
  }

  /** Where one station's stream ends and a weaker one's begins the stream is no stronger. */
  @Test
  void aStreamThatWeakensAtOnceOnTheWayIsNoStrongerThanItIs() {
    PassageLimits limits =
        PassageLimits.none().withStream(Speed.ofKnots(1.5), Speed.ofKnots(2.0)).withRateError(0.0);
    for (double jump = 46.03; jump < 46.07; jump += 0.0011) {
      double north = jump;
      StreamField stations =
          (latitude, longitude, seconds, out, at) -> {
            out[at] = 0.0;
            double grows = 1.0 + 0.1 * (latitude - 46.0);
            out[at + 1] = (latitude < north ? grows : 0.3) * Told.KNOT;
            return true;
          };
      Verdict verdict =
          Told.of(northward(4).stream(stations).limits(limits), Scenes.NOON, "stream: ");
      // looks a minute apart, in which the rate grows by a ten thousandth
      assertEquals(1.0 + 0.1 * (north - 46.0), verdict.figure().orElseThrow(), PARABOLA_KNOTS);
    }
  }

  @Test
  void streamsAreHeldAgainstTheirLimitsAtTheUpperEndOfTheirError() {
    PassageLimits limits = PassageLimits.none().withStream(Speed.ofKnots(1.5), Speed.ofKnots(2.0));
    double[] rates = {1.19, 1.21, 1.61};
    Verdict.Answer[] answers = {WITHIN, WARNED, STOPPED};
    for (int i = 0; i < rates.length; i++) {
      Verdict verdict =
          Told.of(
              northward(4).stream(Told.stream(0.0, rates[i])).limits(limits),
              Scenes.NOON,
              "stream: ");
      assertEquals(answers[i], verdict.answer());
      assertEquals(1.25 * rates[i], verdict.figure().orElseThrow(), 1e-9);
    }
    Verdict certain =
        Told.of(
            northward(4).stream(Told.stream(0.0, 1.61)).limits(limits.withRateError(0.0)),
            Scenes.NOON,
            "stream: ");
    assertEquals(WARNED, certain.answer());
  }

  @Test
  void theGreatestStreamBetweenTwoLooksIsFoundWithItsTime() {
    double top = Scenes.NOON.getEpochSecond() + 3630.0;
    Verdict verdict =
        Told.of(
            northward(4).stream(
                    (lat, lon, time, out, at) -> {
                      double u = (time - top) / 600.0;
                      out[at] = 0.0;
                      out[at + 1] = 1.0 / (1.0 + u * u);
                      return true;
                    })
                .limits(
                    PassageLimits.none()
                        .withRateError(0.0)
                        .withStream(Speed.ofKnots(3), Speed.ofKnots(4))),
            Scenes.NOON,
            "stream: ");
    assertEquals(1.0 / Told.KNOT, verdict.figure().orElseThrow(), PARABOLA_KNOTS);
    assertEquals(top, verdict.when().orElseThrow().getEpochSecond(), 60.0);
  }

  @Test
  void windsWarnStopAndAreNotCheckedWhereNoneIsGiven() {
    PassageLimits limits = PassageLimits.none().withWind(Speed.ofKnots(10), Speed.ofKnots(15));
    double[] winds = {9.9, 10.1, 15.1};
    Verdict.Answer[] answers = {WITHIN, WARNED, STOPPED};
    for (int i = 0; i < winds.length; i++) {
      PassageBuilder passage = northward(4).limits(limits).wind(Told.wind(300, winds[i]));
      Verdict verdict = Told.of(passage, Scenes.NOON, "wind: ");
      assertEquals(answers[i], verdict.answer());
      assertEquals(winds[i], verdict.figure().orElseThrow(), 1e-9);
    }
    assertEquals(NOT_CHECKED, Told.of(northward(4).limits(limits), Scenes.NOON, "wind: ").answer());
  }

  /** Whole degrees as charts and forecasts have them: rounding shuts none of them out. */
  @Test
  void aWindJustSixtyDegreesOffTheStreamIsAgainstIt() {
    PassageLimits limits =
        PassageLimits.none()
            .withWindAgainstStream(Speed.ofKnots(8), Speed.ofKnots(12), Speed.ofKnots(1.0));
    for (int set = 0; set < 360; set += 5) {
      for (int off = -60; off <= 60; off += 120) {
        PassageBuilder passage =
            northward(4).stream(Told.stream(set, 1.1))
                .limits(limits)
                .wind(Told.wind((set + off + 360) % 360, 13));
        assertEquals(
            STOPPED,
            Told.of(passage, Scenes.NOON, "wind against").answer(),
            "set " + set + ", wind from " + off + " off it");
      }
    }
  }

  @Test
  void windAgainstStreamCountsWithinSixtyDegreesAndAboveTheLeastStream() {
    PassageLimits limits =
        PassageLimits.none()
            .withWindAgainstStream(Speed.ofKnots(8), Speed.ofKnots(12), Speed.ofKnots(1.25));
    // the set is 040°; a wind FROM 040° blows straight against it
    double[][] cases = {{40, 9, 1.1}, {40, 13, 1.1}, {99, 13, 1.1}, {101, 13, 1.1}, {40, 13, 0.99}};
    Verdict.Answer[] answers = {WARNED, STOPPED, STOPPED, WITHIN, WITHIN};
    for (int i = 0; i < cases.length; i++) {
      PassageBuilder passage =
          northward(4).stream(Told.stream(40, cases[i][2]))
              .limits(limits)
              .wind(Told.wind(cases[i][0], cases[i][1]));
      assertEquals(answers[i], Told.of(passage, Scenes.NOON, "wind against").answer(), "case " + i);
    }
    PassageBuilder noWind = northward(4).stream(Told.stream(40, 1.1)).limits(limits);
    assertEquals(NOT_CHECKED, Told.of(noWind, Scenes.NOON, "wind against").answer());
  }

  @Test
  void reserveIsWhatIsLeftAgainstTheStreamAtTheUpperEndOfItsError() {
    PassageLimits limits = PassageLimits.none().withReserve(Speed.ofKnots(1.0), Speed.ofKnots(0.5));
    // against 2 kn head on, up to 2.5 kn: 4 - 2.5 = 1.5 kn to spare, 3.4 - 2.5 = 0.9, 2.9 - 2.5
    double[] speeds = {4.0, 3.4, 2.9};
    Verdict.Answer[] answers = {WITHIN, WARNED, STOPPED};
    for (int i = 0; i < speeds.length; i++) {
      Verdict verdict =
          Told.of(
              northward(speeds[i]).stream(Told.stream(180, 2)).limits(limits),
              Scenes.NOON,
              "reserve");
      assertEquals(answers[i], verdict.answer());
      assertEquals(speeds[i] - 2.5, verdict.figure().orElseThrow(), 2e-3);
    }
    // across, only the stream across counts; with it, nothing is spent
    Verdict across =
        Told.of(northward(4).stream(Told.stream(90, 2)).limits(limits), Scenes.NOON, "reserve");
    assertEquals(4.0 - 2.5, across.figure().orElseThrow(), 2e-3);
    Verdict with =
        Told.of(northward(4).stream(Told.stream(0, 2)).limits(limits), Scenes.NOON, "reserve");
    assertEquals(4.0, with.figure().orElseThrow(), 2e-3);
  }

  @Test
  void theShareSpentAcrossIsTheSineOfTheFerryAngle() {
    double[] across = {1.9, 2.1, 3.3};
    Verdict.Answer[] answers = {WITHIN, WARNED, STOPPED};
    for (int i = 0; i < across.length; i++) {
      Verdict verdict =
          Told.of(northward(4).stream(Told.stream(90, across[i])), Scenes.NOON, "share");
      assertEquals(answers[i], verdict.answer());
      assertEquals(100.0 * across[i] / 4.0, verdict.figure().orElseThrow(), 0.02);
    }
  }

  @Test
  void timeAfloatIsTheSlowerPartysFromTheFirstBoatAfloatToTheLastAshore() {
    // 4 kn less a fifth, 15 minutes to launch and 10 to land
    double minutes = LENGTH_METRES / (0.8 * 4.0 * Told.KNOT) / 60.0 + 15.0 + 10.0;
    Duration half = Duration.ofSeconds(Math.round(60 * minutes));
    Duration[][] limits = {
      {half.plusMinutes(1), half.plusMinutes(9)},
      {half.minusMinutes(1), half.plusMinutes(1)},
      {half.minusMinutes(9), half.minusMinutes(1)}
    };
    Verdict.Answer[] answers = {WITHIN, WARNED, STOPPED};
    for (int i = 0; i < limits.length; i++) {
      PassageLimits of = PassageLimits.none().withTimeAfloat(limits[i][0], limits[i][1]);
      Verdict verdict = Told.of(northward(4).limits(of), Scenes.NOON, "time afloat");
      assertEquals(answers[i], verdict.answer());
      assertEquals(minutes, verdict.figure().orElseThrow(), MINUTES);
      assertEquals(NORTH, verdict.where().orElseThrow());
    }
    // the slower party makes no way against 3.3 kn: nothing to hold against the limit
    Verdict unknown =
        Told.of(
            northward(4).stream(Told.stream(180, 3.3))
                .limits(PassageLimits.none().withTimeAfloat(limits[0][0], limits[0][1])),
            Scenes.NOON,
            "time afloat");
    assertEquals(NOT_CHECKED, unknown.answer());
  }

  /**
   * Sunset by the low-precision formulas of the Astronomical Almanac (page C5): declination and
   * equation of time to some seconds of arc, the sun's upper limb on the horizon at -50'.
   */
  private static double sunset(double latitude, double longitude, double noonSeconds) {
    double sunset = noonSeconds;
    for (int i = 0; i < 5; i++) {
      double n = sunset / 86400.0 - 10957.5;
      double mean = 280.460 + 0.9856474 * n;
      double g = Math.toRadians(357.528 + 0.9856003 * n);
      double lambda = Math.toRadians(mean + 1.915 * Math.sin(g) + 0.020 * Math.sin(2 * g));
      double tilt = Math.toRadians(23.439 - 4e-7 * n);
      double declination = Math.asin(Math.sin(tilt) * Math.sin(lambda));
      double ascension =
          Math.toDegrees(Math.atan2(Math.cos(tilt) * Math.sin(lambda), Math.cos(lambda)));
      double equation = Math.IEEEremainder(mean - ascension, 360.0); // degrees
      double phi = Math.toRadians(latitude);
      double hour =
          Math.toDegrees(
              Math.acos(
                  (Math.sin(Math.toRadians(-50.0 / 60.0)) - Math.sin(phi) * Math.sin(declination))
                      / (Math.cos(phi) * Math.cos(declination))));
      sunset = Math.floor(noonSeconds / 86400.0) * 86400.0 + 43200.0;
      sunset += (hour - equation - longitude) * 240.0;
    }
    return sunset;
  }

  @Test
  void daylightIsLeftUntilSunsetWhenTheSlowerPartyHasLanded() {
    double sunset = sunset(46.1, -26.0, Scenes.NOON.getEpochSecond());
    double slower = LENGTH_METRES / (0.8 * 4.0 * Told.KNOT) + 600.0;
    double[] minutesLeft = {90.0, 30.0, -10.0};
    Verdict.Answer[] answers = {WITHIN, WARNED, STOPPED};
    for (int i = 0; i < minutesLeft.length; i++) {
      Instant departure = Instant.ofEpochSecond(Math.round(sunset - slower - 60 * minutesLeft[i]));
      Verdict verdict = Told.of(northward(4), departure, DAYLIGHT);
      assertEquals(answers[i], verdict.answer());
      assertEquals(minutesLeft[i], verdict.figure().orElseThrow(), 1.0); // the formula's minute
    }
    PassageBuilder tooSlow = northward(4).stream(Told.stream(180, 3.3));
    assertEquals(NOT_CHECKED, Told.of(tooSlow, Scenes.NOON, DAYLIGHT).answer());
  }

  /** Dusk as a crossing of six degrees by the almanac's own room, not through the check's book. */
  @Test
  void civilTwilightCountsOnlyWhereThePartyAsksForIt() {
    Instant dusk =
        SunDay.of(
                LocalDate.of(2026, 6, 14), ZoneOffset.ofHours(-2), Position.ofDegrees(46.1, -26.0))
            .at(SunThreshold.CIVIL_TWILIGHT)
            .set()
            .orElseThrow();
    long slower = Math.round(LENGTH_METRES / (0.8 * 4.0 * Told.KNOT) + 600.0);
    PassageLimits civil = PassageLimits.none().withLight(SunThreshold.CIVIL_TWILIGHT);
    int[] minutesLeft = {90, 20, -10};
    Verdict.Answer[] answers = {WITHIN, WARNED, STOPPED};
    for (int i = 0; i < minutesLeft.length; i++) {
      Instant departure = dusk.minusSeconds(slower + 60L * minutesLeft[i]);
      Verdict verdict = Told.of(northward(4).limits(civil), departure, "civil twilight left");
      assertEquals(answers[i], verdict.answer());
      assertEquals(minutesLeft[i], verdict.figure().orElseThrow(), 1.0);
      assertEquals(i == 0 ? WARNED : STOPPED, Told.of(northward(4), departure, DAYLIGHT).answer());
    }
    TimedPlan night =
        TimedPlan.of(northward(4).limits(civil.withAnyLight()).build(), dusk).orElseThrow();
    assertTrue(night.notChecked().contains(Findings.OPEN_DAYLIGHT));
    assertEquals(DAYLIGHT, Findings.OPEN_DAYLIGHT.text());
    assertTrue(night.verdicts().stream().noneMatch(v -> v.reason().contains(DAYLIGHT)));
  }

  /** A ferry angle whose sine is 0.35 in a stream across of 1.4 knots for a party of 4. */
  @Test
  void theShareOfTheSpeedGoesByTheLimitsOfTheParty() {
    double[][] limits = {{0.4, 0.5}, {0.3, 0.4}, {0.2, 0.3}};
    Verdict.Answer[] answers = {WITHIN, WARNED, STOPPED};
    for (int i = 0; i < limits.length; i++) {
      PassageBuilder passage =
          northward(4).stream(Told.stream(90, 1.4))
              .limits(PassageLimits.none().withCrossStreamShare(limits[i][0], limits[i][1]));
      Verdict verdict = Told.of(passage, Scenes.NOON, "share of the speed");
      assertEquals(answers[i], verdict.answer());
      assertEquals(35.0, verdict.figure().orElseThrow(), 0.1);
    }
  }

  @Test
  void launchingBeforeSunriseStops() {
    Verdict verdict = Told.of(northward(4), Instant.parse("2026-06-14T05:00:00Z"), "sunrise");
    assertEquals(STOPPED, verdict.answer());
    assertEquals(SOUTH, verdict.where().orElseThrow());
  }

  private static PassageBuilder along(double latitude, double from, double to) {
    return Passage.builder("along", ZoneOffset.UTC, Scenes.party(4))
        .from(WayPoint.of("A", Position.ofDegrees(latitude, from)))
        .to(WayPoint.of("B", Position.ofDegrees(latitude, to)))
        .stream(Told.stream(0, 0));
  }

  @Test
  void theSunThatRisesLaterInTheWestIsNotANightOnTheWay() {
    PassageBuilder west = along(46.0, -26.0, -26.3);
    Instant sunriseWindow = Instant.parse("2026-06-14T05:30:00Z");
    int checked = 0;
    for (int minute = 0; minute < 90; minute++) {
      Instant departure = sunriseWindow.plusSeconds(60L * minute);
      TimedPlan plan = TimedPlan.of(west.build(), departure).orElseThrow();
      boolean light =
          new Daylights(west.build().wayPoints().get(0).position(), SunThreshold.SUNRISE_AND_SUNSET)
                  .leftAt(plan.launch().getEpochSecond())
              > 0.0;
      if (light) {
        checked++;
        assertTrue(plan.holds(), () -> "leaving at " + departure + ": " + plan.verdicts());
      } else {
        assertFalse(plan.holds());
      }
    }
    assertTrue(checked > 30);
  }

  @Test
  void theSunThatHasSetInTheEastStops() {
    PassageBuilder east = along(46.0, -26.3, -26.0);
    double sunset = sunset(46.0, -26.0, Scenes.NOON.getEpochSecond());
    for (int seconds = -600; seconds < 600; seconds += 20) {
      Instant departure = Instant.ofEpochSecond(Math.round(sunset) + seconds);
      assertFalse(TimedPlan.of(east.build(), departure).orElseThrow().holds());
    }
  }

  @Test
  void theMidnightSunLeavesDaylightAndThePolarNightNone() {
    PassageBuilder arctic = along(70.0, 20.0, 20.3);
    Instant midnight = Instant.parse("2026-06-21T23:30:00Z");
    assertEquals(WITHIN, Told.of(arctic, midnight, DAYLIGHT).answer());
    Instant winter = Instant.parse("2026-12-21T11:00:00Z");
    assertEquals(STOPPED, Told.of(arctic, winter, "sunrise").answer());
    // at four tenths of a knot the slower party is at it for more than two days
    PassageBuilder slow =
        along(70.0, 20.0, 20.9)
            .party(Party.of(Craft.ofSpeed(Speed.ofKnots(0.4))))
            .longestDuration(Duration.ofDays(5));
    TimedPlan plan = TimedPlan.of(slow.build(), midnight).orElseThrow();
    assertTrue(Duration.between(plan.departure(), plan.arrival()).toHours() > 40);
    assertEquals(WITHIN, Told.of(plan, DAYLIGHT).answer());
  }

  @Test
  void farYearsAreNotCheckedForDaylight() {
    for (String year : new String[] {"1850", "2300"}) {
      Instant departure = Instant.parse(year + "-06-14T12:00:00Z");
      assertEquals(NOT_CHECKED, Told.of(northward(4), departure, DAYLIGHT).answer());
    }
  }

  @Test
  void aPartyThatLandsAfterMidnightLandsInTheDark() {
    Verdict verdict = Told.of(northward(2), Instant.parse("2026-06-14T21:50:00Z"), "daylight left");
    assertEquals(STOPPED, verdict.answer());
    assertEquals(15, verdict.when().orElseThrow().atOffset(ZoneOffset.UTC).getDayOfMonth());
  }

  @Test
  void aCalmIsAWindOfNothingAndIsChecked() {
    PassageBuilder calm =
        northward(4).stream(Told.stream(0, 2))
            .wind(WindField.steady(org.ferryglide.nav.measure.Velocity.STILL))
            .limits(
                PassageLimits.none()
                    .withWind(Speed.ofKnots(10), Speed.ofKnots(15))
                    .withWindAgainstStream(Speed.ofKnots(8), Speed.ofKnots(11), Speed.ofKnots(0)));
    assertEquals(WITHIN, Told.of(calm, Scenes.NOON, "wind: ").answer());
    assertEquals(WITHIN, Told.of(calm, Scenes.NOON, "wind against").answer());
  }

  /** By hand: what is left of 3.5 kn beside the part across, the stream a quarter stronger. */
  @Test
  void everyHourTellsItsReserveWithTheStreamAtItsUpperEnd() {
    for (double set : new double[] {30.0, 120.0, 200.0, 300.0}) {
      Passage passage =
          Passage.builder("reserve", ZoneOffset.UTC, Scenes.party(3.5))
              .from(WayPoint.of("Slip", Scenes.SLIP))
              .to(WayPoint.of("Cove", Scenes.COVE))
              .stream(Told.stream(set, 1.2))
              .build();
      PlannedLeg leg = TimedPlan.of(passage, Scenes.NOON).orElseThrow().legs().get(0);
      double off = Math.toRadians(set - leg.course().degrees());
      double along = 1.25 * 1.2 * Math.cos(off);
      double across = 1.25 * 1.2 * Math.abs(Math.sin(off));
      double spare = 3.5 - (along >= 0.0 ? across : Math.hypot(along, across));
      for (PlannedHour hour : leg.hours()) {
        assertEquals(spare, hour.reserve().orElseThrow().knots(), 0.01, "set " + set);
      }
      assertEquals(spare, leg.reserve().orElseThrow().knots(), 0.01);
    }
  }
}
