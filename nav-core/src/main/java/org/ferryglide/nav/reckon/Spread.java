package org.ferryglide.nav.reckon;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;

/**
 * One error as two standard deviations: a part that stays the same all the way, and a part that is
 * drawn anew in every interval.
 *
 * <p>They are kept apart because they grow differently: the constant part with the time, the
 * independent part with its square root. A wrong deviation is constant; a speed judged afresh every
 * hour is mostly independent.
 *
 * <pre>{@code
 * Spread speed = Spread.ofPercent(7, 7); // 7 % the same all day, 7 % more from hour to hour
 * Spread variation = Spread.constant(0.5);
 * }</pre>
 *
 * @param constant standard deviation of the part that stays, in the unit of its {@link
 *     ErrorSource}, at least 0
 * @param independent standard deviation of the part drawn anew, in the same unit, at least 0
 */
public record Spread(double constant, double independent) implements Serializable {

  private static final long serialVersionUID = 1L;

  /** No error. */
  public static final Spread NONE = new Spread(0.0, 0.0);

  /**
   * Takes both standard deviations.
   *
   * @param constant of the part that stays
   * @param independent of the part drawn anew
   * @throws IllegalArgumentException if one is NaN, infinite or negative
   */
  public Spread {
    constant = Arguments.notNegative(constant, "constant part", "units");
    independent = Arguments.notNegative(independent, "independent part", "units");
  }

  /**
   * Both parts.
   *
   * @param constant standard deviation of the part that stays, at least 0
   * @param independent standard deviation of the part drawn anew, at least 0
   * @return the spread
   * @throws IllegalArgumentException if one is NaN, infinite or negative
   */
  public static Spread of(double constant, double independent) {
    return new Spread(constant, independent);
  }

  /**
   * Both parts of a speed or a rate.
   *
   * @param constantPercent standard deviation of the part that stays, per cent, at least 0
   * @param independentPercent standard deviation of the part drawn anew, per cent, at least 0
   * @return the spread, as fractions
   * @throws IllegalArgumentException if one is NaN, infinite or negative
   */
  public static Spread ofPercent(double constantPercent, double independentPercent) {
    return new Spread(constantPercent / 100.0, independentPercent / 100.0);
  }

  /**
   * A constant part alone.
   *
   * @param constant its standard deviation, at least 0
   * @return the spread
   * @throws IllegalArgumentException if it is NaN, infinite or negative
   */
  public static Spread constant(double constant) {
    return new Spread(constant, 0.0);
  }

  /**
   * An independent part alone.
   *
   * @param independent its standard deviation, at least 0
   * @return the spread
   * @throws IllegalArgumentException if it is NaN, infinite or negative
   */
  public static Spread independent(double independent) {
    return new Spread(0.0, independent);
  }
}
