package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

/** Passages whose answers are printed elsewhere, worked as whole plans. */
class PublishedPassageTest {
  private static final Position START = Position.ofDegrees(50.0, -2.0);

  private static Passage north(
      double knots, Distance length, LegOptions options, StreamField sets) {
    Position end = RhumbLeg.from(START, TrueBearing.ofDegrees(0), length).end();
    return Passage.builder("north", ZoneOffset.UTC, Party.of(Craft.ofSpeed(Speed.ofKnots(knots))))
        .from(WayPoint.of("start", START))
        .to(WayPoint.of("end", end), options)
        .stream(sets)
        .build();
  }

  private static PlannedLeg leg(Passage passage, Instant departure) {
    return TimedPlan.of(passage, departure).orElseThrow().legs().get(0);
  }

  /**
   * Yachting Monthly, June 2016, the question of seamanship "What's the best course to steer?"
   * (pressreader.com/uk/yachting-monthly/20160601/282282434506878): four hours north at 3 knots
   * from 1400, the stream east until slack at 1600 and as much west after it. Printed: one heading,
   * north, makes good 3 knots throughout; with the line held, "a little over 2 knots" over the
   * ground at first, 3 knots at 1600, and an arrival at "about 1900". The rates are not printed: a
   * stream straight across that grows evenly from slack to what leaves 2.1 knots of 3.
   */
  @Test
  void oneHeadingAcrossAStreamThatTurnsHalfWayBeatsTheLineHeld() {
    Instant two = Instant.parse("2016-06-01T14:00:00Z");
    double slack = two.getEpochSecond() + 7200.0;
    double first = Math.sqrt(3.0 * 3.0 - 2.1 * 2.1) * Told.KNOT;
    StreamField turning =
        (lat, lon, time, out, at) -> {
          out[at] = first * (slack - time) / 7200.0;
          out[at + 1] = 0.0;
          return true;
        };
    Distance twelve = Distance.ofNauticalMiles(12);
    PlannedLeg one = leg(north(3, twelve, LegOptions.usual(), turning), two);
    assertEquals(0.0, Math.IEEEremainder(one.heading().degrees(), 360.0), 0.5); // whole degrees
    assertEquals(3.0, one.speedMadeGood().knots(), 0.05); // printed to a tenth
    assertEquals(240.0, one.duration().toSeconds() / 60.0, 1.0);
    PlannedLeg held =
        leg(north(3, twelve, LegOptions.usual().withStrategy(Strategy.trackHeld()), turning), two);
    assertTrue(held.heading().degrees() > 300.0); // far west of north to begin with
    // without the printed rates, how much later is told no better than this
    assertTrue(held.duration().compareTo(Duration.ofMinutes(270)) > 0);
    assertTrue(held.duration().compareTo(Duration.ofMinutes(315)) < 0);
  }

  /**
   * Practical Boat Owner, Nav in a nutshell: curved track or straight?
   * (pbo.co.uk/seamanship/nav-nutshell-curved-track-straight-32181): across a stream of 2 knots a
   * boat of 5 knots allows 23°, one of 25 knots about 5°. Plotted answers, to a degree.
   */
  @Test
  void theAllowanceForTwoKnotsAcrossIsThePrintedOne() {
    double[][] printed = {{5, 23}, {25, 5}};
    for (double[] row : printed) {
      Passage passage =
          north(row[0], Distance.ofNauticalMiles(5), LegOptions.usual(), Told.stream(90, 2));
      double heading = leg(passage, Scenes.NOON).heading().degrees();
      assertEquals(360.0 - row[1], heading, 1.0);
    }
  }
}
