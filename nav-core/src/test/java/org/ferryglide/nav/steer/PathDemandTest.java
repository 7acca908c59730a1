package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

class PathDemandTest {
  private static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");
  private static final double NOON_SECONDS = EpochSeconds.of(NOON);
  private static final Position START = Position.ofDegrees(50.0, -4.0);
  private static final RhumbLeg FIVE_MILES_NORTH =
      RhumbLeg.from(START, TrueBearing.ofDegrees(0), Distance.ofNauticalMiles(5));

  /** 4 kn to the east for an hour, then slack. */
  private static final StreamField EASTGOING_HOUR =
      HourlyStream.steps(NOON_SECONDS + 1800, new double[] {4, 0, 0, 0, 0, 0, 0}, new double[7]);

  private static CourseToSteer solver(StreamField stream) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3.5)), stream);
  }

  /** In a stream uniform over the area the two strategies take one path. */
  @Test
  void onePathHasOneVerdictUnderEveryStrategy() {
    CourseToSteer one = solver(EASTGOING_HOUR);
    CourseToSteer quickest = one.withStrategy(Strategy.quickest());
    assertEquals(Reason.NO_RESERVE, one.solve(FIVE_MILES_NORTH, NOON).why().orElseThrow().reason());
    assertEquals(
        Reason.NO_RESERVE, quickest.solve(FIVE_MILES_NORTH, NOON).why().orElseThrow().reason());
    SteeredLeg a = one.withLimits(SteeringLimits.NONE).solve(FIVE_MILES_NORTH, NOON).orElseThrow();
    SteeredLeg b =
        quickest.withLimits(SteeringLimits.NONE).solve(FIVE_MILES_NORTH, NOON).orElseThrow();
    assertEquals(EpochSeconds.of(a.arrival()), EpochSeconds.of(b.arrival()), 0.1);
    assertEquals(a.crossStreamShare(), b.crossStreamShare(), 1e-4);
    assertEquals(a.reserve().knots(), b.reserve().knots(), 1e-3);
    // the plane: heading h, path along (4 + 3.5 sin h, 3.5 cos h)
    double heading = Math.toRadians(a.courseToSteer().degrees());
    double east = 4 + 3.5 * Math.sin(heading);
    double north = 3.5 * Math.cos(heading);
    assertEquals(4 * north / Math.hypot(east, north) / 3.5, a.crossStreamShare(), 1e-4);
  }

  @Test
  void aStreamThatOutrunsTheCraftIsNamed() {
    SteeredLeg steered =
        solver(EASTGOING_HOUR)
            .withLimits(SteeringLimits.NONE)
            .solve(FIVE_MILES_NORTH, NOON)
            .orElseThrow();
    assertEquals(4 / 3.5, steered.greatestStreamShare(), 1e-9);
    assertEquals(
        List.of("steer.stream-outruns-craft"), steered.notes().stream().map(Note::code).toList());
    assertTrue(
        steered.notes().get(0).text().startsWith("The stream runs at up to 115 % of the craft's"));
  }

  /** A peak across of 80.48 % of the speed, between two steps of the track. */
  @Test
  void theGreatestShareIsFoundBetweenTheStepsOfAHeldTrack() {
    double peak = 0.8048 * 3.5 * Speed.METRES_PER_SECOND_PER_KNOT;
    for (int shift = 0; shift < 600; shift += 75) {
      double middle = NOON_SECONDS + 1700 + shift;
      StreamField stream =
          new StreamField() {
            @Override
            public boolean sample(double lat, double lon, double time, double[] out, int offset) {
              double off = (time - middle) / 1500.0;
              out[offset] = peak * Math.exp(-off * off);
              out[offset + 1] = 0.0;
              return true;
            }

            @Override
            public boolean isUniform() {
              return true;
            }
          };
      CourseToSteer held = solver(stream).withStrategy(Strategy.trackHeld());
      SteeredLeg steered =
          held.withLimits(SteeringLimits.NONE).solve(FIVE_MILES_NORTH, NOON).orElseThrow();
      assertEquals(0.8048, steered.crossStreamShare(), 1e-4);
      NotPossible why = held.solve(FIVE_MILES_NORTH, NOON).why().orElseThrow();
      assertEquals(Reason.NO_RESERVE, why.reason());
      assertEquals(middle, EpochSeconds.of(why.when().orElseThrow()), 30.0);
    }
  }

  @Test
  void aRefusalForWantOfReserveNamesTheLimitAndBothFigures() {
    StreamField across =
        StreamField.steady(Velocity.ofSetAndRate(TrueBearing.ofDegrees(90), Speed.ofKnots(2.9)));
    NotPossible why =
        solver(across)
            .withStrategy(Strategy.trackHeld())
            .solve(FIVE_MILES_NORTH, NOON)
            .why()
            .orElseThrow();
    assertEquals(2.9 / 3.5, why.crossStreamShare().orElseThrow(), 1e-6);
    assertTrue(
        why.message()
            .startsWith(
                "it would leave too little reserve of speed: it would take 83 % of the craft's"
                    + " speed against what sets across, and the limits allow 80 %, by 0.13 kn, at"
                    + " 2026"),
        why.message());
    NotPossible hair =
        solver(across)
            .withStrategy(Strategy.trackHeld())
            .withLimits(SteeringLimits.of(0.5, 2.8999 / 3.5))
            .solve(FIVE_MILES_NORTH, NOON)
            .why()
            .orElseThrow();
    assertTrue(hair.message().contains(", by 0.01 kn, "), hair.message());
  }

  @Test
  void noLimitsWarnOfNothing() {
    StreamField across =
        StreamField.steady(Velocity.ofSetAndRate(TrueBearing.ofDegrees(90), Speed.ofKnots(3.2)));
    assertTrue(
        solver(across)
            .withLimits(SteeringLimits.NONE)
            .solve(FIVE_MILES_NORTH, NOON)
            .orElseThrow()
            .notes()
            .isEmpty());
  }

  /** Reserve left on a held track: the least over the way, not that at either end. */
  @Test
  void theReserveIsTheLeastOnTheWay() {
    double[] north = {0.0, -1.5, 0.0, 0.0, 0.0};
    StreamField stream = HourlyStream.lines(NOON_SECONDS - 1800, new double[5], north);
    for (Strategy strategy :
        List.of(
            Strategy.trackHeld(),
            Strategy.constantHeading(),
            Strategy.newHeadingEvery(Duration.ofMinutes(40)),
            Strategy.bowOnTarget(),
            Strategy.quickest())) {
      SteeredLeg steered =
          solver(stream).withStrategy(strategy).solve(FIVE_MILES_NORTH, NOON).orElseThrow();
      assertEquals(2.0, steered.reserve().knots(), 2e-3, strategy.words());
    }
  }

  /** Of the share: a hundredth of a percent, where plans print whole percents. */
  private static final double SHARE = 1e-4;

  /**
   * In a stream alike everywhere a segment may last an hour: looked at five times a second by the
   * heading, the stream and the triangle of the two alone.
   */
  @Test
  void shareAndReserveOfLongSegmentsAreThoseOfDenseLooks() {
    SplittableRandom random = new SplittableRandom(1);
    int longOnes = 0;
    for (int i = 0; i < 60; i++) {
      double[] east = new double[8];
      double[] north = new double[8];
      for (int hour = 0; hour < east.length; hour++) {
        east[hour] = 3.0 * random.nextDouble() - 1.5;
        north[hour] = 3.0 * random.nextDouble() - 1.5;
      }
      StreamField stream = HourlyStream.lines(NOON_SECONDS - 2000, east, north);
      SteeredLeg steered =
          solver(stream)
              .withLimits(SteeringLimits.NONE)
              .solve(FIVE_MILES_NORTH, NOON)
              .orElseThrow();
      GroundTrack track = steered.groundTrack();
      double speed = Speed.ofKnots(3.5).metresPerSecond();
      double heading = Math.toRadians(steered.courseToSteer().degrees());
      double share = 0.0;
      double spare = Double.POSITIVE_INFINITY;
      double[] set = new double[2];
      for (double t = track.startSeconds(); t < track.endSeconds(); t += 0.2) {
        assertTrue(stream.sample(50.0, -4.0, t, set, 0));
        double over =
            Math.atan2(set[0] + speed * Math.sin(heading), set[1] + speed * Math.cos(heading));
        double across = set[0] * Math.cos(over) - set[1] * Math.sin(over);
        double along = set[0] * Math.sin(over) + set[1] * Math.cos(over);
        share = Math.max(share, Math.abs(across) / speed);
        spare = Math.min(spare, speed - Math.hypot(across, Math.min(0.0, along)));
      }
      double[] times = track.segmentTimes();
      longOnes += times[1] - times[0] > 1000.0 ? 1 : 0;
      assertEquals(share, steered.crossStreamShare(), SHARE, "leg " + i);
      assertEquals(spare, steered.reserve().metresPerSecond(), SHARE * speed, "leg " + i);
    }
    assertTrue(longOnes > 40, longOnes + " legs begin with a long segment");
  }
}
