package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

class IsochronesTest {
  private static final Instant NOON = Instant.parse("2026-06-14T12:00:00Z");
  private static final Duration TWO_HOURS = Duration.ofHours(2);
  private static final double SPEED = 1.5;

  /** How late the front may be, and what a square of its grid is of two hours' way. */
  private static final double LATE_SHARE = 0.02;

  private static CourseToSteer solver(StreamField stream) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofMetresPerSecond(SPEED)), stream)
        .withStrategy(Strategy.quickest());
  }

  @Test
  void inStillWaterTheLinesAreCircles() {
    Position start = Position.ofDegrees(46, -26);
    Isochrones out = Isochrones.from(solver(StreamField.slack()), start, NOON, TWO_HOURS);
    List<List<Position>> lines = out.lineAt(NOON.plus(Duration.ofMinutes(90)));
    assertEquals(1, lines.size());
    double radius = 5400.0 * SPEED;
    assertTrue(lines.get(0).size() > 60);
    for (Position corner : lines.get(0)) {
      double metres = GeodesicLeg.between(start, corner).length().metres();
      assertTrue(metres <= radius * 1.001 && metres >= radius * (1.0 - LATE_SHARE), metres + " m");
    }
    assertTrue(out.lineAt(NOON.plus(TWO_HOURS).plusSeconds(1)).isEmpty());
    assertTrue(out.lineAt(NOON).isEmpty());
    CourseToSteer solver = solver(StreamField.slack());
    Instant end = NOON.plus(TWO_HOURS);
    assertEquals(out.lineAt(end), solver.isochrone(start, NOON, end));
    assertEquals(1, solver.reachBack(start, end, NOON).size());
  }

  @Test
  void aSteadyStreamCarriesTheCircleAlong() {
    StreamField east = StreamField.steady(Velocity.ofEastAndNorth(0.9, 0.0));
    Isochrones out = Isochrones.from(solver(east), PlanePatch.at(0, 0), NOON, TWO_HOURS);
    for (Position corner : out.lineAt(NOON.plusSeconds(5000)).get(0)) {
      double x = PlanePatch.x(corner.longitudeDegrees()) - 0.9 * 5.0;
      double y = PlanePatch.y(corner.latitudeDegrees());
      double radius = 5.0 * SPEED;
      final double squares = 0.45; // the grid's squares are 0.43 km here
      assertEquals(radius, Math.hypot(x, y), LATE_SHARE * 5.0 * (SPEED + 0.9) + squares);
    }
  }

  /** The reach back is the reach out in the stream that runs the other way. */
  @Test
  void theReachBackTellsTheLatestDeparture() {
    StreamField east = StreamField.steady(Velocity.ofEastAndNorth(0.9, 0.0));
    Position goal = PlanePatch.at(0, 0);
    Isochrones home = Isochrones.backFrom(solver(east), goal, NOON, TWO_HOURS);
    double upStreamSeconds =
        Duration.between(home.timeAt(PlanePatch.at(-9.6, 0)).orElseThrow(), NOON).toMillis() / 1e3;
    assertEquals(9600.0 / 2.4, upStreamSeconds, 4000.0 * LATE_SHARE);
    double downStreamSeconds =
        Duration.between(home.timeAt(PlanePatch.at(2.4, 0)).orElseThrow(), NOON).toMillis() / 1e3;
    assertEquals(2400.0 / 0.6, downStreamSeconds, 4000.0 * LATE_SHARE);
    assertEquals(Optional.empty(), home.timeAt(PlanePatch.at(6, 0)));
  }

  /** In a stream that turns, from where the reach back says the goal is made in time. */
  @Test
  void whoLeavesByTheReachBackIsInTime() {
    StreamField tide =
        (latitude, longitude, seconds, out, offset) -> {
          out[offset] = 0.8 * Math.sin(seconds / 7000.0) * Math.cos(PlanePatch.y(latitude) / 4);
          out[offset + 1] = 0.3 * Math.cos(seconds / 7000.0);
          return true;
        };
    Position goal = PlanePatch.at(0, 0);
    Isochrones home = Isochrones.backFrom(solver(tide), goal, NOON, Duration.ofHours(3));
    for (double[] place : new double[][] {{6, 2}, {-5, 3}, {1, -7}, {-3, -6}}) {
      Position from = PlanePatch.at(place[0], place[1]);
      Instant leave = home.timeAt(from).orElseThrow();
      Instant arrival =
          solver(tide)
              .withLimits(SteeringLimits.NONE)
              .solve(GeodesicLeg.between(from, goal), leave)
              .orElseThrow()
              .arrival();
      double spare = Duration.between(arrival, NOON).toMillis() / 1e3;
      double takes = Duration.between(leave, NOON).toMillis() / 1e3;
      assertTrue(spare > -0.005 * takes && spare < 0.03 * takes, spare + " s to spare");
    }
  }

  @Test
  void whatCannotBeIsRefused() {
    CourseToSteer solver = solver(StreamField.slack());
    Position start = PlanePatch.at(0, 0);
    assertThrows(
        IllegalArgumentException.class, () -> Isochrones.from(solver, start, NOON, Duration.ZERO));
    assertThrows(
        IllegalArgumentException.class,
        () -> Isochrones.from(solver.withCraft(Craft.ofSpeed(Speed.ZERO)), start, NOON, TWO_HOURS));
  }
}
