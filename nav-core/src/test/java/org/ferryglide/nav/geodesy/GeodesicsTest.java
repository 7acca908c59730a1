package org.ferryglide.nav.geodesy;

import static org.ferryglide.testing.Rows.number;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Rows;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class GeodesicsTest {
  @TestFactory
  List<DynamicTest> publishedGeodesicsAgree() {
    return Rows.of(GeodesicsTest.class, "published-geodesics.csv").stream()
        .map(row -> DynamicTest.dynamicTest(row[0], () -> check(row)))
        .toList();
  }

  private static void check(String[] row) {
    double[] out = new double[3];
    Geodesics.inverse(number(row[1]), number(row[2]), number(row[4]), number(row[5]), out, 0);
    if (!row[3].isEmpty()) {
      assertEquals(number(row[3]), out[0], number(row[7]));
      assertEquals(number(row[6]), out[1], number(row[7]));
    }
    assertEquals(number(row[8]), out[2], number(row[9]));
    Geodesics.direct(number(row[1]), number(row[2]), out[0], out[2], out, 0);
    double metres =
        Places.metres(
            org.ferryglide.nav.position.Position.ofDegrees(
                number(row[4]), Degrees.longitude(number(row[5]))),
            out[0],
            out[1]);
    assertEquals(0.0, metres, 1e-7); // the course leaves in a double, over half the earth
  }

  @Test
  void nanGivesNan() {
    double[] out = {1, 1, 1};
    Geodesics.inverse(Double.NaN, 0, 0, 0, out, 0);
    assertTrue(Double.isNaN(out[2]));
    Geodesics.inverse(91, 0, 0, 0, out, 0);
    assertTrue(Double.isNaN(out[2]));
    Geodesics.direct(0, Double.NaN, 0, 1, out, 0);
    assertTrue(Double.isNaN(out[1]));
  }

  @Test
  void resultsStayInTheirRanges() {
    double[] out = new double[3];
    Geodesics.direct(0, 179, 90, 1e6, out, 0);
    assertTrue(out[1] >= -180 && out[1] < 180);
    Geodesics.inverse(0, 0, 0, -1, out, 0);
    assertArrayEquals(new double[] {270, 270}, new double[] {out[0], out[1]});
  }

  @Test
  void arraysGiveTheSameBitsAsSingleCallsInParallelToo() {
    int rows = 9_000;
    double[][] in = new double[4][rows];
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < rows; i++) {
      for (int k = 0; k < 4; k++) {
        in[k][i] = (k % 2 == 0 ? 90 : 180) * (2 * random.nextDouble() - 1);
      }
    }
    in[1][17] = Double.NaN;
    int from = 5;
    int until = rows - 3;
    int offset = 2;
    double[] single = new double[3 * rows];
    double[] array = new double[3 * rows];
    double[] parallel = new double[3 * rows];
    Ellipsoid earth = Ellipsoid.AIRY_1830;
    for (int i = from; i < until; i++) {
      Geodesics.inverse(
          earth, in[0][i], in[1][i], in[2][i], in[3][i], single, offset + 3 * (i - from));
    }
    Geodesics.inverse(earth, in[0], in[1], in[2], in[3], from, until, array, offset);
    Geodesics.inverseInParallel(earth, in[0], in[1], in[2], in[3], from, until, parallel, offset);
    assertArrayEquals(single, array);
    assertArrayEquals(single, parallel);
    assertTrue(Double.isNaN(array[offset + 3 * 12 + Geodesics.LENGTH]));
    for (int i = 0; i < rows; i++) {
      in[3][i] *= 1e5; // short rows are worked otherwise: ShortRowsTest
    }
    for (int i = from; i < until; i++) {
      Geodesics.direct(
          earth, in[0][i], in[1][i], in[2][i], in[3][i], single, offset + 3 * (i - from));
    }
    Geodesics.direct(earth, in[0], in[1], in[2], in[3], from, until, array, offset);
    Geodesics.directInParallel(earth, in[0], in[1], in[2], in[3], from, until, parallel, offset);
    assertArrayEquals(single, array);
    assertArrayEquals(single, parallel);
  }

  /** On a sphere the geodesic is the great circle, worked another way. */
  @Test
  void onASphereTheGeodesicIsTheGreatCircle() {
    Ellipsoid sphere = Ellipsoid.sphere(GreatCircle.MEAN_RADIUS.metres());
    SplittableRandom random = new SplittableRandom(5);
    double[] out = new double[3];
    for (int i = 0; i < 200; i++) {
      Position start =
          Position.ofDegrees(160 * random.nextDouble() - 80, 359 * random.nextDouble() - 180);
      Position end =
          Position.ofDegrees(160 * random.nextDouble() - 80, 359 * random.nextDouble() - 180);
      GreatCircle circle = GreatCircle.between(start, end, GreatCircle.MEAN_RADIUS);
      Geodesics.inverse(
          sphere,
          start.latitudeDegrees(),
          start.longitudeDegrees(),
          end.latitudeDegrees(),
          end.longitudeDegrees(),
          out,
          0);
      assertEquals(circle.length().metres(), out[Geodesics.LENGTH], 2e-8);
      assertEquals(circle.initialCourse().degrees(), out[Geodesics.INITIAL_COURSE], 1e-9);
      assertEquals(circle.finalCourse().degrees(), out[Geodesics.FINAL_COURSE], 1e-9);
    }
  }
}
