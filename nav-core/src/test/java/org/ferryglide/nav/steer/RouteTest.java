package org.ferryglide.nav.steer;

import static org.ferryglide.nav.steer.SteeringScenes.NOON;
import static org.ferryglide.nav.steer.SteeringScenes.START;
import static org.ferryglide.nav.steer.SteeringScenes.leg;
import static org.ferryglide.nav.steer.SteeringScenes.solver;
import static org.ferryglide.nav.steer.SteeringScenes.steady;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class RouteTest {
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
    assertEquals(3600, crossing.duration().toMillis() / 1000.0, 0.1);
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
        "a route must have at least two way points, but had 1",
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
