package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.Found;
import org.jspecify.annotations.Nullable;

/**
 * A curve through the high and low waters of a table.
 *
 * <pre>{@code
 * TideCurve curve = TableCurve.cosine(table);
 * Optional<Distance> height = curve.heightAt(Instant.parse("2026-06-01T12:00:00Z"));
 * List<Note> notes = curve.notesAt(Instant.parse("2026-06-01T12:00:00Z"));
 * }</pre>
 *
 * <p>Every curve passes through the table's high and low waters and between two of them stays
 * between their heights. What it does between two waters is a guess at the shape of the tide, and
 * its notes say so. How good a guess was measured every ten minutes of the year 2026 on the
 * harmonic tide of a few ports, from the constants of the United States' tide service:
 *
 * <table>
 * <caption>Error in percent of the mean rise or fall: root of the mean square, largest</caption>
 * <tr><th>port</th><th>twelfths</th><th>cosine</th><th>smooth</th></tr>
 * <tr><td>Eastport, semi-diurnal</td><td>1.8, 5.1</td><td>1.4, 5.2</td><td>1.4, 5.0</td></tr>
 * <tr><td>Boston, semi-diurnal</td><td>2.3, 7.0</td><td>2.0, 7.1</td><td>2.0, 7.2</td></tr>
 * <tr><td>Wilmington, up a river</td><td>6.0, 23</td><td>6.0, 23</td><td>5.9, 23</td></tr>
 * <tr><td>Seattle, mixed</td><td>4.6, 18</td><td>4.2, 18</td><td>3.0, 13</td></tr>
 * <tr><td>Honolulu, mixed</td><td>4.0, 48</td><td>3.5, 48</td><td>2.5, 45</td></tr>
 * <tr><td>Pensacola, diurnal</td><td>3.8, 19</td><td>3.8, 20</td><td>3.7, 19</td></tr>
 * </table>
 *
 * <p>The largest errors of mixed and diurnal tides come where a pair of waters vanishes into a
 * stand.
 */
public final class TableCurve implements TideCurve, Serializable {
  private static final long serialVersionUID = 1L;

  private final TideTable table;

  @SuppressWarnings("serial") // every shape of this package is serializable
  private final SegmentShape shape;

  private final CurveNotes notes;

  /** Ranges between which the shape is blended; empty if it is not. */
  private final @Nullable MeanRanges blendedBetween;

  private TableCurve(
      TideTable table, SegmentShape shape, CurveNotes notes, @Nullable MeanRanges blendedBetween) {
    this.table = table;
    this.shape = shape;
    this.notes = notes;
    this.blendedBetween = blendedBetween;
  }

  /**
   * The rule of twelfths on sixths of the actual time between two waters, joined by straight lines.
   *
   * <p>A rule of thumb for semi-diurnal tides: at most 2.6 % of the rise or fall from the cosine.
   * Its notes warn where the tide is not semi-diurnal.
   *
   * @param table the waters
   * @return the curve
   */
  public static TableCurve twelfths(TideTable table) {
    return new TableCurve(table, new TwelfthsShape(), CurveNotes.TWELFTHS, null);
  }

  /**
   * The rule of twelfths as it is used on the water, by hours of the clock after the last water: 1,
   * 2, 3, 3, 2 and 1 twelfths, joined by straight lines.
   *
   * <p>After six hours the tide stands until the next water; where that comes sooner, the last line
   * goes straight to it. Its notes warn where the tide is not semi-diurnal.
   *
   * @param table the waters
   * @return the curve
   */
  public static TableCurve twelfthsByTheHour(TideTable table) {
    return new TableCurve(table, new HourlyTwelfthsShape(table), CurveNotes.HOURLY_TWELFTHS, null);
  }

  /**
   * Half a cosine wave between two waters.
   *
   * @param table the waters
   * @return the curve
   */
  public static TableCurve cosine(TideTable table) {
    return new TableCurve(table, new CosineShape(), CurveNotes.COSINE, null);
  }

  /**
   * A curve that turns at the table's waters and nowhere else, and is smooth through them: its
   * slope and its curvature are continuous, unlike the cosine's, whose curvature jumps where a fast
   * rise meets a slow fall. At worst hardly worse than the cosine, and better where the tide is
   * mixed.
   *
   * @param table the waters
   * @return the curve
   */
  public static TableCurve smooth(TideTable table) {
    return new TableCurve(table, new SmoothShape(table), CurveNotes.SMOOTH, null);
  }

  /**
   * A port's own curve in every interval.
   *
   * @param table the waters
   * @param own the port's curve
   * @return the curve
   */
  public static TableCurve normalised(TideTable table, NormalisedCurve own) {
    MeanRanges any =
        new MeanRanges(
            Distance.ofMetres(1.0),
            Distance.ofMetres(0.0)); // both curves are the same: any blend is too
    return new TableCurve(
        table, new NormalisedShape(table, own, own, any), CurveNotes.NORMALISED, null);
  }

  /**
   * A port's own curves at springs and at neaps, blended in every interval by the place of its rise
   * or fall between the mean ranges. Above springs the spring curve is used as it is, below neaps
   * the neap curve, and the notes say so.
   *
   * @param table the waters
   * @param springs the port's curve at springs
   * @param neaps the port's curve at neaps
   * @param ranges the port's mean spring and neap range
   * @return the curve
   */
  public static TableCurve normalised(
      TideTable table, NormalisedCurve springs, NormalisedCurve neaps, MeanRanges ranges) {
    return new TableCurve(
        table, new NormalisedShape(table, springs, neaps, ranges), CurveNotes.NORMALISED, ranges);
  }

  /**
   * The waters that the curve passes through.
   *
   * @return the table
   */
  public TideTable table() {
    return table;
  }

  @Override
  public String source() {
    return table.port();
  }

  @Override
  public String datum() {
    return table.datum();
  }

  @Override
  public double startSeconds() {
    return table.seconds(0);
  }

  @Override
  public double endSeconds() {
    return table.seconds(table.segments());
  }

  @Override
  public double heightMetres(double epochSeconds) {
    int segment = table.segmentAt(epochSeconds);
    if (segment < 0) {
      return Double.NaN;
    }
    double from = table.height(segment);
    return from
        + (table.height(segment + 1) - from)
            * shape.passed(segment, fraction(segment, epochSeconds));
  }

  @Override
  public double slopeMetresPerSecond(double epochSeconds) {
    int segment = table.segmentAt(epochSeconds);
    if (segment < 0) {
      return Double.NaN;
    }
    return (table.height(segment + 1) - table.height(segment))
        / interval(segment)
        * shape.slope(segment, fraction(segment, epochSeconds));
  }

  @Override
  public double greatestSlopeChange(double fromSeconds, double toSeconds) {
    int segment = table.segmentAt(fromSeconds);
    if (segment < 0) {
      return Double.NaN;
    }
    double interval = interval(segment);
    double change = Math.abs(table.height(segment + 1) - table.height(segment));
    return change / (interval * interval) * shape.greatestSlopeChange(segment);
  }

  @Override
  public double nextBreakAfter(double epochSeconds) {
    if (epochSeconds < startSeconds()) {
      return startSeconds();
    }
    int segment = table.segmentAt(epochSeconds);
    if (segment < 0 || epochSeconds >= endSeconds()) {
      return Double.POSITIVE_INFINITY;
    }
    double next = shape.nextBreak(segment, fraction(segment, epochSeconds));
    while (next < 1.0) {
      double time = table.seconds(segment) + next * interval(segment);
      if (time > epochSeconds) {
        return time;
      }
      next = shape.nextBreak(segment, next + 1e-9); // that break is now, but for rounding
    }
    return table.seconds(segment + 1);
  }

  private double interval(int segment) {
    return table.seconds(segment + 1) - table.seconds(segment);
  }

  private double fraction(int segment, double epochSeconds) {
    return (epochSeconds - table.seconds(segment)) / interval(segment);
  }

  /**
   * The waters of the table, its first and its last included, and those that a port's own curve
   * adds between them.
   *
   * @param from start of the search
   * @param until end of the search
   * @return the waters later than {@code from} and earlier than {@code until}, in order of time,
   *     and what part of the time the table covers
   * @throws IllegalArgumentException if {@code until} is before {@code from}
   */
  @Override
  public Found<TideEvent> extremes(Instant from, Instant until) {
    TimeSpan asked = TimeSpan.of(from, until);
    List<TideEvent> waters = table.events();
    int last = waters.size() - 1;
    List<TideEvent> inner =
        shape.mayTurn()
            ? TideExtremes.between(this, startSeconds(), endSeconds())
            : waters.subList(1, last);
    List<TideEvent> found = new ArrayList<>();
    addIfBetween(found, waters.get(0), from, until);
    inner.forEach(water -> addIfBetween(found, water, from, until));
    addIfBetween(found, waters.get(last), from, until);
    return TideExtremes.found(this, found, asked);
  }

  private static void addIfBetween(
      List<TideEvent> found, TideEvent water, Instant from, Instant until) {
    if (water.time().isAfter(from) && water.time().isBefore(until)) {
      found.add(water);
    }
  }

  @Override
  public List<Note> notesAt(Instant instant) {
    int segment = table.segmentAt(EpochSeconds.of(instant));
    if (segment < 0) {
      return List.of();
    }
    List<Note> all = notes.of(table, segment, shape);
    if (blendedBetween != null) {
      all.addAll(
          blendedBetween.notesFor(
              Distance.ofMetres(Math.abs(table.height(segment + 1) - table.height(segment)))));
    }
    return List.copyOf(all);
  }

  /** How the curve is made and whose waters it joins. */
  @Override
  public String toString() {
    return notes.title() + " through " + table;
  }
}
