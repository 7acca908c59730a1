package org.ferryglide.nav.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.nav.geodesy.Ellipsoid;
import org.junit.jupiter.api.Test;

/** Its figures beside GeoConvert's are in {@link StandardGridsTest}. */
class PolarStereographicTest {
  private static final PolarStereographic NORTH = PolarStereographic.north(Ellipsoid.WGS84, 0.994);
  private static final PolarStereographic SOUTH = PolarStereographic.south(Ellipsoid.WGS84, 0.994);
  private final double[] out = new double[4];

  /** Snyder (1987), USGS PP 1395, eqs. 21-30 to 21-32: 2 R k tan(π/4 - φ/2) from the pole. */
  @Test
  void theSphereFollowsItsClosedFormula() {
    PolarStereographic sphere = PolarStereographic.north(Ellipsoid.sphere(6371000.0), 0.97);
    for (double latitude = 0.0; latitude <= 90.0; latitude += 7.5) {
      sphere.forward(latitude, 60.0, out, 0);
      double radius =
          2.0 * 6371000.0 * 0.97 * Math.tan(Math.PI / 4.0 - Math.toRadians(latitude) / 2.0);
      assertEquals(radius * Math.sin(Math.PI / 3.0), out[0], 1e-8);
      assertEquals(-radius * 0.5, out[1], 1e-8);
      assertEquals(0.97 * 2.0 / (1.0 + Math.sin(Math.toRadians(latitude))), out[3], 1e-14);
    }
  }

  @Test
  void thePoleIsTheOrigin() {
    NORTH.forward(90.0, 33.0, out, 0);
    assertEquals(0.0, out[0]);
    assertEquals(0.0, out[1]);
    assertEquals(33.0, out[2]);
    assertEquals(0.994, out[3], 2e-16);
    NORTH.reverse(0.0, -0.0, out, 0);
    assertEquals(90.0, out[0]);
    assertEquals(0.0, out[1]);
    SOUTH.reverse(-0.0, 0.0, out, 0);
    assertEquals(-90.0, out[0]);
    assertEquals(0.0, out[1]);
  }

  @Test
  void thereAndBackAllRound() {
    for (double latitude = 40.0; latitude < 90.0; latitude += 3.7) {
      for (double longitude = -180.0; longitude < 180.0; longitude += 11.3) {
        NORTH.forward(latitude, longitude, out, 0);
        double scale = out[3];
        NORTH.reverse(out[0], out[1], out, 0);
        double parallel = Math.cos(Math.toRadians(latitude));
        double turn = Math.IEEEremainder(out[1] - longitude, 360.0);
        assertEquals(0.0, (out[0] - latitude) * 111.7e3, 1e-8);
        assertEquals(0.0, turn * 111.7e3 * parallel, 1e-8);
        assertEquals(scale, out[3], 2e-15);
        assertEquals(0.0, Math.IEEEremainder(out[2] - longitude, 360.0), 1e-12);
      }
    }
  }

  @Test
  void northAndSouthAreMirrored() {
    double[] south = new double[4];
    for (double longitude = -180.0; longitude <= 180.0; longitude += 15.0) {
      NORTH.forward(83.0, longitude, out, 0);
      SOUTH.forward(-83.0, longitude, south, 0);
      assertEquals(out[0], south[0]);
      assertEquals(-out[1] + 0.0, south[1]);
      assertEquals(-out[2] + 0.0, south[2]);
      assertEquals(out[3], south[3]);
    }
  }

  @Test
  void notANumberGoesThroughAndTheFarPoleIsInfinite() {
    NORTH.forward(Double.NaN, 0.0, out, 0);
    assertTrue(Double.isNaN(out[0]) && Double.isNaN(out[1]) && Double.isNaN(out[3]));
    NORTH.forward(90.5, 0.0, out, 0);
    assertTrue(Double.isNaN(out[1]));
    NORTH.reverse(Double.NaN, 0.0, out, 0);
    assertTrue(Double.isNaN(out[0]) && Double.isNaN(out[1]));
    NORTH.forward(-90.0, 10.0, out, 0);
    assertTrue(Double.isNaN(out[1]) || Double.isInfinite(out[1]), "" + out[1]);
  }

  @Test
  void equalPlanesAreEqual() {
    PolarStereographic same = PolarStereographic.north(Ellipsoid.WGS84, 0.994);
    assertEquals(NORTH, same);
    assertEquals(NORTH.hashCode(), same.hashCode());
    assertNotEquals(NORTH, SOUTH);
    assertEquals("conformal cone of sine -1.0", SOUTH.toString());
  }

  @Test
  void aScaleThatIsNoneIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class, () -> PolarStereographic.south(Ellipsoid.WGS84, -1.0));
    assertEquals(
        "scale at the pole must be a finite number of metres on the map a metre above 0, but was"
            + " -1.0",
        refusal.getMessage());
  }
}
