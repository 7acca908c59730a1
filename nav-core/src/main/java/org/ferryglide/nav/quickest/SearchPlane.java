package org.ferryglide.nav.quickest;

import org.ferryglide.nav.geodesy.Ellipsoid;

/**
 * The plane in which the search works: metres along the line from start to goal, and metres to the
 * right of it.
 *
 * <p>It is linear in latitude and longitude, true to scale at the middle latitude; lengths that
 * enter a time are measured on the ellipsoid, so that the plane only names places.
 */
final class SearchPlane {
  private static final double DEGREE = Math.PI / 180.0;

  /** Degrees of the start. */
  private final double startLatitude;

  private final double startLongitude;

  /** Direction of the line, from north. */
  final double sine;

  final double cosine;

  /** From start to goal, metres. */
  final double length;

  private final double latitudeForMetre;
  private final double longitudeForMetre;

  /** Makes the plane of two places in degrees, whose longitudes lie within 180° of each other. */
  SearchPlane(
      double startLatitude, double startLongitude, double goalLatitude, double goalLongitude) {
    this.startLatitude = startLatitude;
    this.startLongitude = startLongitude;
    double middle = 0.5 * (startLatitude + goalLatitude);
    latitudeForMetre = 1.0 / metresPerLatitudeDegree(middle);
    longitudeForMetre = 1.0 / metresPerLongitudeDegree(middle);
    double north = (goalLatitude - startLatitude) / latitudeForMetre;
    double east = (goalLongitude - startLongitude) / longitudeForMetre;
    length = Math.hypot(north, east);
    sine = length == 0.0 ? 0.0 : east / length;
    cosine = length == 0.0 ? 1.0 : north / length;
  }

  double latitude(double along, double right) {
    return startLatitude + (along * cosine - right * sine) * latitudeForMetre;
  }

  double longitude(double along, double right) {
    return startLongitude + (along * sine + right * cosine) * longitudeForMetre;
  }

  /** Metres along the line of a place in degrees. */
  double along(double latitude, double longitude) {
    return north(latitude) * cosine + east(longitude) * sine;
  }

  /** Metres right of the line of a place in degrees. */
  double right(double latitude, double longitude) {
    return east(longitude) * cosine - north(latitude) * sine;
  }

  private double north(double latitude) {
    return (latitude - startLatitude) / latitudeForMetre;
  }

  private double east(double longitude) {
    return Math.IEEEremainder(longitude - startLongitude, 360.0) / longitudeForMetre;
  }

  /** Metres for a degree of latitude at a latitude in degrees. */
  static double metresPerLatitudeDegree(double latitude) {
    return Ellipsoid.WGS84.meridianRadiusMetresAtSine(Math.sin(latitude * DEGREE)) * DEGREE;
  }

  /** Metres for a degree of longitude at a latitude in degrees. */
  static double metresPerLongitudeDegree(double latitude) {
    return Ellipsoid.WGS84.parallelRadiusMetresAtSine(Math.sin(latitude * DEGREE)) * DEGREE;
  }
}
