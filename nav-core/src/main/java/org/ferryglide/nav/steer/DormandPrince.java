package org.ferryglide.nav.steer;

/**
 * One step of the embedded Runge-Kutta pair of Dormand and Prince for two numbers that change with
 * time, order 5 with an error estimate of order 4. {@link Stepper} decides how long a step is tried
 * and what becomes of it. Nothing is allocated.
 *
 * <p>Coefficients: Dormand and Prince (1980), J. Comput. Appl. Math. 6, 19, RK5(4)7M, DOI
 * 10.1016/0771-050X(80)90013-3.
 */
abstract class DormandPrince {
  // When each stage is taken, as a share of the step; the first is the start, the last two the end
  static final double C2 = 1.0 / 5.0;
  static final double C3 = 3.0 / 10.0;
  static final double C4 = 4.0 / 5.0;
  static final double C5 = 8.0 / 9.0;

  // From where: the rates of the stages before, weighted
  static final double A21 = 1.0 / 5.0;
  static final double A31 = 3.0 / 40.0;
  static final double A32 = 9.0 / 40.0;
  static final double A41 = 44.0 / 45.0;
  static final double A42 = -56.0 / 15.0;
  static final double A43 = 32.0 / 9.0;
  static final double A51 = 19372.0 / 6561.0;
  static final double A52 = -25360.0 / 2187.0;
  static final double A53 = 64448.0 / 6561.0;
  static final double A54 = -212.0 / 729.0;
  static final double A61 = 9017.0 / 3168.0;
  static final double A62 = -355.0 / 33.0;
  static final double A63 = 46732.0 / 5247.0;
  static final double A64 = 49.0 / 176.0;
  static final double A65 = -5103.0 / 18656.0;

  // Where the step leads, of order 5; from there the seventh stage is taken
  static final double B1 = 35.0 / 384.0;
  static final double B3 = 500.0 / 1113.0;
  static final double B4 = 125.0 / 192.0;
  static final double B5 = -2187.0 / 6784.0;
  static final double B6 = 11.0 / 84.0;

  // The difference from where the pair's other formula leads, of order 4
  static final double E1 = 71.0 / 57600.0;
  static final double E3 = -71.0 / 16695.0;
  static final double E4 = 71.0 / 1920.0;
  static final double E5 = -17253.0 / 339200.0;
  static final double E6 = 22.0 / 525.0;
  static final double E7 = -1.0 / 40.0;

  /** Now, and the state now. */
  double time;

  double state0;
  double state1;

  /** Rates of the two numbers, as {@link #rates} left them; after a step those at its end. */
  double rate0;

  double rate1;

  /** Rates from which a step is tried. */
  double startRate0;

  double startRate1;

  /** Stages are taken between these times only. */
  double earliest = Double.NEGATIVE_INFINITY;

  double latest = Double.POSITIVE_INFINITY;

  /** Where the step tried leads, and by how much the two formulas differ, a sum of both numbers. */
  double next0;

  double next1;
  double difference;

  /** Rates at a time and state into {@link #rate0} and {@link #rate1}; false if there are none. */
  abstract boolean rates(double time, double state0, double state1);

  final boolean ratesAt(double stage, double y0, double y1) {
    double inside = stage < earliest ? earliest : stage > latest ? latest : stage;
    return rates(inside, y0, y1);
  }

  /**
   * Tries a step from the state and {@link #startRate0}, {@link #startRate1} now, into {@link
   * #next0}, {@link #next1} and {@link #difference}; the state stays. False where a stage has no
   * rates.
   */
  final boolean tryStep(double step) {
    double y0 = state0;
    double y1 = state1;
    double a0 = startRate0;
    double a1 = startRate1;
    if (!ratesAt(time + C2 * step, y0 + step * (A21 * a0), y1 + step * (A21 * a1))) {
      return false;
    }
    double b0 = rate0;
    double b1 = rate1;
    if (!ratesAt(
        time + C3 * step, y0 + step * (A31 * a0 + A32 * b0), y1 + step * (A31 * a1 + A32 * b1))) {
      return false;
    }
    double c0 = rate0;
    double c1 = rate1;
    if (!ratesAt(
        time + C4 * step,
        y0 + step * (A41 * a0 + A42 * b0 + A43 * c0),
        y1 + step * (A41 * a1 + A42 * b1 + A43 * c1))) {
      return false;
    }
    double d0 = rate0;
    double d1 = rate1;
    if (!ratesAt(
        time + C5 * step,
        y0 + step * (A51 * a0 + A52 * b0 + A53 * c0 + A54 * d0),
        y1 + step * (A51 * a1 + A52 * b1 + A53 * c1 + A54 * d1))) {
      return false;
    }
    double e0 = rate0;
    double e1 = rate1;
    if (!ratesAt(
        time + step,
        y0 + step * (A61 * a0 + A62 * b0 + A63 * c0 + A64 * d0 + A65 * e0),
        y1 + step * (A61 * a1 + A62 * b1 + A63 * c1 + A64 * d1 + A65 * e1))) {
      return false;
    }
    double f0 = rate0;
    double f1 = rate1;
    next0 = y0 + step * (B1 * a0 + B3 * c0 + B4 * d0 + B5 * e0 + B6 * f0);
    next1 = y1 + step * (B1 * a1 + B3 * c1 + B4 * d1 + B5 * e1 + B6 * f1);
    if (!ratesAt(time + step, next0, next1)) {
      return false;
    }
    double error0 = E1 * a0 + E3 * c0 + E4 * d0 + E5 * e0 + E6 * f0 + E7 * rate0;
    double error1 = E1 * a1 + E3 * c1 + E4 * d1 + E5 * e1 + E6 * f1 + E7 * rate1;
    difference = step * (Math.abs(error0) + Math.abs(error1));
    return true;
  }
}
