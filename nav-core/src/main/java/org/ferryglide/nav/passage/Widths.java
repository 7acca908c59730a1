package org.ferryglide.nav.passage;

import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorWalk;
import org.ferryglide.nav.steer.SteeredLeg;

/** How the error of the position grows along the way; ashore it is nothing again. */
final class Widths {
  /** Radius of the 95 % ellipse in standard deviations: √(-2 ln 0.05). */
  static final double SIGMAS_95 = Math.sqrt(-2.0 * Math.log(0.05));

  private static final double[] NONE = {};

  private Widths() {}

  /**
   * Fills in half the width of the band at each look, metres; NaN from the first gap of the stream
   * on, until the next stop ashore.
   *
   * @return the greatest of them; NaN if one is
   */
  static double fill(Candidate candidate, double[] widths) {
    boolean exact = candidate.passage.errors().equals(ErrorModel.none());
    double[] covariances = exact ? NONE : candidate.covariances();
    double greatest = 0.0;
    boolean known = true;
    for (int look = 0; look < candidate.size; look++) {
      if (candidate.seconds[look] > 0.0) {
        double stream = candidate.streamEast[look] + candidate.streamEast[look - 1];
        known &= !Double.isNaN(stream);
      } else if (isLaunch(candidate, look)) {
        known = true;
      }
      double longest = exact ? 0.0 : longerAxis(covariances, 3 * look);
      widths[look] = known ? SIGMAS_95 * longest : Double.NaN;
      greatest = Math.max(greatest, widths[look]);
    }
    return greatest;
  }

  /** Standard deviation along the longer axis. */
  private static double longerAxis(double[] covariances, int at) {
    double east = covariances[at];
    double north = covariances[at + 1];
    double half = PlaneMetres.length(0.5 * (east - north), covariances[at + 2]);
    return Math.sqrt(0.5 * (east + north) + half);
  }

  private static boolean isLaunch(Candidate candidate, int look) {
    return look > 0
        && candidate.leg[look] != candidate.leg[look - 1]
        && candidate.isAshoreBefore(candidate.leg[look]);
  }

  /**
   * Fills in variance east, variance north and covariance at each look, square metres, with gaps of
   * the stream bridged by what was known last.
   */
  static void fillCovariances(Candidate candidate, double[] all) {
    ErrorWalk walk = candidate.room().place();
    double[] motion = new double[4];
    for (int look = 0; look < candidate.size; look++) {
      double seconds = candidate.seconds[look];
      if (seconds > 0.0) {
        motion(candidate, look, motion);
        walk.step(motion[0], motion[1], motion[2], motion[3], seconds);
      } else if (isLaunch(candidate, look)) {
        walk.reset();
      }
      walk.covariance(all, 3 * look);
    }
  }

  /**
   * Standard deviation of the time at which each leg is finished, seconds, for a party that finds
   * every way point: what is lost or gained along the legs adds up whatever way they turn. A stop
   * ashore of some minutes passes the lateness on, one until something happens takes it up.
   */
  static double[] arrivals(Candidate candidate) {
    ErrorWalk walk = candidate.room().lateness();
    ErrorWalk current = candidate.room().current();
    double[] spreads = new double[candidate.route.legs().size()];
    double[] covariance = new double[3];
    double[] motion = new double[4];
    int look = 0;
    for (int leg = 0; leg < spreads.length; leg++) {
      if (leg > 0 && candidate.waitsBefore(leg)) {
        walk.reset();
        current.reset();
      }
      SteeredLeg steered = candidate.route.legs().get(leg);
      double course = Math.toRadians(steered.leg().initialCourse().degrees());
      double made = steered.speedMadeGood().metresPerSecond();
      double sine = Math.sin(course) / made;
      double cosine = Math.cos(course) / made;
      boolean moves = false;
      for (; look < candidate.size && candidate.leg[look] == leg; look++) {
        double seconds = candidate.seconds[look];
        if (seconds > 0.0) {
          moves = true;
          motion(candidate, look, motion);
          // along the leg is north here, and a metre the time it takes
          walk.step(
              motion[0] * cosine - motion[1] * sine,
              motion[0] * sine + motion[1] * cosine,
              motion[2] * cosine - motion[3] * sine,
              motion[2] * sine + motion[3] * cosine,
              seconds);
          current.step(0.0, 0.0, 0.0, 0.0, seconds);
        }
      }
      if (moves) {
        walk.covariance(covariance, 0);
        double variance = covariance[1];
        current.covariance(covariance, 0);
        spreads[leg] = Math.sqrt(variance + covariance[1] / (made * made));
      }
    }
    return spreads;
  }

  /**
   * Motion through the water and of it, east and north, since the look before; the stream's part
   * stays what it was where it is not known.
   */
  private static void motion(Candidate candidate, int look, double[] out) {
    double streamEast = 0.5 * (candidate.streamEast[look] + candidate.streamEast[look - 1]);
    double streamNorth = 0.5 * (candidate.streamNorth[look] + candidate.streamNorth[look - 1]);
    if (!Double.isNaN(streamEast + streamNorth)) {
      out[2] = streamEast;
      out[3] = streamNorth;
    }
    out[0] = candidate.groundEast[look] - out[2];
    out[1] = candidate.groundNorth[look] - out[3];
  }
}
