package org.ferryglide.nav.passage;

import java.util.Arrays;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorWalk;
import org.ferryglide.nav.steer.SteeredLeg;

/**
 * What the errors of a passage make of the way of one candidate; ashore they are nothing again.
 *
 * <p>Within one interval of the error model only the sum of the way counts, not how it came about.
 * So the way is summed up once, and an error walks along it in a few long strides, to those looks
 * only that are asked for.
 */
final class ErrorsAlong {
  /** Radius of the 95 % ellipse in standard deviations: √(-2 ln 0.05). */
  static final double SIGMAS_95 = Math.sqrt(-2.0 * Math.log(0.05));

  private static final double NOT_ASKED = -1.0;

  /** So near the end of an interval it is over, as a share of it. */
  private static final double ROUNDING = 1e-9;

  private final Candidate candidate;
  private final Columns columns;
  private final WorkRoom room;
  private final boolean exact;
  private final double interval;

  /** By leg, the look at which the party was last launched. */
  private final int[] launches;

  private final double[] covariance = new double[3];

  /** Where the walk of the place stands: from which launch, and at which look. */
  private int launched = -1;

  private int reached;

  ErrorsAlong(Candidate candidate, Columns columns) {
    this.candidate = candidate;
    this.columns = columns;
    room = candidate.room();
    exact = candidate.passage.errors().equals(ErrorModel.none());
    interval = Seconds.of(candidate.passage.errors().interval());
    launches = new int[candidate.route.legs().size()];
    for (int leg = 1; leg < launches.length; leg++) {
      launches[leg] =
          candidate.isAshoreBefore(leg) ? candidate.firstLookOf(leg) : launches[leg - 1];
    }
    Arrays.fill(columns.halfWidth, 0, candidate.size, NOT_ASKED);
    sum();
  }

  /**
   * Adds up the way through the water and of the water; the stream's part stays what it was where
   * it is not known. What lies behind a gap of the stream is struck out of the growth, until the
   * party is launched again.
   */
  private void sum() {
    double perMetrePaddled = SIGMAS_95 * room.growthPaddled();
    double perMetreCarried = SIGMAS_95 * room.growthCarried();
    double perSecond = SIGMAS_95 * room.growthInTime();
    double carriedEast = 0.0;
    double carriedNorth = 0.0;
    double sumPaddledEast = 0.0;
    double sumPaddledNorth = 0.0;
    double sumCarriedEast = 0.0;
    double sumCarriedNorth = 0.0;
    double elapsed = 0.0;
    double growth = 0.0;
    boolean known = true;
    for (int look = 0; look < candidate.size; look++) {
      double seconds = candidate.seconds[look];
      if (seconds > 0.0) {
        double east = 0.5 * (candidate.streamEast[look] + candidate.streamEast[look - 1]);
        double north = 0.5 * (candidate.streamNorth[look] + candidate.streamNorth[look - 1]);
        if (Double.isNaN(east + north)) {
          known = false;
        } else {
          carriedEast = east;
          carriedNorth = north;
        }
        double paddledEast = candidate.groundEast[look] - carriedEast;
        double paddledNorth = candidate.groundNorth[look] - carriedNorth;
        growth +=
            seconds
                * (perMetrePaddled * PlaneMetres.length(paddledEast, paddledNorth)
                    + perMetreCarried * PlaneMetres.length(carriedEast, carriedNorth)
                    + perSecond);
        sumPaddledEast += paddledEast * seconds;
        sumPaddledNorth += paddledNorth * seconds;
        sumCarriedEast += carriedEast * seconds;
        sumCarriedNorth += carriedNorth * seconds;
        elapsed += seconds;
      } else if (look == launches[candidate.leg[look]]) {
        known = true;
      }
      columns.growth[look] = known ? growth : Double.NaN;
      columns.paddledEast[look] = sumPaddledEast;
      columns.paddledNorth[look] = sumPaddledNorth;
      columns.carriedEast[look] = sumCarriedEast;
      columns.carriedNorth[look] = sumCarriedNorth;
      columns.elapsed[look] = elapsed;
    }
  }

  /**
   * Half the width of the band in which the party is 95 times in a hundred, metres: the longer axis
   * of its ellipse, whatever the way it lies; NaN from the first gap of the stream on, until the
   * next stop ashore.
   */
  double halfWidth95(int look) {
    if (exact || Double.isNaN(columns.growth[look])) {
      return columns.growth[look];
    }
    if (columns.halfWidth[look] == NOT_ASKED) {
      columns.halfWidth[look] = worked(look);
    }
    return columns.halfWidth[look];
  }

  private double worked(int look) {
    walkTo(look);
    double half = PlaneMetres.length(0.5 * (covariance[0] - covariance[1]), covariance[2]);
    return SIGMAS_95 * Math.sqrt(0.5 * (covariance[0] + covariance[1]) + half);
  }

  /**
   * A sum along the way that grows by at least as much as {@link #halfWidth95} does between two
   * looks: by the triangle inequality for standard deviations, the error picked up on each bit of
   * the way and in each second being added at its full length. NaN where the width is not known.
   */
  double growth(int look) {
    return columns.growth[look];
  }

  /** How sure the place is at a look, with gaps of the stream bridged by what was known last. */
  Covariance covariance(int look) {
    walkTo(look);
    return new Covariance(covariance[0], covariance[1], covariance[2]);
  }

  private void walkTo(int look) {
    if (exact) {
      return; // the covariance stays nothing
    }
    int launch = launches[candidate.leg[look]];
    boolean goesOn = room.isWalkedBy(this) && launch == launched && look >= reached;
    ErrorWalk walk = room.place(this);
    if (!goesOn) {
      walk.reset();
      launched = launch;
      reached = launch;
    }
    walk(walk, reached, look, columns.elapsed[launch], 1.0, 0.0);
    reached = look;
    walk.covariance(covariance, 0);
  }

  /**
   * Standard deviation of the time at which each leg is finished, seconds, for a party that finds
   * every way point: what is lost or gained along the legs adds up whatever way they turn. A stop
   * ashore of some minutes passes the lateness on, one until something happens takes it up.
   */
  double[] arrivals() {
    if (exact) {
      return new double[launches.length];
    }
    ErrorWalk walk = room.lateness();
    ErrorWalk current = room.current();
    double[] spreads = new double[launches.length];
    double began = 0.0;
    for (int leg = 0; leg < spreads.length; leg++) {
      int first = candidate.firstLookOf(leg);
      int last = candidate.lastLookOf(leg);
      if (leg > 0 && candidate.waitsBefore(leg)) {
        walk.reset();
        current.reset();
        began = columns.elapsed[first];
      }
      double seconds = columns.elapsed[last] - columns.elapsed[first];
      if (seconds > 0.0) {
        SteeredLeg steered = candidate.route.legs().get(leg);
        double course = Math.toRadians(steered.leg().initialCourse().degrees());
        double made = steered.speedMadeGood().metresPerSecond();
        // along the leg is north here, and a metre the time it takes
        walk(walk, first, last, began, Math.cos(course) / made, Math.sin(course) / made);
        current.step(0.0, 0.0, 0.0, 0.0, seconds);
        walk.covariance(covariance, 0);
        double variance = covariance[1];
        current.covariance(covariance, 0);
        spreads[leg] = Math.sqrt(variance + covariance[1] / (made * made));
      }
    }
    return spreads;
  }

  /**
   * Walks from one look to a later one, turned and stretched, in strides that end with the
   * intervals of the error model.
   *
   * @param began seconds on the way at which the first interval began
   */
  private void walk(ErrorWalk walk, int from, int to, double began, double cosine, double sine) {
    double[] elapsed = columns.elapsed;
    double time = elapsed[from];
    double paddledEast = columns.paddledEast[from];
    double paddledNorth = columns.paddledNorth[from];
    double carriedEast = columns.carriedEast[from];
    double carriedNorth = columns.carriedNorth[from];
    int look = from;
    while (time < elapsed[to]) {
      double over = Math.floor((time - began) / interval + ROUNDING) + 1.0;
      double next = Math.min(elapsed[to], began + over * interval);
      while (elapsed[look] < next) {
        look++;
      }
      double back = (elapsed[look] - next) / (elapsed[look] - elapsed[look - 1]);
      double stride = next - time;
      double east = before(columns.paddledEast, look, back) - paddledEast;
      double north = before(columns.paddledNorth, look, back) - paddledNorth;
      double setEast = before(columns.carriedEast, look, back) - carriedEast;
      double setNorth = before(columns.carriedNorth, look, back) - carriedNorth;
      walk.step(
          (east * cosine - north * sine) / stride,
          (east * sine + north * cosine) / stride,
          (setEast * cosine - setNorth * sine) / stride,
          (setEast * sine + setNorth * cosine) / stride,
          stride);
      paddledEast += east;
      paddledNorth += north;
      carriedEast += setEast;
      carriedNorth += setNorth;
      time = next;
    }
  }

  /** A sum so much of a step before a look. */
  private static double before(double[] sums, int look, double back) {
    return sums[look] - back * (sums[look] - sums[look - 1]);
  }
}
