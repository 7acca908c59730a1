package org.ferryglide.nav.steer;

/**
 * Corrects a heading and the time for which it is held until the path, followed on the ellipsoid,
 * ends on the target. Not thread-safe.
 */
final class HeadingCorrection {
  /** How close the end of the path is brought to the target, metres. */
  private static final double CLOSE_METRES = 1e-3;

  /** How close it must come for an answer where the field is not smooth, metres. */
  private static final double CLOSE_ENOUGH_METRES = 0.05;

  private static final int CORRECTIONS = 30;

  /** More corrections than this show a stream that varies strongly over the leg. */
  private static final int EASY_CORRECTIONS = 9;

  // A path never grows longer than half as long again as guessed and ten minutes: those that would
  // cost much, and a later arrival on this heading is found from a guess of its own.
  private static final double LONGER_THAN_GUESSED = 0.5;
  private static final double LATER_THAN_GUESSED = 600.0;

  /** At most so many radians, and this part of the time held, are changed by one correction. */
  private static final double MOST_AT_ONCE = 0.5;

  /** A correction that had to be shortened more leads nowhere. */
  private static final double LEAST_PART = 1e-9;

  private final Motion motion;
  private final HeadingPath path;
  private final EndShift shift = new EndShift();

  private Stretch stretch = new Stretch();
  private double radians;
  private double end;
  private double missEast;
  private double missNorth;
  private int corrections;

  /** Corrects paths of one craft, which it follows in the path given. */
  HeadingCorrection(Motion motion, HeadingPath path) {
    this.motion = motion;
    this.path = path;
  }

  /**
   * Corrects a guess.
   *
   * @return whether the path ends on the target by the limit; {@link #headingDegrees} and {@link
   *     #arrival} tell how
   */
  boolean settles(Stretch stretch, double headingDegrees, double arrival, double limit) {
    this.stretch = stretch;
    radians = Math.toRadians(headingDegrees);
    end = arrival;
    double guessed = arrival - stretch.startTime();
    double latest = Math.min(limit, arrival + LONGER_THAN_GUESSED * guessed + LATER_THAN_GUESSED);
    if (!follow()) {
      return false;
    }
    double reach = motion.calmWaterSpeed() * guessed;
    shift.set(radians, path.groundEast(), path.groundNorth());
    for (corrections = 1; corrections <= CORRECTIONS; corrections++) {
      if (Earth.size(missEast, missNorth) < CLOSE_METRES) {
        return end <= limit;
      }
      shift.undo(missEast, missNorth);
      if (!restrain(reach, latest)) {
        return false;
      }
      radians += shift.swing() / reach;
      end += shift.seconds();
      double beforeEast = missEast;
      double beforeNorth = missNorth;
      if (!follow()) {
        return false;
      }
      shift.learn(missEast - beforeEast, missNorth - beforeNorth);
    }
    return Earth.size(missEast, missNorth) < CLOSE_ENOUGH_METRES && end <= limit;
  }

  /** Shortens a correction that is too large at once or too late; false if none is left. */
  private boolean restrain(double reach, double latest) {
    double turn = Math.abs(shift.swing() / reach);
    double longer = Math.abs(shift.seconds()) / (end - stretch.startTime());
    double part = Math.min(1.0, MOST_AT_ONCE / Math.max(turn, longer));
    if (!(part > LEAST_PART)) { // NaN too
      return false;
    }
    if (end + part * shift.seconds() > latest) {
      if (end >= latest) {
        return false;
      }
      part = (latest - end) / shift.seconds();
    }
    shift.shorten(part);
    return true;
  }

  private boolean follow() {
    boolean known =
        path.follow(
            Math.toDegrees(radians),
            stretch.startTime(),
            stretch.startLatitude(),
            stretch.startLongitude(),
            end);
    missEast = stretch.eastOfTarget(path.state1());
    missNorth = stretch.northOfTarget(path.state0());
    return known;
  }

  /** Whether few corrections were enough the last time. */
  boolean wasEasy() {
    return corrections <= EASY_CORRECTIONS;
  }

  /** The heading on which the last correction settled. */
  double headingDegrees() {
    return Math.toDegrees(radians);
  }

  /** The arrival on which it settled, seconds since 1970. */
  double arrival() {
    return end;
  }
}
