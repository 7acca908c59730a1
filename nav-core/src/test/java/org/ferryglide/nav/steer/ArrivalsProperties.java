package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.testing.Seeds;

class ArrivalsProperties {
  private static final Instant DEPARTURE = Instant.parse("2026-06-14T11:00:00Z");
  private static final double DEPARTURE_SECONDS = EpochSeconds.of(DEPARTURE);

  /** A stream that turns through the compass and falls away to the north. */
  private static StreamField stream(double knots, double hours) {
    double most = Speed.ofKnots(knots).metresPerSecond();
    return (latitude, longitude, epochSeconds, eastNorth, offset) -> {
      double turn = 2.0 * Math.PI * (epochSeconds - DEPARTURE_SECONDS) / (3600.0 * hours);
      double rate = most * (1.0 - 2.0 * Math.min(0.4, Math.abs(latitude - 46.2)));
      eastNorth[offset] = rate * Math.sin(turn);
      eastNorth[offset + 1] = rate * Math.cos(turn);
      return !Double.isNaN(turn);
    };
  }

  @Provide
  Arbitrary<Strategy> strategies() {
    return Arbitraries.of(
        Strategy.constantHeading(),
        Strategy.trackHeld(),
        Strategy.bowOnTarget(),
        Strategy.newHeadingEvery(Duration.ofMinutes(30)));
  }

  /** The lean form walks the very same path, so that the numbers agree to the last bit. */
  @Property(seed = Seeds.SEED, tries = 200)
  void theLeanFormArrivesWhenTheWholeAnswerDoes(
      @ForAll("strategies") Strategy strategy,
      @ForAll @DoubleRange(min = 0.0, max = 359.0) double course,
      @ForAll @DoubleRange(min = 0.1, max = 6.0) double miles,
      @ForAll @DoubleRange(min = 0.0, max = 4.5) double knots,
      @ForAll @DoubleRange(min = 4.0, max = 13.0) double hours) {
    RhumbLeg leg =
        RhumbLeg.from(
            Position.ofDegrees(46.2, -26.3),
            TrueBearing.ofDegrees(course),
            Distance.ofNauticalMiles(miles));
    for (SteeringLimits limits : List.of(SteeringLimits.NONE, SteeringLimits.USUAL)) {
      CourseToSteer solver =
          CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3.5)), stream(knots, hours))
              .withStrategy(strategy)
              .withLimits(limits);
      double whole =
          solver.solve(leg, DEPARTURE).<Double>match(SteeredLeg::arrivalSeconds, why -> Double.NaN);
      assertEquals(whole, Arrivals.of(solver).at(leg, DEPARTURE_SECONDS), limits::toString);
    }
  }

  /** So do the figures by which departures are compared, from room that other legs have used. */
  @Property(seed = Seeds.SEED, tries = 100)
  void measuredFiguresAreThoseOfTheWholeAnswer(
      @ForAll("strategies") Strategy strategy,
      @ForAll @DoubleRange(min = 0.0, max = 359.0) double course,
      @ForAll @DoubleRange(min = 0.1, max = 6.0) double miles,
      @ForAll @DoubleRange(min = 0.0, max = 4.5) double knots,
      @ForAll @DoubleRange(min = 4.0, max = 13.0) double hours) {
    RhumbLeg leg =
        RhumbLeg.from(
            Position.ofDegrees(46.2, -26.3),
            TrueBearing.ofDegrees(course),
            Distance.ofNauticalMiles(miles));
    Route route = Route.ofRhumbLegs(leg.start(), leg.end(), leg.end(), leg.start());
    for (SteeringLimits limits : List.of(SteeringLimits.NONE, SteeringLimits.USUAL)) {
      CourseToSteer solver =
          CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3.5)), stream(knots, hours))
              .withStrategy(strategy)
              .withLimits(limits);
      Arrivals arrivals = Arrivals.of(solver);
      double[] figures = new double[Arrivals.WIDTH];
      for (double later : new double[] {0.0, 1800.0, 0.0}) {
        double departure = DEPARTURE_SECONDS + later;
        Optional<NotPossible> why = arrivals.measure(route, departure, figures, 0);
        Outcome<SteeredRoute, NotPossible> whole = Arrivals.of(solver).steered(route, departure);
        assertEquals(whole.why(), why);
        double[] expected =
            whole.match(
                steered ->
                    new double[] {
                      steered.arrivalSeconds(),
                      steered.crossStreamShare(),
                      steered.reserve().metresPerSecond(),
                      steered.effort().metres()
                    },
                not -> new double[] {Double.NaN, Double.NaN, Double.NaN, Double.NaN});
        assertArrayEquals(expected, figures, limits::toString);
      }
    }
  }

  @Example
  void aRouteArrivesWithItsLastLegOrNotAtAll() {
    CourseToSteer solver =
        CourseToSteer.with(
            Craft.ofSpeed(Speed.ofKnots(3.5)),
            StreamField.steady(Velocity.ofSetAndRate(TrueBearing.ofDegrees(5), Speed.ofKnots(1))));
    Position start = Position.ofDegrees(46.2, -26.3);
    Route there = Route.ofRhumbLegs(start, Position.ofDegrees(46.2, -26.2), start);
    double arrival = Arrivals.of(solver).at(there, DEPARTURE_SECONDS);
    assertEquals(solver.solve(there, DEPARTURE).orElseThrow().arrivalSeconds(), arrival);
    assertTrue(Double.isNaN(Arrivals.of(solver).at(there, Double.NaN)));
  }
}
