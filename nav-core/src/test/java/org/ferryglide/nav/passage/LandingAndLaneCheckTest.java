package org.ferryglide.nav.passage;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.ferryglide.nav.timing.Verdict.Answer.NOT_CHECKED;
import static org.ferryglide.nav.timing.Verdict.Answer.STOPPED;
import static org.ferryglide.nav.timing.Verdict.Answer.WARNED;
import static org.ferryglide.nav.timing.Verdict.Answer.WITHIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.WaterLevel;
import org.junit.jupiter.api.Test;

/** Landings and lanes: within, beyond, and not checked. */
class LandingAndLaneCheckTest {
  private static final Position SOUTH = Position.ofDegrees(46.0, -26.0);
  private static final Position NORTH = Position.ofDegrees(46.1, -26.0);

  /** A height that falls by a metre an hour, 10 m at noon; unknown after some seconds. */
  private static WaterLevel falling(double knownFor) {
    double noon = Scenes.NOON.getEpochSecond();
    return new WaterLevel() {
      private static final long serialVersionUID = 1L;

      @Override
      public double heightMetres(double seconds) {
        return seconds - noon > knownFor ? Double.NaN : 10.0 - (seconds - noon) / 3600.0;
      }

      @Override
      public String datum() {
        return "chart datum";
      }
    };
  }

  private static PassageBuilder to(WayPoint north) {
    return Passage.builder("north", ZoneOffset.UTC, Scenes.party(4))
        .from(WayPoint.of("South", SOUTH))
        .to(north)
        .stream(Told.stream(0, 0));
  }

  private static WayPoint north(Landing landing) {
    return WayPoint.of("North", NORTH).withLanding(landing);
  }

  /** The height when the last of the party is ashore: arrival and ten minutes. */
  private static double atTheEnd() {
    double metres =
        TimedPlan.of(to(WayPoint.of("North", NORTH)).build(), Scenes.NOON)
            .orElseThrow()
            .length()
            .metres();
    return 10.0 - (metres / (4.0 * Told.KNOT) + 600.0) / 3600.0;
  }

  @Test
  void theLevelCountsUntilTheLastIsAshore() {
    double[] spare = {0.4, 0.2, -0.1};
    Verdict.Answer[] answers = {WITHIN, WARNED, STOPPED};
    for (int i = 0; i < spare.length; i++) {
      Landing landing = Landing.between("Bar", ofMetres(atTheEnd() - spare[i]), ofMetres(20.0));
      PassageBuilder passage = to(north(landing)).level("Bar", falling(1e9));
      Verdict verdict = Told.of(passage, Scenes.NOON, "landing at North");
      assertEquals(answers[i], verdict.answer());
      assertEquals(spare[i], verdict.figure().orElseThrow(), 1e-3);
    }
    Landing landing = Landing.between("Bar", ofMetres(0.0), ofMetres(20.0));
    PassageBuilder unknown = to(north(landing)).level("Bar", falling(3600));
    assertEquals(NOT_CHECKED, Told.of(unknown, Scenes.NOON, "landing at North").answer());
  }

  @Test
  void aWarningOfTheWindDoesNotHideAMissingLevel() {
    Landing landing =
        Landing.between("Bar", ofMetres(15.0), ofMetres(20.0))
            .withOpenSector(TrueBearing.ofDegrees(330), TrueBearing.ofDegrees(30));
    PassageBuilder passage =
        to(north(landing))
            .level("Bar", falling(1e9))
            .wind(Told.wind(0, 11))
            .limits(PassageLimits.none().withOnshoreWind(Speed.ofKnots(10), Speed.ofKnots(15)));
    Verdict verdict = Told.of(passage, Scenes.NOON, "landing at North");
    assertEquals(STOPPED, verdict.answer());
    assertEquals("metres within its levels", verdict.unit());
  }

  @Test
  void windOntoALandingWarnsStopsAndIsNotCheckedWithoutAWind() {
    Landing landing =
        Landing.atAnyLevel().withOpenSector(TrueBearing.ofDegrees(330), TrueBearing.ofDegrees(30));
    PassageLimits limits =
        PassageLimits.none().withOnshoreWind(Speed.ofKnots(10), Speed.ofKnots(15));
    double[][] winds = {{0, 9}, {0, 11}, {329.5, 16}, {330.5, 16}, {29.5, 16}, {180, 16}};
    Verdict.Answer[] answers = {WITHIN, WARNED, WITHIN, STOPPED, STOPPED, WITHIN};
    for (int i = 0; i < winds.length; i++) {
      PassageBuilder passage =
          to(north(landing)).wind(Told.wind(winds[i][0], winds[i][1])).limits(limits);
      Verdict verdict = Told.of(passage, Scenes.NOON, "landing at North");
      assertEquals(answers[i], verdict.answer(), "case " + i);
    }
    PassageBuilder noWind = to(north(landing)).limits(limits);
    assertEquals(NOT_CHECKED, Told.of(noWind, Scenes.NOON, "landing at North").answer());
    PassageBuilder swell = to(north(landing)).swellFrom(TrueBearing.ofDegrees(10));
    assertEquals(STOPPED, Told.of(swell, Scenes.NOON, "landing at North").answer());
    PassageBuilder lee = to(north(landing)).swellFrom(TrueBearing.ofDegrees(100));
    assertEquals(WITHIN, Told.of(lee, Scenes.NOON, "landing at North").answer());
  }

  @Test
  void launchingAgainAfterAStopNeedsItsWaterToo() {
    // on arrival there are about 8.4 m, two hours later 6.2: the stop strands the party
    WayPoint stop =
        north(Landing.between("Bar", ofMetres(7.0), ofMetres(20.0)))
            .withStop(Stop.ashore(Duration.ofHours(2)));
    PassageBuilder passage = to(stop).to(WayPoint.of("Home", SOUTH)).level("Bar", falling(1e9));
    Verdict verdict = Told.of(passage, Scenes.NOON, "landing at North");
    assertEquals(STOPPED, verdict.answer());
    // arrival, ten minutes to land, two hours ashore; the last is launched 15 minutes later
    double last = atTheEnd() - 2.0 - 0.25;
    assertEquals(last - 7.0, verdict.figure().orElseThrow(), 1e-3);
  }

  private static Lane lane(double widthMetres, double turnedDegrees) {
    return lane(46.05, widthMetres, turnedDegrees);
  }

  private static Lane lane(double latitude, double widthMetres, double turnedDegrees) {
    double tangent = Math.tan(Math.toRadians(turnedDegrees));
    double half = 0.05; // degrees of longitude, to each side of the leg
    double up = half * tangent * Math.cos(Math.toRadians(46.05));
    return Lane.along(
        "Orrin fairway",
        List.of(
            Position.ofDegrees(latitude - up, -26.0 - half),
            Position.ofDegrees(latitude + up, -26.0 + half)),
        ofMetres(widthMetres));
  }

  @Test
  void theHeadingAcrossALaneIsHeldAgainstARightAngle() {
    PassageLimits limits = PassageLimits.none().withLaneAngle(15, 30);
    double[] turned = {10, 20, 40};
    Verdict.Answer[] answers = {WITHIN, WARNED, STOPPED};
    for (int i = 0; i < turned.length; i++) {
      PassageBuilder passage =
          to(WayPoint.of("North", NORTH)).limits(limits).lanes(List.of(lane(400, turned[i])));
      Verdict verdict = Told.of(passage, Scenes.NOON, "crossing");
      assertEquals(answers[i], verdict.answer());
      assertEquals(turned[i], verdict.figure().orElseThrow(), 0.2);
      // the slower party, 3.2 kn, on a slanting way through 400 m
      double inside = 400.0 / Math.cos(Math.toRadians(turned[i])) / (3.2 * Told.KNOT) / 60.0;
      String begin = "crossing Orrin fairway, ";
      String words = verdict.reason().substring(begin.length());
      double minutes = Double.parseDouble(words.substring(0, words.indexOf(' ')));
      assertEquals(inside, minutes, 1.1);
      assertTrue(minutes >= inside - 0.1, words);
    }
  }

  @Test
  void aLaneNarrowerThanAMinuteOfPaddlingIsStillCrossed() {
    PassageLimits limits = PassageLimits.none().withLaneAngle(15, 30);
    for (int i = 0; i < 40; i++) {
      // 20 m wide and 11 m further each time, where a minute is worth 123 m
      Lane narrow = lane(46.05 + 0.0001 * i, 20, 40);
      PassageBuilder passage =
          to(WayPoint.of("North", NORTH)).limits(limits).lanes(List.of(narrow));
      Verdict verdict = Told.of(passage, Scenes.NOON, "crossing");
      assertEquals(STOPPED, verdict.answer());
      assertTrue(verdict.reason().contains(", 1 min inside"), verdict.reason());
    }
  }

  @Test
  void aLaneWithoutALimitIsNotCheckedAndOneNotEnteredIsWithin() {
    PassageBuilder passage = to(WayPoint.of("North", NORTH)).lanes(List.of(lane(400, 0)));
    assertEquals(NOT_CHECKED, Told.of(passage, Scenes.NOON, "crossing").answer());
    Lane far =
        Lane.along(
            "Orrin fairway",
            List.of(Position.ofDegrees(46.2, -26.1), Position.ofDegrees(46.2, -25.9)),
            ofMetres(400));
    PassageBuilder beside = to(WayPoint.of("North", NORTH)).lanes(List.of(far));
    assertEquals(WITHIN, Told.of(beside, Scenes.NOON, "crossing").answer());
  }
}
