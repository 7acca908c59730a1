package org.ferryglide.nav.water;

import java.time.Instant;
import java.util.Objects;
import java.util.OptionalDouble;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.position.Position;

/**
 * The height of the water at one place as a function of time, above a named datum.
 *
 * <p>Implementations are immutable and safe to share between threads.
 *
 * <pre>{@code
 * OptionalDouble height = level.heightMetresAt(Instant.parse("2026-06-01T09:30:00Z"));
 * }</pre>
 */
public interface WaterLevel extends TimedField {

  /**
   * The height at a time, without allocation.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @return metres above {@link #datum}; NaN if there are no data for that time
   */
  double heightMetres(double epochSeconds);

  /**
   * The height at a time.
   *
   * @param instant when
   * @return metres above {@link #datum}; empty if there are no data for that time
   */
  default OptionalDouble heightMetresAt(Instant instant) {
    double height = heightMetres(EpochSeconds.of(instant));
    return Double.isNaN(height) ? OptionalDouble.empty() : OptionalDouble.of(height);
  }

  /**
   * The level that heights are measured from.
   *
   * @return the datum's name, for example {@code chart datum}
   */
  String datum();

  /**
   * A bound on how fast the height changes, from which a search knows where it cannot pass a level.
   * It need not be reached; the closer it is, the faster the search.
   *
   * @param fromSeconds start of a span without a break point inside, seconds since 1970
   * @param toSeconds end of that span, seconds since 1970
   * @return upper bound of the magnitude of the slope over the span, metres a second; positive
   *     infinity, the default, if none is known
   */
  default double greatestSlope(double fromSeconds, double toSeconds) {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * The heights at even steps of time. Levels that can do this faster than one by one override it.
   *
   * @param startSeconds time of the first, seconds since 1970-01-01T00:00:00Z
   * @param stepSeconds time from one to the next, seconds
   * @param metres receives the heights above {@link #datum}; NaN where there are no data
   * @param offset index of the first
   * @param count how many
   * @throws IndexOutOfBoundsException if {@code metres} has no room for them
   */
  default void heightsEvenly(
      double startSeconds, double stepSeconds, double[] metres, int offset, int count) {
    Objects.checkFromIndexSize(offset, count, metres.length);
    for (int i = 0; i < count; i++) {
      metres[offset + i] = heightMetres(startSeconds + i * stepSeconds);
    }
  }

  /**
   * How the height at a time comes about: sources and notes.
   *
   * @param instant when
   * @return the explanation; by default one without sources or notes
   */
  default Explanation explain(Instant instant) {
    return Explanation.NONE;
  }

  /** The same as {@link #explain(Instant)}: a level is of one place. */
  @Override
  default Explanation explain(Position position, Instant instant) {
    return explain(instant);
  }
}
