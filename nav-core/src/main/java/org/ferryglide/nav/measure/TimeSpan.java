package org.ferryglide.nav.measure;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.ferryglide.nav.note.TextFormatException;

/**
 * From one instant until another: a window to launch in, the daylight of a day, the time a table
 * covers.
 *
 * <pre>{@code
 * TimeSpan daylight = TimeSpan.of(sunrise, sunset);
 * boolean inTime = daylight.contains(departure);
 * Optional<TimeSpan> both = daylight.overlap(tideWindow); // empty if they never meet
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
   * Makes a span of a length.
   *
   * @param from the first instant
   * @param length how long it lasts, zero or more
   * @return the span
   * @throws IllegalArgumentException if {@code length} is negative
   * @throws java.time.DateTimeException if the end lies beyond the last instant
   */
  public static TimeSpan of(Instant from, Duration length) {
    return new TimeSpan(from, from.plus(length));
  }

  /**
   * Reads the form that {@link #toString} writes: two instants in UTC separated by a slash, as ISO
   * 8601 writes an interval.
   *
   * @param text for example {@code 2026-06-01T09:30:00Z/2026-06-01T11:00:00Z}
   * @return the span
   * @throws TextFormatException if the text is anything else or ends before it begins
   */
  public static TimeSpan parse(String text) {
    int slash = text.indexOf('/');
    if (slash < 0) {
      throw new TextFormatException(
          "a span of time must be two instants separated by a slash", text, text.length());
    }
    Instant from = instant(text, 0, slash);
    Instant until = instant(text, slash + 1, text.length());
    if (until.isBefore(from)) {
      throw new TextFormatException(
          "a span of time must not end before it begins", text, slash + 1);
    }
    return new TimeSpan(from, until);
  }

  private static Instant instant(String text, int begin, int end) {
    try {
      return Instant.parse(text.substring(begin, end));
    } catch (DateTimeParseException e) {
      throw new TextFormatException(
          "an instant must be given in UTC, like 2026-06-01T09:30:00Z",
          text,
          Math.min(text.length(), begin + e.getErrorIndex()));
    }
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
   * Whether the whole of another span lies in this one.
   *
   * @param other the other span
   * @return true if it does; a span contains itself
   */
  public boolean contains(TimeSpan other) {
    return contains(other.from) && contains(other.until);
  }

  /**
   * What two spans have in common.
   *
   * @param other the other span
   * @return the common span, of no length where they only touch; empty if they never meet
   */
  public Optional<TimeSpan> overlap(TimeSpan other) {
    Instant begin = from.isAfter(other.from) ? from : other.from;
    Instant end = until.isBefore(other.until) ? until : other.until;
    return end.isBefore(begin) ? Optional.empty() : Optional.of(new TimeSpan(begin, end));
  }

  /**
   * How long the span is.
   *
   * @return at least zero
   */
  public Duration duration() {
    return Duration.between(from, until);
  }

  /** Both ends in UTC separated by a slash, which {@link #parse} reads. */
  @Override
  public String toString() {
    return from + "/" + until;
  }
}
