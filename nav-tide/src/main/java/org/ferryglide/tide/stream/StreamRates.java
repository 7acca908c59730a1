package org.ferryglide.tide.stream;

import org.ferryglide.nav.measure.Distance;
import org.ferryglide.tide.height.MeanRanges;

/**
 * Rates of a tidal stream on plain doubles: any one unit of rate.
 *
 * <pre>{@code
 * MeanRanges ranges = new MeanRanges(Distance.ofMetres(6.0), Distance.ofMetres(3.2));
 * double knots = StreamRates.byRange(1.0, 2.1, Distance.ofMetres(4.8), ranges); // 1.63
 * }</pre>
 *
 * <p>NaN in gives NaN out; nothing is allocated.
 */
final class StreamRates {
  private StreamRates() {}

  /**
   * The rate on the straight line between the neap and the spring rate, continued beyond both;
   * never below zero, since that would turn the stream round.
   *
   * <p>The line is the one drawn in the "computation of rates" graph of official stream atlases,
   * which runs to the edges of the graph on both sides. Both ends are reproduced exactly.
   *
   * @param neapRate rate at mean neaps
   * @param springRate rate at mean springs, same unit
   * @param springFraction 0 at neaps, 1 at springs, see {@link MeanRanges#springFraction}
   * @return the rate, at least 0, same unit; NaN for NaN
   */
  static double atSpringFraction(double neapRate, double springRate, double springFraction) {
    return Math.max(0.0, unfloored(neapRate, springRate, springFraction));
  }

  /** The same line without the floor; a negative answer means that the floor applies. */
  static double unfloored(double neapRate, double springRate, double springFraction) {
    // this form returns both ends to the bit
    return neapRate * (1.0 - springFraction) + springRate * springFraction;
  }

  /**
   * The rate for a range.
   *
   * @param neapRate rate at mean neaps
   * @param springRate rate at mean springs, same unit
   * @param range range of the tide
   * @param meanRanges mean neap and mean spring range
   * @return the rate, at least 0, same unit; NaN for NaN
   */
  static double byRange(double neapRate, double springRate, Distance range, MeanRanges meanRanges) {
    return atSpringFraction(neapRate, springRate, meanRanges.springFraction(range));
  }
}
