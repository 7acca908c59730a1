package org.ferryglide.tide.stream;

/**
 * The arithmetic of published current tables on plain doubles: any one unit of time, any one unit
 * of rate.
 *
 * <pre>{@code
 * double knots = CurrentTimes.rate(0.66, 89, 148); // 0.53: 1 h 29 min of 2 h 28 min to the maximum
 * double minutes = CurrentTimes.slackDuration(360, 0.5, 4.0); // 29 minutes below half a knot
 * }</pre>
 *
 * <p>NaN in gives NaN out; nothing is allocated.
 */
final class CurrentTimes {
  private CurrentTimes() {}

  /**
   * The rate at any time: the maximum times the sine of 90° times the share of the interval from
   * slack to maximum that has passed.
   *
   * @param maximumRate rate at maximum current
   * @param sinceSlack time between slack and the time wanted, at least 0
   * @param slackToMaximum time between slack and maximum, above 0
   * @return the rate, same unit as {@code maximumRate}
   * @see <a href="https://www.navy.mil">US Navy, NAVEDTRA 14220, form "velocity of current at any
   *     time", whose factor this formula gives to its printed tenth</a>
   */
  public static double rate(double maximumRate, double sinceSlack, double slackToMaximum) {
    return maximumRate * FlowShape.SINE.share(sinceSlack / slackToMaximum);
  }

  /**
   * How long the current stays below a rate about one slack, if both maxima are alike.
   *
   * @param halfCycle time from one slack to the next, above 0; the printed tables have 6 hours
   * @param limit the rate not to be exceeded, at least 0
   * @param maximumRate rate at the maxima, above 0
   * @return duration, same unit as {@code halfCycle}; the whole half cycle if the current never
   *     reaches the limit
   */
  public static double slackDuration(double halfCycle, double limit, double maximumRate) {
    return 2.0 * timeToReach(halfCycle / 2.0, limit, maximumRate);
  }

  /**
   * How long after slack, or before it, the current has a rate.
   *
   * @param slackToMaximum time between slack and maximum, above 0
   * @param rate the rate, at least 0
   * @param maximumRate rate at the maximum, at least 0
   * @return time between slack and that rate, same unit as {@code slackToMaximum}, which is also
   *     the answer if the maximum is not above the rate
   */
  public static double timeToReach(double slackToMaximum, double rate, double maximumRate) {
    if (rate >= maximumRate) {
      return slackToMaximum;
    }
    return slackToMaximum * Math.asin(rate / maximumRate) / (0.5 * Math.PI);
  }
}
