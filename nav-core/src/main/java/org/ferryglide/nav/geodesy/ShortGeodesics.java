package org.ferryglide.nav.geodesy;

/**
 * Short geodesics on plain doubles, almost without iteration and without allocation.
 *
 * <p>Bessel's way (1825): the line is a great circle on an auxiliary sphere of reduced latitudes β,
 * with arc σ and difference of longitude ω. With w = √(1 - e² cos² β), the length is a σ times the
 * mean of w over the arc, and the longitude is ω less e² cos β₁ cos β₂ sin ω (σ / sin σ) times the
 * mean of 1/(1 + w). Over a short arc both means are smooth enough for a rule of three or five
 * points, and none, one or two Newton steps find what is sought. Nothing cancels on a short line,
 * since every difference is formed from sines of the differences given.
 *
 * <p>Angles in the package-private methods are degrees, lengths metres; radians inside. What is out
 * of range is answered by false, and left to a general solver.
 *
 * @see <a href="https://arxiv.org/abs/0908.1824">Bessel (1825), translated by Karney and Deakin</a>
 * @see <a href="https://doi.org/10.1007/s00190-012-0578-z">Karney (2013), Algorithms for geodesics,
 *     J. Geodesy 87, 43-55, eqs. 7 and 8</a>
 */
final class ShortGeodesics {
  /** Greatest flattening, either way, for which the accuracy was measured. */
  static final double GREATEST_FLATTENING = 1.0 / 150.0;

  /** Greatest difference of latitude or longitude, degrees, for the power series of a sine. */
  private static final double GREATEST_DIFFERENCE = 11.0;

  /** Nearer to a pole a kilometre is too great a difference of longitude; degrees. */
  private static final double GREATEST_LATITUDE = 89.0;

  /** Degrees of latitude that an arc of one radian can gain, with room to spare. */
  private static final double DEGREES_OF_LATITUDE_IN_ARC = 60.0;

  /** Longest arc, about 500 km: beyond it five points are too few. */
  static final double LONGEST_ARC = 0.0785;

  /** The square of sin σ/2 up to which three points do, about 48 km: their error grows as σ⁵. */
  static final double THREE_POINTS = 0.25 * 0.0075 * 0.0075;

  /** The square of sin σ/2 up to which one Newton step does, about 100 km. */
  private static final double ONE_STEP = 0.25 * 0.0157 * 0.0157;

  /** The square of sin σ/2 up to which no Newton step is needed, about 22 km. */
  static final double NO_STEP = 0.25 * 0.0035 * 0.0035;

  /**
   * Greatest difference of longitude for that, radians: what is left out grows as its fourth power.
   */
  static final double NO_STEP_LONGITUDE = 0.02;

  /** Where the inner points of Lobatto's rule of five lie, as a share of the half arc. */
  private static final double INNER_POINT = Math.sqrt(3.0 / 7.0);

  /** Where {@link #sight} writes the sine of the course. */
  static final int EAST = Geodesics.INITIAL_COURSE;

  /** Where {@link #sight} writes its cosine. */
  static final int NORTH = Geodesics.FINAL_COURSE;

  private ShortGeodesics() {}

  /**
   * Courses at both ends and length, as {@link Geodesics#inverse} writes them.
   *
   * @return false, with nothing written, if the points are alike, too far apart or near a pole, or
   *     the ellipsoid is too flat, or a value is NaN
   */
  static boolean inverse(
      Ellipsoid ellipsoid,
      double lat1,
      double lon1,
      double lat2,
      double lon2,
      double[] out,
      int offset) {
    double tangent = sight(ellipsoid, lat1, lon1, lat2, lon2, out, offset);
    if (Double.isNaN(tangent)) {
      return false;
    }
    double course = Arcs.courseDegrees(out[offset + EAST], out[offset + NORTH]);
    double turn = Degrees.fromRadians(2.0 * Arcs.arctangent(tangent));
    out[offset + Geodesics.INITIAL_COURSE] = course;
    out[offset + Geodesics.FINAL_COURSE] = Degrees.reduced(course + turn);
    return true;
  }

  /**
   * The course at the start by its sine and cosine, both times the sine of the arc, and the length.
   *
   * @param out receives the sine at {@link #EAST}, the cosine at {@link #NORTH} and the length,
   *     metres, at {@link Geodesics#LENGTH}
   * @return the tangent of half the turn of the course; NaN, with nothing written, as {@link
   *     #inverse} says
   */
  static double sight(
      Ellipsoid ellipsoid,
      double lat1,
      double lon1,
      double lat2,
      double lon2,
      double[] out,
      int offset) {
    double dLat = lat2 - lat1;
    double dLon = Degrees.longitudeDifference(lon1, lon2);
    if (!(Math.abs(dLat) <= GREATEST_DIFFERENCE
        && Math.abs(dLon) <= GREATEST_DIFFERENCE
        && Math.abs(lat1) <= GREATEST_LATITUDE
        && Math.abs(lat2) <= GREATEST_LATITUDE
        && Math.abs(dLat) + Math.abs(dLon) >= 1e-100 // or squares would underflow
        && Math.abs(ellipsoid.flattening()) <= GREATEST_FLATTENING)) {
      return Double.NaN;
    }
    double e2 = ellipsoid.e2;
    double ratio = 1.0 - ellipsoid.flattening();

    // Sine and cosine of both latitudes, geographic and then reduced.
    double phi1 = Degrees.toRadians(lat1);
    double sinPhi1 = Math.sin(phi1);
    double cosPhi1 = Math.cos(phi1);
    double sinHalf = Arcs.sine(0.5 * Degrees.toRadians(dLat));
    double sinDPhi = Arcs.sine(Degrees.toRadians(dLat));
    double versine = 2.0 * sinHalf * sinHalf;
    double sinPhi2 = sinPhi1 + (cosPhi1 * sinDPhi - sinPhi1 * versine);
    double cosPhi2 = cosPhi1 - (sinPhi1 * sinDPhi + cosPhi1 * versine);
    double w1 = ratio / Math.sqrt(1.0 - e2 * sinPhi1 * sinPhi1);
    double w2 = ratio / Math.sqrt(1.0 - e2 * sinPhi2 * sinPhi2);
    double sinB1 = sinPhi1 * w1;
    double sinB2 = sinPhi2 * w2;
    double cosB1 = cosPhi1 * w1 / ratio;
    double cosB2 = cosPhi2 * w2 / ratio;
    double sinDB = sinDPhi * w1 * w2 / ratio; // exactly sin(β₂ - β₁)
    double cosDB = Math.sqrt(1.0 - sinDB * sinDB);
    double north = sinDB * sinDB / (2.0 * (1.0 + cosDB)); // sin² (β₂ - β₁)/2
    double cosines = cosB1 * cosB2;

    // The longitude on the sphere: a start good to the third order, then Newton's method.
    double lambda = Degrees.toRadians(dLon);
    double pullNearly = e2 * cosines * (0.75 - 0.125 * (w1 + w2));
    double omega2 = lambda * lambda * (1.0 + pullNearly * (2.0 + 3.0 * pullNearly)); // nearly ω²
    double nearly = north + 0.25 * cosines * omega2 * (1.0 - omega2 / 12.0); // sin² σ/2
    if (nearly <= NO_STEP && Math.abs(lambda) <= NO_STEP_LONGITUDE) {
      double mean = shortMean(e2, w1, w2, 0.5 * (sinB1 + sinB2), nearly);
      double pull = e2 * cosines / (1.0 + mean);
      double arc2 = 4.0 * north + cosines * omega2; // nearly σ²
      double series = // of sin ω / ω (σ / sin σ) - 1, to the fifth order
          (arc2 - omega2) / 6.0
              + arc2 * (arc2 / 30.0 - omega2 / 36.0)
              + omega2 * omega2 * (1.0 / 120.0 - cosines / 72.0);
      double sinHalfOmega = Arcs.sine(0.5 * lambda / (1.0 - pull * (1.0 + series)));
      double square = north + cosines * sinHalfOmega * sinHalfOmega;
      double cosHalfOmega = Math.sqrt(1.0 - sinHalfOmega * sinHalfOmega);
      out[offset + EAST] = 2.0 * cosB2 * sinHalfOmega * cosHalfOmega;
      out[offset + NORTH] = sinDB + 2.0 * sinB1 * cosB2 * sinHalfOmega * sinHalfOmega;
      out[offset + Geodesics.LENGTH] =
          ellipsoid.semiMajorAxisMetres() * 2.0 * Math.sqrt(square) * Arcs.overSine(square) * mean;
      return tangentOfHalfTurn(sinB1 + sinB2, cosDB, sinHalfOmega / cosHalfOmega);
    }
    double endsMean = 0.5 / (1.0 + w1) + 0.5 / (1.0 + w2);
    double thirdOrder = (4.0 * north + (cosines - 1.0) * lambda * lambda) / 6.0;
    double omega = lambda / (1.0 - e2 * cosines * endsMean * (1.0 + thirdOrder));
    double sinHalfOmega = Arcs.sine(0.5 * omega);
    double square = north + cosines * sinHalfOmega * sinHalfOmega; // sin² σ/2
    if (!(square <= 0.25 * LONGEST_ARC * LONGEST_ARC)) {
      return Double.NaN;
    }
    int steps = square <= ONE_STEP ? 1 : 2;
    for (int i = 0; i < steps; i++) {
      double arcOverSine = Arcs.overSine(square) / Math.sqrt(1.0 - square); // σ / sin σ
      double sinOmega = 2.0 * sinHalfOmega * Math.sqrt(1.0 - sinHalfOmega * sinHalfOmega);
      double cosOmega = 1.0 - 2.0 * sinHalfOmega * sinHalfOmega;
      double pull = e2 * cosines * mean(false, e2, sinB1, sinB2, w1, w2, square);
      double arcGrowth = sinOmega * sinOmega * cosines * (1.0 / 3.0 + 8.0 / 15.0 * square);
      double slope = 1.0 - pull * (cosOmega * arcOverSine + arcGrowth);
      omega -= (omega - lambda - pull * sinOmega * arcOverSine) / slope;
      sinHalfOmega = Arcs.sine(0.5 * omega);
      square = north + cosines * sinHalfOmega * sinHalfOmega;
    }

    double cosHalfOmega = Math.sqrt(1.0 - sinHalfOmega * sinHalfOmega);
    double arc = 2.0 * Math.sqrt(square) * Arcs.overSine(square);
    out[offset + EAST] = 2.0 * cosB2 * sinHalfOmega * cosHalfOmega;
    out[offset + NORTH] = sinDB + 2.0 * sinB1 * cosB2 * sinHalfOmega * sinHalfOmega;
    out[offset + Geodesics.LENGTH] =
        ellipsoid.semiMajorAxisMetres() * arc * mean(true, e2, sinB1, sinB2, w1, w2, square);
    return tangentOfHalfTurn(sinB1 + sinB2, cosDB, sinHalfOmega / cosHalfOmega);
  }

  /**
   * Place and course of the end, as {@link Geodesics#direct} writes them.
   *
   * @return false, with nothing written, if the line is too long or comes near a pole, or the
   *     ellipsoid is too flat, or an angle is beyond a turn, or a value is NaN
   */
  static boolean direct(
      Ellipsoid ellipsoid,
      double lat,
      double lon,
      double courseDegrees,
      double metres,
      double[] out,
      int offset) {
    double phi = Degrees.toRadians(lat);
    return point(
        ellipsoid,
        lat,
        lon,
        courseDegrees,
        Math.sin(phi),
        Math.cos(phi),
        Degrees.sine(courseDegrees),
        Degrees.cosine(courseDegrees),
        metres,
        out,
        offset);
  }

  /** The same from what a prepared line knows of its start. */
  static boolean point(
      Ellipsoid ellipsoid,
      double lat,
      double lon,
      double courseDegrees,
      double sinPhi,
      double cosPhi,
      double sinCourse,
      double cosCourse,
      double metres,
      double[] out,
      int offset) {
    double length = metres / ellipsoid.semiMajorAxisMetres();
    double reach = Math.abs(length);
    if (!(reach <= LONGEST_ARC
        && Math.abs(lat) + reach * DEGREES_OF_LATITUDE_IN_ARC <= GREATEST_LATITUDE
        && Math.abs(courseDegrees) <= 360.0
        && Math.abs(lon) <= 360.0
        && Math.abs(ellipsoid.flattening()) <= GREATEST_FLATTENING)) {
      return false;
    }
    double e2 = ellipsoid.e2;
    double ratio = 1.0 - ellipsoid.flattening();
    double w1 = ratio / Math.sqrt(1.0 - e2 * sinPhi * sinPhi);
    double sinB1 = sinPhi * w1;
    double cosB1 = cosPhi * w1 / ratio;

    // The arc: Taylor's series of dσ/ds = 1/(a w) to the third order, then Newton's method, whose
    // slope is w at the end.
    double north = cosB1 * cosCourse; // d sin β / dσ at the start
    double first = e2 * sinB1 * north / (w1 * w1);
    double second = e2 * (north * north - sinB1 * sinB1) / (w1 * w1) - first * first;
    double x = length / w1;
    double arc = x * (1.0 - x * (0.5 * first - x * (3.0 * first * first - second) / 6.0));
    double sinArc;
    double square; // of the sine of half the arc
    double w2;
    double arcTimesMean;
    if (0.25 * length * length <= NO_STEP) {
      double nearlyHalf = Arcs.sine(0.5 * arc);
      double nearly = nearlyHalf * nearlyHalf;
      double cosHalf = Math.sqrt(1.0 - nearly);
      double nearlyB2 = sinB1 + (2.0 * north * nearlyHalf * cosHalf - 2.0 * sinB1 * nearly);
      w2 = w(e2, nearlyB2);
      double mean = shortMean(e2, w1, w2, 0.5 * (sinB1 + nearlyB2), nearly);
      double later = 0.5 * (length / mean - arc); // less than a micrometre of half the arc
      double sinHalf = nearlyHalf + later * cosHalf;
      sinArc = 2.0 * sinHalf * (cosHalf - later * nearlyHalf);
      square = sinHalf * sinHalf;
      arcTimesMean = length / mean / (1.0 + mean);
    } else {
      int steps = 0.25 * length * length <= ONE_STEP ? 1 : 2;
      for (int i = 0; i < steps; i++) {
        double sinHalf = Arcs.sine(0.5 * arc);
        double before = sinHalf * sinHalf;
        double sinB2 =
            sinB1 + (2.0 * north * sinHalf * Math.sqrt(1.0 - before) - 2.0 * sinB1 * before);
        double w = w(e2, sinB2);
        arc -= (arc * mean(true, e2, sinB1, sinB2, w1, w, before) - length) / w;
      }
      double sinHalf = Arcs.sine(0.5 * arc);
      square = sinHalf * sinHalf;
      sinArc = 2.0 * sinHalf * Math.sqrt(1.0 - square);
      double sinB2 = sinB1 + (north * sinArc - 2.0 * sinB1 * square);
      w2 = w(e2, sinB2);
      arcTimesMean = arc * mean(false, e2, sinB1, sinB2, w1, w2, square);
    }

    // the end by its differences from the start
    double dSinB = north * sinArc - 2.0 * sinB1 * square;
    double sinB2 = sinB1 + dSinB;
    double eastward = sinCourse * sinArc;
    double inward = cosB1 - (sinB1 * cosCourse * sinArc + 2.0 * cosB1 * square);
    double cosB2 = Math.sqrt(inward * inward + eastward * eastward);
    double dCosB = -dSinB * (sinB1 + sinB2) / (cosB1 + cosB2);
    double sinDB = dSinB * cosB1 - dCosB * sinB1;
    double sinDPhi = ratio * sinDB / (w1 * w2); // exactly sin(φ₂ - φ₁)
    double dPhi = sinDPhi * Arcs.overSine(sinDPhi * sinDPhi);
    double tangent = eastward / (cosB2 + inward); // of half the longitude on the sphere
    double omega = 2.0 * Arcs.arctangent(tangent);
    double lambda = omega - e2 * sinCourse * cosB1 * arcTimesMean;
    double turn =
        2.0
            * Arcs.arctangent(
                tangentOfHalfTurn(sinB1 + sinB2, Math.sqrt(1.0 - sinDB * sinDB), tangent));
    out[offset + Geodesics.LATITUDE] = lat + Degrees.fromRadians(dPhi) + 0.0;
    out[offset + Geodesics.LONGITUDE] = Degrees.longitude(lon + Degrees.fromRadians(lambda));
    out[offset + Geodesics.COURSE] = Degrees.reduced(courseDegrees + Degrees.fromRadians(turn));
    return true;
  }

  /** How far the course turns from end to end: Napier's analogy. */
  private static double tangentOfHalfTurn(
      double sumOfSines, double cosDB, double tangentOfHalfOmega) {
    return sumOfSines / (1.0 + cosDB) * tangentOfHalfOmega;
  }

  private static double w(double e2, double sinB) {
    return Math.sqrt(1.0 - e2 + e2 * sinB * sinB);
  }

  /**
   * The mean of w over a short arc. One over one more than it is the mean of 1/(1 + w) there, since
   * w varies by some 2e-5 of itself at most over 22 km, whatever the ellipsoid up to a flattening
   * of 1/150.
   *
   * @param halfSum half the sum of the sines of both reduced latitudes
   * @param square sin² σ/2
   */
  private static double shortMean(double e2, double w1, double w2, double halfSum, double square) {
    return (w1 + w2 + 4.0 * w(e2, halfSum * (1.0 + 0.5 * square))) / 6.0;
  }

  /**
   * The mean of w, or of 1/(1 + w), over the arc: by Simpson's rule on a short one, by Lobatto's of
   * five points on others.
   *
   * @param length true for the mean of w, false for that of 1/(1 + w)
   * @param square sin² σ/2
   */
  private static double mean(
      boolean length, double e2, double sinB1, double sinB2, double w1, double w2, double square) {
    double middle = 0.5 * (sinB1 + sinB2) / Math.sqrt(1.0 - square);
    double ends = sample(length, w1) + sample(length, w2);
    double inMiddle = sample(length, w(e2, middle));
    if (square <= THREE_POINTS) {
      return (ends + 4.0 * inMiddle) / 6.0;
    }
    double sinHalf = Math.sqrt(square);
    double sinInner = Arcs.sine(INNER_POINT * sinHalf * Arcs.overSine(square));
    double atInner = middle * Math.sqrt(1.0 - sinInner * sinInner);
    double side = 0.5 * (sinB2 - sinB1) * sinInner / sinHalf;
    double inner = sample(length, w(e2, atInner - side)) + sample(length, w(e2, atInner + side));
    return (9.0 * ends + 49.0 * inner + 64.0 * inMiddle) / 180.0;
  }

  private static double sample(boolean length, double w) {
    return length ? w : 1.0 / (1.0 + w);
  }
}
