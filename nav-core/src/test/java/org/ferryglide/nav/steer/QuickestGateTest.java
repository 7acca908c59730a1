package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A tidal gate of 100 m between walls, whose stream runs along the leg, against the way straight
 * through it: on a line nobody gains by starting later, so that going at once is the quickest.
 */
class QuickestGateTest {
  private static final Instant DEPARTURE = Instant.parse("2026-06-14T10:00:00Z");
  private static final double HALF_TIDE_SECONDS = 22350.0;
  private static final double SPEED = 1.5;
  private static final double WEST = 4.37;
  private static final double WIDE = 0.1;
  private static final double LEG_METRES = 10_000.0;

  /** Where the gate hardly lets the craft through, the way found is a polygon of the front. */
  private static final double SHARE = 1e-3;

  private static double east(double x, double seconds, double peak) {
    double off = (x - WEST - 0.5 * WIDE) / WIDE;
    return -peak * Math.cos(Math.PI * seconds / HALF_TIDE_SECONDS) * Math.exp(-off * off);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.2, 1.6})
  void theGateIsPassedAsSoonAsCanBe(double peak) {
    List<List<Position>> walls =
        List.of(
            List.of(
                PlanePatch.at(WEST, 0.3),
                PlanePatch.at(WEST + WIDE, 0.3),
                PlanePatch.at(WEST + WIDE, 60),
                PlanePatch.at(WEST, 60)),
            List.of(
                PlanePatch.at(WEST, -60),
                PlanePatch.at(WEST + WIDE, -60),
                PlanePatch.at(WEST + WIDE, -0.3),
                PlanePatch.at(WEST, -0.3)));
    StreamField stream =
        (latitude, longitude, time, out, offset) -> {
          double seconds = time - DEPARTURE.getEpochSecond();
          boolean within = Math.abs(PlanePatch.y(latitude)) < 2.0;
          out[offset] = within ? east(PlanePatch.x(longitude), seconds, peak) : 0.0;
          out[offset + 1] = 0.0;
          return true;
        };
    SteeredLeg path =
        CourseToSteer.with(Craft.ofSpeed(Speed.ofMetresPerSecond(SPEED)), stream)
            .withStrategy(Strategy.quickestAround(walls))
            .withLimits(SteeringLimits.NONE)
            .solve(RhumbLeg.between(PlanePatch.at(0, 0), PlanePatch.at(10, 0)), DEPARTURE)
            .orElseThrow();
    double straight = straight(peak);
    assertEquals(straight, path.arrivalSeconds() - DEPARTURE.getEpochSecond(), SHARE * straight);
  }

  /** By Kutta's method in steps of half a second. */
  private static double straight(double peak) {
    double metres = 0.0;
    double time = 0.0;
    double step = 0.5;
    while (metres < LEG_METRES) {
      double k1 = speed(metres, time, peak);
      double k2 = speed(metres + 0.5 * step * k1, time + 0.5 * step, peak);
      double k3 = speed(metres + 0.5 * step * k2, time + 0.5 * step, peak);
      double k4 = speed(metres + step * k3, time + step, peak);
      metres += step / 6.0 * (k1 + 2.0 * k2 + 2.0 * k3 + k4);
      time += step;
    }
    return time;
  }

  private static double speed(double metres, double time, double peak) {
    return SPEED + east(metres / PlanePatch.UNIT_METRES, time, peak);
  }
}
