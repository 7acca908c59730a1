package org.ferryglide.nav.quickest;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

class TrackTimesTest {
  private static final double JUMPS_SECONDS = 50.0;
  private static final double LEG = 0.1;

  /** Still water for 50 s, then 9 m/s along the track: 50 m are paddled, the rest takes 5 s. */
  private static final class Jump implements StreamField {
    private static final long serialVersionUID = 1L;

    @Override
    public boolean sample(
        double latitude, double longitude, double time, double[] out, int offset) {
      out[offset] = time < JUMPS_SECONDS ? 0.0 : 9.0;
      out[offset + 1] = 0.0;
      return true;
    }

    @Override
    public double nextBreakAfter(double epochSeconds) {
      return epochSeconds < JUMPS_SECONDS ? JUMPS_SECONDS : Double.POSITIVE_INFINITY;
    }
  }

  /** When the end is reached past an area 30 to 40 m along that is closed from a time to a time. */
  private static double arrival(double closes, double opens) {
    List<Position> area =
        List.of(
            PlanePatch.at(0.03, -0.01),
            PlanePatch.at(0.04, -0.01),
            PlanePatch.at(0.04, 0.01),
            PlanePatch.at(0.03, 0.01));
    Waters waters =
        new Waters(
            Obstacles.none(),
            List.of(new Waters.Closure(Obstacles.of(List.of(area)), closes, opens)));
    CraftMotion motion = new CalmCraft(new Jump(), 1.0);
    SearchPlane plane = new SearchPlane(0.0, 0.0, 0.0, PlanePatch.longitude(LEG));
    TrackTimes times = new TrackTimes(motion, new CourseSpeed(motion), waters, plane, 0.0);
    return times.arrival(0.0, 0.0, plane.length, 0.0, 0.0);
  }

  /** At an even speed the area would be passed in seconds 16.5 to 22. */
  @Test
  void aStreamThatJumpsTellsWhereTheCraftIsMeanwhile() {
    assertEquals(55.0, arrival(12.0, 24.0), 1e-6);
    assertEquals(Double.NaN, arrival(34.0, 39.0));
  }
}
