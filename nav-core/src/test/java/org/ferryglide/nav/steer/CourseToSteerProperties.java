package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.testing.Seeds;

class CourseToSteerProperties {
  private static final double PROMISED_METRES = 0.1;

  /** In the plane one heading is never slower; on the ellipsoid by less than this, seconds. */
  private static final double ELLIPSOID_SECONDS = 2.0;

  private static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");
  private static final double NOON_SECONDS = EpochSeconds.of(NOON);
  private static final double KNOT = Speed.METRES_PER_SECOND_PER_KNOT;

  /** A leg, a paddling speed and a stream that turns once in a tide, in knots and hours. */
  record Passage(
      double latitude,
      double course,
      double miles,
      double knots,
      double rate,
      double set,
      double phase,
      double roundness,
      boolean steps) {

    RhumbLeg leg() {
      return RhumbLeg.from(
          Position.ofDegrees(latitude, 179.95),
          TrueBearing.ofDegrees(course),
          Distance.ofNauticalMiles(miles));
    }

    HourlyStream stream() {
      double[] east = new double[32];
      double[] north = new double[32];
      for (int i = 0; i < east.length; i++) {
        double angle = 2.0 * Math.PI * (i - 2 + phase) / 12.42;
        double main = rate * Math.cos(angle);
        double side = rate * roundness * Math.sin(angle);
        double radians = Math.toRadians(set);
        east[i] = main * Math.sin(radians) + side * Math.cos(radians);
        north[i] = main * Math.cos(radians) - side * Math.sin(radians);
      }
      double start = NOON_SECONDS - 7200.0;
      return steps
          ? HourlyStream.steps(start, east, north)
          : HourlyStream.lines(start, east, north);
    }

    CourseToSteer solver() {
      return CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(knots)), stream())
          .withLimits(SteeringLimits.NONE)
          .withLongestDuration(Duration.ofDays(1));
    }

    Outcome<SteeredLeg, NotPossible> solve(Strategy strategy) {
      return solver().withStrategy(strategy).solve(leg(), NOON);
    }
  }

  @Property(seed = Seeds.SEED, tries = 60)
  void theEndIsHitAsASlowFollowerSeesIt(@ForAll("passages") Passage passage) {
    for (Strategy strategy :
        new Strategy[] {
          Strategy.constantHeading(), Strategy.newHeadingEvery(Duration.ofHours(1))
        }) {
      SteeredLeg steered = passage.solve(strategy).solved().orElse(null);
      if (steered == null) { // only a stream worth naming may bar a passage
        assertTrue(passage.rate() > 0.5 * passage.knots(), passage + " must be possible");
        continue;
      }
      Position end = passage.leg().end();
      SlowFollower slow = new SlowFollower(passage.latitude(), 179.95, NOON_SECONDS);
      for (int i = 0; i < steered.headings().size(); i++) {
        double until =
            i + 1 < steered.headings().size()
                ? EpochSeconds.of(steered.headings().get(i + 1).time())
                : EpochSeconds.of(steered.arrival());
        slow.follow(
            steered.headings().get(i).heading().degrees(),
            passage.knots() * KNOT,
            passage.stream(),
            until);
      }
      assertEquals(
          0.0, slow.metresFrom(end.latitudeDegrees(), end.longitudeDegrees()), PROMISED_METRES);
    }
  }

  @Property(seed = Seeds.SEED, tries = 150)
  void oneHeadingIsNeverSlowerThanHourlyHeadingsNorTheseThanTheTrackHeld(
      @ForAll("passages") Passage passage) {
    Outcome<SteeredLeg, NotPossible> held = passage.solve(Strategy.trackHeld());
    Outcome<SteeredLeg, NotPossible> one = passage.solve(Strategy.constantHeading());
    Outcome<SteeredLeg, NotPossible> hourly =
        passage.solve(Strategy.newHeadingEvery(Duration.ofHours(1)));
    if (held.isSolved()) {
      assertTrue(one.isSolved() && hourly.isSolved());
      assertTrue(seconds(hourly) <= seconds(held) + ELLIPSOID_SECONDS);
    }
    if (hourly.isSolved()) {
      assertTrue(one.isSolved());
      assertTrue(seconds(one) <= seconds(hourly) + ELLIPSOID_SECONDS);
    }
  }

  @Property(seed = Seeds.SEED, tries = 150)
  void oneHeadingIsMonotoneInPaddlingSpeed(@ForAll("passages") Passage passage) {
    Outcome<SteeredLeg, NotPossible> slow = passage.solve(Strategy.constantHeading());
    Assume.that(slow.isSolved());
    Outcome<SteeredLeg, NotPossible> fast =
        passage
            .solver()
            .withCraft(Craft.ofSpeed(Speed.ofKnots(passage.knots() + 0.3)))
            .solve(passage.leg(), NOON);
    assertTrue(fast.isSolved());
    assertTrue(seconds(fast) < seconds(slow) + 0.01);
  }

  /** The plane's condition |D - drift| = v t, looked for at every ten seconds. */
  @Property(seed = Seeds.SEED, tries = 150)
  void notPossibleAgreesWithASearchOutsideTwoPercentOfTheSpeed(
      @ForAll("passages") Passage passage) {
    Outcome<SteeredLeg, NotPossible> outcome = passage.solve(Strategy.constantHeading());
    double[] flow = new double[2];
    double course = Math.toRadians(passage.course());
    double east = passage.miles() * 1852.0 * Math.sin(course);
    double north = passage.miles() * 1852.0 * Math.cos(course);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 24 * 360; i++) {
      passage.stream().sample(0, 0, NOON_SECONDS + i * 10 + 5, flow, 0);
      east -= 10 * flow[0];
      north -= 10 * flow[1];
      least = Math.min(least, Math.hypot(east, north) / (10.0 * (i + 1)));
    }
    if (least < 0.98 * passage.knots() * KNOT) {
      assertTrue(outcome.isSolved());
    }
    if (least > 1.02 * passage.knots() * KNOT) {
      NotPossible why = outcome.why().orElseThrow();
      assertEquals(
          least - passage.knots() * KNOT,
          why.shortBy().orElseThrow().metresPerSecond(),
          0.02 * passage.knots() * KNOT);
    }
  }

  @Property(seed = Seeds.SEED, tries = 60)
  void eastAndWestMirrored(@ForAll("passages") Passage passage) {
    Passage other =
        new Passage(
            passage.latitude(),
            360.0 - passage.course(),
            passage.miles(),
            passage.knots(),
            passage.rate(),
            360.0 - passage.set(),
            passage.phase(),
            -passage.roundness(),
            passage.steps());
    for (Strategy strategy : new Strategy[] {Strategy.constantHeading(), Strategy.trackHeld()}) {
      assertMirrored(passage.solve(strategy), other.solve(strategy), 360.0);
    }
  }

  @Property(seed = Seeds.SEED, tries = 60)
  void northAndSouthMirrored(@ForAll("passages") Passage passage) {
    Passage other =
        new Passage(
            -passage.latitude(),
            180.0 - passage.course(),
            passage.miles(),
            passage.knots(),
            passage.rate(),
            180.0 - passage.set(),
            passage.phase(),
            -passage.roundness(),
            passage.steps());
    for (Strategy strategy : new Strategy[] {Strategy.constantHeading(), Strategy.trackHeld()}) {
      assertMirrored(passage.solve(strategy), other.solve(strategy), 180.0);
    }
  }

  private static void assertMirrored(
      Outcome<SteeredLeg, NotPossible> outcome,
      Outcome<SteeredLeg, NotPossible> mirrored,
      double sum) {
    if (!outcome.isSolved() || !mirrored.isSolved()) {
      assertEquals(outcome.why().orElseThrow().reason(), mirrored.why().orElseThrow().reason());
      return;
    }
    SteeredLeg one = outcome.orElseThrow();
    SteeredLeg two = mirrored.orElseThrow();
    assertEquals(seconds(outcome), seconds(mirrored), 0.05);
    assertEquals(
        0.0,
        Angles.turn(one.courseToSteer().degrees(), sum - two.courseToSteer().degrees()),
        0.001);
    assertEquals(one.greatestCrossTrack().metres(), -two.greatestCrossTrack().metres(), 1.0);
  }

  /** Turned round in time, a passage goes back along its own track against the opposite stream. */
  @Property(seed = Seeds.SEED, tries = 60)
  void timeReversedTheSameHeadingLeadsBack(@ForAll("passages") Passage passage) {
    Assume.that(passage.rate() < 0.95 * passage.knots()); // else there may be an earlier way back
    Outcome<SteeredLeg, NotPossible> outcome = passage.solve(Strategy.constantHeading());
    Assume.that(outcome.isSolved());
    SteeredLeg out = outcome.orElseThrow();
    double arrival = EpochSeconds.of(out.arrival());
    StreamField forward = passage.stream();
    StreamField backward =
        (latitude, longitude, time, flow, offset) -> {
          boolean known = forward.sample(latitude, longitude, 2 * arrival - time, flow, offset);
          flow[offset] = -flow[offset];
          flow[offset + 1] = -flow[offset + 1];
          return known;
        };
    SteeredLeg back =
        CourseToSteer.with(passage.solver().craft(), backward)
            .withLimits(SteeringLimits.NONE)
            .solve(passage.leg().reverse(), out.arrival())
            .orElseThrow();
    assertEquals(
        EpochSeconds.of(out.arrival()) - NOON_SECONDS,
        EpochSeconds.of(back.arrival()) - arrival,
        0.1);
    assertEquals(180.0, Math.abs(out.courseToSteer().turnDegreesTo(back.courseToSteer())), 0.001);
  }

  @Property(seed = Seeds.SEED, tries = 60)
  void allSpeedsAndTimesScaleTogether(@ForAll("passages") Passage passage) {
    HourlyStream stream = passage.stream();
    StreamField halved =
        new StreamField() {
          @Override
          public boolean sample(double lat, double lon, double time, double[] flow, int offset) {
            boolean known =
                stream.sample(lat, lon, NOON_SECONDS + (time - NOON_SECONDS) / 2, flow, offset);
            flow[offset] /= 2;
            flow[offset + 1] /= 2;
            return known;
          }

          @Override
          public double nextBreakAfter(double time) {
            double next = stream.nextBreakAfter(NOON_SECONDS + (time - NOON_SECONDS) / 2);
            return NOON_SECONDS + 2 * (next - NOON_SECONDS);
          }

          @Override
          public boolean isUniform() {
            return true;
          }
        };
    for (Strategy strategy : new Strategy[] {Strategy.constantHeading(), Strategy.trackHeld()}) {
      Outcome<SteeredLeg, NotPossible> whole = passage.solve(strategy);
      Outcome<SteeredLeg, NotPossible> half =
          CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(passage.knots() / 2)), halved)
              .withStrategy(strategy)
              .withLimits(SteeringLimits.NONE)
              .withLongestDuration(Duration.ofDays(2))
              .solve(passage.leg(), NOON);
      assertEquals(whole.isSolved(), half.isSolved());
      if (whole.isSolved()) {
        assertEquals(2 * seconds(whole), seconds(half), 0.05);
      }
    }
  }

  private static double seconds(Outcome<SteeredLeg, NotPossible> outcome) {
    return outcome.orElseThrow().duration().toMillis() / 1000.0;
  }

  @Provide
  Arbitrary<Passage> passages() {
    return Combinators.combine(
            Arbitraries.doubles().between(-65.0, 65.0).ofScale(6),
            Arbitraries.doubles().between(0.0, 359.9).ofScale(6),
            Arbitraries.doubles().between(0.3, 14.0).ofScale(6),
            Arbitraries.doubles().between(2.0, 4.5).ofScale(6),
            Arbitraries.doubles().between(0.0, 5.0).ofScale(6),
            Arbitraries.doubles().between(0.0, 359.9).ofScale(6),
            Arbitraries.doubles().between(0.0, 12.0).ofScale(6),
            Arbitraries.doubles().between(-0.5, 0.5).ofScale(6))
        .as(
            (latitude, course, miles, knots, rate, set, phase, roundness) ->
                new Passage(
                    latitude, course, miles, knots, rate, set, phase, roundness, phase > 6.0));
  }
}
