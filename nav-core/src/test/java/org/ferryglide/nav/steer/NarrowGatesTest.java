package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

/**
 * Streams and gaps in the data that are narrow beside the steps by which a craft is followed. A
 * craft followed second by second on the headings of the answer shares no code with it.
 */
class NarrowGatesTest {
  /** Looks every 5 m may cut a corner of a gap; by 0.4 m was measured. Units of the patch. */
  private static final double CUT = 1e-3;

  /** 0.25 s was measured; land is passed 2 m off its corners, gaps as looks allow. */
  private static final double ROUND_A_GAP_SECONDS = 1.0;

  private static final double SPEED = 1.5;
  private static final Instant DEPARTURE = Instant.parse("2026-06-14T10:00:00Z");
  private static final double START = DEPARTURE.getEpochSecond();
  private static final Leg LEG = RhumbLeg.between(PlanePatch.at(0, 0), PlanePatch.at(10, 0));

  /**
   * A gate across the whole sea, of twice the craft's speed against it, slack after three hours.
   */
  private static StreamField gate(double width) {
    return (latitude, longitude, seconds, out, offset) -> {
      double apart = (PlanePatch.x(longitude) - 4.37) / (0.6 * width);
      double rate = 3.0 * Math.max(0.0, 1.0 - (seconds - START) / 10800.0);
      out[offset] = -rate * Math.exp(-apart * apart);
      out[offset + 1] = 0.0;
      return true;
    };
  }

  private static CourseToSteer solver(StreamField stream, Strategy strategy) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofMetresPerSecond(SPEED)), stream)
        .withStrategy(strategy)
        .withLimits(SteeringLimits.NONE);
  }

  @Test
  void oneHeadingMeetsTheGate() {
    for (double width : new double[] {0.1, 0.5}) {
      StreamField gate = gate(width);
      for (Strategy strategy : new Strategy[] {Strategy.constantHeading(), Strategy.quickest()}) {
        SteeredLeg leg = solver(gate, strategy).solve(LEG, DEPARTURE).orElseThrow();
        double[] stream = new double[2];
        double heading = Math.toRadians(leg.courseToSteer().degrees());
        double x = 0.0;
        double y = 0.0;
        final double step = 0.25;
        double took = leg.arrivalSeconds() - START;
        for (double time = 0.0; time < took && leg.headings().size() == 1; time += step) {
          gate.sample(PlanePatch.latitude(y), PlanePatch.longitude(x), START + time, stream, 0);
          x += step * (SPEED * Math.sin(heading) + stream[0]) / PlanePatch.UNIT_METRES;
          y += step * (SPEED * Math.cos(heading) + stream[1]) / PlanePatch.UNIT_METRES;
        }
        assertTrue(took > 9000, strategy + " through " + width + " km in " + took + " s");
        if (leg.headings().size() == 1) {
          final double metres = 5.0; // a step of the walk at both edges of the gate, and rounding
          assertEquals(0.0, Math.hypot(x - 10, y) * 1000.0, metres, strategy + " " + width);
        }
      }
    }
  }

  @Test
  void aTrackThroughTheGateIsNotHeld() {
    for (double width : new double[] {0.1, 0.2, 0.5}) {
      StreamField sharp =
          (latitude, longitude, seconds, out, offset) -> {
            double x = PlanePatch.x(longitude);
            out[offset] = x > 4.37 && x < 4.37 + width ? -2.0 : 0.0;
            out[offset + 1] = 0.0;
            return true;
          };
      NotPossible why =
          solver(sharp, Strategy.trackHeld()).solve(LEG, DEPARTURE).why().orElseThrow();
      assertEquals(Reason.ADVERSE_STREAM, why.reason(), width + " km");
    }
  }

  @Test
  void aGapInTheDataIsNotSteppedOver() {
    StreamField gap =
        (latitude, longitude, seconds, out, offset) -> {
          double x = PlanePatch.x(longitude);
          out[offset] = 0.0;
          out[offset + 1] = 0.1;
          return !(x > 4.9 && x < 5.0);
        };
    for (Strategy strategy : new Strategy[] {Strategy.trackHeld(), Strategy.constantHeading()}) {
      assertFalse(solver(gap, strategy).solve(LEG, DEPARTURE).isSolved(), strategy.words());
    }
  }

  /** A gap takes as long to go round as land of its shape. */
  @Test
  void gapsInTheDataAreGoneRound() {
    double[][] gaps = {{0.19, 1.92, 7.65, -0.42}, {0.42, 1.44, 3.01, -0.05}, {0.1, 1.0, 4.95, 0.0}};
    for (double[] gap : gaps) {
      StreamField stream =
          (latitude, longitude, seconds, out, offset) -> {
            double x = PlanePatch.x(longitude);
            double y = PlanePatch.y(latitude);
            out[offset] = 0.2 * Math.sin(y);
            out[offset + 1] = 0.1;
            return !isInside(gap, x, y);
          };
      SteeredLeg leg = solver(stream, Strategy.quickest()).solve(LEG, DEPARTURE).orElseThrow();
      for (TrackPoint point : leg.groundTrack().pointsEvery(1.0)) {
        double x = PlanePatch.x(point.position().longitudeDegrees());
        double y = PlanePatch.y(point.position().latitudeDegrees());
        boolean cut = isInside(gap, x - CUT, y) && isInside(gap, x + CUT, y);
        assertFalse(cut && isInside(gap, x, y - CUT) && isInside(gap, x, y + CUT), x + " " + y);
      }
      List<Position> shape =
          List.of(
              PlanePatch.at(gap[2] - gap[0] / 2, gap[3] - gap[1]),
              PlanePatch.at(gap[2] + gap[0] / 2, gap[3] - gap[1]),
              PlanePatch.at(gap[2] + gap[0] / 2, gap[3] + gap[1]),
              PlanePatch.at(gap[2] - gap[0] / 2, gap[3] + gap[1]));
      StreamField known = PlanePatch.stream((x, y) -> 0.2 * Math.sin(y), (x, y) -> 0.1);
      SteeredLeg round =
          solver(known, Strategy.quickestAround(List.of(shape)))
              .solve(LEG, DEPARTURE)
              .orElseThrow();
      assertEquals(round.arrivalSeconds(), leg.arrivalSeconds(), ROUND_A_GAP_SECONDS);
    }
  }

  private static boolean isInside(double[] gap, double x, double y) {
    return Math.abs(x - gap[2]) < gap[0] / 2 && Math.abs(y - gap[3]) < gap[1];
  }
}
