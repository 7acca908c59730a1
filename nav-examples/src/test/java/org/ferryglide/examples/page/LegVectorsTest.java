package org.ferryglide.examples.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.junit.jupiter.api.Test;

class LegVectorsTest {
  /** The track is followed in chords of half a minute; the leg is some thousand metres. */
  private static final double CHORDS_METRES = 3.0;

  private static final double METRES_PER_SECOND_PER_KNOT = 1852.0 / 3600.0;

  /** By hand: paddling speed times time along the heading, through the water alone. */
  @Test
  void theWayThroughTheWaterIsSpeedTimesTimeAlongTheHeading() {
    TimedPlan plan = TimedPlan.of(PageScenes.oneLeg(), PageScenes.NOON).orElseThrow();
    PlannedLeg leg = plan.legs().get(0);
    LegVectors vectors = LegVectors.of(plan, leg);
    double seconds = leg.duration().toMillis() / 1000.0;
    double metres = 3.5 * METRES_PER_SECOND_PER_KNOT * seconds;
    double heading = Math.toRadians(leg.heading().degrees());
    List<double[]> water = vectors.waterChain();
    double[] from = water.get(0);
    double[] to = water.get(water.size() - 1);
    assertEquals(metres * Math.sin(heading), to[0] - from[0], CHORDS_METRES);
    assertEquals(metres * Math.cos(heading), to[1] - from[1], CHORDS_METRES);
  }

  /** By hand: the cosine's rate integrated over the time, to the north. */
  @Test
  void theStreamsAreTheIntegralOfTheStream() {
    TimedPlan plan = TimedPlan.of(PageScenes.oneLeg(), PageScenes.NOON).orElseThrow();
    PlannedLeg leg = plan.legs().get(0);
    List<double[]> streams = LegVectors.of(plan, leg).streamChain();
    double omega = 2.0 * Math.PI / (12.42 * 3600.0);
    double seconds = leg.duration().toMillis() / 1000.0;
    double north = 1.4 * METRES_PER_SECOND_PER_KNOT * Math.sin(omega * seconds) / omega;
    assertEquals(0.0, streams.get(streams.size() - 1)[0], CHORDS_METRES);
    assertEquals(north, streams.get(streams.size() - 1)[1], CHORDS_METRES);
  }

  @Test
  void theChainClosesOnTheWayPoint() {
    TimedPlan plan = TimedPlan.of(PageScenes.aStop(), PageScenes.NOON).orElseThrow();
    for (PlannedLeg leg : plan.legs()) {
      List<double[]> water = LegVectors.of(plan, leg).waterChain();
      double[] end = water.get(water.size() - 1);
      double course = Math.toDegrees(Math.atan2(end[0], end[1]));
      // a rhumb line's bearing is that of its sums of departure and difference of latitude
      assertEquals(leg.course().degrees(), course, 0.1);
      assertEquals(leg.leg().leg().length().metres(), Math.hypot(end[0], end[1]), CHORDS_METRES);
    }
  }
}
