package org.ferryglide.nav.geodesy;

/**
 * Ends of many rhumb lines, most of them short: see {@link EndRows}.
 *
 * <p>The difference of latitude is that whose rectifying difference is the northing: a start good
 * to the second order, then steps with the series of {@link RhumbRows} about the middle latitude,
 * each of which leaves less than a ten thousandth of what was wrong. Up to 48 km.
 */
final class RhumbEndRows extends EndRows {
  /** As a share of the rectifying radius, about 48 km. */
  private static final double LONGEST_ARC = 0.0075;

  /** Nearer to a pole the series of the isometric latitude would not do; degrees. */
  private static final double GREATEST_LATITUDE = 83.0;

  /** The last is for the middle latitude, which lags one behind. */
  private static final int STEPS = 3;

  private final RhumbRows series;
  private final double[] start = Lanes.lane();
  private final double[] northing = Lanes.lane();
  private final double[] a = Lanes.lane();
  private final double[] b = Lanes.lane();
  private final double[] c = Lanes.lane();

  RhumbEndRows(Ellipsoid ellipsoid) {
    super(ellipsoid, LONGEST_ARC * ellipsoid.rectifyingRadius, GREATEST_LATITUDE);
    series = new RhumbRows(ellipsoid);
  }

  @Override
  void work(double[] lat, double[] metres, int first, int n) {
    double[] delta = series.delta;
    double radius = ellipsoid.rectifyingRadius;
    for (int i = 0; i < n; i++) {
      start[i] = lat[first + i] * Lanes.HALF_DEGREE;
    }
    for (int i = 0; i < n; i++) {
      northing[i] = metres[first + i] * cosCourse[i] / radius;
    }
    begin(n);
    for (int step = 0; step < STEPS; step++) {
      for (int i = 0; i < n; i++) {
        a[i] = start[i] + 0.25 * delta[i]; // half the middle latitude
      }
      series.about(a, n);
      for (int i = 0; i < n; i++) {
        delta[i] = northing[i] / series.mu[i];
      }
    }
    series.isometric(n);
    double degrees = Degrees.fromRadians(1.0);
    for (int i = 0; i < n; i++) {
      north[i] = degrees * delta[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = metres[first + i] * sinCourse[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = series.psi[i] / series.mu[i];
    }
    for (int i = 0; i < n; i++) {
      east[i] = degrees / radius * (a[i] * b[i]);
    }
  }

  /** Nearly the difference of latitude, from the curvature of the meridian at the start. */
  private void begin(int n) {
    double e2 = ellipsoid.e2;
    double less = (1.0 - e2) * ellipsoid.semiMajorAxisMetres() / ellipsoid.rectifyingRadius;
    Lanes.sinesAndCosines(start, n, a, b, series.sine, series.cosine);
    for (int i = 0; i < n; i++) {
      a[i] = 1.0 - e2 * series.sine[i] * series.sine[i]; // w²
    }
    for (int i = 0; i < n; i++) {
      b[i] = Math.sqrt(a[i]) * a[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = northing[i] * b[i] / less;
    }
    for (int i = 0; i < n; i++) {
      c[i] = series.sine[i] * series.cosine[i];
    }
    for (int i = 0; i < n; i++) {
      c[i] = 1.5 * e2 * c[i] / a[i];
    }
    for (int i = 0; i < n; i++) {
      series.delta[i] = b[i] - c[i] * (b[i] * b[i]);
    }
  }

  @Override
  void writeMore(int i, double courseDegrees, double[] out, int at) {}

  @Override
  void single(double lat, double lon, double courseDegrees, double metres, double[] out, int at) {
    RhumbLines.direct(ellipsoid, lat, lon, courseDegrees, metres, out, at);
  }
}
