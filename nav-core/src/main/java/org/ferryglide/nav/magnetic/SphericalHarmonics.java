package org.ferryglide.nav.magnetic;

import org.ferryglide.nav.geodesy.Ellipsoid;

/**
 * The sums behind every field element: a potential in solid spherical harmonics and its gradient on
 * the WGS84 ellipsoid.
 *
 * <p>Package-private: works in radians-free sines and cosines and on packed coefficients. The
 * associated Legendre functions are taken in Gauss's normalisation and divided by sin^m of the
 * colatitude, which leaves polynomials in its cosine with leading coefficient 1:
 *
 * <pre>
 *   H(n,m) = t H(n-1,m) - k(n,m) H(n-2,m),   k(n,m) = ((n-1)² - m²) / ((2n-1)(2n-3))
 *   dH(n,m)/dt = (n-m) H(n,m+1)
 * </pre>
 *
 * so nothing is divided by the sine, both poles are ordinary places, and the derivative costs no
 * recursion of its own. The powers of (radius of reference / radius) ride in the recursion.
 *
 * @see <a href="https://doi.org/10.25923/ytk1-yx35">Chulliat et al., the WMM technical report,
 *     equations 4 to 19, for the sums</a>
 */
final class SphericalHarmonics {
  /** Radius to which the coefficients of WMM and IGRF refer, metres. */
  static final double REFERENCE_RADIUS_METRES = 6_371_200.0;

  private static final double ECCENTRICITY_SQUARED = Ellipsoid.WGS84.eccentricitySquared();

  /** Packed coefficients of one degree and order. */
  private static final int STRIDE = 4;

  private SphericalHarmonics() {}

  /** How many pairs of degree and order the sums visit: m from 0 to degree, n from m (1) up. */
  private static int pairs(int degree) {
    return (degree + 1) * (degree + 2) / 2 - 1;
  }

  /**
   * The recursion's constants k(n+1,m) in the order the sums visit them: m from 0, n from m (from 1
   * when m is 0).
   */
  static double[] recursion(int degree) {
    double[] constants = new double[pairs(degree)];
    int i = 0;
    for (int m = 0; m <= degree; m++) {
      for (int n = Math.max(m, 1); n <= degree; n++) {
        // for n + 1, whose two predecessors are n and n - 1
        constants[i++] = (n - m) * (double) (n + m) / ((2.0 * n + 1.0) * (2.0 * n - 1.0));
      }
    }
    return constants;
  }

  /**
   * Packs Schmidt semi-normalised coefficients for {@link #evaluate}: for each pair g and h in
   * Gauss's normalisation, then (n-m+1) times g and h of order m - 1, which the colatitude
   * derivative needs.
   *
   * @param degree highest degree
   * @param g by [n][m], nanotesla
   * @param h by [n][m], nanotesla
   */
  static double[] pack(int degree, double[][] g, double[][] h) {
    double[] packed = new double[STRIDE * pairs(degree)];
    int i = 0;
    for (int m = 0; m <= degree; m++) {
      for (int n = Math.max(m, 1); n <= degree; n++) {
        double toGauss = schmidtOverGauss(n, m);
        packed[i] = toGauss * g[n][m];
        packed[i + 1] = toGauss * h[n][m];
        if (m > 0) {
          double lower = (n - m + 1) * schmidtOverGauss(n, m - 1);
          packed[i + 2] = lower * g[n][m - 1];
          packed[i + 3] = lower * h[n][m - 1];
        }
        i += STRIDE;
      }
    }
    return packed;
  }

  /** The factor by which a Schmidt semi-normalised function exceeds Gauss's. */
  private static double schmidtOverGauss(int n, int m) {
    double factor = 1.0;
    for (int i = 1; i <= n; i++) {
      factor *= (2.0 * i - 1.0) / i;
    }
    for (int i = 1; i <= m; i++) {
      factor *= Math.sqrt((n - i + 1.0) * (i == 1 ? 2.0 : 1.0) / (n + i));
    }
    return factor;
  }

  /**
   * What {@link #evaluate} needs of a place, seven numbers: sine and cosine of the geocentric
   * latitude, reference radius over radius, cosine and sine of the longitude, cosine and sine of
   * the geocentric less the geographic latitude.
   */
  static void place(
      double latitudeDegrees,
      double longitudeDegrees,
      double heightMetres,
      double[] out,
      int offset) {
    double latitude = Math.toRadians(latitudeDegrees);
    double sine = Math.sin(latitude);
    double cosine = Math.cos(latitude);
    double normal = Ellipsoid.WGS84.primeVerticalRadiusMetresAtSine(sine);
    double fromAxis = (normal + heightMetres) * cosine;
    double alongAxis = (normal * (1.0 - ECCENTRICITY_SQUARED) + heightMetres) * sine;
    double radius = Math.sqrt(fromAxis * fromAxis + alongAxis * alongAxis);
    double geocentricSine = alongAxis / radius;
    double geocentricCosine = fromAxis / radius;
    double longitude = Math.toRadians(longitudeDegrees);
    out[offset] = geocentricSine;
    out[offset + 1] = geocentricCosine;
    out[offset + 2] = REFERENCE_RADIUS_METRES / radius;
    out[offset + 3] = Math.cos(longitude);
    out[offset + 4] = Math.sin(longitude);
    out[offset + 5] = geocentricCosine * cosine + geocentricSine * sine;
    out[offset + 6] = geocentricSine * cosine - geocentricCosine * sine;
  }

  /**
   * North, east and down components at a place written by {@link #place}.
   *
   * @param recursion from {@link #recursion}
   * @param packed from {@link #pack}, or a linear combination of such arrays
   * @param degree highest degree
   * @param place seven numbers, read before anything is written
   * @param placeOffset where they stand
   * @param out receives three numbers; may be {@code place} itself
   * @param offset where the first goes
   */
  static void evaluate(
      double[] recursion,
      double[] packed,
      int degree,
      double[] place,
      int placeOffset,
      double[] out,
      int offset) {
    final double t = place[placeOffset];
    final double ratio = place[placeOffset + 2];
    final double cosLongitude = place[placeOffset + 3];
    final double sinLongitude = place[placeOffset + 4];
    final double cosTilt = place[placeOffset + 5];
    final double sinTilt = place[placeOffset + 6];
    final double step = t * ratio;
    final double ratioSquared = ratio * ratio;
    final double base = place[placeOffset + 1] * ratio; // (sin of colatitude) × ratio
    double up = 0.0;
    double north = 0.0;
    double east = 0.0;

    // Order 0: only the radial sum; H(0,0) = 1 carries no coefficient.
    double older = 1.0;
    double h = step;
    int i = 0;
    int j = 0;
    for (int n = 1; n <= degree; n++) {
      up += (n + 1) * packed[j] * h;
      double next = step * h - recursion[i] * ratioSquared * older;
      older = h;
      h = next;
      i++;
      j += STRIDE;
    }

    double lowerPower = 1.0; // base^(m-1)
    double cos = cosLongitude; // of m times the longitude
    double sin = sinLongitude;
    double lowerCos = 1.0; // of (m-1) times the longitude
    double lowerSin = 0.0;
    for (int m = 1; m <= degree; m++) {
      double g0 = 0.0;
      double h0 = 0.0;
      double g1 = 0.0;
      double h1 = 0.0;
      double gLower = 0.0;
      double hLower = 0.0;
      older = 0.0;
      h = 1.0;
      double weight = m + 1.0;
      for (int n = m; n <= degree; n++) {
        double g = packed[j] * h;
        double s = packed[j + 1] * h;
        gLower += packed[j + 2] * h;
        hLower += packed[j + 3] * h;
        double next = step * h - recursion[i] * ratioSquared * older;
        g0 += g;
        h0 += s;
        g1 += weight * g;
        h1 += weight * s;
        weight += 1.0;
        older = h;
        h = next;
        i++;
        j += STRIDE;
      }
      double power = lowerPower * base;
      double lowerPowerTimesOrder = m * lowerPower * ratio;
      up += power * (cos * g1 + sin * h1);
      north +=
          lowerPowerTimesOrder * t * (cos * g0 + sin * h0)
              - power * (lowerCos * gLower + lowerSin * hLower);
      east += lowerPowerTimesOrder * (sin * g0 - cos * h0);
      lowerPower = power;
      lowerCos = cos;
      lowerSin = sin;
      double nextCos = cos * cosLongitude - sin * sinLongitude;
      sin = sin * cosLongitude + cos * sinLongitude;
      cos = nextCos;
    }
    north *= ratioSquared;
    double down = -ratioSquared * up;
    out[offset] = north * cosTilt - down * sinTilt;
    out[offset + 1] = ratioSquared * east;
    out[offset + 2] = north * sinTilt + down * cosTilt;
  }
}
