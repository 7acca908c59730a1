package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.Window;

/**
 * When a curve passes a level. Between its high and low waters and its break points a curve goes
 * one way only, so that it passes a level there at most once.
 */
final class LevelSearch {
  /** Where the search for one passing ends, seconds. */
  private static final double CLOSE_ENOUGH_SECONDS = 1e-3;

  private final TideCurve curve;
  private final double levelMetres;

  /** The part of the time asked that the curve has data for; empty if from is not before to. */
  private final double from;

  private final double to;
  private final TimeSpan asked;

  /** Times of passing, in order. */
  private final List<Double> passings = new ArrayList<>();

  /** 1 if the wanted side is above the level, -1 if it is below. */
  private final double side;

  /** Whether the water is at the level or on the wanted side when the search begins. */
  private boolean startsInside;

  LevelSearch(
      TideCurve curve, double levelMetres, boolean wantedAbove, Instant from, Instant until) {
    this.curve = curve;
    this.side = wantedAbove ? 1.0 : -1.0;
    this.levelMetres = Arguments.finite(levelMetres, "level", "metres");
    requireForwards(from, until);
    this.asked = TimeSpan.of(from, until);
    this.from = Math.max(EpochSeconds.of(from), curve.startSeconds());
    this.to = Math.min(EpochSeconds.of(until), curve.endSeconds());
    if (this.from < this.to) {
      search();
      forgetTouches();
    }
  }

  static void requireForwards(Instant from, Instant until) {
    if (until.isBefore(from)) {
      throw new IllegalArgumentException(
          "end of a search must not be before its start, but start was "
              + from
              + " and end "
              + until);
    }
  }

  private void search() {
    startsInside = depth(from) >= 0.0;
    boolean inside = startsInside;
    List<TideEvent> waters = TideExtremes.between(curve, from, to);
    int next = 0;
    double start = from;
    while (start < to) {
      while (next < waters.size() && EpochSeconds.of(waters.get(next).time()) <= start) {
        next++;
      }
      double turn =
          next < waters.size()
              ? EpochSeconds.of(waters.get(next).time())
              : Double.POSITIVE_INFINITY;
      double end = Math.min(to, Math.min(turn, curve.nextBreakAfter(start)));
      double first = depth(start);
      if (first >= 0.0 != inside) { // the height jumped at a break point
        passings.add(start);
        inside = !inside;
      }
      double beforeEnd = Math.nextDown(end);
      double last = depth(beforeEnd);
      if (last >= 0.0 != inside) {
        passings.add(passing(start, first, beforeEnd, last));
        inside = !inside;
      }
      start = end;
    }
  }

  /** How far the water is on the wanted side of the level, metres. */
  private double depth(double seconds) {
    return side * (curve.heightMetres(seconds) - levelMetres);
  }

  /** A water that only touches the level passes it twice within the accuracy of the search. */
  private void forgetTouches() {
    for (int i = 0; i + 1 < passings.size(); ) {
      if (passings.get(i + 1) - passings.get(i) <= 2.0 * CLOSE_ENOUGH_SECONDS) {
        passings.subList(i, i + 2).clear();
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

  Found<TideCrossing> crossings() {
    List<TideCrossing> crossings = new ArrayList<>();
    List<Instant> times = new ArrayList<>();
    boolean inside = startsInside;
    for (double passing : passings) {
      inside = !inside;
      Instant time = EpochSeconds.toInstant(passing);
      crossings.add(new TideCrossing(time, inside == side > 0.0));
      times.add(time);
    }
    return found(curve, crossings, asked, times);
  }

  /** The times at the level or on its wanted side. */
  Found<Window> windows() {
    List<Window> windows = new ArrayList<>();
    List<Instant> times = new ArrayList<>();
    boolean inside = startsInside;
    double opened = from;
    boolean openBefore = true;
    for (double passing : passings) {
      times.add(EpochSeconds.toInstant(passing));
      if (inside) {
        windows.add(window(opened, passing, openBefore, false));
      } else {
        opened = passing;
        openBefore = false;
      }
      inside = !inside;
    }
    if (inside) {
      windows.add(window(opened, to, openBefore, true));
    }
    return found(curve, windows, asked, times);
  }

  private static Window window(double from, double until, boolean before, boolean after) {
    return new Window(
        TimeSpan.of(EpochSeconds.toInstant(from), EpochSeconds.toInstant(until)), before, after);
  }

  /**
   * An answer with what part of the time asked a curve has data for, and with the curve's notes at
   * the ends of that part and at some times in it, each text once.
   */
  static <T extends Serializable> Found<T> found(
      TideCurve curve, List<T> items, TimeSpan asked, List<Instant> noted) {
    List<TimeSpan> seen =
        curve.span().isPresent()
            ? asked.overlap(curve.span().get()).map(List::of).orElse(List.of())
            : List.of(asked);
    List<Instant> times = new ArrayList<>(noted);
    seen.forEach(span -> times.addAll(List.of(span.from(), span.until())));
    Map<String, Note> byText = new LinkedHashMap<>();
    for (Instant time : times) {
      curve.notesAt(time).forEach(note -> byText.putIfAbsent(note.code() + note.text(), note));
    }
    return Found.of(items, asked, seen, List.copyOf(byText.values()));
  }
}
