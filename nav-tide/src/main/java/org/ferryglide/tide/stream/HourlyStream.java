package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.EpochSeconds;
import org.ferryglide.nav.water.FlowExplanation;
import org.ferryglide.tide.height.TideTable;

/**
 * An hourly stream table laid along the tides of its standard port: the stream at its station as a
 * function of time.
 *
 * <p>Rates lie on the straight line from the neap rate at the neap range to the spring rate at the
 * spring range, continued beyond both and never below zero; sets are not scaled. Between hours see
 * {@link BetweenHours}; which range, see {@link TideRange}. From the last row of one tide to the
 * first row of the next the stream goes over without a jump; where the rows of two tides overlap,
 * because the tide is shorter than the table, they cross-fade. A hole of more than three hours
 * between rows is not bridged: there are no data, nor before the first tide's rows or after the
 * last's.
 *
 * <pre>{@code
 * HourlyStream stream = table.boundTo(tides).withBetweenHours(BetweenHours.HOURLY_STEPS);
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
  private final StreamKnots knots;

  private HourlyStream(
      StreamTable table, TideTable tides, BetweenHours betweenHours, TideRange range) {
    this.table = table;
    this.tides = tides;
    this.betweenHours = betweenHours;
    this.range = range;
    this.references = ReferenceTides.of(tides, table.standardPort().about(), range);
    this.knots = HourlyKnots.of(table, references, betweenHours);
  }

  static HourlyStream of(StreamTable table, TideTable tides) {
    if (!tides.port().equals(table.standardPort().name())) {
      throw new IllegalArgumentException(
          "stream table "
              + table.station()
              + " must be bound to the tides of "
              + table.standardPort().name()
              + ", but was given those of "
              + tides.port());
    }
    return new HourlyStream(table, tides, BetweenHours.COMPONENTS, TideRange.ofEachTide());
  }

  /**
   * The same stream with another rule between the hours.
   *
   * @param rule the rule
   * @return a changed copy
   */
  public HourlyStream withBetweenHours(BetweenHours rule) {
    return new HourlyStream(table, tides, rule, range);
  }

  /**
   * The same stream scaled by another range.
   *
   * @param choice which range
   * @return a changed copy
   */
  public HourlyStream withRange(TideRange choice) {
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

  /**
   * This stream with its name and place, for the fields between stations.
   *
   * @return the station
   */
  public StreamStation asStation() {
    return StreamStation.of(table.station(), table.position(), this);
  }

  @Override
  public boolean sample(double epochSeconds, double[] eastNorth, int offset) {
    return knots.sample(epochSeconds, eastNorth, offset);
  }

  @Override
  public double nextSeamAfter(double epochSeconds) {
    return knots.nextSeamAfter(epochSeconds);
  }

  @Override
  public Optional<Speed> maxRate() {
    return Optional.of(Speed.ofMetresPerSecond(knots.maxRate()));
  }

  @Override
  public FlowExplanation explain(Instant instant) {
    double t = EpochSeconds.of(instant);
    int flags = knots.flagsAt(t);
    if ((flags & StreamKnots.GAP) != 0) {
      return new FlowExplanation(
          List.of(),
          List.of(
              Note.information(
                  "stream.no-data",
                  "The tides of "
                      + tides.port()
                      + " give stream table "
                      + table.station()
                      + " no row for this time.")));
    }
    if (knots.isKnot(t)) {
      flags &= ~StreamFlags.INTERPOLATED;
    }
    int tide = references.nearest(t);
    List<Note> notes = new ArrayList<>();
    for (Note note : StreamFlags.notes(flags)) {
      notes.add(
          note.with("station", table.station())
              .with("standardPort", tides.port())
              .with("rangeMetres", references.rangeMetres(tide))
              .with("hoursAfter" + table.standardPort().mark(), hoursAfter(t, tide)));
    }
    return new FlowExplanation(List.of(new FlowExplanation.Source(table.station(), 1.0)), notes);
  }

  /** Hours after the nearest high (or low) water, to a hundredth. */
  private double hoursAfter(double t, int tide) {
    return Math.rint((t - references.time(tide)) / 36.0) / 100.0 + 0.0;
  }

  /** The table and how it is used. */
  @Override
  public String toString() {
    return table + ", " + betweenHours + ", " + range;
  }
}
