package org.ferryglide.examples.page;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.sky.Daylight;
import org.ferryglide.nav.sky.SunCrossing;
import org.ferryglide.nav.sky.SunDay;
import org.ferryglide.nav.sky.SunThreshold;

/** A band of daylight at the landing with the hours of the passage on it. */
final class DaylightPicture {
  private static final double TOP = 16.0;
  private static final double BOTTOM = 52.0;

  private DaylightPicture() {}

  static Svg of(WorkedPassage worked, Labels labels) {
    DayFrame day = new DayFrame(worked);
    Position place =
        worked.passage().wayPoints().get(worked.passage().wayPoints().size() - 1).position();
    SunDay sun = SunDay.of(worked.printed().day(), worked.printed().zone(), place);
    String light = words(worked.printed(), labels, sun);
    String words = worked.plan().isSolved() ? light + " " + labels.say("daylight.bar") : light;
    List<String> lines = Wrapped.lines(words, Ink.WIDTH - 16, Ink.SMALL);
    Svg svg =
        Svg.of(
            "daylight",
            Ink.WIDTH,
            BOTTOM + 16 + 12 * lines.size() + 4,
            labels.say("daylight.title", "date", worked.printed().date()),
            words);
    svg.rectangle(0, 0, Ink.WIDTH, svg.height(), "fill", "#fff");
    svg.hatch("night", 3, 0, Ink.BLACK);
    svg.hatch("twilight", 6, 0, Ink.GREY);
    svg.rectangle(
        day.left(), TOP, day.right() - day.left(), BOTTOM - TOP, "fill", svg.fill("night"));
    up(worked, day, place, SunThreshold.CIVIL_TWILIGHT)
        .forEach(span -> band(svg, day, span, "#fff", svg.fill("twilight")));
    up(worked, day, place, SunThreshold.SUNRISE_AND_SUNSET)
        .forEach(span -> band(svg, day, span, "#fff", "none"));
    svg.rectangle(
        day.left(),
        TOP,
        day.right() - day.left(),
        BOTTOM - TOP,
        "fill",
        "none",
        "stroke",
        Ink.BLACK);
    worked
        .plan()
        .solved()
        .ifPresent(
            plan -> {
              double begin = day.x(plan.launch());
              double end = day.x(plan.landed());
              svg.rectangle(
                  begin,
                  TOP + 12,
                  Math.max(1, end - begin),
                  12,
                  "fill",
                  Ink.BLACK,
                  "stroke",
                  "#fff",
                  "stroke-width",
                  "1.5");
              String clock =
                  worked
                      .printed()
                      .span(
                          worked.printed().early(plan.launch()),
                          worked.printed().late(plan.landed()));
              Ink.words(
                  svg,
                  Math.max(day.left() + 30, Math.min(day.right() - 34, (begin + end) / 2)),
                  TOP - 4,
                  clock,
                  Ink.SMALL,
                  "text-anchor",
                  "middle",
                  "font-weight",
                  "700");
            });
    day.hours(svg, BOTTOM - 3, BOTTOM);
    double y = BOTTOM + 14;
    for (String line : lines) {
      y += 12;
      svg.text(8, y, line, "font-size", Svg.number(Ink.SMALL));
    }
    return svg;
  }

  private static void band(Svg svg, DayFrame day, Instant[] span, String under, String fill) {
    double x = day.x(span[0]);
    double wide = day.x(span[1]) - x;
    svg.rectangle(x, TOP, wide, BOTTOM - TOP, "fill", under);
    if (!fill.equals("none")) {
      svg.rectangle(x, TOP, wide, BOTTOM - TOP, "fill", fill);
    }
  }

  /** The spans of the picture in which the sun is above a threshold. */
  private static List<Instant[]> up(
      WorkedPassage worked, DayFrame day, Position place, SunThreshold threshold) {
    List<Instant[]> spans = new ArrayList<>();
    LocalDate date = worked.printed().day();
    while (date.atStartOfDay(worked.printed().zone()).toInstant().isBefore(day.until())) {
      Daylight light = SunDay.of(date, worked.printed().zone(), place).at(threshold);
      Instant begin = date.atStartOfDay(worked.printed().zone()).toInstant();
      Instant end = date.plusDays(1).atStartOfDay(worked.printed().zone()).toInstant();
      boolean up = light.upAtStart();
      Instant from = begin;
      for (SunCrossing crossing : light.crossings()) {
        if (up) {
          spans.add(new Instant[] {from, crossing.time()});
        }
        from = crossing.time();
        up = crossing.rising();
      }
      if (up) {
        spans.add(new Instant[] {from, end});
      }
      date = date.plusDays(1);
    }
    return spans;
  }

  /** Sunset down, sunrise up: less light than there is. */
  static String words(Printed printed, Labels labels, SunDay sun) {
    Daylight light = sun.daylight();
    if (light.crossings().isEmpty()) {
      return labels.say(light.isUpAllDay() ? "daylight.all-day" : "daylight.none");
    }
    return labels.say(
        "daylight.words",
        "rise",
        light.rise().map(printed::late).orElse("__:__"),
        "set",
        light.set().map(printed::early).orElse("__:__"),
        "dawn",
        sun.civilTwilight().rise().map(printed::late).orElse("__:__"),
        "dusk",
        sun.civilTwilight().set().map(printed::early).orElse("__:__"));
  }
}
