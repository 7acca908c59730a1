package org.ferryglide.nav.geodesy;

/**
 * Rhumb lines on an ellipsoid, on plain doubles: lines of one true course.
 *
 * <p>A rhumb line is straight on a Mercator chart, and its length is the meridian distance it makes
 * good over the cosine of its course. The plain formulas lose figures on nearly east-west lines,
 * where both differences vanish. Here each difference is worked from the difference of latitude by
 * an exact identity, so that nothing cancels: with h half the difference of latitude,
 *
 * <ul>
 *   <li>the spherical part of the difference of isometric latitude is asinh(tan h (1/cos φ₁ + 1/cos
 *       φ₂)),
 *   <li>the part from the flattening is e atanh(e q), q = (sin φ₂ - sin φ₁) / (1 - e² sin φ₁ sin
 *       φ₂),
 *   <li>the terms of the meridian series are 2 sin k(φ₂ - φ₁) cos k(φ₂ + φ₁).
 * </ul>
 *
 * <pre>{@code
 * double[] courseAndMetres = new double[2];
 * RhumbLines.inverse(50.105, -5.535, 50.2, -5.43, courseAndMetres, 0);
 * double[] latAndLon = new double[2];
 * RhumbLines.direct(50.105, -5.535, courseAndMetres[0], courseAndMetres[1], latAndLon, 0);
 * }</pre>
 *
 * <p>Angles are degrees, lengths metres. NaN in gives NaN out; so does a latitude outside [-90,
 * 90]. Nothing is allocated.
 *
 * @see <a href="https://doi.org/10.3133/pp1395">Snyder (1987), USGS PP 1395, eqs. 3-1, 7-7 for the
 *     isometric latitude</a>
 * @see <a href="https://arxiv.org/abs/2212.05818">Karney (2023), On auxiliary latitudes, for the
 *     series in the third flattening</a>
 */
public final class RhumbLines {
  private RhumbLines() {}

  /**
   * Course and length of the rhumb line between two points on WGS84.
   *
   * @param lat1 latitude of the start, degrees, in [-90, 90]
   * @param lon1 longitude of the start, degrees
   * @param lat2 latitude of the end, degrees, in [-90, 90]
   * @param lon2 longitude of the end, degrees
   * @param out receives the course, degrees in [0, 360), and the length, metres
   * @param offset where in {@code out} to write
   * @see #inverse(Ellipsoid, double, double, double, double, double[], int)
   */
  public static void inverse(
      double lat1, double lon1, double lat2, double lon2, double[] out, int offset) {
    inverse(Ellipsoid.WGS84, lat1, lon1, lat2, lon2, out, offset);
  }

  /**
   * Course and length of the rhumb line between two points.
   *
   * <p>Special cases: points 180° of longitude apart have two equally long rhumb lines, and the one
   * to the east is returned; a line to or from a pole runs along a meridian, course 0 or 180,
   * whatever the longitude of the pole; points alike give course 0 and length 0, as do two points
   * at the same pole.
   *
   * @param ellipsoid the figure of the earth
   * @param lat1 latitude of the start, degrees, in [-90, 90]
   * @param lon1 longitude of the start, degrees
   * @param lat2 latitude of the end, degrees, in [-90, 90]
   * @param lon2 longitude of the end, degrees
   * @param out receives the course, degrees in [0, 360), and the length, metres
   * @param offset where in {@code out} to write
   */
  public static void inverse(
      Ellipsoid ellipsoid,
      double lat1,
      double lon1,
      double lat2,
      double lon2,
      double[] out,
      int offset) {
    if (!(Math.abs(lat1) <= 90.0 && Math.abs(lat2) <= 90.0)) {
      out[offset] = Double.NaN;
      out[offset + 1] = Double.NaN;
      return;
    }
    double dlon = Degrees.toRadians(Degrees.longitudeDifference(lon1, lon2));
    double dlat = lat2 - lat1;

    boolean low1 = Math.abs(lat1) <= 45.0;
    double a1 = Math.sin(Degrees.toRadians(low1 ? lat1 : 90.0 - Math.abs(lat1)));
    double b1 = Math.sqrt((1.0 - a1) * (1.0 + a1));
    double sin1 = low1 ? a1 : Math.copySign(b1, lat1);
    double cos1 = low1 ? b1 : a1;

    boolean low2 = Math.abs(lat2) <= 45.0;
    double a2 = Math.sin(Degrees.toRadians(low2 ? lat2 : 90.0 - Math.abs(lat2)));
    double b2 = Math.sqrt((1.0 - a2) * (1.0 + a2));
    double sin2 = low2 ? a2 : Math.copySign(b2, lat2);
    double cos2 = low2 ? b2 : a2;

    if (dlat == 0.0) { // along a parallel
      out[offset] = dlon > 0.0 ? 90.0 : dlon < 0.0 ? 270.0 : 0.0 * dlon;
      out[offset + 1] =
          Math.abs(dlon)
              * (ellipsoid.semiMajorAxisMetres()
                  * cos1
                  / Math.sqrt(1.0 - ellipsoid.eccentricitySquared() * sin1 * sin1));
      if (cos1 == 0.0) {
        out[offset] = 0.0 * dlon;
      }
      return;
    }

    double h = 0.5 * Degrees.toRadians(dlat);
    double dpsi;
    double sinDelta;
    double cosDelta = cos1 * cos2 + sin1 * sin2;
    double dsin;
    if (Math.abs(dlat) <= 90.0) {
      double sinH = Math.sin(h);
      double cosH = Math.sqrt((1.0 - sinH) * (1.0 + sinH));
      sinDelta = 2.0 * sinH * cosH;
      dsin = sinH / cosH * (cos1 + cos2);
    } else { // nothing cancels between points so far apart
      sinDelta = sin2 * cos1 - sin1 * cos2;
      dsin = sin2 - sin1;
    }
    dpsi = isometric(ellipsoid, dsin, sin1 * sin2, cos1 * cos2);
    double north = meridian(ellipsoid, 2.0 * h, sinDelta, cosDelta, cos1 * cos2 - sin1 * sin2);
    if (dlon == 0.0) {
      out[offset] = north > 0.0 ? 0.0 : 180.0;
      out[offset + 1] = Math.abs(north);
      return;
    }
    double east = dlon * (north / dpsi);
    double course = Degrees.fromRadians(Math.atan2(dlon, dpsi));
    out[offset] = course < 0.0 ? Degrees.reduced(course) : course;
    out[offset + 1] = Math.sqrt(north * north + east * east);
  }

  /**
   * The end of a rhumb line from a point on WGS84.
   *
   * @param lat latitude of the start, degrees, in [-90, 90]
   * @param lon longitude of the start, degrees
   * @param courseDegrees true course, degrees
   * @param metres length, metres; negative runs backward
   * @param out receives latitude in [-90, 90] and longitude in [-180, 180), degrees
   * @param offset where in {@code out} to write
   * @see #direct(Ellipsoid, double, double, double, double, double[], int)
   */
  public static void direct(
      double lat, double lon, double courseDegrees, double metres, double[] out, int offset) {
    direct(Ellipsoid.WGS84, lat, lon, courseDegrees, metres, out, offset);
  }

  /**
   * The end of a rhumb line from a point.
   *
   * <p>Special cases: a line that would run past a pole has no end, and both results are NaN; up to
   * 20 nanometres past, which is rounding, counts as the pole. At a pole the longitude is that of
   * the start for course 0 or 180, and NaN for another course, which circles the pole without end.
   *
   * @param ellipsoid the figure of the earth
   * @param lat latitude of the start, degrees, in [-90, 90]
   * @param lon longitude of the start, degrees
   * @param courseDegrees true course, degrees
   * @param metres length, metres; negative runs backward
   * @param out receives latitude in [-90, 90] and longitude in [-180, 180), degrees
   * @param offset where in {@code out} to write
   */
  public static void direct(
      Ellipsoid ellipsoid,
      double lat,
      double lon,
      double courseDegrees,
      double metres,
      double[] out,
      int offset) {
    if (!(Math.abs(lat) <= 90.0)) {
      out[offset] = Double.NaN;
      out[offset + 1] = Double.NaN;
      return;
    }
    double sinCourse = Degrees.sine(courseDegrees);
    double cosCourse = Degrees.cosine(courseDegrees);

    boolean low1 = Math.abs(lat) <= 45.0;
    double a1 = Math.sin(Degrees.toRadians(low1 ? lat : 90.0 - Math.abs(lat)));
    double b1 = Math.sqrt((1.0 - a1) * (1.0 + a1));
    double sin1 = low1 ? a1 : Math.copySign(b1, lat);
    double cos1 = low1 ? b1 : a1;

    double dmu = metres * cosCourse / ellipsoid.rectifyingRadius;
    double mu = rectifying(ellipsoid, Degrees.toRadians(lat), sin1, cos1);
    double delta = geographic(ellipsoid, dmu, 2.0 * mu + dmu);
    double lat2 = lat + Degrees.fromRadians(delta);
    if (!(Math.abs(lat2) <= 90.0)) {
      if (!(Math.abs(lat2) <= 90.0 + POLE_ROUNDING_DEGREES)) { // past the pole, or NaN
        out[offset] = Double.NaN;
        out[offset + 1] = Double.NaN;
        return;
      }
      lat2 = Math.copySign(90.0, lat2);
    }

    boolean low2 = Math.abs(lat2) <= 45.0;
    double a2 = Math.sin(Degrees.toRadians(low2 ? lat2 : 90.0 - Math.abs(lat2)));
    double b2 = Math.sqrt((1.0 - a2) * (1.0 + a2));
    double sin2 = low2 ? a2 : Math.copySign(b2, lat2);
    double cos2 = low2 ? b2 : a2;

    double dlon;
    if (sinCourse == 0.0 || metres == 0.0) {
      dlon = 0.0;
    } else if (delta == 0.0) { // along a parallel
      dlon =
          metres
              * sinCourse
              * Math.sqrt(1.0 - ellipsoid.eccentricitySquared() * sin1 * sin1)
              / (ellipsoid.semiMajorAxisMetres() * cos1);
    } else {
      double dsin;
      if (Math.abs(delta) <= 0.5 * Math.PI) {
        dsin = Math.tan(0.5 * delta) * (cos1 + cos2);
      } else {
        dsin = sin2 - sin1;
      }
      double dpsi = isometric(ellipsoid, dsin, sin1 * sin2, cos1 * cos2);
      dlon = sinCourse * (metres / (dmu * ellipsoid.rectifyingRadius)) * dpsi;
    }
    double lon2 = lon + Degrees.fromRadians(dlon);
    out[offset] = lat2 + 0.0;
    out[offset + 1] = Degrees.longitude(lon2);
  }

  /** Twenty nanometres of latitude: the rounding of a length that was to end at the pole. */
  private static final double POLE_ROUNDING_DEGREES = 1.8e-13;

  /**
   * Difference of isometric latitude from the difference of the sines of latitude.
   *
   * @param dsin sin φ₂ - sin φ₁, accurate however small
   * @param sines sin φ₁ sin φ₂
   * @param cosines cos φ₁ cos φ₂
   */
  static double isometric(Ellipsoid ellipsoid, double dsin, double sines, double cosines) {
    double e2 = ellipsoid.eccentricitySquared();
    double q = dsin / (1.0 - e2 * sines);
    double z = e2 * q * q;
    double sum = 0.0;
    double power = 1.0;
    for (int k = 1; Math.abs(power) > 1e-17; k += 2) { // atanh(x)/x in powers of x squared
      sum += power / k;
      power *= z;
    }
    return asinh(dsin / cosines) - e2 * q * sum;
  }

  /** Inverse hyperbolic sine with small relative error at every size. */
  static double asinh(double x) {
    double t = Math.abs(x);
    double u = t + t * t / (1.0 + Math.sqrt(1.0 + t * t));
    return Math.copySign(Math.log1p(u), x);
  }

  /**
   * Meridian distance between two latitudes.
   *
   * @param delta φ₂ - φ₁, radians
   * @param sinDelta its sine, accurate however small
   * @param cosDelta its cosine
   * @param cosSigma cos(φ₁ + φ₂)
   * @return metres, north positive
   */
  static double meridian(
      Ellipsoid e, double delta, double sinDelta, double cosDelta, double cosSigma) {
    double sum = series(cosDelta, cosSigma, e.toMu1, e.toMu2, e.toMu3, e.toMu4, e.toMu5, e.toMu6);
    return e.rectifyingRadius * (delta + 2.0 * sinDelta * sum);
  }

  /** Difference of geographic latitude from a difference and a sum of rectifying latitudes. */
  static double geographic(Ellipsoid e, double dmu, double sumOfMu) {
    double sum =
        series(
            Math.cos(dmu),
            Math.cos(sumOfMu),
            e.toPhi1,
            e.toPhi2,
            e.toPhi3,
            e.toPhi4,
            e.toPhi5,
            e.toPhi6);
    return dmu + 2.0 * Math.sin(dmu) * sum;
  }

  /** Rectifying latitude, radians, by the same series from the equator. */
  static double rectifying(Ellipsoid e, double phi, double sine, double cosine) {
    double sum = series(cosine * cosine - sine * sine, e);
    return phi + 2.0 * sine * cosine * sum;
  }

  /** The sum over k of c_k U_(k-1)(x) for the series to rectifying latitude. */
  private static double series(double x, Ellipsoid e) {
    double t = 2.0 * x;
    double b6 = e.toMu6;
    double b5 = e.toMu5 + t * b6;
    double b4 = e.toMu4 + t * b5 - b6;
    double b3 = e.toMu3 + t * b4 - b5;
    double b2 = e.toMu2 + t * b3 - b4;
    return e.toMu1 + t * b2 - b3;
  }

  /** The sum over k of c_k U_(k-1)(x) T_k(y), Chebyshev polynomials of both kinds. */
  private static double series(
      double x, double y, double c1, double c2, double c3, double c4, double c5, double c6) {
    double p = 2.0 * x;
    double q = 2.0 * y;
    double u2 = p;
    double u3 = p * u2 - 1.0;
    double u4 = p * u3 - u2;
    double u5 = p * u4 - u3;
    double u6 = p * u5 - u4;
    double t2 = q * y - 1.0;
    double t3 = q * t2 - y;
    double t4 = q * t3 - t2;
    double t5 = q * t4 - t3;
    double t6 = q * t5 - t4;
    return c1 * y
        + (c2 * u2 * t2 + (c3 * u3 * t3 + (c4 * u4 * t4 + (c5 * u5 * t5 + c6 * u6 * t6))));
  }
}
