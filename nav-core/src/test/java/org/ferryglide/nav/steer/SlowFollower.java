package org.ferryglide.nav.steer;

import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.water.StreamField;

/**
 * A slow, obvious follower of a craft that holds headings: steps of one second, the stream taken at
 * the middle of each, on the WGS84 ellipsoid. Shares nothing with the solvers.
 */
final class SlowFollower {
  double latitude;
  double longitude;
  double time;

  /** Length of a step, seconds. */
  double stepSeconds = 1.0;

  SlowFollower(double latitude, double longitude, double time) {
    this.latitude = latitude;
    this.longitude = longitude;
    this.time = time;
  }

  /** Follows a heading at a speed through the water until a time; false where data give out. */
  boolean follow(double headingDegrees, double speed, StreamField stream, double until) {
    double[] flow = new double[2];
    while (time < until) {
      double step = Math.min(stepSeconds, until - time);
      // half a step first, so that the stream and the degree's length are those of the middle
      if (!stream.sample(latitude, longitude, time + 0.5 * step, flow, 0)) {
        return false;
      }
      double heading = Math.toRadians(headingDegrees);
      double halfLatitude =
          latitude
              + Math.toDegrees(
                  0.5
                      * step
                      * (speed * Math.cos(heading) + flow[1])
                      / Ellipsoid.WGS84.meridianRadiusMetres(latitude));
      double halfLongitude =
          longitude
              + Math.toDegrees(
                  0.5
                      * step
                      * (speed * Math.sin(heading) + flow[0])
                      / (Ellipsoid.WGS84.primeVerticalRadiusMetres(latitude)
                          * Math.cos(Math.toRadians(latitude))));
      if (!stream.sample(halfLatitude, halfLongitude, time + 0.5 * step, flow, 0)) {
        return false;
      }
      latitude +=
          Math.toDegrees(
              step
                  * (speed * Math.cos(heading) + flow[1])
                  / Ellipsoid.WGS84.meridianRadiusMetres(halfLatitude));
      longitude +=
          Math.toDegrees(
              step
                  * (speed * Math.sin(heading) + flow[0])
                  / (Ellipsoid.WGS84.primeVerticalRadiusMetres(halfLatitude)
                      * Math.cos(Math.toRadians(halfLatitude))));
      time += step;
    }
    return true;
  }

  /** Metres from a point, in the plane. */
  double metresFrom(double otherLatitude, double otherLongitude) {
    double north =
        Math.toRadians(latitude - otherLatitude)
            * Ellipsoid.WGS84.meridianRadiusMetres(otherLatitude);
    double east =
        Math.toRadians(Math.IEEEremainder(longitude - otherLongitude, 360.0))
            * Ellipsoid.WGS84.primeVerticalRadiusMetres(otherLatitude)
            * Math.cos(Math.toRadians(otherLatitude));
    return Math.hypot(north, east);
  }
}
