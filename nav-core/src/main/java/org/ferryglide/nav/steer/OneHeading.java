package org.ferryglide.nav.steer;

import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.plane.SteadyTriangle;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/**
 * The one heading that, held from a place and time, leads to a target; the earliest if there are
 * several.
 *
 * <p>{@link DriftWalk} gives heading and time in the plane; corrections after Broyden (1965) move
 * the end of the path, followed on the ellipsoid, onto the target. Where the stream outruns the
 * craft, varies strongly from place to place, or the wind matters to the answer more than the
 * corrections can mend, headings all round are tried and every near miss is corrected, so that the
 * earliest arrival is not passed over. Not thread-safe.
 */
final class OneHeading implements Follower {
  /** How close the end of the path is brought to the target, metres. */
  private static final double CLOSE_METRES = 1e-3;

  /** How close it must come for an answer where the field is not smooth, metres. */
  private static final double CLOSE_ENOUGH_METRES = 0.05;

  /** How far apart headings are tried, degrees. */
  private static final double TRIAL_DEGREES = 5.0;

  private static final int CORRECTIONS = 30;

  /** More corrections than this show a stream that varies strongly over the leg. */
  private static final int EASY_CORRECTIONS = 9;

  /** Most arrivals are not later than half as long again as the guess and this, seconds. */
  private static final double LATER_THAN_GUESS = 1800.0;

  private final Motion motion;
  private final HeadingPath path;
  private final DriftWalk walk;

  /** Made when headings all round are first tried. */
  private @Nullable NearMisses trial;

  private final double[] line = new double[2];

  /** The stretch that is being solved. */
  private double startTime;

  private double startLatitude;
  private double startLongitude;
  private double targetLatitude;
  private double targetLongitude;
  private double metresPerLatitude;
  private double metresPerLongitude;

  /** The heading and arrival on which the last correction settled, and how many it took. */
  private double headingDegrees;

  private double arrival;
  private int corrections;

  OneHeading(Motion motion) {
    this.motion = motion;
    path = new HeadingPath(motion);
    walk = new DriftWalk(motion);
  }

  @Override
  public Followed follow(LegFrame frame, double departure, double limit) {
    return reach(
        departure,
        frame.startLatitude,
        frame.startLongitude,
        frame.endLatitude,
        frame.endLongitude,
        limit,
        true);
  }

  @Override
  public Followed passing(LegFrame frame, double departure, double limit) {
    return reaches(
            departure,
            frame.startLatitude,
            frame.startLongitude,
            frame.endLatitude,
            frame.endLongitude,
            limit,
            true)
        ? Followed.reached(path.passingTrack())
        : failure(limit);
  }

  /** Whether the track last found ran along a jump of the stream, so that its time is rough. */
  boolean isRough() {
    return path.isRough();
  }

  @Override
  public double arrival(LegFrame frame, double departure, double limit) {
    return arrival(
        departure,
        frame.startLatitude,
        frame.startLongitude,
        frame.endLatitude,
        frame.endLongitude,
        limit,
        true);
  }

  /**
   * The track from a place and time to a target.
   *
   * @param thorough whether headings all round may be tried; without it only plain cases are solved
   */
  Followed reach(
      double time,
      double latitude,
      double longitude,
      double toLatitude,
      double toLongitude,
      double limit,
      boolean thorough) {
    return reaches(time, latitude, longitude, toLatitude, toLongitude, limit, thorough)
        ? Followed.reached(path.track())
        : failure(limit);
  }

  /** The time of {@link #reach} alone; NaN if the target is not reached. */
  double arrival(
      double time,
      double latitude,
      double longitude,
      double toLatitude,
      double toLongitude,
      double limit,
      boolean thorough) {
    return reaches(time, latitude, longitude, toLatitude, toLongitude, limit, thorough)
        ? path.time
        : Double.NaN;
  }

  /** Whether {@link #path} ends on the target; if not, {@link #walk} has what the plane told. */
  private boolean reaches(
      double time,
      double latitude,
      double longitude,
      double toLatitude,
      double toLongitude,
      double limit,
      boolean thorough) {
    startTime = time;
    startLatitude = latitude;
    startLongitude = longitude;
    targetLatitude = toLatitude;
    targetLongitude = toLongitude;
    double sine = Earth.sine(toLatitude);
    metresPerLatitude = Earth.metresPerLatitudeDegree(sine);
    metresPerLongitude = Earth.metresPerLongitudeDegree(sine);
    RhumbLines.inverse(
        latitude, Earth.longitude(longitude), toLatitude, Earth.longitude(toLongitude), line, 0);
    double course = line[0];
    double length = line[1];
    if (motion.calmWaterSpeed() == 0.0 && drifts(course, limit)) {
      return true;
    }
    walk.walk(time, latitude, longitude, toLatitude, toLongitude, course, length, limit);
    return motion.calmWaterSpeed() > 0.0 && isReached(course, limit, thorough);
  }

  private boolean isReached(double course, double limit, boolean thorough) {
    boolean exact = motion.uniform && !motion.windy; // the guess is the answer but for the earth
    boolean corrected = walk.isMet() && correct(walk.headingDegrees(), walk.meeting(), limit);
    boolean plain = corrections <= EASY_CORRECTIONS && path.outranStream();
    if (corrected && (exact || plain || !thorough)) {
      return true;
    }
    if (!thorough || (exact && !walk.isMet())) {
      return false;
    }
    double first = corrected ? arrival : Double.POSITIVE_INFINITY;
    double firstHeading = headingDegrees;
    // every path costs its length, so that near arrivals are looked for first
    double near =
        walk.isMet() ? startTime + 1.5 * (walk.meeting() - startTime) + LATER_THAN_GUESS : limit;
    return (near < limit && tryAllRound(course, near, first, firstHeading))
        || tryAllRound(course, limit, first, firstHeading);
  }

  /** Moves heading and arrival until the path ends on the target. */
  private boolean correct(double heading, double guess, double limit) {
    double latest = Math.min(limit, guess + 0.5 * (guess - startTime) + 600.0);
    double time = guess;
    double radians = Math.toRadians(heading);
    if (!end(radians, time)) {
      return false;
    }
    double east = missEast();
    double north = missNorth();
    // how the end moves with the heading, and with time
    double reach = motion.calmWaterSpeed() * (time - startTime);
    double j00 = reach * Math.cos(radians);
    double j10 = -reach * Math.sin(radians);
    double j01 = path.groundEast();
    double j11 = path.groundNorth();
    for (corrections = 1; corrections <= CORRECTIONS; corrections++) {
      double miss = Earth.size(east, north);
      if (miss < CLOSE_METRES) {
        return answer(radians, time, limit);
      }
      double determinant = j00 * j11 - j01 * j10;
      double turn = -(j11 * east - j01 * north) / determinant;
      double later = -(j00 * north - j10 * east) / determinant;
      // no more than half a radian or half the time at once
      double part =
          Math.min(1.0, 0.5 / Math.max(Math.abs(turn), Math.abs(later) / (time - startTime)));
      if (!(part > 1e-9)) { // NaN too
        return false;
      }
      turn *= part;
      later *= part;
      if (time + later > latest) {
        if (time >= latest) {
          return false;
        }
        double shorter = (latest - time) / later;
        turn *= shorter;
        later *= shorter;
      }
      radians += turn;
      time += later;
      if (!end(radians, time)) {
        return false;
      }
      double nextEast = missEast();
      double nextNorth = missNorth();
      // Broyden's correction, with the turn measured by the way it moves the end
      double size = reach * turn * reach * turn + later * later;
      double offEast = nextEast - east - j00 * turn - j01 * later;
      double offNorth = nextNorth - north - j10 * turn - j11 * later;
      if (size > 0.0) {
        j00 += offEast * reach * turn * reach / size;
        j10 += offNorth * reach * turn * reach / size;
        j01 += offEast * later / size;
        j11 += offNorth * later / size;
      }
      east = nextEast;
      north = nextNorth;
    }
    return Earth.size(east, north) < CLOSE_ENOUGH_METRES && answer(radians, time, limit);
  }

  private boolean answer(double radians, double time, double limit) {
    if (time > limit) {
      return false;
    }
    headingDegrees = Math.toDegrees(radians);
    arrival = time;
    return true;
  }

  private boolean end(double radians, double time) {
    return path.follow(Math.toDegrees(radians), startTime, startLatitude, startLongitude, time);
  }

  private double missEast() {
    return (path.state1 - targetLongitude) * metresPerLongitude;
  }

  private double missNorth() {
    return (path.state0 - targetLatitude) * metresPerLatitude;
  }

  /**
   * Tries headings all round for an arrival earlier than the best known; every path that passes
   * near the target is corrected onto it.
   */
  private boolean tryAllRound(double course, double limit, double first, double firstHeading) {
    double best = first;
    double bestHeading = firstHeading;
    for (double off = 0.0; off < 360.0; off += TRIAL_DEGREES) {
      double heading = course + off;
      double latest = Math.min(limit, best);
      for (double time : nearMisses(heading, Math.toRadians(TRIAL_DEGREES), latest)) {
        if (correct(heading, time, Math.min(limit, best)) && arrival < best) {
          best = arrival;
          bestHeading = headingDegrees;
        }
      }
    }
    if (best == Double.POSITIVE_INFINITY) {
      return false;
    }
    return end(Math.toRadians(bestHeading), best);
  }

  private double[] nearMisses(double heading, double radiansApart, double limit) {
    NearMisses near = trial;
    if (near == null) {
      near = new NearMisses(motion);
      trial = near;
    }
    return near.look(
        heading,
        startTime,
        startLatitude,
        startLongitude,
        targetLatitude,
        targetLongitude,
        radiansApart,
        limit);
  }

  /** A craft that makes no speed of its own arrives only if the stream carries it there. */
  private boolean drifts(double course, double limit) {
    double[] times = nearMisses(course, 0.0, limit);
    return times.length > 0 && end(Math.toRadians(course), times[0]);
  }

  /**
   * Why no heading leads to the target: the mean stream up to the moment at which the least extra
   * speed would have met it, and where the craft is closest then.
   */
  private Followed failure(double limit) {
    if (!walk.known() && !walk.isMet()) {
      double paddled = motion.calmWaterSpeed() * (walk.end() - startTime);
      return failedAt(Reason.NO_DATA, walk.end(), Math.min(1.0, paddled / line[1]));
    }
    if (walk.isMet() || !(walk.shortBy() < Double.MAX_VALUE)) {
      // in the plane it would be reached, but no one heading leads there past the jumps of the
      // field
      return failedAt(Reason.BEYOND_HORIZON, limit, 1.0);
    }
    Reason reason = reason(limit);
    double lacking = walk.shortBy() * (walk.shortTime() - startTime);
    double radians = Math.toRadians(walk.headingDegrees());
    NotPossible why =
        NotPossible.because(reason)
            .at(
                Position.ofDegrees(
                    targetLatitude - lacking * Math.cos(radians) / metresPerLatitude,
                    Earth.longitude(
                        targetLongitude - lacking * Math.sin(radians) / metresPerLongitude)),
                EpochSeconds.toInstant(walk.shortTime()));
    return Followed.failed(
        reason == Reason.NO_PROGRESS
            ? why
            : why.byAllTheWay(Speed.ofMetresPerSecond(walk.shortBy())));
  }

  private Reason reason(double limit) {
    double duration = walk.shortTime() - startTime;
    double east = walk.driftEast() / duration;
    double north = walk.driftNorth() / duration;
    double radians = Math.toRadians(line[0]);
    double along = east * Math.sin(radians) + north * Math.cos(radians);
    double across = east * Math.cos(radians) - north * Math.sin(radians);
    // a longer time helps only if the craft is still getting closer as the time runs out
    boolean gainsYet = walk.shortTime() >= limit - 1.0;
    return Reasons.of(
        SteadyTriangle.finding(along, across, motion.calmWaterSpeed()),
        gainsYet ? Reason.BEYOND_HORIZON : Reason.ADVERSE_STREAM);
  }

  private Followed failedAt(Reason reason, double time, double part) {
    return Followed.failed(
        reason,
        time,
        startLatitude + part * (targetLatitude - startLatitude),
        startLongitude + part * (targetLongitude - startLongitude),
        Double.NaN);
  }
}
