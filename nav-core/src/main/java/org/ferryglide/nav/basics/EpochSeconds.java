package org.ferryglide.nav.basics;

import java.time.Instant;

/**
 * Instants as the kernels take them: seconds since 1970-01-01T00:00:00Z, UTC without leap seconds.
 *
 * <pre>{@code
 * double seconds = EpochSeconds.of(Instant.parse("2026-06-01T09:30:00Z"));
 * }</pre>
 *
 * <p>A double holds them to better than a microsecond until well past the year 2200.
 */
public final class EpochSeconds {
  private EpochSeconds() {}

  /**
   * Seconds of an instant.
   *
   * @param instant the instant
   * @return seconds since 1970-01-01T00:00:00Z, fractions included
   */
  public static double of(Instant instant) {
    return instant.getEpochSecond() + instant.getNano() * 1e-9;
  }

  /**
   * The instant of seconds.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z, finite
   * @return the instant, to the nearest microsecond
   * @throws IllegalArgumentException if {@code epochSeconds} is NaN, infinite, or beyond what an
   *     instant can hold
   */
  public static Instant toInstant(double epochSeconds) {
    if (!(Math.abs(epochSeconds) < 1e11)) { // written so that NaN fails
      throw new IllegalArgumentException(
          "seconds since 1970 must be within ±1e11, but was " + epochSeconds);
    }
    long whole = (long) Math.floor(epochSeconds);
    long micros = Math.round((epochSeconds - whole) * 1e6);
    return Instant.ofEpochSecond(whole, micros * 1000);
  }
}
