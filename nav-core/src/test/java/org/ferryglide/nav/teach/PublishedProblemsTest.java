package org.ferryglide.nav.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.GridConvergence;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published problems worked line by line, to their printed intermediate figures. Sources: E. G.
 * Draper, Lectures in Navigation, US Naval Auxiliary Reserve, 1918 (Project Gutenberg 27642); US
 * Coast Guard deck examination question bank; US War Department TM 1-900, Mathematics for Air Crew
 * Trainees, 1942; US Army Soldier's Manual of Common Tasks; the others are named beside them.
 * Tolerances are half a printed digit.
 */
class PublishedProblemsTest {
  private static final double HALF_DEGREE = 0.55;
  private static final double HALF_TENTH = 0.05;

  /** Of arc, in degrees. */
  private static final double HALF_MINUTE = 0.5 / 60.0;

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

  /**
   * US Coast Guard bank: 236 to make good, wind SSE, a degree of leeway, variation 8E, deviation
   * 1E.
   */
  @Test
  void leewayVariationAndDeviation() {
    Problem leeway =
        SteeringProblems.leeway(
            TrueBearing.ofDegrees(236),
            TrueBearing.ofDegrees(157.5),
            1.0,
            Variation.ofDegreesEast(8));
    assertEquals(235.0, leeway.exact("True heading"), HALF_DEGREE);
    assertEquals(227.0, leeway.answer(), HALF_DEGREE);
    Problem compass =
        BearingProblems.trueToCompass(
            TrueBearing.ofDegrees(leeway.exact("True heading")),
            Variation.ofDegreesEast(8),
            Deviation.ofDegreesEast(1));
    assertEquals(226.0, compass.answer(), HALF_DEGREE);
  }

  /**
   * TM 1-900: heading 315 at 150, wind from 45 at 30, for an hour: track 304, 153 over the ground.
   */
  @Test
  void headingAndDriftOfAnHour() {
    Problem problem =
        ReckoningProblems.estimatedPosition(
            TrueBearing.ofDegrees(315),
            0.0,
            Speed.ofKnots(150),
            60.0,
            Velocity.ofSetAndRate(TrueBearing.ofDegrees(225), Speed.ofKnots(30)));
    assertEquals(150.0, problem.exact("Run"), HALF_TENTH);
    assertEquals(30.0, problem.exact("Drift"), HALF_TENTH);
    assertEquals(153.0, problem.exact("Distance made good"), 0.5);
    assertEquals(304.0, problem.answer(), HALF_DEGREE);
  }

  /** Soldier's Manual: a grid-magnetic angle of 9 east, 190 magnetic is 199 on the grid. */
  @Test
  void gridToMagnetic() {
    Problem problem =
        BearingProblems.gridToMagnetic(
            GridBearing.ofDegrees(199, "map"),
            GridConvergence.ofDegreesEast(0, "map"),
            Variation.ofDegreesEast(9));
    assertEquals(190.0, problem.answer(), HALF_DEGREE);
  }

  /**
   * Course, speed, set, rate; the printed water track and speed made good. Rows 1 and 2: "Answers
   * to practice", chapter X, problems 1 and 5, plotted and printed to five degrees,
   * https://ru.scribd.com/document/346108670/Answers-to-Practice-Chart; row 3: 20 NM along 075 at
   * 10 knots, which prints 085 and 11.6, http://kakopa.webcindario.com/geo/cnavp01.htm
   */
  @ParameterizedTest
  @CsvSource({
    "90, 5, 210, 2, 70, 3.7, 2.5, 0.1",
    "150, 5.3, 50, 3.5, 190, 3.4, 2.5, 0.1",
    "75, 10, 30, 2.5, 85, 11.6, 0.5, 0.05"
  })
  void currentTriangles(
      double course,
      double speed,
      double set,
      double rate,
      double waterTrack,
      double madeGood,
      double degrees,
      double knots) {
    Problem problem =
        SteeringProblems.timeInStream(
            TrueBearing.ofDegrees(course),
            Distance.ofNauticalMiles(20),
            Speed.ofKnots(speed),
            Velocity.ofSetAndRate(TrueBearing.ofDegrees(set), Speed.ofKnots(rate)));
    assertEquals(waterTrack, problem.exact("Water track"), degrees);
    assertEquals(madeGood, problem.exact("Speed made good"), knots);
  }

  /**
   * By geometry: from 40 to 80 on the bow two angles are equal, and so are run and distance off.
   */
  @Test
  void doublingTheAngle() {
    Problem problem = DistanceOffProblems.bowBearings(Distance.ofNauticalMiles(1.0), 40, 80);
    assertEquals(40.0, problem.exact("Angle between"), HALF_DEGREE);
    assertEquals(1.0, problem.answer(), HALF_TENTH);
  }

  /**
   * Roses carried forward: 0°40'E 1990 (5'E) in 2004 is 1°50'E,
   * http://nauticalissues.com/en/math1.html; 3°45'W 1988 decreasing by 6' in 1991 is 3°27'W,
   * https://oic-nwreviewer.blogspot.com/2014/02/how-much-variation-should-you-apply.html
   */
  @ParameterizedTest
  @CsvSource({"0°40'E 1990 (5'E), 2004, 70, 110", "3°45'W 1988 (6'E), 1991, 18, -207"})
  void rosesCarriedForward(String rose, int year, double changeMinutes, double minutesEast) {
    Problem problem =
        ChartProblems.roseCarriedForward(TrueBearing.ofDegrees(90), CompassRose.parse(rose), year);
    assertEquals(changeMinutes / 60.0, problem.exact("Change since"), HALF_MINUTE);
    assertEquals(minutesEast / 60.0, problem.exact("Variation"), HALF_MINUTE);
  }

  /**
   * Bowditch 2024, table 12, is made with other air: 80 ft and 35 ft print 17.4, this rule 17.1.
   */
  @Test
  void aLightAtItsGeographicRange() {
    Problem problem =
        DistanceOffProblems.risingLight(
            Distance.ofMetres(80 * 0.3048), Distance.ofMetres(35 * 0.3048));
    assertEquals(17.4, problem.answer(), 0.02 * 17.4);
  }
}
