package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  /** From a third of the way on, at random places, against the circle that is carried along. */
  @ParameterizedTest
  @CsvSource({"0.0, 0.006", "0.9, 0.01", "1.2, 0.045"})
  void timesInAUniformStreamAreAsLateAsPromised(double stream, double late) {
    Isochrones out =
        Isochrones.from(
            solver(StreamField.steady(Velocity.ofEastAndNorth(stream, 0.0))),
            PlanePatch.at(0, 0),
            NOON,
            TWO_HOURS);
    Random random = new Random(20261126);
    final double plane = 1e-4; // the patch is not quite one
    for (int i = 0; i < 200; i++) {
      double seconds = 2400.0 + 4600.0 * random.nextDouble();
      double heading = 2.0 * Math.PI * random.nextDouble();
      double x = seconds * (stream + SPEED * Math.cos(heading)) / PlanePatch.UNIT_METRES;
      double y = seconds * SPEED * Math.sin(heading) / PlanePatch.UNIT_METRES;
      Optional<Instant> time = out.timeAt(PlanePatch.at(x, y));
      if (time.isPresent()) { // else it is late beyond the two hours
        double share = seconds(NOON, time.get()) / seconds - 1.0;
        assertTrue(share > -plane && share < late, x + ", " + y + ": " + share);
      }
    }
  }

  private static final StreamField TIDE =
      (latitude, longitude, seconds, out, offset) -> {
        out[offset] = 0.8 * Math.sin(seconds / 7000.0) * Math.cos(PlanePatch.y(latitude) / 4);
        out[offset + 1] = 0.3 * Math.cos(seconds / 7000.0);
        return true;
      };

  private static double seconds(Instant from, Instant until) {
    return Duration.between(from, until).toMillis() / 1e3;
  }

  /** At random places, out by the quickest path itself, and back again by the reach back. */
  @Test
  void inATideReachesAgreeWithTheQuickestPathAndWithEachOther() {
    Position middle = PlanePatch.at(0, 0);
    CourseToSteer solver = solver(TIDE).withLimits(SteeringLimits.NONE);
    Isochrones out = Isochrones.from(solver, middle, NOON, Duration.ofHours(3));
    Isochrones home = Isochrones.backFrom(solver, middle, NOON, Duration.ofHours(3));
    Random random = new Random(20261126);
    final double early = 0.008;
    for (int i = 0; i < 10 * Seeds.MORE_IN_THE_SOAK; i++) {
      double angle = 2.0 * Math.PI * random.nextDouble();
      double away = 3.5 + 4.5 * random.nextDouble();
      Position place = PlanePatch.at(away * Math.cos(angle), away * Math.sin(angle));
      Instant quickest =
          solver.solve(GeodesicLeg.between(middle, place), NOON).orElseThrow().arrival();
      double takes = seconds(NOON, quickest);
      assertEquals(takes, seconds(NOON, out.timeAt(place).orElseThrow()), early * takes);
      Instant leave = home.timeAt(place).orElseThrow();
      Instant back =
          Isochrones.from(solver, place, leave, Duration.ofHours(4)).timeAt(middle).orElseThrow();
      double allowed = seconds(leave, NOON);
      assertEquals(allowed, seconds(leave, back), early * allowed);
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
    Position goal = PlanePatch.at(0, 0);
    Isochrones home = Isochrones.backFrom(solver(TIDE), goal, NOON, Duration.ofHours(3));
    for (double[] place : new double[][] {{6, 2}, {-5, 3}, {1, -7}, {-3, -6}}) {
      Position from = PlanePatch.at(place[0], place[1]);
      Instant leave = home.timeAt(from).orElseThrow();
      Instant arrival =
          solver(TIDE)
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
