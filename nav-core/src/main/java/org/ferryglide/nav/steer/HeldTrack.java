package org.ferryglide.nav.steer;

/** Follows a craft that holds the line of a leg. The first number of the state is metres along. */
final class HeldTrack extends Stepper {
  /** How close the arrival is brought to the end of the leg, metres. */
  private static final double CLOSE_METRES = 1e-4;

  /** The heading changes all the time and is kept once a step, so steps must be short, seconds. */
  private static final double LONGEST_STEP = 600.0;

  final TrackRecorder recorder = new TrackRecorder();

  /** Why the track could not be held: a finding of {@link SteadyTriangle}, or {@link #NO_DATA}. */
  int finding;

  /** The stream or wind was not known. */
  static final int NO_DATA = -1;

  /** The speed lacking where the track could not be held, metres a second. */
  double shortBy;

  /** Greatest share of the speed through the water that is spent against what sets across. */
  double greatestCrossShare;

  /** Least speed to spare, metres a second. */
  double leastSpare;

  private final Motion motion;
  private final LegFrame frame;
  private final boolean everywhereAlike;
  private double headingBefore;
  private double headingNow;
  private double stepTime;
  private double stepAlong;
  private double stepRate;
  private boolean arriving;

  HeldTrack(Motion motion, LegFrame frame) {
    this.motion = motion;
    this.frame = frame;
    everywhereAlike = motion.uniform && frame.isRhumb();
  }

  /** Follows the leg; true if it is done by the limit, with the time in {@link #time}. */
  boolean follow(double departure, double limit) {
    recorder.clear();
    greatestCrossShare = 0.0;
    leastSpare = Double.POSITIVE_INFINITY;
    arriving = false;
    finding = SteadyTriangle.SOLVED;
    start(departure, 0.0, 0.0);
    return runUntil(limit) && state0 >= frame.length && arrive();
  }

  /** Goes back to the step that passed the end, and ends it on the end. */
  private boolean arrive() {
    arriving = true;
    double fromTime = stepTime;
    double fromAlong = stepAlong;
    double fromRate = stepRate;
    double fromHeading = headingBefore;
    double rest = frame.length - fromAlong;
    double guess = fromTime + (time - fromTime) * rest / (state0 - fromAlong);
    for (int i = 0; i < 40; i++) {
      start(fromTime, fromAlong, 0.0);
      if (!runUntil(guess)) {
        return false;
      }
      double over = state0 - frame.length;
      if (Math.abs(over) < CLOSE_METRES) {
        break;
      }
      guess -= over / rate0;
    }
    record(fromTime, fromAlong, fromRate, fromHeading);
    return true;
  }

  @Override
  boolean rates(double time, double along, double unused) {
    boolean known;
    if (everywhereAlike) {
      known = motion.sample(frame.startLatitude, frame.startLongitude, time);
    } else {
      frame.pointAt(Math.min(frame.length, Math.max(0.0, along)));
      known = motion.sample(frame.latitude, frame.longitude, time);
    }
    if (!known) {
      finding = NO_DATA;
      return false;
    }
    finding =
        everywhereAlike
            ? motion.holdCourse(frame.courseDegrees(), frame.courseSine(), frame.courseCosine())
            : motion.holdCourse(frame.pointCourse, frame.pointSine, frame.pointCosine);
    if (finding != SteadyTriangle.SOLVED) {
      shortBy = motion.shortBy;
      return false;
    }
    rate0 = motion.speedMadeGood;
    rate1 = 0.0;
    return true;
  }

  @Override
  double nextBreakAfter(double time) {
    return motion.nextBreakAfter(time);
  }

  @Override
  double longestStep(double toSeam) {
    return LONGEST_STEP;
  }

  @Override
  double metresPerUnit() {
    return 1.0;
  }

  @Override
  void setOut() {
    if (!arriving) {
      headingNow = motion.headingDegrees;
      weigh();
    }
  }

  @Override
  boolean stepped(double fromTime, double from0, double from1, double fromRate0, double fromRate1) {
    if (arriving) {
      return false;
    }
    stepTime = fromTime;
    stepAlong = from0;
    stepRate = fromRate0;
    headingBefore = headingNow;
    if (state0 >= frame.length) {
      return true;
    }
    record(fromTime, from0, fromRate0, headingBefore);
    return false;
  }

  /** Keeps the piece up to the present time and place. */
  private void record(double fromTime, double fromAlong, double fromRate, double fromHeading) {
    headingNow = motion.headingDegrees;
    weigh();
    double toRate = rate0;
    frame.pointAt(fromAlong);
    double latitude = frame.latitude;
    double longitude = frame.longitude;
    double sine = Earth.sine(latitude);
    double latitudeRate = fromRate * frame.pointCosine / Earth.metresPerLatitudeDegree(sine);
    double longitudeRate = fromRate * frame.pointSine / Earth.metresPerLongitudeDegree(sine);
    frame.pointAt(Math.min(state0, frame.length));
    sine = Earth.sine(frame.latitude);
    recorder.add(
        fromTime,
        latitude,
        longitude,
        latitudeRate,
        longitudeRate,
        toRate * frame.pointCosine / Earth.metresPerLatitudeDegree(sine),
        toRate * frame.pointSine / Earth.metresPerLongitudeDegree(sine),
        fromHeading);
  }

  private void weigh() {
    double across = Math.abs(motion.crossStream);
    if (across > 0.0) {
      greatestCrossShare = Math.max(greatestCrossShare, across / motion.waterSpeed);
    }
    double spare = motion.waterSpeed - SteadyTriangle.leastWaterSpeed(motion.alongStream, across);
    leastSpare = Math.min(leastSpare, spare);
  }

  GroundTrack track() {
    return recorder.finish(time, frame.endLatitude, frame.endLongitude, headingNow);
  }
}
