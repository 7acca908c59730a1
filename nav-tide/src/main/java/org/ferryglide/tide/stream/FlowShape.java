package org.ferryglide.tide.stream;

/**
 * How the rate grows from slack to its maximum and falls back, as a share of the maximum.
 *
 * <p>At the thirds of the time from slack to maximum the first two differ by at most 0.034 of the
 * maximum; the drift over six hours, in units of the maximum rate held for one hour, is 3.820 for
 * the sine, 3.800 for the 50/90 rule and 4 for the rule of thirds (derived).
 *
 * <pre>{@code
 * FlowShape.SINE.share(0.5); // 0.707: halfway from slack to maximum
 * }</pre>
 */
public enum FlowShape {
  /** A quarter of a sine wave, which is how published current tables are worked. */
  SINE,

  /**
   * The 50/90 rule: 0, 50, 90 and 100 % of the maximum at the thirds from slack to maximum, joined
   * by straight lines. A rule of thumb.
   */
  FIFTY_NINETY,

  /**
   * The rule of thirds: a third, two thirds and three thirds of the maximum, held throughout the
   * first, second and last third of the time from slack to maximum. A rule of thumb.
   */
  THIRDS;

  /**
   * The rate as a share of the maximum, without allocation.
   *
   * @param sinceSlack time since slack as a share of the time from slack to maximum, in [0, 1];
   *     beyond, the nearer end counts; NaN gives NaN
   * @return the share, in [0, 1]
   */
  public double share(double sinceSlack) {
    double u = Math.max(0.0, Math.min(1.0, sinceSlack));
    return switch (this) {
      case SINE -> Math.sin(0.5 * Math.PI * u);
      case FIFTY_NINETY -> fiftyNinety(3.0 * u);
      case THIRDS -> u < 1.0 / 3.0 ? 1.0 / 3.0 : u < 2.0 / 3.0 ? 2.0 / 3.0 : u <= 1.0 ? 1.0 : u;
    };
  }

  private static double fiftyNinety(double thirds) {
    if (thirds <= 1.0) {
      return 0.5 * thirds;
    }
    return thirds <= 2.0 ? 0.5 + 0.4 * (thirds - 1.0) : 0.9 + 0.1 * (thirds - 2.0);
  }

  /** Corners of the shape between slack and maximum, as shares of the time. */
  double[] corners() {
    return this == SINE ? new double[0] : new double[] {1.0 / 3.0, 2.0 / 3.0};
  }
}
