package org.ferryglide.nav.steer;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/** Steers legs for a {@link CourseToSteer}. Keeps room to work in, so it is not thread-safe. */
final class LegSolver {
  /** A leg shorter than this has no course of its own, metres. */
  private static final double NO_LENGTH_METRES = 1e-6;

  /** The start of the year 1, seconds since 1970. */
  private static final double EARLIEST = -62_135_596_800.0;

  /**
   * The start of the year 5000, seconds since 1970; doubles still resolve 15 microseconds there.
   */
  private static final double LATEST = 95_617_584_000.0;

  /** Legs of a longer route are prepared again at every departure. */
  private static final int FRAMES = 32;

  private final CourseToSteer options;
  private final Motion motion;
  private final Follower follower;
  private final double longest;

  /** The legs steered last, which a search asks for again at every departure. */
  private final @Nullable LegFrame[] frames = new LegFrame[FRAMES];

  /** Where the leg stands that was asked for last; legs of a route follow it in order. */
  private int latest;

  private int newest = FRAMES - 1;

  private PathDemand.@Nullable Scan scan;

  LegSolver(CourseToSteer options) {
    this.options = options;
    motion = new Motion(options.craft(), options.stream(), options.wind());
    follower = options.strategy().follower(motion);
    longest = Seconds.of(options.longestDuration());
  }

  /** Refuses times that doubles do not resolve, at which no step would ever end. */
  static void refuseFarYears(double departure) {
    if (!(departure >= EARLIEST && departure < LATEST)) { // written so that NaN fails
      throw new IllegalArgumentException(
          "departure must lie in the years 1 to 4999, but was "
              + departure
              + " seconds after the start of 1970");
    }
  }

  private LegFrame frame(Leg leg) {
    for (int i = 0; i < FRAMES; i++) {
      int at = (latest + i) % FRAMES;
      LegFrame known = frames[at];
      if (known != null && known.leg() == leg) {
        latest = at;
        return known;
      }
    }
    LegFrame made = new LegFrame(leg);
    newest = (newest + 1) % FRAMES;
    frames[newest] = made;
    latest = newest;
    return made;
  }

  private PathDemand demand(GroundTrack track) {
    PathDemand.Scan known = scan;
    if (known == null) {
      known = new PathDemand.Scan(track, motion);
      scan = known;
    }
    return known.of(track);
  }

  /** Steers a leg from a departure in seconds since 1970, with or without the fields' own notes. */
  Outcome<SteeredLeg, NotPossible> solve(Leg leg, double departure, boolean withNotes) {
    refuseFarYears(departure);
    LegFrame frame = frame(leg);
    if (frame.length < NO_LENGTH_METRES) {
      return standStill(leg, frame, departure);
    }
    Followed followed = follower.follow(frame, departure, departure + longest);
    if (followed.failure() != null) {
      return Outcome.ofUnsolved(followed.failure());
    }
    Outcome<SteeredLeg, NotPossible> outcome = weighed(leg, followed);
    return withNotes ? outcome.map(steered -> Notes.added(steered, frame, options)) : outcome;
  }

  /**
   * The arrival alone, seconds since 1970; NaN if it is not possible. A track is kept only where
   * the limits ask what it demands of the craft.
   */
  double arrival(Leg leg, double departure) {
    refuseFarYears(departure);
    LegFrame frame = frame(leg);
    if (frame.length < NO_LENGTH_METRES) {
      return departure;
    }
    double most = options.limits().refuseAbove();
    if (most >= 1.0) {
      return follower.arrival(frame, departure, departure + longest);
    }
    GroundTrack track = follower.follow(frame, departure, departure + longest).track();
    return track == null || demand(track).crossShare() > most ? Double.NaN : track.endSeconds();
  }

  /** The quickest path and others that take little longer, as far as the limits allow them. */
  List<SteeredLeg> quickestWays(Leg leg, double departure, int most) {
    List<SteeredLeg> ways = new ArrayList<>();
    LegFrame frame = new LegFrame(leg);
    if (follower instanceof QuickestPath quickest
        && frame.length >= NO_LENGTH_METRES
        && motion.calmWaterSpeed() > 0.0) {
      for (Followed way : quickest.ways(frame, departure, departure + longest, most)) {
        weighed(leg, way)
            .solved()
            .map(held -> Notes.added(held, frame, options))
            .ifPresent(ways::add);
      }
    }
    return ways;
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
    GroundTrack track =
        new TrackRecorder()
            .finish(departure, frame.startLatitude, frame.startLongitude, frame.courseDegrees());
    Note note =
        Note.information("steer.no-length", "The leg starts where it ends; there is no course.");
    PathDemand nothing =
        new PathDemand(
            0.0,
            departure,
            frame.startLatitude,
            frame.startLongitude,
            motion.calmWaterSpeed(),
            motion.calmWaterSpeed(),
            0.0,
            departure);
    return Outcome.ofSolved(
        new SteeredLeg(leg, options.strategy(), track, nothing, 0.0, List.of(note)));
  }

  /** Holds what the path asks of the craft against the limits. */
  private Outcome<SteeredLeg, NotPossible> weighed(Leg leg, Followed followed) {
    GroundTrack track = Objects.requireNonNull(followed.track());
    PathDemand demand = demand(track);
    double most = options.limits().refuseAbove();
    if (demand.crossShare() > most) {
      double lacking = demand.crossWaterSpeed() * (demand.crossShare() / most - 1.0);
      return Outcome.ofUnsolved(
          NotPossible.because(Reason.NO_RESERVE)
              .withShare(demand.crossShare(), most)
              .at(
                  Position.ofDegrees(
                      demand.crossLatitude(), Earth.longitude(demand.crossLongitude())),
                  EpochSeconds.toInstant(demand.crossTime()))
              .by(Speed.ofMetresPerSecond(lacking)));
    }
    double effort = motion.calmWaterSpeed() * (track.endSeconds() - track.startSeconds());
    List<Note> notes = Notes.ofDemand(demand, options.limits());
    if (!followed.notes().isEmpty()) {
      notes.addAll(followed.notes());
    }
    if (options.strategy().isQuickest()) {
      notes.add(Notes.greatestStream(track, demand, options.stream()));
    }
    return Outcome.ofSolved(
        new SteeredLeg(leg, options.strategy(), track, demand, effort, List.copyOf(notes)));
  }
}
