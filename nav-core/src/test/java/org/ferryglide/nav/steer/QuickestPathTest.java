package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Outcome;
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
    assertTrue(quickest <= seconds(stream, leg, Strategy.oneHeading()) + SECONDS);
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
    assertTrue(quickest <= seconds(stream, leg, Strategy.oneHeading()) + SECONDS);
  }

  @Test
  void aStreamThatOutrunsTheCraftIsNotPossible() {
    StreamField stream = StreamField.steady(Velocity.ofEastAndNorth(3.0, 0.0));
    Leg leg = RhumbLeg.from(START, TrueBearing.ofDegrees(270), Distance.ofNauticalMiles(3));
    assertTrue(
        solver(stream).withStrategy(Strategy.quickest()).solve(leg, DEPARTURE).why().isPresent());
  }

  /** What holds in calm air is no answer in wind: 1.43 h here, where 2 h are needed at least. */
  @Test
  void inAWindThatChangesTheCraftEveryAskerIsRefusedForTheSameReason() {
    Craft minding =
        Craft.ofSpeed(Speed.ofKnots(3.5))
            .withWindResponse(WindResponse.commonPractice(WindResponse.Trim.ORDINARY));
    Leg north = RhumbLeg.from(START, TrueBearing.ofDegrees(0), Distance.ofNauticalMiles(5));
    Velocity northerly = Velocity.ofWind(TrueBearing.ofDegrees(0), Speed.ofKnots(13.5));
    CourseToSteer quickest =
        CourseToSteer.with(minding, StreamField.slack())
            .withWind(WindField.steady(northerly))
            .withStrategy(Strategy.quickest());
    assertEquals(Reason.WIND_NOT_ALLOWED_FOR, reason(quickest.solve(north, DEPARTURE)));
    assertEquals(
        Reason.WIND_NOT_ALLOWED_FOR,
        reason(quickest.withStrategy(Strategy.quickestAround(ISLAND)).solve(north, DEPARTURE)));
    Craft unmoved = Craft.ofSpeed(Speed.ofKnots(3.5));
    assertTrue(quickest.withCraft(unmoved).solve(north, DEPARTURE).isSolved());
    assertEquals(
        "the quickest path is not worked out for a craft that the wind changes; ask for another"
            + " strategy, at 2026-06-14T10:00:00Z, near 46°00.0'N 026°00.0'W",
        quickest.solve(north, DEPARTURE).why().orElseThrow().message());
  }

  private static final List<List<Position>> ISLAND =
      List.of(
          List.of(
              Position.ofDegrees(46.1, -26.1),
              Position.ofDegrees(46.1, -26.2),
              Position.ofDegrees(46.2, -26.2)));

  private static Reason reason(Outcome<SteeredLeg, NotPossible> outcome) {
    return outcome.why().orElseThrow().reason();
  }

  /** Courses all round past a jump of the stream from place to place; some searches fail there. */
  @Test
  void anAnswerThatStandsInForAFailedSearchSaysSo() {
    StreamField stream =
        (latitude, longitude, seconds, out, offset) -> {
          out[offset] = latitude > 46.02 ? 1.7 : -1.7;
          out[offset + 1] = 0.0;
          return true;
        };
    int stoodIn = 0;
    for (int course = 0; course < 360; course += 10) {
      Leg leg = RhumbLeg.from(START, TrueBearing.ofDegrees(course), Distance.ofNauticalMiles(3));
      CourseToSteer solver = solver(stream);
      SteeredLeg held = solver.solve(leg, DEPARTURE).solved().orElse(null);
      SteeredLeg quickest =
          solver.withStrategy(Strategy.quickest()).solve(leg, DEPARTURE).solved().orElse(null);
      if (quickest != null
          && held != null
          && quickest.arrival().equals(held.arrival())
          && quickest.groundTrack().equals(held.groundTrack())) {
        stoodIn++;
        assertEquals(
            "steer.quickest-one-heading", quickest.notes().get(quickest.notes().size() - 1).code());
        assertEquals(
            "The search for the quickest path failed; this is one heading held, which is not the"
                + " quickest where the stream varies from place to place.",
            quickest.notes().get(quickest.notes().size() - 1).text());
      }
    }
    assertTrue(stoodIn > 0, "no search failed");
  }
}
