package org.ferryglide.nav.water;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.measure.TimeSpan;

/**
 * A time while something holds: a stream below a limit, water enough over a bar, daylight.
 *
 * <p>A window that is cut off by the end of the search or of the data says so, since it may really
 * be longer.
 *
 * <pre>{@code
 * for (Window window : found.items()) {
 *   System.out.println(window.from() + " to " + window.until());
 * }
 * }</pre>
 *
 * @param span from when until when it is known to hold
 * @param openBefore true if it may have begun earlier: the search or the data begin there
 * @param openAfter true if it may go on: the search or the data end there
 */
public record Window(TimeSpan span, boolean openBefore, boolean openAfter) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param span from when until when
   * @param openBefore true if it may have begun earlier
   * @param openAfter true if it may go on
   */
  public Window {
    Objects.requireNonNull(span, "span");
  }

  /**
   * A window whose start and end are both known.
   *
   * @param from when it begins
   * @param until when it ends
   * @return the window
   * @throws IllegalArgumentException if {@code until} is before {@code from}
   */
  public static Window of(Instant from, Instant until) {
    return new Window(TimeSpan.of(from, until), false, false);
  }

  /**
   * When it begins, as far as it is known.
   *
   * @return start of the span
   */
  public Instant from() {
    return span.from();
  }

  /**
   * When it ends, as far as it is known.
   *
   * @return end of the span
   */
  public Instant until() {
    return span.until();
  }

  /**
   * How long it lasts, as far as it is known.
   *
   * @return time from begin to end, at least zero
   */
  public Duration duration() {
    return span.duration();
  }

  /**
   * Whether an instant lies in the window, its ends included.
   *
   * @param instant when
   * @return true if it does
   */
  public boolean contains(Instant instant) {
    return span.contains(instant);
  }

  /**
   * The window less some time at both ends, for arriving late and leaving early.
   *
   * @param margin time to take off each end that is known; an open end is left where it is; not
   *     negative
   * @return the shorter window; empty if nothing is left
   * @throws IllegalArgumentException if {@code margin} is negative
   */
  public Optional<Window> shrunkBy(Duration margin) {
    if (margin.isNegative()) {
      throw new IllegalArgumentException("margin must not be negative, but was " + margin);
    }
    return between(
        openBefore ? from() : from().plus(margin), openAfter ? until() : until().minus(margin));
  }

  /**
   * The window in whole minutes of UTC, for a card: it begins no sooner and ends no later than it
   * does.
   *
   * @return the window with its start rounded up and its end rounded down; empty if nothing is left
   */
  public Optional<Window> inWholeMinutes() {
    Instant down = until().truncatedTo(ChronoUnit.MINUTES);
    Instant up = from().truncatedTo(ChronoUnit.MINUTES);
    return between(up.isBefore(from()) ? up.plus(1, ChronoUnit.MINUTES) : up, down);
  }

  private Optional<Window> between(Instant from, Instant until) {
    return from.isBefore(until)
        ? Optional.of(new Window(TimeSpan.of(from, until), openBefore, openAfter))
        : Optional.empty();
  }
}
