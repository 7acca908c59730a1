package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

/** Slack water with a bar across the way that is closed at first, and an island before it. */
class WaitingAlternativesTest {
  private static final Instant DEPARTURE = Instant.parse("2026-06-14T10:00:00Z");
  private static final double SPEED = 1.5;
  private static final double OPENS_SECONDS = 2500.0;
  private static final double FROM_BAR_METRES = 3100.0;

  /** The way on is seen from a place of the front, at most a square beside the line. */
  private static final double SECONDS = 5.0;

  @Test
  void bothSidesOfTheIslandAreOfferedThoughTheWayWaits() {
    List<Position> bar =
        List.of(
            PlanePatch.at(2.9, -30),
            PlanePatch.at(3.1, -30),
            PlanePatch.at(3.1, 30),
            PlanePatch.at(2.9, 30));
    List<Position> island =
        List.of(
            PlanePatch.at(1, -0.8),
            PlanePatch.at(2, -0.8),
            PlanePatch.at(2, 0.8),
            PlanePatch.at(1, 0.8));
    CourseToSteer solver =
        CourseToSteer.with(Craft.ofSpeed(Speed.ofMetresPerSecond(SPEED)), StreamField.slack())
            .withStrategy(
                Strategy.quickestAround(List.of(island))
                    .withClosure(
                        bar, TimeSpan.of(DEPARTURE, Duration.ofSeconds((long) OPENS_SECONDS))))
            .withLimits(SteeringLimits.NONE);
    RhumbLeg leg = RhumbLeg.between(PlanePatch.at(0, 0), PlanePatch.at(6, 0));
    List<SteeredLeg> ways = solver.quickestWays(leg, DEPARTURE, 3);
    boolean north = false;
    boolean south = false;
    for (SteeredLeg way : ways) {
      for (TrackPoint point : way.groundTrack().pointsEvery(10.0)) {
        north |= PlanePatch.y(point.position().latitudeDegrees()) > 0.7;
        south |= PlanePatch.y(point.position().latitudeDegrees()) < -0.7;
      }
    }
    assertTrue(north && south, ways.toString());
    double soonest = OPENS_SECONDS + FROM_BAR_METRES / SPEED;
    assertEquals(soonest, ways.get(0).arrivalSeconds() - DEPARTURE.getEpochSecond(), SECONDS);
  }
}
