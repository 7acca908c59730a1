package org.ferryglide.nav.steer;

/**
 * The first time at which a craft on one heading can be at a target, from the drift alone.
 *
 * <p>With the target at the plane vector D, the drift so far d(t) and the speed through the water
 * v, a heading held reaches the target at the first t with |D − d(t)| = v t. The drift is taken
 * along the straight line to the target, which is exact in a stream that is the same everywhere and
 * a first guess elsewhere; what wind adds is counted as drift for the heading straight at the
 * target. The state is the drift to the east and north in metres.
 */
final class DriftWalk extends Stepper {
  /** The target is met when it is as close as this, metres; corrections do the rest. */
  private static final double MET_METRES = 0.02;

  /** The longest and the shortest stride through a segment, seconds. */
  private static final double LONGEST_STRIDE = 600.0;

  private static final double SHORTEST_STRIDE = 1.0;

  private final Motion motion;
  private Stretch stretch = new Stretch();
  private double targetEast;
  private double targetNorth;
  private double sine;
  private double cosine;
  private double speed;

  private boolean known;
  private double meeting;
  private double headingDegrees;
  private double leastShort;
  private double leastShortTime;
  private double leastShortEast;
  private double leastShortNorth;

  DriftWalk(Motion motion) {
    this.motion = motion;
  }

  /** Walks until the meeting or the limit; what was found stands until the next walk. */
  void walk(Stretch stretch, double limit) {
    this.stretch = stretch;
    double course = Math.toRadians(stretch.courseDegrees());
    sine = Math.sin(course);
    cosine = Math.cos(course);
    targetEast = stretch.length() * sine;
    targetNorth = stretch.length() * cosine;
    speed = motion.calmWaterSpeed();
    meeting = Double.NaN;
    headingDegrees = stretch.courseDegrees();
    leastShort = Double.POSITIVE_INFINITY;
    leastShortTime = limit;
    start(stretch.startTime(), 0.0, 0.0);
    known = runUntil(limit);
  }

  /** Whether the target is met. */
  boolean isMet() {
    return !Double.isNaN(meeting);
  }

  /** When the target is met, seconds since 1970; NaN if it is not. */
  double meeting() {
    return meeting;
  }

  /** The heading for the meeting; of the closest miss if there is none. */
  double headingDegrees() {
    return headingDegrees;
  }

  /** False if the stream or wind gave out before the limit or the meeting. */
  boolean known() {
    return known;
  }

  /** When the walk ended, seconds since 1970. */
  double end() {
    return time;
  }

  /**
   * The least extra speed, held all the way, with which the target would be met, metres a second;
   * infinite if there is none.
   */
  double shortBy() {
    return leastShort;
  }

  /** When it would be met at that speed. */
  double shortTime() {
    return leastShortTime;
  }

  /** The drift by then, metres to the east. */
  double driftEast() {
    return leastShortEast;
  }

  /** The drift by then, metres to the north. */
  double driftNorth() {
    return leastShortNorth;
  }

  @Override
  boolean rates(double time, double east, double north) {
    double part = 0.0;
    if (!motion.uniform) {
      double along = speed * (time - stretch.startTime()) + east * sine + north * cosine;
      part = Math.min(1.0, Math.max(0.0, along / stretch.length()));
    }
    if (!motion.sample(
        stretch.startLatitude() + part * (stretch.targetLatitude() - stretch.startLatitude()),
        stretch.startLongitude() + part * (stretch.targetLongitude() - stretch.startLongitude()),
        time)) {
      return false;
    }
    rate0 = motion.streamEast();
    rate1 = motion.streamNorth();
    if (motion.windy) {
      motion.head(sine, cosine);
      rate0 += motion.waterEast() - speed * sine;
      rate1 += motion.waterNorth() - speed * cosine;
    }
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
  double metresPerUnit() {
    return 1.0;
  }

  @Override
  boolean stepped(double fromTime, double from0, double from1, double fromRate0, double fromRate1) {
    double span = time - fromTime;
    // The gap cannot close faster than this, so that no meeting lies within gap / closing.
    double closing =
        speed + 1.25 * Math.max(Earth.size(fromRate0, fromRate1), Earth.size(rate0, rate1));
    double now = fromTime;
    double gap = gapAt(now, fromTime, span, from0, from1, fromRate0, fromRate1);
    while (now < time) {
      double stride = Math.min(LONGEST_STRIDE, Math.max(SHORTEST_STRIDE, gap / closing));
      double before = now;
      now = Math.min(time, now + stride);
      gap = gapAt(now, fromTime, span, from0, from1, fromRate0, fromRate1);
      if (gap <= MET_METRES) {
        meet(before, now, fromTime, span, from0, from1, fromRate0, fromRate1);
        return true;
      }
      double lacking = gap / (now - stretch.startTime());
      if (lacking < leastShort) {
        leastShort = lacking;
        leastShortTime = now;
        leastShortEast = east;
        leastShortNorth = north;
        headingDegrees = Math.toDegrees(Math.atan2(targetEast - east, targetNorth - north));
      }
    }
    return false;
  }

  private double east;
  private double north;

  /** Where the drift has carried the start. */
  private void placeAt(
      double now,
      double fromTime,
      double span,
      double from0,
      double from1,
      double fromRate0,
      double fromRate1) {
    double part = (now - fromTime) / span;
    east = HermiteCubic.value(part, span, from0, state0, fromRate0, rate0);
    north = HermiteCubic.value(part, span, from1, state1, fromRate1, rate1);
  }

  /** Distance from there to the target, less what is paddled. */
  private double gapAt(
      double now,
      double fromTime,
      double span,
      double from0,
      double from1,
      double fromRate0,
      double fromRate1) {
    placeAt(now, fromTime, span, from0, from1, fromRate0, fromRate1);
    return Earth.size(targetEast - east, targetNorth - north) - speed * (now - stretch.startTime());
  }

  private void meet(
      double low,
      double high,
      double fromTime,
      double span,
      double from0,
      double from1,
      double fromRate0,
      double fromRate1) {
    double refined = 1e-3 * (1.0 + span * 1e-3);
    double inside = high;
    double outside = low;
    while (inside - outside > refined) { // as Edge does, without a function made for each leg
      double middle = 0.5 * (inside + outside);
      if (middle == inside || middle == outside) {
        break; // neighbours among doubles
      }
      if (gapAt(middle, fromTime, span, from0, from1, fromRate0, fromRate1) <= MET_METRES) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    meeting = inside;
    placeAt(meeting, fromTime, span, from0, from1, fromRate0, fromRate1);
    headingDegrees = Math.toDegrees(Math.atan2(targetEast - east, targetNorth - north));
  }
}
