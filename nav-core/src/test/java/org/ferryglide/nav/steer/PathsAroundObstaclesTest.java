package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.Obstacles;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

class PathsAroundObstaclesTest {
  private static final double SPEED = 1.5;

  /** Two corners passed at 2 m add at most twice that to the way round, each time. */
  private static final double CLEARANCE_SECONDS = 8.0 / SPEED;

  private static final Instant DEPARTURE = Instant.parse("2026-06-14T10:00:00Z");

  /** An island across the straight way from (0, 0) to (5, 0), nearer its southern end. */
  private static final List<Position> ISLAND =
      List.of(
          PlanePatch.at(2, -1), PlanePatch.at(3, -1), PlanePatch.at(3, 1.5), PlanePatch.at(2, 1.5));

  private static SteeredLeg quickest(StreamField stream, List<List<Position>> obstacles) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofMetresPerSecond(SPEED)), stream)
        .withStrategy(Strategy.quickestAround(obstacles))
        .withLimits(SteeringLimits.NONE)
        .solve(GeodesicLeg.between(PlanePatch.at(0, 0), PlanePatch.at(5, 0)), DEPARTURE)
        .orElseThrow();
  }

  private static double seconds(SteeredLeg leg) {
    return leg.duration().toMillis() / 1000.0;
  }

  @Test
  void inStillWaterTheShorterWayRoundIsTaken() {
    SteeredLeg leg = quickest(StreamField.slack(), List.of(ISLAND));
    double metres = (Math.hypot(2, 1) + 1 + Math.hypot(2, 1)) * PlanePatch.UNIT_METRES;
    assertEquals(metres / SPEED, seconds(leg), CLEARANCE_SECONDS);
    assertTrue(leg.greatestCrossTrack().metres() > 0.001);
  }

  @Test
  void thePathNeverCrossesTheIsland() {
    Obstacles obstacles = Obstacles.of(List.of(ISLAND));
    for (double north : new double[] {-0.8, 0.0, 0.8}) {
      SteeredLeg leg =
          quickest(StreamField.steady(Velocity.ofEastAndNorth(0.3, north)), List.of(ISLAND));
      for (TrackPoint point : leg.groundTrack().pointsEvery(10.0)) {
        assertFalse(
            obstacles.contains(
                point.position().latitudeDegrees(), point.position().longitudeDegrees()),
            point.toString());
      }
    }
  }

  @Test
  void anIslandOutOfTheWayChangesNothing() {
    StreamField stream = StreamField.steady(Velocity.ofEastAndNorth(0.2, 0.4));
    List<Position> far = List.of(PlanePatch.at(2, -9), PlanePatch.at(3, -9), PlanePatch.at(3, -8));
    assertEquals(
        seconds(quickest(stream, List.of())), seconds(quickest(stream, List.of(far))), 0.01);
  }

  @Test
  void aWayRoundIsNeverQuickerThanOpenWater() {
    StreamField stream = PlanePatch.stream((x, y) -> 0.4 * y, (x, y) -> 0.3 * Math.sin(x));
    assertTrue(seconds(quickest(stream, List.of())) <= seconds(quickest(stream, List.of(ISLAND))));
  }

  /** A coast of a thousand corners is rounded where a circle would be. */
  @Test
  void aThousandCornersAreRounded() {
    List<Position> round = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      double angle = 2.0 * Math.PI * i / 1000;
      round.add(PlanePatch.at(2.5 + Math.cos(angle), 0.1 + Math.sin(angle)));
    }
    SteeredLeg leg = quickest(StreamField.slack(), List.of(round));
    // two tangents from each end and the arc between them, on the near side
    double toMiddle = Math.hypot(2.5, 0.1);
    double arc = 2.0 * (Math.acos(0.1 / toMiddle) - Math.acos(1.0 / toMiddle));
    double expected = (2.0 * Math.sqrt(toMiddle * toMiddle - 1.0) + arc) * 1000.0 / SPEED;
    assertEquals(expected, seconds(leg), CLEARANCE_SECONDS);
  }

  @Test
  void obstaclesThatAreNoneAndStartsAgroundAreRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Strategy.quickestAround(List.of(List.of(PlanePatch.at(0, 0), PlanePatch.at(1, 0)))));
    IllegalArgumentException aground =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                quickest(
                    StreamField.slack(),
                    List.of(
                        List.of(
                            PlanePatch.at(-1, -1), PlanePatch.at(1, -1), PlanePatch.at(0, 2)))));
    assertTrue(
        String.valueOf(aground.getMessage())
            .startsWith("start of the leg must not lie inside an obstacle"));
  }

  @Test
  void aCornerGivenTwiceRunningIsRefused() {
    List<Position> closed =
        List.of(
            PlanePatch.at(2, -1), PlanePatch.at(3, -1), PlanePatch.at(3, 1), PlanePatch.at(2, -1));
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class, () -> Strategy.quickestAround(List.of(closed)));
    assertTrue(
        String.valueOf(refused.getMessage())
            .startsWith("obstacle 1 must not have the same corner twice running"));
  }

  @Test
  void aCraftWithoutSpeedIsNotCarriedThroughAnIsland() {
    StreamField east = StreamField.steady(Velocity.ofEastAndNorth(1.0, 0.0));
    CourseToSteer adrift =
        CourseToSteer.with(Craft.ofSpeed(Speed.ZERO), east)
            .withStrategy(Strategy.quickestAround(List.of(ISLAND)));
    Leg alongParallel = RhumbLeg.between(PlanePatch.at(0, 0), PlanePatch.at(5, 0));
    assertEquals(
        Reason.NO_PROGRESS,
        adrift.solve(alongParallel, DEPARTURE).why().map(NotPossible::reason).orElse(null));
    List<Position> outOfTheWay =
        List.of(PlanePatch.at(2, 1), PlanePatch.at(3, 1), PlanePatch.at(3, 2));
    assertTrue(
        adrift
            .withStrategy(Strategy.quickestAround(List.of(outOfTheWay)))
            .solve(alongParallel, DEPARTURE)
            .isSolved());
  }

  @Test
  void aStreamThatCannotBeStemmedIsTheReasonRoundAnIslandToo() {
    StreamField west = StreamField.steady(Velocity.ofEastAndNorth(-2.0 * SPEED, 0.0));
    assertEquals(
        Reason.ADVERSE_STREAM,
        CourseToSteer.with(Craft.ofSpeed(Speed.ofMetresPerSecond(SPEED)), west)
            .withStrategy(Strategy.quickestAround(List.of(ISLAND)))
            .solve(RhumbLeg.between(PlanePatch.at(0, 0), PlanePatch.at(5, 0)), DEPARTURE)
            .why()
            .map(NotPossible::reason)
            .orElse(null));
  }
}
