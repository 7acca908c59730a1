package org.ferryglide.nav.reckon;

import java.util.Arrays;

/**
 * How the error of a position grows step by step along a path: the lean form of an {@link
 * ErrorBudget}, for plans that ask at every minute of thousands of departures.
 *
 * <p>It keeps a workspace, so that one object serves one thread; it allocates nothing once made. At
 * every moment the covariance is that of the budget of the runs walked so far, within rounding.
 *
 * <pre>{@code
 * ErrorWalk walk = ErrorWalk.of(ErrorModel.usual());
 * double[] covariance = new double[3];
 * walk.step(1.5, 0.9, 0.2, -0.4, 60.0); // a minute to the north-east in a stream
 * walk.covariance(covariance, 0);
 * }</pre>
 */
public final class ErrorWalk {
  /** Where {@link #covariance} writes the variance to the east, after the offset. */
  public static final int EAST = 0;

  /** Where {@link #covariance} writes the variance to the north, after the offset. */
  public static final int NORTH = 1;

  /** Where {@link #covariance} writes the covariance of the two, after the offset. */
  public static final int EAST_NORTH = 2;

  private static final int WATER_TURNED = 0;
  private static final int WATER = 1;
  private static final int STREAM_TURNED = 2;
  private static final int STREAM = 3;
  private static final int GROUND_TURNED = 4;
  private static final int KINDS = 5;

  private final double intervalSeconds;
  private final double[] constantVariance = new double[KINDS];
  private final double[] independentVariance = new double[KINDS];
  private final double currentConstant;
  private final double currentIndependent;
  private final double fixedVariance;

  /** East and north of each kind: what was walked before this interval, and in it. */
  private final double[] before = new double[2 * KINDS];

  private final double[] within = new double[2 * KINDS];

  /** Squares of the intervals walked before: east, north, east with north. */
  private final double[] squares = new double[3 * KINDS];

  private double seconds;
  private double secondsWithin;
  private double squaredIntervals;

  private ErrorWalk(ErrorModel model) {
    intervalSeconds = model.intervalSeconds();
    for (ErrorSource source : ErrorSource.values()) {
      int kind = kind(source);
      if (kind >= 0) {
        Spread spread = model.spread(source);
        constantVariance[kind] += spread.constant() * spread.constant();
        independentVariance[kind] += spread.independent() * spread.independent();
      }
    }
    Spread current = model.spread(ErrorSource.OTHER_CURRENT);
    currentConstant = current.constant() * current.constant();
    currentIndependent = current.independent() * current.independent();
    Spread plotted = model.spread(ErrorSource.PLOTTED_POSITION);
    fixedVariance =
        plotted.constant() * plotted.constant() + plotted.independent() * plotted.independent();
  }

  /**
   * A walk that has not begun.
   *
   * @param model how large the errors are
   * @return the walk, from a place known exactly
   */
  public static ErrorWalk of(ErrorModel model) {
    return new ErrorWalk(model);
  }

  private static int kind(ErrorSource source) {
    return switch (source) {
      case COMPASS, VARIATION, DEVIATION, LEEWAY -> WATER_TURNED;
      case SPEED -> WATER;
      case STREAM_SET -> STREAM_TURNED;
      case STREAM_RATE -> STREAM;
      case PLOTTED_DIRECTION -> GROUND_TURNED;
      default -> -1;
    };
  }

  /** Begins again from a place known exactly, for example after a stop ashore. */
  public void reset() {
    Arrays.fill(before, 0.0);
    Arrays.fill(within, 0.0);
    Arrays.fill(squares, 0.0);
    seconds = 0.0;
    secondsWithin = 0.0;
    squaredIntervals = 0.0;
  }

  /**
   * Goes on for a while with everything the same.
   *
   * @param waterEastMetresPerSecond velocity through the water to the east, metres a second
   * @param waterNorthMetresPerSecond the same to the north
   * @param streamEastMetresPerSecond where the water goes, to the east, metres a second
   * @param streamNorthMetresPerSecond the same to the north
   * @param durationSeconds how long, seconds, at least 0
   */
  public void step(
      double waterEastMetresPerSecond,
      double waterNorthMetresPerSecond,
      double streamEastMetresPerSecond,
      double streamNorthMetresPerSecond,
      double durationSeconds) {
    double left = durationSeconds;
    while (left > 0.0) {
      double dt = Math.min(left, intervalSeconds - secondsWithin);
      double perDegree = Math.toRadians(dt);
      add(
          WATER_TURNED,
          waterNorthMetresPerSecond * perDegree,
          -waterEastMetresPerSecond * perDegree);
      add(WATER, waterEastMetresPerSecond * dt, waterNorthMetresPerSecond * dt);
      add(
          STREAM_TURNED,
          streamNorthMetresPerSecond * perDegree,
          -streamEastMetresPerSecond * perDegree);
      add(STREAM, streamEastMetresPerSecond * dt, streamNorthMetresPerSecond * dt);
      add(
          GROUND_TURNED,
          (waterNorthMetresPerSecond + streamNorthMetresPerSecond) * perDegree,
          -(waterEastMetresPerSecond + streamEastMetresPerSecond) * perDegree);
      seconds += dt;
      secondsWithin += dt;
      left -= dt;
      if (secondsWithin >= intervalSeconds * (1.0 - 1e-12)) { // the sum of steps may fall short
        closeInterval();
      }
    }
  }

  private void add(int kind, double east, double north) {
    within[2 * kind] += east;
    within[2 * kind + 1] += north;
  }

  private void closeInterval() {
    for (int kind = 0; kind < KINDS; kind++) {
      double east = within[2 * kind];
      double north = within[2 * kind + 1];
      before[2 * kind] += east;
      before[2 * kind + 1] += north;
      squares[3 * kind] += east * east;
      squares[3 * kind + 1] += north * north;
      squares[3 * kind + 2] += east * north;
      within[2 * kind] = 0.0;
      within[2 * kind + 1] = 0.0;
    }
    squaredIntervals += secondsWithin * secondsWithin;
    secondsWithin = 0.0;
  }

  /**
   * How uncertain the position is now.
   *
   * @param out receives the variance to the east, that to the north and the covariance of the two,
   *     square metres; NaN if a step was NaN
   * @param offset index of the first
   */
  public void covariance(double[] out, int offset) {
    double round =
        fixedVariance
            + currentConstant * seconds * seconds
            + currentIndependent * (squaredIntervals + secondsWithin * secondsWithin);
    double east = round;
    double north = round;
    double cross = 0.0;
    for (int kind = 0; kind < KINDS; kind++) {
      double e = within[2 * kind];
      double n = within[2 * kind + 1];
      double wholeEast = before[2 * kind] + e;
      double wholeNorth = before[2 * kind + 1] + n;
      double constant = constantVariance[kind];
      double independent = independentVariance[kind];
      east += constant * wholeEast * wholeEast + independent * (squares[3 * kind] + e * e);
      north += constant * wholeNorth * wholeNorth + independent * (squares[3 * kind + 1] + n * n);
      cross += constant * wholeEast * wholeNorth + independent * (squares[3 * kind + 2] + e * n);
    }
    out[offset + EAST] = east;
    out[offset + NORTH] = north;
    out[offset + EAST_NORTH] = cross;
  }
}
