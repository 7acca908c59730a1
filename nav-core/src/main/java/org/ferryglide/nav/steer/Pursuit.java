package org.ferryglide.nav.steer;

/**
 * Follows a craft whose bow points at the target all the time. The state is latitude and longitude
 * in degrees. The direction to the target is that of the straight line on a plane of the middle
 * latitude, which differs from the line of sight by half the convergence of the meridians: 0.06
 * degrees at 5 NM.
 */
final class Pursuit extends Stepper implements Follower {
  /** So close the rest of the way is a straight line at the speed there and then, metres. */
  private static final double NEARLY_THERE_METRES = 0.05;

  private static final double LONGEST_STEP = 600.0;

  private final Motion motion;
  private final ConstantHeading drifting;
  private final TrackRecorder recorder = new TrackRecorder();
  private double targetLatitude;
  private double targetLongitude;
  private double bearingSine;
  private double bearingCosine;
  private double headingBefore;
  private double distance;

  Pursuit(Motion motion) {
    this.motion = motion;
    this.drifting = new ConstantHeading(motion);
  }

  @Override
  public Followed follow(LegFrame frame, double departure, double limit) {
    if (motion.calmWaterSpeed() == 0.0) {
      return drifting.follow(frame, departure, limit);
    }
    double arrival = reach(frame, departure, limit);
    if (arrival <= limit) {
      return Followed.reached(
          recorder.finish(arrival, targetLatitude, targetLongitude, bearingDegrees()));
    }
    return Double.isNaN(arrival)
        ? Followed.failed(Reason.NO_DATA, time, state0, state1, Double.NaN)
        : notReached();
  }

  @Override
  public double arrival(LegFrame frame, double departure, double limit) {
    if (motion.calmWaterSpeed() == 0.0) {
      return drifting.arrival(frame, departure, limit);
    }
    double arrival = reach(frame, departure, limit);
    return arrival <= limit ? arrival : Double.NaN;
  }

  /** The arrival; infinite or after the limit if it comes too late, NaN where data are missing. */
  private double reach(LegFrame frame, double departure, double limit) {
    targetLatitude = frame.endLatitude;
    targetLongitude = frame.endLongitude;
    recorder.clear();
    start(departure, frame.startLatitude, frame.startLongitude);
    if (!runUntil(limit)) {
      return Double.NaN;
    }
    if (distance > NEARLY_THERE_METRES) {
      return Double.POSITIVE_INFINITY;
    }
    double toward =
        (motion.streamEast() + motion.waterEast()) * bearingSine
            + (motion.streamNorth() + motion.waterNorth()) * bearingCosine;
    return time + (toward > 0.0 ? distance / toward : 0.0);
  }

  /** Why the target is not reached: what bars the course to it at the end, if anything does. */
  private Followed notReached() {
    int finding = motion.holdCourse(bearingDegrees(), bearingSine, bearingCosine);
    Reason reason = Reasons.of(finding, Reason.BEYOND_HORIZON);
    boolean barred = reason == Reason.CROSS_STREAM || reason == Reason.ADVERSE_STREAM;
    return Followed.failed(reason, time, state0, state1, barred ? motion.shortBy() : Double.NaN);
  }

  private double bearingDegrees() {
    return Math.toDegrees(Math.atan2(bearingSine, bearingCosine));
  }

  @Override
  boolean rates(double time, double latitude, double longitude) {
    if (!motion.sample(latitude, longitude, time)) {
      return false;
    }
    double middle = Earth.sine(0.5 * (latitude + targetLatitude));
    double north = (targetLatitude - latitude) * Earth.metresPerLatitudeDegree(middle);
    double east = (targetLongitude - longitude) * Earth.metresPerLongitudeDegree(middle);
    distance = Earth.size(east, north);
    bearingSine = distance == 0.0 ? 0.0 : east / distance;
    bearingCosine = distance == 0.0 ? 1.0 : north / distance;
    motion.head(bearingSine, bearingCosine);
    double sine = Earth.sine(latitude);
    rate0 = (motion.streamNorth() + motion.waterNorth()) / Earth.metresPerLatitudeDegree(sine);
    rate1 = (motion.streamEast() + motion.waterEast()) / Earth.metresPerLongitudeDegree(sine);
    return true;
  }

  @Override
  double nextBreakAfter(double time) {
    return motion.nextBreakAfter(time);
  }

  @Override
  double longestStep(double toBreak) {
    return Math.min(toBreak, LONGEST_STEP);
  }

  @Override
  double lookEvery() {
    return motion.lookEvery();
  }

  @Override
  double metresPerUnit() {
    return Earth.LONGEST_DEGREE;
  }

  @Override
  void setOut() {
    headingBefore = bearingDegrees();
  }

  @Override
  boolean stepped(double fromTime, double from0, double from1, double fromRate0, double fromRate1) {
    recorder.add(fromTime, from0, from1, fromRate0, fromRate1, rate0, rate1, headingBefore);
    headingBefore = bearingDegrees();
    return distance <= NEARLY_THERE_METRES;
  }
}
