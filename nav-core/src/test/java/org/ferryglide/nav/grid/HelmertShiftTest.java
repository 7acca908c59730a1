package org.ferryglide.nav.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class HelmertShiftTest {
  /**
   * Half a printed millimetre, and a tenth: the guide leaves the stretch off its rotations, where
   * EPSG method 9606 has it.
   */
  private static final double PRINTED_MILLIMETRE = 0.0006;

  /** A coordinate of 6400 km is held to 1 nm. */
  private static final double THERE_AND_BACK_METRES = 3e-9;

  private static final HelmertShift OSGB36 = Datum.OSGB36.shift();
  private final double[] xyz = new double[3];

  /** Ordnance Survey, A guide to coordinate systems in Great Britain, worked example. */
  @Test
  void theOrdnanceSurveysExampleIsMet() {
    OSGB36.fromWgs84(3790644.900, -110149.210, 5111482.970, xyz, 0);
    assertEquals(3790269.549, xyz[0], PRINTED_MILLIMETRE);
    assertEquals(-110038.064, xyz[1], PRINTED_MILLIMETRE);
    assertEquals(5111050.261, xyz[2], PRINTED_MILLIMETRE);
  }

  /** The example of an earlier edition of that guide, as public test suites repeat it. */
  @Test
  void theEarlierExampleIsMet() {
    OSGB36.fromWgs84(3909833.018, -147097.138, 5020322.478, xyz, 0);
    assertEquals(3909460.068, xyz[0], PRINTED_MILLIMETRE);
    assertEquals(-146987.302, xyz[1], PRINTED_MILLIMETRE);
    assertEquals(5019888.070, xyz[2], PRINTED_MILLIMETRE);
  }

  @Test
  void theWayBackIsTheTrueInverse() {
    for (HelmertShift shift : new HelmertShift[] {OSGB36, Datum.TM75.shift()}) {
      shift.fromWgs84(3790644.900, -110149.210, 5111482.970, xyz, 0);
      shift.toWgs84(xyz[0], xyz[1], xyz[2], xyz, 0);
      assertEquals(3790644.900, xyz[0], THERE_AND_BACK_METRES);
      assertEquals(-110149.210, xyz[1], THERE_AND_BACK_METRES);
      assertEquals(5111482.970, xyz[2], THERE_AND_BACK_METRES);
    }
  }

  @Test
  void turningTheSignsInsteadLeavesMillimetres() {
    HelmertShift turned =
        HelmertShift.toWgs84(446.448, -125.157, 542.060, 0.1502, 0.2470, 0.8421, -20.4894);
    OSGB36.fromWgs84(3790644.900, -110149.210, 5111482.970, xyz, 0);
    turned.toWgs84(xyz[0], xyz[1], xyz[2], xyz, 0);
    double off =
        Math.sqrt(
            Math.pow(xyz[0] - 3790644.900, 2)
                + Math.pow(xyz[1] + 110149.210, 2)
                + Math.pow(xyz[2] - 5111482.970, 2));
    assertTrue(off > 0.001 && off < 0.03, "" + off);
  }

  @Test
  void bothDirectionsOfPublicationGiveOneShift() {
    HelmertShift there = HelmertShift.fromWgs84(100.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
    HelmertShift back = HelmertShift.toWgs84(-100.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
    there.fromWgs84(6378137.0, 1.0, 2.0, xyz, 0);
    assertEquals(6378237.0, xyz[0]);
    back.fromWgs84(6378137.0, 1.0, 2.0, xyz, 0);
    assertEquals(6378237.0, xyz[0]);
    assertEquals(1.0, xyz[1]);
    assertEquals(2.0, xyz[2]);
  }

  @Test
  void aPositiveRotationTurnsThePointAnticlockwise() {
    HelmertShift aboutTheAxis = HelmertShift.fromWgs84(0.0, 0.0, 0.0, 0.0, 0.0, 1.0, 0.0);
    aboutTheAxis.fromWgs84(6378137.0, 0.0, 0.0, xyz, 0);
    assertEquals(30.92, xyz[1], 0.005, "a second of arc of the equator, eastward");
  }

  @Test
  void nothingIsNothing() {
    assertTrue(HelmertShift.NONE.isNone());
    assertFalse(OSGB36.isNone());
    assertTrue(HelmertShift.toWgs84(-0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0).isNone());
  }

  @Test
  void equalParametersAreEqualShifts() {
    HelmertShift same =
        HelmertShift.fromWgs84(-446.448, 125.157, -542.060, -0.1502, -0.2470, -0.8421, 20.4894);
    assertEquals(OSGB36, same);
    assertEquals(OSGB36.hashCode(), same.hashCode());
    assertNotEquals(
        HelmertShift.fromWgs84(1, 0, 0, 0, 0, 0, 0), HelmertShift.toWgs84(1, 0, 0, 0, 0, 0, 0));
    assertEquals(
        "from WGS84 [-446.448, 125.157, -542.06, -0.1502, -0.247, -0.8421, 20.4894]",
        OSGB36.toString());
  }

  @Test
  void whatCannotBeMeantIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> HelmertShift.fromWgs84(0, 0, 0, 0, 0, Double.NaN, 0));
    assertEquals(
        "rotation must be in [-3600, 3600] seconds of arc, but was NaN", refusal.getMessage());
    refusal =
        assertThrows(
            IllegalArgumentException.class, () -> HelmertShift.toWgs84(0, 0, 0, 0, 0, 0, 1e5));
    assertEquals(
        "stretch must be in [-10000, 10000] parts per million, but was 100000.0",
        refusal.getMessage());
    refusal =
        assertThrows(
            IllegalArgumentException.class, () -> HelmertShift.toWgs84(2e6, 0, 0, 0, 0, 0, 0));
    assertEquals(
        "shift must be in [-1000000, 1000000] metres, but was 2000000.0", refusal.getMessage());
  }

  @Test
  void notANumberGoesThrough() {
    OSGB36.fromWgs84(Double.NaN, 0.0, 0.0, xyz, 0);
    assertTrue(Double.isNaN(xyz[0]));
  }
}
