package org.ferryglide.nav.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Locale;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Rows;
import org.junit.jupiter.api.Test;

class StandardGridsTest {
  /** Five nanometres of ours and the peer's, and half a unit of the ninth decimal. */
  private static final double NANOMETRES = 6e-9;

  /** The table's references and figures, whose last printed decimals are 1e-13 and 1e-15. */
  @Test
  void universalGridsAgreeWithTheTable() {
    for (String[] row : Rows.of(StandardGridsTest.class, "universal-grids.csv")) {
      String where = String.join(",", row);
      double latitude = Rows.number(row, 0);
      double longitude = Rows.number(row, 1);
      Position position = Position.ofDegrees(latitude, longitude);
      MapGrid grid = StandardGrids.universal(position);
      assertEquals(gridName(row[2]), grid.name(), where);
      GridPoint point = grid.at(position);
      assertEquals(Rows.number(row, 3), point.easting().metres(), NANOMETRES, where);
      assertEquals(Rows.number(row, 4), point.northing().metres(), NANOMETRES, where);
      assertEquals(0.0, turn(point.convergence().degreesEast(), Rows.number(row, 5)), 2e-13, where);
      assertEquals(Rows.number(row, 6), point.scale(), 2e-15, where);

      Position back = grid.atMetres(Rows.number(row, 3), Rows.number(row, 4)).position();
      double parallel = Math.cos(Math.toRadians(latitude));
      assertEquals(0.0, (back.latitudeDegrees() - latitude) * 111.7e3, NANOMETRES, where);
      double east = turn(back.longitudeDegrees(), longitude) * 111.7e3 * parallel;
      assertEquals(0.0, east, NANOMETRES, where);
    }
  }

  private static double turn(double one, double other) {
    return Math.IEEEremainder(one - other, 360.0);
  }

  static String gridName(String printed) {
    if (printed.length() == 1) {
      return printed.equals("n") ? "UPS north" : "UPS south";
    }
    int zone = Integer.parseInt(printed.substring(0, 2));
    return "UTM " + zone + printed.substring(2).toUpperCase(Locale.ROOT);
  }

  @Test
  void nationalGridsAgreeWithTheTable() {
    for (String[] row : Rows.of(StandardGridsTest.class, "national-grids.csv")) {
      String where = String.join(",", row);
      MapGrid grid =
          switch (row[0]) {
            case "British" -> StandardGrids.BRITISH_NATIONAL_GRID;
            case "Irish" -> StandardGrids.IRISH_GRID;
            default -> StandardGrids.IRISH_TRANSVERSE_MERCATOR;
          };
      double latitude = Rows.number(row, 1);
      double longitude = Rows.number(row, 2);
      GridPoint point = grid.at(Position.ofDegrees(latitude, longitude));
      // printed to a micrometre, or computed from such figures
      assertEquals(Rows.number(row, 3), point.easting().metres(), 1e-6, where);
      assertEquals(Rows.number(row, 4), point.northing().metres(), 1e-6, where);

      Position back = grid.at(point.easting(), point.northing()).position();
      assertEquals(0.0, (back.latitudeDegrees() - latitude) * 111.7e3, 1e-8, where);
      assertEquals(0.0, (back.longitudeDegrees() - longitude) * 70e3, 1e-8, where);
    }
  }

  /** True north of WGS84, not of the map's datum, is what convergence is measured from. */
  @Test
  void convergenceIsMeasuredFromTheMeridianOfWgs84() {
    double[] south = new double[4];
    double[] north = new double[4];
    for (MapGrid grid :
        List.of(
            StandardGrids.BRITISH_NATIONAL_GRID,
            StandardGrids.IRISH_GRID,
            MapGrid.utm(UtmZone.of(30, Hemisphere.NORTH)))) {
      for (double latitude = 50.0; latitude < 61.0; latitude += 0.7) {
        for (double longitude = -10.0; longitude < 2.0; longitude += 0.9) {
          grid.forward(latitude - 1e-5, longitude, south, 0);
          grid.forward(latitude + 1e-5, longitude, north, 0);
          double gridBearing = Math.toDegrees(Math.atan2(north[0] - south[0], north[1] - south[1]));
          // 10 nm over 2.2 m
          assertEquals(
              -gridBearing,
              grid.at(Position.ofDegrees(latitude, longitude)).convergence().degreesEast(),
              6e-7);
          grid.forward(latitude, longitude, north, 0);
          double forward = north[2];
          grid.reverse(north[0], north[1], north, 0);
          double secondOrderOfTheShift = 1e-7; // its angles are 2e-5 radians
          assertEquals(forward, north[2], secondOrderOfTheShift);
        }
      }
    }
  }

  @Test
  void shiftedGridsSayHowGoodTheyAre() {
    Position place = Position.ofDegrees(50.105, -5.535);
    Note british = StandardGrids.BRITISH_NATIONAL_GRID.at(place).notes().get(0);
    assertEquals("grid.helmert-only", british.code());
    assertEquals(
        "Shifted between WGS84 and OSGB36 by seven parameters only: good to about 5 m. Surveyors"
            + " use the national grid-shift file.",
        british.text());
    assertEquals("5.0", british.data().get("accuracyMetres"));
    Note itm = StandardGrids.IRISH_TRANSVERSE_MERCATOR.at(place).notes().get(0);
    assertEquals("grid.taken-as-wgs84", itm.code());
    assertEquals("ETRS89 is taken as WGS84; they agree to about 1 m.", itm.text());
    assertEquals(List.of(), MapGrid.utm(UtmZone.of(30, Hemisphere.NORTH)).at(place).notes());
  }

  @Test
  void stretchIsMentionedWhereItMatters() {
    GridPoint pole = StandardGrids.UPS_NORTH.at(Position.ofDegrees(90.0, 0.0));
    assertEquals(0.994, pole.scale(), 1e-15);
    assertEquals(
        "Lengths on this grid are 0.6 % shorter than on the ground here.",
        pole.notes().get(0).text());
    GridPoint far = MapGrid.utm(UtmZone.of(30, Hemisphere.NORTH)).at(Position.ofDegrees(50.0, 7.0));
    assertEquals("grid.stretched", far.notes().get(0).code());
    assertEquals(
        "Lengths on this grid are 0.6 % longer than on the ground here.",
        far.notes().get(0).text());
  }

  @Test
  void theUniversalGridChangesAtItsLimits() {
    assertEquals("UTM 31N", StandardGrids.universal(Position.ofDegrees(83.999999, 3.0)).name());
    assertSame(StandardGrids.UPS_NORTH, StandardGrids.universal(Position.ofDegrees(84.0, 3.0)));
    assertEquals("UTM 31S", StandardGrids.universal(Position.ofDegrees(-80.0, 3.0)).name());
    assertSame(
        StandardGrids.UPS_SOUTH, StandardGrids.universal(Position.ofDegrees(-80.000001, 3.0)));
    assertEquals("UTM 31N", StandardGrids.universal(Position.ofDegrees(0.0, 3.0)).name());
    assertEquals("UTM 31N", StandardGrids.universal(Position.ofDegrees(-0.0, 3.0)).name());
    assertEquals("UTM 31S", StandardGrids.universal(Position.ofDegrees(-1e-300, 3.0)).name());
    assertEquals("UTM 1N", StandardGrids.universal(Position.ofDegrees(5.0, 180.0)).name());
  }
}
