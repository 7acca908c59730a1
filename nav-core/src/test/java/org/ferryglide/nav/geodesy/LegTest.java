package org.ferryglide.nav.geodesy;

import static org.ferryglide.testing.Refusal.message;
import static org.ferryglide.testing.Rows.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Rows;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class LegTest {
  private static final Position LANDING = Position.ofDegrees(50.105, -5.535);
  private static final Position ISLAND = Position.ofDegrees(50.2, -5.43);

  private static final double HALF_A_PRINTED_TENTH_OF_A_SECOND = 0.05 / 3600;
  private static final double HALF_A_PRINTED_MICROMETRE = 0.5e-6;

  /** GeographicLib's courses are good to 15 nanometres across, 1e-10 degrees on these legs. */
  private static final double PRINTED_COURSE = 1e-10;

  @TestFactory
  List<DynamicTest> rhumbLegsAgreeWithRhumbSolve() {
    return Rows.of(LegTest.class, "rhumbsolve.csv").stream()
        .map(row -> DynamicTest.dynamicTest(String.join(" ", row), () -> checkRhumb(row)))
        .toList();
  }

  private static void checkRhumb(String[] row) {
    RhumbLeg leg = RhumbLeg.between(place(row[0], row[1]), place(row[2], row[3]));
    double turn = leg.course().turnDegreesTo(TrueBearing.ofDegrees(number(row[4])));
    assertEquals(0.0, turn, PRINTED_COURSE);
    assertEquals(number(row[5]), leg.length().metres(), HALF_A_PRINTED_MICROMETRE);
  }

  @TestFactory
  List<DynamicTest> geodesicLegsAgreeWithGeodSolve() {
    return Rows.of(LegTest.class, "geodsolve.csv").stream()
        .map(row -> DynamicTest.dynamicTest(String.join(" ", row), () -> checkGeodesic(row)))
        .toList();
  }

  private static void checkGeodesic(String[] row) {
    GeodesicLeg leg = GeodesicLeg.between(place(row[0], row[1]), place(row[2], row[3]));
    double atStart = leg.initialCourse().turnDegreesTo(TrueBearing.ofDegrees(number(row[4])));
    double atEnd = leg.finalCourse().turnDegreesTo(TrueBearing.ofDegrees(number(row[5])));
    assertEquals(0.0, atStart, PRINTED_COURSE);
    assertEquals(0.0, atEnd, PRINTED_COURSE);
    assertEquals(number(row[6]), leg.length().metres(), HALF_A_PRINTED_MICROMETRE);
  }

  private static Position place(String lat, String lon) {
    return Position.ofDegrees(number(lat), number(lon));
  }

  @Test
  void pointsEach2000KilometresAgreeWithThePublishedOnes() {
    Position start = Position.ofDegrees(degrees(40, 38, 23), -degrees(73, 46, 44));
    Position end = Position.ofDegrees(degrees(1, 21, 33), degrees(103, 59, 22));
    RhumbLeg leg = RhumbLeg.between(start, end);
    double metres = 0;
    for (String[] row : Rows.of(LegTest.class, "rhumb-waypoints.csv")) {
      metres += 2e6;
      Position point = leg.pointAt(Distance.ofMetres(metres)); // the last one lies beyond the end
      double lat = degrees(number(row[0]), number(row[1]), number(row[2]));
      double lon = degrees(number(row[3]), number(row[4]), number(row[5]));
      assertEquals(lat, point.latitudeDegrees(), HALF_A_PRINTED_TENTH_OF_A_SECOND);
      assertEquals(lon, point.longitudeDegrees(), HALF_A_PRINTED_TENTH_OF_A_SECOND);
    }
  }

  private static double degrees(double degrees, double minutes, double seconds) {
    return degrees + (minutes + seconds / 60) / 60;
  }

  @Test
  void theEndsComeBackExactly() {
    for (Leg leg :
        List.of(RhumbLeg.between(LANDING, ISLAND), GeodesicLeg.between(LANDING, ISLAND))) {
      assertEquals(LANDING, leg.pointAt(Distance.ZERO));
      assertEquals(ISLAND, leg.pointAt(leg.length()));
      assertEquals(leg.finalCourse(), leg.courseAt(leg.length()));
      assertEquals(LANDING, leg.reverse().end());
      Leg again = leg.reverse().reverse();
      assertEquals(ISLAND, again.end());
      assertEquals(leg.length(), again.length());
      double oneRounding = Math.ulp(360.0);
      assertEquals(0.0, leg.initialCourse().turnDegreesTo(again.initialCourse()), oneRounding);
    }
    assertNotEquals(RhumbLeg.between(LANDING, ISLAND), RhumbLeg.between(ISLAND, LANDING));
  }

  @Test
  void theLineOfALegGoesOnBeyondItsEnds() {
    RhumbLeg leg = RhumbLeg.from(LANDING, TrueBearing.ofDegrees(90), Distance.ofKilometres(1));
    Position before = leg.pointAt(Distance.ofKilometres(-1));
    assertEquals(LANDING.latitudeDegrees(), before.latitudeDegrees());
    assertEquals(1000.0, Places.metres(before, LANDING), 1e-4); // the parallel is a little longer
  }

  @Test
  void aLegOfNoLengthHasCourseNorth() {
    for (Leg leg :
        List.of(RhumbLeg.between(LANDING, LANDING), GeodesicLeg.between(LANDING, LANDING))) {
      assertEquals(Distance.ZERO, leg.length());
      assertEquals(TrueBearing.ofDegrees(0), leg.initialCourse());
      assertEquals(TrueBearing.ofDegrees(0), leg.finalCourse());
      assertEquals(TrueBearing.ofDegrees(0), leg.reverse().initialCourse());
      assertEquals(List.of(LANDING, LANDING), leg.wayPoints(Distance.ofKilometres(1)));
    }
  }

  @Test
  void waypointsStandEverySoOften() {
    RhumbLeg leg = RhumbLeg.from(LANDING, TrueBearing.ofDegrees(30), Distance.ofMetres(3500));
    List<Position> points = leg.wayPoints(Distance.ofKilometres(1));
    assertEquals(5, points.size());
    assertEquals(LANDING, points.get(0));
    assertEquals(leg.pointAt(Distance.ofMetres(2000)), points.get(2));
    assertEquals(leg.end(), points.get(4));
    assertEquals(4, leg.wayPoints(Distance.ofMetres(3500.0 / 3)).size());
  }

  @Test
  void waypointsTooCloseAreRefused() {
    RhumbLeg leg = RhumbLeg.from(LANDING, TrueBearing.ofDegrees(30), Distance.ofMetres(3500));
    assertEquals(
        "spacing must be a finite number of metres above 0, but was 0.0",
        message(() -> leg.wayPoints(Distance.ZERO)));
    assertEquals(
        "spacing must give at most a million points on 3500.0 m, but was 0.001 m",
        message(() -> leg.wayPoints(Distance.ofMetres(0.001))));
  }

  @Test
  void aRhumbLegPastAPoleIsRefused() {
    assertEquals(
        "a rhumb line from 80.0°N 10.0°E on course 45.0°T ends at the pole before 2000000.0 m",
        message(
            () ->
                RhumbLeg.from(
                    Position.ofDegrees(80, 10),
                    TrueBearing.ofDegrees(45),
                    Distance.ofKilometres(2000))));
  }

  @Test
  void aRhumbLegFromAPoleMustFollowAMeridian() {
    Position pole = Position.ofDegrees(90, 10);
    assertEquals(
        "course of a rhumb line at a pole must be 0 or 180 degrees, but was 45.0°T",
        message(() -> RhumbLeg.from(pole, TrueBearing.ofDegrees(45), Distance.ofMetres(1))));
    Position south = RhumbLeg.from(pole, TrueBearing.ofDegrees(180), Distance.ofMetres(1e6)).end();
    assertEquals(10.0, south.longitudeDegrees());
  }

  @Test
  void aLengthBelowZeroIsRefused() {
    Distance negative = Distance.ofMetres(-1);
    String expected = "length of a leg must be a finite number of metres, at least 0, but was -1.0";
    TrueBearing course = TrueBearing.ofDegrees(45);
    assertEquals(expected, message(() -> RhumbLeg.from(LANDING, course, negative)));
    assertEquals(expected, message(() -> GeodesicLeg.from(LANDING, course, negative)));
  }

  @Test
  void legsAndLinesSurviveSerialization() throws IOException, ClassNotFoundException {
    RhumbLeg rhumb = RhumbLeg.between(LANDING, ISLAND);
    GeodesicLeg geodesic = GeodesicLeg.between(LANDING, ISLAND);
    for (Object value :
        List.of(
            rhumb,
            geodesic,
            rhumb.line(),
            geodesic.line(),
            Ellipsoid.AIRY_1830,
            rhumb.crossings(geodesic),
            rhumb.closestTo(ISLAND),
            CoastStretch.along(LANDING, ISLAND),
            LegComparison.between(LANDING, ISLAND),
            ClosestApproach.between(
                MovingVessel.mark(LANDING),
                new MovingVessel(ISLAND, TrueBearing.ofDegrees(200), Speed.ofKnots(5)),
                Duration.ofHours(2)),
            GreatCircle.between(LANDING, ISLAND, GreatCircle.MEAN_RADIUS))) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
        out.writeObject(value);
      }
      try (ObjectInputStream in =
          new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
        Object read = in.readObject();
        assertEquals(value, read);
        assertEquals(value.hashCode(), read.hashCode());
        if (read instanceof Line line) { // what is prepared comes back too
          Distance mile = Distance.ofNauticalMiles(1);
          assertEquals(((Line) value).pointAt(mile), line.pointAt(mile));
        }
      }
    }
  }

  @Test
  void textNamesTheEnds() {
    RhumbLeg leg = RhumbLeg.between(Position.ofDegrees(50, -5), Position.ofDegrees(51, -5));
    assertEquals(
        "rhumb line from 50.0°N 5.0°W to 51.0°N 5.0°W, 0.0°T, " + leg.length(), leg.toString());
  }

  /** A third three times, and a mile five times, are not one point more for a rounding. */
  @Test
  void theEndIsGivenOnce() {
    Random random = new Random(20261126);
    for (int i = 0; i < 1000; i++) {
      Position start =
          Position.ofDegrees(140 * random.nextDouble() - 70, 359 * random.nextDouble() - 180);
      TrueBearing course = TrueBearing.ofDegrees(360 * random.nextDouble());
      Distance metres = Distance.ofMetres(100 + 20_000 * random.nextDouble());
      for (Leg leg :
          new Leg[] {
            RhumbLeg.from(start, course, metres), GeodesicLeg.from(start, course, metres)
          }) {
        assertEquals(4, leg.wayPoints(leg.length().times(1.0 / 3.0)).size());
      }
      Position end = RhumbLeg.from(start, course, Distance.ofNauticalMiles(5)).end();
      List<Position> miles = RhumbLeg.between(start, end).wayPoints(Distance.ofNauticalMiles(1));
      assertEquals(6, miles.size());
      assertEquals(end, miles.get(5));
    }
  }

  @Test
  void fromAPoleALegRunsDownTheMeridianOfItsEnd() {
    Position pole = Position.ofDegrees(90, 10);
    Position south = Position.ofDegrees(50, 20);
    RhumbLeg down = RhumbLeg.between(pole, south);
    assertEquals(Position.ofDegrees(90, 20), down.start());
    assertEquals(south, down.end());
    double nearlyThere = down.length().metres() - 1.0;
    assertEquals(
        1.0, Places.metres(down.pointAt(Distance.ofMetres(nearlyThere)), down.end()), 1e-7);
    assertEquals(0.0, down.closestTo(Position.ofDegrees(70, 20)).distance().metres(), 1e-7);
    RhumbLeg up = RhumbLeg.between(south, pole);
    assertEquals(down.reverse(), up);
    assertEquals(0.0, up.closestTo(Position.ofDegrees(70, 20)).distance().metres(), 1e-7);
    assertEquals(0.0, LegComparison.between(pole, south).greatestSeparation().metres(), 1e-6);
    RhumbLeg through = RhumbLeg.between(pole, Position.ofDegrees(-90, 77));
    assertEquals(10.0, through.end().longitudeDegrees());
    assertEquals(0.0, through.closestTo(Position.ofDegrees(0, 10)).distance().metres(), 1e-7);
  }

  @Test
  void partsOfALegMeetAndAreOfOneLength() {
    Position start = Position.ofDegrees(55, 179.9);
    TrueBearing course = TrueBearing.ofDegrees(75);
    Distance length = Distance.ofKilometres(30);
    for (Leg leg :
        new Leg[] {RhumbLeg.from(start, course, length), GeodesicLeg.from(start, course, length)}) {
      List<? extends Leg> parts = leg.split(7);
      assertEquals(7, parts.size());
      assertEquals(leg.start(), parts.get(0).start());
      assertEquals(leg.end(), parts.get(6).end());
      assertEquals(leg.initialCourse(), parts.get(0).initialCourse());
      assertEquals(leg.finalCourse(), parts.get(6).finalCourse());
      for (int i = 0; i < 7; i++) {
        Leg part = parts.get(i);
        assertEquals(length.metres() / 7, part.length().metres(), 1e-9);
        Leg again =
            leg instanceof RhumbLeg
                ? RhumbLeg.between(part.start(), part.end())
                : GeodesicLeg.between(part.start(), part.end());
        assertEquals(length.metres() / 7, again.length().metres(), 5e-8);
        assertEquals(again.initialCourse().degrees(), part.initialCourse().degrees(), 1e-8);
        if (i > 0) {
          assertEquals(parts.get(i - 1).end(), part.start());
        }
      }
      assertEquals(List.of(leg), leg.split(1));
      assertEquals(
          "number of parts must be in [1, 1000000], but was 0", message(() -> leg.split(0)));
    }
  }

  @Test
  void fractionsOfALegAreCountedFromItsStart() {
    RhumbLeg leg = RhumbLeg.from(LANDING, TrueBearing.ofDegrees(75), Distance.ofNauticalMiles(5.2));
    assertEquals(leg.start(), leg.pointAtFraction(0.0));
    assertEquals(leg.end(), leg.pointAtFraction(1.0));
    assertEquals(
        0.25 * leg.length().metres(), Places.metres(leg.start(), leg.pointAtFraction(0.25)), 0.01);
    assertEquals(leg.pointAt(Distance.ofNauticalMiles(2.6)), leg.midpoint());
    assertEquals(
        "fraction must be in [0, 1] of the leg, but was 1.01",
        message(() -> leg.pointAtFraction(1.01)));
  }

  @Test
  void noCourseIsToldPastAPole() {
    RhumbLeg leg =
        RhumbLeg.from(
            Position.ofDegrees(80, 10), TrueBearing.ofDegrees(45), Distance.ofKilometres(1));
    assertEquals(leg.course(), leg.courseAt(Distance.ofKilometres(500)));
    assertEquals(
        "a rhumb line from 80.0°N 10.0°E on course 45.0°T ends at the pole before 2000000.0 m",
        message(() -> leg.courseAt(Distance.ofKilometres(2000))));
    assertThrows(
        IllegalArgumentException.class, () -> leg.line().courseAt(Distance.ofKilometres(2000)));
  }
}
