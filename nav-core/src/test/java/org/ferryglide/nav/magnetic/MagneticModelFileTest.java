package org.ferryglide.nav.magnetic;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.testing.Rows;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class MagneticModelFileTest {
  /** The test points are printed to 0.01 nT; two correct evaluators differ by no more. */
  private static final double PRINTED_NANOTESLA = 0.01;

  /** The row of 2025 was printed from coefficients before their last rounding. */
  private static final double ROW_OF_2025_NANOTESLA = 0.08;

  private static MagneticModel igrf() throws IOException {
    return MagneticModel.readShc(
        "models/igrf14.shc",
        new StringReader(Rows.text(MagneticModelFileTest.class, "igrf14.shc")));
  }

  static Stream<Arguments> igrfRows() {
    return Rows.of(MagneticModelFileTest.class, "igrf14-test-values.csv").stream()
        .map(row -> Arguments.of(List.of(row)));
  }

  @ParameterizedTest
  @MethodSource("igrfRows")
  void igrfMeetsItsPublishedTestPoints(List<String> row) throws IOException {
    double[] v = new double[row.size()];
    for (int i = 0; i < v.length; i++) {
      v[i] = Double.parseDouble(row.get(i));
    }
    // the points are geocentric: find the place on WGS84, then turn the answer back
    double geocentric = Math.toRadians(90.0 - v[1]);
    double fromAxis = 1000.0 * v[3] * Math.cos(geocentric);
    double alongAxis = 1000.0 * v[3] * Math.sin(geocentric);
    double e2 = (2.0 - 1.0 / 298.257223563) / 298.257223563;
    double phi = geocentric;
    double normal = 0.0;
    for (int i = 0; i < 50; i++) {
      normal = 6378137.0 / Math.sqrt(1.0 - e2 * Math.pow(Math.sin(phi), 2));
      phi = Math.atan2(alongAxis + e2 * normal * Math.sin(phi), fromAxis);
    }
    double height =
        fromAxis * Math.cos(phi)
            + alongAxis * Math.sin(phi)
            - 6378137.0 * Math.sqrt(1.0 - e2 * Math.pow(Math.sin(phi), 2));
    double[] out = new double[7];
    igrf().atDecimalYear(v[0]).elements(Math.toDegrees(phi), v[2], height, out, 0);
    double turn = geocentric - phi;
    double north = out[0] * Math.cos(turn) + out[2] * Math.sin(turn);
    double down = out[2] * Math.cos(turn) - out[0] * Math.sin(turn);
    double tolerance = v[0] == 2025.0 ? ROW_OF_2025_NANOTESLA : PRINTED_NANOTESLA;
    assertEquals(v[4], north, tolerance);
    assertEquals(v[5], out[1], tolerance);
    assertEquals(v[6], down, tolerance);
  }

  @Test
  void igrfRunsInStraightLinesBetweenItsDates() throws IOException {
    MagneticModel igrf = igrf();
    assertEquals("igrf14", igrf.name());
    assertEquals(13, igrf.degree());
    assertEquals("igrf14 (1900.0 to 2030.0)", igrf.toString());
    double[] start = components(igrf, 1930.0);
    double[] middle = components(igrf, 1932.5);
    double[] end = components(igrf, 1935.0);
    for (int i = 0; i < 3; i++) {
      assertEquals((start[i] + end[i]) / 2.0, middle[i], 1e-8);
    }
    assertTrue(igrf.atDecimalYear(2030.0).notes().isEmpty());
    assertEquals(1, igrf.atDecimalYear(2030.01).notes().size());
    assertEquals(1, igrf.atDecimalYear(1899.9).notes().size());
    assertTrue(igrf.errorModel().isEmpty());
  }

  private static double[] components(MagneticModel model, double year) {
    double[] row = new double[7];
    model.atDecimalYear(year).elements(54.0, -7.0, 0.0, row, 0);
    return row;
  }

  @Test
  void thePublishedLayoutGivesTheBuiltInModel(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("WMM.COF");
    Files.writeString(file, TestModels.cof("wmm2025.txt"));
    MagneticModel read = MagneticModel.readCof(file);
    assertEquals("WMM-2025 (2025.0 to 2030.0)", read.toString());
    assertArrayEquals(components(MagneticModel.wmm2025(), 2026.5), components(read, 2026.5));
    MagneticErrorModel errors = MagneticModel.wmm2025().errorModel().orElseThrow();
    assertEquals(errors, read.withErrorModel(errors).errorModel().orElseThrow());
    Path shc = folder.resolve("igrf14.shc");
    Files.writeString(shc, Rows.text(MagneticModelFileTest.class, "igrf14.shc"));
    assertEquals("igrf14", MagneticModel.readShc(shc).name());
  }

  @Test
  void aMissingFileIsAnOrdinaryIoException(@TempDir Path folder) {
    assertThrows(NoSuchFileException.class, () -> MagneticModel.readCof(folder.resolve("no.COF")));
  }

  private static final String SMALL =
      """
      2025.0 TEST 01/01/2025
      1 0 -29000 0 10 0
      1 1 -1400 4500 9 -20
      9999999999
      """;

  private static String cofRefusal(String text) {
    return String.valueOf(
        assertThrows(
                InputFormatException.class,
                () -> MagneticModel.readCof("t.COF", new StringReader(text)))
            .getMessage());
  }

  @Test
  void aSmallModelIsAModel() throws IOException {
    MagneticModel model = MagneticModel.readCof("t.COF", new StringReader(SMALL));
    assertEquals(1, model.degree());
    // at the pole a dipole of degree one: down is twice -g10 times the cube of the radii
    double pole = 6356752.3142;
    assertEquals(2.0 * 29000.0 * Math.pow(6371200.0 / pole, 3), components90(model), 0.01);
  }

  private static double components90(MagneticModel model) {
    double[] row = new double[7];
    model.atDecimalYear(2025.0).elements(90.0, 0.0, 0.0, row, 0);
    return row[2];
  }

  @ParameterizedTest(name = "{2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "1 1 -1400|1 1 -14OO|t.COF, line 3, column 3: g must be a number from -1000000 to 1000000,"
            + " but was \"-14OO\"",
        "1 0 -29000 0|1 0 -29000 5|t.COF, line 2, column 4: h and its change must be 0 where the"
            + " order is 0",
        "1 1 -1400 4500 9 -20|1 1 -1400 4500 9|t.COF, line 3, column 6: change of h is missing",
        "1 1 -1400 4500 9 -20|1 1 -1400 4500 9 -20 7|t.COF, line 3, column 7: a row has six fields,"
            + " but had 7",
        "1 1 -1400|2 1 -1400|t.COF, line 4: coefficients of degree and order 1 -1, 1 1, 2 -2, 2 0,"
            + " 2 2 are missing",
        "1 1 -1400|1 2 -1400|'t.COF, line 3, column 2: order must not exceed the degree 1, but was"
            + " 2\n"
            + "t.COF, line 4: coefficients of degree and order 1 -1, 1 1 are missing'",
        "1 1 -1400|1 -1 -1400|'t.COF, line 3, column 2: order must not be negative, but was -1\n"
            + "t.COF, line 4: coefficients of degree and order 1 -1, 1 1 are missing'",
        "1 1 -1400|1.0 1 -1400|'t.COF, line 3, column 1: degree must be a whole number, but was"
            + " \"1.0\"\n"
            + "t.COF, line 4: coefficients of degree and order 1 -1, 1 1 are missing'",
        "1 1 -1400|1 1 1400d|t.COF, line 3, column 3: g must be a number from -1000000 to 1000000,"
            + " but was \"1400d\"",
        "1 1 -1400|1 1 1400f|t.COF, line 3, column 3: g must be a number from -1000000 to 1000000,"
            + " but was \"1400f\"",
        "1 1 -1400|1 1 0x1p14|t.COF, line 3, column 3: g must be a number from -1000000 to 1000000,"
            + " but was \"0x1p14\"",
        "1 1 -1400|1 1 1e200|t.COF, line 3, column 3: g must be a number from -1000000 to 1000000,"
            + " but was \"1e200\"",
        "2025.0 TEST 01/01/2025|20250.0 TEST|t.COF, line 1, column 1: epoch must be a number from"
            + " -20000 to 3000, but was \"20250.0\"",
        "1 1 -1400|1 1 NaN|t.COF, line 3, column 3: g must be a number from -1000000 to 1000000,"
            + " but was \"NaN\"",
        "2025.0 TEST 01/01/2025|soon TEST|t.COF, line 1, column 1: epoch must be a number from"
            + " -20000 to 3000, but was \"soon\"",
        "2025.0 TEST 01/01/2025|2025.0|t.COF, line 1, column 2: name of the model must follow its"
            + " epoch",
        "9999999999|' '|t.COF, line 4: the closing line of nines is missing: is the file whole?",
        "9999999999|'9999999999\n1 1 2 3 4 5'|t.COF, line 5: nothing may follow the line of nines",
        """
        1 0 -29000|1 1 -29000|'t.COF, line 3, column 1: degree 1 order 1 must stand only once
        t.COF, line 3, column 1: degree 1 order -1 must stand only once
        t.COF, line 4: coefficients of degree and order 1 0 are missing'\
        """,
        "1 0 -29000|400 0 -29000|'t.COF, line 2, column 1: degree must be from 1 to 200, but was"
            + " 400\n"
            + "t.COF, line 4: coefficients of degree and order 1 0 are missing'",
      })
  void badCofFilesAreRefusedByLineAndReason(String good, String bad, String message) {
    assertTrue(SMALL.contains(good));
    assertEquals(message, cofRefusal(SMALL.replace(good, bad)));
  }

  @Test
  void emptyFilesAreRefused() {
    assertEquals("t.COF: the line with epoch and name is missing", cofRefusal(""));
    assertEquals("t.shc: the line with degrees and number of dates is missing", shcRefusal(""));
  }

  private static final String SMALL_SHC =
      """
      # a comment
      1 1 2 2 1
      2020.0 2025.0
      1 0 -29100 -29000
      1 1 -1500 -1400
      1 -1 4600 4500
      """;

  private static String shcRefusal(String text) {
    return String.valueOf(
        assertThrows(
                InputFormatException.class,
                () -> MagneticModel.readShc("t.shc", new StringReader(text)))
            .getMessage());
  }

  @ParameterizedTest(name = "{2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "1 1 2 2 1|2 2 2 2 1|t.shc, line 2, column 1: lowest degree must be 1, but was 2",
        "1 1 2 2 1|1 1 2 6 5|'t.shc, line 2, column 4: order of the spline must be 2 (straight"
            + " lines between the dates), or 1 for a single date, but was 6\n"
            + "t.shc, line 2, column 5: number of steps must be 1, but was 5'",
        "1 1 2 2 1|1 1 0 2 1|t.shc, line 2, column 3: number of dates must be from 1 to 10000, but"
            + " was 0",
        "1 1 2 2 1|1 1 2 2|t.shc, line 2, column 5: number of steps is missing",
        "1 1 2 2 1|1 1 2 2 1 7|t.shc, line 2, column 6: the line has 5 fields, but had 6",
        "2020.0 2025.0|2020.0 20250.0|t.shc, line 3, column 2: date must be a number from -20000 to"
            + " 3000, but was \"20250.0\"",
        "1 0 -29100|1 0 -2.91e+14|t.shc, line 4, column 3: coefficient must be a number from"
            + " -1000000 to 1000000, but was \"-2.91e+14\"",
        "1 1 2 2 1|1 2 2 2 1|'t.shc, line 6: highest degree must be 2, as the file says, but was"
            + " 1'",
        "2020.0 2025.0|2020.0|t.shc, line 3: there must be 2 dates, but were 1",
        "2020.0 2025.0|2020.0 2020.0|t.shc, line 3, column 2: dates must increase, but 2020.0 does"
            + " not",
        "2020.0 2025.0|2020.0 2025.0 2030.0|t.shc, line 3, column 3: there must be 2 dates, but"
            + " were 3",
        "1 -1 4600 4500|1 -1 4600|t.shc, line 6: a row has 4 fields, but had 3",
        "1 -1 4600 4500|1 -1 4600 4500 1|t.shc, line 6, column 5: a row has 4 fields, but had 5",
        "1 -1 4600 4500|# 1 -1|t.shc, line 6: coefficients of degree and order 1 -1 are missing",
      })
  void badShcFilesAreRefusedByLineAndReason(String good, String bad, String message) {
    assertTrue(SMALL_SHC.contains(good));
    assertEquals(message, shcRefusal(SMALL_SHC.replace(good, bad)));
  }

  /** Ten thousand dates and rows of two fields, once a problem for each missing column. */
  @Test
  void aFileOfShortRowsIsRefusedInFewLines() {
    StringBuilder text = new StringBuilder("1 1 10000 2 1\n");
    for (int i = 0; i < 10_000; i++) {
      text.append(i / 100.0).append(i < 9_999 ? " " : "\n");
    }
    for (int i = 0; i < 1000; i++) {
      text.append("1 0\n");
    }
    String message = shcRefusal(text.toString());
    assertTrue(message.startsWith("t.shc, line 3: a row has 10002 fields, but had 2\n"));
    assertTrue(message.length() < 10_000, "" + message.length());
  }

  @Test
  void aSingleDateIsAFieldThatStandsStill() throws IOException {
    MagneticModel model =
        MagneticModel.readShc(
            "one.shc", new StringReader("1 1 1 1 1\n2020.0\n1 0 -29100\n1 1 -1500\n1 -1 4600\n"));
    assertArrayEquals(components(model, 2020.0), components(model, 2021.0));
    assertEquals(1, model.atDecimalYear(2021.0).notes().size());
  }
}
