package org.ferryglide.tide.teach;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.stream.StreamHour;

/**
 * Problems of the tidal stream from the table of hours about high water.
 *
 * <p>The rate lies on the straight line between neaps and springs by the day's range, as {@link
 * MeanRanges#springFraction} says; the row is that of the nearest hour. Slips are common practice,
 * no source.
 *
 * <pre>{@code
 * Problem problem =
 *     StreamProblems.rate(rows, new MeanRanges(4.6, 2.1), 742.0, 3.4, 5.4, 870.0);
 * problem.answer(); // knots, two hours after high water
 * }</pre>
 */
public final class StreamProblems {
  private static final String HIGH_WATER = "High water";
  private static final String AT = "Time";
  private static final String RANGE = "Range";
  private static final String HOUR = "Table hour";
  private static final String NEAPS = "Neap rate";
  private static final String SPRINGS = "Spring rate";
  private static final String SHARE = "Neaps to springs";
  private static final String RATE = "Rate";

  private StreamProblems() {}

  /**
   * The rate of the stream at a time.
   *
   * @param rows rows of the table, one an hour without a gap, at least two
   * @param meanRanges mean ranges of the standard port
   * @param highWaterClockMinutes high water there, minutes since midnight, by the clock in use
   * @param rangeMetres range of the day, metres
   * @param highMetres height of that high water, metres, which some take for the range
   * @param clockMinutes the time asked for
   * @return the problem; its answer is the rate in knots
   * @throws IllegalArgumentException if the table has no row for that hour or fewer than two rows
   */
  public static Problem rate(
      List<StreamHour> rows,
      MeanRanges meanRanges,
      double highWaterClockMinutes,
      double rangeMetres,
      double highMetres,
      double clockMinutes) {
    Map<Integer, Double> springs = new HashMap<>();
    Map<Integer, Double> neaps = new HashMap<>();
    for (StreamHour row : rows) {
      springs.put(row.hour(), row.springRate().knots());
      neaps.put(row.hour(), row.neapRate().knots());
    }
    double hour = Math.rint((clockMinutes - highWaterClockMinutes) / 60.0);
    if (rows.size() < 2 || !springs.containsKey((int) hour)) {
      throw new IllegalArgumentException(
          "the table must have two rows or more and one for hour "
              + (int) hour
              + ", has "
              + springs.keySet());
    }
    double neapRange = meanRanges.neapMetres();
    double springRange = meanRanges.springMetres();
    Problem problem =
        Problem.titled("Rate of the stream from the table")
            .given(HIGH_WATER, Quantity.CLOCK, highWaterClockMinutes, "standard port, local time")
            .given(AT, Quantity.CLOCK, clockMinutes, "asked for, local time")
            .given("Height", Quantity.METRES, highMetres, "of that high water")
            .given(RANGE, Quantity.METRES, rangeMetres, "of the day")
            .given("Neap range", Quantity.METRES, neapRange, "mean, of the standard port")
            .given("Spring range", Quantity.METRES, springRange, "mean, of the standard port")
            .then(
                HOUR,
                Quantity.COUNT,
                "hours after high water to the nearest row, before it below zero",
                f -> Math.rint((f.of(AT) - f.of(HIGH_WATER)) / 60.0))
            .slip(HOUR, "before and after high water swapped", 4.0, f -> -f.of(HOUR))
            .slip(HOUR, "table hour off by one, late", 2.0, f -> f.of(HOUR) + 1.0)
            .slip(HOUR, "table hour off by one, early", 2.0, f -> f.of(HOUR) - 1.0)
            .then(NEAPS, Quantity.KNOTS, "from that row", f -> row(neaps, f.of(HOUR)))
            .then(SPRINGS, Quantity.KNOTS, "from that row", f -> row(springs, f.of(HOUR)))
            .then(
                SHARE,
                Quantity.SHARE,
                "range less neap range over spring range less neap range",
                f ->
                    (f.of(RANGE) - f.of("Neap range"))
                        / (f.of("Spring range") - f.of("Neap range")))
            .slip(
                SHARE,
                "height taken for range",
                4.0,
                f ->
                    (f.of("Height") - f.of("Neap range"))
                        / (f.of("Spring range") - f.of("Neap range")))
            .slip(SHARE, "springs and neaps swapped", 4.0, f -> 1.0 - f.of(SHARE))
            .slip(SHARE, "spring rate taken as it stands", 4.0, f -> 1.0)
            .slip(SHARE, "neap rate taken as it stands", 2.0, f -> 0.0)
            .then(
                RATE,
                Quantity.KNOTS,
                "neap rate and its share of the way to the spring rate",
                f -> f.of(NEAPS) + f.of(SHARE) * (f.of(SPRINGS) - f.of(NEAPS)));
    return problem
        .estimated("a spring rate is about twice a neap rate; a day between lies between")
        .checked("between the two rates of the row, unless the range is beyond both");
  }

  private static double row(Map<Integer, Double> table, double hour) {
    Double rate = table.get((int) Math.rint(hour));
    return rate == null ? Double.NaN : rate;
  }
}
