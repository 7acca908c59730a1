package org.ferryglide.tide.stream;

/**
 * Rates of a tidal stream on plain doubles: any one unit of rate, metres of range.
 *
 * <pre>{@code
 * double knots = StreamRates.byRange(1.0, 2.1, 4.8, 3.2, 6.0); // 1.63
 * }</pre>
 *
 * <p>NaN in gives NaN out; nothing is allocated.
 */
final class StreamRates {
  private StreamRates() {}

  /**
   * Where a range lies between neaps and springs.
   *
   * @param rangeMetres range of the tide, metres
   * @param neapRangeMetres mean neap range, metres
   * @param springRangeMetres mean spring range, metres, not equal to the neap range
   * @return 0 at neaps, 1 at springs, along a straight line that goes on beyond both; NaN for NaN
   */
  public static double springness(
      double rangeMetres, double neapRangeMetres, double springRangeMetres) {
    return (rangeMetres - neapRangeMetres) / (springRangeMetres - neapRangeMetres);
  }

  /**
   * The rate on the straight line between the neap and the spring rate, continued beyond both;
   * never below zero, since that would turn the stream round.
   *
   * <p>The line is the one drawn in the "computation of rates" graph of official stream atlases,
   * which runs to the edges of the graph on both sides. Both ends are reproduced exactly.
   *
   * @param neapRate rate at mean neaps
   * @param springRate rate at mean springs, same unit
   * @param springness 0 at neaps, 1 at springs, see {@link #springness}
   * @return the rate, at least 0, same unit; NaN for NaN
   */
  public static double atSpringness(double neapRate, double springRate, double springness) {
    return Math.max(0.0, unfloored(neapRate, springRate, springness));
  }

  /** The same line without the floor; a negative answer means that the floor applies. */
  static double unfloored(double neapRate, double springRate, double springness) {
    // this form returns both ends to the bit
    return neapRate * (1.0 - springness) + springRate * springness;
  }

  /**
   * The rate for a range: {@link #atSpringness} of {@link #springness}.
   *
   * @param neapRate rate at mean neaps
   * @param springRate rate at mean springs, same unit
   * @param rangeMetres range of the tide, metres
   * @param neapRangeMetres mean neap range, metres
   * @param springRangeMetres mean spring range, metres, not equal to the neap range
   * @return the rate, at least 0, same unit; NaN for NaN
   */
  public static double byRange(
      double neapRate,
      double springRate,
      double rangeMetres,
      double neapRangeMetres,
      double springRangeMetres) {
    return atSpringness(
        neapRate, springRate, springness(rangeMetres, neapRangeMetres, springRangeMetres));
  }
}
