package org.ferryglide.nav.geodesy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The few functions that {@link ExactRhumb} needs, to 80 digits, each by its power series after a
 * reduction of the argument: slow and plain, so that it can be believed.
 */
final class BigMath {
  static final MathContext DIGITS = new MathContext(80, RoundingMode.HALF_EVEN);
  private static final MathContext GUARD = new MathContext(95, RoundingMode.HALF_EVEN);
  private static final BigDecimal TINY = new BigDecimal("1e-92");
  private static final BigDecimal TWO = BigDecimal.valueOf(2);
  private static final BigDecimal HALF = new BigDecimal("0.5");

  /** Machin's formula: pi = 16 atan(1/5) - 4 atan(1/239). */
  static final BigDecimal PI =
      BigDecimal.valueOf(16)
          .multiply(atanSeries(new BigDecimal("0.2")))
          .subtract(
              BigDecimal.valueOf(4)
                  .multiply(atanSeries(BigDecimal.ONE.divide(BigDecimal.valueOf(239), GUARD))),
              GUARD);

  static final BigDecimal RADIANS_IN_DEGREE = PI.divide(BigDecimal.valueOf(180), GUARD);

  private static final BigDecimal LOG_2 = logNearOne(TWO);

  private BigMath() {}

  static BigDecimal sin(BigDecimal x) {
    BigDecimal square = x.multiply(x, GUARD).negate();
    BigDecimal term = x;
    BigDecimal sum = x;
    for (int k = 2; term.abs().compareTo(TINY) > 0; k += 2) {
      term = term.multiply(square, GUARD).divide(BigDecimal.valueOf((long) k * (k + 1)), GUARD);
      sum = sum.add(term, GUARD);
    }
    return sum;
  }

  static BigDecimal cos(BigDecimal x) {
    BigDecimal square = x.multiply(x, GUARD).negate();
    BigDecimal term = BigDecimal.ONE;
    BigDecimal sum = BigDecimal.ONE;
    for (int k = 1; term.abs().compareTo(TINY) > 0; k += 2) {
      term = term.multiply(square, GUARD).divide(BigDecimal.valueOf((long) k * (k + 1)), GUARD);
      sum = sum.add(term, GUARD);
    }
    return sum;
  }

  /** Natural logarithm of a positive number. */
  static BigDecimal log(BigDecimal x) {
    int halvings = 0;
    BigDecimal rest = x;
    while (rest.compareTo(TWO) > 0) {
      rest = rest.multiply(HALF, GUARD);
      halvings++;
    }
    while (rest.compareTo(HALF) < 0) {
      rest = rest.multiply(TWO, GUARD);
      halvings--;
    }
    return logNearOne(rest).add(LOG_2.multiply(BigDecimal.valueOf(halvings)), DIGITS);
  }

  private static BigDecimal logNearOne(BigDecimal x) {
    BigDecimal rest = x;
    int doublings = 1; // log x = 2 atanh((x - 1)/(x + 1))
    for (int i = 0; i < 4; i++) {
      rest = rest.sqrt(GUARD);
      doublings++;
    }
    BigDecimal t = rest.subtract(BigDecimal.ONE).divide(rest.add(BigDecimal.ONE), GUARD);
    BigDecimal square = t.multiply(t, GUARD);
    BigDecimal power = t;
    BigDecimal sum = BigDecimal.ZERO;
    for (int k = 1; power.abs().compareTo(TINY) > 0; k += 2) {
      sum = sum.add(power.divide(BigDecimal.valueOf(k), GUARD), GUARD);
      power = power.multiply(square, GUARD);
    }
    return sum.multiply(TWO.pow(doublings), GUARD);
  }

  /** The direction of the vector (y east, x north), radians, in (-pi, pi]. */
  static BigDecimal atan2(BigDecimal y, BigDecimal x) {
    if (y.abs().compareTo(x.abs()) > 0) {
      BigDecimal quarter = PI.multiply(HALF, GUARD);
      BigDecimal rest = atan(x.divide(y, GUARD));
      return (y.signum() > 0 ? quarter : quarter.negate()).subtract(rest, DIGITS);
    }
    BigDecimal angle = atan(y.divide(x, GUARD));
    if (x.signum() < 0) {
      angle = angle.add(y.signum() >= 0 ? PI : PI.negate(), DIGITS);
    }
    return angle;
  }

  private static BigDecimal atan(BigDecimal x) {
    BigDecimal rest = x;
    for (int i = 0; i < 3; i++) { // atan x = 2 atan(x / (1 + sqrt(1 + x x)))
      BigDecimal root = BigDecimal.ONE.add(rest.multiply(rest, GUARD)).sqrt(GUARD);
      rest = rest.divide(BigDecimal.ONE.add(root), GUARD);
    }
    return atanSeries(rest).multiply(BigDecimal.valueOf(8), GUARD);
  }

  private static BigDecimal atanSeries(BigDecimal x) {
    BigDecimal square = x.multiply(x, GUARD).negate();
    BigDecimal power = x;
    BigDecimal sum = BigDecimal.ZERO;
    for (int k = 1; power.abs().compareTo(TINY) > 0; k += 2) {
      sum = sum.add(power.divide(BigDecimal.valueOf(k), GUARD), GUARD);
      power = power.multiply(square, GUARD);
    }
    return sum;
  }
}
