package org.ferryglide.nav.steer;

import java.util.List;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.EpochSeconds;

/** Steers legs for a {@link CourseToSteer}. Keeps room to work in, so it is not thread-safe. */
final class LegSolver {
  /** A leg shorter than this has no course of its own, metres. */
  private static final double NO_LENGTH_METRES = 1e-6;

  private final CourseToSteer options;
  private final Motion motion;
  private final OneHeading oneHeading;
  private final double longest;

  LegSolver(CourseToSteer options) {
    this.options = options;
    motion = new Motion(options.craft(), options.stream(), options.wind());
    oneHeading = new OneHeading(motion);
    longest = options.longestDuration().toMillis() / 1000.0;
  }

  /** Steers a leg from a departure in seconds since 1970, with or without the fields' own notes. */
  Outcome<SteeredLeg> solve(Leg leg, double departure, boolean withNotes) {
    LegFrame frame = new LegFrame(leg);
    if (frame.length < NO_LENGTH_METRES) {
      return standStill(leg, frame, departure);
    }
    Strategy strategy = options.strategy();
    Outcome<SteeredLeg> outcome =
        strategy == Strategy.trackHeld()
            ? holdTrack(leg, frame, departure)
            : holdHeading(leg, frame, departure);
    return withNotes ? outcome.map(steered -> Notes.added(steered, options)) : outcome;
  }

  private Outcome<SteeredLeg> standStill(Leg leg, LegFrame frame, double departure) {
    TrackRecorder recorder = new TrackRecorder();
    GroundTrack track =
        recorder.finish(
            departure, frame.startLatitude, frame.startLongitude, frame.courseDegrees());
    Note note =
        Note.information("steer.no-length", "The leg starts where it ends; there is no course.");
    return Outcome.ofSolved(
        new SteeredLeg(
            leg, options.strategy(), track, 0.0, motion.calmWaterSpeed(), 0.0, List.of(note)));
  }

  private Outcome<SteeredLeg> holdHeading(Leg leg, LegFrame frame, double departure) {
    boolean solved =
        oneHeading.solve(
            departure,
            frame.startLatitude,
            frame.startLongitude,
            frame.endLatitude,
            frame.endLongitude,
            departure + longest);
    if (!solved) {
      return notPossible(
          oneHeading.reason,
          oneHeading.failureTime,
          oneHeading.failureLatitude,
          oneHeading.failureLongitude,
          oneHeading.shortBy);
    }
    GroundTrack track = oneHeading.path.track();
    double course = Math.toRadians(frame.courseDegrees());
    double heading = Math.toRadians(oneHeading.headingDegrees);
    double duration = oneHeading.arrival - departure;
    double paddled = motion.calmWaterSpeed();
    double share = Math.abs(Math.sin(heading - course));
    double along = frame.length / duration - paddled * Math.cos(heading - course);
    double spare = paddled - SteadyTriangle.leastWaterSpeed(along, paddled * share);
    return weighed(leg, track, share, spare, duration);
  }

  private Outcome<SteeredLeg> holdTrack(Leg leg, LegFrame frame, double departure) {
    HeldTrack held = new HeldTrack(motion, frame);
    if (!held.follow(departure, departure + longest)) {
      frame.pointAt(Math.min(frame.length, held.state0));
      Reason reason =
          held.finding == HeldTrack.NO_DATA
              ? Reason.NO_DATA
              : Reasons.of(held.finding, Reason.BEYOND_HORIZON);
      boolean lacking = reason != Reason.NO_DATA && reason != Reason.BEYOND_HORIZON;
      return notPossible(
          reason, held.time, frame.latitude, frame.longitude, lacking ? held.shortBy : Double.NaN);
    }
    return weighed(
        leg, held.track(), held.greatestCrossShare, held.leastSpare, held.time - departure);
  }

  private Outcome<SteeredLeg> weighed(
      Leg leg, GroundTrack track, double share, double spare, double duration) {
    if (share > options.limits().refuseAbove()) {
      double needed = share * motion.calmWaterSpeed() / options.limits().refuseAbove();
      double shortBy = needed - motion.calmWaterSpeed();
      return Outcome.ofNotPossible(
          NotPossible.because(Reason.NO_RESERVE)
              .at(leg.start(), track.start())
              .by(Speed.ofMetresPerSecond(Math.max(0.0, shortBy))));
    }
    double effort = motion.calmWaterSpeed() * duration;
    return Outcome.ofSolved(
        new SteeredLeg(
            leg,
            options.strategy(),
            track,
            Math.min(1.0, share),
            spare,
            effort,
            Notes.ofShare(share, options.limits())));
  }

  private static Outcome<SteeredLeg> notPossible(
      Reason reason, double time, double latitude, double longitude, double shortBy) {
    NotPossible why =
        NotPossible.because(reason)
            .at(
                Position.ofDegrees(latitude, Earth.longitude(longitude)),
                EpochSeconds.toInstant(time));
    return Outcome.ofNotPossible(
        Double.isNaN(shortBy) ? why : why.by(Speed.ofMetresPerSecond(Math.max(0.0, shortBy))));
  }
}
