package org.ferryglide.nav.steer;

/** Follows a craft that holds one heading. The state is latitude and longitude in degrees. */
class HeadingPath extends Stepper {
  /** A stream of nearly the craft's speed or more can lead several headings to one place. */
  private static final double OUTRUNS = 0.98;

  final Motion motion;
  final TrackRecorder recorder = new TrackRecorder();

  /** The fastest stream met, metres a second. */
  private double greatestStream;

  /** The least speed by paddling met, metres a second. */
  private double leastWaterSpeed;

  private double headingDegrees;
  private double sine;
  private double cosine;

  HeadingPath(Motion motion) {
    this.motion = motion;
  }

  /** Follows the heading from a place and time; false where the stream or wind is not known. */
  final boolean follow(
      double heading, double fromTime, double latitude, double longitude, double untilTime) {
    head(heading);
    recorder.clear();
    greatestStream = 0.0;
    leastWaterSpeed = Double.POSITIVE_INFINITY;
    start(fromTime, latitude, longitude);
    return runUntil(untilTime);
  }

  private void head(double heading) {
    headingDegrees = heading;
    double radians = Math.toRadians(heading);
    sine = Math.sin(radians);
    cosine = Math.cos(radians);
  }

  /** Motion over the ground at the end, metres a second to the east. */
  final double groundEast() {
    return motion.streamEast() + motion.waterEast();
  }

  /** Motion over the ground at the end, metres a second to the north. */
  final double groundNorth() {
    return motion.streamNorth() + motion.waterNorth();
  }

  @Override
  boolean rates(double time, double latitude, double longitude) {
    if (!motion.sample(latitude, longitude, time)) {
      return false;
    }
    motion.head(sine, cosine);
    double sineLatitude = Earth.sine(latitude);
    rate0 =
        (motion.streamNorth() + motion.waterNorth()) / Earth.metresPerLatitudeDegree(sineLatitude);
    rate1 =
        (motion.streamEast() + motion.waterEast()) / Earth.metresPerLongitudeDegree(sineLatitude);
    return true;
  }

  @Override
  double nextBreakAfter(double time) {
    return motion.nextBreakAfter(time);
  }

  @Override
  double longestStep(double toBreak) {
    return motion.longestStep(toBreak, !Double.isInfinite(motion.nextBreakAfter(time)));
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
    greatestStream =
        Math.max(greatestStream, Earth.size(motion.streamEast(), motion.streamNorth()));
    leastWaterSpeed = Math.min(leastWaterSpeed, motion.waterSpeed());
  }

  @Override
  boolean stepped(double fromTime, double from0, double from1, double fromRate0, double fromRate1) {
    recorder.add(fromTime, from0, from1, fromRate0, fromRate1, rate0, rate1, headingDegrees);
    setOut();
    return false;
  }

  /** Whether the craft outran the stream by a little at least, all the way. */
  final boolean outranStream() {
    return greatestStream < OUTRUNS * leastWaterSpeed;
  }

  /** The track, which stands until another heading is followed. */
  final GroundTrack passingTrack() {
    return recorder.passing(time, state0, state1, headingDegrees);
  }

  final GroundTrack track() {
    return recorder.finish(time, state0, state1, headingDegrees);
  }
}
