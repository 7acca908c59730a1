package org.ferryglide.examples.page;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.passage.WhenToGo;
import org.ferryglide.nav.timing.Departure;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.Window;

/**
 * Every departure of the day as a bar: as high as the least margin of its checks, full at the limit
 * that warns. What is barred, not checked or not possible has its own hatch below the line.
 */
final class DeparturePicture {
  private static final double TOP = 14.0;
  private static final double LINE = 84.0;
  private static final double BARRED = 14.0;
  private static final double FULL = 56.0;
  private static final double MOST = 1.2;

  private DeparturePicture() {}

  static Svg of(WorkedPassage worked, Labels labels) {
    WhenToGo when = worked.day();
    DayFrame day = new DayFrame(worked);
    List<String> key = Wrapped.lines(labels.say("departures.key"), Ink.WIDTH - 12, Ink.SMALL);
    Svg svg =
        Svg.of(
            "departures",
            Ink.WIDTH,
            LINE + BARRED + 20 + 11 * key.size(),
            labels.say("departures.title", "date", worked.printed().date()),
            words(worked, labels));
    svg.rectangle(0, 0, Ink.WIDTH, svg.height(), "fill", "#fff");
    svg.hatch("stop", 4, 45, Ink.DANGER);
    svg.hatch("open", 4, 0, Ink.GREY);
    day.hours(svg, TOP, LINE + BARRED);
    for (double margin : new double[] {0.5, 1.0}) {
      double y = LINE - margin * FULL;
      svg.line(day.left(), y, day.right(), y, "stroke", Ink.GREY, "stroke-dasharray", "3 3");
    }
    svg.text(4, LINE - FULL + 3, "1", "font-size", "8");
    svg.text(4, LINE + 3, "0", "font-size", "8");
    Duration step =
        when.choices().size() < 2
            ? Duration.ofMinutes(10)
            : Duration.between(when.choices().get(0).time(), when.choices().get(1).time());
    for (Departure departure : when.choices()) {
      double x = day.x(departure.time());
      double wide = day.x(departure.time().plus(step)) - x;
      bar(svg, departure, x, Math.max(wide - 0.4, 0.4));
    }
    for (Window window : when.windows()) {
      double x = day.x(window.from());
      svg.rectangle(x, TOP - 8, Math.max(1.5, day.x(window.until()) - x), 5, "fill", Ink.BLACK);
    }
    svg.line(day.left(), LINE, day.right(), LINE, "stroke", Ink.BLACK, "stroke-width", "1.4");
    mark(svg, day.x(worked.departure()));
    double y = LINE + BARRED + 24;
    for (String line : key) {
      svg.text(6, y, line, "font-size", Svg.number(Ink.SMALL));
      y += 11;
    }
    return svg;
  }

  private static void mark(Svg svg, double x) {
    svg.line(
        x,
        TOP - 8,
        x,
        LINE + BARRED,
        "stroke",
        Ink.BLACK,
        "stroke-dasharray",
        "4 2",
        "stroke-width",
        "1.4");
    svg.polygon(
        new double[] {x, LINE + BARRED, x - 4, LINE + BARRED + 6, x + 4, LINE + BARRED + 6},
        "fill",
        Ink.BLACK);
  }

  private static void bar(Svg svg, Departure departure, double x, double wide) {
    if (!departure.outcome().isSolved()) {
      svg.rectangle(
          x, LINE, wide, BARRED, "fill", departure.isKnown() ? Ink.BLACK : svg.fill("open"));
      return;
    }
    boolean stopped =
        departure.verdicts().stream()
            .anyMatch(verdict -> verdict.answer() == Verdict.Answer.STOPPED);
    if (departure.isFit()) {
      double margin = Math.min(MOST, least(departure));
      double high = Math.max(1.0, margin * FULL);
      svg.rectangle(x, LINE - high, wide, high, "fill", Ink.WATER);
    } else {
      svg.rectangle(x, LINE, wide, BARRED, "fill", svg.fill(stopped ? "stop" : "open"));
    }
  }

  static double least(Departure departure) {
    double least = Double.POSITIVE_INFINITY;
    for (Verdict verdict : departure.verdicts()) {
      // what has no figure and holds has no margin either: it would cut every bar at 1
      boolean counts = verdict.figure().isPresent() || verdict.answer() != Verdict.Answer.WITHIN;
      least = counts ? Math.min(least, verdict.margin().orElse(Double.POSITIVE_INFINITY)) : least;
    }
    return least;
  }

  private static String words(WorkedPassage worked, Labels labels) {
    StringBuilder words = new StringBuilder();
    for (Window window : worked.day().windows()) {
      words.append(window(worked.printed(), labels, window)).append(". ");
    }
    return words.isEmpty() ? labels.say("departures.none") : words.toString().trim();
  }

  /** A window cut to whole minutes inward. */
  static String window(Printed printed, Labels labels, Window window) {
    Instant until = window.until();
    return labels.say(
        "departures.window", "from", printed.late(window.from()), "until", printed.early(until));
  }
}
