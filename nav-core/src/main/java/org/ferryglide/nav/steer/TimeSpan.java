package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;

/**
 * From one instant until another: a window to launch in, or the daylight of a day.
 *
 * <pre>{@code
 * TimeSpan daylight = TimeSpan.of(sunrise, sunset);
 * boolean inTime = daylight.contains(departure);
 * }</pre>
 *
 * @param from the first instant
 * @param until the last instant, not before {@code from}
 */
public record TimeSpan(Instant from, Instant until) implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * Takes both ends; {@link #of} reads the same.
   *
   * @param from the first instant
   * @param until the last instant
   * @throws IllegalArgumentException if {@code until} is before {@code from}
   */
  public TimeSpan {
    if (until.isBefore(from)) {
      throw new IllegalArgumentException(
          "a span must not end before it begins, but was from " + from + " until " + until);
    }
  }

  /**
   * Makes a span.
   *
   * @param from the first instant
   * @param until the last instant
   * @return the span
   * @throws IllegalArgumentException if {@code until} is before {@code from}
   */
  public static TimeSpan of(Instant from, Instant until) {
    return new TimeSpan(from, until);
  }

  /**
   * Whether an instant lies in the span, its ends included.
   *
   * @param instant the instant
   * @return true if it does
   */
  public boolean contains(Instant instant) {
    return !instant.isBefore(from) && !instant.isAfter(until);
  }

  /**
   * How long the span is.
   *
   * @return at least zero
   */
  public Duration duration() {
    return Duration.between(from, until);
  }
}
