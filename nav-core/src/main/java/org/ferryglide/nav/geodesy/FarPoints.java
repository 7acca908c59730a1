package org.ferryglide.nav.geodesy;

/**
 * Shows that no far point of a line is as near to a position as the best known.
 *
 * <p>A metre along a line changes the distance by a metre at most, and the straight way through the
 * earth is never longer than the way over it. So a point whose straight distance is greater than
 * the best by h clears h metres of the line on both sides, and a few points, ever farther apart,
 * clear all of it.
 *
 * <p>A point of a geodesic is taken from the great circle of its auxiliary sphere with mean values:
 * dσ/ds lies between 1/a and 1/b and dλ/dω near enough to a constant that the place is within 0.2 %
 * of the way along and 500 m, which is taken off; a rhumb line's is exact.
 *
 * @see <a href="https://doi.org/10.1137/0709036">Shubert (1972), A sequential method seeking the
 *     global maximum of a function, SIAM J. Numer. Anal. 9, 379-388</a>
 */
final class FarPoints {
  /** A gain so small tells that a rival is near, which must be looked at closely. */
  private static final double LEAST_GAIN_METRES = 1000.0;

  /** How far beyond what is cleared the next point is tried, as a share of the last gain. */
  private static final double BOLDNESS = 0.8;

  private static final int MOST_POINTS = 200;

  /** How far the great circle may be off: half the flattening of the way along, and some more. */
  private static final double SHARE_OF_WAY = 0.002;

  /** The square of the turn of longitude, and half a flattening of it; 500 m on the earth. */
  private static final double NEARBY = 500.0 / 6.378e6;

  /** Those two hold up to this flattening. */
  private static final double GREATEST_FLATTENING = 1.0 / 290.0;

  private final Line line;
  private final Ellipsoid ellipsoid;
  private final double best;
  private final double[] there = new double[3];
  private final double[] vector = new double[3];
  private final double[] position = new double[3];

  /** On the auxiliary sphere: the origin and the direction of the course; geodesics only. */
  private final double[] origin = new double[3];

  private final double[] ahead = new double[3];
  private final double arcPerMetre;
  private final double turnPerArc;
  private final double axis;
  private final double ratio;
  private final double flattening;

  FarPoints(Line line, Ellipsoid ellipsoid, double lat, double lon, double best) {
    this.line = line;
    this.ellipsoid = ellipsoid;
    this.best = best;
    Cartesian.vector(ellipsoid, lat, lon, position);
    axis = ellipsoid.semiMajorAxisMetres();
    double f = ellipsoid.flattening();
    flattening = Math.abs(f);
    ratio = 1.0 - f;
    arcPerMetre = 1.0 / (axis * (1.0 - 0.5 * f));
    if (line instanceof GeodesicLine) {
      double phi = line.origin().latitudeDegrees();
      double z = ratio * Degrees.sine(phi);
      double rho = Degrees.cosine(phi);
      double length = Math.sqrt(z * z + rho * rho);
      double sinB = z / length;
      double cosB = rho / length;
      double sinL = Degrees.sine(line.origin().longitudeDegrees());
      double cosL = Degrees.cosine(line.origin().longitudeDegrees());
      double east = Degrees.sine(line.initialCourse().degrees());
      double north = Degrees.cosine(line.initialCourse().degrees());
      origin[0] = cosB * cosL;
      origin[1] = cosB * sinL;
      origin[2] = sinB;
      ahead[0] = -north * sinB * cosL - east * sinL;
      ahead[1] = -north * sinB * sinL + east * cosL;
      ahead[2] = north * cosB;
      turnPerArc = ellipsoid.e2 / (2.0 - 0.5 * f) * east * cosB;
    } else {
      turnPerArc = 0.0;
    }
  }

  /** Whether all points of a stretch are farther than the best; it may run either way. */
  boolean areFartherThanBest(double from, double to) {
    if (flattening > GREATEST_FLATTENING) {
      return false;
    }
    double direction = to >= from ? 1.0 : -1.0;
    double end = Math.abs(to - from);
    double cleared = 0.0;
    double at = 0.0;
    for (int i = 0; i < MOST_POINTS; i++) {
      if (cleared >= end) {
        return true;
      }
      at = Math.min(at, end);
      double gain = atLeast(from + direction * at) - best;
      if (!(gain >= LEAST_GAIN_METRES)) {
        return false;
      }
      if (at - gain <= cleared) {
        cleared = at + gain;
        at = cleared + BOLDNESS * gain;
      } else {
        at = cleared; // too bold
      }
    }
    return false;
  }

  /** A lower bound of the distance from a point of the line. */
  private double atLeast(double along) {
    if (line instanceof RhumbLine) {
      line.pointAt(along, there, 0);
      Cartesian.vector(ellipsoid, there[0], there[1], vector);
      return Cartesian.distance(vector, position);
    }
    double arc = along * arcPerMetre;
    double sine = Math.sin(arc);
    double cosine = Math.cos(arc);
    double turn = turnPerArc * arc; // of the place westward, or of the position eastward
    double x = axis * (origin[0] * cosine + ahead[0] * sine) - (position[0] - turn * position[1]);
    double y = axis * (origin[1] * cosine + ahead[1] * sine) - (position[1] + turn * position[0]);
    double z = axis * ratio * (origin[2] * cosine + ahead[2] * sine) - position[2];
    return Math.sqrt(x * x + y * y + z * z) - SHARE_OF_WAY * Math.abs(along) - NEARBY * axis;
  }
}
