package org.ferryglide.nav.passage;

import org.ferryglide.nav.reckon.ErrorWalk;

/** How the error of the position grows along the way; ashore it is nothing again. */
final class Widths {
  /** Radius of the 95 % ellipse in standard deviations: √(-2 ln 0.05). */
  static final double SIGMAS_95 = Math.sqrt(-2.0 * Math.log(0.05));

  private Widths() {}

  static double[] of(Candidate candidate) {
    double[] covariances = covariances(candidate);
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
    ErrorWalk walk = ErrorWalk.of(candidate.passage.errors());
    double[] all = new double[3 * candidate.size];
    for (int look = 0; look < candidate.size; look++) {
      boolean begins = look == 0 || candidate.leg[look] != candidate.leg[look - 1];
      if (begins && look > 0 && candidate.isAshoreBefore(candidate.leg[look])) {
        walk.reset();
      } else if (!begins) {
        step(walk, candidate, look);
      }
      walk.covariance(all, 3 * look);
    }
    return all;
  }

  private static void step(ErrorWalk walk, Candidate candidate, int look) {
    double seconds = candidate.time[look] - candidate.time[look - 1];
    if (!(seconds > 0.0)) {
      return;
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
    walk.step(
        overGroundEast - streamEast,
        overGroundNorth - streamNorth,
        streamEast,
        streamNorth,
        seconds);
  }
}
