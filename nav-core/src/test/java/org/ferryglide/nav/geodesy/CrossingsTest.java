package org.ferryglide.nav.geodesy;

import static org.ferryglide.testing.Refusal.message;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Crossings.Crossing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class CrossingsTest {
  private static final double A_MICROMETRE = 1e-6;

  private static final Position WEST = Position.ofDegrees(55, -5);
  private static final Position EAST = Position.ofDegrees(55, -4.7);

  @Test
  void twoLegsCrossOnce() {
    RhumbLeg first = RhumbLeg.between(WEST, EAST);
    RhumbLeg second =
        RhumbLeg.between(Position.ofDegrees(54.9, -4.9), Position.ofDegrees(55.1, -4.85));
    List<Crossing> points = first.crossings(second).points();
    assertEquals(1, points.size());
    Crossing only = points.get(0);
    assertEquals(
        0.0, Places.metres(only.position(), first.pointAt(only.alongFirst())), A_MICROMETRE);
    assertEquals(
        0.0, Places.metres(only.position(), second.pointAt(only.alongSecond())), A_MICROMETRE);
    assertEquals(second.course().degrees() - 90, only.angleDegrees(), 1e-12);
    assertTrue(only.angleDegrees() < 0);
  }

  @Test
  void legsThatStopShortDoNotCross() {
    RhumbLeg first = RhumbLeg.between(WEST, EAST);
    RhumbLeg second =
        RhumbLeg.between(Position.ofDegrees(54.9, -4.9), Position.ofDegrees(54.99, -4.85));
    assertEquals(List.of(), first.crossings(second).points());
    assertEquals(
        1, first.line().crossings(second.line(), Distance.ofKilometres(50)).points().size());
    assertEquals(
        0, first.line().crossings(second.line(), Distance.ofKilometres(5)).points().size());
  }

  @Test
  void rhumbLineAndGeodesicMeetAtBothEnds() {
    RhumbLeg rhumb = RhumbLeg.between(WEST, EAST);
    GeodesicLeg geodesic = GeodesicLeg.between(WEST, EAST);
    Crossings crossings = rhumb.crossings(geodesic);
    assertEquals(2, crossings.points().size());
    assertEquals(Distance.ZERO, crossings.points().get(0).alongFirst());
    assertEquals(rhumb.length(), crossings.points().get(1).alongFirst());
    assertFalse(crossings.runTogether());
  }

  @Test
  void legsThatMeetAtAWaypointTouchThere() {
    RhumbLeg first = RhumbLeg.between(WEST, EAST);
    for (double turn : new double[] {0, 30, 120}) {
      RhumbLeg next = RhumbLeg.from(EAST, first.course().turnedBy(turn), Distance.ofKilometres(5));
      Crossings crossings = first.crossings(next);
      assertEquals(1, crossings.points().size(), "turn " + turn);
      assertEquals(first.length(), crossings.points().get(0).alongFirst());
      assertFalse(crossings.runTogether());
    }
  }

  @Test
  void aLegAndItsReverseRunTogether() {
    for (Leg leg : List.of(RhumbLeg.between(WEST, EAST), GeodesicLeg.between(WEST, EAST))) {
      Crossings crossings = leg.crossings(leg.reverse());
      assertTrue(crossings.runTogether());
      assertEquals(List.of(), crossings.points());
      assertEquals("[], running together", crossings.toString());
    }
  }

  @Test
  void legsThatOverlapRunTogether() {
    RhumbLeg leg = RhumbLeg.between(WEST, EAST);
    RhumbLeg shifted =
        RhumbLeg.from(
            leg.pointAt(Distance.ofKilometres(18)), leg.course(), Distance.ofKilometres(10));
    assertTrue(leg.crossings(shifted).runTogether());
  }

  @Test
  void parallelLegsDoNotMeet() {
    RhumbLeg first = RhumbLeg.between(WEST, EAST);
    RhumbLeg second =
        RhumbLeg.from(Position.ofDegrees(55.0001, -5), first.course(), Distance.ofKilometres(20));
    Crossings crossings = first.crossings(second);
    assertEquals(List.of(), crossings.points());
    assertFalse(crossings.runTogether());
  }

  /** On the Mercator chart both are straight, so that each turn and its northing are known. */
  @Test
  void aSpiralMeetsAMeridianOnceEachTurnInOrder() {
    Line spiral = Line.rhumb(Position.ofDegrees(80, 0), TrueBearing.ofDegrees(88));
    Line meridian = Line.rhumb(Position.ofDegrees(80, 10), TrueBearing.ofDegrees(0));
    List<Crossing> points = spiral.crossings(meridian, Line.SEARCH_SPAN).points();
    double ahead = turnedDegrees(spiral, Line.SEARCH_SPAN);
    double astern = turnedDegrees(spiral, Line.SEARCH_SPAN.times(-1));
    long turns = (long) (Math.floor((ahead - 10) / 360) - Math.ceil((astern - 10) / 360) + 1);
    assertEquals(7, turns);
    assertEquals(turns, points.size());
    double before = Double.NEGATIVE_INFINITY;
    for (Crossing point : points) {
      assertTrue(point.alongFirst().metres() > before);
      before = point.alongFirst().metres();
      double turned = turnedDegrees(spiral, point.alongFirst());
      assertEquals(0.0, Math.IEEEremainder(turned - 10, 360), 1e-9);
      assertEquals(10.0, point.position().longitudeDegrees(), 1e-9);
    }
  }

  /** Snyder (1987), eq. 7-7: the isometric latitude gained, times the tangent of the course. */
  private static double turnedDegrees(Line line, Distance along) {
    double gained = isometric(line.pointAt(along)) - isometric(line.origin());
    return Math.toDegrees(gained * Math.tan(Math.toRadians(line.initialCourse().degrees())));
  }

  private static double isometric(Position position) {
    double sine = Math.sin(Math.toRadians(position.latitudeDegrees()));
    double e = Math.sqrt(Ellipsoid.WGS84.eccentricitySquared());
    return atanh(sine) - e * atanh(e * sine);
  }

  private static double atanh(double x) {
    return 0.5 * Math.log((1 + x) / (1 - x));
  }

  @Test
  void twoGreatCirclesMeetOnOppositeSidesOfTheEarth() {
    Line first = Line.geodesic(Position.ofDegrees(0, 0), TrueBearing.ofDegrees(45));
    Line second = Line.geodesic(Position.ofDegrees(10, 20), TrueBearing.ofDegrees(100));
    List<Crossing> points = first.crossings(second, Line.SEARCH_SPAN).points();
    assertTrue(points.size() >= 2, points.toString());
    for (Crossing point : points) {
      assertEquals(
          0.0, Places.metres(point.position(), second.pointAt(point.alongSecond())), A_MICROMETRE);
    }
  }

  @Test
  void aSpanOutOfRangeIsRefused() {
    Line line = Line.rhumb(WEST, TrueBearing.ofDegrees(45));
    assertEquals(
        "span must be a finite number of metres above 0, but was 0.0",
        message(() -> line.crossings(line, Distance.ZERO)));
    assertEquals(
        "span must be in [0, 20000000] metres, but was 2.0001E7",
        message(() -> line.crossings(line, Distance.ofKilometres(20_001))));
  }

  /** Courses at a pole are told from different meridians; the angle is that of the meridians. */
  @Test
  void meridiansMeetAtAPoleAtTheAngleOfTheirLongitudes() {
    for (double pole : new double[] {90, -90}) {
      Position north = Position.ofDegrees(pole, 0);
      double side = Math.signum(pole);
      for (double lon : new double[] {90, 30, -120}) {
        Position one = Position.ofDegrees(80 * side, 0);
        Position other = Position.ofDegrees(80 * side, lon);
        for (Leg[] legs :
            new Leg[][] {
              {RhumbLeg.between(one, north), RhumbLeg.between(other, north)},
              {GeodesicLeg.between(one, north), GeodesicLeg.between(other, north)},
              {RhumbLeg.between(one, north), GeodesicLeg.between(other, north)}
            }) {
          List<Crossing> points = legs[0].crossings(legs[1]).points();
          assertEquals(1, points.size());
          // from the first's way to the second's: seen from above the north pole, 180 - (180 - lon)
          assertEquals(-side * lon, points.get(0).angleDegrees(), 1e-9);
        }
      }
    }
  }

  @Test
  void anAngleOutOfRangeIsRefused() {
    Position here = Position.ofDegrees(50, 0);
    Distance mile = Distance.ofNauticalMiles(1);
    for (double angle : new double[] {-180.0, 180.5, Double.NaN}) {
      assertEquals(
          "angle of a crossing must be in (-180, 180] degrees, but was " + angle,
          message(() -> new Crossings.Crossing(here, mile, mile, angle)));
    }
  }
}
