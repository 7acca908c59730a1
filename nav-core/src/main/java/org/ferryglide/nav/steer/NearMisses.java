package org.ferryglide.nav.steer;

import java.util.Arrays;

/**
 * The times at which a path on one heading passes close enough to a target that a slightly other
 * heading may hit it.
 */
final class NearMisses extends HeadingPath {
  /** How far apart in time the path is looked at, seconds. */
  private static final double LOOK_SECONDS = 100.0;

  /** A craft that cannot steer is at the target if it passes as close as this, metres. */
  private static final double AT_TARGET_METRES = 0.1;

  private final double[] times = new double[16];
  private int count;

  private Stretch stretch = new Stretch();
  private double radiansApart;

  /** Distance squared at the last two looks, and their times. */
  private double distanceBefore;

  private double distanceNow;
  private double timeBefore;
  private double timeNow;

  NearMisses(Motion motion) {
    super(motion);
  }

  /** The times at which it does, in order. */
  double[] look(double heading, Stretch stretch, double radiansApart, double limit) {
    this.stretch = stretch;
    this.radiansApart = radiansApart;
    double time = stretch.startTime();
    double latitude = stretch.startLatitude();
    double longitude = stretch.startLongitude();
    count = 0;
    timeNow = time;
    timeBefore = time;
    distanceNow = square(latitude, longitude);
    distanceBefore = distanceNow;
    follow(heading, time, latitude, longitude, limit);
    if (timeNow > stretch.startTime() && distanceNow < distanceBefore) {
      keep(timeNow, distanceNow); // still closing when the time ran out
    }
    return Arrays.copyOf(times, count);
  }

  private double square(double latitude, double longitude) {
    double north = stretch.northOfTarget(latitude);
    double east = stretch.eastOfTarget(longitude);
    return north * north + east * east;
  }

  private void keep(double time, double square) {
    double reach =
        Math.max(
            AT_TARGET_METRES,
            3.0 * radiansApart * motion.calmWaterSpeed() * (time - stretch.startTime()));
    if (square <= reach * reach && count < times.length) {
      times[count++] = time;
    }
  }

  @Override
  boolean stepped(double fromTime, double from0, double from1, double fromRate0, double fromRate1) {
    super.stepped(fromTime, from0, from1, fromRate0, fromRate1);
    double span = time - fromTime;
    int looks = (int) Math.ceil(span / LOOK_SECONDS);
    for (int i = 1; i <= looks; i++) {
      double part = i / (double) looks;
      double now = fromTime + part * span;
      double square =
          square(
              HermiteCubic.value(part, span, from0, state0, fromRate0, rate0),
              HermiteCubic.value(part, span, from1, state1, fromRate1, rate1));
      if (square > distanceNow && distanceNow <= distanceBefore && timeNow > stretch.startTime()) {
        // lowest point of the parabola through three looks
        double left = timeNow - timeBefore;
        double right = now - timeNow;
        double a = (distanceBefore - distanceNow) / left;
        double b = (square - distanceNow) / right;
        double curvature = (a + b) / (left + right);
        double time = timeNow + (a - curvature * left) / (2.0 * curvature);
        double drop = curvature * (time - timeNow) * (time - timeNow);
        keep(time, Math.max(0.0, distanceNow - drop));
      }
      distanceBefore = distanceNow;
      timeBefore = timeNow;
      distanceNow = square;
      timeNow = now;
    }
    return false;
  }
}
