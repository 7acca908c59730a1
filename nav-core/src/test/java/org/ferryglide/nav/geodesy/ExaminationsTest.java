package org.ferryglide.nav.geodesy;

import static org.ferryglide.testing.Rows.number;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Rows;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Published examination problems. Their keys are worked on the sphere of sixty miles to a degree,
 * or with the meridional parts of an ellipsoid and sixty miles to a degree; each is met within the
 * digits it prints unless the remark beside it in the table says what its key rounded.
 */
class ExaminationsTest {
  private static final Ellipsoid SPHERE = Ellipsoid.sphere(GreatCircle.MINUTE_IS_A_MILE.metres());

  /** Half a minute's last figure in degrees would be lost in a key printed to five decimals. */
  private static final double PRINTED_DEGREES = 0.5e-5;

  @TestFactory
  List<DynamicTest> greatCircles() {
    return Rows.of(ExaminationsTest.class, "examinations-great-circle.csv").stream()
        .map(row -> DynamicTest.dynamicTest(row[0], () -> checkGreatCircle(row)))
        .toList();
  }

  private static void checkGreatCircle(String[] row) {
    Position start = Position.parse(row[1]);
    GreatCircle circle =
        GreatCircle.between(start, Position.parse(row[2]), GreatCircle.MINUTE_IS_A_MILE);
    double key = number(row[4]);
    double tolerance = number(row[5]);
    double minutes = tolerance / 60.0 + PRINTED_DEGREES;
    boolean roundedCourse = row[6].startsWith("key by its rounded course");
    switch (row[3]) {
      case "distance" -> assertEquals(key, circle.length().nauticalMiles(), tolerance);
      case "course" -> assertEquals(key, circle.initialCourse().degrees(), tolerance);
      case "vertex_lat" ->
          assertEquals(
              key,
              roundedCourse
                  ? vertexLatitude(start, rounded(circle.initialCourse().degrees(), 0.1))
                  : circle.northernVertex().latitudeDegrees(),
              minutes);
      case "vertex_lon" ->
          assertEquals(
              key,
              roundedCourse
                  ? vertexLongitude(start, rounded(circle.initialCourse().degrees(), 0.1))
                  : circle.northernVertex().longitudeDegrees(),
              minutes);
      default -> throw new AssertionError(row[3]);
    }
  }

  private static double rounded(double value, double step) {
    return Math.rint(value / step) * step;
  }

  /** Napier's rules from a course, as the keys use them: cos Lv = cos L sin C. */
  private static double vertexLatitude(Position start, double course) {
    return Math.toDegrees(
        Math.acos(
            Math.cos(Math.toRadians(start.latitudeDegrees()))
                * Math.abs(Math.sin(Math.toRadians(course)))));
  }

  /**
   * sin of the difference of longitude = cos C / sin Lv, with the vertex as the problem gives it.
   */
  private static double vertexLongitude(Position start, double course) {
    double vertex = 38.0 + 9.4 / 60.0;
    double difference =
        Math.toDegrees(
            Math.asin(
                Math.abs(Math.cos(Math.toRadians(course))) / Math.sin(Math.toRadians(vertex))));
    return start.longitudeDegrees() + (course < 180.0 ? difference : -difference);
  }

  @TestFactory
  List<DynamicTest> rhumbLines() {
    return Rows.of(ExaminationsTest.class, "examinations-rhumb.csv").stream()
        .map(row -> DynamicTest.dynamicTest(row[0], () -> checkRhumb(row)))
        .toList();
  }

  private static void checkRhumb(String[] row) {
    double[] out = new double[2];
    switch (row[1]) {
      case "inverse" -> {
        Position start = Position.parse(row[2]);
        Position end = Position.parse(row[3]);
        boolean mercator = row[9].equals("Mercator") || row[0].equals("J5-398");
        RhumbLines.inverse(
            mercator ? Ellipsoid.WGS84 : SPHERE,
            start.latitudeDegrees(),
            start.longitudeDegrees(),
            end.latitudeDegrees(),
            end.longitudeDegrees(),
            out,
            0);
        double courseTolerance = number(row[6]);
        assertEquals(number(row[5]), out[0], courseTolerance);
        double north = 60.0 * Math.abs(end.latitudeDegrees() - start.latitudeDegrees());
        // sixty miles to a degree: meridional parts give the key's course, its cosine the distance
        double miles =
            mercator
                ? north / Math.abs(Math.cos(Math.toRadians(rounded(out[0], courseTolerance))))
                : out[1] / 1852.0;
        assertEquals(number(row[7]), miles, number(row[8]));
      }
      case "direct" -> {
        Position start = Position.parse(row[2]);
        double course = number(row[3]);
        double metres = 1852.0 * number(row[4]);
        RhumbLines.direct(
            SPHERE, start.latitudeDegrees(), start.longitudeDegrees(), course, metres, out, 0);
        if (row[9].equals("meridional parts to a tenth")) {
          // the latitude of the sphere with the meridional parts of the ellipsoid
          double south = out[0];
          double[] toTheMeridian = new double[2];
          RhumbLines.inverse(start.latitudeDegrees(), 0, south, -1, toTheMeridian, 0);
          double parts = 1.0 / Math.tan(Math.toRadians(toTheMeridian[0] - 180.0));
          out[1] = start.longitudeDegrees() - parts * Math.tan(Math.toRadians(course - 180.0));
        }
        if (!row[5].isEmpty()) {
          assertEquals(number(row[5]), out[0], number(row[6]) / 60.0);
        }
        assertEquals(number(row[7]), out[1], number(row[8]) / 60.0);
      }
      case "plane" -> {
        // so near the equator a mile of longitude is a mile
        RhumbLines.direct(SPHERE, 0, 0, number(row[3]), 1852.0 * number(row[4]), out, 0);
        assertEquals(number(row[5]), 60.0 * out[0], number(row[6]));
        assertEquals(number(row[7]), 60.0 * out[1], number(row[8]));
      }
      default -> throw new AssertionError(row[1]);
    }
  }

  /**
   * US Coast Guard, deck examination question bank, Navigation General, problem 490: a storm bears
   * 100°, 90 miles off, moves on 285° at 19 knots; with 10 knots the course for the greatest
   * distance at the closest approach is 226°, printed to a degree.
   */
  @Test
  void theCourseThatKeepsFarthestFromAStorm() {
    Position ship = Position.ofDegrees(0, 0);
    Position centre =
        RhumbLeg.from(ship, TrueBearing.ofDegrees(100), Distance.ofNauticalMiles(90)).end();
    MovingVessel storm = new MovingVessel(centre, TrueBearing.ofDegrees(285), Speed.ofKnots(19));
    double best = Double.NaN;
    double farthest = 0.0;
    for (double course = 0.0; course < 360.0; course += 0.5) {
      MovingVessel own = new MovingVessel(ship, TrueBearing.ofDegrees(course), Speed.ofKnots(10));
      double metres = ClosestApproach.between(own, storm, Duration.ofHours(24)).distance().metres();
      if (metres > farthest) {
        farthest = metres;
        best = course;
      }
    }
    assertEquals(226.0, best, 1.0);
  }
}
