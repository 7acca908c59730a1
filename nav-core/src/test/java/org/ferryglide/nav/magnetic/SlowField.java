package org.ferryglide.nav.magnetic;

import java.util.function.IntFunction;

/**
 * The sums done slowly and plainly, for comparison: Schmidt semi-normalised functions by their
 * textbook recursion in the colatitude (Winch, Ivers, Turner and Stening 2005, Geophysical Journal
 * International 160, 487-504), divided by the sine, in geocentric coordinates turned at the end.
 */
final class SlowField {
  private SlowField() {}

  /** North, east and down in nanotesla; not at the poles. */
  static double[] components(
      int degree,
      IntFunction<double[]> g,
      IntFunction<double[]> h,
      double latitude,
      double longitude,
      double heightMetres) {
    double a = 6378137.0;
    double f = 1.0 / 298.257223563;
    double e2 = f * (2.0 - f);
    double phi = Math.toRadians(latitude);
    double lambda = Math.toRadians(longitude);
    double normal = a / Math.sqrt(1.0 - e2 * Math.pow(Math.sin(phi), 2));
    double fromAxis = (normal + heightMetres) * Math.cos(phi);
    double alongAxis = (normal * (1.0 - e2) + heightMetres) * Math.sin(phi);
    double radius = Math.hypot(fromAxis, alongAxis);
    double theta = Math.atan2(fromAxis, alongAxis);
    double cos = Math.cos(theta);
    double sin = Math.sin(theta);
    double[][] p = new double[degree + 1][degree + 1];
    double[][] dp = new double[degree + 1][degree + 1];
    p[0][0] = 1.0;
    for (int n = 1; n <= degree; n++) {
      for (int m = 0; m <= n; m++) {
        if (n == m) {
          double k = n == 1 ? 1.0 : Math.sqrt((2.0 * n - 1.0) / (2.0 * n));
          p[n][n] = k * sin * p[n - 1][n - 1];
          dp[n][n] = k * (cos * p[n - 1][n - 1] + sin * dp[n - 1][n - 1]);
        } else {
          double root = Math.sqrt((double) n * n - (double) m * m);
          double second = n - 1 > m ? Math.sqrt(Math.pow(n - 1.0, 2) - (double) m * m) : 0.0;
          double p2 = n - 2 >= 0 ? p[n - 2][m] : 0.0;
          double dp2 = n - 2 >= 0 ? dp[n - 2][m] : 0.0;
          p[n][m] = ((2.0 * n - 1.0) * cos * p[n - 1][m] - second * p2) / root;
          dp[n][m] =
              ((2.0 * n - 1.0) * (cos * dp[n - 1][m] - sin * p[n - 1][m]) - second * dp2) / root;
        }
      }
    }
    double north = 0.0;
    double east = 0.0;
    double down = 0.0;
    for (int n = 1; n <= degree; n++) {
      double ratio = Math.pow(6371200.0 / radius, n + 2);
      for (int m = 0; m <= n; m++) {
        double c = Math.cos(m * lambda);
        double s = Math.sin(m * lambda);
        double gnm = g.apply(n)[m];
        double hnm = h.apply(n)[m];
        north += ratio * (gnm * c + hnm * s) * dp[n][m];
        east += ratio * m * (gnm * s - hnm * c) * p[n][m] / sin;
        down -= ratio * (n + 1) * (gnm * c + hnm * s) * p[n][m];
      }
    }
    double turn = Math.PI / 2.0 - theta - phi;
    return new double[] {
      north * Math.cos(turn) - down * Math.sin(turn),
      east,
      north * Math.sin(turn) + down * Math.cos(turn)
    };
  }
}
