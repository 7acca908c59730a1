package org.ferryglide.nav.geodesy;

/**
 * Ends of many geodesics, most of them short: see {@link EndRows}.
 *
 * <p>The formulas are those of {@link ShortGeodesics#point} without a step, up to 22 km.
 */
final class GeodesicEndRows extends EndRows {
  /** Longest line, as a share of the greater radius, whose arc needs no step. */
  private static final double LONGEST_ARC = 2.0 * Math.sqrt(ShortGeodesics.NO_STEP);

  /** Nearer to a pole a series for the longitude would not do; degrees. */
  private static final double GREATEST_LATITUDE = 84.0;

  private final double[] half = Lanes.lane();
  private final double[] sin1 = Lanes.lane();
  private final double[] cos1 = Lanes.lane();
  private final double[] length = Lanes.lane();
  private final double[] w1 = Lanes.lane();
  private final double[] w2 = Lanes.lane();
  private final double[] b1 = Lanes.lane();
  private final double[] c1 = Lanes.lane();
  private final double[] rise = Lanes.lane();
  private final double[] arc = Lanes.lane();
  private final double[] sinHalf = Lanes.lane();
  private final double[] cosHalf = Lanes.lane();
  private final double[] square = Lanes.lane();
  private final double[] mean = Lanes.lane();
  private final double[] pulled = Lanes.lane();
  private final double[] sinArc = Lanes.lane();
  private final double[] dSin = Lanes.lane();
  private final double[] sum = Lanes.lane();
  private final double[] inward = Lanes.lane();
  private final double[] cosDB = Lanes.lane();
  private final double[] tangent = Lanes.lane();
  private final double[] turn = Lanes.lane();
  private final double[] a = Lanes.lane();
  private final double[] b = Lanes.lane();
  private final double[] c = Lanes.lane();
  private final double[] d = Lanes.lane();

  GeodesicEndRows(Ellipsoid ellipsoid) {
    super(ellipsoid, longestMetres(ellipsoid), GREATEST_LATITUDE);
  }

  private static double longestMetres(Ellipsoid ellipsoid) {
    boolean isRoundEnough = Math.abs(ellipsoid.flattening()) <= ShortGeodesics.GREATEST_FLATTENING;
    return isRoundEnough ? LONGEST_ARC * ellipsoid.semiMajorAxisMetres() : -1.0;
  }

  @Override
  void work(double[] lat, double[] metres, int first, int n) {
    start(lat, metres, first, n);
    arcs(n);
    ends(n);
  }

  @Override
  void writeMore(int i, double courseDegrees, double[] out, int at) {
    out[at + Geodesics.COURSE] = Degrees.reduced(courseDegrees + turn[i]);
  }

  @Override
  void single(double lat, double lon, double courseDegrees, double metres, double[] out, int at) {
    Geodesics.direct(ellipsoid, lat, lon, courseDegrees, metres, out, at);
  }

  /** Sines and cosines of latitude, geographic and reduced; lengths. */
  private void start(double[] lat, double[] metres, int first, int n) {
    double e2 = ellipsoid.e2;
    double ratio = 1.0 - ellipsoid.flattening();
    double axis = ellipsoid.semiMajorAxisMetres();
    for (int i = 0; i < n; i++) {
      half[i] = lat[first + i] * Lanes.HALF_DEGREE;
    }
    Lanes.sinesAndCosines(half, n, a, b, sin1, cos1);
    for (int i = 0; i < n; i++) {
      length[i] = metres[first + i] / axis;
    }
    for (int i = 0; i < n; i++) {
      w1[i] = ratio / Math.sqrt(1.0 - e2 * sin1[i] * sin1[i]);
    }
    for (int i = 0; i < n; i++) {
      b1[i] = sin1[i] * w1[i];
    }
    for (int i = 0; i < n; i++) {
      c1[i] = cos1[i] * w1[i] / ratio;
    }
    for (int i = 0; i < n; i++) {
      rise[i] = c1[i] * cosCourse[i]; // d sin β / dσ
    }
  }

  /** The arc on the sphere: its sine, the square of the sine of its half, and the mean of w. */
  private void arcs(int n) {
    double e2 = ellipsoid.e2;
    double less = 1.0 - e2;
    for (int i = 0; i < n; i++) {
      a[i] = e2 / (w1[i] * w1[i]);
    }
    for (int i = 0; i < n; i++) {
      b[i] = b1[i] * rise[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = a[i] * b[i]; // first
    }
    for (int i = 0; i < n; i++) {
      c[i] = rise[i] * rise[i];
    }
    for (int i = 0; i < n; i++) {
      d[i] = b1[i] * b1[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = c[i] - d[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = a[i] * c[i];
    }
    for (int i = 0; i < n; i++) {
      d[i] = b[i] * b[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = 4.0 * d[i] - c[i]; // 3 first² - second
    }
    for (int i = 0; i < n; i++) {
      a[i] = length[i] / w1[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = 0.5 * b[i] - a[i] * c[i] / 6.0;
    }
    for (int i = 0; i < n; i++) {
      arc[i] = a[i] - a[i] * a[i] * c[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = 0.25 * arc[i] * arc[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = 0.5 - a[i] * (1.0 / 12.0 - a[i] / 240.0);
    }
    for (int i = 0; i < n; i++) {
      sinHalf[i] = a[i] * arc[i]; // nearly
    }
    for (int i = 0; i < n; i++) {
      square[i] = sinHalf[i] * sinHalf[i];
    }
    for (int i = 0; i < n; i++) {
      cosHalf[i] = Math.sqrt(1.0 - square[i]);
    }
    for (int i = 0; i < n; i++) {
      a[i] = sinHalf[i] * cosHalf[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = 2.0 * rise[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = 2.0 * b1[i] * square[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = a[i] - b[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = b1[i] + a[i]; // nearly sin β at the end
    }
    for (int i = 0; i < n; i++) {
      w2[i] = Math.sqrt(less + e2 * a[i] * a[i]);
    }
    for (int i = 0; i < n; i++) {
      b[i] = b1[i] + a[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = b[i] * (0.5 + 0.25 * square[i]);
    }
    for (int i = 0; i < n; i++) {
      mean[i] = Math.sqrt(less + e2 * b[i] * b[i]);
    }
    for (int i = 0; i < n; i++) {
      a[i] = w1[i] + w2[i];
    }
    for (int i = 0; i < n; i++) {
      mean[i] = (4.0 * mean[i] + a[i]) / 6.0;
    }
    for (int i = 0; i < n; i++) {
      pulled[i] = length[i] / mean[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = 0.5 * (pulled[i] - arc[i]); // less than a micrometre of half the arc
    }
    for (int i = 0; i < n; i++) {
      pulled[i] = pulled[i] / (1.0 + mean[i]);
    }
    for (int i = 0; i < n; i++) {
      b[i] = a[i] * cosHalf[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = a[i] * sinHalf[i];
    }
    for (int i = 0; i < n; i++) {
      sinHalf[i] = sinHalf[i] + b[i];
    }
    for (int i = 0; i < n; i++) {
      cosHalf[i] = cosHalf[i] - c[i];
    }
    for (int i = 0; i < n; i++) {
      sinArc[i] = 2.0 * sinHalf[i] * cosHalf[i];
    }
    for (int i = 0; i < n; i++) {
      square[i] = sinHalf[i] * sinHalf[i];
    }
  }

  /** Differences of latitude and longitude and the turn of the course, degrees. */
  private void ends(int n) {
    double e2 = ellipsoid.e2;
    double ratio = 1.0 - ellipsoid.flattening();
    double degrees = Degrees.fromRadians(1.0);
    for (int i = 0; i < n; i++) {
      a[i] = rise[i] * sinArc[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = 2.0 * b1[i] * square[i];
    }
    for (int i = 0; i < n; i++) {
      dSin[i] = a[i] - b[i]; // of β
    }
    for (int i = 0; i < n; i++) {
      sum[i] = 2.0 * b1[i] + dSin[i];
    }
    for (int i = 0; i < n; i++) {
      east[i] = sinCourse[i] * sinArc[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = cosCourse[i] * sinArc[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = b1[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = 2.0 * c1[i] * square[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = a[i] + b[i];
    }
    for (int i = 0; i < n; i++) {
      inward[i] = c1[i] - a[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = east[i] * east[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = Math.sqrt(inward[i] * inward[i] + a[i]); // cos β at the end
    }
    for (int i = 0; i < n; i++) {
      inward[i] = inward[i] + b[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = c1[i] + b[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = dSin[i] / b[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = b[i] * sum[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = b[i] * b1[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = dSin[i] * c1[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = a[i] + b[i]; // sin(β₂ - β₁)
    }
    for (int i = 0; i < n; i++) {
      cosDB[i] = 1.0 + Math.sqrt(1.0 - a[i] * a[i]);
    }
    for (int i = 0; i < n; i++) {
      a[i] = ratio * a[i] / w1[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = a[i] / w2[i]; // sin(φ₂ - φ₁)
    }
    for (int i = 0; i < n; i++) {
      b[i] = a[i] * a[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = 1.0 + b[i] * (1.0 / 6.0 + b[i] * (3.0 / 40.0 + b[i] * (15.0 / 336.0))); // arcsine
    }
    for (int i = 0; i < n; i++) {
      north[i] = degrees * a[i] * b[i];
    }
    for (int i = 0; i < n; i++) {
      tangent[i] = east[i] / inward[i]; // of half the longitude on the sphere
    }
    for (int i = 0; i < n; i++) {
      a[i] = tangent[i] * tangent[i];
    }
    arctangents(a, n, b);
    for (int i = 0; i < n; i++) {
      a[i] = tangent[i] * b[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = sinCourse[i] * c1[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = e2 * b[i] * pulled[i];
    }
    for (int i = 0; i < n; i++) {
      east[i] = degrees * (2.0 * a[i] - b[i]);
    }
    for (int i = 0; i < n; i++) {
      c[i] = sum[i] / cosDB[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = c[i] * tangent[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = c[i] * c[i];
    }
    arctangents(a, n, b);
    for (int i = 0; i < n; i++) {
      turn[i] = 2.0 * degrees * c[i] * b[i];
    }
  }

  /** The arctangent of a small number over that number, by its square. */
  private static void arctangents(double[] squares, int n, double[] result) {
    for (int i = 0; i < n; i++) {
      double x = squares[i];
      double high = 1.0 / 7.0 - x * (1.0 / 9.0 - x / 11.0);
      result[i] = 1.0 - x * (1.0 / 3.0 - x * (0.2 - x * high));
    }
  }
}
