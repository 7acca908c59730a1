package org.ferryglide.nav.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChartScaleTest {
  private static final ChartScale CHART = ChartScale.mercator(75000.0, 50.0);

  /**
   * PROJ 9.1.1: proj -f %.6f +proj=merc +lat_ts=50 +ellps=WGS84, the two ends of each leg; length
   * on the plane in millimetres over 75 000.
   */
  @ParameterizedTest(name = "{0} {1} to {2} {3}")
  @CsvSource({
    "50.1, -5.5, 50.2, -5.4, -394326.644888, 4141790.169976, -387157.069526, 4152948.125566",
    "50.105, -5.535, 50.2, -5.43, -396835.996265, 4142347.511023, -389307.942135, 4152948.125566",
    "55, -6, 55, -5.5, -430174.521696, 4718878.498805, -394326.644888, 4718878.498805",
    "-50.1, 20, -49.9, 20.3, 1433915.072320, -4141790.169976, 1455423.798405, -4119544.313650",
    "0, 0, 0.1, 0.1, 0.0, 0.0, 7169.575362, 7121.583164",
    "49, -3, 51, -3, -215087.260848, 4020568.379782, -215087.260848, 4243070.052245",
    "50, -4, 53, 1, -286783.014464, 4130655.609692, 71695.753616, 4475433.635736"
  })
  void legsAreAsLongOnPaperAsTheProjectionMakesThem(
      double lat1,
      double lon1,
      double lat2,
      double lon2,
      double x1,
      double y1,
      double x2,
      double y2) {
    RhumbLeg leg = RhumbLeg.between(Position.ofDegrees(lat1, lon1), Position.ofDegrees(lat2, lon2));
    double paper = Math.hypot(x2 - x1, y2 - y1) * 1000.0 / 75000.0;
    double printedMicrometres = 2e-6 * 1000.0 / 75000.0;
    assertEquals(paper, CHART.millimetres(leg), printedMicrometres);
    assertEquals(paper, CHART.millimetres(leg.reverse()), printedMicrometres);
    // by the middle latitude: within a thousandth for a leg of three degrees
    double middle = 0.5 * (lat1 + lat2);
    assertEquals(paper, CHART.millimetres(leg.length(), middle), paper * 1e-3);
  }

  @Test
  void aLegMayCrossTheDateLine() {
    RhumbLeg across =
        RhumbLeg.between(Position.ofDegrees(60.0, 179.9), Position.ofDegrees(60.1, -179.9));
    RhumbLeg elsewhere =
        RhumbLeg.between(Position.ofDegrees(60.0, -0.1), Position.ofDegrees(60.1, 0.1));
    assertEquals(CHART.millimetres(elsewhere), CHART.millimetres(across), 1e-9);
  }

  @Test
  void thePrintedScaleHoldsAtItsLatitude() {
    assertEquals(75000.0, CHART.denominatorAt(50.0), 1e-10);
    assertEquals(75000.0, CHART.denominatorAt(-50.0), 1e-10);
    assertEquals(1000.0, CHART.millimetres(Distance.ofKilometres(75.0), 50.0), 1e-10);
    // one degree of longitude of a parallel takes the same paper at every latitude
    double sphere = 75000.0 * Math.cos(Math.toRadians(60.0)) / Math.cos(Math.toRadians(50.0));
    assertEquals(sphere, CHART.denominatorAt(60.0), sphere * 1e-3);
  }

  @Test
  void paperAndDistanceAreInverses() {
    for (ChartScale scale : new ChartScale[] {CHART, ChartScale.plan(50000.0)}) {
      for (double latitude = -80.0; latitude <= 80.0; latitude += 20.0) {
        double millimetres = scale.millimetres(Distance.ofNauticalMiles(5.2), latitude);
        assertEquals(5.2, scale.distance(millimetres, latitude).nauticalMiles(), 1e-14);
      }
    }
  }

  @Test
  void aPlanHasOneScaleThroughout() {
    ChartScale plan = ChartScale.plan(50000.0);
    assertEquals(50000.0, plan.denominatorAt(0.0));
    assertEquals(50000.0, plan.denominatorAt(90.0));
    assertEquals(20.0, plan.millimetres(Distance.ofKilometres(1.0), 57.0));
    RhumbLeg leg = RhumbLeg.between(Position.ofDegrees(50, -5), Position.ofDegrees(50.1, -5.1));
    assertEquals(leg.length().metres() / 50.0, plan.millimetres(leg), 1e-9);
  }

  @Test
  void equalScalesAreEqual() {
    assertEquals(CHART, ChartScale.mercator(75000.0, 50.0));
    assertEquals(CHART.hashCode(), ChartScale.mercator(75000.0, 50.0).hashCode());
    assertNotEquals(ChartScale.mercator(75000.0, 0.0), ChartScale.plan(75000.0));
    assertEquals("1:75000.0 at latitude 50.0°", CHART.toString());
    assertEquals("1:50000.0", ChartScale.plan(50000.0).toString());
  }

  @Test
  void whatDoesNotFitIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> ChartScale.mercator(0.0, 50.0));
    assertEquals(
        "denominator of a scale must be a finite number of metres on the ground a metre above 0,"
            + " but was 0.0",
        refusal.getMessage());
    refusal =
        assertThrows(IllegalArgumentException.class, () -> ChartScale.mercator(75000.0, 89.0));
    assertEquals(
        "latitude on a Mercator chart must be in [-85, 85] degrees, but was 89.0",
        refusal.getMessage());
    assertThrows(IllegalArgumentException.class, () -> CHART.denominatorAt(86.0));
    assertThrows(IllegalArgumentException.class, () -> ChartScale.plan(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> CHART.distance(Double.NaN, 50.0));
  }

  @Test
  void aMinuteOnAnotherEllipsoidIsAsLongWithinAPencilLine() {
    double stated = 11e-5;
    for (int lat = -90; lat <= 90; lat++) {
      double airy = Math.toRadians(Ellipsoid.AIRY_1830.meridianRadiusMetres(lat)) / 60.0;
      assertEquals(1.0, airy / ChartScale.metresPerMinuteOfLatitude(lat), stated);
      assertEquals(
          1.0,
          Ellipsoid.AIRY_1830.primeVerticalRadiusMetres(lat)
              / Ellipsoid.WGS84.primeVerticalRadiusMetres(lat),
          stated);
    }
  }

  /** The Mercator projection of a sphere, in the form with the tangent of half the colatitude. */
  @Test
  void aLegOfAnotherEllipsoidIsDrawnOnAChartOfIts() {
    double radius = 6_371_000.0;
    Position south = Position.ofDegrees(50, 0);
    Position north = Position.ofDegrees(51, 0);
    double stretched =
        Math.log(Math.tan(Math.toRadians(45 + 51 / 2.0)) / Math.tan(Math.toRadians(45 + 25)));
    double expected = radius * Math.cos(Math.toRadians(50)) * stretched * 1000 / 75000;
    RhumbLeg onSphere = RhumbLeg.between(Ellipsoid.sphere(radius), south, north);
    double nanometre = 1e-6;
    assertEquals(expected, ChartScale.mercator(75000, 50).millimetres(onSphere), nanometre);
    // a body longer than wide by next to nothing is next to a sphere
    RhumbLeg nearSphere = RhumbLeg.between(Ellipsoid.ofFlattening(radius, -1e-12), south, north);
    assertEquals(expected, ChartScale.mercator(75000, 50).millimetres(nearSphere), nanometre);
  }
}
