package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Optional;

/**
 * A stretch of time while the tide stays on one side of a level.
 *
 * <pre>{@code
 * for (TideWindow window : curve.windowsAtLeast(2.0, from, to).windows()) {
 *   System.out.println(window.opens() + " to " + window.closes());
 * }
 * }</pre>
 *
 * @param opens start of the stretch
 * @param closes end of the stretch
 * @param openedBefore true if the tide was on that side already when the search began, so that the
 *     window may have opened earlier
 * @param openAtEnd true if the tide was still on that side when the search ended, so that the
 *     window may close later
 */
public record TideWindow(Instant opens, Instant closes, boolean openedBefore, boolean openAtEnd)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param opens start of the stretch
   * @param closes end of the stretch, not before its start
   * @param openedBefore true if the window may have opened earlier
   * @param openAtEnd true if the window may close later
   * @throws IllegalArgumentException if {@code closes} is before {@code opens}
   */
  public TideWindow {
    Objects.requireNonNull(opens, "opens");
    Objects.requireNonNull(closes, "closes");
    if (closes.isBefore(opens)) {
      throw new IllegalArgumentException(
          "a window must not close before it opens, but opens " + opens + " and closes " + closes);
    }
  }

  /**
   * How long the window is.
   *
   * @return time from opening to closing, as far as it was searched
   */
  public Duration length() {
    return Duration.between(opens, closes);
  }

  /**
   * Whether a time falls within the window.
   *
   * @param instant when
   * @return true from the opening to the closing, both included
   */
  public boolean contains(Instant instant) {
    return !instant.isBefore(opens) && !instant.isAfter(closes);
  }

  /**
   * The window less some time at both ends, for arriving late and leaving early.
   *
   * @param margin time to take off each end where the window opens or closes; not where only the
   *     search begins or ends; not negative
   * @return the shorter window; empty if nothing is left
   * @throws IllegalArgumentException if {@code margin} is negative
   */
  public Optional<TideWindow> shrunkBy(Duration margin) {
    if (margin.isNegative()) {
      throw new IllegalArgumentException("margin must not be negative, but was " + margin);
    }
    Instant later = openedBefore ? opens : opens.plus(margin);
    Instant earlier = openAtEnd ? closes : closes.minus(margin);
    return later.isBefore(earlier)
        ? Optional.of(new TideWindow(later, earlier, openedBefore, openAtEnd))
        : Optional.empty();
  }

  /**
   * The window in whole minutes, for a card: opened no sooner and closed no later than it is.
   *
   * @return the window with its opening rounded up and its closing rounded down, both in UTC; empty
   *     if nothing is left
   */
  public Optional<TideWindow> inWholeMinutes() {
    Instant down = closes.truncatedTo(ChronoUnit.MINUTES);
    Instant up = opens.truncatedTo(ChronoUnit.MINUTES);
    if (up.isBefore(opens)) {
      up = up.plus(1, ChronoUnit.MINUTES);
    }
    return up.isBefore(down)
        ? Optional.of(new TideWindow(up, down, openedBefore, openAtEnd))
        : Optional.empty();
  }
}
