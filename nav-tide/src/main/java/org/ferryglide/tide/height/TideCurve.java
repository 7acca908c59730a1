package org.ferryglide.tide.height;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.Explanation;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.WaterLevel;

/**
 * The height of the tide as a continuous function of time, which knows its slope and how fast that
 * can change, so that its high and low waters are found for certain.
 *
 * <p>Between two break points (see {@link #nextBreakAfter}) the curve has a continuous slope. At a
 * break point the slope may jump, as the rule of twelfths does, and so may the height, as a year's
 * prediction does at New Year.
 *
 * <pre>{@code
 * TideCurve curve = TableCurve.cosine(table);
 * double metresPerHour = 3600 * curve.slopeMetresPerSecond(epochSeconds);
 * Found<TideEvent> waters = curve.extremes(from, until);
 * }</pre>
 */
public interface TideCurve extends WaterLevel {

  /**
   * The earliest time with an answer.
   *
   * @return seconds since 1970-01-01T00:00:00Z; negative infinity if there is no such limit
   */
  @Override
  double startSeconds();

  /**
   * The latest time with an answer.
   *
   * @return seconds since 1970-01-01T00:00:00Z; positive infinity if there is no such limit
   */
  @Override
  double endSeconds();

  /**
   * How fast the tide rises, without allocation.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @return metres a second, falling negative; at a break point the slope just after it; at the end
   *     of the span the slope just before it; NaN if there are no data for that time
   */
  double slopeMetresPerSecond(double epochSeconds);

  /**
   * A bound on how fast the slope changes, from which the search for high and low waters knows
   * where none can be. It need not be reached; the closer it is, the faster the search.
   *
   * @param fromSeconds start of a stretch without a break point inside, seconds since 1970
   * @param toSeconds end of that stretch, seconds since 1970
   * @return upper bound of the magnitude of the second derivative over the stretch, metres per
   *     second squared
   */
  double greatestSlopeChange(double fromSeconds, double toSeconds);

  /**
   * {@inheritDoc}
   *
   * <p>The curve's high and low waters, to within one second.
   */
  @Override
  default Optional<double[]> turnsBetween(double fromSeconds, double untilSeconds) {
    return Optional.of(TideExtremes.turns(this, fromSeconds, untilSeconds));
  }

  /**
   * What a reader of the height at a time should know: how it was made, how far it can be from what
   * other curves give.
   *
   * @param instant when
   * @return the notes, unmodifiable; for a time without data, none
   */
  List<Note> notesAt(Instant instant);

  /** Where the height at a time comes from, and its notes. */
  @Override
  default Explanation explain(Instant instant) {
    return new Explanation(List.of(new Explanation.Source(source(), 1.0)), notesAt(instant));
  }

  /**
   * The high and low waters of the curve itself, to within one second.
   *
   * <p>None is missed, double high waters and short dips included, if they are more than a second
   * long. Where the tide stands at a level before it turns, the middle of the stand is given.
   *
   * @param from start of the search
   * @param until end of the search; waters at the very start or end, where the curve cannot be seen
   *     turning, are not given
   * @return the waters in order of time, high and low in turn, and what part of the time the curve
   *     has data for
   * @throws IllegalArgumentException if {@code until} is before {@code from}
   */
  default Found<TideEvent> extremes(Instant from, Instant until) {
    TimeSpan asked = TimeSpan.of(from, until);
    return TideExtremes.found(
        this, TideExtremes.between(this, EpochSeconds.of(from), EpochSeconds.of(until)), asked);
  }

  /**
   * The next high or low water after a time.
   *
   * @param after when
   * @param kind high or low
   * @return the first water of that kind strictly later, to within one second; empty if there is
   *     none in the curve's data, or none in 32 days
   */
  default Optional<TideEvent> nextWater(Instant after, TideEvent.Kind kind) {
    for (int days = 2; days <= 32; days *= 4) {
      for (TideEvent water : extremes(after, after.plus(Duration.ofDays(days)))) {
        if (water.kind() == kind && water.time().isAfter(after)) {
          return Optional.of(water);
        }
      }
    }
    return Optional.empty();
  }
}
