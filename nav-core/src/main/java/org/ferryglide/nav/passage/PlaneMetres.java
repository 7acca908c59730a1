package org.ferryglide.nav.passage;

import org.ferryglide.nav.geodesy.Ellipsoid;

/**
 * Metres for a degree of latitude and of longitude, on WGS84.
 *
 * <p>One that is moved from place to place works them out anew where it has gone three miles north
 * or south, and goes by their slope in between: within a part in a million, up to 80° of latitude.
 */
final class PlaneMetres {
  private static final double NEAR_DEGREES = 0.05;
  private static final double E2 = Ellipsoid.WGS84.eccentricitySquared();

  private double middle = Double.NaN;
  private double middleNorth;
  private double middleEast;
  private double slopeNorth;
  private double slopeEast;
  private double beyond;

  static double north(double latitudeDegrees) {
    return Math.toRadians(Ellipsoid.WGS84.meridianRadiusMetres(latitudeDegrees));
  }

  static double east(double latitudeDegrees) {
    return Math.toRadians(Ellipsoid.WGS84.parallelRadiusMetres(latitudeDegrees));
  }

  /** A difference of longitudes the short way round, degrees. */
  static double turned(double degrees) {
    return Math.abs(degrees) <= 180.0 ? degrees : Math.IEEEremainder(degrees, 360.0);
  }

  /** Length of a vector whose parts are neither huge nor tiny. */
  static double length(double east, double north) {
    return Math.sqrt(east * east + north * north);
  }

  /** Forgets where it was, so that what follows does not depend on it. */
  void restart() {
    middle = Double.NaN;
  }

  /** Makes a latitude the one that {@link #east()} and {@link #north()} count for. */
  void moveTo(double latitudeDegrees) {
    beyond = latitudeDegrees - middle;
    if (!(Math.abs(beyond) <= NEAR_DEGREES)) { // the first time too
      middle = latitudeDegrees;
      beyond = 0.0;
      middleNorth = north(latitudeDegrees);
      middleEast = east(latitudeDegrees);
      double sine = Math.sin(Math.toRadians(latitudeDegrees));
      double cosine = Math.cos(Math.toRadians(latitudeDegrees));
      // the radius of a parallel shrinks by the meridian's radius times the sine
      slopeEast = -Math.toRadians(middleNorth * sine);
      slopeNorth =
          Math.toRadians(3.0 * E2 * sine * cosine * middleNorth / (1.0 - E2 * sine * sine));
    }
  }

  double north() {
    return middleNorth + slopeNorth * beyond;
  }

  double east() {
    return middleEast + slopeEast * beyond;
  }
}
