package org.ferryglide.nav.magnetic;

/** Schmidt semi-normalised coefficients of one date, or their yearly changes, while being read. */
final class CoefficientTable {
  final int degree;
  final double[][] g;
  final double[][] h;

  CoefficientTable(int degree) {
    this.degree = degree;
    g = new double[degree + 1][degree + 1];
    h = new double[degree + 1][degree + 1];
  }

  double[] packed() {
    return SphericalHarmonics.pack(degree, g, h);
  }
}
