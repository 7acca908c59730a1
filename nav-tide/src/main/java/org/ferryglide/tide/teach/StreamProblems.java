package org.ferryglide.tide.teach;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.teach.Figures;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;
import org.ferryglide.nav.teach.Rule;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.stream.StreamHour;

/**
 * Problems of the tidal stream from the table of hours about high water: at the nearest hour as by
 * hand, and between two hours by their vectors.
 *
 * <p>The rate is interpolated linearly between neaps and springs by the day's range, as {@link
 * MeanRanges#springFraction} says, and is never below zero. Slips are common practice, no source.
 *
 * <pre>{@code
 * MeanRanges ranges = new MeanRanges(Distance.ofMetres(4.6), Distance.ofMetres(2.1));
 * StreamProblems.Day day =
 *     new StreamProblems.Day(742.0, Distance.ofMetres(5.4), Distance.ofMetres(3.4), 790.0);
 * Problem problem = StreamProblems.rate(rows, ranges, day, 870.0);
 * problem.answer(); // knots, two hours after high water
 * }</pre>
 */
public final class StreamProblems {
  private static final String HIGH_WATER = "High water";
  private static final String ELSEWHERE = "High water at the place";
  private static final String AT = "Time";
  private static final String HEIGHT = "Height";
  private static final String RANGE = "Range";
  private static final String NEAP_RANGE = "Neap range";
  private static final String SPRING_RANGE = "Spring range";
  private static final String HOUR = "Table hour";
  private static final String PAST = "Past that hour";
  private static final String NEAPS = "Neap rate";
  private static final String SPRINGS = "Spring rate";
  private static final String SHARE = "Neaps to springs";
  private static final String RATE = "Rate";

  /** A lunar day is that much longer than a day, minutes. */
  private static final double LATER_EACH_DAY = 50.0;

  private StreamProblems() {}

  /**
   * The tide that the table's hours are counted from.
   *
   * @param highWaterClockMinutes high water at the standard port, minutes since midnight by the
   *     clock in use, finite
   * @param high height of that high water, which some take for the range
   * @param range range of the day
   * @param elsewhereClockMinutes high water at the place itself, which some take for the standard
   *     port's, minutes since midnight, finite
   */
  public record Day(
      double highWaterClockMinutes, Distance high, Distance range, double elsewhereClockMinutes)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * Checks the parts.
     *
     * @param highWaterClockMinutes high water at the standard port, minutes since midnight
     * @param high height of that high water
     * @param range range of the day
     * @param elsewhereClockMinutes high water at the place itself, minutes since midnight
     * @throws IllegalArgumentException if a time is NaN or infinite
     */
    public Day {
      Arguments.finite(highWaterClockMinutes, "high water", "minutes");
      Objects.requireNonNull(high, "high");
      Objects.requireNonNull(range, "range");
      Arguments.finite(elsewhereClockMinutes, "high water at the place", "minutes");
    }
  }

  /**
   * The rate of the stream at a time, by the row of the nearest hour.
   *
   * @param rows rows of the table, one an hour without a gap, at least two
   * @param meanRanges mean ranges of the standard port
   * @param day the tide
   * @param clockMinutes the time asked for
   * @return the problem; its answer is the rate in knots
   * @throws IllegalArgumentException if the table has no row for that hour or fewer than two rows
   */
  public static Problem rate(
      List<StreamHour> rows, MeanRanges meanRanges, Day day, double clockMinutes) {
    Problem problem =
        hour(
                Problem.titled("Rate of the stream from the table"),
                day,
                meanRanges,
                clockMinutes,
                "hours after high water to the nearest row, before it below zero",
                f -> Math.rint(hoursAfter(f)))
            .then(
                NEAPS,
                Quantity.KNOTS,
                "from that row",
                f -> row(rows, f.of(HOUR), StreamProblems::neap))
            .then(
                SPRINGS,
                Quantity.KNOTS,
                "from that row",
                f -> row(rows, f.of(HOUR), StreamProblems::spring));
    return answering(
        rows,
        share(problem)
            .then(
                RATE,
                Quantity.KNOTS,
                "neap rate and its share of the way to the spring rate",
                f -> between(f.of(SHARE), f.of(NEAPS), f.of(SPRINGS)))
            .estimated("a spring rate is about twice a neap rate; a day between lies between")
            .checked("between the two rates of the row, unless the range is beyond both"));
  }

  /**
   * The rate of the stream between two hours: both rows' vectors scaled by the range, and the point
   * on the line that joins their ends.
   *
   * @param rows rows of the table, one an hour without a gap, at least two
   * @param meanRanges mean ranges of the standard port
   * @param day the tide
   * @param clockMinutes the time asked for
   * @return the problem; its answer is the rate in knots, and {@code Set} among its figures is
   *     where it goes
   * @throws IllegalArgumentException if the table has no rows about that time or fewer than two
   */
  public static Problem betweenHours(
      List<StreamHour> rows, MeanRanges meanRanges, Day day, double clockMinutes) {
    Problem problem =
        hour(
                Problem.titled("Stream between two hours of the table"),
                day,
                meanRanges,
                clockMinutes,
                "the last whole hour after high water, before it below zero",
                f -> Math.floor(hoursAfter(f)))
            .then(
                PAST,
                Quantity.SHARE,
                "share of the hour gone since then",
                f -> hoursAfter(f) - Math.floor(hoursAfter(f)))
            .slip(PAST, "counted back from the next hour", 2.0, f -> 1.0 - f.of(PAST))
            .slip(PAST, "row before taken as it stands", 4.0, f -> 0.0)
            .slip(PAST, "row after taken as it stands", 2.0, f -> 1.0);
    return answering(
        rows,
        share(problem)
            .then(
                "Set",
                Quantity.TRUE_BEARING,
                "both vectors from one point; where their ends' line stands at that share",
                f -> degrees(vector(rows, f)))
            .then(
                RATE,
                Quantity.KNOTS,
                "from that point to there",
                f -> Math.hypot(vector(rows, f)[0], vector(rows, f)[1]))
            .slip(
                RATE,
                "rates of the rows mixed without their sets",
                2.0,
                f ->
                    (1.0 - f.of(PAST)) * scaled(rows, f, f.of(HOUR))
                        + f.of(PAST) * scaled(rows, f, f.of(HOUR) + 1.0))
            .estimated("half way between the hours, half way between their figures")
            .checked("between the two rows; less than both where the stream turns"));
  }

  private static double neap(StreamHour row) {
    return row.neapRate().knots();
  }

  private static double spring(StreamHour row) {
    return row.springRate().knots();
  }

  private static double set(StreamHour row) {
    return row.set().degrees();
  }

  private static Problem hour(
      Problem problem,
      Day day,
      MeanRanges meanRanges,
      double clockMinutes,
      String words,
      Rule rule) {
    return problem
        .given(ELSEWHERE, Quantity.CLOCK, day.elsewhereClockMinutes(), "local time")
        .given(HIGH_WATER, Quantity.CLOCK, day.highWaterClockMinutes(), "standard port, local time")
        .slip(HIGH_WATER, "high water of the wrong port", 4.0, f -> f.of(ELSEWHERE))
        .slip(
            HIGH_WATER,
            "high water of the wrong day: the day after, fifty minutes later",
            2.0,
            f -> f.of(HIGH_WATER) + LATER_EACH_DAY)
        .slip(
            HIGH_WATER,
            "high water of the wrong day: the day before, fifty minutes earlier",
            2.0,
            f -> f.of(HIGH_WATER) - LATER_EACH_DAY)
        .given(AT, Quantity.CLOCK, clockMinutes, "asked for, local time")
        .given(HEIGHT, Quantity.METRES, day.high().metres(), "of that high water")
        .given(RANGE, Quantity.METRES, day.range().metres(), "of the day")
        .given(NEAP_RANGE, Quantity.METRES, meanRanges.neap().metres(), "mean, standard port")
        .given(SPRING_RANGE, Quantity.METRES, meanRanges.spring().metres(), "mean, standard port")
        .then(HOUR, Quantity.COUNT, words, rule)
        .slip(HOUR, "before and after high water swapped", 4.0, f -> -f.of(HOUR))
        .slip(HOUR, "table hour off by one, late", 2.0, f -> f.of(HOUR) + 1.0)
        .slip(HOUR, "table hour off by one, early", 2.0, f -> f.of(HOUR) - 1.0);
  }

  private static Problem share(Problem problem) {
    return problem
        .then(
            SHARE,
            Quantity.SHARE,
            "range less neap range over spring range less neap range",
            f -> springFraction(f, f.of(RANGE)))
        .slip(SHARE, "height taken for range", 4.0, f -> springFraction(f, f.of(HEIGHT)))
        .slip(SHARE, "springs and neaps swapped", 4.0, f -> 1.0 - f.of(SHARE))
        .slip(SHARE, "spring rate taken as it stands", 4.0, f -> 1.0)
        .slip(SHARE, "neap rate taken as it stands", 2.0, f -> 0.0);
  }

  private static Problem answering(List<StreamHour> rows, Problem problem) {
    if (rows.size() < 2 || Double.isNaN(problem.answer())) {
      throw new IllegalArgumentException(
          "the table must have two rows or more and those of hour "
              + problem.exact(HOUR)
              + ", has "
              + rows.size());
    }
    return problem;
  }

  private static double hoursAfter(Figures f) {
    return (f.of(AT) - f.of(HIGH_WATER)) / 60.0;
  }

  private static double springFraction(Figures f, double range) {
    return (range - f.of(NEAP_RANGE)) / (f.of(SPRING_RANGE) - f.of(NEAP_RANGE));
  }

  private static double between(double share, double neaps, double springs) {
    return Math.max(0.0, neaps + share * (springs - neaps)); // NaN stays NaN
  }

  private static double row(
      List<StreamHour> rows, double hour, ToDoubleFunction<StreamHour> figure) {
    for (StreamHour row : rows) {
      if (row.hour() == Math.rint(hour)) {
        return figure.applyAsDouble(row);
      }
    }
    return Double.NaN;
  }

  private static double scaled(List<StreamHour> rows, Figures f, double hour) {
    return between(
        f.of(SHARE),
        row(rows, hour, StreamProblems::neap),
        row(rows, hour, StreamProblems::spring));
  }

  /** East and north, knots; the next row counts only where something of the hour has gone. */
  private static double[] vector(List<StreamHour> rows, Figures f) {
    double past = f.of(PAST);
    double east = 0.0;
    double north = 0.0;
    for (int next = 0; next <= (past > 0.0 ? 1 : 0); next++) {
      double part = next == 0 ? 1.0 - past : past;
      double rate = scaled(rows, f, f.of(HOUR) + next);
      double set = Math.toRadians(row(rows, f.of(HOUR) + next, StreamProblems::set));
      east += part * rate * Math.sin(set);
      north += part * rate * Math.cos(set);
    }
    return new double[] {east, north};
  }

  private static double degrees(double[] eastNorth) {
    return Math.toDegrees(Math.atan2(eastNorth[0], eastNorth[1]));
  }
}
