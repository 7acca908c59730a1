package org.ferryglide.nav.reckon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeringLimits;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.testing.Seeds;

/** However narrow a race is, a leg's own stream is known again as its own. */
class UnevenStreamsProperties {
  private static final Instant NOON = Instant.parse("2026-06-14T12:00:00Z");
  private static final Position START = Position.ofDegrees(46.0, -26.0);
  private static final double KNOT = 1852.0 / 3600.0;
  private static final double METRES_IN_A_DEGREE = 111_132.0;

  /** A weak stream with a race across the way, so many metres wide to either side. */
  private static StreamField race(Random random, double north, double width, double knots) {
    double weak = 0.4 * random.nextDouble() * KNOT;
    double set = 2.0 * Math.PI * random.nextDouble();
    double runs = 2.0 * Math.PI * random.nextDouble();
    return (latitude, longitude, seconds, out, at) -> {
      double off = ((latitude - START.latitudeDegrees()) * METRES_IN_A_DEGREE - north) / width;
      double strong = knots * KNOT * Math.exp(-off * off);
      out[at] = weak * Math.sin(set) + strong * Math.sin(runs);
      out[at + 1] = weak * Math.cos(set) + strong * Math.cos(runs);
      return true;
    };
  }

  private static CourseToSteer solver(Random random, StreamField stream) {
    List<Strategy> ways =
        List.of(Strategy.constantHeading(), Strategy.trackHeld(), Strategy.bowOnTarget());
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3.0 + 1.5 * random.nextDouble())), stream)
        .withStrategy(ways.get(random.nextInt(ways.size())))
        .withLimits(SteeringLimits.NONE);
  }

  @Property(seed = Seeds.SEED, tries = 300 * Seeds.MORE_IN_THE_SOAK)
  void theStreamThatALegWasSteeredInIsNeverRefused(@ForAll long seed) {
    Assume.that(alongItsOwn(new Random(seed), 100.0, 10.0));
  }

  /** One that both points of a long run miss: what the leg met there is found by short ones. */
  @Example
  void aNarrowRaceMissedByLongRunsIsFoundByShortOnes() {
    assertTrue(alongItsOwn(new Random(191L * 7919L), 30.0, 33.0));
    assertTrue(alongItsOwn(new Random(340L * 7919L), 30.0, 33.0));
  }

  /** False where no leg can be steered. */
  private static boolean alongItsOwn(Random random, double narrowest, double times) {
    double width = narrowest * Math.pow(times, random.nextDouble());
    double knots = 0.3 + 2.4 * random.nextDouble();
    StreamField stream = race(random, 500.0 + 4000.0 * random.nextDouble(), width, knots);
    RhumbLeg leg =
        RhumbLeg.from(
            START,
            TrueBearing.ofDegrees(330.0 + 60.0 * random.nextDouble()),
            Distance.ofMetres(5000.0 + 2000.0 * random.nextDouble()));
    SteeredLeg steered = solver(random, stream).solve(leg, NOON).solved().orElse(null);
    if (steered == null) {
      return false;
    }
    double seconds = 0.0;
    for (SteadyRun run : SteadyRun.along(steered, stream)) {
      seconds += run.duration().toNanos() * 1e-9;
    }
    assertEquals(steered.duration().toNanos() * 1e-9, seconds, 1e-3);
    return true;
  }

  @Example
  void anotherStreamIsRefusedStill() {
    StreamField stream = race(new Random(5), 2500.0, 800.0, 2.0);
    RhumbLeg leg = RhumbLeg.from(START, TrueBearing.ofDegrees(0), Distance.ofMetres(5000));
    SteeredLeg steered =
        CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3.5)), stream)
            .withLimits(SteeringLimits.NONE)
            .solve(leg, NOON)
            .orElseThrow();
    assertThrows(
        IllegalArgumentException.class, () -> SteadyRun.along(steered, StreamField.slack()));
  }
}
