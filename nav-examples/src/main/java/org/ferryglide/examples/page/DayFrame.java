package org.ferryglide.examples.page;

import java.time.Duration;
import java.time.Instant;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.passage.TimedPlan;

/** A day from side to side, midnight to midnight by the clock of the passage. */
final class DayFrame {
  private static final double LEFT = 24.0;
  private static final double RIGHT = 15.0;

  private final Instant from;
  private final Instant until;
  private final Printed printed;

  DayFrame(WorkedPassage worked) {
    printed = worked.printed();
    from = printed.day().atStartOfDay(printed.zone()).toInstant();
    Instant midnight = printed.day().plusDays(1).atStartOfDay(printed.zone()).toInstant();
    Instant end = worked.plan().solved().map(TimedPlan::landed).orElse(midnight);
    // a passage past midnight takes the hours it needs
    until = end.isAfter(midnight) ? end.plus(Duration.ofHours(1)) : midnight;
  }

  Instant from() {
    return from;
  }

  Instant until() {
    return until;
  }

  double left() {
    return LEFT;
  }

  double right() {
    return Ink.WIDTH - RIGHT;
  }

  double x(Instant time) {
    double share =
        (double) Duration.between(from, time).toMillis() / Duration.between(from, until).toMillis();
    return LEFT + Math.max(0.0, Math.min(1.0, share)) * (right() - LEFT);
  }

  /**
   * From line to line of an axis, so that it has no more than some: 1, 2 or 5 times ten to a power.
   */
  static double step(double span, int most) {
    double step = Math.pow(10.0, Math.floor(Math.log10(span / most)));
    for (double times : new double[] {1.0, 2.0, 5.0}) {
      if (span / (step * times) <= most) {
        return step * times;
      }
    }
    return 10.0 * step;
  }

  /** A level line across a picture, with its figure. */
  void level(Svg svg, double y, String figure) {
    svg.line(left(), y, right(), y, "stroke", Ink.PALE);
    svg.text(left() - 4, y + 3, figure, "font-size", "8", "text-anchor", "end");
  }

  /** Hours below a picture, a line through it every three. */
  void hours(Svg svg, double top, double bottom) {
    long step = Duration.between(from, until).toHours() > 30 ? 6 : 3;
    for (Instant time = from; !time.isAfter(until); time = time.plus(Duration.ofHours(1))) {
      long hour = Duration.between(from, time).toHours();
      boolean named = hour % step == 0;
      svg.line(
          x(time),
          named ? top : bottom - 3,
          x(time),
          bottom,
          "stroke",
          named ? Ink.PALE : Ink.GREY);
      if (named) {
        String clock = printed.early(time);
        svg.text(
            x(time),
            bottom + 10,
            clock.substring(0, 5), // the day beside it says which midnight
            "font-size",
            "8",
            "text-anchor",
            "middle");
      }
    }
  }

  /** The passage as a hatched stretch between two upright lines. */
  void passage(Svg svg, WorkedPassage worked, double top, double bottom) {
    worked
        .plan()
        .solved()
        .ifPresent(
            plan -> {
              double begin = x(plan.launch());
              double end = x(plan.landed());
              svg.hatch("passage", 4, 45, Ink.GREY);
              svg.rectangle(
                  begin,
                  top,
                  Math.max(1.0, end - begin),
                  bottom - top,
                  "fill",
                  svg.fill("passage"),
                  "fill-opacity",
                  "0.6",
                  "stroke",
                  Ink.BLACK);
            });
  }
}
