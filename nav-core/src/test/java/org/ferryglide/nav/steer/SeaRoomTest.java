package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.Obstacles;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindAgainstStream;
import org.ferryglide.nav.water.WindField;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;

class SeaRoomTest {
  private static final Instant DEPARTURE = Instant.parse("2026-06-14T10:00:00Z");
  private static final Leg LEG = RhumbLeg.between(PlanePatch.at(0, 0), PlanePatch.at(6, 0));
  private static final double SPEED = 1.5;
  private static final int ISLAND_CASES = 20 * Seeds.MORE_IN_THE_SOAK;
  private static final double STRAIGHT_SECONDS = 6000.0 / SPEED;

  private static CourseToSteer solver(StreamField stream, SeaRoom room) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofMetresPerSecond(SPEED)), stream)
        .withStrategy(Strategy.quickestIn(room))
        .withLimits(SteeringLimits.NONE);
  }

  private static double seconds(SteeredLeg leg) {
    return leg.arrivalSeconds() - leg.groundTrack().startSeconds();
  }

  private static List<Position> square(double x, double y, double half) {
    return List.of(
        PlanePatch.at(x - half, y - half),
        PlanePatch.at(x + half, y - half),
        PlanePatch.at(x + half, y + half),
        PlanePatch.at(x - half, y + half));
  }

  @Test
  void anAreaIsKeptOutOfWhileItIsClosedOnly() {
    List<Position> area = square(3, 0.2, 1);
    TimeSpan now = TimeSpan.of(DEPARTURE, Duration.ofHours(3));
    TimeSpan later = TimeSpan.of(DEPARTURE.plus(Duration.ofHours(3)), Duration.ofHours(3));
    SeaRoom closed = SeaRoom.open().withClosure(area, now);
    SteeredLeg round = solver(StreamField.slack(), closed).solve(LEG, DEPARTURE).orElseThrow();
    // by the two corners 0.8 km to the right
    double metres = 2.0 * Math.hypot(2000, 800) + 2000.0;
    final double clearance = 8.0 / SPEED;
    assertEquals(metres / SPEED, seconds(round), clearance);
    SteeredLeg through =
        solver(StreamField.slack(), SeaRoom.open().withClosure(area, later))
            .solve(LEG, DEPARTURE)
            .orElseThrow();
    assertEquals(STRAIGHT_SECONDS, seconds(through), 1.0);
  }

  /** The area opens while the craft is on its way: it gets there then, by one way or another. */
  @Test
  void anAreaThatOpensSoonIsWaitedFor() {
    List<Position> bar =
        List.of(
            PlanePatch.at(2.9, -30),
            PlanePatch.at(3.1, -30),
            PlanePatch.at(3.1, 30),
            PlanePatch.at(2.9, 30));
    TimeSpan shut = TimeSpan.of(DEPARTURE, Duration.ofSeconds(4000));
    SteeredLeg waited =
        solver(StreamField.slack(), SeaRoom.open().withClosure(bar, shut))
            .solve(LEG, DEPARTURE)
            .orElseThrow();
    double soonest = 4000.0 + 3100.0 / SPEED;
    assertTrue(seconds(waited) > soonest - 0.5, seconds(waited) + " s");
    final double offTheArea = 2.0; // 0.4 s was measured
    assertTrue(seconds(waited) < soonest + offTheArea, seconds(waited) + " s");
  }

  /**
   * Between 2 and 3 km a stream runs against the craft, at first at twice its speed of 1 m/s, and
   * slackens evenly in two hours: it can be entered after one, and x = 2 + (t - 3.6)² / 7.2 then.
   */
  @Test
  void whereAGateOpensLaterTheCraftWaitsForIt() {
    double start = DEPARTURE.getEpochSecond();
    StreamField gate =
        (latitude, longitude, seconds, out, offset) -> {
          double x = PlanePatch.x(longitude);
          double slack = Math.max(0.0, 1.0 - (seconds - start) / 7200.0);
          out[offset] = x > 2 && x < 3 ? -2.0 * slack : 0.0;
          out[offset + 1] = 0.0;
          return true;
        };
    SteeredLeg leg =
        solver(gate, SeaRoom.open())
            .withCraft(Craft.ofSpeed(Speed.ofMetresPerSecond(1.0)))
            .solve(RhumbLeg.between(PlanePatch.at(0, 0), PlanePatch.at(4, 0)), DEPARTURE)
            .orElseThrow();
    double soonest = 3600.0 + Math.sqrt(7.2e6) + 1000.0;
    final double jumps = 0.002 * soonest; // of the stream, met on tracks of 30 m
    assertEquals(soonest, seconds(leg), jumps);
    final double aMetre = 1.0; // of the way, at a metre a second
    assertTrue(seconds(leg) > soonest - aMetre, seconds(leg) + " s");
  }

  @Test
  void aStreamBeyondTheLimitIsGoneRound() {
    StreamField race =
        PlanePatch.stream(
            (x, y) -> 1.2 * Math.exp(-((x - 3) * (x - 3) + y * y) * 2), (x, y) -> 0.0);
    SeaRoom room = SeaRoom.open().withGreatestStream(Speed.ofMetresPerSecond(0.6));
    SteeredLeg bold = solver(race, SeaRoom.open()).solve(LEG, DEPARTURE).orElseThrow();
    SteeredLeg careful = solver(race, room).solve(LEG, DEPARTURE).orElseThrow();
    assertTrue(bold.greatestStreamShare() * SPEED > 1.0);
    final double betweenLooks = 0.01;
    assertTrue(careful.greatestStreamShare() * SPEED < 0.6 + betweenLooks);
    assertTrue(seconds(careful) > seconds(bold));
    Note greatest =
        bold.notes().stream()
            .filter(note -> note.code().equals("steer.greatest-stream"))
            .findFirst()
            .orElseThrow();
    assertTrue(greatest.text().startsWith("The quickest path meets its greatest stream, 2."));
  }

  @Test
  void windAgainstStreamIsKeptOutOf() {
    StreamField north =
        PlanePatch.stream((x, y) -> 0.0, (x, y) -> y > -1 && x > 2 && x < 4 ? 1 : 0.1);
    WindAgainstStream rough = new WindAgainstStream(Speed.ofKnots(8), Speed.ofKnots(1), 45);
    SeaRoom room = SeaRoom.open().withoutWindAgainstStream(rough);
    CourseToSteer solver =
        solver(north, room)
            .withWind(
                WindField.steady(Velocity.ofWind(TrueBearing.ofDegrees(10), Speed.ofKnots(12))));
    SteeredLeg leg = solver.solve(LEG, DEPARTURE).orElseThrow();
    for (TrackPoint point : leg.groundTrack().pointsEvery(10.0)) {
      double x = PlanePatch.x(point.position().longitudeDegrees());
      double y = PlanePatch.y(point.position().latitudeDegrees());
      final double betweenLooks = 0.03;
      assertFalse(
          x > 2 + betweenLooks && x < 4 - betweenLooks && y > -1 + betweenLooks, point.toString());
    }
  }

  @Test
  void whereNoRoomIsLeftTheReasonSaysSo() {
    SeaRoom none =
        SeaRoom.open()
            .withObstacles(
                List.of(
                    List.of(
                        PlanePatch.at(2, -1),
                        PlanePatch.at(10, -1),
                        PlanePatch.at(10, -0.9),
                        PlanePatch.at(2, -0.9)),
                    List.of(
                        PlanePatch.at(2, 1),
                        PlanePatch.at(10, 1),
                        PlanePatch.at(10, 0.9),
                        PlanePatch.at(2, 0.9)),
                    List.of(
                        PlanePatch.at(2, -1.1),
                        PlanePatch.at(2.1, -1.1),
                        PlanePatch.at(2.1, 1.1),
                        PlanePatch.at(2, 1.1)),
                    List.of(
                        PlanePatch.at(9.9, -1.1), PlanePatch.at(10, -1.1),
                        PlanePatch.at(10, 1.1), PlanePatch.at(9.9, 1.1))));
    assertEquals(
        Reason.NO_ROOM,
        solver(StreamField.slack(), none).solve(LEG, DEPARTURE).why().orElseThrow().reason());
  }

  /** A straight step; the plane patch is flat enough for it. */
  private record Step(Position from, Position to) {
    boolean crosses(List<Position> island) {
      Position before = island.get(island.size() - 1);
      for (Position corner : island) {
        if (side(from, to, before) * side(from, to, corner) < 0.0
            && side(before, corner, from) * side(before, corner, to) < 0.0) {
          return true;
        }
        before = corner;
      }
      return false;
    }

    private static double side(Position a, Position b, Position c) {
      return (b.longitudeDegrees() - a.longitudeDegrees())
              * (c.latitudeDegrees() - a.latitudeDegrees())
          - (b.latitudeDegrees() - a.latitudeDegrees())
              * (c.longitudeDegrees() - a.longitudeDegrees());
    }
  }

  /** Random islands, and a stream: no second of the path is inside one, nor crosses an edge. */
  @Test
  void noIslandIsCutAtSteps() {
    Random random = new Random(20261126);
    for (int i = 0; i < ISLAND_CASES; i++) {
      List<List<Position>> islands = new ArrayList<>();
      for (int k = 0; k < 3; k++) {
        double x = 1.2 + 3.6 * random.nextDouble();
        double y = -0.8 + 1.6 * random.nextDouble();
        List<Position> island = new ArrayList<>();
        for (int c = 0; c < 9; c++) {
          double size = 0.25 + 0.5 * random.nextDouble();
          double angle = 2.0 * Math.PI * c / 9;
          island.add(PlanePatch.at(x + size * Math.cos(angle), y + size * Math.sin(angle)));
        }
        islands.add(island);
      }
      StreamField stream =
          PlanePatch.stream((x, y) -> 0.5 * Math.sin(2 * y), (x, y) -> 0.5 * Math.cos(x));
      SteeredLeg leg =
          solver(stream, SeaRoom.open().withObstacles(islands)).solve(LEG, DEPARTURE).orElseThrow();
      Obstacles obstacles = Obstacles.of(islands);
      Position before = LEG.start();
      for (TrackPoint point : leg.groundTrack().pointsEvery(1.0)) {
        Position here = point.position();
        assertFalse(
            obstacles.contains(here.latitudeDegrees(), here.longitudeDegrees())
                || islands.stream().anyMatch(new Step(before, here)::crosses),
            i + ": " + point);
        before = here;
      }
    }
  }

  @Test
  void onlyTheQuickestPathIsKeptOutOfWaters() {
    assertEquals(
        Strategy.quickestIn(SeaRoom.open().withGreatestStream(Speed.ofKnots(2))),
        Strategy.quickest().withGreatestStream(Speed.ofKnots(2)));
    assertThrows(
        IllegalStateException.class,
        () -> Strategy.trackHeld().withGreatestStream(Speed.ofKnots(2)));
  }

  @Test
  void roomsWithTheSamePartsAreEqual() {
    SeaRoom one = SeaRoom.open().withGreatestStream(Speed.ofKnots(2));
    SeaRoom two = SeaRoom.open().withGreatestStream(Speed.ofKnots(2));
    assertEquals(one, two);
    assertEquals(one.hashCode(), two.hashCode());
    assertEquals(Speed.ofKnots(2), one.greatestStream().orElseThrow());
    assertFalse(one.equals(SeaRoom.open()));
  }
}
