package org.ferryglide.nav.geodesy;

/**
 * The differences that rhumb lines are made of, in radians and metres, each free of cancellation.
 *
 * <p>Latitude goes by its sine and cosine. Both come from one call: the smaller of the two is taken
 * from the sine of the latitude or of its distance from the pole, so that it keeps its figures near
 * equator and pole alike, and the larger from the smaller.
 */
final class RhumbMath {
  /** Twenty nanometres of latitude: the rounding of a length that was to end at the pole. */
  private static final double POLE_ROUNDING_DEGREES = 1.8e-13;

  /** Greatest difference of latitude of a short line, radians. */
  static final double SHORT = 0.17;

  /** Nearer to a pole a cosine by differences would lose figures; degrees. */
  static final double GREATEST_SHORT_LATITUDE = 80.0;

  /** The square of an argument up to which {@link Arcs#hyperbolicOverSine} holds. */
  private static final double SMALL_SQUARE = 0.01;

  private RhumbMath() {}

  /** The sine of the latitude up to 45 degrees, above that its cosine. */
  static double lesserPart(double latDegrees) {
    double north = Math.abs(latDegrees);
    return Math.sin(Degrees.toRadians(north <= 45.0 ? latDegrees : 90.0 - north));
  }

  /** The sine of a latitude whose {@link #lesserPart} is known. */
  static double sine(double latDegrees, double lesser) {
    return Math.abs(latDegrees) <= 45.0 ? lesser : Math.copySign(other(lesser), latDegrees);
  }

  /** The cosine of a latitude whose {@link #lesserPart} is known. */
  static double cosine(double latDegrees, double lesser) {
    return Math.abs(latDegrees) <= 45.0 ? other(lesser) : lesser;
  }

  private static double other(double part) {
    return Math.sqrt((1.0 - part) * (1.0 + part));
  }

  /** Radius of the parallel, metres. */
  static double parallelRadius(Ellipsoid e, double sine, double cosine) {
    return e.primeVerticalRadiusMetresAtSine(sine) * cosine;
  }

  /**
   * Difference of isometric latitude from the difference of the sines of latitude.
   *
   * <p>asinh(tan φ₂) - asinh(tan φ₁) is asinh((sin φ₂ - sin φ₁) / (cos φ₁ cos φ₂)), and e atanh(e
   * sin φ) has a like identity, here in powers of e² so that it also serves a body longer than
   * wide.
   *
   * @param dsin sin φ₂ - sin φ₁, accurate however small
   * @param sines sin φ₁ sin φ₂
   * @param cosines cos φ₁ cos φ₂; 0 at a pole gives an infinite result
   */
  static double isometric(Ellipsoid e, double dsin, double sines, double cosines) {
    if (cosines == 0.0) {
      return Math.copySign(Double.POSITIVE_INFINITY, dsin);
    }
    double q = dsin / (1.0 - e.e2 * sines);
    double x = dsin / cosines;
    double square = x * x;
    double spherical = square <= SMALL_SQUARE ? x * Arcs.hyperbolicOverSine(square) : asinh(x);
    return spherical - e.e2 * q * hyperbolicOverTangent(e.e2 * q * q);
  }

  /**
   * Difference of isometric latitude for a step from a latitude that is known by its sine and
   * cosine, clear of the poles.
   *
   * @param sinDelta sine of the step, accurate however small
   * @param versine 1 less its cosine
   */
  static double isometricStep(
      Ellipsoid e, double sin1, double cos1, double sinDelta, double versine) {
    double dsin = cos1 * sinDelta - sin1 * versine;
    double cos2 = cos1 - (sin1 * sinDelta + cos1 * versine);
    return isometric(e, dsin, sin1 * (sin1 + dsin), cos1 * cos2);
  }

  /** atanh(x) / x in powers of x squared, which may be below 0. */
  private static double hyperbolicOverTangent(double z) {
    if (Math.abs(z) <= 1e-4) {
      return 1.0 + z * (1.0 / 3.0 + z * (0.2 + z * (1.0 / 7.0)));
    }
    double sum = 0.0;
    double power = 1.0;
    for (int k = 1; Math.abs(power) > 1e-17; k += 2) {
      sum += power / k;
      power *= z;
    }
    return sum;
  }

  /** Inverse hyperbolic sine with small relative error at every size. */
  static double asinh(double x) {
    double t = Math.abs(x);
    return Math.copySign(Math.log1p(t + t * t / (1.0 + Math.sqrt(1.0 + t * t))), x);
  }

  /**
   * Difference of rectifying latitude, radians: the terms sin 2kφ₂ - sin 2kφ₁ of the series become
   * 2 sin kδ cos kσ.
   *
   * @param delta δ = φ₂ - φ₁, radians
   * @param sinDelta its sine, accurate however small
   * @param cosDelta its cosine
   * @param cosSigma cos(φ₁ + φ₂)
   */
  static double rectifying(
      Ellipsoid e, double delta, double sinDelta, double cosDelta, double cosSigma) {
    double sum = series(cosDelta, cosSigma, e.toMu1, e.toMu2, e.toMu3, e.toMu4, e.toMu5, e.toMu6);
    return delta + 2.0 * sinDelta * sum;
  }

  /** Rectifying latitude, radians: the difference from the equator, where δ = σ = φ. */
  static double rectifying(Ellipsoid e, double phi, double sine, double cosine) {
    return rectifying(e, phi, sine, cosine, cosine);
  }

  /** Difference of geographic latitude, radians, from a difference and a sum of rectifying ones. */
  static double geographic(Ellipsoid e, double dmu, double sumOfMu) {
    double cosDmu;
    double sinDmu;
    if (Math.abs(dmu) <= SHORT) {
      double sinHalf = Arcs.sine(0.5 * dmu);
      sinDmu = Arcs.sine(dmu);
      cosDmu = 1.0 - 2.0 * sinHalf * sinHalf;
    } else {
      sinDmu = Math.sin(dmu);
      cosDmu = Math.cos(dmu);
    }
    double cosSum = Math.cos(sumOfMu);
    double sum = series(cosDmu, cosSum, e.toPhi1, e.toPhi2, e.toPhi3, e.toPhi4, e.toPhi5, e.toPhi6);
    return dmu + 2.0 * sinDmu * sum;
  }

  /** The sum over k of c_k U_(k-1)(x) T_k(y), Chebyshev polynomials of both kinds. */
  private static double series(
      double x, double y, double c1, double c2, double c3, double c4, double c5, double c6) {
    double p = 2.0 * x;
    double q = 2.0 * y;
    double u3 = p * p - 1.0;
    double u4 = p * u3 - p;
    double u5 = p * u4 - u3;
    double u6 = p * u5 - u4;
    double t2 = q * y - 1.0;
    double t3 = q * t2 - y;
    double t4 = q * t3 - t2;
    double t5 = q * t4 - t3;
    double t6 = q * t5 - t4;
    return c1 * y + (c2 * p * t2 + (c3 * u3 * t3 + (c4 * u4 * t4 + (c5 * u5 * t5 + c6 * u6 * t6))));
  }

  /**
   * The point of a rhumb line, from what a prepared line knows of its start.
   *
   * @param mu rectifying latitude of the start, radians
   * @param out receives latitude and longitude, degrees; see {@link RhumbLines#direct}
   */
  static void point(
      Ellipsoid e,
      double lat,
      double lon,
      double sin1,
      double cos1,
      double mu,
      double sinCourse,
      double cosCourse,
      double metres,
      double[] out,
      int offset) {
    double dmu = metres * cosCourse / e.rectifyingRadius;
    double delta = geographic(e, dmu, 2.0 * mu + dmu);
    double lat2 = lat + Degrees.fromRadians(delta);
    if (!(Math.abs(lat2) <= 90.0)) {
      if (!(Math.abs(lat2) <= 90.0 + POLE_ROUNDING_DEGREES)) { // past the pole, or NaN
        out[offset] = Double.NaN;
        out[offset + 1] = Double.NaN;
        return;
      }
      lat2 = Math.copySign(90.0, lat2);
    }
    double dlon;
    if (sinCourse == 0.0 || metres == 0.0) {
      dlon = 0.0;
    } else if (delta == 0.0) { // along a parallel
      dlon = metres * sinCourse / parallelRadius(e, sin1, cos1);
    } else if (Math.abs(delta) <= SHORT
        && Math.abs(lat) <= GREATEST_SHORT_LATITUDE
        && Math.abs(lat2) <= GREATEST_SHORT_LATITUDE) {
      double sinHalf = Arcs.sine(0.5 * delta);
      double versine = 2.0 * sinHalf * sinHalf;
      double dpsi = isometricStep(e, sin1, cos1, Arcs.sine(delta), versine);
      dlon = dpsi * (metres * sinCourse / (dmu * e.rectifyingRadius));
    } else {
      double lesser2 = lesserPart(lat2);
      double sin2 = sine(lat2, lesser2);
      double cos2 = cosine(lat2, lesser2);
      double dsin =
          Math.abs(delta) <= 0.5 * Math.PI
              ? Math.tan(0.5 * delta) * (cos1 + cos2)
              : sin2 - sin1; // nothing cancels between points so far apart
      double dpsi = isometric(e, dsin, sin1 * sin2, cos1 * cos2);
      // The tangent of the course, kept finite by the rounded course itself.
      dlon = dpsi * (metres * sinCourse / (dmu * e.rectifyingRadius));
    }
    out[offset] = lat2 + 0.0;
    out[offset + 1] = Degrees.longitude(lon + Degrees.fromRadians(dlon));
  }
}
