package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;

/**
 * A rhumb line and the geodesic through two of its points enclose a thin lens: both tips are
 * crossings, whichever line is asked. The geodesics are laid off by GeographicLib.
 */
class LensProperties {
  /** Lenses no thicker lie within what a crossing may lie off either line. */
  private static final double LEAST_SAG_METRES = 10.0 * CrossingSearch.TOLERANCE_METRES;

  /** How far a tip may lie along: the lines part by so little there that places are uncertain. */
  private static double tipMetres(double sag, double between) {
    return 0.01 + 4.0 * CrossingSearch.TOLERANCE_METRES * between / sag;
  }

  @Property(seed = Seeds.SEED, tries = 400 * Seeds.MORE_IN_THE_SOAK)
  void bothTipsAreFoundFromEitherLine(@ForAll long drawn) {
    SplittableRandom random = new SplittableRandom(drawn);
    double side = random.nextBoolean() ? 1.0 : -1.0;
    Position start =
        Position.ofDegrees(
            side * (30.0 + 45.0 * random.nextDouble()), 360.0 * random.nextDouble() - 180.0);
    double length = 1e3 * Math.pow(200.0, random.nextDouble());
    double course = 60.0 + 60.0 * random.nextDouble() + (random.nextBoolean() ? 180.0 : 0.0);
    RhumbLeg rhumb = RhumbLeg.from(start, TrueBearing.ofDegrees(course), Distance.ofMetres(length));
    double first = length * (0.05 + 0.8 * random.nextDouble());
    double second =
        Math.min(0.97 * length, first + length * Math.pow(10.0, -3.0 * random.nextDouble()));
    Position tip = rhumb.pointAt(Distance.ofMetres(first));
    Position otherTip = rhumb.pointAt(Distance.ofMetres(second));
    GeodesicData chord =
        Geodesic.WGS84.Inverse(
            tip.latitudeDegrees(),
            tip.longitudeDegrees(),
            otherTip.latitudeDegrees(),
            otherTip.longitudeDegrees());
    double sag =
        Math.tan(Math.toRadians(Math.abs(tip.latitudeDegrees())))
            / Geodesic.WGS84.EquatorialRadius()
            * (second - first)
            * (second - first)
            / 8.0
            * Math.abs(Math.sin(Math.toRadians(course)));
    Assume.that(sag > LEAST_SAG_METRES);
    GeodesicLeg geodesic =
        GeodesicLeg.between(beyond(chord, -0.3 * length), beyond(chord, chord.s12 + 0.3 * length));

    double tolerance = tipMetres(sag, second - first);
    Crossings asRhumb = rhumb.crossings(geodesic);
    assertEquals(2, asRhumb.points().size());
    assertEquals(first, asRhumb.points().get(0).alongFirst().metres(), tolerance);
    assertEquals(second, asRhumb.points().get(1).alongFirst().metres(), tolerance);
    Crossings asGeodesic = geodesic.crossings(rhumb);
    assertEquals(2, asGeodesic.points().size());
    assertEquals(first, asGeodesic.points().get(0).alongSecond().metres(), tolerance);
    assertEquals(second, asGeodesic.points().get(1).alongSecond().metres(), tolerance);
  }

  private static Position beyond(GeodesicData chord, double along) {
    GeodesicData there = Geodesic.WGS84.Direct(chord.lat1, chord.lon1, chord.azi1, along);
    return Position.ofDegrees(there.lat2, there.lon2);
  }

  @Test
  void aLensOfFourteenMillimetresIsFoundFromEitherLine() {
    RhumbLeg rhumb =
        RhumbLeg.between(
            Position.ofDegrees(-55.755970183867646, -23.55610870083231),
            Position.ofDegrees(-55.583566689763884, -24.562406438226));
    GeodesicLeg geodesic =
        GeodesicLeg.between(
            Position.ofDegrees(-55.7982220754641, -23.30634131853979),
            Position.ofDegrees(-55.6929289485256, -23.922131919613026));
    assertEquals(2, rhumb.crossings(geodesic).points().size());
    assertEquals(2, geodesic.crossings(rhumb).points().size());
  }
}
