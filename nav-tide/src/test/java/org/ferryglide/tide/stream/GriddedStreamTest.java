package org.ferryglide.tide.stream;

import static org.ferryglide.testing.Refusal.message;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.util.Arrays;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GriddedStreamTest {
  private static final double ROUNDING = 1e-12;
  private static final double[] LATITUDES = {50.0, 50.1, 50.3};
  private static final double[] LONGITUDES = {-5.2, -5.1, -5.0, -4.7};
  private static final double[] TIMES = {0, 3600};

  /** East 2·lat + 3·lon + time/3600, north lat·lon: bilinear in each cell only for the first. */
  private static double east(double latitude, double longitude, double time) {
    return 2 * (latitude - 50) + 3 * (longitude + 5) + time / 3600;
  }

  private static double north(double latitude, double longitude, double time) {
    return (latitude - 50) * (longitude + 5) * (1 + time / 3600);
  }

  private static double[] filled(boolean wantEast) {
    double[] values = new double[24];
    int at = 0;
    for (double time : TIMES) {
      for (double latitude : LATITUDES) {
        for (double longitude : LONGITUDES) {
          values[at++] =
              wantEast ? east(latitude, longitude, time) : north(latitude, longitude, time);
        }
      }
    }
    return values;
  }

  private static final GriddedStream GRID =
      GriddedStream.of("model", LATITUDES, LONGITUDES, TIMES, filled(true), filled(false));

  /** Six hours of two by two cells by the minutes given, a tide of 2 kn along the meridian. */
  private static String hours(int minutes, String odd) {
    StringBuilder text = new StringBuilder("time,latitude,longitude,set_deg,rate_kn\n");
    String[] flows = {"0,0.5", "0,1.6", "0,2.0", "0,1.4", "0,0.6", "180,1.8", "180,2.0"};
    for (int t = 0; t < flows.length; t++) {
      Instant time = Instant.parse("2026-06-01T00:00:00Z").plusSeconds(60L * minutes * t);
      for (String place : new String[] {"50.0,-5.1", "50.0,-5.0", "50.1,-5.1", "50.1,-5.0"}) {
        boolean here = t == 2 && place.equals("50.1,-5.0") && !odd.isEmpty();
        text.append(time + "," + place + "," + (here ? odd : flows[t]) + "\n");
      }
    }
    return text.toString();
  }

  private static String doubts(String text) throws IOException {
    GriddedStream grid = GriddedStream.read("grid.csv", new StringReader(text));
    Position place = Position.ofDegrees(50.05, -5.05);
    assertTrue(
        grid.explain(place, Instant.parse("2026-06-01T00:30:00Z"))
            .notes()
            .containsAll(grid.notes()));
    StringBuilder told = new StringBuilder();
    grid.notes().forEach(note -> told.append(note.code() + " " + note.data().get("line") + ";"));
    return told.toString();
  }

  @Test
  void aCellThatLooksWrongAmongItsHoursIsDoubtedByItsLine() throws IOException {
    assertEquals("", doubts(hours(60, "")));
    assertEquals("", doubts(hours(60, "0,4.0"))); // 2.5 times 1.6
    assertEquals("stream.doubt.rate 13;", doubts(hours(60, "0,4.1")));
    assertEquals("stream.doubt.set 13;", doubts(hours(60, "180,2.0")));
    assertEquals("stream.doubt.fastest 13;stream.doubt.rate 13;", doubts(hours(60, "0,17.5")));
    assertEquals("", doubts(hours(61, "0,4.1"))); // a stream may come and go between
    assertEquals("stream.doubt.fastest 13;", doubts(hours(61, "0,17.5")));
    assertEquals("", doubts(hours(60, ",")));
  }

  @Test
  void valuesLinearInEachAxisAreReproduced() {
    double[] out = new double[2];
    for (double latitude : new double[] {50.0, 50.03, 50.1, 50.27, 50.3}) {
      for (double longitude : new double[] {-5.2, -5.13, -5.0, -4.9, -4.7}) {
        for (double time : new double[] {0, 900, 3600}) {
          assertTrue(GRID.sample(latitude, longitude, time, out, 0));
          assertEquals(east(latitude, longitude, time), out[0], ROUNDING);
          assertEquals(north(latitude, longitude, time), out[1], ROUNDING);
        }
      }
    }
  }

  @Test
  void outsideThereAreNoData() {
    double[] out = {7, 8};
    assertFalse(GRID.sample(49.999, -5.1, 0, out, 0));
    assertFalse(GRID.sample(50.301, -5.1, 0, out, 0));
    assertFalse(GRID.sample(50.1, -5.201, 0, out, 0));
    assertFalse(GRID.sample(50.1, -4.699, 0, out, 0));
    assertFalse(GRID.sample(50.1, -5.1, -1, out, 0));
    assertFalse(GRID.sample(50.1, -5.1, 3601, out, 0));
    assertFalse(GRID.sample(Double.NaN, -5.1, 0, out, 0));
    assertFalse(GRID.sample(50.1, Double.NaN, 0, out, 0));
    assertFalse(GRID.sample(50.1, -5.1, Double.NaN, out, 0));
    assertArrayEquals(new double[] {7, 8}, out);
  }

  @Test
  void missingCellsAreHonoured() {
    double[] east = filled(true);
    double[] north = filled(false);
    int cell = 5; // 50.1 N, 5.1 W, first time
    east[cell] = Double.NaN;
    north[cell] = Double.NaN;
    GriddedStream holed = GriddedStream.of("model", LATITUDES, LONGITUDES, TIMES, east, north);
    double[] out = new double[2];
    assertFalse(holed.sample(50.05, -5.15, 1800, out, 0));
    assertFalse(holed.sample(50.1, -5.1, 0, out, 0));
    assertTrue(holed.sample(50.05, -5.15, 3600, out, 0), "the missing cell has no share");
    assertTrue(holed.sample(50.0, -5.1, 0, out, 0), "the missing cell has no share");
    assertTrue(holed.sample(50.2, -4.9, 0, out, 0));
    assertEquals(
        "stream.no-data",
        holed.explain(Position.ofDegrees(50.05, -5.15), Instant.EPOCH).notes().get(0).code());
  }

  @Test
  void aGridMayCrossTheAntimeridian() {
    double[] ones = new double[8];
    Arrays.fill(ones, 1.0);
    GriddedStream pacific =
        GriddedStream.of(
            "model", new double[] {-17, -16}, new double[] {179.5, 180.5}, TIMES, ones, ones);
    double[] out = new double[2];
    assertTrue(pacific.sample(-16.5, 179.7, 0, out, 0));
    assertTrue(pacific.sample(-16.5, -179.7, 0, out, 0));
    assertTrue(pacific.sample(-16.5, -180, 0, out, 0));
    assertFalse(pacific.sample(-16.5, -179.4, 0, out, 0));
    assertFalse(pacific.sample(-16.5, 179.4, 0, out, 0));
  }

  @Test
  void aGridExplainsItself() {
    assertEquals(
        "stream.gridded",
        GRID.explain(Position.ofDegrees(50.1, -5.1), Instant.EPOCH).notes().get(0).code());
    assertEquals(3600.0, GRID.nextBreakAfter(0));
    assertEquals(east(50.3, -4.7, 3600), GRID.maxRate().get().metresPerSecond(), 0.05);
    assertFalse(GRID.isUniform());
  }

  @Test
  void aSheetIsRead() throws IOException {
    StringBuilder sheet = new StringBuilder("time,latitude,longitude,set_deg,rate_kn\n");
    for (String time : new String[] {"2026-06-01T09:00Z", "2026-06-01T10:00Z"}) {
      for (String longitude : new String[] {"179.9", "-179.9"}) {
        for (String latitude : new String[] {"-17", "-16"}) {
          boolean land = latitude.equals("-17") && time.contains("10:00");
          sheet.append(time + "," + latitude + "," + longitude + (land ? ",,\n" : ",90,2\n"));
        }
      }
    }
    GriddedStream grid = GriddedStream.read("grid.csv", new StringReader(sheet.toString()));
    Position middle = Position.ofDegrees(-16.5, 180);
    assertEquals(
        2.0, grid.at(middle, Instant.parse("2026-06-01T09:00:00Z")).get().rate().knots(), 1e-9);
    assertFalse(grid.at(middle, Instant.parse("2026-06-01T09:30:00Z")).isPresent());
    Position north = Position.ofDegrees(-16, 180);
    assertTrue(grid.at(north, Instant.parse("2026-06-01T09:30:00Z")).isPresent());
  }

  @Test
  void faultsOfASheetAreListed() {
    String sheet =
        """
        time,latitude,longitude,east_ms,north_ms,set_deg,rate_kn
        2026-06-01T09:00Z,50,-5,0.1,0.2,,
        2026-06-01T09:00Z,50,-5,0.1,0.2,,
        2026-06-01T09:00Z,50,-6,0.1,,,
        2026-06-01T09:00Z,51,-6,0.1,0.2,90,1
        """;
    assertEquals(
        "g.csv, line 3, column 1: time: the same cell stands in line 2\n"
            + "g.csv, line 4, column 5: north_ms: must be a number in [-15.0, 15.0], but was"
            + " \"\"\n"
            + "g.csv, line 5, column 4: east_ms: must not be given beside set_deg and rate_kn",
        assertThrows(
                InputFormatException.class,
                () -> GriddedStream.read("g.csv", new StringReader(sheet)))
            .getMessage());
  }

  @Test
  void badArraysAreRefused() {
    double[] four = new double[4];
    double[] two = {0, 1};
    assertEquals(
        "latitudes of a grid must increase within [-90.0, 90.0], but number 2 was 0.0",
        message(() -> GriddedStream.of("m", new double[] {1, 0}, two, two, new double[8], four)));
    assertEquals(
        "a grid must have at least 2 times, but had 1",
        message(() -> GriddedStream.of("m", two, two, new double[] {0}, four, four)));
    assertEquals(
        "a grid of 2 times, 2 latitudes and 2 longitudes must have 8 east and north parts, but"
            + " had 8 and 4",
        message(() -> GriddedStream.of("m", two, two, two, new double[8], four)));
    double[] odd = new double[8];
    odd[3] = Double.NaN;
    assertEquals(
        "both parts of a cell must be finite or both NaN, but cell 3 was NaN, 0.0",
        message(() -> GriddedStream.of("m", two, two, two, odd, new double[8])));
  }

  private static String message(org.junit.jupiter.api.function.Executable call) {
    return String.valueOf(assertThrows(IllegalArgumentException.class, call).getMessage());
  }

  private static String row(String time, double latitude, double longitude) {
    return "2026-06-01T" + time + "Z," + latitude + "," + longitude + ",0.5,0.0\n";
  }

  private static String cells(double[] latitudes, double[] longitudes, String... times) {
    StringBuilder sheet = new StringBuilder("time,latitude,longitude,east_ms,north_ms\n");
    for (String time : times) {
      for (double latitude : latitudes) {
        for (double longitude : longitudes) {
          sheet.append(row(time, latitude, longitude));
        }
      }
    }
    return sheet.toString();
  }

  @Test
  void rowsLeftOutOfASheetAreNotBridged() throws IOException {
    double[] holed = {50.0, 50.1, 50.3, 50.4};
    double[] whole = {-5.2, -5.1};
    String sheet = cells(holed, whole, "09:00", "10:00", "13:00", "14:00");
    assertEquals(
        "g.csv: time: cells seem to be missing between 2026-06-01T10:00:00Z and"
            + " 2026-06-01T13:00:00Z; cells without data must stand in rows with empty figures\n"
            + "g.csv: latitude: cells seem to be missing between 50.1 and 50.3; cells without data"
            + " must stand in rows with empty figures",
        message(() -> GriddedStream.read("g.csv", new StringReader(sheet))));
    String stated = cells(holed, whole, "09:00", "10:00") + "2026-06-01T09:00Z,50.2,-5.2,,\n";
    GriddedStream grid = GriddedStream.read("g.csv", new StringReader(stated));
    Instant time = Instant.parse("2026-06-01T09:30:00Z");
    assertFalse(grid.at(Position.ofDegrees(50.2, -5.15), time).isPresent());
    assertTrue(grid.at(Position.ofDegrees(50.05, -5.15), time).isPresent());
  }

  @Test
  void theWidestGapIsWhatAGridLeavesOut() throws IOException {
    double[] wide = {-100, -60, -20, 20, 60, 100};
    String sheet = cells(new double[] {50, 51}, wide, "09:00", "10:00");
    GriddedStream grid = GriddedStream.read("g.csv", new StringReader(sheet));
    Instant time = Instant.parse("2026-06-01T09:30:00Z");
    assertTrue(grid.at(Position.ofDegrees(50.5, 0), time).isPresent());
    assertFalse(grid.at(Position.ofDegrees(50.5, 179), time).isPresent());
  }

  /** Rows on a diagonal once asked for a thousand million cells and more. */
  @ParameterizedTest
  @ValueSource(ints = {1000, 1291, 1626, 3000})
  void rowsThatLieOnNoGridAreRefusedBeforeTheyFillTheMemory(int rows) {
    StringBuilder sheet = new StringBuilder("time,latitude,longitude,set_deg,rate_kn\n");
    Instant start = Instant.parse("2026-06-01T00:00:00Z");
    for (int i = 0; i < rows; i++) {
      sheet
          .append(start.plusSeconds(60L * i))
          .append(',')
          .append(50.0 + i * 1e-3)
          .append(',')
          .append(-5.0 + i * 1e-3)
          .append(",90,1\n");
    }
    String message =
        message(() -> GriddedStream.read("grid.csv", new StringReader(sheet.toString())));
    assertTrue(
        message.startsWith("grid.csv, line " + (rows + 1) + ", column 1: time: up to this line"),
        message);
  }
}
