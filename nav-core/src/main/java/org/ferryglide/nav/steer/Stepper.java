package org.ferryglide.nav.steer;

/**
 * Follows two numbers through time from break point to break point, in steps of {@link
 * DormandPrince} as long as their error allows.
 *
 * <p>No stage is taken at a break point itself but a microsecond inside it, so that a table held in
 * hourly steps gives the step's own value up to its end. One object follows one craft and is not
 * shared between threads; nothing is allocated while it runs.
 */
abstract class Stepper extends DormandPrince {
  /** Error allowed for one step, metres. */
  private static final double STEP_ERROR_METRES = 1e-4;

  // The error of order 4 goes with the fifth power of the step. The next step is aimed at less than
  // the error allowed and changed with restraint, as is usual, so that few are tried in vain.
  private static final double ERROR_POWER = -1.0 / 5.0;
  private static final double RESTRAINT = 0.9;
  private static final double MOST_SHORTENED = 0.1;
  private static final double MOST_LENGTHENED = 5.0;

  /** Steps grow where the error is below this share of that allowed. */
  private static final double SMALL_ERROR = 0.2;

  /** A smaller share than this lengthens a step no more. */
  private static final double SMALLEST_ERROR = 1e-6;

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
  private static final double LONGER = 4.0;
  private static final double LONGEST_SHORTEST_STEP = 60.0;

  /**
   * A step fits what moves the craft where the rates between its stages differ by less from those
   * of the cubic through its ends, metres a second.
   */
  private static final double FAIR_METRES_PER_SECOND = 0.1;

  /** How finely the moment is found at which a craft can go no further, seconds. */
  private static final double FAILURE_STEP = 0.25;

  /** How far inside a break point a stage is taken, seconds; a double of 2026 resolves 2e-7. */
  private static final double INSIDE_BREAK = 1e-6;

  /** A rest shorter than this is taken together with the step before it, seconds. */
  private static final double NO_TIME = 1e-6;

  /** So much more than a whole number of steps is rounding. */
  private static final double ROUNDING_OF_STEPS = 1e-9;

  /** How a stretch from one break point to the next ended. */
  private enum End {
    AT_BREAK,
    STOPPED,
    FAILED
  }

  private double shortestStep = SHORTEST_STEP;
  private int shortSteps;

  /** First break point strictly later, seconds. */
  abstract double nextBreakAfter(double time);

  /** The longest step worth trusting toward a break point, seconds. */
  abstract double longestStep(double toBreak);

  /**
   * How far apart in time the field is looked at along a step at most, seconds: a gate that lies
   * between two stages of a long step would be stepped over. Infinite where place does not matter.
   */
  double lookEvery() {
    return Double.POSITIVE_INFINITY;
  }

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

  /** How far it has got, seconds since 1970. */
  final double time() {
    return time;
  }

  /** The first number there. */
  final double state0() {
    return state0;
  }

  /** The second number there. */
  final double state1() {
    return state1;
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
      End ended = runTo(end);
      if (ended != End.AT_BREAK) {
        return ended == End.STOPPED;
      }
    }
    return true;
  }

  /** Steps up to a break point or the end, no further. */
  private End runTo(double end) {
    double start = time;
    double longest = longestStep(end - start);
    double inside = Math.min(INSIDE_BREAK, 0.25 * (end - start));
    earliest = start + inside;
    latest = end - inside;
    if (!ratesAt(time, state0, state1)) {
      return End.FAILED;
    }
    startRate0 = rate0;
    startRate1 = rate1;
    setOut();
    double wanted = (end - start) / stepsOf(longest, end - start);
    while (time < end) {
      boolean last = time + wanted >= end - NO_TIME;
      double step = last ? end - time : wanted;
      if (!tryStep(step)) {
        if (step <= FAILURE_STEP) {
          return End.FAILED;
        }
        wanted = step / 2.0;
        continue;
      }
      double error = difference * metresPerUnit() / STEP_ERROR_METRES;
      if (error > 1.0 && step > shortestStep) {
        wanted = Math.max(shortestStep, shortened(step, error));
        continue;
      }
      if (step > lookEvery() && !isFair(step)) {
        wanted = 0.5 * step;
        continue;
      }
      if (step < SHORT_STEP || error > 1.0) {
        countShort();
      }
      if (Double.isNaN(error)) {
        return End.FAILED;
      }
      if (goOn(last ? end : time + step)) {
        return End.STOPPED;
      }
      if (error < SMALL_ERROR && wanted < longest) {
        wanted = lengthened(wanted, error);
      }
      wanted = Math.min(longest, Math.max(wanted, shortestStep));
    }
    return End.AT_BREAK;
  }

  /** Looks along the step tried; the rates are those at its end again where it is fair. */
  private boolean isFair(double step) {
    double end0 = rate0;
    double end1 = rate1;
    double most = FAIR_METRES_PER_SECOND / metresPerUnit();
    int parts = (int) Math.ceil(step / lookEvery());
    for (int i = 1; i < parts; i++) {
      double part = (double) i / parts;
      if (!ratesAt(
          time + part * step,
          HermiteCubic.value(part, step, state0, next0, startRate0, end0),
          HermiteCubic.value(part, step, state1, next1, startRate1, end1))) {
        return false;
      }
      double off0 = rate0 - HermiteCubic.rate(part, step, state0, next0, startRate0, end0);
      double off1 = rate1 - HermiteCubic.rate(part, step, state1, next1, startRate1, end1);
      if (!(Math.abs(off0) + Math.abs(off1) <= most)) {
        return false;
      }
    }
    return ratesAt(time + step, next0, next1);
  }

  /** How many steps as long as allowed make a stretch. */
  private static double stepsOf(double longest, double stretch) {
    return Math.max(1.0, Math.ceil(stretch / longest - ROUNDING_OF_STEPS));
  }

  private static double shortened(double step, double error) {
    return step * Math.max(MOST_SHORTENED, RESTRAINT * Math.pow(error, ERROR_POWER));
  }

  private static double lengthened(double step, double error) {
    double factor = RESTRAINT * Math.pow(Math.max(error, SMALLEST_ERROR), ERROR_POWER);
    return step * Math.min(MOST_LENGTHENED, factor);
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

  private void countShort() {
    shortSteps++;
    if (shortSteps % SHORT_STEPS == 0) {
      shortestStep = Math.min(LONGEST_SHORTEST_STEP, LONGER * shortestStep);
    }
  }
}
