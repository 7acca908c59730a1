package org.ferryglide.nav.geodesy;

import static org.ferryglide.testing.Rows.number;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
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
}
