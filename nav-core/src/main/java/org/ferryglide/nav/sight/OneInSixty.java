package org.ferryglide.nav.sight;

import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;

/**
 * The rule that one degree puts one off by a mile in sixty, and how far it is from the truth.
 *
 * <pre>{@code
 * OneInSixty.offset(Distance.ofNauticalMiles(6), 5); // 0.5 NM by the rule
 * OneInSixty.exactOffset(Distance.ofNauticalMiles(6), 5); // 0.525 NM
 * }</pre>
 *
 * <p>The rule is low by 4.5 % at 1 degree, 4.9 % at 6, 5.5 % at 10, 8.4 % at 20 and 13.4 % at 30;
 * it is a rule for the head, up to {@link #LIMIT_DEGREES}.
 */
public final class OneInSixty {
  private OneInSixty() {}

  /** Beyond this the rule is more than 8 % low. */
  public static final double LIMIT_DEGREES = 20.0;

  private static final double SIXTY = 60.0;
  private static final double GREATEST = 90.0;

  /**
   * How far off the line an error of direction leads, by the rule.
   *
   * @param distance distance run
   * @param degrees the error, degrees
   * @return distance times degrees over sixty, with the sign of both
   * @throws IllegalArgumentException if {@code degrees} is NaN or infinite
   */
  public static Distance offset(Distance distance, double degrees) {
    return distance.times(Arguments.finite(degrees, "error", "degrees") / SIXTY);
  }

  /**
   * How far off the line an error of direction leads abeam of the target.
   *
   * @param distance distance of the target along the line
   * @param degrees the error, degrees, in (-90, 90)
   * @return distance times the tangent
   * @throws IllegalArgumentException if {@code degrees} is NaN or not in (-90, 90)
   */
  public static Distance exactOffset(Distance distance, double degrees) {
    if (!(Math.abs(degrees) < GREATEST)) { // written so that NaN fails
      throw new IllegalArgumentException("error must be in (-90, 90) degrees, but was " + degrees);
    }
    return distance.times(Math.tan(Math.toRadians(degrees)));
  }

  /**
   * The error of direction behind an offset, by the rule: what to correct by, and as much again to
   * come back in the same distance.
   *
   * @param offset how far off the line
   * @param distance distance run, above 0
   * @return degrees, with the sign of the offset
   * @throws IllegalArgumentException if {@code distance} is not above 0
   */
  public static double degrees(Distance offset, Distance distance) {
    return SIXTY * offset.metres() / Arguments.positive(distance.metres(), "distance", "metres");
  }

  /**
   * How far the rule falls short of the truth.
   *
   * @param degrees the error of direction, degrees, in (-90, 90)
   * @return the share of the true offset that the rule misses, 0.045 for a small angle; 0 for none
   * @throws IllegalArgumentException if {@code degrees} is NaN or not in (-90, 90)
   */
  public static double shortfall(double degrees) {
    if (degrees == 0.0) {
      return 0.0;
    }
    Distance unit = Distance.ofMetres(1.0);
    return 1.0 - offset(unit, degrees).metres() / exactOffset(unit, degrees).metres();
  }
}
