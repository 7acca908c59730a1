package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.Duration;
import java.util.List;
import org.ferryglide.nav.note.Note;

/**
 * The times while the tide stays on one side of a level, and what to know about them.
 *
 * <pre>{@code
 * TideWindows overTheSill = curve.windowsAtLeast(2.4, from, to);
 * overTheSill.notes(); // whether the curve had data for the whole time asked
 * }</pre>
 *
 * @param windows the windows in order of time, apart from each other
 * @param notes how the heights were made, and the caution {@code tide.span} if the curve had no
 *     data for part of the time asked
 */
public record TideWindows(List<TideWindow> windows, List<Note> notes) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes both lists, copied.
   *
   * @param windows the windows in order of time
   * @param notes what to know about them
   */
  public TideWindows {
    windows = List.copyOf(windows);
    notes = List.copyOf(notes);
  }

  /**
   * How long the windows are together.
   *
   * @return sum of their lengths
   */
  public Duration totalLength() {
    Duration total = Duration.ZERO;
    for (TideWindow window : windows) {
      total = total.plus(window.length());
    }
    return total;
  }
}
