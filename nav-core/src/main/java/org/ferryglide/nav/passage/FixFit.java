package org.ferryglide.nav.passage;

import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.Spread;

/**
 * What a party's speed, or the stream's rate and time, would have to be for the printed headings to
 * have led to a fix: least squares, weighed by the errors of the fix and of the plan.
 */
final class FixFit {
  /**
   * No party and no table is trusted better than this, so that a fix can always teach something.
   */
  private static final double LEAST_SHARE = 0.1;

  private static final double LEAST_FIX_METRES = 10.0;
  private static final double TRIAL_SHARE = 0.05;
  private static final double TRIAL_SECONDS = 300.0;
  private static final double LEAST_FACTOR = 0.1;
  private static final double LONGEST_LATE = 3.0 * 3600.0;
  private static final int ROUNDS = 8;

  private final Candidate plan;
  private final PrintedHeadings printed;
  private final double time;
  private final double fixEast;
  private final double fixNorth;

  /** The inverse of the fix's covariance: east, north, both. */
  private final double weightEast;

  private final double weightNorth;
  private final double weightBoth;

  FixFit(Candidate plan, double time, double fixEast, double fixNorth, Covariance fix) {
    this.plan = plan;
    this.printed = new PrintedHeadings(plan);
    this.time = time;
    this.fixEast = fixEast;
    this.fixNorth = fixNorth;
    double least = LEAST_FIX_METRES * LEAST_FIX_METRES;
    double east = fix.eastVariance() + least;
    double north = fix.northVariance() + least;
    double both = fix.eastNorthCovariance();
    double determinant = east * north - both * both;
    weightEast = north / determinant;
    weightNorth = east / determinant;
    weightBoth = -both / determinant;
  }

  /** The factor of the speed and its standard deviation. */
  double[] speed() {
    double[] way = off(DrawnErrors.steady(1.0 - TRIAL_SHARE, 1.0, 0.0));
    double perShareEast = -way[0] / TRIAL_SHARE;
    double perShareNorth = -way[1] / TRIAL_SHARE;
    double sigma = trusted(ErrorSource.SPEED);
    double information =
        product(perShareEast, perShareNorth, perShareEast, perShareNorth) + 1.0 / (sigma * sigma);
    double share = product(perShareEast, perShareNorth, fixEast, fixNorth) / information;
    return new double[] {1.0 + share, 1.0 / Math.sqrt(information)};
  }

  /**
   * The factor of the rate and the seconds by which the stream is late, then their variances and
   * covariance.
   */
  double[] stream(double turnSeconds) {
    double rateSigma = trusted(ErrorSource.STREAM_RATE);
    double factor = 1.0;
    double late = 0.0;
    double[] answer = new double[5];
    for (int round = 0; round < ROUNDS; round++) {
      double[] now = off(DrawnErrors.steady(1.0, factor, late));
      double[] stronger = off(DrawnErrors.steady(1.0, factor + TRIAL_SHARE, late));
      double[] later = off(DrawnErrors.steady(1.0, factor, late + TRIAL_SECONDS));
      double rateEast = (stronger[0] - now[0]) / TRIAL_SHARE;
      double rateNorth = (stronger[1] - now[1]) / TRIAL_SHARE;
      double lateEast = (later[0] - now[0]) / TRIAL_SECONDS;
      double lateNorth = (later[1] - now[1]) / TRIAL_SECONDS;
      double missEast = fixEast - now[0];
      double missNorth = fixNorth - now[1];
      double rr = product(rateEast, rateNorth, rateEast, rateNorth) + 1.0 / (rateSigma * rateSigma);
      double ll =
          product(lateEast, lateNorth, lateEast, lateNorth) + 1.0 / (turnSeconds * turnSeconds);
      double rl = product(rateEast, rateNorth, lateEast, lateNorth);
      double r =
          product(rateEast, rateNorth, missEast, missNorth)
              - (factor - 1.0) / (rateSigma * rateSigma);
      double l =
          product(lateEast, lateNorth, missEast, missNorth) - late / (turnSeconds * turnSeconds);
      double determinant = rr * ll - rl * rl;
      factor = Math.max(LEAST_FACTOR, factor + (r * ll - l * rl) / determinant);
      late += (l * rr - r * rl) / determinant;
      late = Math.max(-LONGEST_LATE, Math.min(LONGEST_LATE, late));
      answer = new double[] {factor, late, ll / determinant, rr / determinant, -rl / determinant};
    }
    return answer;
  }

  private double trusted(ErrorSource source) {
    ErrorModel model = plan.passage.errors();
    Spread spread = model.spread(source);
    return Math.max(LEAST_SHARE, Math.hypot(spread.constant(), spread.independent()));
  }

  private double product(double east, double north, double otherEast, double otherNorth) {
    return east * (weightEast * otherEast + weightBoth * otherNorth)
        + north * (weightBoth * otherEast + weightNorth * otherNorth);
  }

  /** Metres east and north of the plan at the time of the fix. */
  private double[] off(DrawnErrors errors) {
    double[] all = new double[2 * plan.size];
    printed.steer(errors, all);
    int look = lookBefore(plan, time);
    double span = plan.time[look + 1] - plan.time[look];
    double part = span > 0.0 ? (time - plan.time[look]) / span : 0.0;
    return new double[] {
      all[2 * look] + part * (all[2 * look + 2] - all[2 * look]),
      all[2 * look + 1] + part * (all[2 * look + 3] - all[2 * look + 1])
    };
  }

  /** The last look of a leg under way that is not after a time, and not the leg's end. */
  static int lookBefore(Candidate plan, double time) {
    int found = 0;
    for (int look = 0; look < plan.size - 1; look++) {
      if (plan.time[look] <= time && plan.leg[look] == plan.leg[look + 1]) {
        found = look;
      }
    }
    return found;
  }
}
