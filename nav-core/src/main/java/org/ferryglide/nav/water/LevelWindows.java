package org.ferryglide.nav.water;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Edge;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;

/**
 * The windows while any water level is at a height or above it. Steps as far as the bound of the
 * slope proves that nothing is passed, a minute at least, and halves a step at whose ends the
 * answer differs.
 */
final class LevelWindows {
  /** Without a bound of the slope, what is shorter than this may be passed over. */
  private static final double LOOK_SECONDS = 60.0;

  /** A bound of the slope is asked for no more than this, seconds: it grows with the span. */
  private static final double LOOK_AHEAD_SECONDS = 3.0 * 3600.0;

  private static final double CLOSE_ENOUGH_SECONDS = 1e-3;

  private enum State {
    NO_DATA,
    BELOW,
    ENOUGH
  }

  private final WaterLevel level;
  private final double wantedMetres;
  private final TimeSpan asked;
  private final List<Window> windows = new ArrayList<>();
  private final List<TimeSpan> seen = new ArrayList<>();

  LevelWindows(WaterLevel level, double wantedMetres, Instant from, Instant until) {
    this.level = level;
    this.wantedMetres = Arguments.finite(wantedMetres, "level", "metres");
    this.asked = TimeSpan.of(from, until);
  }

  Found<Window> find() {
    double end = EpochSeconds.of(asked.until());
    double time = EpochSeconds.of(asked.from());
    State state = state(time);
    double opened = time;
    boolean openBefore = true;
    double known = time;
    while (time < end) {
      double next = Math.min(end, Math.min(time + step(time, end), level.nextBreakAfter(time)));
      State there = state(next);
      if (there != state) {
        State before = state;
        next = Edge.of(later -> state(later) != before, next, time, CLOSE_ENOUGH_SECONDS);
        there = state(next);
        close(state, opened, next, openBefore, there == State.NO_DATA);
        if (there == State.NO_DATA) {
          seen.add(span(known, next));
        } else if (state == State.NO_DATA) {
          known = next;
        }
        openBefore = state == State.NO_DATA;
        opened = next;
        state = there;
      }
      time = next;
    }
    close(state, opened, end, openBefore, true);
    if (state != State.NO_DATA) {
      seen.add(span(known, end));
    }
    return Found.of(windows, asked, seen, notes());
  }

  private State state(double time) {
    double above = level.heightMetres(time) - wantedMetres;
    return !Double.isFinite(above) ? State.NO_DATA : above >= 0.0 ? State.ENOUGH : State.BELOW;
  }

  private double step(double time, double end) {
    double away = Math.abs(level.heightMetres(time) - wantedMetres);
    double ahead = Math.min(time + LOOK_AHEAD_SECONDS, Math.min(end, level.nextBreakAfter(time)));
    double safe = Math.min(ahead - time, away / level.greatestSlope(time, ahead));
    return safe > LOOK_SECONDS ? safe : LOOK_SECONDS; // NaN and infinity of the slope look often
  }

  private void close(
      State state, double opened, double until, boolean openBefore, boolean openAfter) {
    if (state == State.ENOUGH) {
      windows.add(new Window(span(opened, until), openBefore, openAfter));
    }
  }

  private static TimeSpan span(double from, double until) {
    return TimeSpan.of(EpochSeconds.toInstant(from), EpochSeconds.toInstant(until));
  }

  /** What the level says of itself at the ends of what was seen and found, each text once. */
  private List<Note> notes() {
    Map<String, Note> byText = new LinkedHashMap<>();
    List<TimeSpan> spans = new ArrayList<>(seen);
    windows.forEach(window -> spans.add(window.span()));
    for (TimeSpan span : spans) {
      for (Instant time : List.of(span.from(), span.until())) {
        level
            .explain(time)
            .notes()
            .forEach(note -> byText.putIfAbsent(note.code() + note.text(), note));
      }
    }
    return List.copyOf(byText.values());
  }
}
