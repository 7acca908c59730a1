package org.ferryglide.nav.steer;

import org.ferryglide.nav.plane.SteadyTriangle;
import org.jspecify.annotations.Nullable;

/** Follows a craft that holds the line of a leg. The first number of the state is metres along. */
final class HeldTrack extends Stepper {
  /** How close the arrival is brought to the end of the leg, metres. */
  private static final double CLOSE_METRES = 1e-4;

  /** The heading changes all the time and is kept once a step, so steps must be short, seconds. */
  private static final double LONGEST_STEP = 600.0;

  private static final int CORRECTIONS = 40;

  private final TrackRecorder recorder = new TrackRecorder();
  private final Motion motion;
  private LegFrame frame;
  private boolean everywhereAlike;

  /** False where only the arrival is asked for. */
  private boolean recording;

  private boolean unknown;
  private int finding;
  private double headingBefore;
  private double headingNow;
  private double stepTime;
  private double stepAlong;
  private double stepRate;
  private boolean arriving;

  private HeldTrack(Motion motion, LegFrame frame) {
    this.motion = motion;
    this.frame = frame;
  }

  /** Holds the line of one leg after another, in the same workspace. */
  static final class TrackHolder implements Follower {
    private final Motion motion;
    private @Nullable HeldTrack room;

    TrackHolder(Motion motion) {
      this.motion = motion;
    }

    @Override
    public Followed follow(LegFrame frame, double departure, double limit) {
      return along(frame, true).follow(departure, limit, false);
    }

    @Override
    public Followed passing(LegFrame frame, double departure, double limit) {
      return along(frame, true).follow(departure, limit, true);
    }

    @Override
    public double arrival(LegFrame frame, double departure, double limit) {
      HeldTrack track = along(frame, false);
      return track.reaches(departure, limit) ? track.time() : Double.NaN;
    }

    private HeldTrack along(LegFrame frame, boolean recording) {
      HeldTrack track = room;
      if (track == null) {
        track = new HeldTrack(motion, frame);
        room = track;
      }
      track.frame = frame;
      track.everywhereAlike = motion.uniform && frame.isRhumb();
      track.recording = recording;
      if (recording) {
        track.recorder.clear();
        track.recorder.ensureRoom(1 + (int) Math.min(99.0, track.steps()));
      }
      return track;
    }
  }

  /** About how many steps the leg will take, at the speed in still water. */
  private double steps() {
    return 2.0 + frame.length / (motion.calmWaterSpeed() * LONGEST_STEP);
  }

  private boolean reaches(double departure, double limit) {
    arriving = false;
    unknown = false;
    finding = SteadyTriangle.SOLVED;
    start(departure, 0.0, 0.0);
    return runUntil(limit) && state0 >= frame.length && arrive();
  }

  private Followed follow(double departure, double limit, boolean passing) {
    if (reaches(departure, limit)) {
      return Followed.reached(
          passing
              ? recorder.passing(time, frame.endLatitude, frame.endLongitude, headingNow)
              : recorder.finish(time, frame.endLatitude, frame.endLongitude, headingNow));
    }
    Reason reason = unknown ? Reason.NO_DATA : Reasons.of(finding, Reason.BEYOND_HORIZON);
    boolean barred = reason != Reason.NO_DATA && reason != Reason.BEYOND_HORIZON;
    double lacking = barred ? motion.shortBy() : Double.NaN;
    frame.pointAt(Math.min(frame.length, state0));
    return Followed.failed(reason, time, frame.latitude(), frame.longitude(), lacking);
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
    for (int i = 0; i < CORRECTIONS; i++) {
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
      known = motion.sample(frame.latitude(), frame.longitude(), time);
    }
    unknown = !known;
    if (!known) {
      return false;
    }
    finding =
        everywhereAlike
            ? motion.holdCourse(frame.courseDegrees(), frame.courseSine(), frame.courseCosine())
            : motion.holdCourse(frame.pointCourse(), frame.pointSine(), frame.pointCosine());
    if (finding != SteadyTriangle.SOLVED) {
      return false;
    }
    rate0 = motion.speedMadeGood();
    rate1 = 0.0;
    return true;
  }

  @Override
  double nextBreakAfter(double time) {
    return motion.nextBreakAfter(time);
  }

  @Override
  double longestStep(double toBreak) {
    return LONGEST_STEP;
  }

  @Override
  double lookEvery() {
    return motion.lookEvery();
  }

  @Override
  double metresPerUnit() {
    return 1.0;
  }

  @Override
  void setOut() {
    if (!arriving) {
      headingNow = motion.headingDegrees();
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

  /** Keeps the segment up to the present time and place. */
  private void record(double fromTime, double fromAlong, double fromRate, double fromHeading) {
    headingNow = motion.headingDegrees();
    if (!recording) {
      return;
    }
    double toRate = rate0;
    frame.pointAt(fromAlong);
    double latitude = frame.latitude();
    double longitude = frame.longitude();
    double sine = Earth.sine(latitude);
    double latitudeRate = fromRate * frame.pointCosine() / Earth.metresPerLatitudeDegree(sine);
    double longitudeRate = fromRate * frame.pointSine() / Earth.metresPerLongitudeDegree(sine);
    frame.pointAt(Math.min(state0, frame.length));
    sine = Earth.sine(frame.latitude());
    recorder.add(
        fromTime,
        latitude,
        longitude,
        latitudeRate,
        longitudeRate,
        toRate * frame.pointCosine() / Earth.metresPerLatitudeDegree(sine),
        toRate * frame.pointSine() / Earth.metresPerLongitudeDegree(sine),
        fromHeading);
  }
}
