package org.ferryglide.nav.geodesy;

import static org.ferryglide.testing.Refusal.message;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class EllipsoidTest {
  /** Source: GeographicLib's TransverseMercatorProj 2.1.2, quarter meridian of WGS84. */
  @Test
  void quarterMeridianOfWgs84() {
    assertEquals(
        Double.parseDouble("10001965.7293127228"), Ellipsoid.WGS84.quarterMeridianMetres(), 4e-9);
  }

  /** Source: Ordnance Survey, A guide to coordinate systems in Great Britain: Airy 1830. */
  @Test
  void radiiOfAiry1830AgreeWithTheGuide() {
    double lat = 52 + (39 + 27.2531 / 60) / 60;
    double k0 = 0.9996012717; // the guide prints both radii times the scale of the grid
    double halfAPrintedDigit = 0.5e-3;
    Ellipsoid airy = Ellipsoid.AIRY_1830;
    assertEquals(6.3885023339E+06, k0 * airy.primeVerticalRadiusMetres(lat), halfAPrintedDigit);
    assertEquals(6.3727564398E+06, k0 * airy.meridianRadiusMetres(lat), halfAPrintedDigit);
    assertEquals(6356256.909, airy.semiMinorAxisMetres(), halfAPrintedDigit);
  }

  /**
   * The radii of a sine are those of its latitude: a rounding of the sine, half an ulp of 1, moves
   * the radius of a parallel by that times the tangent of the latitude, a micrometre up to 85°.
   */
  @Test
  void radiiOfASineAreThoseOfItsLatitude() {
    double fewRoundings = 4 * Math.ulp(6.4e6);
    double micrometre = 1e-6;
    for (Ellipsoid each : List.of(Ellipsoid.WGS84, Ellipsoid.AIRY_1830, Ellipsoid.sphere(6.4e6))) {
      for (double lat = -85.0; lat <= 85.0; lat += 0.37) {
        double sine = Math.sin(Math.toRadians(lat));
        assertEquals(
            each.meridianRadiusMetres(lat), each.meridianRadiusMetresAtSine(sine), fewRoundings);
        assertEquals(
            each.primeVerticalRadiusMetres(lat),
            each.primeVerticalRadiusMetresAtSine(sine),
            fewRoundings);
        assertEquals(
            each.parallelRadiusMetres(lat), each.parallelRadiusMetresAtSine(sine), micrometre);
      }
      assertEquals(0.0, each.parallelRadiusMetresAtSine(-1.0));
      assertEquals(Double.NaN, each.meridianRadiusMetresAtSine(Double.NaN));
    }
  }

  /** Source: Ordnance Survey guide, eccentricity squared of GRS80 as printed. */
  @Test
  void eccentricityOfGrs80() {
    assertEquals(
        6.6943800355E-03, Ellipsoid.ofAxes(6378137.0, 6356752.3141).eccentricitySquared(), 5e-13);
    assertEquals(6356752.3141, Ellipsoid.GRS80.semiMinorAxisMetres(), 5e-5);
  }

  @Test
  void aSphereHasNoFlattening() {
    Ellipsoid sphere = Ellipsoid.sphere(6371000);
    assertEquals(6371000, sphere.rectifyingRadiusMetres());
    assertEquals(6371000, sphere.meridianRadiusMetres(33));
    assertEquals(6371000, sphere.primeVerticalRadiusMetres(33));
    assertEquals(0.0, sphere.thirdFlattening());
  }

  @Test
  void equalFiguresAreEqual() {
    assertEquals(Ellipsoid.WGS84, Ellipsoid.ofInverseFlattening(6378137.0, 298.257223563));
    assertEquals(
        Ellipsoid.WGS84.hashCode(),
        Ellipsoid.ofFlattening(6378137.0, 1 / 298.257223563).hashCode());
    assertNotEquals(Ellipsoid.WGS84, Ellipsoid.GRS80);
  }

  @Test
  void figuresOutOfRangeAreRefused() {
    assertEquals(
        "semi-major axis must be a finite number of metres above 0, but was 0.0",
        message(() -> Ellipsoid.sphere(0)));
    assertEquals(
        "flattening must be in [-0.02, 0.02] (no unit), but was 0.5",
        message(() -> Ellipsoid.ofFlattening(1, 0.5)));
    assertThrows(IllegalArgumentException.class, () -> Ellipsoid.ofInverseFlattening(1, 0));
    assertThrows(IllegalArgumentException.class, () -> Ellipsoid.ofAxes(1, Double.NaN));
  }

  @Test
  void anInverseFlatteningIsRefusedAsGiven() {
    assertEquals(
        "inverse flattening must be at least 50 or at most -50, but was 10.0",
        message(() -> Ellipsoid.ofInverseFlattening(6378137.0, 10.0)));
    assertEquals(
        "inverse flattening must be at least 50 or at most -50, but was NaN",
        message(() -> Ellipsoid.ofInverseFlattening(6378137.0, Double.NaN)));
    assertEquals(
        Ellipsoid.sphere(6378137.0),
        Ellipsoid.ofInverseFlattening(6378137.0, Double.POSITIVE_INFINITY));
  }
}
