package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.EpochSeconds;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

class QuestionsTest {
  private static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");
  private static final double NOON_SECONDS = EpochSeconds.of(NOON);
  private static final Position START = Position.ofDegrees(55, -6);
  private static final double[] EAST = {0.2, 1.0, 1.8, 1.5, 0.4, -0.8, -1.6, -1.2, -0.3, 0.5};
  private static final double[] NORTH = {-0.5, -0.9, -1.1, -0.6, 0.1, 0.7, 1.2, 0.9, 0.2, -0.4};
  private static final StreamField TIDE = HourlyStream.lines(NOON_SECONDS - 7200, EAST, NORTH);

  private static RhumbLeg leg(double course, double miles) {
    return RhumbLeg.from(START, TrueBearing.ofDegrees(course), Distance.ofNauticalMiles(miles));
  }

  private static CourseToSteer solver(double knots, StreamField stream) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(knots)), stream)
        .withLimits(SteeringLimits.NONE);
  }

  private static StreamField steady(double set, double knots) {
    return StreamField.steady(
        Velocity.ofSetAndRate(TrueBearing.ofDegrees(set), Speed.ofKnots(knots)));
  }

  @Test
  void theLatestDepartureArrivesInTime() {
    Route route = Route.of(List.of(leg(20, 4), RhumbLeg.between(leg(20, 4).end(), START)));
    Instant wanted = NOON.plus(Duration.ofHours(4));
    for (Strategy strategy : List.of(Strategy.oneHeading(), Strategy.trackHeld())) {
      CourseToSteer solver = solver(3.2, TIDE).withStrategy(strategy);
      SteeredRoute steered = solver.arrivingBy(route, wanted).orElseThrow();
      assertEquals(EpochSeconds.of(wanted), EpochSeconds.of(steered.arrival()), 0.05);
      SteeredRoute later = solver.solve(route, steered.departure().plusMillis(100)).orElseThrow();
      assertTrue(later.arrival().isAfter(wanted));
    }
  }

  @Test
  void anArrivalThatCannotBeHasItsReason() {
    assertEquals(
        Reason.ADVERSE_STREAM,
        solver(2, steady(180, 3))
            .arrivingBy(Route.of(List.of(leg(0, 4))), NOON)
            .why()
            .orElseThrow()
            .reason());
  }

  @Test
  void slackIsFoundInTheStreamAndArrivedAt() {
    List<SlackWater> slacks =
        SlackWater.between(TIDE, START, NOON.minusSeconds(7200), NOON.plus(Duration.ofHours(7)));
    assertEquals(2, slacks.size());
    // between hours 4 and 5 after the start: (0.4, 0.1) to (-0.8, 0.7); least at t = 7/30
    double t = (0.4 * 1.2 - 0.1 * 0.6) / (1.2 * 1.2 + 0.6 * 0.6);
    assertEquals(NOON_SECONDS - 7200 + (4 + t) * 3600, EpochSeconds.of(slacks.get(0).time()), 1.0);
    assertEquals(
        Math.hypot(0.4 - 1.2 * t, 0.1 + 0.6 * t), slacks.get(0).stream().rate().knots(), 1e-4);
    Route route = Route.of(List.of(leg(90, 2)));
    SteeredRoute steered =
        solver(3.2, TIDE)
            .arrivingAtSlack(route, TimeSpan.of(NOON, NOON.plus(Duration.ofHours(7))))
            .orElseThrow();
    assertEquals(EpochSeconds.of(slacks.get(0).time()), EpochSeconds.of(steered.arrival()), 0.1);
    assertFalse(
        solver(3.2, TIDE)
            .arrivingAtSlack(route, TimeSpan.of(NOON, NOON.plus(Duration.ofHours(1))))
            .isSolved());
  }

  @Test
  void theSlackOfATableInStepsIsTheMiddleOfItsLeastStep() {
    StreamField steps =
        HourlyStream.steps(NOON_SECONDS, new double[] {2, 1, 0.2, -1, -2}, new double[5]);
    List<SlackWater> slacks =
        SlackWater.between(steps, START, NOON, NOON.plus(Duration.ofHours(4)));
    assertEquals(1, slacks.size());
    assertEquals(NOON_SECONDS + 7200, EpochSeconds.of(slacks.get(0).time()), 1.0);
    assertThrows(
        IllegalArgumentException.class,
        () -> SlackWater.between(steps, START, NOON, NOON.minusSeconds(1)));
  }

  @Test
  void theLeastSpeedArrivesJustInTime() {
    Route route = Route.of(List.of(leg(90, 5)));
    Instant by = NOON.plusSeconds(5472);
    // plane vectors: 3.5 kn take 91.2 minutes against 1.2 kn across
    Speed least = solver(1, steady(180, 1.2)).leastSpeed(route, NOON, by).orElseThrow();
    assertEquals(3.5, least.knots(), 0.003);
    assertTrue(
        !solver(least.knots(), steady(180, 1.2))
            .solve(route, NOON)
            .orElseThrow()
            .arrival()
            .isAfter(by));
    assertEquals(
        Speed.ZERO,
        solver(1, steady(90, 5)).leastSpeed(route, NOON, NOON.plusSeconds(7200)).orElseThrow());
    assertFalse(
        solver(1, steady(270, 25)).leastSpeed(route, NOON, NOON.plusSeconds(7200)).isSolved());
  }

  @Test
  void theNextDepartureIsTheFirstPossible() {
    // 4 kn against until 1500, then slack
    StreamField turning =
        HourlyStream.steps(
            NOON_SECONDS + 1800,
            new double[] {0, 0, 0, 0, 0, 0, 0},
            new double[] {-4, -4, -4, 0, 0, 0, 0});
    Route route = Route.of(List.of(leg(0, 3)));
    CourseToSteer solver = solver(3, turning).withStrategy(Strategy.trackHeld());
    TimeSpan day = TimeSpan.of(NOON, NOON.plus(Duration.ofHours(6)));
    Instant next = solver.nextDeparture(route, day).orElseThrow();
    assertEquals(NOON_SECONDS + 3 * 3600, EpochSeconds.of(next), 1.0);
    assertEquals(
        Reason.ADVERSE_STREAM,
        solver
            .nextDeparture(route, TimeSpan.of(NOON, NOON.plusSeconds(3600)))
            .why()
            .orElseThrow()
            .reason());
    assertEquals(
        day.until(),
        solver
            .nextDeparture(route, TimeSpan.of(day.until().minusSeconds(9000), day.until()))
            .orElseThrow()
            .plusSeconds(9000));
  }

  @Test
  void oneHeadingStaysRightForAnInterval() {
    Leg leg = leg(0, 3);
    CourseToSteer solver = solver(3.2, TIDE);
    double heading = solver.solve(leg, NOON).orElseThrow().courseToSteer().degrees();
    TimeSpan interval = solver.launchInterval(leg, NOON, 3.0).orElseThrow();
    assertTrue(interval.contains(NOON));
    for (Instant edge : List.of(interval.from(), interval.until())) {
      double there = solver.solve(leg, edge).orElseThrow().courseToSteer().degrees();
      assertEquals(3.0, Math.abs(Math.IEEEremainder(there - heading, 360)), 0.02);
    }
    assertEquals(
        "tolerance of the heading must be a finite number of degrees above 0, but was 0.0",
        assertThrows(IllegalArgumentException.class, () -> solver.launchInterval(leg, NOON, 0.0))
            .getMessage());
  }

  @Test
  void theRadiusInASteadyStreamIsTheClosedForm() {
    // out at 4 kn, back at 2 kn in 3 hours: 3 * 4 * 2 / 6 = 4 NM, turning after 1 hour
    TurnPoint turn =
        TurnBack.radius(
                solver(3, steady(90, 1)),
                START,
                TrueBearing.ofDegrees(90),
                NOON,
                NOON.plusSeconds(3 * 3600))
            .orElseThrow();
    assertEquals(4.0, turn.fromStart().nauticalMiles(), 0.001);
    assertEquals(NOON_SECONDS + 3600, EpochSeconds.of(turn.time()), 1.0);
    assertEquals(NOON_SECONDS + 3 * 3600, EpochSeconds.of(turn.home()), 2.0);
    assertFalse(
        TurnBack.radius(
                solver(3, steady(90, 4)),
                START,
                TrueBearing.ofDegrees(90),
                NOON,
                NOON.plusSeconds(3 * 3600))
            .isSolved());
    assertFalse(
        TurnBack.radius(solver(3, TIDE), START, TrueBearing.ofDegrees(90), NOON, NOON).isSolved());
  }

  @Test
  void pointOfNoReturnAndEqualTimeInASteadyStreamAreTheClosedForms() {
    // out at 4 kn, home at 2 kn; 6 NM: equal time where d / 2 = (6 - d) / 4, at 2 NM, 30 minutes
    Route route =
        Route.of(
            List.of(
                leg(90, 2.5),
                RhumbLeg.from(
                    leg(90, 2.5).end(), TrueBearing.ofDegrees(90), Distance.ofNauticalMiles(3.5))));
    CourseToSteer solver = solver(3, steady(90, 1));
    SteeredRoute out = solver.solve(route, NOON).orElseThrow();
    TurnPoint equal = TurnBack.equalTime(solver, out).orElseThrow();
    assertEquals(NOON_SECONDS + 1800, EpochSeconds.of(equal.time()), 1.0);
    assertEquals(2.0, equal.fromStart().nauticalMiles(), 0.001);
    // home by 1500: turn after 1 hour, 4 NM out, in the second leg
    TurnPoint last =
        TurnBack.pointOfNoReturn(solver, out, NOON.plusSeconds(3 * 3600)).orElseThrow();
    assertEquals(NOON_SECONDS + 3600, EpochSeconds.of(last.time()), 1.0);
    assertEquals(NOON_SECONDS + 3 * 3600, EpochSeconds.of(last.home()), 2.0);
    assertEquals(4.0, last.fromStart().nauticalMiles(), 0.001);
    assertEquals(
        out.arrival(),
        TurnBack.pointOfNoReturn(solver, out, NOON.plus(Duration.ofHours(20)))
            .orElseThrow()
            .time());
    assertFalse(TurnBack.pointOfNoReturn(solver, out, NOON.minusSeconds(60)).isSolved());
    assertEquals(last.home(), TurnBack.homeFrom(solver, out, last.time()).orElseThrow().arrival());
  }

  @Test
  void equalTimeIsBarredWhereTheStreamBarsTheWayHome() {
    Route route = Route.of(List.of(leg(90, 6)));
    CourseToSteer solver = solver(3, steady(90, 4));
    SteeredRoute out = solver.solve(route, NOON).orElseThrow();
    assertEquals(
        Reason.ADVERSE_STREAM, TurnBack.equalTime(solver, out).why().orElseThrow().reason());
  }

  @Test
  void aSeparationSchemeIsCrossedWithTheHeadingAtRightAngles() {
    // 3 kn across a lane of 3 NM that runs 090, the stream sets 090 at 1.5 kn: an hour, 1.5 NM
    // along
    SeparationCrossing crossing =
        SeparationCrossing.solve(
                solver(3, steady(90, 1.5)),
                Position.ofDegrees(0, 0),
                TrueBearing.ofDegrees(90),
                Distance.ofNauticalMiles(3),
                TrueBearing.ofDegrees(200),
                NOON)
            .orElseThrow();
    assertEquals(TrueBearing.ofDegrees(180), crossing.heading());
    assertEquals(3600, crossing.time().toMillis() / 1000.0, 0.1);
    assertEquals(1.5, crossing.carriedAlong().nauticalMiles(), 0.001);
    assertEquals(3.0, crossing.speedAcross().knots(), 0.001);
    assertEquals(-0.05, crossing.exit().latitudeDegrees(), 0.001);
    SeparationCrossing other =
        SeparationCrossing.solve(
                solver(3, steady(90, 1.5)),
                Position.ofDegrees(0, 0),
                TrueBearing.ofDegrees(270),
                Distance.ofNauticalMiles(3),
                TrueBearing.ofDegrees(340),
                NOON)
            .orElseThrow();
    assertEquals(TrueBearing.ofDegrees(0), other.heading());
    assertEquals(-1.5, other.carriedAlong().nauticalMiles(), 0.001);
    assertFalse(
        SeparationCrossing.solve(
                solver(3, steady(0, 4)),
                Position.ofDegrees(0, 0),
                TrueBearing.ofDegrees(90),
                Distance.ofNauticalMiles(3),
                TrueBearing.ofDegrees(200),
                NOON)
            .isSolved());
  }

  @Test
  void routesThatDoNotHangTogetherAreRefused() {
    assertEquals(
        "a route must have at least one leg",
        assertThrows(IllegalArgumentException.class, () -> Route.of(List.of())).getMessage());
    assertEquals(
        "leg 2 must start where leg 1 ends, at " + leg(0, 1).end() + ", but starts at " + START,
        assertThrows(IllegalArgumentException.class, () -> Route.of(List.of(leg(0, 1), leg(0, 1))))
            .getMessage());
    assertEquals(
        "a route must have at least two waypoints, but had 1",
        assertThrows(IllegalArgumentException.class, () -> Route.ofRhumbLegs(START)).getMessage());
    NotPossible why =
        solver(2, steady(180, 3))
            .solve(Route.ofRhumbLegs(leg(0, 1).end(), START, leg(0, 2).end()), NOON)
            .why()
            .orElseThrow();
    assertEquals(2, why.legNumber().orElseThrow());
    assertTrue(why.message().endsWith(", in leg 2"), why.message());
  }
}
