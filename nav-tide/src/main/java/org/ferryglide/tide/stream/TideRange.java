package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.time.ZoneId;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;

/**
 * Which range of the tide scales the rates of a stream table.
 *
 * <pre>{@code
 * HourlyStream forToday = stream.withRange(TideRange.ofTheDay(ZoneId.of("UTC")));
 * HourlyStream atSprings = stream.withRange(TideRange.of(Distance.ofMetres(4.9)));
 * }</pre>
 */
final class TideRange implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final TideRange OF_EACH_TIDE = new TideRange("", Double.NaN);

  /** Zone identifier of the day; empty if not by the day. */
  private final String zone;

  /** The one range for all tides, metres; NaN if taken from the tide table. */
  private final double metres;

  private TideRange(String zone, double metres) {
    this.zone = zone;
    this.metres = metres;
  }

  /**
   * Each tide has its own range, the mean of the rise before and the fall after its high water (for
   * tables about low water, of the fall before and the rise after it). The default. Where one of
   * the two is less than half the other, as at a double high water, the larger is taken, since the
   * mean would make the stream too weak; the note {@code stream.unequal-range} tells, and {@link
   * #of} lets the caller name another.
   *
   * @return the choice
   */
  public static TideRange ofEachTide() {
    return OF_EACH_TIDE;
  }

  /**
   * One range for all tides of a day, the mean of the ranges of those whose high (or low) water
   * falls on it, as hand work does it.
   *
   * @param zone the zone whose midnight parts the days
   * @return the choice
   */
  public static TideRange ofTheDay(ZoneId zone) {
    return new TideRange(zone.getId(), Double.NaN);
  }

  /**
   * One range for all tides, named by the caller.
   *
   * @param range the range at the standard port, at least 0
   * @return the choice
   * @throws IllegalArgumentException if the range is negative
   */
  public static TideRange of(Distance range) {
    return new TideRange("", Arguments.notNegative(range.metres(), "range of the tide", "metres"));
  }

  String zone() {
    return zone;
  }

  double metres() {
    return metres;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TideRange that
        && zone.equals(that.zone)
        && Double.compare(metres, that.metres) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * zone.hashCode() + Double.hashCode(metres);
  }

  /** Which range, in words. */
  @Override
  public String toString() {
    if (!zone.isEmpty()) {
      return "range of the day in " + zone;
    }
    return Double.isNaN(metres) ? "range of each tide" : "range of " + metres + " m";
  }
}
