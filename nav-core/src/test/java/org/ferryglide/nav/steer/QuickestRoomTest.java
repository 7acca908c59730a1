package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import net.sf.geographiclib.Geodesic;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a quickest path finds room, and what it says where there is none. */
class QuickestRoomTest {
  private static final Instant DEPARTURE = Instant.parse("2026-06-14T10:00:00Z");
  private static final double SPEED = 1.5;
  private static final Leg LEG = RhumbLeg.between(PlanePatch.at(0, 0), PlanePatch.at(5, 0));

  /** Corners are passed 2 m off the lines of their edges, each time at most twice that longer. */
  private static final double CLEARANCE_SECONDS = 8.0 / SPEED;

  private static CourseToSteer solver(Strategy strategy) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofMetresPerSecond(SPEED)), StreamField.slack())
        .withStrategy(strategy)
        .withLimits(SteeringLimits.NONE);
  }

  private static List<Position> box(double west, double south, double east, double north) {
    return List.of(
        PlanePatch.at(west, south),
        PlanePatch.at(east, south),
        PlanePatch.at(east, north),
        PlanePatch.at(west, north));
  }

  private static double seconds(SteeredLeg leg) {
    return leg.arrivalSeconds() - DEPARTURE.getEpochSecond();
  }

  /** Through a spit of 500 m; the shorter way leads along the channel's southern side. */
  @ParameterizedTest
  @CsvSource({"20, 68, 1.3", "20, 120, 0.37", "12, 60, 2.11", "26, 90, 1.07", "8, 40, 0.93"})
  void aChannelNarrowBesideTheGridIsFound(double end, double wideMetres, double south) {
    double west = 0.5 * end - 0.25;
    double north = south + wideMetres / PlanePatch.UNIT_METRES;
    Strategy round =
        Strategy.quickestAround(
            List.of(box(west, -90, west + 0.5, south), box(west, north, west + 0.5, 90)));
    SteeredLeg leg =
        solver(round)
            .solve(RhumbLeg.between(PlanePatch.at(0, 0), PlanePatch.at(end, 0)), DEPARTURE)
            .orElseThrow();
    double units = 2.0 * Math.hypot(west, south) + 0.5;
    assertEquals(units * PlanePatch.UNIT_METRES / SPEED, seconds(leg), CLEARANCE_SECONDS);
  }

  /** The other way round an island is up to 2 % longer: 2 hypot(2.5, y) for each tip. */
  @ParameterizedTest
  @ValueSource(doubles = {0.0, 0.01, 0.03, 0.06})
  void theOtherSideOfAnIslandIsOffered(double off) {
    Strategy round = Strategy.quickestAround(List.of(box(2.49, -0.8 + off, 2.51, 0.8 + off)));
    List<SteeredLeg> ways = solver(round).quickestWays(LEG, DEPARTURE, 3);
    assertEquals(2, ways.size());
    double more = Math.hypot(2.49, 0.8 + off) - Math.hypot(2.49, 0.8 - off);
    assertEquals(
        2.0 * more * PlanePatch.UNIT_METRES / SPEED,
        seconds(ways.get(1)) - seconds(ways.get(0)),
        CLEARANCE_SECONDS);
  }

  /** A rhumb line would take up to 1e-3 longer. Reference: the geodesic of GeographicLib. */
  @ParameterizedTest
  @CsvSource({"50, 0.5", "60, 0.66", "60, 2", "75, 3.8", "-84, 9"})
  void stillWaterIsCrossedOnAGeodesic(double latitude, double longitude) {
    SteeredLeg leg =
        solver(Strategy.quickest())
            .solve(
                RhumbLeg.between(
                    Position.ofDegrees(latitude, 0), Position.ofDegrees(latitude, longitude)),
                DEPARTURE)
            .orElseThrow();
    double metres = Geodesic.WGS84.Inverse(latitude, 0, latitude, longitude).s12;
    assertEquals(metres / SPEED, seconds(leg), 1e-6 * metres / SPEED);
  }

  @Test
  void endsOnLandAreRefusedHoweverTheyAreAsked() {
    CourseToSteer solver = solver(Strategy.quickestAround(List.of(box(-1, -1, 1, 1))));
    Leg none = RhumbLeg.between(PlanePatch.at(0, 0), PlanePatch.at(0, 0));
    String message =
        "start of the leg must not lie inside an obstacle, but was " + PlanePatch.at(0, 0);
    for (Leg leg : List.of(LEG, none)) {
      for (Runnable asked :
          List.<Runnable>of(
              () -> solver.solve(leg, DEPARTURE), () -> solver.quickestWays(leg, DEPARTURE, 2))) {
        assertEquals(
            message, assertThrows(IllegalArgumentException.class, asked::run).getMessage());
      }
    }
  }

  @Test
  void aLegOfNoLengthTakesNoTimeBothTimes() {
    Leg none = RhumbLeg.between(PlanePatch.at(3, 0), PlanePatch.at(3, 0));
    CourseToSteer solver = solver(Strategy.quickestAround(List.of(box(-1, -1, 1, 1))));
    SteeredLeg leg = solver.solve(none, DEPARTURE).orElseThrow();
    assertEquals(List.of(leg), solver.quickestWays(none, DEPARTURE, 2));
    assertEquals(Duration.ZERO, leg.duration());
  }

  @Test
  void noRoomNamesTheStartWhereThatIsWhy() {
    TimeSpan day = TimeSpan.of(DEPARTURE.minusSeconds(60), Duration.ofDays(2));
    NotPossible closed =
        solver(Strategy.quickest().withClosure(box(-1, -1, 1, 1), day))
            .solve(LEG, DEPARTURE)
            .why()
            .orElseThrow();
    assertEquals(Reason.NO_ROOM, closed.reason());
    assertEquals(PlanePatch.at(0, 0), closed.where().orElseThrow());
    assertEquals(DEPARTURE, closed.when().orElseThrow());
    NotPossible walled =
        solver(Strategy.quickest().withClosure(box(4, -1, 6, 1), day))
            .solve(LEG, DEPARTURE)
            .why()
            .orElseThrow();
    assertEquals(Reason.NO_ROOM, walled.reason());
    assertTrue(walled.where().isEmpty());
    assertTrue(walled.when().isEmpty());
  }

  /** A craft that is not paddled goes where the stream goes, and reaches the area after 1000 s. */
  @Test
  void aDriftThroughAClosedAreaIsNoWay() {
    TimeSpan day = TimeSpan.of(DEPARTURE.minusSeconds(60), Duration.ofDays(2));
    CourseToSteer solver =
        CourseToSteer.with(
                Craft.ofSpeed(Speed.ZERO), StreamField.steady(Velocity.ofEastAndNorth(1.0, 0.0)))
            .withLimits(SteeringLimits.NONE);
    assertTrue(solver.withStrategy(Strategy.quickest()).solve(LEG, DEPARTURE).isSolved());
    NotPossible why =
        solver
            .withStrategy(Strategy.quickest().withClosure(box(1, -1, 2, 1), day))
            .solve(LEG, DEPARTURE)
            .why()
            .orElseThrow();
    assertEquals(Reason.NO_ROOM, why.reason());
    assertEquals(
        1000.0, why.when().orElseThrow().getEpochSecond() - DEPARTURE.getEpochSecond(), 61.0);
  }
}
