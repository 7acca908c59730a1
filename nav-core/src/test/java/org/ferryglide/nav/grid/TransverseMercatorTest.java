package org.ferryglide.nav.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.testing.Rows;
import org.junit.jupiter.api.Test;

class TransverseMercatorTest {
  /** What the class promises within 3900 km of the central meridian. */
  private static final double FOUR_NANOMETRES = 4e-9;

  private static final double PROMISED_CONVERGENCE_DEGREES = 5e-13;
  private static final double PROMISED_SCALE = 2e-15;

  private static final TransverseMercator UTM = TransverseMercator.of(Ellipsoid.WGS84, 0.9996);
  private final double[] out = new double[4];

  @Test
  void forwardAgreesWithFiftyDigits() {
    for (String[] row :
        Rows.of(TransverseMercatorTest.class, "transverse-mercator-50-digits.csv")) {
      UTM.forward(Rows.number(row, 1), Rows.number(row, 2), out, 0);
      String where = String.join(",", row);
      assertEquals(
          0.0,
          Math.hypot(out[0] - Rows.number(row, 3), out[1] - Rows.number(row, 4)),
          FOUR_NANOMETRES,
          where);
      assertEquals(0.0, turn(out[2], Rows.number(row, 5)), PROMISED_CONVERGENCE_DEGREES, where);
      assertEquals(1.0, out[3] / Rows.number(row, 6), PROMISED_SCALE, where);
    }
  }

  @Test
  void reverseAgreesWithFiftyDigits() {
    for (String[] row :
        Rows.of(TransverseMercatorTest.class, "transverse-mercator-50-digits.csv")) {
      double latitude = Rows.number(row, 1);
      UTM.reverse(Rows.number(row, 3), Rows.number(row, 4), out, 0);
      String where = String.join(",", row);
      double metresPerDegree = Ellipsoid.WGS84.meridianRadiusMetres(latitude) * Math.PI / 180.0;
      double parallel = Math.cos(Math.toRadians(latitude));
      double north = (out[0] - latitude) * metresPerDegree;
      double east = turn(out[1], Rows.number(row, 2)) * metresPerDegree * parallel;
      assertEquals(0.0, Math.hypot(north, east), FOUR_NANOMETRES, where);
      // near a pole convergence turns with longitude, which a nanometre moves
      double nearPole = Math.toDegrees(FOUR_NANOMETRES / (6.4e6 * parallel));
      double error = PROMISED_CONVERGENCE_DEGREES + nearPole;
      assertEquals(0.0, turn(out[2], Rows.number(row, 5)), error, where);
      assertEquals(1.0, out[3] / Rows.number(row, 6), PROMISED_SCALE, where);
    }
  }

  private static double turn(double one, double other) {
    return Math.IEEEremainder(one - other, 360.0);
  }

  /** GeographicLib 2.7, tests/CMakeLists.txt; an ellipsoid twice as flat as the earth. */
  @Test
  void anotherEllipsoidAgreesWithAPublishedCheck() {
    TransverseMercator flat =
        TransverseMercator.of(Ellipsoid.ofInverseFlattening(6.4e6, 150.0), 0.9996);
    flat.forward(20.0, 30.0, out, 0);
    assertEquals(3266035.453860, out[0], 0.5e-6);
    assertEquals(2518371.552676, out[1], 0.5e-6);
    assertEquals(11.207356502141, out[2], 0.5e-12);
    assertEquals(1.134138960741, out[3], 0.5e-12);
    flat.reverse(3266035.453860, 2518371.552676, out, 0);
    assertEquals(20.0, out[0], 1e-11);
    assertEquals(30.0, out[1], 1e-11);
    assertEquals(11.207356502141, out[2], 1e-11);
  }

  /** Quarter meridian as GeographicLib's documentation prints it: 10001965.7293127228 m. */
  @Test
  void thePoleLiesAQuarterMeridianAway() {
    TransverseMercator plain = TransverseMercator.of(Ellipsoid.WGS84, 1.0);
    for (double side : new double[] {1.0, -1.0}) {
      for (double longitude : new double[] {-180.0, -90.0, -3.0, 0.0, 45.0, 90.0, 179.0}) {
        plain.forward(side * 90.0, longitude, out, 0);
        assertEquals(0.0, out[0], 0.0, "easting of a pole");
        assertEquals(side * 10001965.729312722, out[1], 2e-9);
        assertEquals(0.0, turn(out[2], side * longitude), 1e-13);
      }
    }
    plain.reverse(0.0, 10001965.729312722, out, 0);
    assertEquals(90.0, out[0], 2e-14);
  }

  @Test
  void theSphereFollowsItsClosedFormulas() {
    // Snyder (1987), USGS PP 1395, eqs. 8-1, 8-3, 8-4 and 8-5
    TransverseMercator sphere = TransverseMercator.of(Ellipsoid.sphere(6371000.0), 1.0);
    for (double latitude = -88.0; latitude <= 88.0; latitude += 11.0) {
      for (double longitude = -80.0; longitude <= 80.0; longitude += 7.0) {
        double phi = Math.toRadians(latitude);
        double lambda = Math.toRadians(longitude);
        double b = Math.cos(phi) * Math.sin(lambda);
        sphere.forward(latitude, longitude, out, 0);
        double x = 0.5 * 6371000.0 * Math.log((1.0 + b) / (1.0 - b));
        double y = 6371000.0 * Math.atan2(Math.tan(phi), Math.cos(lambda));
        double convergence = Math.toDegrees(Math.atan(Math.tan(lambda) * Math.sin(phi)));
        double rounding = 2e-8; // the closed formulas are taken as they stand
        assertEquals(x, out[0], rounding);
        assertEquals(y, out[1], rounding);
        assertEquals(convergence, out[2], 1e-12);
        assertEquals(1.0 / Math.sqrt(1.0 - b * b), out[3], 1e-13);
        sphere.reverse(out[0], out[1], out, 0);
        assertEquals(latitude, out[0], 1e-12);
        assertEquals(longitude, out[1], 1e-12);
      }
    }
  }

  @Test
  void theOriginIsExact() {
    UTM.forward(0.0, 0.0, out, 0);
    assertPlusZero(out[0]);
    assertPlusZero(out[1]);
    assertPlusZero(out[2]);
    assertEquals(0.9996, out[3], PROMISED_SCALE);
    UTM.forward(-0.0, -0.0, out, 0);
    assertPlusZero(out[0]);
    assertPlusZero(out[1]);
    assertPlusZero(out[2]);
    UTM.reverse(-0.0, -0.0, out, 0);
    assertPlusZero(out[0]);
    assertPlusZero(out[1]);
    assertPlusZero(out[2]);
  }

  private static void assertPlusZero(double value) {
    assertEquals(Double.doubleToRawLongBits(0.0), Double.doubleToRawLongBits(value));
  }

  @Test
  void theInfinitePointsOfTheEquatorHaveNoAnswer() {
    UTM.forward(0.0, 90.0, out, 0);
    assertTrue(Double.isNaN(out[0]) || Math.abs(out[0]) > 2e8, "" + out[0]);
  }

  @Test
  void notANumberGoesThrough() {
    for (double[] in :
        new double[][] {{Double.NaN, 1.0}, {1.0, Double.NaN}, {90.000001, 0.0}, {-91.0, 3.0}}) {
      UTM.forward(in[0], in[1], out, 0);
      assertAllNaN();
    }
    UTM.reverse(Double.NaN, 1.0, out, 0);
    assertAllNaN();
    UTM.reverse(1.0, Double.NaN, out, 0);
    assertAllNaN();
  }

  private void assertAllNaN() {
    for (double value : out) {
      assertTrue(Double.isNaN(value), "" + value);
    }
  }

  @Test
  void onlyTheFourPlacesAreWritten() {
    double[] wide = {7.0, 0.0, 0.0, 0.0, 0.0, 7.0};
    UTM.forward(50.0, 1.0, wide, 1);
    UTM.reverse(wide[1], wide[2], wide, 1);
    assertEquals(50.0, wide[1], 1e-13);
    assertEquals(1.0, wide[2], 1e-13);
    assertEquals(7.0, wide[0]);
    assertEquals(7.0, wide[5]);
  }

  @Test
  void aScaleThatIsNoneIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class, () -> TransverseMercator.of(Ellipsoid.WGS84, 0.0));
    assertEquals(
        "central scale must be a finite number of metres on the map a metre above 0, but was 0.0",
        refusal.getMessage());
  }
}
