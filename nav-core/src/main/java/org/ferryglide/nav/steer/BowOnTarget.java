package org.ferryglide.nav.steer;

/**
 * Follows a craft whose bow points at the target all the time. The state is latitude and longitude
 * in degrees. The direction to the target is that of the straight line on a plane of the middle
 * latitude, which differs from the line of sight by half the convergence of the meridians: 0.06
 * degrees at 5 NM.
 */
final class BowOnTarget extends Stepper {
  /** This close the craft is there, metres; what is left of the way is added to the time. */
  private static final double THERE_METRES = 0.05;

  /** Greatest share of the speed that holding the course to the target would take. */
  double greatestCrossShare;

  /** Least speed to spare for that, metres a second. */
  double leastSpare = Double.POSITIVE_INFINITY;

  /** Why the target is not reached. */
  Reason reason = Reason.BEYOND_HORIZON;

  private final Motion motion;
  private final LegFrame frame;
  private final TrackRecorder recorder = new TrackRecorder();
  private double headingBefore;
  private double bearingDegrees;
  private double bearingSine;
  private double bearingCosine;
  private double distance;

  BowOnTarget(Motion motion, LegFrame frame) {
    this.motion = motion;
    this.frame = frame;
  }

  /** Follows the craft; true if it gets to the target by the limit. */
  boolean follow(double departure, double limit) {
    start(departure, frame.startLatitude, frame.startLongitude);
    boolean known = runUntil(limit);
    if (!known) {
      reason = Reason.NO_DATA;
      return false;
    }
    if (distance > THERE_METRES) {
      int finding = motion.holdCourse(bearingDegrees, bearingSine, bearingCosine);
      reason = Reasons.of(finding, Reason.BEYOND_HORIZON);
      return false;
    }
    double toward =
        (motion.streamEast + motion.waterEast) * bearingSine
            + (motion.streamNorth + motion.waterNorth) * bearingCosine;
    time += distance / Math.max(toward, 0.1);
    return true;
  }

  GroundTrack track() {
    return recorder.finish(time, frame.endLatitude, frame.endLongitude, bearingDegrees);
  }

  @Override
  boolean rates(double time, double latitude, double longitude) {
    if (!motion.sample(latitude, longitude, time)) {
      return false;
    }
    double middle = Earth.sine(0.5 * (latitude + frame.endLatitude));
    double north = (frame.endLatitude - latitude) * Earth.metresPerLatitudeDegree(middle);
    double east = (frame.endLongitude - longitude) * Earth.metresPerLongitudeDegree(middle);
    distance = Math.hypot(east, north);
    bearingSine = distance == 0.0 ? 0.0 : east / distance;
    bearingCosine = distance == 0.0 ? 1.0 : north / distance;
    motion.head(bearingSine, bearingCosine);
    double sine = Earth.sine(latitude);
    rate0 = (motion.streamNorth + motion.waterNorth) / Earth.metresPerLatitudeDegree(sine);
    rate1 = (motion.streamEast + motion.waterEast) / Earth.metresPerLongitudeDegree(sine);
    return true;
  }

  @Override
  double nextBreakAfter(double time) {
    return motion.nextBreakAfter(time);
  }

  @Override
  double longestStep(double toSeam) {
    return Math.min(toSeam, 600.0);
  }

  @Override
  double metresPerUnit() {
    return Earth.LONGEST_DEGREE;
  }

  @Override
  void setOut() {
    bearingDegrees = Math.toDegrees(Math.atan2(bearingSine, bearingCosine));
    headingBefore = bearingDegrees;
    int finding = motion.holdCourse(bearingDegrees, bearingSine, bearingCosine);
    double across = Math.abs(motion.crossStream);
    boolean held = finding == SteadyTriangle.SOLVED;
    greatestCrossShare =
        Math.max(
            greatestCrossShare, !held ? 1.0 : across == 0.0 ? 0.0 : across / motion.waterSpeed);
    double least = SteadyTriangle.leastWaterSpeed(motion.alongStream, across);
    leastSpare = Math.min(leastSpare, held ? motion.waterSpeed - least : 0.0);
    motion.head(bearingSine, bearingCosine);
  }

  @Override
  boolean stepped(double fromTime, double from0, double from1, double fromRate0, double fromRate1) {
    recorder.add(fromTime, from0, from1, fromRate0, fromRate1, rate0, rate1, headingBefore);
    if (distance <= THERE_METRES) {
      return true;
    }
    setOut();
    return false;
  }
}
