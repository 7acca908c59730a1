package org.ferryglide.nav.grid;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Rows;
import org.junit.jupiter.api.Test;

class LambertConicTest {
  private static final double PRINTED_MICROMETRE = 1e-6;
  private static final double THERE_AND_BACK_METRES = 1e-8;
  private final double[] out = new double[4];

  private static MapGrid grid(String code) {
    Datum datum = Datum.of("GRS80", Ellipsoid.GRS80, HelmertShift.NONE, ofMetres(0.0));
    return switch (code) {
      case "2154" ->
          MapGrid.lambertConic(code, datum, 49, 44, 46.5, 3, ofMetres(700000), ofMetres(6600000));
      case "3057" ->
          MapGrid.lambertConic(
              code, datum, 64.25, 65.75, 65, -19, ofMetres(500000), ofMetres(500000));
      default ->
          MapGrid.lambertConic(
              code, datum, -36, -38, -37, 145, ofMetres(2500000), ofMetres(2500000));
    };
  }

  @Test
  void conicGridsAgreeWithTheTable() {
    for (String[] row : Rows.of(LambertConicTest.class, "conic-grids.csv")) {
      String where = String.join(",", row);
      double latitude = Rows.number(row, 1);
      double longitude = Rows.number(row, 2);
      MapGrid grid = grid(row[0]);
      GridPoint point = grid.at(Position.ofDegrees(latitude, longitude));
      assertEquals(Rows.number(row, 3), point.easting().metres(), PRINTED_MICROMETRE, where);
      assertEquals(Rows.number(row, 4), point.northing().metres(), PRINTED_MICROMETRE, where);
      assertEquals(Rows.number(row, 5), point.scale(), 5e-6, where);
      Position back = grid.at(point.easting(), point.northing()).position();
      assertEquals(0.0, (back.latitudeDegrees() - latitude) * 111.7e3, THERE_AND_BACK_METRES);
      assertEquals(0.0, (back.longitudeDegrees() - longitude) * 105e3, THERE_AND_BACK_METRES);
      grid.reverse(point.easting().metres(), point.northing().metres(), out, 0);
      assertEquals(point.convergence().degreesEast(), out[2], 1e-12);
      assertEquals(point.scale(), out[3], 1e-14);
    }
  }

  /**
   * EPSG coordinate operation method 9802, its worked example, Texas South Central
   * (https://epsg.io/9802-method, revision of 2018-08-29).
   */
  @Test
  void theProducersAssociationsExampleIsMet() {
    double footMetres = 1200.0 / 3937.0;
    Datum datum =
        Datum.of("NAD27", Ellipsoid.ofAxes(6378206.4, 6356583.8), HelmertShift.NONE, ofMetres(0.0));
    MapGrid texas =
        MapGrid.lambertConic(
            "Texas",
            datum,
            28.0 + 23.0 / 60.0,
            30.0 + 17.0 / 60.0,
            27.0 + 50.0 / 60.0,
            -99.0,
            ofMetres(2_000_000.0 * footMetres),
            Distance.ZERO);
    GridPoint point = texas.at(Position.ofDegrees(28.5, -96.0));
    double halfAPrintedHundredth = 0.005;
    assertEquals(2963503.91, point.easting().metres() / footMetres, halfAPrintedHundredth);
    assertEquals(254759.80, point.northing().metres() / footMetres, halfAPrintedHundredth);
  }

  @Test
  void scaleIsOneOnBothParallels() {
    LambertConic cone = LambertConic.of(Ellipsoid.GRS80, 49.0, 44.0);
    for (double longitude : new double[] {-60.0, 0.0, 3.0, 179.0}) {
      cone.forward(49.0, longitude, out, 0);
      assertEquals(1.0, out[3], 1e-14);
      cone.forward(44.0, longitude, out, 0);
      assertEquals(1.0, out[3], 1e-14);
      cone.forward(46.5, longitude, out, 0);
      assertTrue(out[3] < 1.0);
    }
    LambertConic touching = LambertConic.withScale(Ellipsoid.GRS80, 46.5, 0.9990);
    touching.forward(46.5, 4.0, out, 0);
    assertEquals(0.9990, out[3], 1e-14);
    assertEquals(4.0 * Math.sin(Math.toRadians(46.5)), out[2], 1e-14);
  }

  @Test
  void convergenceAndScaleAreThoseOfSmallSteps() {
    MapGrid grid = grid("2154");
    double[] south = new double[4];
    for (double latitude = 40.0; latitude < 55.0; latitude += 2.3) {
      for (double longitude = -12.0; longitude < 12.0; longitude += 3.1) {
        grid.forward(latitude - 1e-5, longitude, south, 0);
        grid.forward(latitude + 1e-5, longitude, out, 0);
        double east = out[0] - south[0];
        double north = out[1] - south[1];
        double ground = 2.0 * Math.toRadians(1e-5) * Ellipsoid.GRS80.meridianRadiusMetres(latitude);
        grid.forward(latitude, longitude, out, 0);
        double stepError = 2e-8; // 10 nm twice over 2 m
        assertEquals(Math.toRadians(out[2]), -Math.atan2(east, north), stepError);
        assertEquals(out[3], Math.hypot(east, north) / ground, stepError);
      }
    }
  }

  @Test
  void aDatumShiftTravelsWithTheCone() {
    MapGrid shifted =
        MapGrid.lambertConic(
            "Shifted", Datum.OSGB36, 49.0, 44.0, 46.5, 3.0, Distance.ZERO, Distance.ZERO);
    double[] south = new double[4];
    shifted.forward(50.0 - 1e-5, -5.0, south, 0);
    shifted.forward(50.0 + 1e-5, -5.0, out, 0);
    double bearing = Math.toDegrees(Math.atan2(out[0] - south[0], out[1] - south[1]));
    shifted.forward(50.0, -5.0, out, 0);
    assertEquals(-bearing, out[2], 1e-6);
    shifted.reverse(out[0], out[1], out, 0);
    assertEquals(50.0, out[0], 2e-13);
    assertEquals(-5.0, out[1], 2e-13);
  }

  @Test
  void theApexIsAPole() {
    LambertConic cone = LambertConic.of(Ellipsoid.GRS80, 49.0, 44.0);
    cone.forward(90.0, 12.0, out, 0);
    assertEquals(0.0, out[0]);
    assertEquals(0.0, out[1]);
    assertEquals(Double.POSITIVE_INFINITY, out[3]);
    cone.reverse(0.0, 0.0, out, 0);
    assertEquals(90.0, out[0], 2e-14);
    assertEquals(0.0, out[1]);
    cone.forward(-90.0, 12.0, out, 0);
    assertTrue(Double.isInfinite(out[1]) || Double.isNaN(out[1]));
  }

  @Test
  void northAndSouthAreMirrored() {
    double[] south = new double[4];
    LambertConic.of(Ellipsoid.GRS80, 36.0, 38.0).forward(40.0, 7.0, out, 0);
    LambertConic.of(Ellipsoid.GRS80, -36.0, -38.0).forward(-40.0, 7.0, south, 0);
    assertEquals(out[0], south[0]);
    assertEquals(-out[1], south[1]);
    assertEquals(-out[2], south[2]);
    assertEquals(out[3], south[3]);
  }

  @Test
  void notANumberGoesThrough() {
    LambertConic cone = LambertConic.of(Ellipsoid.GRS80, 49.0, 44.0);
    cone.forward(Double.NaN, 1.0, out, 0);
    assertTrue(Double.isNaN(out[0]) && Double.isNaN(out[1]) && Double.isNaN(out[3]));
    cone.forward(91.0, 1.0, out, 0);
    assertTrue(Double.isNaN(out[0]));
    cone.reverse(Double.NaN, 1.0, out, 0);
    assertTrue(Double.isNaN(out[0]) && Double.isNaN(out[1]));
  }

  /** The cone of one parallel grows into the polar plane as the parallel nears the pole. */
  @Test
  void aConeOfOneParallelAtThePoleIsThePolarPlane() {
    double[] plane = new double[4];
    LambertConic.withScale(Ellipsoid.WGS84, 89.0, 0.994).forward(85.0, 40.0, out, 0);
    PolarStereographic.north(Ellipsoid.WGS84, 0.994).forward(85.0, 40.0, plane, 0);
    double oneMinusTheSine = 1.0 - Math.sin(Math.toRadians(89.0));
    assertEquals(plane[2], out[2], 40.0 * oneMinusTheSine * 1.001);
    assertEquals(plane[3], out[3], 1e-3);
    assertNotEquals(plane[3], out[3]);
  }

  @Test
  void equalConesAreEqual() {
    LambertConic cone = LambertConic.of(Ellipsoid.GRS80, 49.0, 44.0);
    assertEquals(cone, LambertConic.of(Ellipsoid.GRS80, 49.0, 44.0));
    assertEquals(cone.hashCode(), LambertConic.of(Ellipsoid.GRS80, 49.0, 44.0).hashCode());
    assertNotEquals(cone, LambertConic.of(Ellipsoid.WGS84, 49.0, 44.0));
    assertEquals(grid("2154"), grid("2154"));
  }

  @Test
  void whatDoesNotFitIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class, () -> LambertConic.of(Ellipsoid.GRS80, 10.0, -9.5));
    assertEquals(
        "the mean of the parallels must be at least 1 degree from the equator, but they were 10.0"
            + " and -9.5",
        refusal.getMessage());
    refusal =
        assertThrows(
            IllegalArgumentException.class, () -> LambertConic.of(Ellipsoid.GRS80, 90.0, 44.0));
    assertEquals(
        "latitude of a parallel must be in [-89, 89] degrees, but was 90.0", refusal.getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> LambertConic.withScale(Ellipsoid.GRS80, 46.5, Double.NaN));
    refusal =
        assertThrows(
            IllegalArgumentException.class, () -> grid("2154").at(Position.ofDegrees(-20, 3)));
    assertTrue(
        String.valueOf(refusal.getMessage())
            .startsWith("a point of 2154 must lie within 3900 km of its parallels, but was"),
        refusal.getMessage());
  }
}
