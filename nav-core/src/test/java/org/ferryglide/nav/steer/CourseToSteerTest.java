package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.EpochSeconds;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

class CourseToSteerTest {
  private static final double PROMISED_METRES = 0.1;

  /** What a tenth of a metre takes at two metres a second. */
  private static final double TENTH_OF_A_METRE_SECONDS = 0.05;

  private static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");
  private static final double NOON_SECONDS = EpochSeconds.of(NOON);
  private static final Position START = Position.ofDegrees(50.0, -4.0);
  private static final double[] EAST = {0.2, 1.0, 1.8, 1.5, 0.4, -0.8, -1.6, -1.2, -0.3, 0.5};
  private static final double[] NORTH = {-0.5, -0.9, -1.1, -0.6, 0.1, 0.7, 1.2, 0.9, 0.2, -0.4};

  @Test
  void theEndIsHitWithOneHeadingInHourlySteps() {
    StreamField stream = HourlyStream.steps(NOON_SECONDS - 3600, EAST, NORTH);
    SteeredLeg steered = solve(leg(20, 12), 3.2, stream, Strategy.oneHeading());
    assertEquals(1, steered.headings().size());
    assertHit(steered, 3.2, stream);
  }

  @Test
  void theEndIsHitWithOneHeadingInAStreamInterpolated() {
    StreamField stream = HourlyStream.lines(NOON_SECONDS - 3600, EAST, NORTH);
    SteeredLeg steered = solve(leg(200, 10), 3.2, stream, Strategy.oneHeading());
    assertHit(steered, 3.2, stream);
    assertTrue(steered.greatestOffLine().distance().magnitude().metres() > 100.0);
  }

  @Test
  void theTrackIsHeldInAStreamInterpolated() {
    StreamField stream = HourlyStream.lines(NOON_SECONDS - 3600, EAST, NORTH);
    RhumbLeg leg = leg(200, 10);
    SteeredLeg held = solve(leg, 3.2, stream, Strategy.trackHeld());
    SteeredLeg one = solve(leg, 3.2, stream, Strategy.oneHeading());
    assertTrue(one.time().compareTo(held.time()) <= 0);
    assertEquals(0.0, held.greatestOffLine().distance().metres(), 0.01);
    assertEquals(
        OffLine.Side.NEITHER,
        solve(leg, 3.2, StreamField.slack(), Strategy.trackHeld()).greatestOffLine().side());
    assertEquals(
        EpochSeconds.of(slowTrack(leg, 3.2, stream)),
        EpochSeconds.of(held.arrival()),
        TENTH_OF_A_METRE_SECONDS);
  }

  /** The track held in steps of one second, each a triangle of its own. */
  private static Instant slowTrack(RhumbLeg leg, double knots, StreamField stream) {
    double course = Math.toRadians(leg.course().degrees());
    double along = 0.0;
    double time = NOON_SECONDS;
    double speed = Speed.ofKnots(knots).metresPerSecond();
    double[] flow = new double[2];
    while (true) {
      stream.sample(50, -4, time + 0.5, flow, 0);
      double a = flow[0] * Math.sin(course) + flow[1] * Math.cos(course);
      double c = flow[0] * Math.cos(course) - flow[1] * Math.sin(course);
      double rate = a + Math.sqrt(speed * speed - c * c);
      if (along + rate >= leg.length().metres()) {
        return EpochSeconds.toInstant(time + (leg.length().metres() - along) / rate);
      }
      along += rate;
      time += 1.0;
    }
  }

  @Test
  void aLegWithoutLengthIsSolvedAtOnce() {
    Leg leg = RhumbLeg.between(START, START);
    for (Strategy strategy : new Strategy[] {Strategy.oneHeading(), Strategy.trackHeld()}) {
      SteeredLeg steered = solve(leg, 3, StreamField.slack(), strategy);
      assertEquals(Duration.ZERO, steered.time());
      assertEquals(Speed.ZERO, steered.speedMadeGood());
      assertEquals("steer.no-length", steered.notes().get(0).code());
    }
  }

  private static SteeredLeg solve(Leg leg, double knots, StreamField stream, Strategy strategy) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(knots)), stream)
        .withStrategy(strategy)
        .withLimits(SteeringLimits.NONE)
        .solve(leg, NOON)
        .orElseThrow();
  }

  private static RhumbLeg leg(double course, double nauticalMiles) {
    return RhumbLeg.from(
        START, TrueBearing.ofDegrees(course), Distance.ofNauticalMiles(nauticalMiles));
  }

  private static void assertHit(SteeredLeg steered, double knots, StreamField stream) {
    SlowFollower slow =
        new SlowFollower(
            steered.leg().start().latitudeDegrees(),
            steered.leg().start().longitudeDegrees(),
            EpochSeconds.of(steered.departure()));
    double speed = Speed.ofKnots(knots).metresPerSecond();
    for (int i = 0; i < steered.headings().size(); i++) {
      double until =
          i + 1 < steered.headings().size()
              ? EpochSeconds.of(steered.headings().get(i + 1).from())
              : EpochSeconds.of(steered.arrival());
      slow.follow(steered.headings().get(i).heading().degrees(), speed, stream, until);
    }
    assertEquals(
        0.0,
        slow.metresFrom(
            steered.leg().end().latitudeDegrees(), steered.leg().end().longitudeDegrees()),
        PROMISED_METRES);
  }
}
