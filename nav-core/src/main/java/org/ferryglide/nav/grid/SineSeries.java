package org.ferryglide.nav.grid;

import java.io.Serializable;

/**
 * Six terms of c₁ sin 2x + c₂ sin 4x + … + c₆ sin 12x, for a real or a complex angle in radians.
 *
 * <p>Every series of this room has this shape, because the ellipsoid is symmetric about its equator
 * and its axis. Clenshaw's recurrence sums them from the double angle alone.
 */
final class SineSeries implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double c1;
  private final double c2;
  private final double c3;
  private final double c4;
  private final double c5;
  private final double c6;

  SineSeries(double c1, double c2, double c3, double c4, double c5, double c6) {
    this.c1 = c1;
    this.c2 = c2;
    this.c3 = c3;
    this.c4 = c4;
    this.c5 = c5;
    this.c6 = c6;
  }

  /**
   * The sum divided by sin 2x, so that a caller near a pole can keep the cosine apart.
   *
   * @param cos2 cosine of twice the angle
   * @return the sum over the sine of twice the angle
   */
  double overSine(double cos2) {
    double a = 2.0 * cos2;
    double b5 = c5 + a * c6;
    double b4 = c4 + a * b5 - c6;
    double b3 = c3 + a * b4 - b5;
    double b2 = c2 + a * b3 - b4;
    return c1 + a * b2 - b3;
  }

  /**
   * Sum and derivative at the complex angle x + iy.
   *
   * @param sin2 sine of 2x
   * @param cos2 cosine of 2x
   * @param sinh2 hyperbolic sine of 2y
   * @param cosh2 hyperbolic cosine of 2y
   * @param out receives real and imaginary part of the sum, then of its derivative
   * @param offset index in {@code out} of the first of the four
   */
  void complex(double sin2, double cos2, double sinh2, double cosh2, double[] out, int offset) {
    double zr = 2.0 * cos2 * cosh2;
    double zi = -2.0 * sin2 * sinh2;
    // the sum, by the recurrence for sines; letters r and i are real and imaginary parts
    double r5 = c5 + zr * c6;
    double i5 = zi * c6;
    double r4 = c4 + zr * r5 - zi * i5 - c6;
    double i4 = zr * i5 + zi * r5;
    double r3 = c3 + zr * r4 - zi * i4 - r5;
    double i3 = zr * i4 + zi * r4 - i5;
    double r2 = c2 + zr * r3 - zi * i3 - r4;
    double i2 = zr * i3 + zi * r3 - i4;
    double r1 = c1 + zr * r2 - zi * i2 - r3;
    double i1 = zr * i2 + zi * r2 - i3;
    double sr = sin2 * cosh2;
    double si = cos2 * sinh2;
    // its derivative, by the recurrence for cosines
    double d6 = 12.0 * c6;
    double d5 = 10.0 * c5;
    double p5 = d5 + zr * d6;
    double q5 = zi * d6;
    double p4 = 8.0 * c4 + zr * p5 - zi * q5 - d6;
    double q4 = zr * q5 + zi * p5;
    double p3 = 6.0 * c3 + zr * p4 - zi * q4 - p5;
    double q3 = zr * q4 + zi * p4 - q5;
    double p2 = 4.0 * c2 + zr * p3 - zi * q3 - p4;
    double q2 = zr * q3 + zi * p3 - q4;
    double p1 = 2.0 * c1 + zr * p2 - zi * q2 - p3;
    double q1 = zr * q2 + zi * p2 - q3;
    out[offset] = sr * r1 - si * i1;
    out[offset + 1] = sr * i1 + si * r1;
    out[offset + 2] = 0.5 * (zr * p1 - zi * q1) - p2;
    out[offset + 3] = 0.5 * (zr * q1 + zi * p1) - q2;
  }
}
