package org.ferryglide.nav.geodesy;

import static org.ferryglide.testing.Rows.number;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import org.ferryglide.testing.Rows;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class ShortGeodesicsTest {
  /** What the javadoc of {@link Geodesics} promises. */
  private static final double PROMISED_METRES = 15e-9;

  private static final double[] UNTOUCHED = {1.5, 2.5, 3.5};

  @TestFactory
  List<DynamicTest> exactTableIsMet() {
    List<String[]> rows = Rows.of(ShortGeodesicsTest.class, "exact-short-geodesics.csv");
    return Arrays.stream(ExactGeodesicTable.Kind.values())
        .map(kind -> DynamicTest.dynamicTest(kind.name(), () -> checkKind(kind, rows)))
        .toList();
  }

  private static void checkKind(ExactGeodesicTable.Kind kind, List<String[]> rows) {
    Ellipsoid figure = kind.exact().figure;
    double[] out = new double[3];
    int checked = 0;
    for (String[] row : rows) {
      if (!row[0].equals(kind.name())) {
        continue;
      }
      String why = String.join(" ", row);
      double lat1 = number(row[1]);
      double lon1 = number(row[2]);
      double lat2 = number(row[3]);
      double lon2 = number(row[4]);
      double metres = number(row[7]);
      Geodesics.inverse(figure, lat1, lon1, lat2, lon2, out, 0);
      assertEquals(0.0, difference(out[0], row[5]) * metres, PROMISED_METRES, why);
      assertEquals(0.0, difference(out[1], row[6]) * metres, PROMISED_METRES, why);
      assertEquals(
          0.0, new BigDecimal(row[7]).subtract(new BigDecimal(out[2])).doubleValue(), 15e-9, why);
      Geodesics.direct(figure, lat1, lon1, number(row[5]), metres, out, 0);
      assertEquals(
          0.0, ExactGeodesicTable.metresBetween(out[0], out[1], lat2, lon2), PROMISED_METRES, why);
      assertEquals(0.0, difference(out[2], row[6]) * metres, PROMISED_METRES, why);
      checked++;
    }
    assertEquals(200, checked);
  }

  /** Radians. */
  private static double difference(double degrees, String exact) {
    double off = new BigDecimal(exact).subtract(new BigDecimal(degrees)).doubleValue();
    return Math.toRadians(Math.IEEEremainder(off, 360.0));
  }

  /** Lines just short of where two formulas meet and just beyond it, each against GeographicLib. */
  @Test
  void nothingJumpsWhereTheNumberOfPointsOrTheSolverChanges() {
    SplittableRandom random = new SplittableRandom(11);
    double[] out = new double[3];
    for (double meeting : new double[] {0.0035, 0.0075, 0.0157, ShortGeodesics.LONGEST_ARC}) {
      int shortOnes = 0;
      for (int i = 0; i < 400; i++) {
        // of the shortest, from 80 degrees on, some differ by too much longitude to go without a
        // step
        double lat = (meeting < 0.004 ? 87.0 : 80.0) * (2.0 * random.nextDouble() - 1.0);
        double course = 360.0 * random.nextDouble();
        double metres = 6378137.0 * meeting * (0.99 + 0.02 * random.nextDouble());
        GeodesicData line = Geodesic.WGS84.Direct(lat, 12.0, course, metres);
        Geodesics.inverse(lat, 12.0, line.lat2, line.lon2, out, 0);
        assertEquals(metres, out[2], 2 * PROMISED_METRES); // two solutions, 15 nanometres each
        Geodesics.direct(lat, 12.0, course, metres, out, 0);
        assertEquals(
            0.0,
            ExactGeodesicTable.metresBetween(out[0], out[1], line.lat2, line.lon2),
            2 * PROMISED_METRES);
        double[] end = new double[3];
        shortOnes +=
            ShortGeodesics.direct(Ellipsoid.WGS84, lat, 12.0, course, metres, end, 0) ? 1 : 0;
      }
      boolean last = meeting == ShortGeodesics.LONGEST_ARC;
      assertTrue(last ? shortOnes > 100 && shortOnes < 300 : shortOnes == 400, "" + shortOnes);
    }
  }

  @Test
  void whatIsOutOfRangeIsLeftUntouched() {
    Ellipsoid earth = Ellipsoid.WGS84;
    Ellipsoid tooFlat = Ellipsoid.ofInverseFlattening(6378137.0, 149.0);
    double nan = Double.NaN;
    double infinite = Double.POSITIVE_INFINITY;
    double[][] inverses = {
      {50, 5, 50, 5}, {0.0, 5, -0.0, 5}, {90, 0, 89.9, 0}, {-89.1, 0, -89, 1}, {50, 0, 56, 0},
      {50, 0, 50, 21}, {nan, 0, 50, 0}, {50, nan, 50, 0}, {50, 0, nan, 0}, {50, 0, 50, nan},
      {50, infinite, 50, 0}, {50, 0, 50, -infinite}, {infinite, 0, 50, 0}, {91, 0, 90.9, 0},
    };
    double[][] directs = {
      {90, 0, 0, 1}, {88.9, 0, 0, 50e3}, {50, 0, 0, 6e5}, {50, 0, 0, infinite}, {50, 0, 0, nan},
      {nan, 0, 0, 1}, {50, nan, 0, 1}, {50, 0, nan, 1}, {50, infinite, 0, 1}, {50, 0, 361, 1},
    };
    double[] out = UNTOUCHED.clone();
    for (double[] in : inverses) {
      assertFalse(ShortGeodesics.inverse(earth, in[0], in[1], in[2], in[3], out, 0));
    }
    for (double[] in : directs) {
      assertFalse(ShortGeodesics.direct(earth, in[0], in[1], in[2], in[3], out, 0));
    }
    assertFalse(ShortGeodesics.inverse(tooFlat, 50, 0, 50, 1, out, 0));
    assertFalse(ShortGeodesics.direct(tooFlat, 50, 0, 0, 1, out, 0));
    assertArrayEquals(UNTOUCHED, out);
  }

  @Test
  void pointsAlikeHaveNoLengthWhateverTheSignOfZero() {
    double[] out = new double[3];
    for (double zero : new double[] {0.0, -0.0}) {
      Geodesics.inverse(zero, zero, 0.0, 0.0, out, 0);
      assertEquals(0.0, out[2]);
      assertEquals(out[0], out[1]);
      Geodesics.direct(zero, zero, zero, zero, out, 0);
      assertArrayEquals(new double[] {0.0, 0.0, 0.0}, out); // and no minus sign
    }
    Geodesics.inverse(50, 180, 50, -180, out, 0);
    assertEquals(0.0, out[2]);
  }

  @Test
  void alongMeridianAndEquatorTheCoursesAreExact() {
    double[] out = new double[3];
    check(out, 50, 5, 51, 5, 0, 0);
    check(out, 51, 5, 50, 5, 180, 180);
    check(out, 0.5, 180, -0.5, -180, 180, 180);
    check(out, 0, 179.5, -0.0, -179.5, 90, 90);
    check(out, -0.0, -179.5, 0, 179.5, 270, 270);
    for (double course : new double[] {0, 90, 180, 270, 360, -90}) {
      Geodesics.direct(0, -179.9, course, 50e3, out, 0);
      assertEquals((course + 360) % 360, out[2]);
      assertEquals(course % 180 == 0 ? -179.9 : out[1], out[1]);
      assertEquals(course % 180 != 0 ? 0.0 : out[0], out[0]);
    }
  }

  private static void check(
      double[] out, double lat1, double lon1, double lat2, double lon2, double first, double last) {
    Geodesics.inverse(lat1, lon1, lat2, lon2, out, 0);
    assertEquals(first, out[0]);
    assertEquals(last, out[1]);
  }

  /** Over a pole and round it, where the general solver answers. */
  @Test
  void aLineOverThePoleIsWhole() {
    double[] out = new double[3];
    Geodesics.inverse(89.9, 0, 89.9, 180, out, 0);
    GeodesicData line = Geodesic.WGS84.Inverse(89.9, 0, 89.9, 180);
    assertEquals(line.s12, out[2]);
    Geodesics.direct(88.5, 20, 0, 300e3, out, 0);
    assertEquals(-160.0, out[1], 1e-9);
  }

  /** The shortest lengths: relative accuracy does not fade. */
  @Test
  void tinyLinesKeepTheirFigures() {
    double[] out = new double[3];
    for (double step = 1e-3; step > 1e-90; step *= 1e-3) {
      Geodesics.inverse(0.0, 0.0, 0.0, step, out, 0);
      assertEquals(1.0, out[2] / (6378137.0 * Math.toRadians(step)), 1e-15);
      assertEquals(90.0, out[0]);
    }
  }
}
