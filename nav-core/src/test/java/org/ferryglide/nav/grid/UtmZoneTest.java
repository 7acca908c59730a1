package org.ferryglide.nav.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.ferryglide.nav.note.TextFormatException;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UtmZoneTest {
  /** The zones of NGA.SIG.0012 (2014), with both exceptions. */
  @ParameterizedTest(name = "{0}, {1} lies in zone {2}")
  @CsvSource({
    "0, -180, 1", "0, 180, 1", "0, 179.999999, 60", "0, -174.000001, 1", "0, -174, 2",
    "0, -1e-17, 30", "0, -0.0, 31", "0, 0, 31", "0, 5.999999, 31", "0, 6, 32",
    "55.999999, 3, 31", "56, 2.999999, 31", "56, 3, 32", "63.999999, 3, 32", "64, 3, 31",
    "60, 11.999999, 32", "60, 12, 33", "71.999999, 7, 32", "72, 7, 31", "72, -1e-17, 30",
    "72, 0, 31", "72, 8.999999, 31", "72, 9, 33", "83.999999, 20.999999, 33", "75, 21, 35",
    "75, 32.999999, 35", "75, 33, 37", "75, 41.999999, 37", "75, 42, 38", "84, 7, 0",
    "-80, 7, 32", "-80.000001, 7, 0", "-60, 5, 31", "NaN, 0, 0", "0, NaN, 0"
  })
  void zonesAreThoseOfTheStandard(double latitude, double longitude, int zone) {
    assertEquals(zone, UtmZone.number(latitude, longitude));
  }

  @Test
  void theZoneOfAPlaceKnowsItsHalf() {
    assertEquals("30N", UtmZone.containing(Position.ofDegrees(50.1, -5.5)).toString());
    assertEquals("60S", UtmZone.containing(Position.ofDegrees(-1e-9, 179.9)).toString());
    assertEquals("UTM 60S", MapGrid.utm(UtmZone.of(60, Hemisphere.SOUTH)).name());
    assertEquals(-3.0, UtmZone.of(30, Hemisphere.NORTH).centralMeridianDegrees());
    assertEquals(177.0, UtmZone.of(60, Hemisphere.NORTH).centralMeridianDegrees());
  }

  @Test
  void aZoneCanBeForced() {
    Position place = Position.ofDegrees(50.105, -5.535);
    GridPoint own = MapGrid.utm(UtmZone.containing(place)).at(place);
    GridPoint neighbour = MapGrid.utm(UtmZone.of(29, Hemisphere.NORTH)).at(place);
    assertEquals(318730.385, own.easting().metres(), 0.001);
    // zone 29, from GeoConvert 2.1.2: echo 50.105 -5.535 | GeoConvert -u -z 29 -p 3
    assertEquals(747758.467, neighbour.easting().metres(), 0.001);
    assertEquals(5556056.172, neighbour.northing().metres(), 0.001);
  }

  @Test
  void whereThereIsNoZoneIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> UtmZone.containing(Position.ofDegrees(84.0, 0.0)));
    assertEquals(
        "latitude must be in [-80, 84) degrees to lie in a UTM zone, but was 84.0",
        refusal.getMessage());
    refusal = assertThrows(IllegalArgumentException.class, () -> UtmZone.of(61, Hemisphere.NORTH));
    assertEquals("UTM zone must be in [1, 60], but was 61", refusal.getMessage());
    assertThrows(IllegalArgumentException.class, () -> UtmZone.of(0, Hemisphere.NORTH));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "30N, 30N",
    "30 n, 30N",
    "UTM 30N, 30N",
    "utm 30N, 30N",
    "UTM1S, 1S",
    "'  60 S', 60S",
    "07N, 7N"
  })
  void textIsRead(String text, String zone) {
    assertEquals(zone, UtmZone.parse(text).toString());
  }

  @ParameterizedTest(name = "[{0}]")
  @CsvSource({
    "'', 0, 'a UTM zone starts with its number, 1 to 60'",
    "N30, 0, 'a UTM zone starts with its number, 1 to 60'",
    "0N, 0, 'a UTM zone starts with its number, 1 to 60'",
    "UTM 61N, 4, 'a UTM zone starts with its number, 1 to 60'",
    "300N, 2, 'N (north) or S (south) must follow the zone'",
    "30U, 2, 'N (north) or S (south) must follow the zone'",
    "30, 2, 'N (north) or S (south) must follow the zone'",
    "30NX, 3, 'nothing may follow N or S'"
  })
  void otherTextIsRefusedAtItsCharacter(String text, int index, String reason) {
    TextFormatException refusal =
        assertThrows(TextFormatException.class, () -> UtmZone.parse(text));
    String message = String.valueOf(refusal.getMessage());
    assertEquals(reason, message.substring(0, message.indexOf(": at ")));
    assertEquals(index, refusal.index());
  }

  @Test
  void longitudesWrapAroundTheWorld() {
    for (double lon = -179.5; lon < 180.0; lon += 7.25) {
      for (double lat : new double[] {60.0, 75.0, 10.0, -50.0}) {
        int zone = UtmZone.number(lat, lon);
        assertEquals(zone, UtmZone.number(lat, lon + 360.0));
        assertEquals(zone, UtmZone.number(lat, lon - 720.0));
      }
    }
    assertEquals(32, UtmZone.number(60.0, 365.0));
    assertEquals(1, UtmZone.number(10.0, 180.0));
    assertEquals(0, UtmZone.number(10.0, Double.POSITIVE_INFINITY));
    assertEquals(0, UtmZone.number(10.0, Double.NEGATIVE_INFINITY));
  }
}
