package org.ferryglide.tide.teach;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.water.ChartedDepth;
import org.ferryglide.nav.water.WaterLevel;
import org.ferryglide.tide.height.NormalisedCurve;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.HourlyStream;

/**
 * The library's own answers from tide and stream tables as problems, so that each shows its working
 * and marks a learner's: {@link Problem#working()}.
 *
 * <pre>{@code
 * TableCurve.cosine(table).heightAt(nine); // the answer
 * System.out.println(TableProblems.cosine(table, nine, zone).working()); // how it is worked
 * }</pre>
 *
 * <p>Times are given by the clock of the zone named, in minutes of the day of the time asked for.
 */
public final class TableProblems {
  private TableProblems() {}

  /**
   * What {@link org.ferryglide.tide.height.TableCurve#twelfths} answers.
   *
   * @param table the waters
   * @param time the time asked for, within the table
   * @param zone of the clock
   * @return the problem; its answer is the height
   * @throws IllegalArgumentException if {@code time} is not between two waters
   */
  public static Problem twelfths(TideTable table, Instant time, ZoneId zone) {
    ZonedDateTime midnight = midnight(time, zone);
    return TideProblems.byTwelfths(
        before(table, time, midnight), after(table, time, midnight), minutes(midnight, time));
  }

  /**
   * What {@link org.ferryglide.tide.height.TableCurve#cosine} answers.
   *
   * @param table the waters
   * @param time the time asked for, within the table
   * @param zone of the clock
   * @return the problem; its answer is the height
   * @throws IllegalArgumentException if {@code time} is not between two waters
   */
  public static Problem cosine(TideTable table, Instant time, ZoneId zone) {
    ZonedDateTime midnight = midnight(time, zone);
    return TideProblems.byCosine(
        before(table, time, midnight), after(table, time, midnight), minutes(midnight, time));
  }

  /**
   * What {@link org.ferryglide.tide.height.TableCurve#normalised(TideTable, NormalisedCurve)}
   * answers.
   *
   * @param table the waters
   * @param own the port's curve
   * @param time the time asked for, within the table
   * @param zone of the clock
   * @return the problem; its answer is the height
   * @throws IllegalArgumentException if {@code time} is not between two waters
   */
  public static Problem normalised(
      TideTable table, NormalisedCurve own, Instant time, ZoneId zone) {
    ZonedDateTime midnight = midnight(time, zone);
    return TideProblems.byCurve(
        own, before(table, time, midnight), after(table, time, midnight), minutes(midnight, time));
  }

  /**
   * What {@link ChartedDepth#depthAt} answers.
   *
   * @param charted the figure on the chart
   * @param level the tide
   * @param time the time asked for
   * @param meanLevel mean level above the datum, which a careless reader takes for the datum
   * @return the problem; its answer is the depth of water
   * @throws IllegalArgumentException if the datums differ or the level is not known then
   */
  public static Problem depth(
      ChartedDepth charted, WaterLevel level, Instant time, Distance meanLevel) {
    charted.requireSameDatum(level);
    Distance height =
        level
            .heightAt(time)
            .orElseThrow(() -> new IllegalArgumentException("no height is known at " + time));
    return TideProblems.depthOver(height, charted.belowDatum(), meanLevel);
  }

  /**
   * What an hourly stream answers between two hours, by the range of the nearest high water.
   *
   * @param stream a stream as {@link org.ferryglide.tide.stream.StreamTable#boundTo} gives it, its
   *     hours counted from high water
   * @param time the time asked for
   * @param zone of the clock
   * @return the problem; its answer is the rate, {@code Set} among its figures where it goes
   * @throws IllegalArgumentException if the hours count from low water or the table has no rows
   *     about that time
   */
  public static Problem stream(HourlyStream stream, Instant time, ZoneId zone) {
    if (stream.table().standardPort().about() != TideEvent.Kind.HIGH) {
      throw new IllegalArgumentException(
          "hours must be counted from high water, are from "
              + stream.table().standardPort().mark());
    }
    ZonedDateTime midnight = midnight(time, zone);
    TideEvent high = stream.tides().highWaterNearest(time);
    double clock = minutes(midnight, high.time());
    return StreamProblems.betweenHours(
        stream.table().hours(),
        stream.table().standardPort().meanRanges(),
        new StreamProblems.Day(clock, high.height(), stream.tides().range(high), clock),
        minutes(midnight, time));
  }

  private static ZonedDateTime midnight(Instant time, ZoneId zone) {
    return time.atZone(zone).toLocalDate().atStartOfDay(zone);
  }

  private static TideProblems.Water before(TideTable table, Instant time, ZonedDateTime midnight) {
    return water(
        midnight,
        table
            .lastUpTo(time)
            .orElseThrow(() -> new IllegalArgumentException("no water before " + time)));
  }

  private static TideProblems.Water after(TideTable table, Instant time, ZonedDateTime midnight) {
    return water(
        midnight,
        table
            .firstAfter(time)
            .orElseThrow(() -> new IllegalArgumentException("no water after " + time)));
  }

  private static TideProblems.Water water(ZonedDateTime midnight, TideEvent water) {
    return new TideProblems.Water(minutes(midnight, water.time()), water.height());
  }

  private static double minutes(ZonedDateTime midnight, Instant time) {
    return Seconds.of(Duration.between(midnight.toInstant(), time)) / 60.0;
  }
}
