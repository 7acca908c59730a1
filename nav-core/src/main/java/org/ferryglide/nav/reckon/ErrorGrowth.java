package org.ferryglide.nav.reckon;

import java.util.List;

/**
 * How far a unit of each error has carried the position by the end of a passage, to first order.
 *
 * <p>A constant error adds up over the whole way before it is squared; an independent one is
 * squared for each interval and then added. Intervals are counted from the start.
 */
final class ErrorGrowth {

  /** The errors that carry the position in one direction; the others carry it in two. */
  private static final ErrorSource[] DIRECTED = {
    ErrorSource.COMPASS,
    ErrorSource.SPEED,
    ErrorSource.STREAM_SET,
    ErrorSource.STREAM_RATE,
    ErrorSource.PLOTTED_DIRECTION
  };

  private final double[][] constant = new double[DIRECTED.length][2];
  private final double[][] independent = new double[DIRECTED.length][3];
  private final double[][] partial = new double[DIRECTED.length][2];
  private double seconds;
  private double squaredIntervals;
  private double inInterval;

  ErrorGrowth(List<SteadyRun> runs, double intervalSeconds) {
    for (SteadyRun run : runs) {
      double left = run.seconds();
      double ve = run.throughWater().eastMetresPerSecond();
      double vn = run.throughWater().northMetresPerSecond();
      double ue = run.stream().eastMetresPerSecond();
      double un = run.stream().northMetresPerSecond();
      while (left > 0.0) {
        double dt = Math.min(left, intervalSeconds - inInterval);
        grow(ve, vn, ue, un, dt);
        left -= dt;
        inInterval += dt;
        if (inInterval >= intervalSeconds * (1.0 - 1e-12)) {
          close();
        }
      }
    }
    close();
  }

  private void grow(double ve, double vn, double ue, double un, double dt) {
    double perDegree = Math.toRadians(dt);
    add(0, vn * perDegree, -ve * perDegree); // the bow turned to starboard by a degree
    add(1, ve * dt, vn * dt); // faster by its own speed
    add(2, un * perDegree, -ue * perDegree);
    add(3, ue * dt, un * dt);
    add(4, (vn + un) * perDegree, -(ve + ue) * perDegree); // the whole plot turned
    seconds += dt;
  }

  private void add(int source, double east, double north) {
    partial[source][0] += east;
    partial[source][1] += north;
  }

  private void close() {
    for (int i = 0; i < DIRECTED.length; i++) {
      double east = partial[i][0];
      double north = partial[i][1];
      constant[i][0] += east;
      constant[i][1] += north;
      independent[i][0] += east * east;
      independent[i][1] += north * north;
      independent[i][2] += east * north;
      partial[i][0] = 0.0;
      partial[i][1] = 0.0;
    }
    squaredIntervals += inInterval * inInterval;
    inInterval = 0.0;
  }

  /** The covariance a constant error of one standard deviation leads to. */
  Covariance constantPart(ErrorSource source, double sigma) {
    double s2 = sigma * sigma;
    if (source == ErrorSource.OTHER_CURRENT || source == ErrorSource.PLOTTED_POSITION) {
      double scale = source == ErrorSource.OTHER_CURRENT ? seconds : 1.0;
      return new Covariance(s2 * scale * scale, s2 * scale * scale, 0.0);
    }
    double[] j = constant[indexOf(source)];
    return Covariance.bounded(s2 * j[0] * j[0], s2 * j[1] * j[1], s2 * j[0] * j[1]);
  }

  /** The covariance errors of one standard deviation lead to that are drawn anew every interval. */
  Covariance independentPart(ErrorSource source, double sigma) {
    double s2 = sigma * sigma;
    if (source == ErrorSource.OTHER_CURRENT || source == ErrorSource.PLOTTED_POSITION) {
      double scale = source == ErrorSource.OTHER_CURRENT ? squaredIntervals : 1.0;
      return new Covariance(s2 * scale, s2 * scale, 0.0);
    }
    double[] sum = independent[indexOf(source)];
    return Covariance.bounded(s2 * sum[0], s2 * sum[1], s2 * sum[2]);
  }

  /**
   * Adds what a later part of the passage has in common with the whole: the errors that stay the
   * same, each with its own growth over both, and those drawn anew during the part.
   */
  void addShared(
      ErrorGrowth part,
      ErrorSource source,
      double constantSigma,
      double newSigma,
      double[] out,
      int offset) {
    double s2 = constantSigma * constantSigma;
    if (source == ErrorSource.PLOTTED_POSITION) {
      return; // every position is pricked anew
    }
    if (source == ErrorSource.OTHER_CURRENT) {
      out[offset + ErrorBudget.EAST_EAST] += s2 * seconds * part.seconds;
      out[offset + ErrorBudget.NORTH_NORTH] += s2 * seconds * part.seconds;
    } else {
      double[] whole = constant[indexOf(source)];
      double[] later = part.constant[indexOf(source)];
      out[offset + ErrorBudget.EAST_EAST] += s2 * whole[0] * later[0];
      out[offset + ErrorBudget.EAST_NORTH] += s2 * whole[0] * later[1];
      out[offset + ErrorBudget.NORTH_EAST] += s2 * whole[1] * later[0];
      out[offset + ErrorBudget.NORTH_NORTH] += s2 * whole[1] * later[1];
    }
    Covariance anew = part.independentPart(source, newSigma);
    out[offset + ErrorBudget.EAST_EAST] += anew.eastVariance();
    out[offset + ErrorBudget.EAST_NORTH] += anew.eastNorthCovariance();
    out[offset + ErrorBudget.NORTH_EAST] += anew.eastNorthCovariance();
    out[offset + ErrorBudget.NORTH_NORTH] += anew.northVariance();
  }

  private static int indexOf(ErrorSource source) {
    return switch (source) {
      case COMPASS, VARIATION, DEVIATION, LEEWAY -> 0;
      case SPEED -> 1;
      case STREAM_SET -> 2;
      case STREAM_RATE -> 3;
      case PLOTTED_DIRECTION -> 4;
      default -> throw new IllegalArgumentException("no direction: " + source);
    };
  }
}
