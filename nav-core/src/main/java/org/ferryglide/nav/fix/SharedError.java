package org.ferryglide.nav.fix;

import java.util.OptionalDouble;

/** The error that all bearings of a fix may share, with which the lines would meet best. */
final class SharedError {
  private SharedError() {}

  /** A share of the weight below this cannot be told from a shift of position. */
  private static final double NOT_DETERMINED = 1e-6;

  /**
   * Degrees to take off every bearing; empty if a line is no bearing or the marks lie so that it
   * cannot be told from a shift of position.
   */
  static OptionalDouble of(LineEquation[] equations, double[][] rows) {
    double[] found = solve(equations, rows);
    return Double.isNaN(found[0]) ? OptionalDouble.empty() : OptionalDouble.of(found[0]);
  }

  /** The same, if it is more than so many of its own standard deviations. */
  static OptionalDouble significant(
      LineEquation[] equations, double[][] rows, double standardDeviations) {
    double[] found = solve(equations, rows);
    return Math.abs(found[0]) > standardDeviations * found[1]
        ? OptionalDouble.of(found[0])
        : OptionalDouble.empty();
  }

  /** Least squares for east, north and the error: the last and its standard deviation, or NaN. */
  private static double[] solve(LineEquation[] equations, double[][] rows) {
    double[][] m = new double[3][4];
    for (int i = 0; i < rows.length; i++) {
      double perDegree = rows[i][3] / equations[i].bearingSigmaDegrees();
      double[] a = {rows[i][1], rows[i][2], perDegree, rows[i][0]};
      for (int r = 0; r < 3; r++) {
        for (int c = 0; c < 4; c++) {
          m[r][c] += a[r] * a[c];
        }
      }
    }
    double plane = m[0][0] * m[1][1] - m[0][1] * m[1][0];
    double toEast = (m[0][2] * m[1][1] - m[0][1] * m[1][2]) / plane;
    double toNorth = (m[0][0] * m[1][2] - m[0][2] * m[1][0]) / plane;
    double weight = m[2][2] - m[2][0] * toEast - m[2][1] * toNorth;
    double side = m[2][3] - m[0][3] * toEast - m[1][3] * toNorth;
    return weight > NOT_DETERMINED * m[2][2]
        ? new double[] {side / weight, 1.0 / Math.sqrt(weight)}
        : new double[] {Double.NaN, Double.NaN};
  }
}
