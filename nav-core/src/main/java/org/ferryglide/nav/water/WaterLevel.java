package org.ferryglide.nav.water;

import java.time.Instant;
import java.util.OptionalDouble;

/**
 * The height of the water at one place as a function of time, above a named datum.
 *
 * <p>Implementations are immutable and safe to share between threads.
 *
 * <pre>{@code
 * OptionalDouble height = level.heightMetresAt(Instant.parse("2026-06-01T09:30:00Z"));
 * }</pre>
 */
public interface WaterLevel {

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
   * The next instant at which the height is not smooth in time.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @return the first seam strictly later than {@code epochSeconds}, seconds; positive infinity,
   *     the default, if there is none or none is known
   */
  default double nextSeamAfter(double epochSeconds) {
    return Double.POSITIVE_INFINITY;
  }
}
