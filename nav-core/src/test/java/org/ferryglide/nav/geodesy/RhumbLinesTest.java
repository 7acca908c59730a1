package org.ferryglide.nav.geodesy;

import static org.ferryglide.testing.Rows.number;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.ferryglide.testing.Rows;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class RhumbLinesTest {
  /** What the javadoc promises, beyond the half unit in the last place of each double. */
  private static final double PROMISED_NANOMETRES = 15.0;

  private static final double EXACT = 0.0;

  @TestFactory
  List<DynamicTest> inverseAgreesWithTheExactTable() {
    return Rows.of(RhumbLinesTest.class, "exact-rhumb-inverse.csv").stream()
        .map(row -> DynamicTest.dynamicTest(String.join(" ", row), () -> checkInverse(row)))
        .toList();
  }

  private static void checkInverse(String[] row) {
    BigDecimal[] exact = {new BigDecimal(row[5]), new BigDecimal(row[6])};
    RhumbError error =
        RhumbError.ofInverse(
            ExactRhumb.wgs84(),
            number(row[1]),
            number(row[2]),
            number(row[3]),
            number(row[4]),
            exact);
    assertEquals(0.0, error.lengthNanometres(), PROMISED_NANOMETRES);
    assertEquals(0.0, error.courseNanometres(), PROMISED_NANOMETRES);
  }

  @TestFactory
  List<DynamicTest> directAgreesWithTheExactTable() {
    return Rows.of(RhumbLinesTest.class, "exact-rhumb-direct.csv").stream()
        .map(row -> DynamicTest.dynamicTest(String.join(" ", row), () -> checkDirect(row)))
        .toList();
  }

  private static void checkDirect(String[] row) {
    BigDecimal[] exact = {new BigDecimal(row[5]), new BigDecimal(row[6])};
    RhumbError error =
        RhumbError.ofDirect(
            ExactRhumb.wgs84(),
            number(row[1]),
            number(row[2]),
            number(row[3]),
            number(row[4]),
            exact);
    assertEquals(0.0, error.endNanometres(), PROMISED_NANOMETRES);
  }

  @Test
  void otherFlatteningsAreServedAsWell() {
    for (String inverseFlattening : List.of("200", "-200", "1e300")) {
      ExactRhumb exact = new ExactRhumb("6400000", inverseFlattening);
      SplittableRandom random = new SplittableRandom(5);
      for (ExactRhumbTable.Kind kind : ExactRhumbTable.Kind.values()) {
        double[] leg = kind.leg(random);
        BigDecimal[] answer = exact.inverse(leg[0], leg[1], leg[2], leg[3]);
        RhumbError error = RhumbError.ofInverse(exact, leg[0], leg[1], leg[2], leg[3], answer);
        assertEquals(0.0, error.lengthNanometres(), PROMISED_NANOMETRES, kind.name());
        assertEquals(0.0, error.courseNanometres(), PROMISED_NANOMETRES, kind.name());
        if (kind != ExactRhumbTable.Kind.POLE) {
          double course = answer[0].doubleValue();
          double metres = answer[1].doubleValue();
          BigDecimal[] end = exact.direct(leg[0], leg[1], course, metres);
          RhumbError there = RhumbError.ofDirect(exact, leg[0], leg[1], course, metres, end);
          assertEquals(0.0, there.endNanometres(), PROMISED_NANOMETRES, kind.name());
        }
      }
    }
  }

  @TestFactory
  List<DynamicTest> publishedExamplesAgree() {
    return Rows.of(RhumbLinesTest.class, "published-rhumb-lines.csv").stream()
        .map(row -> DynamicTest.dynamicTest(row[0], () -> checkPublished(row)))
        .toList();
  }

  private static void checkPublished(String[] row) {
    double[] out = inverse(number(row[1]), number(row[2]), number(row[3]), number(row[4]));
    assertEquals(number(row[5]), out[0], number(row[6]));
    assertEquals(number(row[7]), out[1], number(row[8]));
  }

  /** Source: test suite of GeographicLib 2.7, rhumb lines on a sphere of 6400 km. */
  @Test
  void publishedDirectExampleOnASphereAgrees() {
    double[] out = new double[2];
    RhumbLines.direct(Ellipsoid.sphere(6.4e6), 20, 0, 37.1, 8399000, out, 0);
    double halfAPrintedDigit = 0.5e-11;
    assertEquals(79.97173787686, out[0], halfAPrintedDigit);
    assertEquals(90.00285375451, out[1], halfAPrintedDigit);
  }

  @Test
  void pointsHalfRoundTheEarthApartAreJoinedByTheEast() {
    assertEquals(90.0, inverse(0, 0, 0, 180)[0], EXACT);
    assertEquals(90.0, inverse(0, 0, 0, -180)[0], EXACT);
    assertEquals(90.0, inverse(0, -90, 0, 90)[0], EXACT);
    assertEquals(90.0, inverse(0, 90, 0, -90)[0], EXACT);
  }

  @Test
  void polesAreReachedAlongAMeridianWhateverTheirLongitude() {
    double quarter = 10001965.72931272; // exact table and GeographicLib's tests: 10001965.729
    assertArrayEquals(new double[] {0.0, quarter}, inverse(0, 0, 90, 30), 4e-9);
    assertArrayEquals(new double[] {180.0, quarter}, inverse(0, 0, -90, -30), 4e-9);
    assertArrayEquals(new double[] {180.0, quarter}, inverse(90, 70, 0, 0), 4e-9);
    assertArrayEquals(new double[] {180.0, 2 * quarter}, inverse(90, 70, -90, 0), 8e-9);
    assertArrayEquals(new double[] {0.0, 0.0}, inverse(90, 70, 90, 0), EXACT);
    assertArrayEquals(new double[] {0.0, 0.0}, inverse(-90, 0, -90, 120), EXACT);
  }

  @Test
  void aPoleFoundByItsDistanceKeepsTheLongitudeOfTheStart() {
    for (double lat = -90; lat <= 90; lat += 7.5) {
      double[] out = inverse(lat, 12, 90, 12);
      RhumbLines.direct(lat, 12, out[0], out[1], out, 0);
      assertEquals(90.0, out[0], 2e-14);
      assertEquals(12.0, out[1], EXACT);
    }
  }

  @Test
  void pastAPoleThereIsNoEnd() {
    double[] out = {1, 1};
    RhumbLines.direct(89, 0, 0, 200e3, out, 0);
    assertArrayEquals(new double[] {Double.NaN, Double.NaN}, out);
    RhumbLines.direct(-89, 0, 170, 200e3, out, 0);
    assertArrayEquals(new double[] {Double.NaN, Double.NaN}, out);
  }

  @Test
  void aLineThatCirclesThePoleHasNoLongitudeThere() {
    double[] out = new double[2];
    RhumbLines.direct(90, 0, 45, 0.0, out, 0);
    assertArrayEquals(new double[] {90.0, 0.0}, out, EXACT);
    RhumbLines.direct(90, 0, 90, 10.0, out, 0);
    assertEquals(90.0, out[0], EXACT);
    assertTrue(Double.isNaN(out[1]));
  }

  @Test
  void pointsAlikeGiveNoLengthAndNorth() {
    assertArrayEquals(new double[] {0.0, 0.0}, inverse(50, -5, 50, -5), EXACT);
    assertArrayEquals(new double[] {0.0, 0.0}, inverse(50, 180, 50, -180), EXACT);
    assertArrayEquals(new double[] {0.0, 0.0}, inverse(0.0, -0.0, -0.0, 0.0), EXACT);
  }

  /** Differences of latitude near the least double count as none, instead of giving NaN. */
  @Test
  void aDifferenceOfLatitudeThatUnderflowsIsAParallel() {
    double[] parallel = new double[2];
    RhumbLines.inverse(0.0, 0.0, 0.0, 1.0, parallel, 0);
    for (double tiny : new double[] {Double.MIN_VALUE, -1e-310, 1e-300, -1e-280}) {
      double[] out = new double[2];
      RhumbLines.inverse(0.0, 0.0, tiny, 1.0, out, 0);
      assertEquals(90.0, out[0], Math.ulp(90.0));
      assertEquals(parallel[1], out[1], Math.ulp(parallel[1]));
    }
  }

  @Test
  void cardinalCoursesAreExact() {
    assertEquals(0.0, inverse(10, 5, 20, 5)[0], EXACT);
    assertEquals(180.0, inverse(20, 5, 10, 5)[0], EXACT);
    assertEquals(90.0, inverse(10, 179, 10, -179)[0], EXACT);
    assertEquals(270.0, inverse(10, -179, 10, 179)[0], EXACT);
    double[] out = new double[2];
    RhumbLines.direct(50, 5, 90, 1e6, out, 0);
    assertEquals(50.0, out[0], EXACT);
    RhumbLines.direct(50, 5, 180, 1e6, out, 0);
    assertEquals(5.0, out[1], EXACT);
    RhumbLines.direct(50, 5, 270, -1e6, out, 0);
    assertEquals(50.0, out[0], EXACT);
  }

  @Test
  void longitudeComesBackBetweenMinus180And180() {
    double[] out = new double[2];
    RhumbLines.direct(0, 179, 90, 1e6, out, 0);
    assertEquals(-180 + (1e6 / 111319.4907932736 - 1), out[1], 1e-12); // metres in a degree, WGS84
    RhumbLines.direct(10, 180, 0, 0, out, 0);
    assertEquals(-180.0, out[1], EXACT);
  }

  @Test
  void nanAndLatitudesBeyondThePoleGiveNan() {
    double[] good = {50, -5, 51, -4};
    for (int i = 0; i < 4; i++) {
      double[] bad = good.clone();
      bad[i] = Double.NaN;
      assertArrayEquals(
          new double[] {Double.NaN, Double.NaN}, inverse(bad[0], bad[1], bad[2], bad[3]));
      double[] out = {1, 1};
      RhumbLines.direct(bad[0], bad[1], bad[2], bad[3], out, 0);
      assertTrue(Double.isNaN(out[1]), "argument " + i);
    }
    assertTrue(Double.isNaN(inverse(91, 0, 0, 0)[1]));
    assertTrue(Double.isNaN(inverse(0, 0, -90.5, 0)[1]));
    assertTrue(Double.isNaN(inverse(0, 0, 0, Double.POSITIVE_INFINITY)[1]));
  }

  @Test
  void arraysGiveTheSameBitsAsSingleCallsInParallelToo() {
    int rows = 20_000;
    double[][] in = new double[4][rows];
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < rows; i++) {
      for (int k = 0; k < 4; k++) {
        in[k][i] = (k % 2 == 0 ? 90 : 180) * (2 * random.nextDouble() - 1);
      }
    }
    in[1][17] = Double.NaN;
    double[] single = new double[2 * rows];
    double[] array = new double[2 * rows];
    double[] parallel = new double[2 * rows];
    int from = 5;
    int to = rows - 3;
    for (int i = from; i < to; i++) {
      RhumbLines.inverse(in[0][i], in[1][i], in[2][i], in[3][i], single, 2 * i);
    }
    Ellipsoid earth = Ellipsoid.WGS84;
    RhumbLines.inverse(earth, in[0], in[1], in[2], in[3], from, to, array, 2 * from);
    RhumbLines.inverseInParallel(earth, in[0], in[1], in[2], in[3], from, to, parallel, 2 * from);
    assertTrue(Arrays.equals(single, array));
    assertTrue(Arrays.equals(single, parallel));
    assertTrue(Double.isNaN(array[35]) && !Double.isNaN(array[37]));

    for (int i = 0; i < rows; i++) {
      in[3][i] *= 2e4; // short rows are worked otherwise: ShortRowsTest
    }
    for (int i = from; i < to; i++) {
      RhumbLines.direct(in[0][i], in[1][i], in[2][i], in[3][i], single, 2 * i);
    }
    RhumbLines.direct(earth, in[0], in[1], in[2], in[3], from, to, array, 2 * from);
    RhumbLines.directInParallel(earth, in[0], in[1], in[2], in[3], from, to, parallel, 2 * from);
    assertTrue(Arrays.equals(single, array));
    assertTrue(Arrays.equals(single, parallel));
  }

  @Test
  void anArrayTooShortIsRefused() {
    double[] one = {50};
    assertThrows(
        IndexOutOfBoundsException.class,
        () -> RhumbLines.inverse(Ellipsoid.WGS84, one, one, one, one, 0, 2, new double[2], 0));
  }

  private static double[] inverse(double lat1, double lon1, double lat2, double lon2) {
    double[] out = new double[2];
    RhumbLines.inverse(lat1, lon1, lat2, lon2, out, 0);
    return out;
  }

  /** Turns of the circle beyond counting: whatever meridian remains, figures stay finite. */
  @Test
  void absurdLongitudesStayInRangeAndInfiniteOnesGiveNan() {
    double[] out = new double[3];
    double[] plain = new double[3];
    for (double lon : new double[] {1e236, -1e17, 3e5, Double.MAX_VALUE}) {
      double reduced = Math.IEEEremainder(lon, 360.0);
      RhumbLines.inverse(50, lon, 51, 5, out, 0);
      RhumbLines.inverse(50, reduced, 51, 5, plain, 0);
      assertEquals(plain[0], out[0]);
      assertEquals(plain[1], out[1]);
      Geodesics.inverse(50, lon, 51, 5, out, 0);
      Geodesics.inverse(50, reduced, 51, 5, plain, 0);
      assertEquals(plain[2], out[2]);
    }
    for (double lon : new double[] {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
      RhumbLines.inverse(50, lon, 51, 5, out, 0);
      assertTrue(Double.isNaN(out[0]) && Double.isNaN(out[1]));
      RhumbLines.direct(50, lon, 30, 1000, out, 0);
      assertTrue(Double.isNaN(out[0]) && Double.isNaN(out[1]));
      Geodesics.inverse(50, lon, 51, 5, out, 0);
      assertTrue(Double.isNaN(out[2]));
      Geodesics.direct(50, lon, 30, 1000, out, 0);
      assertTrue(Double.isNaN(out[0]) && Double.isNaN(out[1]) && Double.isNaN(out[2]));
    }
  }
}
