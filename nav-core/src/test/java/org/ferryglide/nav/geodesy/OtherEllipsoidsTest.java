package org.ferryglide.nav.geodesy;

import static org.ferryglide.testing.Refusal.message;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Crossings.Crossing;
import org.ferryglide.nav.geodesy.Places.KayakLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;

/**
 * Legs and lines on ellipsoids other than WGS84: closed forms of the sphere, and similarity, since
 * an ellipsoid of one flattening and twice the size shows the same figures with lengths doubled.
 */
@Domain(Places.class)
@Domain(DomainContext.Global.class)
class OtherEllipsoidsTest {
  private static final double RADIUS = 6371008.8;
  private static final Ellipsoid SPHERE = Ellipsoid.sphere(RADIUS);
  private static final Ellipsoid TWICE =
      Ellipsoid.ofFlattening(
          2.0 * Ellipsoid.WGS84.semiMajorAxisMetres(), Ellipsoid.WGS84.flattening());
  private static final Position LANDING = Position.ofDegrees(50.105, -5.535);
  private static final Position ISLAND = Position.ofDegrees(50.2, -5.43);

  /** Positions in degrees are rounded to 1.4e-14 degrees, 3.2 nanometres on the larger body. */
  private static final double ROUNDING_METRES = 20e-9;

  /** What a foot or a crossing is promised to, doubled with the size. */
  private static final double TWO_MICROMETRES = 2e-6;

  @Property(seed = Seeds.SEED, tries = 300)
  void aGeodesicOfTheSphereIsAGreatCircle(@ForAll KayakLeg kayak) {
    GeodesicLeg leg = GeodesicLeg.from(SPHERE, kayak.start(), kayak.course(), kayak.length());
    double[] a = unit(leg.start());
    double[] b = unit(leg.end());
    double chord = Math.sqrt(square(a[0] - b[0]) + square(a[1] - b[1]) + square(a[2] - b[2]));
    assertEquals(kayak.length().metres(), 2.0 * RADIUS * Math.asin(0.5 * chord), ROUNDING_METRES);
    assertEquals(SPHERE, leg.ellipsoid());
    assertEquals(SPHERE, leg.line().ellipsoid());
    GeodesicLeg again = GeodesicLeg.between(SPHERE, leg.start(), leg.end());
    assertEquals(kayak.length().metres(), again.length().metres(), ROUNDING_METRES);
  }

  @Property(seed = Seeds.SEED, tries = 300)
  void aRhumbLineOfTheSphereGoesNorthByTheCosineOfItsCourse(@ForAll KayakLeg kayak) {
    RhumbLeg leg = RhumbLeg.from(SPHERE, kayak.start(), kayak.course(), kayak.length());
    double north =
        RADIUS * Math.toRadians(leg.end().latitudeDegrees() - leg.start().latitudeDegrees());
    double cosine = Math.cos(Math.toRadians(kayak.course().degrees()));
    assertEquals(kayak.length().metres() * cosine, north, ROUNDING_METRES);
    RhumbLeg again = RhumbLeg.between(SPHERE, leg.start(), leg.end());
    assertEquals(kayak.length().metres(), again.length().metres(), ROUNDING_METRES);
  }

  /** Napier's rules: sin(cross-track) = sin(distance) sin(angle). */
  @Property(seed = Seeds.SEED, tries = 300)
  void crossTrackOnTheSphereObeysNapier(@ForAll KayakLeg kayak) {
    Line line = Line.geodesic(SPHERE, kayak.start(), TrueBearing.ofDegrees(75));
    Position rock = GeodesicLeg.from(SPHERE, kayak.start(), kayak.course(), kayak.length()).end();
    double angle = Math.toRadians(kayak.course().degrees() - 75.0);
    double arc = kayak.length().metres() / RADIUS;
    double expected = RADIUS * Math.asin(Math.sin(arc) * Math.sin(angle));
    ClosestPoint closest =
        GeodesicLeg.from(SPHERE, line.pointAt(kayak.length().times(-2)), course(line, kayak), far())
            .closestTo(rock);
    assertEquals(expected, closest.crossTrack().metres(), TWO_MICROMETRES);
  }

  private static TrueBearing course(Line line, KayakLeg kayak) {
    return line.courseAt(kayak.length().times(-2));
  }

  private static Distance far() {
    return Distance.ofKilometres(200);
  }

  @Property(seed = Seeds.SEED, tries = 300)
  void twiceTheSizeDoublesEveryLengthAndTurnsNothing(@ForAll KayakLeg kayak) {
    Distance twice = kayak.length().times(2.0);
    Leg[] legs = {
      RhumbLeg.from(kayak.start(), kayak.course(), kayak.length()),
      GeodesicLeg.from(kayak.start(), kayak.course(), kayak.length())
    };
    Leg[] doubles = {
      RhumbLeg.from(TWICE, kayak.start(), kayak.course(), twice),
      GeodesicLeg.from(TWICE, kayak.start(), kayak.course(), twice)
    };
    Position rock =
        GeodesicLeg.from(legs[0].midpoint(), kayak.course().turnedBy(60), kayak.length().times(0.2))
            .end();
    for (int i = 0; i < legs.length; i++) {
      assertTrue(metres(legs[i].end(), doubles[i].end()) < ROUNDING_METRES);
      assertTrue(metres(legs[i].midpoint(), doubles[i].midpoint()) < ROUNDING_METRES);
      ClosestPoint small = legs[i].closestTo(rock);
      ClosestPoint large = doubles[i].closestTo(rock);
      assertEquals(2.0 * small.alongTrack().metres(), large.alongTrack().metres(), TWO_MICROMETRES);
      assertEquals(2.0 * small.crossTrack().metres(), large.crossTrack().metres(), TWO_MICROMETRES);
    }
  }

  @Property(seed = Seeds.SEED, tries = 150)
  void legsOfTwiceTheSizeCrossAtTheSamePlaces(@ForAll KayakLeg kayak) {
    Leg first = RhumbLeg.from(kayak.start(), kayak.course(), kayak.length());
    Position middle = first.midpoint();
    Position from = GeodesicLeg.from(middle, kayak.course().turnedBy(110), kayak.length()).end();
    Position to = GeodesicLeg.from(middle, kayak.course().turnedBy(-80), kayak.length()).end();
    Crossings small = first.crossings(GeodesicLeg.between(from, to));
    Crossings large =
        RhumbLeg.from(TWICE, kayak.start(), kayak.course(), kayak.length().times(2))
            .crossings(GeodesicLeg.between(TWICE, from, to));
    assertEquals(small.points().size(), large.points().size());
    for (int i = 0; i < small.points().size(); i++) {
      Crossing one = small.points().get(i);
      Crossing two = large.points().get(i);
      assertTrue(metres(one.position(), two.position()) < TWO_MICROMETRES);
      assertEquals(2.0 * one.alongFirst().metres(), two.alongFirst().metres(), 2 * TWO_MICROMETRES);
    }
  }

  @Test
  void linesOnTwoEllipsoidsDoNotCross() {
    Leg earth = RhumbLeg.between(LANDING, ISLAND);
    Leg other = RhumbLeg.between(Ellipsoid.AIRY_1830, LANDING, ISLAND);
    assertEquals(
        "crossings need two lines on one ellipsoid, but they lie on "
            + Ellipsoid.WGS84
            + " and "
            + Ellipsoid.AIRY_1830,
        message(() -> earth.crossings(other)));
    assertThrows(
        IllegalArgumentException.class,
        () -> earth.line().crossings(other.line(), Distance.ofKilometres(10)));
  }

  @Test
  void theEllipsoidIsPartOfALeg() {
    Leg earth = RhumbLeg.between(LANDING, ISLAND);
    assertEquals(Ellipsoid.WGS84, earth.ellipsoid());
    assertEquals(earth, RhumbLeg.between(Ellipsoid.WGS84, LANDING, ISLAND));
    Leg airy = RhumbLeg.between(Ellipsoid.AIRY_1830, LANDING, ISLAND);
    assertNotEquals(earth, airy);
    assertNotEquals(earth.line(), airy.line());
    assertTrue(airy.toString().endsWith(", on " + Ellipsoid.AIRY_1830), airy.toString());
    assertEquals(Ellipsoid.AIRY_1830, airy.reverse().ellipsoid());
    assertEquals(Ellipsoid.AIRY_1830, airy.split(3).get(1).ellipsoid());
    Leg geodesic = GeodesicLeg.between(Ellipsoid.AIRY_1830, LANDING, ISLAND);
    assertEquals(Ellipsoid.AIRY_1830, geodesic.reverse().ellipsoid());
    assertEquals(Ellipsoid.AIRY_1830, geodesic.split(3).get(1).ellipsoid());
    assertNotEquals(GeodesicLeg.between(LANDING, ISLAND), geodesic);
  }

  private static double metres(Position a, Position b) {
    return GeodesicLeg.between(a, b).length().metres();
  }

  private static double square(double x) {
    return x * x;
  }

  private static double[] unit(Position position) {
    double lat = Math.toRadians(position.latitudeDegrees());
    double lon = Math.toRadians(position.longitudeDegrees());
    return new double[] {
      Math.cos(lat) * Math.cos(lon), Math.cos(lat) * Math.sin(lon), Math.sin(lat)
    };
  }

  /** On a sphere a minute of latitude is a sixtieth of a degree of its circumference. */
  @Test
  void coastsAndVesselsKeepToTheEllipsoidTheyAreTold() {
    double radius = 6_371_000.0;
    Ellipsoid sphere = Ellipsoid.sphere(radius);
    double minute = Math.toRadians(1.0 / 60.0) * radius;
    double micrometre = 1e-6;
    Position south = Position.ofDegrees(50, 0);
    Position north = Position.ofDegrees(51, 0);
    CoastStretch coast = CoastStretch.along(sphere, List.of(south, north, south));
    assertEquals(120 * minute, coast.length().metres(), micrometre);
    assertEquals(sphere, coast.legs().get(1).ellipsoid());

    MovingVessel northgoing =
        new MovingVessel(south, TrueBearing.ofDegrees(0), Speed.ofMetresPerSecond(minute / 600));
    assertEquals(
        50.1,
        northgoing.positionAfter(sphere, Duration.ofHours(1)).latitudeDegrees(),
        1e-12); // six minutes of latitude
    MovingVessel mark = MovingVessel.mark(Position.ofDegrees(50.2, 0));
    ClosestApproach onSphere =
        ClosestApproach.between(sphere, northgoing, mark, Duration.ofHours(1));
    assertEquals(6 * minute, onSphere.distance().metres(), micrometre);
    assertNotEquals(onSphere, ClosestApproach.between(northgoing, mark, Duration.ofHours(1)));
  }
}
