package org.ferryglide.nav.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.nav.geodesy.Ellipsoid;
import org.junit.jupiter.api.Test;

class DatumTest {
  @Test
  void partsAreKept() {
    HelmertShift shift = HelmertShift.fromWgs84(1, 2, 3, 0, 0, 0, 0);
    Datum datum = Datum.of("Old survey", Ellipsoid.AIRY_1830, shift, 7.5);
    assertEquals("Old survey", datum.name());
    assertEquals("Old survey", datum.toString());
    assertEquals(Ellipsoid.AIRY_1830, datum.ellipsoid());
    assertEquals(shift, datum.shift());
    assertEquals(7.5, datum.accuracyMetres());
    assertEquals(
        "Shifted between WGS84 and Old survey by seven parameters only: good to about 7.5 m."
            + " Surveyors use the national grid-shift file.",
        datum.notes().get(0).text());
    assertTrue(Datum.WGS84.notes().isEmpty());
  }

  @Test
  void equalDatumsAreEqual() {
    HelmertShift shift = HelmertShift.fromWgs84(1, 2, 3, 0, 0, 0, 0);
    Datum one = Datum.of("a", Ellipsoid.AIRY_1830, shift, 5.0);
    assertEquals(one, Datum.of("a", Ellipsoid.AIRY_1830, shift, 5.0));
    assertEquals(one.hashCode(), Datum.of("a", Ellipsoid.AIRY_1830, shift, 5.0).hashCode());
    assertNotEquals(one, Datum.of("b", Ellipsoid.AIRY_1830, shift, 5.0));
    assertNotEquals(one, Datum.of("a", Ellipsoid.WGS84, shift, 5.0));
    assertNotEquals(one, Datum.of("a", Ellipsoid.AIRY_1830, HelmertShift.NONE, 5.0));
  }

  @Test
  void whatDoesNotFitIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> Datum.of("", Ellipsoid.WGS84, HelmertShift.NONE, 0.0));
    assertEquals("name of a datum must not be empty", refusal.getMessage());
    refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> Datum.of("a", Ellipsoid.WGS84, HelmertShift.NONE, -1.0));
    assertEquals(
        "accuracy must be a finite number of metres, at least 0, but was -1.0",
        refusal.getMessage());
  }
}
