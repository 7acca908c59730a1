package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;

class QuickestPathTest {
  /** Both solvers bring the end of their path to a millimetre, at a metre a second or more. */
  private static final double SECONDS = 0.05;

  private static final Instant DEPARTURE = Instant.parse("2026-06-14T10:00:00Z");
  private static final Position START = Position.ofDegrees(46.0, -26.0);

  private static CourseToSteer solver(StreamField stream) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3.5)), stream)
        .withLimits(SteeringLimits.NONE);
  }

  /** Rows of ten minutes, so that the stream jumps in time but not from place to place. */
  private static StreamField stepped(double strength) {
    return new StreamField() {
      @Override
      public boolean sample(
          double latitude, double longitude, double seconds, double[] out, int offset) {
        double row = Math.floor(seconds / 600.0);
        out[offset] = strength * Math.sin(row);
        out[offset + 1] = strength * Math.cos(0.7 * row);
        return true;
      }

      @Override
      public double nextBreakAfter(double seconds) {
        return (Math.floor(seconds / 600.0) + 1.0) * 600.0;
      }

      @Override
      public boolean isUniform() {
        return true;
      }
    };
  }

  /** In a stream uniform over the area the quickest path holds one heading. */
  @Property(seed = Seeds.SEED, tries = 25)
  void inAUniformStreamOneHeadingIsTheQuickest(
      @ForAll @DoubleRange(min = 0, max = 359) double course,
      @ForAll @DoubleRange(min = 0, max = 1.2) double strength) {
    Leg leg = RhumbLeg.from(START, TrueBearing.ofDegrees(course), Distance.ofNauticalMiles(4));
    StreamField stream = stepped(strength);
    SteeredLeg held = solver(stream).solve(leg, DEPARTURE).orElseThrow();
    SteeredLeg quickest =
        solver(stream).withStrategy(Strategy.quickest()).solve(leg, DEPARTURE).orElseThrow();
    assertEquals(
        held.duration().toMillis() / 1000.0, quickest.duration().toMillis() / 1000.0, SECONDS);
  }

  @Property(seed = Seeds.SEED, tries = 25)
  void noOtherStrategyIsQuicker(
      @ForAll @DoubleRange(min = 0, max = 359) double course,
      @ForAll @DoubleRange(min = 0, max = 1.0) double strength) {
    Leg leg = RhumbLeg.from(START, TrueBearing.ofDegrees(course), Distance.ofNauticalMiles(3));
    StreamField stream =
        (latitude, longitude, seconds, out, offset) -> {
          out[offset] = strength * Math.sin((latitude - 46.0) * 120.0 + seconds / 7000.0);
          out[offset + 1] = strength * Math.sin((longitude + 26.0) * 90.0);
          return true;
        };
    double quickest = seconds(stream, leg, Strategy.quickest());
    assertTrue(quickest <= seconds(stream, leg, Strategy.constantHeading()) + SECONDS);
    assertTrue(quickest <= seconds(stream, leg, Strategy.trackHeld()) + SECONDS);
    assertTrue(quickest <= seconds(stream, leg, Strategy.bowOnTarget()) + SECONDS);
  }

  private static double seconds(StreamField stream, Leg leg, Strategy strategy) {
    return solver(stream)
        .withStrategy(strategy)
        .solve(leg, DEPARTURE)
        .match(steered -> steered.duration().toMillis() / 1000.0, why -> Double.POSITIVE_INFINITY);
  }

  /** A jump from place to place has no extremal across it; the answer must still not be worse. */
  @Test
  void whereTheStreamJumpsFromPlaceToPlaceOneHeadingStandsBy() {
    StreamField stream =
        (latitude, longitude, seconds, out, offset) -> {
          out[offset] = latitude > 46.02 ? 0.9 : -0.9;
          out[offset + 1] = 0.0;
          return true;
        };
    Leg leg = RhumbLeg.from(START, TrueBearing.ofDegrees(10), Distance.ofNauticalMiles(3));
    double quickest = seconds(stream, leg, Strategy.quickest());
    assertTrue(quickest < Double.POSITIVE_INFINITY);
    assertTrue(quickest <= seconds(stream, leg, Strategy.constantHeading()) + SECONDS);
  }

  @Test
  void aStreamThatOutrunsTheCraftIsNotPossible() {
    StreamField stream = StreamField.steady(Velocity.ofEastAndNorth(3.0, 0.0));
    Leg leg = RhumbLeg.from(START, TrueBearing.ofDegrees(270), Distance.ofNauticalMiles(3));
    assertTrue(
        solver(stream).withStrategy(Strategy.quickest()).solve(leg, DEPARTURE).why().isPresent());
  }

  private static CourseToSteer minding(StreamField stream, Velocity wind) {
    Craft craft =
        Craft.ofSpeed(Speed.ofKnots(3.5))
            .withWindResponse(WindResponse.commonPractice(WindResponse.Trim.ORDINARY));
    return CourseToSteer.with(craft, stream)
        .withLimits(SteeringLimits.NONE)
        .withWind(WindField.steady(wind))
        .withStrategy(Strategy.quickest());
  }

  /**
   * Force 4 dead ahead costs a knot, a third less for every 30° off the bow, where it sets the
   * craft 7.5° aside for each 90°: working to windward is quicker than straight at it.
   */
  @Test
  void againstAHeadWindTheBestAngleIsFound() {
    double best = 0.0;
    for (double off = 0.0; off < 60.0; off += 0.01) {
      double speed = 3.5 - (1.0 - off / 90.0);
      best = Math.max(best, speed * Math.cos(Math.toRadians(off + 7.5 * off / 90.0)));
    }
    Leg north = RhumbLeg.from(START, TrueBearing.ofDegrees(0), Distance.ofNauticalMiles(5));
    Velocity northerly = Velocity.ofWind(TrueBearing.ofDegrees(0), Speed.ofKnots(13.5));
    double found = seconds(minding(StreamField.slack(), northerly), north);
    assertEquals(5.0 / best * 3600.0, found, 2.0);
    assertTrue(found < 5.0 / 2.5 * 3600.0 - 100.0, found + " s");
  }

  @Property(seed = Seeds.SEED, tries = 10)
  void noOtherStrategyIsQuickerInWind(
      @ForAll @DoubleRange(min = 0, max = 359) double course,
      @ForAll @DoubleRange(min = 0, max = 359) double from,
      @ForAll @DoubleRange(min = 2, max = 16) double knots) {
    Leg leg = RhumbLeg.from(START, TrueBearing.ofDegrees(course), Distance.ofNauticalMiles(3));
    StreamField stream =
        (latitude, longitude, seconds, out, offset) -> {
          out[offset] = 0.5 * Math.sin((latitude - 46.0) * 120.0 + seconds / 7000.0);
          out[offset + 1] = 0.5 * Math.sin((longitude + 26.0) * 90.0);
          return true;
        };
    CourseToSteer solver =
        minding(stream, Velocity.ofWind(TrueBearing.ofDegrees(from), Speed.ofKnots(knots)));
    double quickest = seconds(solver.withStrategy(Strategy.quickest()), leg);
    assertTrue(quickest <= seconds(solver.withStrategy(Strategy.constantHeading()), leg) + SECONDS);
    assertTrue(quickest <= seconds(solver.withStrategy(Strategy.trackHeld()), leg) + SECONDS);
    assertTrue(quickest < Double.POSITIVE_INFINITY);
  }

  private static double seconds(CourseToSteer solver, Leg leg) {
    return solver
        .solve(leg, DEPARTURE)
        .match(steered -> steered.duration().toMillis() / 1000.0, why -> Double.POSITIVE_INFINITY);
  }
}
