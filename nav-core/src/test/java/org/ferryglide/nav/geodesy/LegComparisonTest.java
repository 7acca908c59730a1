package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class LegComparisonTest {
  private static final double RADIUS_METRES = 6371008.8;

  /**
   * The closed forms, with k = tan(middle latitude) sin(course) / R: separation s²k/8, excess
   * s³k²/24, difference of bearing sk/2; derived from a line of constant geodesic curvature.
   */
  @TestFactory
  List<DynamicTest> closedFormsHold() {
    List<DynamicTest> tests = new ArrayList<>();
    for (double lat : new double[] {20, 55, 70, -40}) {
      for (double course : new double[] {90, 60, 225}) {
        for (double miles : new double[] {5, 20, 50}) {
          tests.add(
              DynamicTest.dynamicTest(
                  lat + " " + course + " " + miles, () -> checkClosedForms(lat, course, miles)));
        }
      }
    }
    return tests;
  }

  private static void checkClosedForms(double lat, double course, double miles) {
    Position start = Position.ofDegrees(lat, 179.9);
    RhumbLeg leg = RhumbLeg.from(start, new TrueBearing(course), Distance.ofNauticalMiles(miles));
    LegComparison comparison = LegComparison.between(start, leg.end());
    double s = leg.length().metres();
    double middle = Math.toRadians(0.5 * (lat + leg.end().latitudeDegrees()));
    double k = Math.abs(Math.tan(middle) * Math.sin(Math.toRadians(course))) / RADIUS_METRES;
    double separation = s * s * k / 8;
    double excess = s * s * s * k * k / 24;
    assertEquals(separation, comparison.greatestSeparation().metres(), 0.025 * separation);
    // Below a millimetre the excess drowns in the 30 nanometres of two lengths.
    assertEquals(excess, comparison.lengthExcess().metres(), 0.01 * excess + 30e-9);
    double turn = Math.abs(comparison.initialCourseDifferenceDegrees());
    assertEquals(Math.toDegrees(s * k / 2), turn, 0.025 * turn);
    assertEquals(
        comparison.halfConvergencyDegrees(),
        comparison.initialCourseDifferenceDegrees(),
        miles <= 20 ? 0.0012 : 0.032);
    assertEquals(s / 2, comparison.greatestSeparationAlong().metres(), 0.03 * s);
  }

  /** The rule itself, on legs far from east and west: 3° times the sine of 52° north, and south. */
  @Test
  void halfConvergencyIsThatOfTheMiddleLatitude() {
    assertEquals(
        2.364032261,
        LegComparison.between(Position.ofDegrees(50, 0), Position.ofDegrees(54, 6))
            .halfConvergencyDegrees(),
        1e-9);
    assertEquals(
        -2.364032261,
        LegComparison.between(Position.ofDegrees(-54, 177), Position.ofDegrees(-50, -177))
            .halfConvergencyDegrees(),
        1e-9);
  }

  /** A leg of ten miles east-west at 55 north, by GeographicLib: 9.6 m, 13 mm, 0.119 degrees. */
  @Test
  void tenMilesEastWestAt55NorthDifferByTenMetres() {
    Position start = Position.ofDegrees(55, 0);
    Position end =
        RhumbLeg.from(start, TrueBearing.ofDegrees(90), Distance.ofNauticalMiles(10)).end();
    LegComparison comparison = LegComparison.between(start, end);
    assertEquals(9.6, comparison.greatestSeparation().metres(), 0.05);
    assertEquals(0.013, comparison.lengthExcess().metres(), 0.0005);
    assertEquals(0.119, comparison.initialCourseDifferenceDegrees(), 0.0005);
    assertEquals(9260, comparison.greatestSeparationAlong().metres(), 100);
    assertEquals(0.0593, comparison.equivalentSteeringErrorDegrees(), 0.001); // half the difference
    assertEquals(
        0.0,
        Places.metres(
            comparison.greatestSeparationAt(),
            RhumbLeg.between(start, end).pointAt(comparison.greatestSeparationAlong())),
        1e-6);
  }

  @Test
  void northboundInTheSouthernHemisphereTheSignTurns() {
    LegComparison south =
        LegComparison.between(Position.ofDegrees(-45, 170), Position.ofDegrees(-45, 171));
    assertTrue(south.initialCourseDifferenceDegrees() < 0);
    assertTrue(south.halfConvergencyDegrees() < 0);
  }

  @Test
  void alongAMeridianTheLinesAreOne() {
    LegComparison comparison =
        LegComparison.between(Position.ofDegrees(50, 5), Position.ofDegrees(51, 5));
    assertEquals(0.0, comparison.greatestSeparation().metres(), 1e-6);
    assertEquals(0.0, comparison.lengthExcess().metres(), 30e-9);
    assertEquals(0.0, comparison.initialCourseDifferenceDegrees());
    assertEquals(0.0, comparison.equivalentSteeringErrorDegrees(), 1e-9);
  }

  @Test
  void oneFromAndToIsNoComparisonAtAll() {
    Position place = Position.ofDegrees(50, 5);
    LegComparison comparison = LegComparison.between(place, place);
    assertEquals(0.0, comparison.greatestSeparation().metres());
    assertEquals(0.0, comparison.equivalentSteeringErrorDegrees());
  }

  /**
   * Source: manual pages of GeographicLib's GeodSolve and RhumbSolve: the geodesic is 3176 km
   * shorter than the rhumb line.
   */
  @Test
  void onAnOceanTheDifferenceIsThePublishedOne() {
    LegComparison comparison =
        LegComparison.between(
            Position.ofDegrees(40.6397222, -73.7788889),
            Position.ofDegrees(1.3591667, 103.9894444444444));
    assertEquals(3176, comparison.lengthExcess().kilometres(), 0.5);
    assertTrue(comparison.greatestSeparation().kilometres() > 3000);
  }

  /** Tobler (1964) gives 0.27 % as a difference of sphere and spheroid, Earle (2006) 0.5 %. */
  @Test
  void theSphereIsOffByNoMoreThanHalfAPercent() {
    for (double lat = -70; lat <= 70; lat += 10) {
      for (double course = 0; course < 360; course += 30) {
        Position start = Position.ofDegrees(lat, 20);
        Leg leg = RhumbLeg.from(start, new TrueBearing(course), Distance.ofNauticalMiles(10));
        LegComparison comparison = LegComparison.between(start, leg.end());
        LegComparison sphere =
            LegComparison.between(
                Ellipsoid.sphere(GreatCircle.MEAN_RADIUS.metres()), start, leg.end());
        double metres = leg.length().metres();
        double longer = sphere.rhumbLength().minus(comparison.rhumbLength()).metres();
        assertEquals(0.0, longer, 0.0057 * metres);
        assertEquals(
            longer,
            sphere.geodesicLength().minus(comparison.geodesicLength()).metres(),
            1e-4 * metres);
        assertEquals(
            comparison.rhumbCourse().turnDegreesTo(sphere.rhumbCourse()),
            comparison.initialCourse().turnDegreesTo(sphere.initialCourse()),
            2e-3);
        GreatCircle circle = GreatCircle.between(start, leg.end(), GreatCircle.MEAN_RADIUS);
        assertEquals(circle.length().metres(), sphere.geodesicLength().metres(), 1e-6);
      }
    }
  }

  /** Far legs are searched on any ellipsoid; near ones worked as the kernel does. */
  @Test
  void onAnotherEllipsoidTheAnswersAreItsOwn() {
    Position start = Position.ofDegrees(40, 10);
    Position end = Position.ofDegrees(40, 70);
    double radius = GreatCircle.MEAN_RADIUS.metres();
    LegComparison sphere = LegComparison.between(Ellipsoid.sphere(radius), start, end);
    double phi = Math.toRadians(40);
    // the vertex of the great circle: tan φ / cos 30°
    double vertex = Math.atan(Math.tan(phi) / Math.cos(Math.toRadians(30)));
    assertEquals(radius * (vertex - phi), sphere.greatestSeparation().metres(), 1e-3);
    assertEquals(40.0, sphere.greatestSeparationAt().latitudeDegrees(), 1e-9);
    assertEquals(40.0, sphere.greatestSeparationAt().longitudeDegrees(), 1e-3);
    LegComparison flat = LegComparison.between(Ellipsoid.ofFlattening(6.4e6, 1.0 / 60), start, end);
    assertTrue(flat.greatestSeparation().metres() > 100e3);
    assertFalse(flat.equals(LegComparison.between(start, end)));
  }

  /** A rhumb line from a pole runs along the meridian of its end, as the geodesic does. */
  @Test
  void fromAPoleTheLinesAreOne() {
    LegComparison comparison =
        LegComparison.between(Position.ofDegrees(90, 30), Position.ofDegrees(60, 10));
    assertEquals(0.0, comparison.greatestSeparation().metres(), 1e-6);
  }
}
