package org.ferryglide.nav.steer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.jspecify.annotations.Nullable;

/** Steers legs for a {@link CourseToSteer}. Keeps a workspace, so it is not thread-safe. */
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
  private @Nullable LegFrame[] frames = new LegFrame[1];

  /** Where the leg stands that was asked for last; legs of a route follow it in order. */
  private int latest;

  private int newest = -1;
  private @Nullable DemandScan scan;

  LegSolver(CourseToSteer options) {
    this.options = options;
    motion = new Motion(options.craft(), options.stream(), options.wind());
    follower = options.strategy().follower(motion);
    longest = Seconds.of(options.longestDuration());
  }

  /** Paddles at another speed from now on, metres a second. */
  void paddleAt(double metresPerSecond) {
    motion.paddleAt(metresPerSecond);
  }

  /** Refuses times that doubles do not resolve, at which no step would ever end. */
  static void refuseFarYears(double departure) {
    refuseFarYears(departure, "departure");
  }

  static void refuseFarYears(double time, String name) {
    if (!(time >= EARLIEST && time < LATEST)) { // written so that NaN fails
      throw new IllegalArgumentException(
          name
              + " must lie in the years 1 to 4999, but was "
              + time
              + " seconds after the start of 1970");
    }
  }

  private LegFrame frame(Leg leg) {
    for (int i = 0; i < frames.length; i++) {
      int at = (latest + i) % frames.length;
      LegFrame known = frames[at];
      if (known != null && known.leg() == leg) {
        latest = at;
        return known;
      }
    }
    LegFrame made = new LegFrame(leg);
    follower.refuseEnds(made);
    if (newest == 0 && frames.length == 1) { // more than the one leg that most solvers see
      frames = Arrays.copyOf(frames, FRAMES);
    }
    newest = (newest + 1) % frames.length;
    frames[newest] = made;
    latest = newest;
    return made;
  }

  private DemandScan scan(GroundTrack track) {
    DemandScan known = scan;
    if (known == null) {
      known = new DemandScan(track, motion, follower.holdsHeadings());
      scan = known;
    }
    return known;
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
    return weighed(frame, followed, withNotes);
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
    GroundTrack track = follower.passing(frame, departure, departure + longest).track();
    if (track == null) {
      return Double.NaN;
    }
    DemandScan demand = scan(track);
    demand.take(track);
    return demand.crossShare() > most ? Double.NaN : track.endSeconds();
  }

  /**
   * What {@link Arrivals#measure} tells, for one leg.
   *
   * @return why the leg is not possible; null if it is, and then its figures are written
   */
  @Nullable NotPossible measure(Leg leg, double departure, double[] out, int offset) {
    refuseFarYears(departure);
    LegFrame frame = frame(leg);
    if (frame.length < NO_LENGTH_METRES) {
      write(out, offset, departure, 0.0, motion.calmWaterSpeed(), 0.0);
      return null;
    }
    Followed followed = follower.passing(frame, departure, departure + longest);
    GroundTrack track = followed.track();
    if (track == null) {
      return followed.failure();
    }
    DemandScan demand = scan(track);
    demand.take(track);
    double share = demand.crossShare();
    if (share > options.limits().refuseAbove()) {
      return noReserve(track, demand.result());
    }
    double spare = Math.max(0.0, demand.spare());
    write(out, offset, track.endSeconds(), share, spare, effort(track));
    return null;
  }

  private static void write(
      double[] out, int offset, double arrival, double share, double spare, double effort) {
    out[offset + Arrivals.ARRIVAL] = arrival;
    out[offset + Arrivals.CROSS_STREAM_SHARE] = share;
    out[offset + Arrivals.RESERVE] = spare;
    out[offset + Arrivals.EFFORT] = effort;
  }

  private double effort(GroundTrack track) {
    return motion.calmWaterSpeed() * (track.endSeconds() - track.startSeconds());
  }

  /** The quickest path and others that take little longer, as far as the limits allow them. */
  List<SteeredLeg> quickestWays(Leg leg, double departure, int most) {
    List<SteeredLeg> ways = new ArrayList<>();
    LegFrame frame = frame(leg);
    if (options.strategy().isQuickest() && frame.length < NO_LENGTH_METRES) {
      standStill(leg, frame, departure).solved().ifPresent(ways::add);
    } else if (motion.calmWaterSpeed() > 0.0) {
      for (Followed way : follower.ways(frame, departure, departure + longest, most)) {
        weighed(frame, way, true).solved().ifPresent(ways::add);
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
            0.0, departure, motion.calmWaterSpeed(), motion.calmWaterSpeed(), 0.0, departure);
    return Outcome.ofSolved(
        new SteeredLeg(leg, options.strategy(), track, nothing, 0.0, List.of(note)));
  }

  /** Holds what the path asks of the craft against the limits. */
  private Outcome<SteeredLeg, NotPossible> weighed(
      LegFrame frame, Followed followed, boolean withNotes) {
    GroundTrack track = Objects.requireNonNull(followed.track());
    PathDemand demand = scan(track).of(track);
    if (demand.crossShare() > options.limits().refuseAbove()) {
      return Outcome.ofUnsolved(noReserve(track, demand));
    }
    double effort = effort(track);
    List<Note> notes = Notes.ofDemand(demand, options.limits());
    List<Note> more = followed.notes();
    for (int i = 0; i < more.size(); i++) { // nearly always none, and no iterator for it
      notes = Notes.with(notes, more.get(i));
    }
    if (options.strategy().isQuickest()) {
      notes = Notes.with(notes, Notes.greatestStream(track, demand, options.stream()));
    }
    if (withNotes) {
      notes = Notes.ofPath(notes, track, frame, options);
    }
    return Outcome.ofSolved(
        new SteeredLeg(frame.leg(), options.strategy(), track, demand, effort, List.copyOf(notes)));
  }

  private NotPossible noReserve(GroundTrack track, PathDemand demand) {
    double most = options.limits().refuseAbove();
    double lacking = demand.crossWaterSpeed() * (demand.crossShare() / most - 1.0);
    return NotPossible.because(Reason.NO_RESERVE)
        .withShare(demand.crossShare(), most)
        .at(track.positionAt(demand.crossTime()), EpochSeconds.toInstant(demand.crossTime()))
        .by(Speed.ofMetresPerSecond(lacking));
  }
}
