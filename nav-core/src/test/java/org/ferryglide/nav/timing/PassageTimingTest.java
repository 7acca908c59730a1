package org.ferryglide.nav.timing;

import static org.ferryglide.nav.steer.SteeringScenes.NOON;
import static org.ferryglide.nav.steer.SteeringScenes.NOON_SECONDS;
import static org.ferryglide.nav.steer.SteeringScenes.START;
import static org.ferryglide.nav.steer.SteeringScenes.TIDE;
import static org.ferryglide.nav.steer.SteeringScenes.leg;
import static org.ferryglide.nav.steer.SteeringScenes.solver;
import static org.ferryglide.nav.steer.SteeringScenes.steady;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.HourlyStream;
import org.ferryglide.nav.steer.Reason;
import org.ferryglide.nav.steer.Route;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.water.LocalStream;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.StreamMoment;
import org.junit.jupiter.api.Test;

class PassageTimingTest {
  @Test
  void theLatestDepartureArrivesInTime() {
    Route route = Route.of(List.of(leg(20, 4), RhumbLeg.between(leg(20, 4).end(), START)));
    Instant wanted = NOON.plus(Duration.ofHours(4));
    for (Strategy strategy : List.of(Strategy.constantHeading(), Strategy.trackHeld())) {
      CourseToSteer solver = solver(3.2, TIDE).withStrategy(strategy);
      SteeredRoute steered = PassageTiming.of(solver, route).arrivingBy(wanted).orElseThrow();
      assertEquals(EpochSeconds.of(wanted), EpochSeconds.of(steered.arrival()), 0.05);
      SteeredRoute later = solver.solve(route, steered.departure().plusMillis(100)).orElseThrow();
      assertTrue(later.arrival().isAfter(wanted));
    }
  }

  @Test
  void anArrivalThatCannotBeHasItsReason() {
    assertEquals(
        Reason.ADVERSE_STREAM,
        PassageTiming.of(solver(2, steady(180, 3)), Route.of(List.of(leg(0, 4))))
            .arrivingBy(NOON)
            .why()
            .orElseThrow()
            .reason());
  }

  @Test
  void slackIsFoundInTheStreamAndArrivedAt() {
    List<StreamMoment> slacks =
        LocalStream.of(TIDE, START)
            .slackWaters(NOON.minusSeconds(7200), NOON.plus(Duration.ofHours(7)))
            .items();
    assertEquals(2, slacks.size());
    // between hours 4 and 5 after the start: (0.4, 0.1) to (-0.8, 0.7); least at t = 7/30
    double t = (0.4 * 1.2 - 0.1 * 0.6) / (1.2 * 1.2 + 0.6 * 0.6);
    assertEquals(NOON_SECONDS - 7200 + (4 + t) * 3600, EpochSeconds.of(slacks.get(0).time()), 1.0);
    assertEquals(
        Math.hypot(0.4 - 1.2 * t, 0.1 + 0.6 * t), slacks.get(0).stream().rate().knots(), 1e-4);
    Route route = Route.of(List.of(leg(90, 2)));
    SteeredRoute steered =
        PassageTiming.of(solver(3.2, TIDE), route)
            .arrivingAtSlack(NOON, NOON.plus(Duration.ofHours(7)))
            .orElseThrow();
    assertEquals(EpochSeconds.of(slacks.get(0).time()), EpochSeconds.of(steered.arrival()), 0.1);
    assertFalse(
        PassageTiming.of(solver(3.2, TIDE), route)
            .arrivingAtSlack(NOON, NOON.plus(Duration.ofHours(1)))
            .isSolved());
  }

  /**
   * The way is known until 400 s before slack, the last hundred metres for ever: the latest arrival
   * is about a minute later, five before the slack.
   */
  @Test
  void anArrivalMinutesBeforeSlackIsNotAtSlack() {
    RhumbLeg leg = leg(90, 2);
    double slack = NOON_SECONDS + 3 * 3600;
    double hundredMetres = 100.0 / (111_320.0 * Math.cos(Math.toRadians(55)));
    double near = leg.end().longitudeDegrees() - hundredMetres;
    StreamField stream =
        (latitude, longitude, seconds, out, offset) -> {
          out[offset] = 0.0;
          out[offset + 1] = longitude > near ? 0.5 * (seconds - slack) / 3600.0 : 0.0;
          return longitude > near || seconds < slack - 400.0;
        };
    CourseToSteer solver = solver(3.2, stream).withStrategy(Strategy.trackHeld());
    PassageTiming timing = PassageTiming.of(solver, Route.ofLegs(leg));
    Instant turn = NOON.plus(Duration.ofHours(3));
    double early =
        EpochSeconds.of(turn) - EpochSeconds.of(timing.arrivingBy(turn).orElseThrow().arrival());
    assertTrue(early > 250.0 && early < 400.0, early + " s early");
    assertEquals(
        Reason.BEYOND_HORIZON,
        timing.arrivingAtSlack(NOON, NOON.plus(Duration.ofHours(6))).why().orElseThrow().reason());
  }

  @Test
  void whereNoStreamIsKnownNoSlackIsNotNever() {
    Route route = Route.of(List.of(leg(90, 2)));
    assertEquals(
        Reason.NO_DATA,
        PassageTiming.of(solver(3.2, TIDE), route)
            .arrivingAtSlack(NOON.plus(Duration.ofDays(2)), NOON.plus(Duration.ofDays(3)))
            .why()
            .orElseThrow()
            .reason());
  }

  @Test
  void theLeastSpeedArrivesJustInTime() {
    Route route = Route.of(List.of(leg(90, 5)));
    Instant by = NOON.plusSeconds(5472);
    // plane vectors: 3.5 kn take 91.2 minutes against 1.2 kn across
    Speed least =
        PassageTiming.of(solver(1, steady(180, 1.2)), route).leastSpeed(NOON, by).orElseThrow();
    assertEquals(3.5, least.knots(), 0.003);
    assertTrue(
        !solver(least.knots(), steady(180, 1.2))
            .solve(route, NOON)
            .orElseThrow()
            .arrival()
            .isAfter(by));
    assertEquals(
        Speed.ZERO,
        PassageTiming.of(solver(1, steady(90, 5)), route)
            .leastSpeed(NOON, NOON.plusSeconds(7200))
            .orElseThrow());
    assertFalse(
        PassageTiming.of(solver(1, steady(270, 25)), route)
            .leastSpeed(NOON, NOON.plusSeconds(7200))
            .isSolved());
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
    Instant next =
        PassageTiming.of(solver, route).nextDeparture(day.from(), day.until()).orElseThrow();
    assertEquals(NOON_SECONDS + 3 * 3600, EpochSeconds.of(next), 1.0);
    assertEquals(
        Reason.ADVERSE_STREAM,
        PassageTiming.of(solver, route)
            .nextDeparture(NOON, NOON.plusSeconds(3600))
            .why()
            .orElseThrow()
            .reason());
    assertEquals(
        day.until(),
        PassageTiming.of(solver, route)
            .nextDeparture(day.until().minusSeconds(9000), day.until())
            .orElseThrow()
            .plusSeconds(9000));
  }

  @Test
  void oneHeadingStaysRightForAnInterval() {
    Leg leg = leg(0, 3);
    CourseToSteer solver = solver(3.2, TIDE);
    double heading = solver.solve(leg, NOON).orElseThrow().courseToSteer().degrees();
    TimeSpan interval =
        PassageTiming.of(solver, Route.ofLegs(leg)).launchInterval(NOON, 3.0).orElseThrow();
    assertTrue(interval.contains(NOON));
    for (Instant edge : List.of(interval.from(), interval.until())) {
      double there = solver.solve(leg, edge).orElseThrow().courseToSteer().degrees();
      assertEquals(3.0, Math.abs(Math.IEEEremainder(there - heading, 360)), 0.02);
    }
    assertEquals(
        "tolerance of the heading must be a finite number of degrees above 0, but was 0.0",
        assertThrows(
                IllegalArgumentException.class,
                () -> PassageTiming.of(solver, Route.ofLegs(leg)).launchInterval(NOON, 0.0))
            .getMessage());
  }
}
