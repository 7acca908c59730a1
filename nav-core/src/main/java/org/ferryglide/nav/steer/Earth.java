package org.ferryglide.nav.steer;

import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.position.Position;

/** The WGS84 ellipsoid as an integrator needs it: metres for a degree, and isometric latitude. */
final class Earth {
  private static final double A = Ellipsoid.WGS84.semiMajorAxisMetres();
  private static final double E = Math.sqrt(Ellipsoid.WGS84.eccentricitySquared());
  private static final double RADIANS = Math.PI / 180.0;

  /** No degree of latitude, nor of longitude, is longer than this, metres. */
  static final double LONGEST_DEGREE = 111_700.0;

  /** Where a degree of longitude gets too short to follow a craft by it. */
  static final double GREATEST_LATITUDE = 89.0;

  private Earth() {}

  /** Metres for a degree of latitude, at a sine of latitude. */
  static double metresPerLatitudeDegree(double sine) {
    return Ellipsoid.WGS84.meridianRadiusMetresAtSine(sine) * RADIANS;
  }

  /** Metres for a degree of longitude, at a sine of latitude. */
  static double metresPerLongitudeDegree(double sine) {
    return Ellipsoid.WGS84.parallelRadiusMetresAtSine(sine) * RADIANS;
  }

  /** Sine of a latitude in degrees. */
  static double sine(double latitudeDegrees) {
    return Math.sin(latitudeDegrees * RADIANS);
  }

  /** Isometric latitude times the equator's radius: northing on a Mercator chart, metres. */
  static double mercatorNorthing(double latitudeDegrees) {
    double sine = sine(latitudeDegrees);
    double conformal = E * sine;
    return A
        * 0.5
        * (Math.log1p(2.0 * sine / (1.0 - sine))
            - E * Math.log1p(2.0 * conformal / (1.0 - conformal)));
  }

  /** Easting on a Mercator chart, metres. */
  static double mercatorEasting(double longitudeDegrees) {
    return A * longitudeDegrees * RADIANS;
  }

  /** True metres for a metre on the Mercator chart of an equator of true length. */
  static double mercatorScale(double latitudeDegrees) {
    return metresPerLongitudeDegree(sine(latitudeDegrees)) / (A * RADIANS);
  }

  /** The size of a vector of metres or metres a second, which cannot overflow. */
  static double size(double east, double north) {
    return Math.sqrt(east * east + north * north);
  }

  /** A place whose longitude may have gone on past 180°. */
  static Position position(double latitude, double unwrappedLongitude) {
    return Position.ofDegrees(latitude, longitude(unwrappedLongitude));
  }

  /** A longitude in [-180, 180). */
  static double longitude(double degrees) {
    if (degrees >= -180.0 && degrees < 180.0) {
      return degrees + 0.0;
    }
    double reduced = Math.IEEEremainder(degrees, 360.0);
    return reduced == 180.0 ? -180.0 : reduced + 0.0;
  }
}
