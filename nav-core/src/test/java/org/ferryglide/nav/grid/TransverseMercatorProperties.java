package org.ferryglide.nav.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.testing.Seeds;

class TransverseMercatorProperties {
  /** Twice the promise of one way, and the last place of a longitude of 180° on the equator. */
  private static final double THERE_AND_BACK_METRES = 1.2e-8;

  private static final TransverseMercator UTM = TransverseMercator.of(Ellipsoid.WGS84, 0.9996);

  @Provide
  Arbitrary<Double> latitudes() {
    return Arbitraries.oneOf(
        Arbitraries.of(-90.0, -0.0, 0.0, 90.0, Math.nextDown(90.0), 45.0, Math.nextUp(45.0)),
        Arbitraries.doubles().between(-90.0, 90.0).ofScale(12));
  }

  @Provide
  Arbitrary<Double> longitudes() {
    return Arbitraries.oneOf(
        Arbitraries.of(-30.0, -0.0, 0.0, 1e-12, 3.0, 6.0, 30.0),
        Arbitraries.doubles().between(-34.0, 34.0).ofScale(12));
  }

  @Property(seed = Seeds.SEED, tries = 2000)
  void thereAndBack(@ForAll("latitudes") double latitude, @ForAll("longitudes") double longitude) {
    double[] out = new double[4];
    UTM.forward(latitude, longitude, out, 0);
    double convergence = out[2];
    double scale = out[3];
    UTM.reverse(out[0], out[1], out, 0);
    double parallel = Math.cos(Math.toRadians(latitude));
    assertEquals(0.0, (out[0] - latitude) * 111.7e3, THERE_AND_BACK_METRES);
    assertEquals(0.0, (out[1] - longitude) * 111.4e3 * parallel, THERE_AND_BACK_METRES);
    assertEquals(scale, out[3], 4e-15);
    if (Math.abs(latitude) < 89.999) {
      assertEquals(convergence, out[2], 1e-8);
    }
  }

  @Property(seed = Seeds.SEED, tries = 500)
  void eastAndWestAreMirrored(
      @ForAll("latitudes") double latitude, @ForAll("longitudes") double longitude) {
    double[] east = new double[4];
    double[] west = new double[4];
    UTM.forward(latitude, longitude, east, 0);
    UTM.forward(latitude, -longitude, west, 0);
    assertEquals(-east[0] + 0.0, west[0]);
    assertEquals(east[1], west[1]);
    assertEquals(-east[2] + 0.0, west[2]);
    assertEquals(east[3], west[3]);
  }

  @Property(seed = Seeds.SEED, tries = 500)
  void northAndSouthAreMirrored(
      @ForAll("latitudes") double latitude, @ForAll("longitudes") double longitude) {
    double[] north = new double[4];
    double[] south = new double[4];
    UTM.forward(latitude, longitude, north, 0);
    UTM.forward(-latitude, longitude, south, 0);
    assertEquals(north[0], south[0]);
    assertEquals(-north[1] + 0.0, south[1]);
    assertEquals(-north[2] + 0.0, south[2]);
    assertEquals(north[3], south[3]);
  }

  /** The projection is conformal: a small step north and one east turn and stretch alike. */
  @Property(seed = Seeds.SEED, tries = 500)
  void smallStepsTurnByConvergenceAndStretchByScale(
      @ForAll("latitudes") double latitude, @ForAll("longitudes") double longitude) {
    double centre = Math.max(-89.0, Math.min(89.0, latitude));
    double step = 1e-5;
    double[] at = new double[4];
    double[] one = new double[4];
    double[] other = new double[4];
    UTM.forward(centre, longitude, at, 0);
    UTM.forward(centre + step, longitude, one, 0);
    UTM.forward(centre - step, longitude, other, 0);
    double ground = 2.0 * Math.toRadians(step) * Ellipsoid.WGS84.meridianRadiusMetres(centre);
    double east = one[0] - other[0];
    double north = one[1] - other[1];
    double stepError = 1e-8; // 4 nm twice over 2 m, and the third order of the step
    assertEquals(at[3], Math.hypot(east, north) / ground, stepError);
    assertEquals(
        Math.toRadians(at[2]), -Math.atan2(east, north), stepError, "grid bearing of true north");

    UTM.forward(centre, longitude + step, one, 0);
    UTM.forward(centre, longitude - step, other, 0);
    ground =
        2.0
            * Math.toRadians(step)
            * Ellipsoid.WGS84.primeVerticalRadiusMetres(centre)
            * Math.cos(Math.toRadians(centre));
    double parallelError = stepError / Math.cos(Math.toRadians(centre));
    assertEquals(at[3], Math.hypot(one[0] - other[0], one[1] - other[1]) / ground, parallelError);
  }
}
