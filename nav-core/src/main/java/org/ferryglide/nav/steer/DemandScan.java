package org.ferryglide.nav.steer;

import org.ferryglide.nav.plane.SteadyTriangle;

/** Takes the measure of tracks, in the same workspace. Not thread-safe. */
final class DemandScan {
  /** How often a long segment of the track is looked at, seconds; short ones at thirds. */
  private static final double LOOK_SECONDS = 600.0;

  /** How often a wait is looked at, seconds. */
  private static final double WAIT_SECONDS = 60.0;

  private static final double MOST_WAIT_LOOKS = 600.0;

  private static final int FEWEST_LOOKS = 3;
  private static final int MOST_LOOKS = 48;

  /**
   * So far inside a segment its ends are looked at, since a stream in steps jumps there, seconds.
   */
  private static final double INSIDE_SECONDS = 1e-3;

  /** Below this the path has no direction, metres a second. */
  private static final double NO_WAY = 1e-9;

  private static final int CROSS = 0;
  private static final int SPARE = 1;
  private static final int STREAM = 2;

  GroundTrack track;
  private final Motion motion;
  private final double drift;

  /** Whether each segment is one heading in still air, so that the motion follows from it. */
  private final boolean steered;

  /** Latitude, longitude and their rates at the look. */
  private final double[] ground = new double[4];

  /** The motion over the ground at the look, metres a second. */
  private double east;

  private double north;

  /** The segment whose motion through the water this is, metres a second. */
  private int waterSegment;

  private double waterEast;
  private double waterNorth;

  double lookedTime;
  private double lookedShare;
  private double lookedSpare;
  private double lookedStream;
  double lookedSpeed;

  private final WorstLook cross = new WorstLook(CROSS);
  private final WorstLook spare = new WorstLook(SPARE);
  private final WorstLook stream = new WorstLook(STREAM);

  DemandScan(GroundTrack track, Motion motion, boolean headingsHeld) {
    this.track = track;
    this.motion = motion;
    this.drift = motion.driftFraction();
    this.steered = headingsHeld && !motion.windy;
  }

  /** Takes the measure of a track. */
  PathDemand of(GroundTrack another) {
    take(another);
    return result();
  }

  /** Takes the measure of a track; {@link #crossShare} and {@link #spare} then tell of it. */
  void take(GroundTrack another) {
    track = another;
    waterSegment = -1;
    cross.clear();
    spare.clear();
    stream.clear();
    for (int segment = 0; segment < track.segments(); segment++) {
      double span = track.timeOf(segment + 1) - track.timeOf(segment);
      if (span > 0.0) {
        int looks = looks(segment, span);
        int first = goesOnAlike(segment) ? 1 : 0; // where the last look was
        if (!track.isWait(segment) && isSteady(segment)) {
          look(segment, (double) first / looks, 0.0);
          continue;
        }
        for (int i = first; i <= looks; i++) {
          look(segment, (double) i / looks, 1.0 / looks);
        }
      }
    }
    lookBetween();
  }

  private int looks(int segment, double span) {
    return track.isWait(segment)
        ? (int) Math.ceil(Math.min(MOST_WAIT_LOOKS, Math.max(FEWEST_LOOKS, span / WAIT_SECONDS)))
        : Math.min(MOST_LOOKS, Math.max(FEWEST_LOOKS, (int) Math.ceil(span / LOOK_SECONDS)));
  }

  /**
   * Whether the motion is the same all along a segment, as in a uniform stream that a table holds
   * in steps: the step that made the segment would have met anything between the three times looked
   * at.
   */
  private boolean isSteady(int segment) {
    if (!steered || !motion.uniform || !track.hardlyTurns(segment)) {
      return false;
    }
    if (!sampleStream(segment, 0.0)) {
      return false;
    }
    double streamEast = motion.streamEast();
    double streamNorth = motion.streamNorth();
    for (double part = 0.5; part <= 1.0; part += 0.5) {
      if (!sampleStream(segment, part)
          || motion.streamEast() != streamEast
          || motion.streamNorth() != streamNorth) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether a segment begins in the water in which the one before it ended: in still air, on the
   * same heading and with the same motion over the ground, the stream is the same.
   */
  private boolean goesOnAlike(int segment) {
    return steered
        && track.goesOnAlike(segment)
        && track.headingOf(segment) == track.headingOf(segment - 1);
  }

  double crossShare() {
    return Math.max(0.0, cross.value);
  }

  double spare() {
    return -spare.value;
  }

  private void look(int segment, double part, double step) {
    if (measure(segment, part)) {
      cross.take(segment, part, step, this);
      spare.take(segment, part, step, this);
      stream.take(segment, part, step, this);
    }
  }

  /** Looks at the top of the parabola through the worst look and its neighbours. */
  private void lookBetween() {
    cross.refine(this);
    spare.refine(this);
    stream.refine(this);
  }

  /** What was looked at last, the greater the worse. */
  double looked(int what) {
    return what == CROSS ? lookedShare : what == SPARE ? -lookedSpare : lookedStream;
  }

  /** The same for a time; false outside the track. */
  boolean measureAt(double time) {
    if (!(time > track.startSeconds() && time < track.endSeconds())) {
      return false;
    }
    int segment = track.segmentAt(time);
    double from = track.timeOf(segment);
    double span = track.timeOf(segment + 1) - from;
    return span > 0.0 && measure(segment, (time - from) / span);
  }

  /** Takes what one moment asks; false where that is not known. */
  boolean measure(int segment, double part) {
    lookedTime = timeInside(segment, part);
    if (!(steered ? sampleSteered(segment, part) : sample(segment, part))) {
      return false;
    }
    double setEast = motion.streamEast() + drift * motion.windEast();
    double setNorth = motion.streamNorth() + drift * motion.windNorth();
    lookedSpeed =
        motion.windy ? Earth.size(east - setEast, north - setNorth) : motion.calmWaterSpeed();
    double way = Earth.size(east, north);
    if (way < NO_WAY) {
      holdPlace(setEast, setNorth);
      return true;
    }
    double along = (setEast * east + setNorth * north) / way;
    double across = (setEast * north - setNorth * east) / way;
    boolean paddled = lookedSpeed > 0.0;
    lookedShare = paddled ? Math.min(1.0, Math.abs(across) / lookedSpeed) : 0.0;
    lookedSpare = lookedSpeed - SteadyTriangle.leastWaterSpeed(along, across);
    lookedStream =
        paddled ? Earth.size(motion.streamEast(), motion.streamNorth()) / lookedSpeed : 0.0;
    return true;
  }

  /** What holding a place asks: the bow is kept to what sets the craft, and all of it counts. */
  private void holdPlace(double setEast, double setNorth) {
    double set = Earth.size(setEast, setNorth);
    if (motion.windy) {
      motion.head(set > 0.0 ? -setEast / set : 0.0, set > 0.0 ? -setNorth / set : 1.0);
      lookedSpeed = motion.waterSpeed();
    }
    boolean paddled = lookedSpeed > 0.0;
    lookedShare = paddled ? Math.min(1.0, set / lookedSpeed) : 0.0;
    lookedSpare = lookedSpeed - set;
    lookedStream =
        paddled ? Earth.size(motion.streamEast(), motion.streamNorth()) / lookedSpeed : 0.0;
  }

  /** The time of a part of a segment, a little inside its ends. */
  private double timeInside(int segment, double part) {
    double from = track.timeOf(segment);
    double span = track.timeOf(segment + 1) - from;
    double inside = Math.min(INSIDE_SECONDS, 0.25 * span);
    return Math.min(from + span - inside, Math.max(from + inside, from + part * span));
  }

  /** Stream, wind and the motion over the ground from the rates of the track. */
  private boolean sample(int segment, double part) {
    track.motionAt(segment, part, ground);
    double sine = Earth.sine(ground[0]);
    north = ground[2] * Earth.metresPerLatitudeDegree(sine);
    east = ground[3] * Earth.metresPerLongitudeDegree(sine);
    return motion.sample(ground[0], ground[1], lookedTime);
  }

  /** The same from the heading of the segment, which is quicker. */
  private boolean sampleSteered(int segment, double part) {
    if (!sampleStream(segment, part)) {
      return false;
    }
    if (waterSegment != segment) {
      double heading = Math.toRadians(track.headingOf(segment));
      waterEast = motion.calmWaterSpeed() * Math.sin(heading);
      waterNorth = motion.calmWaterSpeed() * Math.cos(heading);
      waterSegment = segment;
    }
    east = motion.streamEast() + waterEast;
    north = motion.streamNorth() + waterNorth;
    return true;
  }

  /** The stream of a part of a segment; where it is uniform any place will do. */
  private boolean sampleStream(int segment, double part) {
    double time = timeInside(segment, part);
    if (motion.uniform) {
      return motion.sample(track.latitudeOf(segment), track.longitudeOf(segment), time);
    }
    track.placeAt(segment, part, ground);
    return motion.sample(ground[0], ground[1], time);
  }

  PathDemand result() {
    return new PathDemand(
        crossShare(), cross.time, cross.speed, spare(), Math.max(0.0, stream.value), stream.time);
  }
}
