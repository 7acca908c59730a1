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

  /**
   * How late the class says the front may be in still water, and in a stream of 0.6 of the craft.
   */
  private static final double LATE_IN_STILL_WATER = 0.005;

  private static final double LATE_IN_A_STREAM = 0.013;

  /** How far the class says it is from the quickest path in a tide, early or late. */
  private static final double OFF_IN_A_TIDE = 0.009;

  /** How late the class says a time may be in a uniform stream. */
  private static final double LATE = 4e-4;

  /** Nearer the place than so many squares of the grid its times are rougher. */
  private static final double FEW_SQUARES = 4.0;

  /** The patch is not quite plane. */
  private static final double PLANE = 1e-4;

  private static CourseToSteer solver(StreamField stream) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofMetresPerSecond(SPEED)), stream)
        .withStrategy(Strategy.quickest());
  }

  @Test
  void inStillWaterTheLinesAreCircles() {
    Position start = Position.ofDegrees(46, -26);
    Isochrones out = Isochrones.from(solver(StreamField.slack()), start, NOON, TWO_HOURS);
    for (int minutes = 40; minutes <= 120; minutes += 10) {
      List<List<Position>> lines = out.lineAt(NOON.plus(Duration.ofMinutes(minutes)));
      assertEquals(1, lines.size());
      double radius = 60.0 * minutes * SPEED;
      assertTrue(lines.get(0).size() > 60);
      final double early =
          4e-4 * radius; // the line is straight between nodes where the front bends
      for (Position corner : lines.get(0)) {
        double metres = GeodesicLeg.between(start, corner).length().metres();
        assertTrue(
            metres <= radius + early && metres >= radius * (1.0 - LATE_IN_STILL_WATER),
            minutes + " min: " + metres + " m");
      }
    }
    assertTrue(out.lineAt(NOON.plus(TWO_HOURS).plusSeconds(1)).isEmpty());
    assertTrue(out.lineAt(NOON).isEmpty());
    CourseToSteer solver = solver(StreamField.slack());
    Instant end = NOON.plus(TWO_HOURS);
    assertEquals(out.lineAt(end), solver.isochrone(start, NOON, end));
    assertEquals(1, solver.reachBack(start, end, NOON).size());
  }

  /** Doubles hold no instant with a fraction of a second exactly; the last line is there alike. */
  @Test
  void theLastLineIsThereWhateverTheFractionsOfASecond() {
    CourseToSteer solver = solver(StreamField.slack());
    Position place = Position.ofDegrees(46, -26);
    Random random = new Random(20261127);
    for (int i = 0; i < 12; i++) {
      int resolution = i % 2 == 0 ? 1_000_000 : 1; // milliseconds and nanoseconds
      Instant early = NOON.plusNanos((long) resolution * random.nextInt(3_600_000));
      Instant late = early.plusSeconds(3600).plusNanos((long) resolution * random.nextInt(1000));
      assertEquals(1, solver.isochrone(place, early, late).size(), early + " to " + late);
      assertEquals(1, solver.reachBack(place, late, early).size(), early + " to " + late);
    }
  }

  @Test
  void aSteadyStreamCarriesTheCircleAlong() {
    StreamField east = StreamField.steady(Velocity.ofEastAndNorth(0.9, 0.0));
    Isochrones out = Isochrones.from(solver(east), PlanePatch.at(0, 0), NOON, TWO_HOURS);
    for (int seconds = 2400; seconds <= 7200; seconds += 800) {
      List<List<Position>> lines = out.lineAt(NOON.plusSeconds(seconds));
      assertEquals(1, lines.size());
      double radius = seconds * SPEED / PlanePatch.UNIT_METRES;
      for (Position corner : lines.get(0)) {
        double x = PlanePatch.x(corner.longitudeDegrees()) - 0.9 * seconds / PlanePatch.UNIT_METRES;
        double y = PlanePatch.y(corner.latitudeDegrees());
        double share = Math.hypot(x, y) / radius;
        assertTrue(share < 1.0 + PLANE && share > 1.0 - LATE_IN_A_STREAM, seconds + " s: " + share);
      }
    }
  }

  /** From a third of the way on, at random places, against the circle that is carried along. */
  @ParameterizedTest
  @CsvSource({"0.0", "0.9", "1.2", "1.35"})
  void timesInAUniformStreamAreAsLateAsPromised(double stream) {
    Isochrones out =
        Isochrones.from(
            solver(StreamField.steady(Velocity.ofEastAndNorth(stream, 0.0))),
            PlanePatch.at(0, 0),
            NOON,
            TWO_HOURS);
    Random random = new Random(20261126);
    double end = 7200.0 / (1.0 + LATE);
    double square = 1.6 * 1.6 * SPEED * 7.2 / 100.0; // the area once widened
    int looks = 0;
    for (int i = 0; i < 1000; i++) {
      double seconds = 2400.0 + (end - 2400.0) * random.nextDouble();
      double heading = 2.0 * Math.PI * random.nextDouble();
      double x = seconds * (stream + SPEED * Math.cos(heading)) / PlanePatch.UNIT_METRES;
      double y = seconds * SPEED * Math.sin(heading) / PlanePatch.UNIT_METRES;
      if (Math.hypot(x, y) < FEW_SQUARES * square) {
        continue; // so near the place they are rougher
      }
      double share = seconds(NOON, out.timeAt(PlanePatch.at(x, y)).orElseThrow()) / seconds - 1.0;
      assertTrue(share > -PLANE && share < LATE, x + ", " + y + ": " + share);
      looks++;
    }
    assertTrue(looks > 500, looks + " places");
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
    for (int i = 0; i < 10 * Seeds.MORE_IN_THE_SOAK; i++) {
      double angle = 2.0 * Math.PI * random.nextDouble();
      double away = 3.5 + 4.5 * random.nextDouble();
      Position place = PlanePatch.at(away * Math.cos(angle), away * Math.sin(angle));
      Instant quickest =
          solver.solve(GeodesicLeg.between(middle, place), NOON).orElseThrow().arrival();
      double takes = seconds(NOON, quickest);
      assertEquals(takes, seconds(NOON, out.timeAt(place).orElseThrow()), OFF_IN_A_TIDE * takes);
      Instant leave = home.timeAt(place).orElseThrow();
      Instant back =
          Isochrones.from(solver, place, leave, Duration.ofHours(4)).timeAt(middle).orElseThrow();
      double allowed = seconds(leave, NOON);
      assertEquals(allowed, seconds(leave, back), OFF_IN_A_TIDE * allowed);
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
    assertEquals(9600.0 / 2.4, upStreamSeconds, 4000.0 * LATE_IN_A_STREAM);
    double downStreamSeconds =
        Duration.between(home.timeAt(PlanePatch.at(2.4, 0)).orElseThrow(), NOON).toMillis() / 1e3;
    assertEquals(2400.0 / 0.6, downStreamSeconds, 4000.0 * LATE_IN_A_STREAM);
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
      assertTrue(spare > -0.003 * takes && spare < 0.005 * takes, spare + " s to spare");
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
