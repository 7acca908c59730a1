package org.ferryglide.nav.steer;

/**
 * Follows two numbers through time by the embedded Runge-Kutta pair of Dormand and Prince, order 5
 * with an error estimate of order 4, from break point to break point.
 *
 * <p>No stage is taken at a break point itself but a microsecond inside it, so that a table held in
 * hourly steps gives the step's own value up to its end. One object follows one craft and is not
 * shared between threads; nothing is allocated while it runs.
 *
 * <p>Coefficients: Dormand and Prince (1980), J. Comput. Appl. Math. 6, 19, RK5(4)7M, DOI
 * 10.1016/0771-050X(80)90013-3.
 */
abstract class Stepper {
  // The tableau: A for the stages, B for the step, E for the difference of the two orders. Stages
  // two to four have fractions short enough to stand where they are used.
  private static final double A51 = 19372.0 / 6561.0;
  private static final double A52 = -25360.0 / 2187.0;
  private static final double A53 = 64448.0 / 6561.0;
  private static final double A54 = -212.0 / 729.0;
  private static final double A61 = 9017.0 / 3168.0;
  private static final double A62 = -355.0 / 33.0;
  private static final double A63 = 46732.0 / 5247.0;
  private static final double A64 = 49.0 / 176.0;
  private static final double A65 = -5103.0 / 18656.0;
  private static final double B1 = 35.0 / 384.0;
  private static final double B3 = 500.0 / 1113.0;
  private static final double B4 = 125.0 / 192.0;
  private static final double B5 = -2187.0 / 6784.0;
  private static final double B6 = 11.0 / 84.0;
  private static final double E1 = 71.0 / 57600.0;
  private static final double E3 = -71.0 / 16695.0;
  private static final double E4 = 71.0 / 1920.0;
  private static final double E5 = -17253.0 / 339200.0;
  private static final double E6 = 22.0 / 525.0;
  private static final double E7 = -1.0 / 40.0;

  /** Error allowed for one step, metres. */
  private static final double STEP_ERROR_METRES = 1e-4;

  /** Where a field is not smooth steps stop shrinking here; at 5 m/s that is 10 mm, seconds. */
  private static final double SHORTEST_STEP = 2e-3;

  /**
   * A path that keeps meeting a jump of the field runs along it, pushed to it from both sides. Each
   * time so many steps were shorter than a second, which a dozen plain crossings of a jump take, or
   * could not be shortened to what their error asks for, the shortest step is made four times
   * longer for the rest of the path: one that never arrives takes a minute for a step in the end.
   */
  private static final int SHORT_STEPS = 100;

  private static final double SHORT_STEP = 1.0;
  private static final double LONGEST_SHORTEST_STEP = 60.0;

  private double shortestStep = SHORTEST_STEP;
  private int shortSteps;

  /** How finely the moment is found at which a craft can go no further, seconds. */
  private static final double FAILURE_STEP = 0.25;

  /** How far inside a break point a stage is taken, seconds; a double of 2026 resolves 2e-7. */
  private static final double INSIDE_BREAK = 1e-6;

  /** Now, and the state now. */
  double time;

  double state0;
  double state1;

  /** Rates of the two numbers, as {@link #rates} left them. */
  double rate0;

  double rate1;

  /** Bounds of the times at which stages are taken. */
  private double earliest;

  private double latest;

  /** Rates from which a step is tried. */
  private double startRate0;

  private double startRate1;

  /** Where the step tried leads, and its error in units of the error allowed. */
  private double next0;

  private double next1;
  private double error;

  /** Rates at a time and state into {@link #rate0} and {@link #rate1}; false if there are none. */
  abstract boolean rates(double time, double state0, double state1);

  /** First break point strictly later, seconds. */
  abstract double nextBreakAfter(double time);

  /** The longest step worth trusting toward a break point, seconds. */
  abstract double longestStep(double toBreak);

  /** Metres for a unit of the first and of the second number, for the error estimate. */
  abstract double metresPerUnit();

  /**
   * Told of every step with the rates at both its ends.
   *
   * @return true to stop here
   */
  boolean stepped(double fromTime, double from0, double from1, double fromRate0, double fromRate1) {
    return false;
  }

  /**
   * Told of the rates at the start and just after each break point, before the first step from
   * there.
   */
  void setOut() {}

  /**
   * Whether the path ran along a jump of the field, to either side of it in turn by steps that grew
   * with time: it may have got past the jump by metres before it could.
   */
  final boolean isRough() {
    return shortSteps >= SHORT_STEPS;
  }

  /** Puts the craft at a time and place. */
  final void start(double time, double state0, double state1) {
    this.time = time;
    this.state0 = state0;
    this.state1 = state1;
    shortestStep = SHORTEST_STEP;
    shortSteps = 0;
  }

  /**
   * Runs until a time, or until {@link #stepped} stops it.
   *
   * @return false if {@link #rates} failed; time and state are then where it still worked
   */
  final boolean runUntil(double until) {
    while (time < until) {
      double end = Math.min(nextBreakAfter(time), until);
      if (!(end > time)) {
        return false; // NaN
      }
      int ended = runTo(end);
      if (ended != RUNNING) {
        return ended == STOPPED;
      }
    }
    return true;
  }

  private static final int RUNNING = 0;
  private static final int STOPPED = 1;
  private static final int FAILED = 2;

  private boolean at(double stage, double y0, double y1) {
    double inside = stage < earliest ? earliest : stage > latest ? latest : stage;
    return rates(inside, y0, y1);
  }

  /** Steps up to a break point or the end, no further. */
  private int runTo(double end) {
    double start = time;
    double longest = longestStep(end - start);
    int steps = (int) Math.ceil((end - start) / longest - 1e-9);
    double h = (end - start) / Math.max(1, steps);
    double inside = Math.min(INSIDE_BREAK, 0.25 * (end - start));
    earliest = start + inside;
    latest = end - inside;
    if (!at(time, state0, state1)) {
      return FAILED;
    }
    startRate0 = rate0;
    startRate1 = rate1;
    setOut();
    while (time < end) {
      boolean last = time + h >= end - 1e-6;
      double step = last ? end - time : h;
      if (!stages(step)) {
        if (step <= FAILURE_STEP) {
          return FAILED;
        }
        h = step / 2.0;
        continue;
      }
      if (error > 1.0 && step > shortestStep) {
        h = Math.max(shortestStep, step * Math.max(0.1, 0.9 * Math.pow(error, -0.2)));
        continue;
      }
      if (step < SHORT_STEP || error > 1.0) {
        countShort();
      }
      if (Double.isNaN(error)) {
        return FAILED;
      }
      if (goOn(last ? end : time + step)) {
        return STOPPED;
      }
      if (error < 0.2 && h < longest) {
        h = Math.min(longest, h * Math.min(5.0, 0.9 * Math.pow(Math.max(error, 1e-6), -0.2)));
      }
      h = Math.min(longest, Math.max(h, shortestStep));
    }
    return RUNNING;
  }

  /** Takes the step tried; true if {@link #stepped} stops it there. */
  private boolean goOn(double toTime) {
    double fromTime = time;
    double before0 = state0;
    double before1 = state1;
    time = toTime;
    state0 = next0;
    state1 = next1;
    if (stepped(fromTime, before0, before1, startRate0, startRate1)) {
      return true;
    }
    startRate0 = rate0;
    startRate1 = rate1;
    return false;
  }

  /**
   * Tries a step of Dormand and Prince from {@link #startRate0} and {@link #startRate1}: where it
   * leads, and its error in units of the error allowed. False where a stage has no rates.
   */
  private boolean stages(double step) {
    double y0 = state0;
    double y1 = state1;
    double a0 = startRate0;
    double a1 = startRate1;
    if (!at(time + step / 5.0, y0 + step * (a0 / 5.0), y1 + step * (a1 / 5.0))) {
      return false;
    }
    double b0 = rate0;
    double b1 = rate1;
    if (!at(
        time + step * 0.3,
        y0 + step * (3.0 / 40.0 * a0 + 9.0 / 40.0 * b0),
        y1 + step * (3.0 / 40.0 * a1 + 9.0 / 40.0 * b1))) {
      return false;
    }
    double c0 = rate0;
    double c1 = rate1;
    if (!at(
        time + step * 0.8,
        y0 + step * (44.0 / 45.0 * a0 - 56.0 / 15.0 * b0 + 32.0 / 9.0 * c0),
        y1 + step * (44.0 / 45.0 * a1 - 56.0 / 15.0 * b1 + 32.0 / 9.0 * c1))) {
      return false;
    }
    double d0 = rate0;
    double d1 = rate1;
    if (!at(
        time + step * (8.0 / 9.0),
        y0 + step * (A51 * a0 + A52 * b0 + A53 * c0 + A54 * d0),
        y1 + step * (A51 * a1 + A52 * b1 + A53 * c1 + A54 * d1))) {
      return false;
    }
    double e0 = rate0;
    double e1 = rate1;
    if (!at(
        time + step,
        y0 + step * (A61 * a0 + A62 * b0 + A63 * c0 + A64 * d0 + A65 * e0),
        y1 + step * (A61 * a1 + A62 * b1 + A63 * c1 + A64 * d1 + A65 * e1))) {
      return false;
    }
    double f0 = rate0;
    double f1 = rate1;
    next0 = y0 + step * (B1 * a0 + B3 * c0 + B4 * d0 + B5 * e0 + B6 * f0);
    next1 = y1 + step * (B1 * a1 + B3 * c1 + B4 * d1 + B5 * e1 + B6 * f1);
    if (!at(time + step, next0, next1)) {
      return false;
    }
    double error0 = E1 * a0 + E3 * c0 + E4 * d0 + E5 * e0 + E6 * f0 + E7 * rate0;
    double error1 = E1 * a1 + E3 * c1 + E4 * d1 + E5 * e1 + E6 * f1 + E7 * rate1;
    error = step * metresPerUnit() * (Math.abs(error0) + Math.abs(error1)) / STEP_ERROR_METRES;
    return true;
  }

  private void countShort() {
    shortSteps++;
    if (shortSteps % SHORT_STEPS == 0) {
      shortestStep = Math.min(LONGEST_SHORTEST_STEP, 4.0 * shortestStep);
    }
  }
}
