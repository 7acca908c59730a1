package org.ferryglide.nav.steer;

import static org.ferryglide.testing.Refusal.message;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.NoAnswerException;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.plane.SteadyTriangle;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class CurrentTriangleTest {
  private static final double HALF_A_PRINTED_TENTH = 0.05;
  private static final double HALF_A_PRINTED_HUNDREDTH = 0.005;

  @TestFactory
  List<DynamicTest> publishedTrianglesAreMetToTheirRounding() throws IOException {
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(
                CurrentTriangleTest.class.getResourceAsStream("published-triangles.csv"),
                StandardCharsets.UTF_8))) {
      return lines
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(line -> line.split(","))
          .map(cells -> DynamicTest.dynamicTest(cells[0], () -> checkPublished(cells)))
          .toList();
    }
  }

  private static void checkPublished(String[] cells) {
    TrueBearing course = TrueBearing.parse(cells[1]);
    CurrentTriangle triangle =
        CurrentTriangle.solve(course, knots(number(cells[2])), stream(cells[3], cells[4]))
            .orElseThrow();
    TrueBearing printed = TrueBearing.parse(cells[5]);
    assertEquals(
        0.0, printed.turnDegreesTo(triangle.courseToSteer()), number(cells[7]), "course to steer");
    if (!cells[6].equals("-")) {
      assertEquals(
          number(cells[6]), triangle.speedMadeGood().knots(), number(cells[8]), "speed made good");
    }
  }

  /**
   * Source: US War Department, TM 1-900, Mathematics for Air Crew Trainees (1942): heading 315, 150
   * mph, wind from 45 at 30 mph; track 304, ground speed 153, printed to a degree and a mile.
   */
  @Test
  void anExaminationProblemWorkedFromTheHeading() {
    Velocity air = stream("225", "30");
    Velocity ground =
        Velocity.ofSetAndRate(TrueBearing.ofDegrees(315), Speed.ofKnots(150)).plus(air);
    assertEquals(304.0, ground.set().degrees(), 0.5);
    assertEquals(153.0, ground.rate().knots(), 0.5);
    double[] out = new double[2];
    SteadyTriangle.solve(
        ground.set().degrees(),
        Speed.ofKnots(150).metresPerSecond(),
        air.eastMetresPerSecond(),
        air.northMetresPerSecond(),
        out,
        0);
    assertEquals(315.0, out[0], 1e-9);
  }

  @Test
  void manyTrianglesAreThoseOneByOneAndOnlyTheRowsAskedFor() {
    double[] course = {10, 100, 200, 300, 40};
    double[] speed = {1.5, 1.0, 2.0, 0.5, 1.0};
    double[] east = {0.3, -0.7, 0.9, 2.0, 0.1};
    double[] north = {-0.4, 0.2, 0.5, 0.1, 0.1};
    double[] track = {-1, -1, -1, -1, -1};
    double[] madeGood = {-1, -1, -1, -1, -1};
    SteadyTriangle.solve(course, speed, east, north, 1, 4, track, madeGood);
    double[] one = new double[2];
    for (int i = 1; i < 4; i++) {
      SteadyTriangle.solve(course[i], speed[i], east[i], north[i], one, 0);
      assertEquals(one[0], track[i], 0.0);
      assertEquals(one[1], madeGood[i], 0.0);
    }
    assertTrue(Double.isNaN(track[3]) && Double.isNaN(madeGood[3])); // 2 m/s on the beam of 0.5
    assertEquals(-1, track[0]);
    assertEquals(-1, madeGood[4]);
  }

  @Test
  void homeIsAnotherTriangleAndNotTheReciprocal() {
    // plane vectors, worked apart from this code
    Craft craft = knots(3.5);
    Velocity south = stream("180", "1.2");
    CurrentTriangle out =
        CurrentTriangle.solve(TrueBearing.ofDegrees(90), craft, south).orElseThrow();
    assertEquals(69.9, out.courseToSteer().degrees(), HALF_A_PRINTED_TENTH);
    assertEquals(3.29, out.speedMadeGood().knots(), HALF_A_PRINTED_HUNDREDTH);
    assertEquals(91.2, minutes(out.timeFor(Distance.ofNauticalMiles(5))), HALF_A_PRINTED_TENTH);
    CurrentTriangle home =
        CurrentTriangle.solve(TrueBearing.ofDegrees(270), craft, south).orElseThrow();
    assertEquals(290.1, home.courseToSteer().degrees(), HALF_A_PRINTED_TENTH);
    assertEquals(249.9, out.courseToSteer().reciprocal().degrees(), HALF_A_PRINTED_TENTH);
  }

  @Test
  void restsCountAsDrift() {
    // plane vectors, worked apart from this code: asin(1.5 / (3.5 * 50 / 60))
    Craft craft = knots(3.5).withRestEachHour(Duration.ofMinutes(10));
    CurrentTriangle triangle =
        CurrentTriangle.solve(TrueBearing.ofDegrees(0), craft, stream("270", "1.5")).orElseThrow();
    assertEquals(30.9, triangle.ferryAngleDegrees(), 1.01 * HALF_A_PRINTED_TENTH);
    assertEquals(
        119.9, minutes(triangle.timeFor(Distance.ofNauticalMiles(5))), HALF_A_PRINTED_TENTH);
  }

  @Test
  void ferryAnglesAtThreeAndAHalfKnotsAreThoseOfTheVectorTriangle() {
    // plane vectors, worked apart from this code: 1, 2 and 3 knots straight across
    double[] angles = {16.6, 34.8, 59.0};
    double[] speeds = {3.35, 2.87, 1.80};
    for (int rate = 1; rate <= 3; rate++) {
      CurrentTriangle triangle =
          CurrentTriangle.solve(TrueBearing.ofDegrees(0), knots(3.5), stream("270", "" + rate))
              .orElseThrow();
      assertEquals(angles[rate - 1], triangle.ferryAngleDegrees(), HALF_A_PRINTED_TENTH);
      assertEquals(
          speeds[rate - 1], triangle.speedMadeGood().knots(), 1.01 * HALF_A_PRINTED_HUNDREDTH);
    }
  }

  @Test
  void aStreamAcrossTheBowTooStrongToHoldIsNotPossible() {
    NotPossible why =
        CurrentTriangle.solve(TrueBearing.ofDegrees(0), knots(3), stream("090", "3.5"))
            .why()
            .orElseThrow();
    assertEquals(Reason.CROSS_STREAM, why.reason());
    assertEquals(0.5, why.shortBy().orElseThrow().knots(), 1e-12);
    assertEquals(
        "the stream across the track is too strong to hold against, by 0.50 kn", why.message());
  }

  @Test
  void aStreamAheadTooStrongToStemIsNotPossible() {
    NotPossible why =
        CurrentTriangle.solve(TrueBearing.ofDegrees(0), knots(3), stream("180", "4"))
            .why()
            .orElseThrow();
    assertEquals(Reason.ADVERSE_STREAM, why.reason());
    assertEquals(1.0, why.shortBy().orElseThrow().knots(), 1e-12);
  }

  @Test
  void aStreamAheadJustAsFastMakesNoWay() {
    NotPossible why =
        CurrentTriangle.solve(
                TrueBearing.ofDegrees(0),
                Craft.ofSpeed(Speed.ofMetresPerSecond(1.5)),
                Velocity.ofEastAndNorth(0.0, -1.5))
            .why()
            .orElseThrow();
    assertEquals(Reason.NO_PROGRESS, why.reason());
    assertTrue(why.shortBy().isEmpty());
  }

  /**
   * Rounding of the stream's parts may neither make way nor turn a stream ahead into one across.
   */
  @Test
  void noWayIsMadeOnAnyCourseAgainstAStreamOfTheCraftsSpeed() {
    for (int degrees = 0; degrees < 360; degrees++) {
      TrueBearing course = TrueBearing.ofDegrees(degrees);
      Velocity against = Velocity.ofSetAndRate(course.reciprocal(), Speed.ofKnots(3));
      for (Craft craft : List.of(knots(3), knots(0))) {
        assertEquals(
            Reason.NO_PROGRESS,
            CurrentTriangle.solve(course, craft, against).why().orElseThrow().reason(),
            craft + " on " + course);
      }
    }
  }

  @Test
  void aStreamAheadThatIsATouchTooStrongIsNotShortByNothing() {
    NotPossible why =
        CurrentTriangle.solve(TrueBearing.ofDegrees(0), knots(3), stream("180", "3.001"))
            .why()
            .orElseThrow();
    assertEquals("the stream ahead is too strong to make way against, by 0.01 kn", why.message());
  }

  @Test
  void aCraftThatOnlyDriftsArrivesIfTheStreamSetsAlongTheCourse() {
    CurrentTriangle triangle =
        CurrentTriangle.solve(TrueBearing.ofDegrees(0), knots(0), Velocity.ofEastAndNorth(0.0, 1.0))
            .orElseThrow();
    assertEquals(TrueBearing.ofDegrees(0), triangle.courseToSteer());
    assertEquals(1.0, triangle.speedMadeGood().metresPerSecond());
  }

  @Test
  void aStreamThatOutrunsTheCraftLeavesTwoHeadings() {
    TrueBearing north = TrueBearing.ofDegrees(0);
    Velocity stream = stream("030", "5");
    CurrentTriangle faster = CurrentTriangle.solve(north, knots(3), stream).orElseThrow();
    CurrentTriangle slower = CurrentTriangle.slower(north, knots(3), stream).orElseThrow();
    // 5 sin 30 = 2.5 across and 5 cos 30 = 4.330 along; the craft's other part is sqrt(9 - 6.25)
    double root = Math.sqrt(9.0 - 6.25);
    assertEquals(5.0 * Math.sqrt(0.75) + root, faster.speedMadeGood().knots(), 1e-12);
    assertEquals(5.0 * Math.sqrt(0.75) - root, slower.speedMadeGood().knots(), 1e-12);
    assertEquals(
        360.0 - Math.toDegrees(Math.asin(2.5 / 3.0)), faster.courseToSteer().degrees(), 1e-10);
    assertEquals(
        180.0 + Math.toDegrees(Math.asin(2.5 / 3.0)), slower.courseToSteer().degrees(), 1e-10);
  }

  @Test
  void aSlowerStreamLeavesOneHeading() {
    assertTrue(
        CurrentTriangle.slower(TrueBearing.ofDegrees(0), knots(3), stream("010", "2.9")).isEmpty());
  }

  @Test
  void aStreamAheadOrAsternLeavesTheHeadingOnTheCourse() {
    for (String set : List.of("045", "225")) {
      CurrentTriangle triangle =
          CurrentTriangle.solve(TrueBearing.ofDegrees(45), knots(3), stream(set, "1"))
              .orElseThrow();
      assertEquals(45.0, triangle.courseToSteer().degrees(), 1e-12);
    }
  }

  @Test
  void aNegativeDistanceIsRefused() {
    CurrentTriangle triangle =
        CurrentTriangle.solve(TrueBearing.ofDegrees(45), knots(3), Velocity.STILL).orElseThrow();
    assertEquals(
        "distance must be at least 0, but was -1.0 m",
        assertThrows(IllegalArgumentException.class, () -> triangle.timeFor(Distance.ofMetres(-1)))
            .getMessage());
  }

  @Test
  void anOutcomeThatIsNotPossibleThrowsOnlyWhenAskedTo() {
    Outcome<CurrentTriangle, NotPossible> outcome =
        CurrentTriangle.solve(TrueBearing.ofDegrees(0), knots(0), Velocity.STILL);
    assertFalse(outcome.isSolved());
    assertTrue(outcome.solved().isEmpty());
    assertEquals("NO_PROGRESS", outcome.match(solved -> "solved", why -> why.reason().toString()));
    NoAnswerException thrown = assertThrows(NoAnswerException.class, outcome::orElseThrow);
    assertEquals("not possible: nothing makes way toward the end of the leg", thrown.getMessage());
    assertEquals(Reason.NO_PROGRESS, ((NotPossible) thrown.why()).reason());
  }

  private static Craft knots(double knots) {
    return Craft.ofSpeed(Speed.ofKnots(knots));
  }

  private static Velocity stream(String set, String knots) {
    return Velocity.ofSetAndRate(TrueBearing.parse(set), Speed.ofKnots(number(knots)));
  }

  private static double number(String text) {
    return Double.parseDouble(text);
  }

  private static double minutes(Duration duration) {
    return duration.toMillis() / 60000.0;
  }

  /** The plain triangle of calm air and the solver for any wind are written apart. */
  @Test
  void calmAirGivesWhatTheSolverForAnyWindGivesWithoutWind() {
    SplittableRandom random = new SplittableRandom(4);
    int solved = 0;
    for (int i = 0; i < 20_000; i++) {
      TrueBearing course = TrueBearing.ofDegrees(360 * random.nextDouble());
      Craft craft =
          Craft.ofSpeed(Speed.ofKnots(i % 50 == 0 ? 0 : 5 * random.nextDouble()))
              .withWindResponse(WindResponse.none());
      Velocity stream =
          Velocity.ofEastAndNorth(
              6 * random.nextDouble() - 3, i % 70 == 0 ? 0 : random.nextDouble());
      Outcome<CurrentTriangle, NotPossible> calm = CurrentTriangle.solve(course, craft, stream);
      assertEquals(CurrentTriangle.solveInWind(course, craft, stream, Velocity.STILL), calm);
      solved += calm.solved().isPresent() ? 1 : 0;
    }
    assertTrue(solved > 3000 && solved < 18_000, "" + solved);
  }

  @Test
  void aTriangleOfPartsThatCannotBeIsRefused() {
    TrueBearing east = TrueBearing.ofDegrees(90);
    assertEquals(
        "speed made good must be a finite number of metres a second above 0, but was 0.0",
        message(() -> new CurrentTriangle(east, east, east, Speed.ofKnots(0), 0.5)));
    assertEquals(
        "share spent across must be in [0, 1] of the speed, but was 1.5",
        message(() -> new CurrentTriangle(east, east, east, Speed.ofKnots(3), 1.5)));
    assertEquals(
        "share spent across must be in [0, 1] of the speed, but was NaN",
        message(() -> new CurrentTriangle(east, east, east, Speed.ofKnots(3), Double.NaN)));
  }
}
