package org.ferryglide.nav.geodesy;

/**
 * Courses and lengths of many geodesics, most of them short, in loops that the compiler works
 * several rows at once; see {@link Lanes}.
 *
 * <p>The formulas are those of {@link ShortGeodesics} with three points, up to 48 km, and a step
 * where a row of the block is beyond 22. Rows beyond 48 km go to {@link Geodesics#inverse}.
 */
final class GeodesicRows extends ShortRows {
  private final double[] half = Lanes.lane();
  private final double[] sin1 = Lanes.lane();
  private final double[] cos1 = Lanes.lane();
  private final double[] sin2 = Lanes.lane();
  private final double[] cos2 = Lanes.lane();
  private final double[] w1 = Lanes.lane();
  private final double[] w2 = Lanes.lane();
  private final double[] b1 = Lanes.lane();
  private final double[] b2 = Lanes.lane();
  private final double[] c1 = Lanes.lane();
  private final double[] c2 = Lanes.lane();
  private final double[] sinDB = Lanes.lane();
  private final double[] cosDB = Lanes.lane();
  private final double[] north = Lanes.lane();
  private final double[] cosines = Lanes.lane();
  private final double[] omega = Lanes.lane();
  private final double[] sinHalf = Lanes.lane();
  private final double[] square = Lanes.lane();
  private final double[] middle = Lanes.lane();
  private final double[] mean = Lanes.lane();
  private final double[] arc = Lanes.lane();
  private final double[] turn = Lanes.lane();
  private final double[] a = Lanes.lane();
  private final double[] b = Lanes.lane();
  private final double[] c = Lanes.lane();
  private final double[] d = Lanes.lane();
  private final double[] e = Lanes.lane();

  GeodesicRows(Ellipsoid ellipsoid) {
    super(ellipsoid);
  }

  @Override
  boolean isRoundEnough() {
    return Math.abs(ellipsoid.flattening()) <= ShortGeodesics.GREATEST_FLATTENING;
  }

  @Override
  boolean isSettled(int i) {
    return square[i] <= ShortGeodesics.THREE_POINTS;
  }

  @Override
  void write(int i, double[] out, int at) {
    out[at + Geodesics.INITIAL_COURSE] = Degrees.reduced(course[i]);
    out[at + Geodesics.FINAL_COURSE] = Degrees.reduced(course[i] + turn[i]);
    out[at + Geodesics.LENGTH] = metres[i];
  }

  @Override
  void single(double lat1, double lon1, double lat2, double lon2, double[] out, int offset) {
    Geodesics.inverse(ellipsoid, lat1, lon1, lat2, lon2, out, offset);
  }

  @Override
  void work(double[] lat1, double[] lat2, int first, int n) {
    for (int i = 0; i < n; i++) {
      half[i] = lat1[first + i] * Lanes.HALF_DEGREE;
    }
    Lanes.sinesAndCosines(half, n, a, b, sin1, cos1);
    latitudes(n);
    start(n);
    arcs(n);
    if (!isGoodFromTheStart(n)) {
      newtonStep(n);
      arcs(n);
    }
    finish(n);
  }

  /** Whether no row needs a Newton step. */
  private boolean isGoodFromTheStart(int n) {
    for (int i = 0; i < n; i++) {
      if (!(square[i] <= ShortGeodesics.NO_STEP
          && Math.abs(lambda[i]) <= ShortGeodesics.NO_STEP_LONGITUDE)) { // so that NaN fails
        return false;
      }
    }
    return true;
  }

  /** Reduced latitudes β, their differences, and w at both ends. */
  private void latitudes(int n) {
    double e2 = ellipsoid.e2;
    double ratio = 1.0 - ellipsoid.flattening();
    // Sine and cosine of the second latitude by its difference, and both reduced.
    for (int i = 0; i < n; i++) {
      a[i] = 0.25 * delta[i] * delta[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = 0.5 - a[i] * (1.0 / 12.0 - a[i] * (1.0 / 240.0 - a[i] / 10080.0));
    }
    for (int i = 0; i < n; i++) {
      a[i] = b[i] * delta[i]; // sin δ/2
    }
    for (int i = 0; i < n; i++) {
      b[i] = a[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = Math.sqrt(1.0 - b[i]);
    }
    for (int i = 0; i < n; i++) {
      d[i] = 2.0 * a[i] * c[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = 2.0 * b[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = cos1[i] * d[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = sin1[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = b[i] - c[i];
    }
    for (int i = 0; i < n; i++) {
      sin2[i] = sin1[i] + b[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = sin1[i] * d[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = cos1[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = b[i] + c[i];
    }
    for (int i = 0; i < n; i++) {
      cos2[i] = cos1[i] - b[i];
    }
    for (int i = 0; i < n; i++) {
      w1[i] = ratio / Math.sqrt(1.0 - e2 * sin1[i] * sin1[i]);
    }
    for (int i = 0; i < n; i++) {
      w2[i] = ratio / Math.sqrt(1.0 - e2 * sin2[i] * sin2[i]);
    }
    for (int i = 0; i < n; i++) {
      b1[i] = sin1[i] * w1[i];
    }
    for (int i = 0; i < n; i++) {
      b2[i] = sin2[i] * w2[i];
    }
    for (int i = 0; i < n; i++) {
      c1[i] = cos1[i] * w1[i] / ratio;
    }
    for (int i = 0; i < n; i++) {
      c2[i] = cos2[i] * w2[i] / ratio;
    }
    for (int i = 0; i < n; i++) {
      sinDB[i] = d[i] * w1[i];
    }
    for (int i = 0; i < n; i++) {
      sinDB[i] = sinDB[i] * w2[i] / ratio;
    }
    for (int i = 0; i < n; i++) {
      a[i] = sinDB[i] * sinDB[i];
    }
    for (int i = 0; i < n; i++) {
      cosDB[i] = Math.sqrt(1.0 - a[i]);
    }
    for (int i = 0; i < n; i++) {
      north[i] = a[i] / (2.0 * (1.0 + cosDB[i]));
    }
    for (int i = 0; i < n; i++) {
      cosines[i] = c1[i] * c2[i];
    }
  }

  /** The longitude on the sphere, good to the fifth order, by w in the middle too. */
  private void start(int n) {
    double e2 = ellipsoid.e2;
    double less = 1.0 - e2;
    for (int i = 0; i < n; i++) {
      a[i] = w1[i] + w2[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = e2 * cosines[i] * (0.75 - 0.125 * a[i]); // nearly the pull
    }
    for (int i = 0; i < n; i++) {
      b[i] = 1.0 + b[i] * (2.0 + 3.0 * b[i]);
    }
    for (int i = 0; i < n; i++) {
      c[i] = lambda[i] * lambda[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = c[i] * b[i]; // nearly ω²
    }
    for (int i = 0; i < n; i++) {
      d[i] = cosines[i] * c[i];
    }
    for (int i = 0; i < n; i++) {
      e[i] = 4.0 * north[i] + d[i]; // nearly σ²
    }
    for (int i = 0; i < n; i++) {
      d[i] = 0.25 * d[i] * (1.0 - (1.0 / 12.0) * c[i]);
    }
    for (int i = 0; i < n; i++) {
      d[i] = north[i] + d[i]; // nearly sin² σ/2
    }
    for (int i = 0; i < n; i++) {
      middle[i] = b1[i] + b2[i];
    }
    for (int i = 0; i < n; i++) {
      middle[i] = middle[i] * (0.5 + 0.25 * d[i]);
    }
    for (int i = 0; i < n; i++) {
      mean[i] = Math.sqrt(less + e2 * middle[i] * middle[i]);
    }
    for (int i = 0; i < n; i++) {
      a[i] = 4.0 * mean[i] + a[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = 6.0 * e2 * cosines[i] / (6.0 + a[i]); // the pull
    }
    for (int i = 0; i < n; i++) {
      a[i] = e[i] - c[i];
    }
    for (int i = 0; i < n; i++) {
      d[i] = (1.0 / 30.0) * e[i] - (1.0 / 36.0) * c[i];
    }
    for (int i = 0; i < n; i++) {
      d[i] = e[i] * d[i];
    }
    for (int i = 0; i < n; i++) {
      d[i] = (1.0 / 6.0) * a[i] + d[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = c[i] * c[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = a[i] * (1.0 / 120.0 - (1.0 / 72.0) * cosines[i]);
    }
    for (int i = 0; i < n; i++) {
      a[i] = d[i] + a[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = b[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = b[i] + a[i];
    }
    for (int i = 0; i < n; i++) {
      omega[i] = lambda[i] / (1.0 - a[i]);
    }
  }

  /** sin ω/2, sin² σ/2, w in the middle and the arc over twice its half's sine. */
  private void arcs(int n) {
    double e2 = ellipsoid.e2;
    double less = 1.0 - e2;
    for (int i = 0; i < n; i++) {
      a[i] = 0.25 * omega[i] * omega[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] =
          0.5
              - a[i]
                  * (1.0 / 12.0 - a[i] * (1.0 / 240.0 - a[i] * (1.0 / 10080.0 - a[i] / 725760.0)));
    }
    for (int i = 0; i < n; i++) {
      sinHalf[i] = b[i] * omega[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = sinHalf[i] * sinHalf[i];
    }
    for (int i = 0; i < n; i++) {
      square[i] = cosines[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      square[i] = north[i] + square[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = Math.sqrt(1.0 - square[i]);
    }
    for (int i = 0; i < n; i++) {
      middle[i] = b1[i] + b2[i];
    }
    for (int i = 0; i < n; i++) {
      middle[i] = 0.5 * middle[i] / a[i];
    }
    for (int i = 0; i < n; i++) {
      mean[i] = Math.sqrt(less + e2 * middle[i] * middle[i]);
    }
    for (int i = 0; i < n; i++) {
      arc[i] =
          1.0
              + square[i]
                  * (1.0 / 6.0
                      + square[i]
                          * (3.0 / 40.0
                              + square[i] * (15.0 / 336.0 + square[i] * (105.0 / 3456.0))));
    }
  }

  /** One step for the longitude on the sphere. */
  private void newtonStep(int n) {
    double e2 = ellipsoid.e2;
    for (int i = 0; i < n; i++) {
      a[i] = Math.sqrt(1.0 - square[i]);
    }
    for (int i = 0; i < n; i++) {
      a[i] = arc[i] / a[i]; // σ / sin σ
    }
    for (int i = 0; i < n; i++) {
      b[i] = sinHalf[i] * sinHalf[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = Math.sqrt(1.0 - b[i]);
    }
    for (int i = 0; i < n; i++) {
      c[i] = 2.0 * sinHalf[i] * c[i]; // sin ω
    }
    for (int i = 0; i < n; i++) {
      d[i] = 1.0 - 2.0 * b[i]; // cos ω
    }
    for (int i = 0; i < n; i++) {
      b[i] = 1.0 / (1.0 + w1[i]);
    }
    for (int i = 0; i < n; i++) {
      e[i] = 1.0 / (1.0 + w2[i]);
    }
    for (int i = 0; i < n; i++) {
      e[i] = b[i] + e[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = 4.0 / (1.0 + mean[i]);
    }
    for (int i = 0; i < n; i++) {
      b[i] = e[i] + b[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = e2 / 6.0 * (cosines[i] * b[i]); // the pull
    }
    for (int i = 0; i < n; i++) {
      e[i] = c[i] * c[i];
    }
    for (int i = 0; i < n; i++) {
      e[i] = cosines[i] * e[i];
    }
    for (int i = 0; i < n; i++) {
      e[i] = e[i] * (1.0 / 3.0 + 8.0 / 15.0 * square[i]);
    }
    for (int i = 0; i < n; i++) {
      d[i] = d[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      d[i] = d[i] + e[i];
    }
    for (int i = 0; i < n; i++) {
      d[i] = 1.0 - b[i] * d[i]; // the slope
    }
    for (int i = 0; i < n; i++) {
      c[i] = c[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = b[i] * c[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = lambda[i] + c[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = omega[i] - c[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = c[i] / d[i];
    }
    for (int i = 0; i < n; i++) {
      omega[i] = omega[i] - c[i];
    }
  }

  /** Courses, by Napier's analogy from one end to the other, and lengths. */
  private void finish(int n) {
    double axis = 2.0 * ellipsoid.semiMajorAxisMetres();
    double twiceDegrees = 2.0 * Degrees.fromRadians(1.0);
    for (int i = 0; i < n; i++) {
      a[i] = sinHalf[i] * sinHalf[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = Math.sqrt(1.0 - a[i]);
    }
    for (int i = 0; i < n; i++) {
      c[i] = sinHalf[i] / b[i]; // tan ω/2
    }
    for (int i = 0; i < n; i++) {
      b[i] = sinHalf[i] * b[i];
    }
    for (int i = 0; i < n; i++) {
      omega[i] = 2.0 * c2[i] * b[i]; // east
    }
    for (int i = 0; i < n; i++) {
      a[i] = c2[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = 2.0 * b1[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = sinDB[i] + a[i]; // north
    }
    Lanes.courses(omega, a, n, b, d, e, course);
    for (int i = 0; i < n; i++) {
      turn[i] = b1[i] + b2[i];
    }
    for (int i = 0; i < n; i++) {
      turn[i] = turn[i] / (1.0 + cosDB[i]);
    }
    for (int i = 0; i < n; i++) {
      c[i] = turn[i] * c[i];
    }
    for (int i = 0; i < n; i++) {
      d[i] = c[i] * c[i];
    }
    for (int i = 0; i < n; i++) {
      d[i] =
          1.0
              - d[i]
                  * (1.0 / 3.0
                      - d[i]
                          * (0.2
                              - d[i]
                                  * (1.0 / 7.0 - d[i] * (1.0 / 9.0 - d[i] / 11.0)))); // arctangent
    }
    for (int i = 0; i < n; i++) {
      turn[i] = twiceDegrees * c[i] * d[i]; // degrees
    }
    for (int i = 0; i < n; i++) {
      a[i] = w1[i] + w2[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = (4.0 * mean[i] + a[i]) / 6.0;
    }
    for (int i = 0; i < n; i++) {
      b[i] = Math.sqrt(square[i]);
    }
    for (int i = 0; i < n; i++) {
      b[i] = b[i] * arc[i];
    }
    for (int i = 0; i < n; i++) {
      metres[i] = axis * b[i] * a[i];
    }
  }
}
