package org.ferryglide.nav.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.ferryglide.nav.note.TextFormatException;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Rows;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MgrsTest {
  @Test
  void referencesOfEveryPrecisionAgreeWithTheTable() {
    for (String[] row : Rows.of(MgrsTest.class, "universal-grids.csv")) {
      Position place = Position.ofDegrees(Rows.number(row, 0), Rows.number(row, 1));
      for (GridPrecision precision : GridPrecision.values()) {
        String expected = row[7 + precision.figures() / 2];
        assertEquals(expected, Mgrs.reference(place, precision));
        GridSquare square = Mgrs.parse(expected);
        assertEquals(precision, square.precision());
        assertEquals(StandardGridsTest.gridName(row[2]), square.grid().name());
        GridPoint point = square.grid().at(place);
        double east = point.easting().metres() - square.southWestCorner().easting().metres();
        double north = point.northing().metres() - square.southWestCorner().northing().metres();
        assertTrue(east >= -1e-7 && east < precision.sideMetres(), expected + " " + east);
        assertTrue(north >= -1e-7 && north <= precision.sideMetres(), expected + " " + north);
      }
    }
  }

  /** GeographicLib 2.1.2, manual page of GeoConvert; its 1 mm reference cut to the metre. */
  @Test
  void publishedExamplesAreMet() {
    assertEquals(
        "38SMB4484", Mgrs.reference(Position.ofDegrees(33.3, 44.4), GridPrecision.KILOMETRE));
    MapGrid zone = MapGrid.utm(UtmZone.of(38, Hemisphere.NORTH));
    Position place = zone.atMetres(444140.6, 3684706.3).position();
    assertEquals("38SMB4414084706", Mgrs.reference(place, GridPrecision.METRE));
    place = zone.atMetres(500000.0, 63.811).position();
    assertEquals("38NNF0000000063", Mgrs.reference(place, GridPrecision.METRE));
    place = StandardGrids.UPS_SOUTH.atMetres(2746000.0, 1515000.0).position();
    assertEquals("BKH", Mgrs.reference(place, GridPrecision.HUNDRED_KILOMETRES));
    assertEquals("BKH41", Mgrs.reference(place, GridPrecision.TEN_KILOMETRES));
    Position centre = Mgrs.parse("38SMB").centre().position();
    double halfATenthOfASecond = 0.05 / 3600.0;
    assertEquals(32 + 59 / 60.0 + 14.1 / 3600.0, centre.latitudeDegrees(), halfATenthOfASecond);
    assertEquals(44 + 27 / 60.0 + 53.4 / 3600.0, centre.longitudeDegrees(), halfATenthOfASecond);
  }

  @Test
  void figuresAreTruncatedNotRounded() {
    MapGrid grid = MapGrid.utm(UtmZone.of(30, Hemisphere.NORTH));
    Position place = grid.atMetres(399999.9, 5599999.9).position();
    assertEquals("30UUA9999999999", Mgrs.reference(place, GridPrecision.METRE));
    assertEquals("30UUA99999999", Mgrs.reference(place, GridPrecision.TEN_METRES));
    assertEquals("30UUA99", Mgrs.reference(place, GridPrecision.TEN_KILOMETRES));
    assertEquals("30UUA", Mgrs.reference(place, GridPrecision.HUNDRED_KILOMETRES));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "38SMB4484, 38SMB4484",
    "38S MB 44 84, 38SMB4484",
    "38smb4484, 38SMB4484",
    "' 38 S M B 44 84 ', 38SMB4484",
    "5RMK 05, 05RMK05",
    "05RMK, 05RMK",
    "bkh41, BKH41",
    "B KH 4 1, BKH41",
    "38SMB 44140 84706, 38SMB4414084706"
  })
  void textIsReadInAnyOfItsForms(String text, String plain) {
    GridSquare square = Mgrs.parse(text);
    assertEquals(Mgrs.parse(plain), square);
    assertEquals(plain, Mgrs.reference(square.centre().position(), square.precision()));
  }

  @ParameterizedTest(name = "[{0}]")
  @CsvSource(
      delimiter = ';',
      value = {
        "''; 0; a reference starts with its zone, 1 to 60, or with A, B, Y or Z",
        "0SMB44; 0; a reference starts with its zone, 1 to 60, or with A, B, Y or Z",
        "61SMB44; 0; a reference starts with its zone, 1 to 60, or with A, B, Y or Z",
        "SMB44; 0; a reference starts with its zone, 1 to 60, or with A, B, Y or Z",
        "38; 2; the latitude band, C to X without I and O, must follow",
        "38IMB; 2; the latitude band, C to X without I and O, must follow",
        "381MB; 2; the latitude band, C to X without I and O, must follow",
        "38S; 3; the column letters of zone 38 are JKLMNPQR",
        "38SAB44; 3; the column letters of zone 38 are JKLMNPQR",
        "38SM; 4; row letters are A to V without I and O",
        "38SMW44; 4; row letters are A to V without I and O",
        "38SMB4; 6; easting and northing must have the same number of figures",
        "38SMB444 44; 11; easting and northing must have the same number of figures",
        "38SMB 4 4 4 4; 10; figures come in one group or in two",
        "38SMB441408470612; 15; at most ten figures may follow the letters",
        "38SMB44X4; 7; only figures may follow the letters",
        "38SMB-4484; 5; only figures may follow the letters",
        "38SML44; 4; row L does not occur in column M of zone 38 and band S",
        "AAA; 1; the column letters of A are JKLPQRSTUXYZ",
        "ZKA; 1; the column letters of Z are ABCFGHJ",
        "ZAQ; 2; the row letters of Z are ABCDEFGHJKLMNP",
      })
  void otherTextIsRefusedAtItsCharacter(String text, int index, String reason) {
    TextFormatException refusal = assertThrows(TextFormatException.class, () -> Mgrs.parse(text));
    String message = String.valueOf(refusal.getMessage());
    assertEquals(reason, message.substring(0, message.indexOf(": at ")));
    assertEquals(index, refusal.index());
  }

  /** The rows of one letter lie 2000 km apart; here all of column M of zone 38 in the north. */
  @Test
  void theBandSaysWhichRowIsMeant() {
    MapGrid grid = MapGrid.utm(UtmZone.of(38, Hemisphere.NORTH));
    assertEquals(3_600_000.0, Mgrs.parse("38SMB").southWestCorner().northing().metres());
    assertEquals(1_600_000.0, Mgrs.parse("38PMB").southWestCorner().northing().metres());
    assertEquals(5_600_000.0, Mgrs.parse("38UMB").southWestCorner().northing().metres());
    assertEquals(7_600_000.0, Mgrs.parse("38WMB").southWestCorner().northing().metres());
    assertEquals(grid, Mgrs.parse("38WMB").grid());
    assertEquals(7_600_000.0, Mgrs.parse("38KMB").southWestCorner().northing().metres());
    assertEquals("UTM 38S", Mgrs.parse("38KMB").grid().name());
  }

  /** A square cut by a parallel between two bands is read with the letter of either. */
  @Test
  void aSquareCutByABandIsReadWithEitherLetter() {
    // 48° N on the middle of zone 31 has northing 5 316 300: the row from 5300 km is cut
    GridSquare below = Mgrs.parse("31TEP0010");
    GridSquare above = Mgrs.parse("31UEP0020");
    assertEquals(5_310_000.0, below.southWestCorner().northing().metres());
    assertEquals(5_320_000.0, above.southWestCorner().northing().metres());
    assertEquals(List.of(), below.notes());
    assertEquals(List.of(), above.notes());
    GridSquare wrong = Mgrs.parse("31TEP0020");
    assertEquals(above, wrong);
    assertEquals("mgrs.beyond-zone", wrong.notes().get(0).code());
    assertEquals(
        "The square lies beyond zone 31, band T: check the letters of the reference.",
        wrong.notes().get(0).text());
  }

  /** At 60° N the meridian of 12° E, edge of zones 32 and 33, has easting 332.7 km in zone 33. */
  @Test
  void aSquareCutByAZoneSaysSo() {
    GridSquare whole = Mgrs.parse("33VUG");
    // its western part lies west of 12° E, where the reference would be of zone 32
    Position corner = whole.southWestCorner().position();
    assertEquals(32, UtmZone.number(corner.latitudeDegrees(), corner.longitudeDegrees()));
    assertEquals(List.of(), whole.notes(), "the centre lies within");
    GridSquare cut = Mgrs.parse("33VUG2050");
    assertEquals("mgrs.beyond-zone", cut.notes().get(0).code());
    GridSquare tenKilometres = Mgrs.parse("33VUG34");
    assertEquals(List.of(), tenKilometres.notes());
  }

  /**
   * The corner of zone 23 and band E lies in the top of square LJ, whose four corners, sides'
   * middles and centre all lie beyond: no reason to doubt a reference made from a place.
   */
  @Test
  void aSquareThatHoldsOnlyACornerOfItsZoneIsCutNotBeyond() {
    Position place = Position.ofDegrees(-64.0, -47.999999999);
    assertEquals("23ELJ", Mgrs.reference(place, GridPrecision.HUNDRED_KILOMETRES));
    assertEquals("mgrs.cut-by-zone", Mgrs.parse("23ELJ").notes().get(0).code());
    // the parallel of 64° N reaches farthest south in the middle of zone 25
    assertEquals("mgrs.cut-by-zone", Mgrs.parse("25VFM").notes().get(0).code());
  }

  @Test
  void theMapAtHandMayBeTheNeighbours() {
    Position place = Position.ofDegrees(50.105, -5.535);
    // echo 50.105 -5.535 | GeoConvert -m -z 29 -p -1, version 2.1.2
    assertEquals(
        "29UQR47755605",
        Mgrs.reference(UtmZone.of(29, Hemisphere.NORTH), place, GridPrecision.TEN_METRES));
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> Mgrs.reference(UtmZone.of(28, Hemisphere.NORTH), place, GridPrecision.METRE));
    assertTrue(
        String.valueOf(refusal.getMessage())
            .startsWith("position must lie within 400 km of the middle of zone 28N, but was"));
    refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> Mgrs.reference(UtmZone.of(30, Hemisphere.SOUTH), place, GridPrecision.METRE));
    assertTrue(
        String.valueOf(refusal.getMessage())
            .startsWith("position must lie in the half of zone 30S, but was"));
  }

  @Test
  void theEquatorIsNorthern() {
    assertEquals(
        "31NEA0000000000", Mgrs.reference(Position.ofDegrees(0.0, 3.0), GridPrecision.METRE));
    assertEquals(
        "31MEV0000099999", Mgrs.reference(Position.ofDegrees(-1e-12, 3.0), GridPrecision.METRE));
    assertEquals(
        "31MEV",
        Mgrs.reference(Position.ofDegrees(-1e-300, 3.0), GridPrecision.HUNDRED_KILOMETRES));
  }

  @Test
  void thePolesHaveReferences() {
    assertEquals("ZAH0000000000", Mgrs.reference(Position.ofDegrees(90, 77), GridPrecision.METRE));
    assertEquals("BAN0000000000", Mgrs.reference(Position.ofDegrees(-90, 9), GridPrecision.METRE));
    assertEquals("mgrs.beyond-zone", Mgrs.parse("ZAA00").notes().get(1).code());
  }

  /** A square holds every place that it names, to the rounding of a position. */
  @Test
  void aPlaceLiesInTheSquareOfItsReference() {
    Position edge = Position.ofDegrees(49.62201246715373, 5.658423738435289);
    Random random = new Random(20261126);
    for (int i = 0; i < 3000; i++) {
      Position place =
          i == 0
              ? edge
              : UtmZone.of(1 + random.nextInt(60), Hemisphere.NORTH)
                  .grid()
                  .atMetres(
                      1000.0 * (300 + random.nextInt(400)), 1000.0 * (1 + random.nextInt(7000)))
                  .position();
      for (GridPrecision precision : GridPrecision.values()) {
        GridSquare square = Mgrs.parse(Mgrs.reference(place, precision));
        assertTrue(square.contains(square.grid().at(place)), () -> place + " " + square);
      }
    }
  }
}
