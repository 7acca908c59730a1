package org.ferryglide.nav.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The small helpers against the functions and sums that they stand for. */
class SeriesTest {
  private static final double[] COEFFICIENTS = {8e-4, -3e-4, 2e-4, 5e-5, -4e-5, 1e-5};

  private static SineSeries series() {
    double[] c = COEFFICIENTS;
    return new SineSeries(c[0], c[1], c[2], c[3], c[4], c[5]);
  }

  @Test
  void realSumsAreTheirTermsOneByOne() {
    for (double x = -1.5; x < 1.5; x += 0.013) {
      double sum = 0.0;
      for (int j = 1; j <= 6; j++) {
        sum += COEFFICIENTS[j - 1] * Math.sin(2 * j * x);
      }
      assertEquals(sum, Math.sin(2.0 * x) * series().overSine(Math.cos(2.0 * x)), 1e-18 * 600);
    }
  }

  @Test
  void complexSumsAreTheirTermsOneByOne() {
    double[] out = new double[4];
    for (double x = -3.0; x < 3.0; x += 0.13) {
      for (double y = -0.6; y < 0.6; y += 0.07) {
        double[] sum = new double[4];
        for (int j = 1; j <= 6; j++) {
          double c = COEFFICIENTS[j - 1];
          double k = 2.0 * j;
          sum[0] += c * Math.sin(k * x) * Math.cosh(k * y);
          sum[1] += c * Math.cos(k * x) * Math.sinh(k * y);
          sum[2] += k * c * Math.cos(k * x) * Math.cosh(k * y);
          sum[3] -= k * c * Math.sin(k * x) * Math.sinh(k * y);
        }
        series()
            .complex(
                Math.sin(2.0 * x),
                Math.cos(2.0 * x),
                Math.sinh(2.0 * y),
                Math.cosh(2.0 * y),
                out,
                0);
        for (int i = 0; i < 4; i++) {
          assertEquals(sum[i], out[i], 1e-14); // terms reach 0.1 at these angles
        }
      }
    }
  }

  @Test
  void smallAnglesAgreeWithTheLibraryOnBothSidesOfTheirLimits() {
    for (double x = -0.3; x <= 0.3; x += 0.00037) {
      double rounding = 2.0 * Math.ulp(0.3);
      assertEquals(Math.atan2(x, 1.0), SmallAngles.angle(x, 1.0), rounding);
      assertEquals(Math.atan2(x, -1.0), SmallAngles.angle(x, -1.0), 0.0, "left to the library");
      assertEquals(Math.sinh(x), SmallAngles.hyperbolicSine(x), Math.ulp(1.0));
      double artanh = 0.5 * (Math.log1p(x) - Math.log1p(-x));
      double root = Math.sqrt((1.0 - x) * (1.0 + x));
      assertEquals(artanh, SmallAngles.inverseHyperbolicTangent(x, root), 3.0 * rounding);
      if (SmallAngles.isSmall(x)) {
        assertEquals(Math.asin(x), SmallAngles.arcsine(x), 3e-17);
        assertEquals(Math.cos(x), SmallAngles.cosine(x * x), Math.ulp(1.0));
        assertEquals(Math.sin(x), x * SmallAngles.sineOverAngle(x * x), Math.ulp(0.02));
      }
    }
    assertEquals(-Math.PI, SmallAngles.angle(-0.0, -1.0));
    assertEquals(Math.PI / 2.0, SmallAngles.angle(1.0, 0.0));
  }
}
