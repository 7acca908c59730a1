package org.ferryglide.nav.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published problems worked line by line. Sources: E. G. Draper, Lectures in Navigation, US Naval
 * Auxiliary Reserve, 1918 (Project Gutenberg 27642); tolerances are half a printed digit.
 */
class PublishedProblemsTest {
  private static final double HALF_DEGREE = 0.55;
  private static final double HALF_TENTH = 0.05;

  /** Compass, variation and deviation (east positive), the printed true bearing or course. */
  @ParameterizedTest
  @CsvSource({
    "70, -9, 5, 66",
    "48, -9, 5, 44",
    "157.5, -8, -4, 145",
    "191, -8, 6, 189",
    "93, -8, 3, 88",
    "349, -10, -2, 337"
  })
  void compassToTrue(double compass, double variation, double deviation, double printed) {
    Problem problem =
        BearingProblems.compassToTrue(
            CompassBearing.ofDegrees(compass),
            Deviation.ofDegreesEast(deviation),
            Variation.ofDegreesEast(variation));
    assertEquals(printed, problem.answer(), HALF_DEGREE);
    assertEquals(compass + deviation, problem.exact("Magnetic bearing"), HALF_DEGREE);
    // the learner who takes the variation the wrong way is told so
    Marking marking = problem.mark(problem.answer() - 2.0 * variation);
    assertFalse(marking.isRight());
    assertEquals(
        "variation with the wrong sign", marking.explanations().get(0).slips().get(0).text());
  }

  @ParameterizedTest
  @CsvSource({"9, 22.5, 45, 9"}) // from two points to four points on the bow: the run
  void bowBearings(double run, double first, double second, double printed) {
    assertEquals(
        printed,
        DistanceOffProblems.bowBearings(Distance.ofNauticalMiles(run), first, second).answer(),
        HALF_TENTH);
  }

  /** South by west at 8 knots against a stream of 2: 6 knots made good, 24 miles in 4 hours. */
  @ParameterizedTest
  @CsvSource({"191.25, 8, 11.25, 2, 6, 240"})
  void againstTheStream(
      double course, double speed, double set, double rate, double madeGood, double minutes) {
    Problem problem =
        SteeringProblems.timeInStream(
            TrueBearing.ofDegrees(course),
            Distance.ofNauticalMiles(24),
            Speed.ofKnots(speed),
            Velocity.ofSetAndRate(TrueBearing.ofDegrees(set), Speed.ofKnots(rate)));
    assertEquals(madeGood, problem.exact("Speed made good"), HALF_TENTH);
    assertEquals(minutes, problem.answer(), HALF_TENTH);
  }
}
