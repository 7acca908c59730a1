package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.Explanation;
import org.ferryglide.tide.height.TideTable;

/**
 * An hourly stream table laid along the tides of its standard port: the stream at its station as a
 * function of time.
 *
 * <p>Rates are linear in the range, from the neap rate at the neap range to the spring rate at the
 * spring range, extrapolated beyond both and never below zero; sets are not scaled. Between hours
 * the stream is interpolated linearly unless {@link #inHourlySteps} or {@link #smoothed} says
 * otherwise. From the last row of one tide to the first row of the next it passes without a jump;
 * where the rows of two tides overlap, because the tide is shorter than the table, they cross-fade.
 * A gap of more than three hours between rows is not bridged: there are no data, nor before the
 * first tide's rows or after the last's.
 *
 * <pre>{@code
 * HourlyStream stream = table.boundTo(tides).inHourlySteps();
 * Optional<Velocity> atNine = stream.at(Instant.parse("2026-06-01T09:00:00Z"));
 * stream.explain(Instant.parse("2026-06-01T09:00:00Z")).notes();
 * }</pre>
 */
public final class HourlyStream implements StreamCurve, Serializable {
  private static final long serialVersionUID = 1L;

  private final StreamTable table;
  private final TideTable tides;
  private final BetweenHours betweenHours;
  private final TideRange range;
  private final ReferenceTides references;
  private final PiecewiseStream breaks;

  private HourlyStream(
      StreamTable table, TideTable tides, BetweenHours betweenHours, TideRange range) {
    this.table = table;
    this.tides = tides;
    this.betweenHours = betweenHours;
    this.range = range;
    this.references = ReferenceTides.of(tides, table.standardPort().about(), range);
    this.breaks = HourlyRows.of(table, references, betweenHours);
  }

  static HourlyStream of(StreamTable table, TideTable tides) {
    table.standardPort().refuseOther(tides, "stream table " + table.station());
    return new HourlyStream(table, tides, BetweenHours.COMPONENTS, TideRange.ofEachTide());
  }

  /**
   * The same stream by the half-hour rule: each row holds for the half hour before and after its
   * hour, as hand work has it.
   *
   * @return a changed copy
   */
  public HourlyStream inHourlySteps() {
    return withBetweenHours(BetweenHours.HOURLY_STEPS);
  }

  /**
   * The same stream by a smooth curve through the hours in place of linear interpolation.
   *
   * @return a changed copy
   */
  public HourlyStream smoothed() {
    return withBetweenHours(BetweenHours.SMOOTH);
  }

  /** The same stream with another rule between the hours. */
  HourlyStream withBetweenHours(BetweenHours rule) {
    return new HourlyStream(table, tides, rule, range);
  }

  /**
   * The same stream with one range for all tides of a day, the mean of the ranges of those whose
   * high (or low) water falls on it, as hand work does it. By default each tide has its own range,
   * the mean of the rise before and the fall after its high water (for tables about low water, of
   * the fall before and the rise after it); where one of the two is less than half the other, as at
   * a double high water, the larger is taken, since the mean would make the stream too weak, and
   * the note {@code stream.unequal-range} says so.
   *
   * @param zone the zone whose midnight divides the days
   * @return a changed copy
   */
  public HourlyStream withRangeOfTheDay(ZoneId zone) {
    return withRange(TideRange.ofTheDay(zone));
  }

  /**
   * The same stream with one range for all tides.
   *
   * @param range the range at the standard port, at least 0
   * @return a changed copy
   * @throws IllegalArgumentException if the range is negative
   */
  public HourlyStream withRange(Distance range) {
    return withRange(TideRange.of(range));
  }

  /** The same stream scaled by another range. */
  HourlyStream withRange(TideRange choice) {
    return new HourlyStream(table, tides, betweenHours, choice);
  }

  /**
   * The table behind the stream.
   *
   * @return the table
   */
  public StreamTable table() {
    return table;
  }

  /**
   * The tides the table is laid along.
   *
   * @return the standard port's tide table
   */
  public TideTable tides() {
    return tides;
  }

  PiecewiseStream breaks() {
    return breaks;
  }

  /**
   * This stream with its name and place, for the fields between stations.
   *
   * @return the station
   */
  public StreamStation asStation() {
    return StreamStation.of(table.station(), table.position(), this);
  }

  /**
   * The table's hours in clock time for a day, as a paddler pencils them on the chart: {@code +1
   * 1212-1312 062° 2.4 kn}. Each row holds for the half hour before and after its hour; rows of two
   * tides meet halfway between the high (or low) waters.
   *
   * @param day the day
   * @param zone the zone whose midnight begins and ends it, and of the clock
   * @return the hours that hold at some time of the day, in order, those at its ends in full:
   *     label, clock times to the nearest minute, set and rate; none where the tide table has none
   */
  public List<String> pencilledHours(LocalDate day, ZoneId zone) {
    List<String> pencilled = new ArrayList<>();
    for (ClockHour hour : clockHours(day, zone)) {
      pencilled.add(hour.pencilled(zone));
    }
    return List.copyOf(pencilled);
  }

  /** Those hours as they hold. */
  List<ClockHour> clockHours(LocalDate day, ZoneId zone) {
    double from = EpochSeconds.of(day.atStartOfDay(zone).toInstant());
    double to = EpochSeconds.of(day.plusDays(1).atStartOfDay(zone).toInstant());
    PiecewiseStream held = HourlyRows.of(table, references, BetweenHours.HOURLY_STEPS);
    List<ClockHour> hours = new ArrayList<>();
    double[] flow = new double[2];
    for (HourSpan span : HourlyRows.spans(table, references)) {
      if (span.end() > from
          && span.start() < to
          && held.sample(span.start() + (span.end() - span.start()) / 2.0, flow, 0)) {
        hours.add(
            new ClockHour(
                table.hours().get(span.row()).label(table.standardPort().mark()),
                EpochSeconds.toInstant(span.start()),
                EpochSeconds.toInstant(span.end()),
                Velocity.ofEastAndNorth(flow[0], flow[1])));
      }
    }
    return List.copyOf(hours);
  }

  @Override
  public boolean sample(double epochSeconds, double[] eastNorth, int offset) {
    return breaks.sample(epochSeconds, eastNorth, offset);
  }

  @Override
  public void sampleEvenly(
      double startSeconds, double stepSeconds, int count, double[] eastNorth, int offset) {
    breaks.sampleEvenly(startSeconds, stepSeconds, count, eastNorth, offset);
  }

  @Override
  public double startSeconds() {
    return breaks.start();
  }

  @Override
  public double endSeconds() {
    return breaks.end();
  }

  @Override
  public String source() {
    return table.station();
  }

  @Override
  public Optional<Position> position() {
    return Optional.of(table.position());
  }

  @Override
  public double nextBreakAfter(double epochSeconds) {
    return breaks.nextBreakAfter(epochSeconds);
  }

  @Override
  public Optional<Speed> maxRate() {
    return Optional.of(Speed.ofMetresPerSecond(breaks.maxRate()));
  }

  @Override
  public Explanation explain(Instant instant) {
    double t = EpochSeconds.of(instant);
    int flags = breaks.flagsAt(t);
    if ((flags & PiecewiseStream.GAP) != 0) {
      return StreamFlags.noData(
          "The tides of "
              + tides.port()
              + " give stream table "
              + table.station()
              + " no row for this time.");
    }
    if (breaks.isBreak(t)) {
      flags &= ~StreamFlags.INTERPOLATED;
    }
    int tide = references.nearest(t);
    List<Note> notes = new ArrayList<>(table.notes());
    notes.addAll(tides.notes());
    // searches ask at every find: what stands behind the notes is put together once for all
    Map<String, Double> figures = new LinkedHashMap<>();
    figures.put("rangeMetres", references.rangeMetres(tide));
    figures.put("hoursAfter" + table.standardPort().mark(), hoursAfter(t, tide));
    Map<String, String> data = new LinkedHashMap<>();
    data.put("station", table.station());
    data.put("standardPort", tides.port());
    figures.forEach((name, figure) -> data.put(name, figure.toString()));
    for (Note note : StreamFlags.notes(flags)) {
      notes.add(new Note(note.code(), note.severity(), note.text(), data, figures));
    }
    return new Explanation(List.of(new Explanation.Source(table.station(), 1.0)), notes);
  }

  /** Hours after the nearest high (or low) water, to a hundredth. */
  private double hoursAfter(double t, int tide) {
    return Math.rint((t - references.time(tide)) / 36.0) / 100.0 + 0.0;
  }

  /** Equal are streams of equal tables, tides and choices. */
  @Override
  public boolean equals(Object other) {
    return other instanceof HourlyStream that
        && table.equals(that.table)
        && tides.equals(that.tides)
        && betweenHours == that.betweenHours
        && range.equals(that.range);
  }

  @Override
  public int hashCode() {
    return Objects.hash(table, tides, betweenHours.name(), range);
  }

  /** The table and how it is used. */
  @Override
  public String toString() {
    return table + ", " + betweenHours + ", " + range;
  }
}
