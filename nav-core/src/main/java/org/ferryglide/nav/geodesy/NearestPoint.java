package org.ferryglide.nav.geodesy;

/**
 * The point of a stretch of a line that is nearest to a position, and what is seen from it.
 *
 * <p>On a stretch so short beside the earth and the bend of the line that the square of the
 * distance is convex, there is one least distance, and Newton's method finds it: from a course and
 * a sight at angle θ of length r the foot lies r cos θ / (cos² θ + sin² θ (r/R) / tan(r/R) - k r
 * sin θ) ahead, k being the curvature of the line to starboard: none for a geodesic, -sin(course)
 * tan(latitude) / N for a rhumb line. What lies beyond is ruled out by {@link FarPoints}, or where
 * neither proof holds searched by {@link NearestPointSearch}.
 *
 * @see <a href="https://doi.org/10.1007/s11200-017-1020-z">Baselga and Martínez-Llario (2018),
 *     Intersection and point-to-line solutions for geodesics on the ellipsoid, Studia Geophysica et
 *     Geodaetica 62, 353-363</a>
 */
final class NearestPoint {
  /** What of a foot is not worth another step: a hundredth of what is promised. */
  private static final double NO_GAIN_METRES = 1e-8;

  /** Longest stretch that may be convex. */
  private static final double LONGEST_CONVEX_METRES = 2e6;

  /** Half the stretch round a foot that is shown to be convex, at first. */
  private static final double ROUND_FOOT_METRES = 300e3;

  /** A stretch round a foot shorter than this leaves too little room for {@link FarPoints}. */
  private static final double LEAST_ROUND_FOOT_METRES = 10e3;

  /** Nearer to a pole a line turns too fast for a small step; degrees. */
  private static final double GREATEST_LATITUDE = 85.0;

  private static final int MOST_STEPS = 12;

  private final Line line;
  private final Ellipsoid ellipsoid;
  private final double lat;
  private final double lon;

  /** Least radius of curvature, 1/√K, of the ellipsoid. */
  private final double leastRadius;

  /** Sine and cosine of the course at the origin. */
  private final double initialSine;

  private final double initialCosine;

  /** Sine of a rhumb line's course, 0 on a geodesic, which has no curvature. */
  private final double sineOfCourse;

  private final double[] point = new double[3];
  private final double[] sight = new double[3];

  /** Sines and cosines of latitude and course at the point. */
  private double sinPhi;

  private double cosPhi;
  private double sinCourse;
  private double cosCourse;

  private double along;
  private double metres;
  private double sine;
  private double cosine;

  private NearestPoint(Line line, double lat, double lon) {
    this.line = line;
    this.lat = lat;
    this.lon = lon;
    ellipsoid = line.ellipsoid();
    leastRadius = leastRadius(ellipsoid);
    if (line instanceof RhumbLine rhumb) {
      initialSine = rhumb.sineOfCourse();
      initialCosine = rhumb.cosineOfCourse();
      sineOfCourse = initialSine;
    } else {
      GeodesicLine geodesic = (GeodesicLine) line;
      initialSine = geodesic.initialSine();
      initialCosine = geodesic.initialCosine();
      sineOfCourse = 0.0;
    }
  }

  /**
   * Least radius of curvature, 1/√K: at the equator of an oblate ellipsoid, at a pole of others.
   */
  static double leastRadius(Ellipsoid ellipsoid) {
    return ellipsoid.flattening() >= 0.0
        ? ellipsoid.semiMinorAxisMetres()
        : ellipsoid.semiMajorAxisMetres() / (1.0 - ellipsoid.flattening());
  }

  /** Least radius of curvature of a meridian: at the equator of an oblate ellipsoid. */
  private static double leastMeridianRadius(Ellipsoid ellipsoid) {
    double axes = 1.0 - ellipsoid.flattening();
    return ellipsoid.semiMajorAxisMetres() * (axes <= 1.0 ? axes * axes : 1.0 / axes);
  }

  /**
   * Finds it.
   *
   * @param from beginning of the stretch, metres from the line's origin
   * @param to end of the stretch, at least {@code from}
   * @param lat latitude of the position, degrees
   * @param lon longitude of the position, degrees
   */
  static NearestPoint search(Line line, double from, double to, double lat, double lon) {
    NearestPoint nearest = new NearestPoint(line, lat, lon);
    if (!nearest.isProven(from, to)) {
      nearest.sample(NearestPointSearch.search(line, nearest.ellipsoid, from, to, lat, lon));
    }
    return nearest;
  }

  /** How far along the line it lies, metres. */
  double along() {
    return along;
  }

  /** How far the position is from it, metres. */
  double metres() {
    return metres;
  }

  double latitude() {
    return point[0];
  }

  double longitude() {
    return point[1];
  }

  /** The course of the line there, degrees. */
  double course() {
    return point[2];
  }

  /** The turn from the course to the sight, degrees in [-180, 180]; 0 if they are one point. */
  double turn() {
    if (metres == 0.0) {
      return 0.0;
    }
    return cosine == 0.0 // at a foot
        ? Math.copySign(90.0, sine)
        : Degrees.fromRadians(Math.atan2(sine, cosine));
  }

  private void sample(double metresAlong) {
    along = metresAlong;
    if (metresAlong == 0.0) { // needs no working
      point[0] = line.origin().latitudeDegrees();
      point[1] = line.origin().longitudeDegrees();
      point[2] = line.initialCourse().degrees();
    } else {
      line.pointAt(metresAlong, point, 0);
    }
    double phi = Degrees.toRadians(point[0]);
    sinPhi = Math.sin(phi);
    cosPhi = Math.cos(phi);
    boolean isFirst = line instanceof RhumbLine || metresAlong == 0.0;
    sinCourse = isFirst ? initialSine : Degrees.sine(point[2]);
    cosCourse = isFirst ? initialCosine : Degrees.cosine(point[2]);
    if (Double.isNaN(ShortGeodesics.sight(ellipsoid, point[0], point[1], lat, lon, sight, 0))) {
      Geodesics.inverse(ellipsoid, point[0], point[1], lat, lon, sight, 0);
      double theta = sight[Geodesics.INITIAL_COURSE] - point[2];
      sine = Degrees.sine(theta);
      cosine = Degrees.cosine(theta);
    } else { // the same from sines and cosines, without an angle
      double east = sight[ShortGeodesics.EAST];
      double north = sight[ShortGeodesics.NORTH];
      double size = Math.sqrt(east * east + north * north);
      sine = (east * cosCourse - north * sinCourse) / size;
      cosine = (north * cosCourse + east * sinCourse) / size;
    }
    metres = sight[Geodesics.LENGTH];
  }

  /** Whether the nearest point of the stretch was found, and none other can be as near. */
  private boolean isProven(double from, double to) {
    sample(Math.max(from, Math.min(to, 0.0)));
    double reach = Math.max(to - along, along - from);
    if (reach <= LONGEST_CONVEX_METRES && isConvex(metres, reach)) {
      return descend(from, to);
    }
    if (!(descend(from, to) && along > from && along < to)) {
      return false;
    }
    double convex = ROUND_FOOT_METRES;
    while (!isConvex(metres, convex)) {
      convex *= 0.5;
      if (convex < LEAST_ROUND_FOOT_METRES) {
        return false;
      }
    }
    FarPoints far = new FarPoints(line, ellipsoid, lat, lon, metres);
    return far.areFartherThanBest(along + convex, to)
        && far.areFartherThanBest(along - convex, from);
  }

  /** Whether the square of a distance is convex within some reach of here. */
  private boolean isConvex(double metresHere, double reach) {
    double farthest = metresHere + reach;
    double x = farthest / leastRadius;
    if (!(x < 0.5 * Math.PI)) {
      return false;
    }
    double flat = x < 0.5 ? 1.0 - 0.35 * x * x : x / Math.tan(x); // x / tan x, at most
    return farthest * curvature(reach) < 0.99 * flat;
  }

  /** The greatest geodesic curvature of the line within some reach of here, radians a metre. */
  private double curvature(double reach) {
    if (sineOfCourse == 0.0) {
      return 0.0;
    }
    double poleward = reach / leastMeridianRadius(ellipsoid);
    double tangent = poleward < 0.1 ? poleward * 1.004 : Math.tan(poleward); // at least
    double north = Math.abs(sinPhi);
    double left = cosPhi - north * tangent; // the cosine of the greatest latitude, and its sine
    return left <= 2e-3 || poleward >= 1.5
        ? Double.POSITIVE_INFINITY
        : Math.abs(sineOfCourse)
            * ((north + cosPhi * tangent) / left)
            / ellipsoid.semiMajorAxisMetres();
  }

  /**
   * Newton's method from the sample at hand: to a foot, or to the end toward which the distance
   * falls. False if neither is reached soon.
   */
  private boolean descend(double from, double to) {
    for (int i = 0; i < MOST_STEPS; i++) {
      double bend = bend();
      double step = i == 0 ? firstStep(bend) : step(bend);
      double next = along + step;
      if ((step >= 0.0 && along >= to) || (step <= 0.0 && along <= from)) {
        return true;
      }
      if (next > from
          && next < to
          && step * step * (Math.abs(bend) + 1.0 / leastRadius) <= NO_GAIN_METRES) {
        finish(step);
        return true;
      }
      if (!(Math.abs(step) <= 2.1e7)) { // or NaN
        return false;
      }
      sample(Math.max(from, Math.min(to, next)));
    }
    return false;
  }

  /** At the foot the sight is square to the course, and needs no other inverse. */
  private void finish(double step) {
    along += step;
    if (Math.abs(step) <= SmallStep.LONGEST_METRES && Math.abs(point[0]) <= GREATEST_LATITUDE) {
      boolean keepsCourse = line instanceof RhumbLine;
      SmallStep.take(ellipsoid, keepsCourse, step, sinPhi, cosPhi, sinCourse, cosCourse, point);
    } else {
      line.pointAt(along, point, 0);
    }
    metres *= Math.abs(sine);
    sine = sine < 0.0 ? -1.0 : 1.0;
    cosine = 0.0;
  }

  /** The curvature of the line here, to starboard positive, radians a metre. */
  private double bend() {
    if (sineOfCourse == 0.0) {
      return 0.0;
    }
    double overN =
        Math.sqrt(1.0 - ellipsoid.e2 * sinPhi * sinPhi) / ellipsoid.semiMajorAxisMetres();
    return -sineOfCourse * sinPhi / cosPhi * overN;
  }

  private double step(double bend) {
    double z = metres / leastRadius;
    double flat = z < 0.02 ? 1.0 - z * z / 3.0 : z / Math.tan(z);
    double square = cosine * cosine + sine * sine * flat - bend * metres * sine;
    return metres * cosine / Math.max(0.1, square); // farther would be as good as nowhere
  }

  /** The foot of a line of even curvature; on a sphere Napier's rule for a geodesic. */
  private double firstStep(double bend) {
    double z = metres / leastRadius;
    double straight =
        z < 0.02
            ? metres * cosine * (1.0 + z * z / 3.0 * sine * sine)
            : leastRadius * Math.atan2(Math.sin(z) * cosine, Math.cos(z));
    double share = 1.0 - bend * metres * sine;
    if (!(share > 0.5)) {
      return step(bend);
    }
    double x = bend * straight / share;
    return straight / share * (1.0 - x * x / 3.0);
  }
}
