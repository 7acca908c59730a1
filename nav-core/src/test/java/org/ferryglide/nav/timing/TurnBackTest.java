package org.ferryglide.nav.timing;

import static org.ferryglide.nav.steer.SteeringScenes.NOON;
import static org.ferryglide.nav.steer.SteeringScenes.NOON_SECONDS;
import static org.ferryglide.nav.steer.SteeringScenes.START;
import static org.ferryglide.nav.steer.SteeringScenes.TIDE;
import static org.ferryglide.nav.steer.SteeringScenes.leg;
import static org.ferryglide.nav.steer.SteeringScenes.solver;
import static org.ferryglide.nav.steer.SteeringScenes.steady;
import static org.ferryglide.testing.Refusal.message;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Reason;
import org.ferryglide.nav.steer.Route;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

class TurnBackTest {
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
    // 4.13 kn and 1.87 kn: a radius between two of the distances that are tried
    TurnPoint between =
        TurnBack.radius(
                solver(3, steady(90, 1.13)),
                START,
                TrueBearing.ofDegrees(90),
                NOON,
                NOON.plusSeconds(3 * 3600))
            .orElseThrow();
    assertEquals(3.0 * 4.13 * 1.87 / 6.0, between.fromStart().nauticalMiles(), 0.001);
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

  /** Out east and then north in still water, so that a wrong way home has another length. */
  @Test
  void theWayHomeFromTheLastLegRunsBackThroughTheWaypoint() {
    RhumbLeg east = leg(90, 3);
    RhumbLeg north =
        RhumbLeg.from(east.end(), TrueBearing.ofDegrees(0), Distance.ofNauticalMiles(2));
    CourseToSteer solver = solver(3, StreamField.slack());
    SteeredRoute out = solver.solve(Route.ofLegs(east, north), NOON).orElseThrow();
    SteeredRoute home = TurnBack.homeFrom(solver, out, NOON.plusSeconds(3600 + 1200)).orElseThrow();
    assertEquals(2, home.legs().size());
    assertEquals(east.end(), home.legs().get(0).leg().end());
    assertEquals(START, home.route().end());
    assertEquals(4800.0, home.duration().toMillis() / 1000.0, 1.0);
    // exactly at the way point the way home is the first leg alone
    SteeredRoute fromWaypoint = TurnBack.homeFrom(solver, out, out.timeAt(1)).orElseThrow();
    assertEquals(1, fromWaypoint.legs().size());
    assertEquals(3600.0, fromWaypoint.duration().toMillis() / 1000.0, 1.0);
    // 100 minutes out; home by two and a half hours: turn after 75 minutes, in the last leg
    TurnPoint last = TurnBack.pointOfNoReturn(solver, out, NOON.plusSeconds(9000)).orElseThrow();
    assertEquals(NOON_SECONDS + 4500, EpochSeconds.of(last.time()), 1.0);
    assertEquals(NOON_SECONDS + 9000, EpochSeconds.of(last.home()), 1.0);
    assertEquals(Math.hypot(3.0, 0.75), last.fromStart().nauticalMiles(), 0.01);
    // as long on as back: half of 100 minutes
    TurnPoint equal = TurnBack.equalTime(solver, out).orElseThrow();
    assertEquals(NOON_SECONDS + 3000, EpochSeconds.of(equal.time()), 1.0);
    assertEquals(2.5, equal.fromStart().nauticalMiles(), 0.01);
    assertEquals(NOON_SECONDS + 6000, EpochSeconds.of(equal.home()), 1.0);
  }

  /** The stream that carries out bars the way home; the start itself is no turning point. */
  @Test
  void aWayHomeThatIsBarredAtOnceHasNoPointOfNoReturn() {
    CourseToSteer solver = solver(3, steady(90, 4));
    SteeredRoute out = solver.solve(Route.of(List.of(leg(90, 6))), NOON).orElseThrow();
    assertEquals(
        Reason.ADVERSE_STREAM,
        TurnBack.pointOfNoReturn(solver, out, NOON.plus(Duration.ofHours(9)))
            .why()
            .orElseThrow()
            .reason());
  }

  @Test
  void aTurnPointThatCannotBeIsRefused() {
    Position here = Position.ofDegrees(50, 0);
    Instant noon = Instant.parse("2026-06-01T12:00:00Z");
    assertEquals(
        "the start must be reached after the turn at 2026-06-01T12:00:00Z, but was at"
            + " 2026-06-01T11:00:00Z",
        message(() -> new TurnPoint(noon, here, Distance.ofMetres(1), noon.minusSeconds(3600))));
    assertEquals(
        "distance from the start must be a finite number of metres, at least 0, but was -1.0",
        message(() -> new TurnPoint(noon, here, Distance.ofMetres(-1), noon)));
  }
}
