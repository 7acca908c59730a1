package org.ferryglide.nav.steer;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.Obstacles;
import org.ferryglide.nav.water.EpochSeconds;

/** Steers legs for a {@link CourseToSteer}. Keeps room to work in, so it is not thread-safe. */
final class LegSolver {
  /** A leg shorter than this has no course of its own, metres. */
  private static final double NO_LENGTH_METRES = 1e-6;

  private static final Note QUICKEST_NOT_FOUND =
      Note.caution(
          "steer.quickest-one-heading",
          "The search for the quickest path failed; this is one heading held, which is not the"
              + " quickest where the stream varies from place to place.");

  /** A drift is looked at this often for obstacles, seconds. */
  private static final double LOOK_SECONDS = 60.0;

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
  Outcome<SteeredLeg, NotPossible> solve(Leg leg, double departure, boolean withNotes) {
    LegFrame frame = new LegFrame(leg);
    if (frame.length < NO_LENGTH_METRES) {
      return standStill(leg, frame, departure);
    }
    Strategy strategy = options.strategy();
    Outcome<SteeredLeg, NotPossible> outcome;
    if (strategy instanceof Strategy.TrackHeld) {
      outcome = holdTrack(leg, frame, departure);
    } else if (strategy instanceof Strategy.OneHeadingHeld) {
      outcome = holdHeading(leg, frame, departure);
    } else if (strategy instanceof Strategy.BowOnTarget) {
      outcome = keepBowOnTarget(leg, frame, departure);
    } else if (strategy instanceof Strategy.Quickest quickest) {
      outcome = goQuickest(leg, frame, departure, quickest);
    } else {
      outcome = changeHeadings(leg, frame, departure);
    }
    return withNotes ? outcome.map(steered -> Notes.added(steered, options)) : outcome;
  }

  /** Steers the legs of a route one after another. */
  Outcome<SteeredRoute, NotPossible> solve(Route route, double departure, boolean withNotes) {
    List<SteeredLeg> steered = new ArrayList<>(route.legs().size());
    double time = departure;
    for (Leg leg : route.legs()) {
      Outcome<SteeredLeg, NotPossible> outcome = solve(leg, time, withNotes);
      NotPossible why = outcome.why().orElse(null);
      if (why != null) {
        return Outcome.ofUnsolved(why.inLeg(steered.size() + 1));
      }
      SteeredLeg solved = outcome.orElseThrow();
      steered.add(solved);
      time = solved.arrivalSeconds();
    }
    return Outcome.ofSolved(new SteeredRoute(route, steered));
  }

  private Outcome<SteeredLeg, NotPossible> standStill(Leg leg, LegFrame frame, double departure) {
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

  private Outcome<SteeredLeg, NotPossible> holdHeading(Leg leg, LegFrame frame, double departure) {
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
    HeadingPath path = oneHeading.path;
    double share = path.greatestCrossShare;
    double spare = spare(path.leastWaterSpeed, share, frame.length / (path.time - departure));
    return weighed(leg, track, share, spare);
  }

  private Outcome<SteeredLeg, NotPossible> holdTrack(Leg leg, LegFrame frame, double departure) {
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
    return weighed(leg, held.track(), held.greatestCrossShare, held.leastSpare);
  }

  /** Speed to spare over a stretch on one heading: see {@link SteeredLeg#reserve}. */
  static double spare(double waterSpeed, double share, double madeGood) {
    double across = waterSpeed * share;
    double paddledAlong = waterSpeed * Math.sqrt(Math.max(0.0, 1.0 - share * share));
    return waterSpeed - SteadyTriangle.leastWaterSpeed(madeGood - paddledAlong, across);
  }

  /** Unless there are obstacles, one heading held stands by where the stream is not smooth. */
  private Outcome<SteeredLeg, NotPossible> goQuickest(
      Leg leg, LegFrame frame, double departure, Strategy.Quickest strategy) {
    Obstacles obstacles = Obstacles.of(strategy.obstacles());
    obstacles.refuseInside(leg.start(), "start");
    obstacles.refuseInside(leg.end(), "end");
    if (motion.windy) {
      return notPossible(
          Reason.WIND_NOT_ALLOWED_FOR,
          departure,
          frame.startLatitude,
          frame.startLongitude,
          Double.NaN);
    }
    if (motion.calmWaterSpeed() == 0.0) {
      return driftClearOf(obstacles, leg, frame, departure);
    }
    QuickestPath path = new QuickestPath(motion, obstacles);
    boolean found = path.solve(frame, departure, longest);
    if (obstacles.isEmpty()) {
      Outcome<SteeredLeg, NotPossible> straight = holdHeading(leg, frame, departure);
      boolean better =
          straight
              .solved()
              .map(held -> !found || held.arrivalSeconds() < path.arrival - 0.5)
              .orElse(!found);
      if (better) {
        return straight.map(held -> held.with(QUICKEST_NOT_FOUND));
      }
    } else if (!found) {
      NotPossible why = holdHeading(leg, frame, departure).why().orElse(null);
      return why != null && why.reason() != Reason.NO_RESERVE // the stream forbids it even without
          ? Outcome.ofUnsolved(why)
          : notPossible(
              Reason.BEYOND_HORIZON,
              departure + longest,
              frame.endLatitude,
              frame.endLongitude,
              Double.NaN);
    }
    return weighed(leg, path.track(), path.greatestCrossShare, path.leastSpare);
  }

  /** A craft without speed goes where the stream takes it, and so perhaps aground. */
  private Outcome<SteeredLeg, NotPossible> driftClearOf(
      Obstacles obstacles, Leg leg, LegFrame frame, double departure) {
    Outcome<SteeredLeg, NotPossible> outcome = holdHeading(leg, frame, departure);
    SteeredLeg drift = outcome.solved().orElse(null);
    if (drift == null || obstacles.isEmpty()) {
      return outcome;
    }
    GroundTrack track = drift.groundTrack();
    double duration = drift.arrivalSeconds() - departure;
    int looks = (int) Math.ceil(duration / LOOK_SECONDS);
    Position before = leg.start();
    for (int i = 1; i <= looks; i++) {
      double time = departure + duration * i / looks;
      Position here = track.at(EpochSeconds.toInstant(time));
      if (obstacles.blocks(
          Math.toRadians(before.latitudeDegrees()),
          Math.toRadians(before.longitudeDegrees()),
          Math.toRadians(here.latitudeDegrees()),
          Math.toRadians(here.longitudeDegrees()))) {
        return notPossible(
            Reason.NO_PROGRESS,
            time,
            before.latitudeDegrees(),
            before.longitudeDegrees(),
            Double.NaN);
      }
      before = here;
    }
    return outcome;
  }

  private Outcome<SteeredLeg, NotPossible> keepBowOnTarget(
      Leg leg, LegFrame frame, double departure) {
    if (motion.calmWaterSpeed() == 0.0) {
      return holdHeading(leg, frame, departure);
    }
    BowOnTarget chase = new BowOnTarget(motion, frame);
    if (!chase.follow(departure, departure + longest)) {
      return notPossible(
          chase.reason,
          chase.time,
          chase.state0,
          chase.state1,
          chase.reason == Reason.CROSS_STREAM || chase.reason == Reason.ADVERSE_STREAM
              ? motion.shortBy
              : Double.NaN);
    }
    return weighed(leg, chase.track(), chase.greatestCrossShare, chase.leastSpare);
  }

  private Outcome<SteeredLeg, NotPossible> changeHeadings(
      Leg leg, LegFrame frame, double departure) {
    NewHeadings changing = new NewHeadings(motion, oneHeading, frame);
    if (!changing.follow(options.strategy(), departure, departure + longest)) {
      return notPossible(
          changing.reason,
          changing.failureTime,
          changing.failureLatitude,
          changing.failureLongitude,
          changing.shortBy);
    }
    return weighed(leg, changing.track(), changing.greatestCrossShare, changing.leastSpare);
  }

  private Outcome<SteeredLeg, NotPossible> weighed(
      Leg leg, GroundTrack track, double share, double spare) {
    if (share > options.limits().refuseAbove()) {
      double needed = share * motion.calmWaterSpeed() / options.limits().refuseAbove();
      double shortBy = needed - motion.calmWaterSpeed();
      return Outcome.ofUnsolved(
          NotPossible.because(Reason.NO_RESERVE)
              .at(leg.start(), track.start())
              .by(Speed.ofMetresPerSecond(Math.max(0.0, shortBy))));
    }
    double effort = motion.calmWaterSpeed() * (track.endSeconds() - track.startSeconds());
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

  private static Outcome<SteeredLeg, NotPossible> notPossible(
      Reason reason, double time, double latitude, double longitude, double shortBy) {
    NotPossible why =
        NotPossible.because(reason)
            .at(
                Position.ofDegrees(latitude, Earth.longitude(longitude)),
                EpochSeconds.toInstant(time));
    return Outcome.ofUnsolved(
        Double.isNaN(shortBy) ? why : why.by(Speed.ofMetresPerSecond(Math.max(0.0, shortBy))));
  }
}
