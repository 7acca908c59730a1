package org.ferryglide.examples;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.sky.Daylight;
import org.ferryglide.nav.sky.SunCrossing;
import org.ferryglide.nav.sky.SunDay;
import org.ferryglide.nav.sky.SunThreshold;

/** Sunrise and sunset beside a plan, at places where they may not happen too. */
final class Light {
  private Light() {}

  /** When the sun is above a threshold, on the days from one to another. */
  static List<TimeSpan> spans(
      SunThreshold threshold, Position place, LocalDate first, LocalDate last, ZoneOffset offset) {
    List<TimeSpan> spans = new ArrayList<>();
    for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
      Daylight light = SunDay.of(day, offset, place).at(threshold);
      Instant midnight = day.atStartOfDay(offset).toInstant();
      Instant next = day.plusDays(1).atStartOfDay(offset).toInstant();
      boolean up = light.upAtStart();
      Instant since = midnight;
      for (SunCrossing crossing : light.crossings()) {
        if (up && !crossing.rising()) {
          add(spans, since, crossing.time());
        }
        up = crossing.rising();
        since = crossing.time();
      }
      if (up) {
        add(spans, since, next);
      }
    }
    return spans;
  }

  /** Adds a span; one that begins where the last ends goes on with it. */
  private static void add(List<TimeSpan> spans, Instant from, Instant until) {
    if (!until.isAfter(from)) {
      return;
    }
    int last = spans.size() - 1;
    if (last >= 0 && spans.get(last).until().equals(from)) {
      spans.set(last, TimeSpan.of(spans.get(last).from(), until));
    } else {
      spans.add(TimeSpan.of(from, until));
    }
  }

  /** What the sun does about an arrival, in a few words. */
  static String at(Position place, Instant time, Page page) {
    LocalDate day = time.atOffset(page.offset()).toLocalDate();
    List<TimeSpan> spans =
        spans(
            SunThreshold.SUNRISE_AND_SUNSET,
            place,
            day.minusDays(1),
            day.plusDays(1),
            page.offset());
    Instant end = day.plusDays(2).atStartOfDay(page.offset()).toInstant();
    for (TimeSpan span : spans) {
      if (!time.isBefore(span.from()) && !time.isAfter(span.until())) {
        return span.until().equals(end)
            ? page.say("text.sun-up")
            : page.say("text.sunset", "time", page.clock(span.until()));
      }
    }
    return spans.stream()
        .filter(span -> span.from().isAfter(time))
        .findFirst()
        .map(span -> page.say("text.sun-down-until", "time", page.clock(span.from())))
        .orElseGet(() -> page.say("text.sun-down"));
  }
}
