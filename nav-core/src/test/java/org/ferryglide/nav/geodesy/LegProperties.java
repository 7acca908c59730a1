package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ferryglide.nav.geodesy.Places.KayakLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;

/** Laws of legs as a paddler has them: 10 m to 40 km, the date line and the equator included. */
@Domain(Places.class)
@Domain(DomainContext.Global.class)
class LegProperties {
  /** Positions in degrees are rounded to 1.4e-14 degrees at least, 1.6 nanometres. */
  private static final double ROUNDING_METRES = 10e-9;

  /** Two solutions of GeographicLib, 15 nanometres each. */
  private static final double GEODESIC_METRES = 30e-9;

  @Property(seed = Seeds.SEED, tries = 500)
  void aRhumbLegAndItsReverseAreReciprocalAndAsLong(@ForAll KayakLeg kayak) {
    RhumbLeg leg = rhumb(kayak);
    RhumbLeg back = RhumbLeg.between(leg.end(), leg.start());
    assertEquals(leg.length().metres(), back.length().metres(), ROUNDING_METRES);
    double turn = back.course().turnDegreesTo(leg.course().reciprocal());
    assertEquals(0.0, Math.toRadians(turn) * leg.length().metres(), ROUNDING_METRES);
  }

  @Property(seed = Seeds.SEED, tries = 500)
  void aGeodesicEndsOnTheReciprocalOfItsReverse(@ForAll KayakLeg kayak) {
    GeodesicLeg leg = geodesic(kayak);
    GeodesicLeg back = GeodesicLeg.between(leg.end(), leg.start());
    assertEquals(leg.length().metres(), back.length().metres(), GEODESIC_METRES);
    double turn = back.initialCourse().turnDegreesTo(leg.finalCourse().reciprocal());
    assertEquals(0.0, Math.toRadians(turn) * leg.length().metres(), GEODESIC_METRES);
  }

  @Property(seed = Seeds.SEED, tries = 500)
  void aLegLaidOffIsTheLegMeasured(@ForAll KayakLeg kayak) {
    RhumbLeg rhumb = rhumb(kayak);
    RhumbLeg measured = RhumbLeg.between(rhumb.start(), rhumb.end());
    assertEquals(rhumb.length().metres(), measured.length().metres(), ROUNDING_METRES);
    double turn = rhumb.course().turnDegreesTo(measured.course());
    assertEquals(0.0, Math.toRadians(turn) * rhumb.length().metres(), ROUNDING_METRES);

    GeodesicLeg geodesic = geodesic(kayak);
    GeodesicLeg again = GeodesicLeg.between(geodesic.start(), geodesic.end());
    assertEquals(geodesic.length().metres(), again.length().metres(), GEODESIC_METRES);
  }

  @Property(seed = Seeds.SEED, tries = 500)
  void pointsAlongAddUp(@ForAll KayakLeg kayak) {
    for (Leg leg : new Leg[] {rhumb(kayak), geodesic(kayak)}) {
      Distance third = leg.length().times(1.0 / 3.0);
      Position middle = leg.pointAt(third);
      double first = Places.metres(leg.start(), middle);
      double second = Places.metres(middle, leg.end());
      // A rhumb line's parts are measured as geodesics: shorter, if anything.
      assertTrue(first + second <= leg.length().metres() + GEODESIC_METRES);
      assertEquals(
          leg.length().metres(),
          first + second,
          leg instanceof GeodesicLeg ? GEODESIC_METRES : 10.0);
      Leg rest =
          leg instanceof RhumbLeg
              ? RhumbLeg.between(middle, leg.end())
              : GeodesicLeg.between(middle, leg.end());
      assertEquals(leg.length().metres(), third.metres() + rest.length().metres(), GEODESIC_METRES);
    }
  }

  @Property(seed = Seeds.SEED, tries = 500)
  void theGeodesicIsNeverTheLongerWay(@ForAll KayakLeg kayak) {
    RhumbLeg rhumb = rhumb(kayak);
    double shortest = GeodesicLeg.between(rhumb.start(), rhumb.end()).length().metres();
    assertTrue(shortest <= rhumb.length().metres() + GEODESIC_METRES);
  }

  @Property(seed = Seeds.SEED, tries = 500)
  void mirrorImagesHaveMirroredCourses(@ForAll KayakLeg kayak) {
    RhumbLeg leg = rhumb(kayak);
    RhumbLeg eastWest = RhumbLeg.between(eastWest(leg.start()), eastWest(leg.end()));
    RhumbLeg northSouth = RhumbLeg.between(northSouth(leg.start()), northSouth(leg.end()));
    RhumbLeg same = RhumbLeg.between(leg.start(), leg.end());
    assertEquals(same.length(), eastWest.length());
    assertEquals(same.length(), northSouth.length());
    double oneRounding = Math.ulp(360.0);
    double east = same.course().degrees() + eastWest.course().degrees();
    double north = same.course().degrees() + northSouth.course().degrees();
    assertEquals(0.0, Math.IEEEremainder(east, 360.0), oneRounding);
    assertEquals(0.0, Math.IEEEremainder(north - 180.0, 360.0), oneRounding);
  }

  private static Position eastWest(Position position) {
    return Position.ofDegrees(position.latitudeDegrees(), -position.longitudeDegrees());
  }

  private static Position northSouth(Position position) {
    return Position.ofDegrees(-position.latitudeDegrees(), position.longitudeDegrees());
  }

  private static RhumbLeg rhumb(KayakLeg kayak) {
    return RhumbLeg.from(kayak.start(), kayak.course(), kayak.length());
  }

  private static GeodesicLeg geodesic(KayakLeg kayak) {
    return GeodesicLeg.from(kayak.start(), kayak.course(), kayak.length());
  }
}
