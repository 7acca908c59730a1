package org.ferryglide.nav.water;

import java.io.Serializable;
import java.time.Instant;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.position.Position;

/**
 * What streams, winds and water levels all report of themselves: their span of time, their source,
 * their place, and when they are not smooth.
 *
 * <p>Every answer has a default that is always safe, so that a field of one's own needs one method
 * only. What a field does report makes searches faster and answers clearer.
 *
 * <pre>{@code
 * if (!field.span().map(span -> span.contains(departure)).orElse(true)) {
 *   System.out.println(field.source() + " has no data for " + departure);
 * }
 * }</pre>
 */
interface TimedField extends Serializable {

  /**
   * The time before which there are no data anywhere.
   *
   * @return seconds since 1970-01-01T00:00:00Z; negative infinity, the default, if there is no such
   *     limit or none is known
   */
  default double startSeconds() {
    return Double.NEGATIVE_INFINITY;
  }

  /**
   * The time after which there are no data anywhere.
   *
   * @return seconds since 1970-01-01T00:00:00Z; positive infinity, the default, if there is no such
   *     limit or none is known
   */
  default double endSeconds() {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * The time outside which there are no data; inside it there may be gaps.
   *
   * @return the span from {@link #startSeconds} to {@link #endSeconds}; empty if either is infinite
   *     or there are no data at all
   */
  default Optional<TimeSpan> span() {
    double start = startSeconds();
    double end = endSeconds();
    return start <= end && !Double.isInfinite(start) && !Double.isInfinite(end)
        ? Optional.of(TimeSpan.of(EpochSeconds.toInstant(start), EpochSeconds.toInstant(end)))
        : Optional.empty();
  }

  /**
   * The next break point: an instant at which the answer or its rate of change may jump, so that an
   * integrator or a search can step up to it.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @return the first break point strictly later than {@code epochSeconds}, anywhere in the field,
   *     seconds; positive infinity, the default, if there is none or none is known
   */
  default double nextBreakAfter(double epochSeconds) {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * The source of the data: a table, a station, a forecast.
   *
   * @return a name for messages and cards, by default {@code a source without a name}
   */
  default String source() {
    return "a source without a name";
  }

  /**
   * The place the answers are meant for.
   *
   * @return the station's or port's position; empty, the default, for a field of many places, and
   *     where none is known
   */
  default Optional<Position> position() {
    return Optional.empty();
  }

  /**
   * How the answer at a place and time comes about: sources, weights and notes.
   *
   * @param position where
   * @param instant when
   * @return the explanation; by default one without sources or notes
   */
  default Explanation explain(Position position, Instant instant) {
    return Explanation.NONE;
  }
}
