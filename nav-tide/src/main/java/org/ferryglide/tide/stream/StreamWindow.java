package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;

/**
 * A time during which something about the stream holds, such as a rate below a limit.
 *
 * <pre>{@code
 * for (StreamWindow slack : streamHere.slackWindows(from, to, Speed.ofKnots(0.5))) {
 *   slack.duration().toMinutes();
 * }
 * }</pre>
 *
 * @param from when it begins
 * @param to when it ends, not before {@code from}
 * @param openBefore whether it may have begun earlier: the search or the data begin there
 * @param openAfter whether it may go on: the search or the data end there
 */
public record StreamWindow(Instant from, Instant to, boolean openBefore, boolean openAfter)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param from when it begins
   * @param to when it ends
   * @param openBefore whether it may have begun earlier
   * @param openAfter whether it may go on
   * @throws IllegalArgumentException if {@code to} is before {@code from}
   */
  public StreamWindow {
    if (to.isBefore(from)) {
      throw new IllegalArgumentException(
          "a window must not end before it begins at " + from + ", but ended at " + to);
    }
  }

  /**
   * How long it lasts, as far as it is known.
   *
   * @return time from begin to end
   */
  public Duration duration() {
    return Duration.between(from, to);
  }
}
