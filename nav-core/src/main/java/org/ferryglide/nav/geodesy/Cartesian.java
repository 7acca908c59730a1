package org.ferryglide.nav.geodesy;

/** Straight lines through the earth: never longer than the way over it, and quick to compare. */
final class Cartesian {
  private Cartesian() {}

  /** Writes the three coordinates of a point, metres from the centre of the ellipsoid. */
  static void vector(Ellipsoid ellipsoid, double latDegrees, double lonDegrees, double[] out) {
    double e2 = ellipsoid.e2;
    double sine = Degrees.sine(latDegrees);
    double cosine = Degrees.cosine(latDegrees);
    double n = ellipsoid.primeVerticalRadiusMetresAtSine(sine);
    out[0] = n * cosine * Degrees.cosine(lonDegrees);
    out[1] = n * cosine * Degrees.sine(lonDegrees);
    out[2] = n * (1.0 - e2) * sine;
  }

  /**
   * The longest segment of a rhumb line at a latitude that bends little: a quarter of the distance
   * from the axis, since near a pole it winds ever more tightly; a hundred metres at least.
   */
  static double gentleSegmentMetres(Ellipsoid ellipsoid, double latDegrees) {
    double fromAxis = ellipsoid.semiMajorAxisMetres() * Degrees.cosine(latDegrees);
    return Math.max(100.0, 0.25 * fromAxis);
  }

  static double distance(double[] a, double[] b) {
    double x = a[0] - b[0];
    double y = a[1] - b[1];
    double z = a[2] - b[2];
    return Math.sqrt(x * x + y * y + z * z);
  }
}
