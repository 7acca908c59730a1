package org.ferryglide.nav.steer;

import org.ferryglide.nav.geodesy.RhumbLines;

/**
 * What one heading is to do: from a place and time to a target. Longitudes run on past the
 * antimeridian. Not thread-safe.
 */
final class Stretch {
  private double startTime;
  private double startLatitude;
  private double startLongitude;
  private double targetLatitude;
  private double targetLongitude;

  /** The rhumb line from start to target: its course in degrees, and its length in metres. */
  private double courseDegrees;

  private double length;

  private double metresPerLatitude;
  private double metresPerLongitude;
  private final double[] line = new double[2];

  void set(
      double time,
      double fromLatitude,
      double fromLongitude,
      double toLatitude,
      double toLongitude) {
    startTime = time;
    startLatitude = fromLatitude;
    startLongitude = fromLongitude;
    targetLatitude = toLatitude;
    targetLongitude = toLongitude;
    double sine = Earth.sine(toLatitude);
    metresPerLatitude = Earth.metresPerLatitudeDegree(sine);
    metresPerLongitude = Earth.metresPerLongitudeDegree(sine);
    RhumbLines.inverse(
        fromLatitude,
        Earth.longitude(fromLongitude),
        toLatitude,
        Earth.longitude(toLongitude),
        line,
        0);
    courseDegrees = line[RhumbLines.COURSE];
    length = line[RhumbLines.LENGTH];
  }

  /** How far a place near the target lies north of it, metres. */
  double northOfTarget(double latitude) {
    return (latitude - targetLatitude) * metresPerLatitude;
  }

  /** How far a place near the target lies east of it, metres. */
  double eastOfTarget(double longitude) {
    return (longitude - targetLongitude) * metresPerLongitude;
  }

  /** The latitude so many metres north of the target. */
  double latitudeNorthOfTarget(double metres) {
    return targetLatitude + metres / metresPerLatitude;
  }

  /** The longitude so many metres east of the target. */
  double longitudeEastOfTarget(double metres) {
    return targetLongitude + metres / metresPerLongitude;
  }

  /** When it begins, seconds since 1970. */
  double startTime() {
    return startTime;
  }

  /** Latitude of the start, degrees. */
  double startLatitude() {
    return startLatitude;
  }

  /** Longitude of the start, degrees. */
  double startLongitude() {
    return startLongitude;
  }

  /** Latitude of the target, degrees. */
  double targetLatitude() {
    return targetLatitude;
  }

  /** Longitude of the target, degrees. */
  double targetLongitude() {
    return targetLongitude;
  }

  /** The course of the rhumb line from start to target, degrees. */
  double courseDegrees() {
    return courseDegrees;
  }

  /** Its length, metres. */
  double length() {
    return length;
  }
}
