package org.ferryglide.nav.grid;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.TextFormatException;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class MapGridTest {
  private static final MapGrid UTM = MapGrid.utm(UtmZone.of(30, Hemisphere.NORTH));

  /** The British grid's projection on its own ellipsoid, without the shift. */
  private static final MapGrid UNSHIFTED =
      MapGrid.transverseMercator(
          "Unshifted",
          Datum.of("Airy", Ellipsoid.AIRY_1830, HelmertShift.NONE, ofMetres(0.0)),
          49.0,
          -2.0,
          0.9996012717,
          ofMetres(400000.0),
          ofMetres(-100000.0));

  /** Ordnance Survey, A guide to coordinate systems in Great Britain, worked example. */
  @Test
  void theOrdnanceSurveysProjectionIsMet() {
    Position place =
        Position.ofDegrees(
            52.0 + 39.0 / 60.0 + 27.2531 / 3600.0, 1.0 + 43.0 / 60.0 + 4.5177 / 3600.0);
    GridPoint point = UNSHIFTED.at(place);
    double halfAPrintedMillimetre = 0.0005;
    assertEquals(651409.903, point.easting().metres(), halfAPrintedMillimetre);
    assertEquals(313177.270, point.northing().metres(), halfAPrintedMillimetre);
    Position back = UNSHIFTED.atMetres(651409.903, 313177.270).position();
    double half10ThousandthSecond = 0.00005 / 3600.0;
    assertEquals(place.latitudeDegrees(), back.latitudeDegrees(), half10ThousandthSecond);
    assertEquals(place.longitudeDegrees(), back.longitudeDegrees(), half10ThousandthSecond);
  }

  /** IOGP Guidance Note 7-2; the figures it prints are 6 to 8 mm off, as PROJ 9.1.1 confirms. */
  @Test
  void theProducersAssociationsExampleIsMetToACentimetre() {
    GridPoint point = UNSHIFTED.at(Position.ofDegrees(50.5, 0.5));
    assertEquals(577274.99, point.easting().metres(), 0.01);
    assertEquals(69740.50, point.northing().metres(), 0.01);
    assertEquals(577274.984, point.easting().metres(), 0.0005);
    assertEquals(69740.492, point.northing().metres(), 0.0005);
  }

  @Test
  void aGridOfOnesOwnIsMadeFromTheMargin() {
    MapGrid own =
        MapGrid.transverseMercator(
            "Own", Datum.WGS84, 0.0, -3.0, 0.9996, ofMetres(500000), ofMetres(0));
    Position place = Position.ofDegrees(50.105, -5.535);
    assertEquals(UTM.at(place).easting().metres(), own.at(place).easting().metres());
    assertEquals(UTM.at(place).northing().metres(), own.at(place).northing().metres());
    assertEquals("Own", own.at(place).convergence().grid());
    assertNotEquals(UTM, own);
    assertEquals(
        UTM,
        MapGrid.transverseMercator(
            "UTM 30N", Datum.WGS84, 0, -3, 0.9996, ofMetres(500000), ofMetres(0)));
  }

  @Test
  void theTrueOriginHasTheFalseFigures() {
    GridPoint origin = UNSHIFTED.at(Position.ofDegrees(49.0, -2.0));
    assertEquals(400000.0, origin.easting().metres(), 1e-9);
    assertEquals(-100000.0, origin.northing().metres(), 1e-8);
    assertEquals(0.0, origin.convergence().degreesEast(), 0.0);
    assertEquals(0.9996012717, origin.scale(), 1e-15);
  }

  @Test
  void longitudesWrap() {
    MapGrid first = MapGrid.utm(UtmZone.of(1, Hemisphere.NORTH));
    double[] one = new double[4];
    double[] other = new double[4];
    first.forward(10.0, -179.5, one, 0);
    for (double turns : new double[] {180.5, 540.5, -539.5, 900.5, -899.5}) {
      first.forward(10.0, turns, other, 0);
      assertArrayEquals(one, other, 1e-6, "longitude " + turns);
    }
    first.reverse(one[0] - 200000.0, one[1], other, 0);
    assertTrue(other[1] > 178.0 && other[1] < 180.0, "" + other[1]);
    Position westward = first.atMetres(100000.0, 0.0).position();
    // echo "01n 100000 0" | GeoConvert -p 9, version 2.1.2
    assertEquals(179.4076727974333, westward.longitudeDegrees(), 1e-13);
  }

  @Test
  void zonesMeetAtTheirCommonMeridian() {
    GridPoint west = UTM.at(Position.ofDegrees(50.0, 0.0));
    GridPoint east =
        MapGrid.utm(UtmZone.of(31, Hemisphere.NORTH)).at(Position.ofDegrees(50.0, 0.0));
    assertEquals(west.northing().metres(), east.northing().metres(), 1e-8);
    assertEquals(1e6, west.easting().metres() + east.easting().metres(), 1e-8);
    assertEquals(west.scale(), east.scale(), 1e-15);
  }

  @Test
  void northAndSouthDifferByTenThousandKilometres() {
    MapGrid south = MapGrid.utm(UtmZone.of(30, Hemisphere.SOUTH));
    GridPoint one = UTM.at(Position.ofDegrees(-0.0, -3.0));
    GridPoint other = south.at(Position.ofDegrees(0.0, -3.0));
    assertEquals(0.0, one.northing().metres(), 0.0);
    assertEquals(1e7, other.northing().metres(), 0.0);
    assertEquals("E 500000.0 N 10000000 [UTM 30S]", other.toString());
    assertEquals(other, south.parse(other.toString()));
  }

  @Test
  void figuresAreReadInAnyOfTheirForms() {
    GridPoint point = UTM.atMetres(318730.38549176685, 5553382.707248007);
    for (String text :
        List.of(
            point.toString(),
            "E 318730.38549176685 N 5553382.707248007",
            "318730.38549176685 5553382.707248007",
            " 318730.38549176685E 5553382.707248007N ",
            "318730.38549176685, 5553382.707248007",
            "E318730.38549176685 N5553382.707248007 [UTM 30N]")) {
      assertEquals(point, UTM.parse(text), text);
    }
    assertEquals(-12.5, UTM.parse("E -12.5 N 100000").easting().metres());
  }

  @Test
  void otherTextIsRefusedAtItsCharacter() {
    refuses("", 0, "easting in metres must come first");
    refuses("N 318730", 0, "easting in metres must come first");
    refuses("E 318730", 8, "northing in metres must follow");
    refuses("E 318730 N x", 11, "northing in metres must follow");
    refuses(
        "E 318730 N 5553382 [UTM 31N]",
        19,
        "nothing but this grid's name in square brackets may follow the northing");
  }

  private static void refuses(String text, int index, String reason) {
    TextFormatException refusal =
        assertThrows(TextFormatException.class, () -> UTM.parse(text), text);
    String message = String.valueOf(refusal.getMessage());
    assertEquals(reason, message.substring(0, message.lastIndexOf(": at ")), text);
    assertEquals(index, refusal.index(), text);
  }

  @Test
  void pointsTooFarAwayAreRefused() {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> UTM.at(Position.ofDegrees(0.0, 60.0)));
    assertTrue(
        String.valueOf(refusal.getMessage())
            .startsWith("a point of UTM 30N must lie within 3900 km of the central meridian, but"),
        refusal.getMessage());
    refusal = assertThrows(IllegalArgumentException.class, () -> UTM.atMetres(5e6, 0.0));
    assertEquals(
        "a point of UTM 30N must lie within 3900 km of the central meridian, but was easting"
            + " 5000000.0, northing 0.0",
        refusal.getMessage());
    assertThrows(IllegalArgumentException.class, () -> UTM.atMetres(5e5, 1.5e7));
    assertThrows(IllegalArgumentException.class, () -> UTM.at(Position.ofDegrees(0.0, 87.0)));
    assertThrows(
        IllegalArgumentException.class,
        () -> StandardGrids.UPS_NORTH.at(Position.ofDegrees(-90.0, 0.0)));
  }

  @Test
  void parametersThatDoNotFitAreRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> MapGrid.transverseMercator("", Datum.WGS84, 0, 0, 1, Distance.ZERO, Distance.ZERO));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            MapGrid.transverseMercator("a[b", Datum.WGS84, 0, 0, 1, Distance.ZERO, Distance.ZERO));
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                MapGrid.transverseMercator(
                    "a", Datum.WGS84, 91, 0, 1, Distance.ZERO, Distance.ZERO));
    assertEquals(
        "latitude of origin must be in [-90, 90] degrees, but was 91.0", refusal.getMessage());
  }

  @Test
  void rowsAreConvertedEachForItself() {
    double[] latitudes = {0.0, 50.0, Double.NaN, 51.0, 0.0};
    double[] longitudes = {0.0, -3.0, -3.0, -4.0, 0.0};
    double[] out = new double[20];
    UTM.forward(latitudes, longitudes, 1, 4, out, 4);
    double[] one = new double[4];
    UTM.forward(51.0, -4.0, one, 0);
    assertArrayEquals(one, java.util.Arrays.copyOfRange(out, 12, 16));
    assertTrue(Double.isNaN(out[8]) && Double.isNaN(out[11]));
    assertEquals(0.0, out[0]);
    assertEquals(0.0, out[16]);
    UTM.reverse(
        new double[] {0.0, out[4], Double.NaN, out[12]},
        new double[] {0.0, out[5], 0.0, out[13]},
        1,
        4,
        out,
        4);
    assertEquals(50.0, out[4], 1e-13);
    assertTrue(Double.isNaN(out[8]));
    assertEquals(-4.0, out[13], 1e-13);
  }

  @Test
  void thePoleItselfCanBeAskedFor() {
    Position north = Position.ofDegrees(90.0, 12.0);
    assertEquals(15.0, UTM.convergence(north).degreesEast(), 1e-12, "12° E from 3° W");
    assertEquals(12.0, StandardGrids.UPS_NORTH.convergence(north).degreesEast(), 1e-12);
    for (MapGrid grid : List.of(UTM, StandardGrids.UPS_NORTH)) {
      GridPoint pole = grid.at(north);
      Position back = grid.at(pole.easting(), pole.northing()).position();
      assertEquals(90.0, back.latitudeDegrees());
    }
    GridPoint south = StandardGrids.UPS_SOUTH.at(Position.ofDegrees(-90.0, 12.0));
    assertEquals(2e6, south.easting().metres());
    assertEquals(2e6, south.northing().metres());
    assertEquals(-12.0, south.convergence().degreesEast(), 1e-14);
    assertEquals(0.0, StandardGrids.UPS_SOUTH.atMetres(2e6, 2e6).position().longitudeDegrees());
  }

  /**
   * PROJ 9.1.1: proj -f %.6f +proj=stere +lat_0=90 +k=0.97 +lon_0=-45 +x_0=1e6 +y_0=3e6
   * +ellps=WGS84 and +proj=stere +lat_0=-90 +k=0.97 +lon_0=-70 +ellps=WGS84.
   */
  @Test
  void aPolarGridOfOnesOwnIsMadeFromTheMargin() {
    double printedMicrometre = 1e-6;
    MapGrid north =
        MapGrid.polarStereographic(
            "Own", Datum.WGS84, Hemisphere.NORTH, -45.0, 0.97, ofMetres(1e6), ofMetres(3e6));
    GridPoint point = north.at(Position.ofDegrees(78.25, -10.5));
    assertEquals(1723488.912734, point.easting().metres(), printedMicrometre);
    assertEquals(1947317.099828, point.northing().metres(), printedMicrometre);
    assertEquals(34.5, point.convergence().degreesEast(), 1e-13);
    point = north.at(Position.ofDegrees(85.0, 120.0));
    assertEquals(1140291.813968, point.easting().metres(), printedMicrometre);
    assertEquals(3523576.177613, point.northing().metres(), printedMicrometre);
    MapGrid south =
        MapGrid.polarStereographic(
            "Own", Datum.WGS84, Hemisphere.SOUTH, -70.0, 0.97, Distance.ZERO, Distance.ZERO);
    point = south.at(Position.ofDegrees(-66.0, -60.25));
    assertEquals(446642.112548, point.easting().metres(), printedMicrometre);
    assertEquals(2599303.985232, point.northing().metres(), printedMicrometre);
    Position back = south.at(point.easting(), point.northing()).position();
    assertEquals(-66.0, back.latitudeDegrees(), 1e-13);
    assertEquals(-60.25, back.longitudeDegrees(), 1e-13);
  }

  @Test
  void gridsAndPointsSurviveTheWire() throws Exception {
    for (Object value :
        List.of(
            UTM,
            StandardGrids.BRITISH_NATIONAL_GRID,
            StandardGrids.UPS_SOUTH,
            StandardGrids.IRISH_GRID.atMetres(200000.0, 250000.0),
            Mgrs.parse("38SMB4484"))) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
        out.writeObject(value);
      }
      try (ObjectInputStream in =
          new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
        Object back = in.readObject();
        assertEquals(value, back);
        assertEquals(value.hashCode(), back.hashCode());
        assertEquals(value.toString(), back.toString());
      }
    }
  }

  @Test
  void sharedRowsAreTheSameBits() {
    int rows = 9_000;
    double[] latitudes = new double[rows];
    double[] longitudes = new double[rows];
    for (int i = 0; i < rows; i++) {
      latitudes[i] = 49.0 + 1e-3 * i;
      longitudes[i] = -6.0 + 7e-4 * i;
    }
    int offset = 3;
    double[] array = new double[MapGrid.WIDTH * rows + offset];
    double[] parallel = array.clone();
    MapGrid grid = StandardGrids.BRITISH_NATIONAL_GRID;
    grid.forward(latitudes, longitudes, 7, rows, array, offset);
    grid.forwardInParallel(latitudes, longitudes, 7, rows, parallel, offset);
    assertArrayEquals(array, parallel);
    GridPoint last = grid.at(Position.ofDegrees(latitudes[rows - 1], longitudes[rows - 1]));
    int row = offset + MapGrid.WIDTH * (rows - 8);
    assertEquals(last.easting().metres(), array[row + MapGrid.EASTING]);
    assertEquals(last.northing().metres(), array[row + MapGrid.NORTHING]);
    assertEquals(last.scale(), array[row + MapGrid.SCALE]);
    double[] eastings = new double[rows];
    double[] northings = new double[rows];
    for (int i = 7; i < rows; i++) {
      eastings[i] = array[offset + MapGrid.WIDTH * (i - 7) + MapGrid.EASTING];
      northings[i] = array[offset + MapGrid.WIDTH * (i - 7) + MapGrid.NORTHING];
    }
    grid.reverse(eastings, northings, 7, rows, array, offset);
    grid.reverseInParallel(eastings, northings, 7, rows, parallel, offset);
    assertArrayEquals(array, parallel);
    assertEquals(latitudes[rows - 1], array[row + MapGrid.LATITUDE], 1e-12);
    assertEquals(longitudes[rows - 1], array[row + MapGrid.LONGITUDE], 1e-12);
  }
}
