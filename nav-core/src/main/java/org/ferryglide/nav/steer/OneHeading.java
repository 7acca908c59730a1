package org.ferryglide.nav.steer;

import org.ferryglide.nav.geodesy.RhumbLines;

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
final class OneHeading {
  /** How close the end of the path is brought to the target, metres. */
  private static final double CLOSE_METRES = 1e-3;

  /** How close it must come for an answer where the field is not smooth, metres. */
  private static final double CLOSE_ENOUGH_METRES = 0.05;

  /** How far apart headings are tried, degrees. */
  private static final double TRIAL_DEGREES = 5.0;

  private static final int CORRECTIONS = 30;

  /** More corrections than this tell of a stream that varies strongly over the leg. */
  private static final int EASY_CORRECTIONS = 9;

  final HeadingPath path;

  /** The answer: heading and arrival. */
  double headingDegrees;

  double arrival;

  /** Why there is no answer, where, when, and the speed lacking (NaN if that is not it). */
  Reason reason = Reason.NO_PROGRESS;

  double failureTime;
  double failureLatitude;
  double failureLongitude;
  double shortBy;

  /** Whether headings all round may be tried; without it only plain cases are solved. */
  boolean thorough = true;

  private final Motion motion;
  private final DriftWalk walk;
  private final NearMisses trial;
  private final double[] line = new double[2];
  private double startTime;
  private double startLatitude;
  private double startLongitude;
  private double targetLatitude;
  private double targetLongitude;
  private double metresPerLatitude;
  private double metresPerLongitude;
  private int corrections;

  OneHeading(Motion motion) {
    this.motion = motion;
    path = new HeadingPath(motion);
    walk = new DriftWalk(motion);
    trial = new NearMisses(motion);
  }

  /**
   * Solves; on success {@link #path} holds the track.
   *
   * @return true if solved, with heading and arrival set; else the reason is
   */
  boolean solve(
      double time,
      double latitude,
      double longitude,
      double toLatitude,
      double toLongitude,
      double limit) {
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
    path.weighAgainst(course);
    if (motion.calmWaterSpeed() == 0.0) {
      return drift(course, limit);
    }
    boolean known =
        walk.walk(time, latitude, longitude, toLatitude, toLongitude, course, length, limit);
    boolean met = !Double.isNaN(walk.meeting);
    boolean exact = motion.uniform && !motion.windy;
    boolean corrected = met && correct(walk.headingDegrees, walk.meeting, limit);
    boolean plain =
        corrections <= EASY_CORRECTIONS && path.greatestStream < 0.98 * path.leastWaterSpeed;
    if (corrected && (exact || plain || !thorough)) {
      return true;
    }
    double first = corrected ? arrival : Double.POSITIVE_INFINITY;
    if (thorough && (met || !exact)) {
      // most arrivals are not far from the guess, and every path costs its length
      double near = met ? startTime + 1.5 * (walk.meeting - startTime) + 1800.0 : limit;
      if ((near < limit && tryAllRound(course, near, first, headingDegrees))
          || tryAllRound(course, limit, first, headingDegrees)) {
        return true;
      }
    }
    explain(known, course, limit);
    return false;
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
      double miss = Math.hypot(east, north);
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
    return Math.hypot(east, north) < CLOSE_ENOUGH_METRES && answer(radians, time, limit);
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
      trial.look(
          heading,
          startTime,
          startLatitude,
          startLongitude,
          targetLatitude,
          targetLongitude,
          Math.toRadians(TRIAL_DEGREES),
          Math.min(limit, best));
      for (int i = 0; i < trial.count; i++) {
        if (correct(heading, trial.times[i], Math.min(limit, best)) && arrival < best) {
          best = arrival;
          bestHeading = headingDegrees;
        }
      }
    }
    if (best == Double.POSITIVE_INFINITY) {
      return false;
    }
    headingDegrees = bestHeading;
    arrival = best;
    return end(Math.toRadians(bestHeading), best);
  }

  /** A craft that makes no speed of its own arrives only if the stream carries it there. */
  private boolean drift(double course, double limit) {
    trial.look(
        course,
        startTime,
        startLatitude,
        startLongitude,
        targetLatitude,
        targetLongitude,
        0.0,
        limit);
    if (trial.count > 0) {
      headingDegrees = course;
      arrival = trial.times[0];
      return end(Math.toRadians(course), arrival);
    }
    boolean known =
        walk.walk(
            startTime,
            startLatitude,
            startLongitude,
            targetLatitude,
            targetLongitude,
            course,
            line[1],
            limit);
    explain(known, course, limit);
    return false;
  }

  private void explain(boolean known, double course, double limit) {
    failureLatitude = startLatitude;
    failureLongitude = startLongitude;
    if (!known && Double.isNaN(walk.meeting)) {
      reason = Reason.NO_DATA;
      failureTime = walk.time;
      double part = Math.min(1.0, motion.calmWaterSpeed() * (walk.time - startTime) / line[1]);
      failureLatitude = startLatitude + part * (targetLatitude - startLatitude);
      failureLongitude = startLongitude + part * (targetLongitude - startLongitude);
      shortBy = Double.NaN;
      return;
    }
    failureTime = Math.min(limit, walk.leastShortTime);
    shortBy = walk.leastShort;
    double duration = walk.leastShortTime - startTime;
    double east = walk.leastShortEast / duration;
    double north = walk.leastShortNorth / duration;
    double radians = Math.toRadians(course);
    double along = east * Math.sin(radians) + north * Math.cos(radians);
    double across = east * Math.cos(radians) - north * Math.sin(radians);
    int finding = SteadyTriangle.finding(along, across, motion.calmWaterSpeed());
    reason = Reasons.of(finding, Reason.BEYOND_HORIZON);
    if (!Double.isNaN(walk.meeting) || !(shortBy < Double.MAX_VALUE)) {
      // in the plane it would be reached, but no one heading leads there past the jumps of the
      // field
      reason = Reason.BEYOND_HORIZON;
      shortBy = Double.NaN;
      failureTime = limit;
    }
  }
}
