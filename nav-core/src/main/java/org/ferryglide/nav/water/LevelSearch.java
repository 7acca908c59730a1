package org.ferryglide.nav.water;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.basics.Edge;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.jspecify.annotations.Nullable;

/**
 * When a water level passes a height. Goes from stretch to stretch, in each of which the level
 * passes at most once: from turn to turn where the level knows its turns, else as far as the bound
 * of its slope proves that nothing is passed, a minute at least.
 */
final class LevelSearch {
  /** Without turns and a bound of the slope, what is shorter than this may be passed over. */
  private static final double LOOK_SECONDS = 60.0;

  /** A bound of the slope is asked for no more than this, seconds: it grows with the span. */
  private static final double LOOK_AHEAD_SECONDS = 3.0 * 3600.0;

  private static final double CLOSE_ENOUGH_SECONDS = 1e-3;

  private enum State {
    NO_DATA,
    OUTSIDE,
    /** At the height or on its wanted side. */
    INSIDE;

    static State of(double depth) {
      return !Double.isFinite(depth) ? NO_DATA : depth >= 0.0 ? INSIDE : OUTSIDE;
    }
  }

  /** A stretch of one state, until the next one's start. */
  private record Run(double from, State state) {}

  private final WaterLevel level;
  private final double heightMetres;

  /** 1 if the wanted side is above the height, -1 if it is below. */
  private final double side;

  private final TimeSpan asked;

  /** The part of the time asked that may have data; empty if from is after until. */
  private final double from;

  private final double until;

  /** When the level turns, in order; null if it does not know. */
  private final double @Nullable [] turns;

  private int nextTurn;
  private final List<Run> runs = new ArrayList<>();

  LevelSearch(WaterLevel level, Distance height, boolean wantedAbove, Instant from, Instant until) {
    this.level = level;
    this.heightMetres = height.metres();
    this.side = wantedAbove ? 1.0 : -1.0;
    this.asked = TimeSpan.of(from, until);
    this.from = Math.max(EpochSeconds.of(from), level.startSeconds());
    this.until = Math.min(EpochSeconds.of(until), level.endSeconds());
    boolean overlaps = this.from <= this.until;
    turns = overlaps ? level.turnsBetween(this.from, this.until).orElse(null) : null;
    if (overlaps) {
      search();
      forgetTouches();
    }
  }

  /** Up to where the level passes the height at most once. */
  private double stretchEnd(double start, double depth, double broken) {
    if (turns == null) {
      return provenUntil(start, depth, broken);
    }
    while (nextTurn < turns.length && turns[nextTurn] <= start) {
      nextTurn++;
    }
    return nextTurn < turns.length ? turns[nextTurn] : broken;
  }

  private double provenUntil(double time, double depth, double broken) {
    double ahead = Math.min(time + LOOK_AHEAD_SECONDS, broken);
    double safe =
        Math.min(ahead - time, Math.abs(depth) / level.greatestSlopeMetresPerSecond(time, ahead));
    // NaN and infinity of the slope look often
    return time + (safe > LOOK_SECONDS ? safe : LOOK_SECONDS);
  }

  private void search() {
    double start = from;
    double depth = depth(start);
    addRun(start, depth);
    while (start < until) {
      double broken = Math.min(until, level.nextBreakAfter(start));
      double end = Math.min(broken, stretchEnd(start, depth, broken));
      boolean mayJump = end == broken;
      double last = mayJump ? Math.nextDown(end) : end;
      double depthAtLast = depth(last);
      if (Double.isFinite(depth) != Double.isFinite(depthAtLast)) {
        double edge = edgeOfData(start, Double.isFinite(depth), last);
        if (Double.isFinite(depth)) {
          double before = Math.max(start, edge - CLOSE_ENOUGH_SECONDS);
          addPassing(start, depth, before, depth(before));
        }
        start = edge;
        depth = depth(start);
      } else {
        addPassing(start, depth, last, depthAtLast);
        start = end;
        depth = mayJump && end < until ? depth(end) : depthAtLast;
      }
      if (State.of(depth) != runs.get(runs.size() - 1).state()) {
        addRun(start, depth); // data begin or end, or the height jumps
      }
    }
  }

  private void addPassing(double start, double depth, double last, double depthAtLast) {
    if (Double.isFinite(depthAtLast) && State.of(depth) != State.of(depthAtLast)) {
      addRun(passing(start, depth, last, depthAtLast), depthAtLast);
    }
  }

  private void addRun(double start, double depth) {
    runs.add(new Run(start, State.of(depth)));
  }

  /** How far the water is on the wanted side of the height, metres. */
  private double depth(double seconds) {
    return side * (level.heightMetres(seconds) - heightMetres);
  }

  private double edgeOfData(double start, boolean known, double last) {
    return Edge.of(
        time -> Double.isFinite(depth(time)) != known, last, start, CLOSE_ENOUGH_SECONDS);
  }

  /** Water that only touches the height passes it twice within the accuracy of the search. */
  private void forgetTouches() {
    for (int i = 1; i + 1 < runs.size(); ) {
      boolean brief = runs.get(i + 1).from() - runs.get(i).from() <= 2.0 * CLOSE_ENOUGH_SECONDS;
      if (brief
          && runs.get(i).state() != State.NO_DATA
          && runs.get(i - 1).state() == runs.get(i + 1).state()) {
        runs.subList(i, i + 2).clear();
      } else {
        i++;
      }
    }
  }

  /** Ridders' method: the bracket at least halves at every step. */
  private double passing(double from, double depthAtFrom, double to, double depthAtTo) {
    double left = from;
    double leftValue = depthAtFrom;
    double right = to;
    double rightValue = depthAtTo;
    while (right - left > CLOSE_ENOUGH_SECONDS) {
      double middle = left + 0.5 * (right - left);
      double middleValue = depth(middle);
      double root = Math.sqrt(middleValue * middleValue - leftValue * rightValue);
      double guess =
          root > 0.0
              ? middle + (middle - left) * Math.copySign(1.0, leftValue) * middleValue / root
              : middle;
      double guessValue = depth(guess);
      boolean guessFirst = guess < middle;
      double inner = guessFirst ? guess : middle;
      double innerValue = guessFirst ? guessValue : middleValue;
      double outer = guessFirst ? middle : guess;
      double outerValue = guessFirst ? middleValue : guessValue;
      boolean leftInside = leftValue >= 0.0;
      if ((innerValue >= 0.0) != leftInside) {
        right = inner;
        rightValue = innerValue;
      } else if ((outerValue >= 0.0) != leftInside) {
        left = inner;
        leftValue = innerValue;
        right = outer;
        rightValue = outerValue;
      } else {
        left = outer;
        leftValue = outerValue;
      }
    }
    return left + 0.5 * (right - left);
  }

  /** The times at the height or on its wanted side. */
  Found<Window> windows() {
    List<Window> windows = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      if (runs.get(i).state() == State.INSIDE) {
        windows.add(
            new Window(TimeSpan.of(start(i), start(i + 1)), !hasData(i - 1), !hasData(i + 1)));
      }
    }
    return Found.of(windows, asked, seen(), notes());
  }

  /** The times at which the water comes to the wanted side. */
  Found<Instant> entries() {
    List<Instant> times = new ArrayList<>();
    for (int i = 1; i < runs.size(); i++) {
      if (runs.get(i).state() == State.INSIDE && hasData(i - 1)) {
        times.add(start(i));
      }
    }
    return Found.of(times, asked, seen(), notes());
  }

  private boolean hasData(int run) {
    return run >= 0 && run < runs.size() && runs.get(run).state() != State.NO_DATA;
  }

  /** Start of a run, end of the last one; the ends of the time asked to the nanosecond. */
  private Instant start(int run) {
    double seconds = run < runs.size() ? runs.get(run).from() : until;
    if (seconds == EpochSeconds.of(asked.from())) {
      return asked.from();
    }
    return seconds == EpochSeconds.of(asked.until())
        ? asked.until()
        : EpochSeconds.toInstant(seconds);
  }

  private List<TimeSpan> seen() {
    List<TimeSpan> seen = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      if (hasData(i) && !hasData(i - 1)) {
        int end = i + 1;
        while (hasData(end)) {
          end++;
        }
        seen.add(TimeSpan.of(start(i), start(end)));
      }
    }
    return seen;
  }

  /** What the level says of itself where the water passes and at the ends of the data. */
  private List<Note> notes() {
    Map<String, Note> byText = new LinkedHashMap<>();
    for (int i = 0; i <= runs.size(); i++) {
      if (hasData(i - 1) || hasData(i)) {
        level
            .explain(start(i))
            .notes()
            .forEach(note -> byText.putIfAbsent(note.code() + note.text(), note));
      }
    }
    return List.copyOf(byText.values());
  }
}
