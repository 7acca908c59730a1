package org.ferryglide.nav.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class DatumTest {
  @Test
  void partsAreKept() {
    HelmertShift shift = HelmertShift.fromWgs84(1, 2, 3, 0, 0, 0, 0);
    Datum datum = Datum.of("Old survey", Ellipsoid.AIRY_1830, shift, Distance.ofMetres(7.5));
    assertEquals("Old survey", datum.name());
    assertEquals("Old survey", datum.toString());
    assertEquals(Ellipsoid.AIRY_1830, datum.ellipsoid());
    assertEquals(shift, datum.shift());
    assertEquals(Distance.ofMetres(7.5), datum.accuracy());
    assertEquals(
        "Shifted between WGS84 and Old survey by seven parameters only: good to about 7.5 m."
            + " Surveyors use the national grid-shift file.",
        datum.notes().get(0).text());
    assertTrue(Datum.WGS84.notes().isEmpty());
  }

  @Test
  void equalDatumsAreEqual() {
    HelmertShift shift = HelmertShift.fromWgs84(1, 2, 3, 0, 0, 0, 0);
    Datum one = Datum.of("a", Ellipsoid.AIRY_1830, shift, Distance.ofMetres(5.0));
    assertEquals(one, Datum.of("a", Ellipsoid.AIRY_1830, shift, Distance.ofMetres(5.0)));
    assertEquals(
        one.hashCode(),
        Datum.of("a", Ellipsoid.AIRY_1830, shift, Distance.ofMetres(5.0)).hashCode());
    assertNotEquals(one, Datum.of("b", Ellipsoid.AIRY_1830, shift, Distance.ofMetres(5.0)));
    assertNotEquals(one, Datum.of("a", Ellipsoid.WGS84, shift, Distance.ofMetres(5.0)));
    assertNotEquals(
        one, Datum.of("a", Ellipsoid.AIRY_1830, HelmertShift.NONE, Distance.ofMetres(5.0)));
  }

  @Test
  void whatDoesNotFitIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> Datum.of("", Ellipsoid.WGS84, HelmertShift.NONE, Distance.ofMetres(0.0)));
    assertEquals("name of a datum must not be empty", refusal.getMessage());
    refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> Datum.of("a", Ellipsoid.WGS84, HelmertShift.NONE, Distance.ofMetres(-1.0)));
    assertEquals(
        "accuracy must be a finite number of metres, at least 0, but was -1.0",
        refusal.getMessage());
  }

  @Test
  void anAreaMayCrossTheDateLine() {
    Datum islands =
        Datum.of("Islands", Ellipsoid.GRS80, HelmertShift.NONE, Distance.ofMetres(1.0))
            .within(Position.ofDegrees(-20, 175), Position.ofDegrees(-10, -175));
    assertTrue(islands.covers(Position.ofDegrees(-15, 179)));
    assertTrue(islands.covers(Position.ofDegrees(-15, -176)));
    assertFalse(islands.covers(Position.ofDegrees(-15, 170)));
    assertFalse(islands.covers(Position.ofDegrees(-15, 0)));
    assertFalse(islands.covers(Position.ofDegrees(-21, 179)));
    assertTrue(Datum.WGS84.covers(Position.ofDegrees(90, -180)));
    assertTrue(Datum.WGS84.covers(Position.ofDegrees(-90, Math.nextDown(180.0))));
    assertNotEquals(
        islands, Datum.of("Islands", Ellipsoid.GRS80, HelmertShift.NONE, Distance.ofMetres(1.0)));
    assertEquals(
        "the south-west corner must not lie north of the other, but they were 1.0°N 0.0°E and"
            + " 0.0°N 1.0°E",
        assertThrows(
                IllegalArgumentException.class,
                () -> islands.within(Position.ofDegrees(1, 0), Position.ofDegrees(0, 1)))
            .getMessage());
  }
}
