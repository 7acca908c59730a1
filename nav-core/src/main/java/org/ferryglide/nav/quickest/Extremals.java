package org.ferryglide.nav.quickest;

import org.ferryglide.nav.geodesy.Ellipsoid;

/**
 * Paths that no small change makes quicker, through a stream that varies in place and time, on the
 * ellipsoid; radians.
 *
 * <p>A boat of constant speed through the water obeys Hamilton's equations with H = V |p| + p · u,
 * where p is normal to the front of all places reached by a given time. The bow points along p. In
 * coordinates of latitude and longitude the equations carry the curvature of the earth as well, so
 * that without a stream the path is a geodesic.
 *
 * <p>A state is four numbers: latitude, longitude (radians), and the two parts of p. A workspace
 * belongs to one thread.
 *
 * @see <a href="https://doi.org/10.1002/zamm.19310110205">Zermelo (1931), ZAMM 11, 114-124</a>
 */
final class Extremals {
  static final int SIZE = 4;

  /** Half the base of the difference quotients for the stream's gradient, metres. */
  private static final double GRADIENT_METRES = 5.0;

  /**
   * The end of a step is looked at from just before, so that a jump at a break point falls between.
   */
  private static final double BEFORE_BREAK_SECONDS = 1e-3;

  private final CraftMotion motion;
  private final double speed;
  private final boolean uniform;
  private final Ellipsoid ellipsoid;
  private final double e2;
  private final double[] flow = new double[CraftMotion.FLOW];
  private final double[] plus = new double[CraftMotion.FLOW];
  private final double[] minus = new double[CraftMotion.FLOW];
  private final double[][] slopes = new double[4][SIZE];
  private final double[] trial = new double[SIZE];

  Extremals(CraftMotion motion, Ellipsoid ellipsoid) {
    this.motion = motion;
    this.speed = motion.calmSpeed();
    this.uniform = motion.isUniform();
    this.ellipsoid = ellipsoid;
    this.e2 = ellipsoid.eccentricitySquared();
  }

  /** Speed through the water, metres a second. */
  double speed() {
    return speed;
  }

  /** Radius of curvature along the meridian, metres. */
  double meridianRadius(double latitude) {
    return ellipsoid.meridianRadiusMetresAtSine(Math.sin(latitude));
  }

  /** Radius of the parallel, metres. */
  double parallelRadius(double latitude) {
    return ellipsoid.parallelRadiusMetresAtSine(Math.sin(latitude));
  }

  /**
   * The distance between two places near each other, on the plane of their middle latitude, metres.
   */
  double metres(double[] from, double[] to) {
    double middle = 0.5 * (from[0] + to[0]);
    return Math.hypot(
        (to[0] - from[0]) * meridianRadius(middle),
        Math.IEEEremainder(to[1] - from[1], 2.0 * Math.PI) * parallelRadius(middle));
  }

  /** A state at a place with the bow on a heading, radians from north. */
  void launch(double latitude, double longitude, double heading, double[] state, int offset) {
    state[offset] = latitude;
    state[offset + 1] = longitude;
    state[offset + 2] = Math.cos(heading) * meridianRadius(latitude);
    state[offset + 3] = Math.sin(heading) * parallelRadius(latitude);
  }

  /** Where the bow points, radians from north. */
  double heading(double[] state, int offset) {
    return Math.atan2(
        state[offset + 3] / parallelRadius(state[offset]),
        state[offset + 2] / meridianRadius(state[offset]));
  }

  /**
   * One Runge-Kutta step of fourth order, in place.
   *
   * @return false where the field has no data; the state is then unchanged
   */
  boolean step(double[] state, int offset, double time, double seconds) {
    double half = 0.5 * seconds;
    double end = time + seconds - Math.min(BEFORE_BREAK_SECONDS, half);
    if (!slope(state, offset, time, slopes[0])
        || !slopeAfter(state, offset, slopes[0], half, time + half, slopes[1])
        || !slopeAfter(state, offset, slopes[1], half, time + half, slopes[2])
        || !slopeAfter(state, offset, slopes[2], seconds, end, slopes[3])) {
      return false;
    }
    for (int i = 0; i < SIZE; i++) {
      state[offset + i] +=
          seconds / 6.0 * (slopes[0][i] + 2.0 * (slopes[1][i] + slopes[2][i]) + slopes[3][i]);
    }
    return true;
  }

  private boolean slopeAfter(
      double[] state, int offset, double[] slope, double seconds, double time, double[] out) {
    for (int i = 0; i < SIZE; i++) {
      trial[i] = state[offset + i] + seconds * slope[i];
    }
    return slope(trial, 0, time, out);
  }

  /** Time derivative of a state. */
  private boolean slope(double[] s, int o, double time, double[] out) {
    double latitude = s[o];
    double longitude = s[o + 1];
    double latitudeDegrees = Math.toDegrees(latitude);
    double longitudeDegrees = Math.toDegrees(longitude);
    if (!motion.flow(latitudeDegrees, longitudeDegrees, time, flow)) {
      return false;
    }
    double sin = Math.sin(latitude);
    double cos = Math.cos(latitude);
    double w = 1.0 - e2 * sin * sin;
    double meridian = ellipsoid.meridianRadiusMetresAtSine(sin);
    double parallel = ellipsoid.primeVerticalRadiusMetresAtSine(sin) * cos;
    double north = s[o + 2] / meridian; // p in metres, along the meridian
    double east = s[o + 3] / parallel;
    double length = Math.sqrt(north * north + east * east);
    out[0] = (speed * north / length + flow[1]) / meridian;
    out[1] = (speed * east / length + flow[0]) / parallel;
    // how the metric parts of p change with latitude while p itself is held
    double northChange = -north * 3.0 * e2 * sin * cos / w;
    double eastChange = east * meridian * sin / parallel;
    out[2] =
        -(speed * (north * northChange + east * eastChange) / length
            + flow[1] * northChange
            + flow[0] * eastChange);
    out[3] = 0.0;
    if (!uniform) {
      subtractGradient(latitudeDegrees, longitudeDegrees, time, north, east, s[o], out);
    }
    return true;
  }

  private void subtractGradient(
      double latitude,
      double longitude,
      double time,
      double north,
      double east,
      double latitudeRadians,
      double[] out) {
    double dLatitude = GRADIENT_METRES / meridianRadius(latitudeRadians);
    double dLongitude = GRADIENT_METRES / parallelRadius(latitudeRadians);
    double dLatitudeDegrees = Math.toDegrees(dLatitude);
    double dLongitudeDegrees = Math.toDegrees(dLongitude);
    double base = difference(latitude, longitude, dLatitudeDegrees, 0.0, time);
    out[2] -= (east * plus[0] + north * plus[1]) / (base * dLatitude);
    base = difference(latitude, longitude, 0.0, dLongitudeDegrees, time);
    out[3] -= (east * plus[0] + north * plus[1]) / (base * dLongitude);
  }

  /**
   * Leaves in {@code plus} the change of the stream from behind to ahead; at the edge of the data
   * one of the two is the stream here.
   *
   * @return over how many steps the change was taken: 2, 1 at an edge; 1 with no change if alone
   */
  private double difference(
      double latitude, double longitude, double dLatitude, double dLongitude, double time) {
    double steps = 2.0;
    if (!motion.flow(latitude + dLatitude, longitude + dLongitude, time, plus)) {
      plus[0] = flow[0];
      plus[1] = flow[1];
      steps -= 1.0;
    }
    if (!motion.flow(latitude - dLatitude, longitude - dLongitude, time, minus)) {
      minus[0] = flow[0];
      minus[1] = flow[1];
      steps -= 1.0;
    }
    plus[0] -= minus[0];
    plus[1] -= minus[1];
    return Math.max(steps, 1.0);
  }
}
