package org.ferryglide.nav.plane;

import org.ferryglide.nav.geodesy.Geodesics;
import org.ferryglide.nav.position.Position;

/**
 * The plane that touches the ellipsoid at a place: true distance and direction from that place
 * (azimuthal equidistant), metres east and north.
 *
 * <p>Within 20 NM of the origin other distances are right to 5 parts in a million or better.
 */
public final class LocalPlane {
  private LocalPlane() {}

  /** Writes metres east and north of the origin. */
  public static void toPlane(
      double originLat, double originLon, double lat, double lon, double[] out, int offset) {
    double[] line = new double[3];
    Geodesics.inverse(originLat, originLon, lat, lon, line, 0);
    double radians = Math.toRadians(line[0]);
    out[offset] = line[2] * Math.sin(radians);
    out[offset + 1] = line[2] * Math.cos(radians);
  }

  /** Metres east and north of the origin. */
  public static double[] toPlane(Position origin, Position place) {
    double[] eastNorth = new double[2];
    toPlane(
        origin.latitudeDegrees(),
        origin.longitudeDegrees(),
        place.latitudeDegrees(),
        place.longitudeDegrees(),
        eastNorth,
        0);
    return eastNorth;
  }

  /** Writes latitude and longitude of a point of the plane. */
  public static void fromPlane(
      double originLat, double originLon, double east, double north, double[] out, int offset) {
    double[] end = new double[3];
    Geodesics.direct(
        originLat,
        originLon,
        Math.toDegrees(Math.atan2(east, north)),
        Math.hypot(east, north),
        end,
        0);
    out[offset] = end[0];
    out[offset + 1] = end[1];
  }

  /** The place of a point of the plane. */
  public static Position fromPlane(Position origin, double east, double north) {
    if (east == 0.0 && north == 0.0) {
      return origin;
    }
    double[] latLon = new double[2];
    fromPlane(origin.latitudeDegrees(), origin.longitudeDegrees(), east, north, latLon, 0);
    return Position.ofDegrees(latLon[0], latLon[1]);
  }
}
