package org.ferryglide.nav.fix;

import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.Geodesics;

/**
 * Azimuth and distance from an observer to a mark on WGS84, exactly or quickly, and how the azimuth
 * turns when the observer moves.
 */
final class SightLine {
  private SightLine() {}

  private static final double A = Ellipsoid.WGS84.semiMajorAxisMetres();
  private static final double E2 = Ellipsoid.WGS84.eccentricitySquared();
  private static final double OVER_POLAR_RADIUS = Math.sqrt(1.0 - E2) / A;

  /** Writes azimuth, degrees in [0, 360), azimuth at the mark, and metres: the geodesic. */
  static void exact(double lat, double lon, double markLat, double markLon, double[] out) {
    Geodesics.inverse(lat, lon, markLat, markLon, out, 0);
  }

  /**
   * Writes azimuth and metres by the straight line through the earth, for the first steps of a
   * solution: within 2 mm of the geodesic across and 1 m along at 20 NM.
   */
  static void quick(double lat, double lon, double markLat, double markLon, double[] out) {
    double phi1 = Math.toRadians(lat);
    double phi2 = Math.toRadians(markLat);
    double dlon = Math.toRadians(markLon - lon);
    double s1 = Math.sin(phi1);
    double c1 = Math.cos(phi1);
    double s2 = Math.sin(phi2);
    double c2 = Math.cos(phi2);
    double n1 = Ellipsoid.WGS84.primeVerticalRadiusMetresAtSine(s1);
    double n2 = Ellipsoid.WGS84.primeVerticalRadiusMetresAtSine(s2);
    // Earth-centred difference, x toward the observer's meridian.
    double dx = n2 * c2 * Math.cos(dlon) - n1 * c1;
    double dy = n2 * c2 * Math.sin(dlon);
    double dz = (1.0 - E2) * (n2 * s2 - n1 * s1);
    double north = c1 * dz - s1 * dx;
    double degrees = Math.toDegrees(Math.atan2(dy, north));
    double chord2 = dx * dx + dy * dy + dz * dz;
    out[0] = degrees < 0.0 ? degrees + 360.0 : degrees;
    out[2] = Math.sqrt(chord2) * (1.0 + chord2 / (24.0 * A * A));
  }

  /**
   * Writes how the azimuth changes, radians for each metre the observer moves east and north.
   *
   * <p>Moving across the line turns it the less the further the mark; moving east also turns true
   * north, by the convergence of the meridians, which at 55 degrees of latitude and 5 NM is a part
   * in five hundred of the first and moves a fix by metres when left out.
   */
  static void azimuthDerivative(
      double lat, double azimuthDegrees, double metres, double[] out, int offset) {
    double radians = Math.toRadians(azimuthDegrees);
    double phi = Math.toRadians(lat);
    double s = Math.sin(phi);
    double primeVertical = Ellipsoid.WGS84.primeVerticalRadiusMetresAtSine(s);
    // Gauss's mean radius, a sqrt(1 - e²) / (1 - e² sin²)
    double gauss = primeVertical * primeVertical * OVER_POLAR_RADIUS;
    double perMetreAcross = 1.0 / (gauss * Math.tan(metres / gauss));
    out[offset] = -Math.cos(radians) * perMetreAcross + Math.tan(phi) / primeVertical;
    out[offset + 1] = Math.sin(radians) * perMetreAcross;
  }
}
