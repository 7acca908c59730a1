package org.ferryglide.nav.steer;

import java.io.Serializable;

/**
 * How much of the craft's speed through the water a plan may spend against what sets it sideways.
 *
 * <p>A plan that needs more than about 80 % of the craft's speed as cross-stream has no reserve for
 * a stream that runs harder than its table, a tired party or a gust; above half it deserves a
 * warning. Common practice, no source.
 *
 * <pre>{@code
 * SteeringLimits careful = SteeringLimits.of(0.4, 0.6);
 * }</pre>
 *
 * @param warnAbove share of the speed through the water above which a plan carries a warning, at
 *     least 0
 * @param refuseAbove share above which it is refused as {@link Reason#NO_RESERVE}, at least {@code
 *     warnAbove}
 */
public record SteeringLimits(double warnAbove, double refuseAbove) implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Warns above a half, refuses above four fifths. */
  public static final SteeringLimits USUAL = new SteeringLimits(0.5, 0.8);

  /** Refuses nothing that can be steered at all, and warns of nothing. */
  public static final SteeringLimits NONE = new SteeringLimits(1.0, 1.0);

  /**
   * Takes both limits; {@link #of} reads the same.
   *
   * @param warnAbove share of the speed through the water, in [0, 1]
   * @param refuseAbove share of the speed through the water, in [{@code warnAbove}, 1]; 1 refuses
   *     nothing
   * @throws IllegalArgumentException if a share is NaN or out of range
   */
  public SteeringLimits {
    if (!(warnAbove >= 0.0 && warnAbove <= refuseAbove && refuseAbove <= 1.0)) {
      throw new IllegalArgumentException(
          "limits must satisfy 0 <= warn above <= refuse above <= 1, but were "
              + warnAbove
              + " and "
              + refuseAbove);
    }
  }

  /**
   * Makes limits.
   *
   * @param warnAbove share of the speed through the water, in [0, 1]
   * @param refuseAbove share of the speed through the water, in [{@code warnAbove}, 1]
   * @return the limits
   * @throws IllegalArgumentException if a share is NaN or out of range
   */
  public static SteeringLimits of(double warnAbove, double refuseAbove) {
    return new SteeringLimits(warnAbove, refuseAbove);
  }
}
