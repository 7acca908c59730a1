package org.ferryglide.nav.passage;

import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.ErrorWalk;
import org.ferryglide.nav.reckon.Spread;
import org.ferryglide.nav.steer.SteeredLeg;

/** How the error of the position grows along the way; ashore it is nothing again. */
final class Widths {
  /** Radius of the 95 % ellipse in standard deviations: √(-2 ln 0.05). */
  static final double SIGMAS_95 = Math.sqrt(-2.0 * Math.log(0.05));

  private Widths() {}

  static double[] of(Candidate candidate) {
    double[] covariances = covariances(candidate, false);
    double[] widths = new double[candidate.size];
    for (int look = 0; look < widths.length; look++) {
      double east = covariances[3 * look];
      double north = covariances[3 * look + 1];
      double cross = covariances[3 * look + 2];
      double half = 0.5 * (east - north);
      widths[look] =
          SIGMAS_95 * Math.sqrt(0.5 * (east + north) + Math.sqrt(half * half + cross * cross));
    }
    return widths;
  }

  /** Variance east, variance north and covariance at each look, square metres. */
  static double[] covariances(Candidate candidate) {
    return covariances(candidate, true);
  }

  /** With gaps of the stream bridged by what was known last, or NaN from the first on. */
  private static double[] covariances(Candidate candidate, boolean bridged) {
    ErrorWalk walk = ErrorWalk.of(candidate.passage.errors());
    double[] all = new double[3 * candidate.size];
    double[] motion = new double[5];
    for (int look = 0; look < candidate.size; look++) {
      boolean begins = look == 0 || candidate.leg[look] != candidate.leg[look - 1];
      if (begins && look > 0 && candidate.isAshoreBefore(candidate.leg[look])) {
        walk.reset();
      } else if (!begins && motion(candidate, look, bridged, motion)) {
        walk.step(motion[0], motion[1], motion[2], motion[3], motion[4]);
      }
      walk.covariance(all, 3 * look);
    }
    return all;
  }

  /**
   * Standard deviation of the time at which each leg is finished, seconds, for a party that finds
   * every way point: what is lost or gained along the legs adds up whatever way they turn. A stop
   * ashore of some minutes passes the lateness on, one until something happens takes it up.
   */
  static double[] arrivals(Candidate candidate) {
    ErrorModel along = candidate.passage.errors().with(ErrorSource.PLOTTED_POSITION, Spread.NONE);
    ErrorWalk walk = ErrorWalk.of(along.with(ErrorSource.OTHER_CURRENT, Spread.NONE));
    ErrorWalk current =
        ErrorWalk.of(
            ErrorModel.none()
                .withInterval(along.interval())
                .with(ErrorSource.OTHER_CURRENT, along.spread(ErrorSource.OTHER_CURRENT)));
    double[] spreads = new double[candidate.route.legs().size()];
    double[] covariance = new double[3];
    double[] motion = new double[5];
    for (int look = 1; look < candidate.size; look++) {
      int leg = candidate.leg[look];
      if (leg != candidate.leg[look - 1]) {
        if (candidate.waitsBefore(leg)) {
          walk.reset();
          current.reset();
        }
      } else if (motion(candidate, look, true, motion)) {
        SteeredLeg steered = candidate.route.legs().get(leg);
        double course = Math.toRadians(steered.leg().initialCourse().degrees());
        double made = steered.speedMadeGood().metresPerSecond();
        double sine = Math.sin(course) / made;
        double cosine = Math.cos(course) / made;
        // along the leg is north here, and a metre the time it takes
        walk.step(
            motion[0] * cosine - motion[1] * sine,
            motion[0] * sine + motion[1] * cosine,
            motion[2] * cosine - motion[3] * sine,
            motion[2] * sine + motion[3] * cosine,
            motion[4]);
        current.step(0.0, 0.0, 0.0, 0.0, motion[4]);
        walk.covariance(covariance, 0);
        double variance = covariance[1];
        current.covariance(covariance, 0);
        spreads[leg] = Math.sqrt(variance + covariance[1] / (made * made));
      }
    }
    return spreads;
  }

  /** Motion through the water and of it, east and north, since the look before, and how long. */
  private static boolean motion(Candidate candidate, int look, boolean bridged, double[] out) {
    double seconds = candidate.time[look] - candidate.time[look - 1];
    if (!(seconds > 0.0)) {
      return false;
    }
    double latitude = 0.5 * (candidate.latitude[look] + candidate.latitude[look - 1]);
    double turned =
        Math.IEEEremainder(candidate.longitude[look] - candidate.longitude[look - 1], 360.0);
    double overGroundEast = turned * PlaneMetres.east(latitude) / seconds;
    double overGroundNorth =
        (candidate.latitude[look] - candidate.latitude[look - 1])
            * PlaneMetres.north(latitude)
            / seconds;
    double streamEast = 0.5 * (candidate.streamEast[look] + candidate.streamEast[look - 1]);
    double streamNorth = 0.5 * (candidate.streamNorth[look] + candidate.streamNorth[look - 1]);
    if (bridged && Double.isNaN(streamEast + streamNorth)) {
      streamEast = out[2];
      streamNorth = out[3];
    }
    out[0] = overGroundEast - streamEast;
    out[1] = overGroundNorth - streamNorth;
    out[2] = streamEast;
    out[3] = streamNorth;
    out[4] = seconds;
    return true;
  }
}
