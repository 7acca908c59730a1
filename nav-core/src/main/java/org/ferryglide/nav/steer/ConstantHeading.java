package org.ferryglide.nav.steer;

import org.jspecify.annotations.Nullable;

/**
 * The one heading that, held from a place and time, leads to a target; the earliest if there are
 * several.
 *
 * <p>{@link DriftWalk} gives heading and time in the plane, {@link HeadingCorrection} moves the end
 * of the path, followed on the ellipsoid, onto the target. Where the stream outruns the craft,
 * varies strongly from place to place, or the wind matters to the answer more than the corrections
 * can mend, headings all round are tried and every near miss is corrected, so that the earliest
 * arrival is not passed over. Not thread-safe.
 */
final class ConstantHeading implements Follower {
  /** How far apart headings are tried, degrees. */
  private static final double TRIAL_DEGREES = 5.0;

  // Every path tried costs its length. Most arrivals are not later than half as long again as the
  // guess and half an hour, so that these are looked for first.
  private static final double LONGER_THAN_GUESSED = 1.5;
  private static final double LATER_THAN_GUESSED = 1800.0;

  private final Motion motion;
  private final HeadingPath path;
  private final DriftWalk walk;
  private final HeadingCorrection correction;

  /** What is being solved. */
  private final Stretch stretch = new Stretch();

  /** Made when headings all round are first tried. */
  private @Nullable NearMisses trial;

  ConstantHeading(Motion motion) {
    this.motion = motion;
    path = new HeadingPath(motion);
    walk = new DriftWalk(motion);
    correction = new HeadingCorrection(motion, path);
  }

  @Override
  public boolean holdsHeadings() {
    return true;
  }

  @Override
  public Followed follow(LegFrame frame, double departure, double limit) {
    set(frame, departure);
    return reaches(limit, true) ? Followed.reached(path.track()) : failure(limit);
  }

  @Override
  public Followed passing(LegFrame frame, double departure, double limit) {
    set(frame, departure);
    return reaches(limit, true) ? Followed.reached(path.passingTrack()) : failure(limit);
  }

  @Override
  public double arrival(LegFrame frame, double departure, double limit) {
    set(frame, departure);
    return reaches(limit, true) ? path.time() : Double.NaN;
  }

  private void set(LegFrame frame, double departure) {
    stretch.set(
        departure,
        frame.startLatitude,
        frame.startLongitude,
        frame.endLatitude,
        frame.endLongitude);
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
    stretch.set(time, latitude, longitude, toLatitude, toLongitude);
    return reaches(limit, thorough) ? Followed.reached(path.track()) : failure(limit);
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
    stretch.set(time, latitude, longitude, toLatitude, toLongitude);
    return reaches(limit, thorough) ? path.time() : Double.NaN;
  }

  /** Whether the track last found ran along a jump of the stream, so that its time is rough. */
  boolean isRough() {
    return path.isRough();
  }

  /** Whether {@link #path} ends on the target; if not, {@link #walk} has what the plane told. */
  private boolean reaches(double limit, boolean thorough) {
    boolean paddles = motion.calmWaterSpeed() > 0.0;
    if (!paddles && drifts(limit)) {
      return true;
    }
    walk.walk(stretch, limit);
    return paddles && isReached(limit, thorough);
  }

  private boolean isReached(double limit, boolean thorough) {
    boolean met = walk.isMet();
    boolean corrected =
        met && correction.settles(stretch, walk.headingDegrees(), walk.meeting(), limit);
    boolean exact = motion.uniform && !motion.windy; // the guess is the answer but for the earth
    boolean plain = correction.wasEasy() && path.outranStream();
    if (corrected && (exact || plain || !thorough)) {
      return true;
    }
    if (!thorough || (exact && !met)) {
      return false;
    }
    double first = corrected ? correction.arrival() : Double.POSITIVE_INFINITY;
    double firstHeading = correction.headingDegrees();
    double near =
        met
            ? stretch.startTime()
                + LONGER_THAN_GUESSED * (walk.meeting() - stretch.startTime())
                + LATER_THAN_GUESSED
            : limit;
    return (near < limit && tryAllRound(near, first, firstHeading))
        || tryAllRound(limit, first, firstHeading);
  }

  /**
   * Tries headings all round for an arrival earlier than the best known; every path that passes
   * near the target is corrected onto it.
   */
  private boolean tryAllRound(double limit, double first, double firstHeading) {
    double best = first;
    double bestHeading = firstHeading;
    for (double off = 0.0; off < 360.0; off += TRIAL_DEGREES) {
      double heading = stretch.courseDegrees() + off;
      double latest = Math.min(limit, best);
      for (double time : trial().look(heading, stretch, Math.toRadians(TRIAL_DEGREES), latest)) {
        if (correction.settles(stretch, heading, time, Math.min(limit, best))
            && correction.arrival() < best) {
          best = correction.arrival();
          bestHeading = correction.headingDegrees();
        }
      }
    }
    return best < Double.POSITIVE_INFINITY && follow(bestHeading, best);
  }

  /** A craft that makes no speed of its own arrives only if the stream carries it there. */
  private boolean drifts(double limit) {
    double[] times = trial().look(stretch.courseDegrees(), stretch, 0.0, limit);
    return times.length > 0 && follow(stretch.courseDegrees(), times[0]);
  }

  private boolean follow(double heading, double until) {
    return path.follow(
        heading, stretch.startTime(), stretch.startLatitude(), stretch.startLongitude(), until);
  }

  private NearMisses trial() {
    NearMisses made = trial;
    if (made == null) {
      made = new NearMisses(motion);
      trial = made;
    }
    return made;
  }

  private Followed failure(double limit) {
    return NoHeading.because(walk, stretch, motion.calmWaterSpeed(), limit);
  }
}
