package org.ferryglide.nav.geodesy;

/**
 * A step of a metre or so along a line, by its slopes half way: what it leaves out is its cube over
 * the square of the earth's radius, less than a picometre up to 85° of latitude.
 */
final class SmallStep {
  /** Longest step that may be taken so. */
  static final double LONGEST_METRES = 1.0;

  private SmallStep() {}

  /**
   * Moves a point along.
   *
   * @param keepsCourse true on a rhumb line, false on a geodesic
   * @param metres the step, forward positive
   * @param point latitude, longitude and course, degrees; receives those after the step
   */
  static void take(Ellipsoid ellipsoid, boolean keepsCourse, double metres, double[] point) {
    double phi = Degrees.toRadians(point[0]);
    take(
        ellipsoid,
        keepsCourse,
        metres,
        Math.sin(phi),
        Math.cos(phi),
        Degrees.sine(point[2]),
        Degrees.cosine(point[2]),
        point);
  }

  /** The same where the sines and cosines of latitude and course are known. */
  static void take(
      Ellipsoid ellipsoid,
      boolean keepsCourse,
      double metres,
      double sine,
      double cosine,
      double sinCourse,
      double cosCourse,
      double[] point) {
    double tangent = sine / cosine;
    double w2 = 1.0 - ellipsoid.e2 * sine * sine;
    double overN = Math.sqrt(w2) / ellipsoid.semiMajorAxisMetres();
    double overM = overN * w2 / (1.0 - ellipsoid.e2);
    double turn = keepsCourse ? 0.0 : metres * tangent * sinCourse * overN;
    double north = metres * (cosCourse - 0.5 * turn * sinCourse);
    double east = metres * (sinCourse + 0.5 * turn * cosCourse);
    point[0] += Degrees.fromRadians(north * overM);
    double widening = 1.0 + 0.5 * north * overM * tangent;
    point[1] = Degrees.longitude(point[1] + Degrees.fromRadians(east * overN / cosine * widening));
    point[2] = Degrees.reduced(point[2] + Degrees.fromRadians(turn));
  }
}
