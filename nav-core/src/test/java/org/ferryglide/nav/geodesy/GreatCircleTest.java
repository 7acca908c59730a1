package org.ferryglide.nav.geodesy;

import static org.ferryglide.testing.Refusal.message;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;

@Domain(Places.class)
@Domain(DomainContext.Global.class)
class GreatCircleTest {
  private static final Position YOKOHAMA = Position.ofDegrees(35 + 27 / 60.0, 139 + 39 / 60.0);
  private static final Position SAN_FRANCISCO =
      Position.ofDegrees(37 + 48.5 / 60, -122 - 24 / 60.0);

  /**
   * Our own recalculation of a tutoring exercise (jiskha.com 2218613) whose printed answer carries
   * slips: 4472.52 miles on the sphere, course 054.28, vertex 48.60 N.
   */
  @Test
  void anOceanExerciseRecalculated() {
    GreatCircle circle = GreatCircle.between(YOKOHAMA, SAN_FRANCISCO, GreatCircle.MINUTE_IS_A_MILE);
    assertEquals(4472.52, circle.length().nauticalMiles(), 0.005);
    assertEquals(54.28, circle.initialCourse().degrees(), 0.005);
    assertEquals(48.60, circle.northernVertex().latitudeDegrees(), 0.005);
    assertEquals(circle.northernVertex(), circle.vertex().orElseThrow());
    GeodesicLeg geodesic = GeodesicLeg.between(YOKOHAMA, SAN_FRANCISCO);
    assertEquals(4485.69, geodesic.length().nauticalMiles(), 0.005);
    assertEquals(54.26, geodesic.initialCourse().degrees(), 0.005);
  }

  /** The sphere of GeographicLib is an independent solution. */
  @Property(seed = Seeds.SEED, tries = 1000)
  void geographicLibsSphereAgrees(@ForAll Position from, @ForAll Position to) {
    double radius = 6371000;
    GreatCircle circle = GreatCircle.between(from, to, Distance.ofMetres(radius));
    GeodesicData peer =
        new Geodesic(radius, 0)
            .Inverse(
                from.latitudeDegrees(),
                from.longitudeDegrees(),
                to.latitudeDegrees(),
                to.longitudeDegrees());
    assertEquals(peer.s12, circle.length().metres(), 20e-9);
    double toEitherEnd = Math.min(peer.a12, 180 - peer.a12);
    Assume.that(toEitherEnd > 1e-6); // next to opposite points the course is anyone's guess
    double across = Math.sin(Math.toRadians(peer.a12)) * radius;
    double turn = Math.IEEEremainder(circle.initialCourse().degrees() - peer.azi1, 360);
    assertEquals(0.0, Math.toRadians(turn) * across, 20e-9);
    double turnAtEnd = Math.IEEEremainder(circle.finalCourse().degrees() - peer.azi2, 360);
    assertEquals(0.0, Math.toRadians(turnAtEnd) * across, 20e-9);
    Position end = circle.pointAt(circle.length());
    double off =
        new Geodesic(radius, 0)
            .Inverse(
                    to.latitudeDegrees(),
                    to.longitudeDegrees(),
                    end.latitudeDegrees(),
                    end.longitudeDegrees())
                .s12;
    assertEquals(0.0, off, 20e-9);
  }

  @Property(seed = Seeds.SEED, tries = 500)
  void noPointLiesFartherNorthThanTheVertex(@ForAll Position from, @ForAll Position to) {
    GreatCircle circle = GreatCircle.between(from, to, GreatCircle.MEAN_RADIUS);
    double top = circle.northernVertex().latitudeDegrees();
    double most = -90;
    for (int i = 0; i <= 36; i++) {
      most =
          Math.max(
              most, circle.pointAt(Distance.ofKilometres(i * 40_030 / 36.0)).latitudeDegrees());
    }
    assertTrue(most <= top + 1e-9, most + " above " + top);
  }

  @Test
  void theVertexOfAnArcMayLieSouthOrNotOnItAtAll() {
    GreatCircle south =
        GreatCircle.between(
            Position.ofDegrees(-40, 10), Position.ofDegrees(-40, 100), GreatCircle.MEAN_RADIUS);
    Position vertex = south.vertex().orElseThrow();
    assertEquals(55, vertex.longitudeDegrees(), 1e-9);
    assertTrue(vertex.latitudeDegrees() < -40);
    assertEquals(-125, south.northernVertex().longitudeDegrees(), 1e-9);
    GreatCircle rising =
        GreatCircle.between(
            Position.ofDegrees(10, 10), Position.ofDegrees(30, 20), GreatCircle.MEAN_RADIUS);
    assertTrue(rising.vertex().isEmpty());
  }

  @Test
  void theEquatorHasNoVertexButItsStart() {
    Position start = Position.ofDegrees(0, 10);
    GreatCircle equator =
        GreatCircle.between(start, Position.ofDegrees(0, 40), GreatCircle.MEAN_RADIUS);
    assertEquals(start, equator.northernVertex());
    assertEquals(90.0, equator.initialCourse().degrees());
    assertEquals(30.0, equator.arcDegrees(), 1e-13);
  }

  @Test
  void aMinuteOfArcIsAMile() {
    GreatCircle circle =
        GreatCircle.between(
            Position.ofDegrees(10, 0), Position.ofDegrees(11, 0), GreatCircle.MINUTE_IS_A_MILE);
    assertEquals(60.0, circle.length().nauticalMiles(), 1e-12);
  }

  @Test
  void oppositePointsAndPointsAlike() {
    GreatCircle opposite =
        GreatCircle.between(
            Position.ofDegrees(40, 10), Position.ofDegrees(-40, -170), GreatCircle.MEAN_RADIUS);
    assertEquals(180.0, opposite.arcDegrees(), 1e-13);
    GreatCircle none = GreatCircle.between(YOKOHAMA, YOKOHAMA, GreatCircle.MEAN_RADIUS);
    assertEquals(0.0, none.arcDegrees());
    assertEquals(0.0, none.initialCourse().degrees());
  }

  @Test
  void aRadiusOfNothingIsRefused() {
    assertEquals(
        "radius of a sphere must be a finite number of metres above 0, but was 0.0",
        message(() -> GreatCircle.between(YOKOHAMA, SAN_FRANCISCO, Distance.ZERO)));
  }
}
