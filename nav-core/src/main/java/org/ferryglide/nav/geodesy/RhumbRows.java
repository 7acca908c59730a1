package org.ferryglide.nav.geodesy;

/**
 * Courses and lengths of many rhumb lines, most of them short, in loops that the compiler works
 * several rows at once; see {@link Lanes}.
 *
 * <p>The isometric latitude and the rectifying one are taken as differences about the middle
 * latitude, each over the difference of latitude, so that nothing is singular along a parallel.
 * Rows that are not short, or where a series would not do, go to {@link RhumbLines#inverse}.
 */
final class RhumbRows extends ShortRows {
  /** The square of dsin φ / (cos φ₁ cos φ₂) up to which eight terms of the arcsinh do. */
  private static final double SERIES_END = 0.01;

  /** Powers of cos 2φ in (rectifying - geographic) difference, by even powers of δ/2. */
  private final double[] zeroth;

  private final double[] second;
  private final double[] fourth;

  private final double[] half = Lanes.lane();
  final double[] sine = Lanes.lane();
  final double[] cosine = Lanes.lane();
  private final double[] quarterSquare = Lanes.lane();
  private final double[] sinHalf = Lanes.lane();
  private final double[] square = Lanes.lane();
  private final double[] cosines = Lanes.lane();
  private final double[] sines = Lanes.lane();
  final double[] psi = Lanes.lane();
  final double[] mu = Lanes.lane();
  private final double[] a = Lanes.lane();
  private final double[] b = Lanes.lane();
  private final double[] c = Lanes.lane();
  private final double[] d = Lanes.lane();

  RhumbRows(Ellipsoid ellipsoid) {
    super(ellipsoid);
    double[] k = {
      ellipsoid.toMu1,
      ellipsoid.toMu2,
      ellipsoid.toMu3,
      ellipsoid.toMu4,
      ellipsoid.toMu5,
      ellipsoid.toMu6
    };
    zeroth = powers(k, 1, 2.0);
    second = powers(k, 3, -4.0 / 3.0);
    fourth = powers(k, 5, 4.0 / 15.0);
  }

  /**
   * The sum over k of factor c_k k^power cos 2kφ in powers of cos 2φ: from sin kδ / δ = k - k³ δ²/6
   * + k⁵ δ⁴/120, with δ² = 4 (δ/2)².
   */
  private static double[] powers(double[] coefficients, int power, double factor) {
    double[][] chebyshev = {
      {0, 1},
      {-1, 0, 2},
      {0, -3, 0, 4},
      {1, 0, -8, 0, 8},
      {0, 5, 0, -20, 0, 16},
      {-1, 0, 18, 0, -48, 0, 32}
    };
    double[] sum = new double[7];
    for (int k = 1; k <= 6; k++) {
      double weight = factor * coefficients[k - 1] * Math.pow(k, power);
      for (int j = 0; j < chebyshev[k - 1].length; j++) {
        sum[j] += weight * chebyshev[k - 1][j];
      }
    }
    return sum;
  }

  @Override
  boolean isSettled(int i) {
    return square[i] <= SERIES_END;
  }

  @Override
  void write(int i, double[] out, int at) {
    out[at + RhumbLines.COURSE] = course[i] == 360.0 ? 0.0 : course[i];
    out[at + RhumbLines.LENGTH] = metres[i];
  }

  @Override
  void single(double lat1, double lon1, double lat2, double lon2, double[] out, int offset) {
    RhumbLines.inverse(ellipsoid, lat1, lon1, lat2, lon2, out, offset);
  }

  @Override
  void work(double[] lat1, double[] lat2, int first, int n) {
    for (int i = 0; i < n; i++) {
      half[i] = (lat2[first + i] + lat1[first + i]) * (0.5 * Lanes.HALF_DEGREE);
    }
    about(half, n);
    isometric(n);
    double radius = ellipsoid.rectifyingRadius;
    for (int i = 0; i < n; i++) {
      a[i] = radius * mu[i] / psi[i]; // metres in a unit of the chart
    }
    for (int i = 0; i < n; i++) {
      a[i] = lambda[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = a[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = radius * (mu[i] * delta[i]);
    }
    for (int i = 0; i < n; i++) {
      metres[i] = Math.sqrt(b[i] * b[i] + a[i]);
    }
    for (int i = 0; i < n; i++) {
      psi[i] = psi[i] * delta[i];
    }
    Lanes.courses(lambda, psi, n, a, b, c, course);
  }

  /**
   * Moves to middle latitudes, given by their halves in radians, and finds the difference of
   * rectifying latitude over that of latitude, {@link #mu}.
   */
  void about(double[] halves, int n) {
    Lanes.sinesAndCosines(halves, n, a, b, sine, cosine);
    for (int i = 0; i < n; i++) {
      quarterSquare[i] = 0.25 * delta[i] * delta[i];
    }
    rectifying(n);
  }

  /**
   * The difference of isometric latitude over that of latitude, {@link #psi}: {@link
   * RhumbMath#isometric}.
   */
  void isometric(int n) {
    double e2 = ellipsoid.e2;
    for (int i = 0; i < n; i++) {
      double z = quarterSquare[i];
      sinHalf[i] = 0.5 - z * (1.0 / 12.0 - z * (1.0 / 240.0 - z / 10080.0)); // sin(δ/2) / δ
    }
    for (int i = 0; i < n; i++) {
      square[i] = sinHalf[i] * delta[i];
    }
    for (int i = 0; i < n; i++) {
      square[i] = square[i] * square[i];
    }
    for (int i = 0; i < n; i++) {
      cosines[i] = cosine[i] * cosine[i];
    }
    for (int i = 0; i < n; i++) {
      cosines[i] = cosines[i] - square[i];
    }
    for (int i = 0; i < n; i++) {
      sines[i] = sine[i] * sine[i];
    }
    for (int i = 0; i < n; i++) {
      sines[i] = sines[i] - square[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = 2.0 * cosine[i] * sinHalf[i]; // (sin φ₂ - sin φ₁) / δ
    }
    for (int i = 0; i < n; i++) {
      b[i] = a[i] / cosines[i];
    }
    for (int i = 0; i < n; i++) {
      square[i] = b[i] * delta[i];
    }
    for (int i = 0; i < n; i++) {
      square[i] = square[i] * square[i];
    }
    for (int i = 0; i < n; i++) {
      double x = square[i]; // arcsinh(x) / x in powers of x²
      double high = 945.0 / 42240.0 - x * (10395.0 / 599040.0 - x * (135135.0 / 9676800.0));
      double low = 15.0 / 336.0 - x * (105.0 / 3456.0 - x * high);
      c[i] = 1.0 - x * (1.0 / 6.0 - x * (3.0 / 40.0 - x * low));
    }
    for (int i = 0; i < n; i++) {
      psi[i] = b[i] * c[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = a[i] / (1.0 - e2 * sines[i]);
    }
    for (int i = 0; i < n; i++) {
      b[i] = a[i] * delta[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = e2 * b[i] * b[i];
    }
    for (int i = 0; i < n; i++) {
      double z = b[i]; // arctanh(x) / x in powers of x²
      c[i] = e2 * (1.0 + z * (1.0 / 3.0 + z * (0.2 + z / 7.0)));
    }
    for (int i = 0; i < n; i++) {
      psi[i] = psi[i] - a[i] * c[i];
    }
  }

  /** The difference of rectifying latitude over that of latitude. */
  private void rectifying(int n) {
    for (int i = 0; i < n; i++) {
      d[i] = 1.0 - 2.0 * sine[i] * sine[i]; // cos 2φ
    }
    polynomial(zeroth, n, mu);
    polynomial(second, n, a);
    polynomial(fourth, n, b);
    for (int i = 0; i < n; i++) {
      b[i] = quarterSquare[i] * b[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = a[i] + b[i];
    }
    for (int i = 0; i < n; i++) {
      mu[i] = mu[i] + quarterSquare[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      mu[i] = 1.0 + mu[i];
    }
  }

  private void polynomial(double[] p, int n, double[] result) {
    double p0 = p[0];
    double p1 = p[1];
    double p2 = p[2];
    double p3 = p[3];
    double p4 = p[4];
    double p5 = p[5];
    double p6 = p[6];
    for (int i = 0; i < n; i++) {
      double y = d[i];
      result[i] = p0 + y * (p1 + y * (p2 + y * (p3 + y * (p4 + y * (p5 + y * p6)))));
    }
  }
}
