package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.Spread;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.steer.TrackPoint;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.junit.jupiter.api.Test;

/** A quickest leg of a passage keeps out of what the party has named, looked at every second. */
class KeptOutTest {
  private static final double ROCK_X = 3.0;
  private static final double ROCK_Y = 0.05;

  private static PassageBuilder passage(StreamField stream) {
    return Passage.builder("quickest", ZoneOffset.UTC, Scenes.party(4))
        .from(WayPoint.of("from", PlanePatch.at(0, 0)))
        .to(
            WayPoint.of("to", PlanePatch.at(6, 0)),
            LegOptions.usual().withStrategy(Strategy.quickest()))
        .stream(stream);
  }

  private static SteeredRoute steered(PassageBuilder passage) {
    return PassageSolver.withNotes(passage.build()).leaving(Scenes.NOON).orElseThrow();
  }

  private static double nearest(SteeredRoute route, double x, double y) {
    double nearest = Double.POSITIVE_INFINITY;
    for (TrackPoint point : route.legs().get(0).groundTrack().pointsEvery(1.0)) {
      double east = PlanePatch.x(point.position().longitudeDegrees()) - x;
      double north = PlanePatch.y(point.position().latitudeDegrees()) - y;
      nearest = Math.min(nearest, 1000.0 * Math.hypot(east, north));
    }
    return nearest;
  }

  @Test
  void theDistanceToADangerIsKept() {
    Danger rock = Danger.point("rock", PlanePatch.at(ROCK_X, ROCK_Y), Distance.ofMetres(300));
    PassageBuilder passage = passage(StreamField.slack());
    assertTrue(nearest(steered(passage), ROCK_X, ROCK_Y) < 100);
    SteeredRoute clear = steered(passage.dangers(List.of(rock)));
    double off = nearest(clear, ROCK_X, ROCK_Y);
    assertTrue(off >= 300 && off < 312, off + " m off"); // a circle of 16 sides, and 2 m
  }

  @Test
  void anAreaIsKeptOffWithItsDistanceWhileItIsClosed() {
    List<Position> square =
        List.of(
            PlanePatch.at(2.5, -0.5),
            PlanePatch.at(3.5, -0.5),
            PlanePatch.at(3.5, 0.6),
            PlanePatch.at(2.5, 0.6));
    Danger range = Danger.area("range", square, Distance.ofMetres(200));
    PassageBuilder passage = passage(StreamField.slack());
    double middle = nearest(steered(passage.dangers(List.of(range))), 3.0, -0.5);
    assertTrue(middle >= 200, middle + " m off");
    Danger later =
        range.closedDuring(
            List.of(TimeSpan.of(Scenes.NOON.plusSeconds(36000), Duration.ofHours(1))));
    assertTrue(nearest(steered(passage.dangers(List.of(later))), 3.0, 0.0) < 20);
  }

  /** The solver of a leg gives the leg as planned, dangers, limits, rests and speed included. */
  @Test
  void theSolverOfALegSteersItAsAPlanDoes() {
    Danger rock = Danger.point("rock", PlanePatch.at(ROCK_X, ROCK_Y), Distance.ofMetres(300));
    LegOptions slow = LegOptions.usual().withSpeed(Speed.ofKnots(3)).withoutRests();
    Passage passage =
        passage(StreamField.slack())
            .to(WayPoint.of("further", PlanePatch.at(6, 2)), slow)
            .dangers(List.of(rock))
            .build();
    TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).orElseThrow();
    for (PlannedLeg leg : plan.legs()) {
      SteeredLeg alone =
          passage
              .courseToSteer(leg.leg().number())
              .solve(leg.leg().leg(), leg.departure())
              .orElseThrow();
      assertEquals(leg.arrival(), alone.arrival());
      assertEquals(leg.steered().strategy(), alone.strategy());
    }
    for (SteeredLeg way :
        passage.courseToSteer(1).quickestWays(passage.legs().get(0).leg(), Scenes.NOON, 2)) {
      double off = nearest(SteeredRoute.of(List.of(way)), ROCK_X, ROCK_Y);
      assertTrue(off >= 300, off + " m off");
    }
  }

  @Test
  void aLegPaddledOtherwiseLeavesTheRestAsItIs() {
    Passage passage =
        passage(StreamField.slack())
            .to(WayPoint.of("further", PlanePatch.at(6, 2)))
            .limits(PassageLimits.none().withTimeAfloat(Duration.ofHours(1), Duration.ofHours(9)))
            .build();
    Instant usual = TimedPlan.of(passage, Scenes.NOON).orElseThrow().arrival();
    LegOptions same = passage.legs().get(1).options();
    Passage again = passage.withLegOptions(2, same);
    assertEquals(usual, TimedPlan.of(again, Scenes.NOON).orElseThrow().arrival());
    Passage slower = passage.withLegOptions(2, same.withSpeed(Speed.ofKnots(2)));
    assertEquals(passage.legs().get(0), slower.legs().get(0));
    assertEquals(same, passage.legs().get(1).options());
    TimedPlan plan = TimedPlan.of(slower, Scenes.NOON).orElseThrow();
    assertTrue(plan.arrival().isAfter(usual));
    assertEquals(Verdict.Answer.WARNED, plan.verdicts().get(0).answer());
    assertEquals(passage.notChecked(), slower.notChecked());
  }

  @Test
  void aLegThatThePassageHasNotIsRefused() {
    Passage passage = passage(StreamField.slack()).build();
    for (int leg : new int[] {0, 2}) {
      String message = "leg must be in [1, 1], but was " + leg;
      assertEquals(
          message,
          assertThrows(IllegalArgumentException.class, () -> passage.courseToSteer(leg))
              .getMessage());
      assertEquals(
          message,
          assertThrows(
                  IllegalArgumentException.class,
                  () -> passage.withLegOptions(leg, LegOptions.usual()))
              .getMessage());
    }
  }

  @Test
  void aDangerAtTheLandingIsLeftToItsCheck() {
    Danger rock = Danger.point("rock", PlanePatch.at(6, 0.1), Distance.ofMetres(300));
    assertEquals(1, steered(passage(StreamField.slack()).dangers(List.of(rock))).legs().size());
  }

  @Test
  void streamsBeyondTheLimitAreKeptOutOf() {
    StreamField race =
        PlanePatch.stream((x, y) -> Math.exp(-4 * ((x - 3) * (x - 3) + y * y)), (x, y) -> 0.0);
    PassageBuilder passage = passage(race);
    assertTrue(steered(passage).legs().get(0).greatestStreamShare() > 0.45);
    SteeredRoute kept =
        steered(
            passage.limits(
                PassageLimits.none()
                    .withStream(Speed.ofKnots(0.8), Speed.ofKnots(1.0))
                    .withRateError(0.25)));
    // 1 kn less the error of the rate, at 4 kn; the search looks every 50 m
    assertEquals(0.8 / 4.0, kept.legs().get(0).greatestStreamShare(), 0.004);
  }

  /**
   * Who plans by the table goes the way planned: with the stream at the limit less its error, it is
   * as often within the limit as its rate is drawn below one standard deviation more.
   */
  @Test
  void anotherStreamThanTabledIsMetOnTheWayPlanned() {
    StreamField race =
        PlanePatch.stream((x, y) -> Math.exp(-4 * ((x - 3) * (x - 3) + y * y)), (x, y) -> 0.0);
    Passage passage =
        passage(race)
            .limits(
                PassageLimits.none()
                    .withStream(Speed.ofKnots(0.8), Speed.ofKnots(1.0))
                    .withRateError(0.25))
            .build();
    TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).orElseThrow();
    ErrorModel rate = ErrorModel.none().with(ErrorSource.STREAM_RATE, Spread.constant(0.25));
    PlanSpread spread = PlanSpread.of(plan, PlanErrors.of(rate), 1000, 4L);
    // Abramowitz and Stegun (1964), table 26.1; four standard deviations of so many draws, and
    // chords within two metres of a way where the rate grows by a hundredth of its error in them
    assertEquals(0.841, spread.chances().get("stream"), 0.046 + 0.005);
    PlanSpread still = PlanSpread.of(plan, PlanErrors.of(ErrorModel.none()), 2, 4L);
    double late =
        Duration.between(plan.arrival(), still.arrival(1, 1.0).orElseThrow()).toMillis() / 1000.0;
    assertEquals(0.0, late, 20.0); // an hour's way in chords
    assertEquals(0.0, still.covariance(1).rootMeanSquare().metres(), 0.1);
  }

  /** A limit of the stream asks for no wind: a forecast that ends bars no water. */
  @Test
  void aForecastThatEndsBarsNoWaterWhereOnlyTheStreamIsLimited() {
    WindField ends =
        (latitude, longitude, seconds, out, offset) -> {
          out[offset] = 0.0;
          out[offset + 1] = 0.0;
          return seconds < Scenes.NOON.getEpochSecond() + 600.0;
        };
    PassageLimits limits = PassageLimits.none().withStream(Speed.ofKnots(1.5), Speed.ofKnots(2.0));
    steered(passage(StreamField.slack()).wind(ends).limits(limits));
  }

  /** They count the way points as they were given. */
  @Test
  void conditionsOfTheProgramsOwnKeepTheWayPointsInDraws() {
    StreamField aside =
        PlanePatch.stream(
            (x, y) -> Math.exp(-(x - 3) * (x - 3) - (y - 0.8) * (y - 0.8)), (x, y) -> 0.0);
    TimedPlan plan = TimedPlan.of(passage(aside).build(), Scenes.NOON).orElseThrow();
    assertTrue(PlannedWay.of(plan).endOf(0) > 0);
    Condition own = Condition.arriveBy(plan.arrival(), plan.arrival().plusSeconds(600));
    TimedPlan with = TimedPlan.of(passage(aside).condition(own).build(), Scenes.NOON).orElseThrow();
    assertEquals(0, PlannedWay.of(with).endOf(0));
  }

  /** Chords know of no wait: the way is then searched again in draws. */
  @Test
  void aWayThatWaitsIsNotLaidDownInChords() {
    List<Position> wall =
        List.of(
            PlanePatch.at(2.5, -9),
            PlanePatch.at(3.5, -9),
            PlanePatch.at(3.5, 9),
            PlanePatch.at(2.5, 9));
    Danger range =
        Danger.area("range", wall, Distance.ofMetres(50))
            .closedDuring(List.of(TimeSpan.of(Scenes.NOON, Duration.ofHours(1))));
    TimedPlan plan =
        TimedPlan.of(passage(StreamField.slack()).dangers(List.of(range)).build(), Scenes.NOON)
            .orElseThrow();
    assertTrue(plan.arrival().isAfter(Scenes.NOON.plusSeconds(3600 + 1000)));
    assertEquals(plan.route(), PlannedWay.of(plan).route);
  }
}
