package org.ferryglide.nav.passage;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.sky.Daylight;
import org.ferryglide.nav.sky.SunCrossing;
import org.ferryglide.nav.sky.SunDay;
import org.ferryglide.nav.sky.SunState;
import org.ferryglide.nav.water.EpochSeconds;

/** The sun's comings and goings at a place, each day worked out once. */
final class Daylights {
  /** What is told where the sun does not set, or rise, for days. */
  static final double LONGEST_SECONDS = 48.0 * 3600.0;

  private final Position place;
  private final ZoneId zone;
  private final ConcurrentMap<LocalDate, Daylight> days = new ConcurrentHashMap<>();

  Daylights(Position place, ZoneId zone) {
    this.place = place;
    this.zone = zone;
  }

  private Daylight day(LocalDate date) {
    return days.computeIfAbsent(date, day -> SunDay.of(day, zone, place).daylight());
  }

  /**
   * Seconds of daylight left at a time; negative in the dark: seconds until the sun rises. At most
   * two days either way.
   */
  double leftAt(double time) {
    Instant instant = EpochSeconds.toInstant(time);
    LocalDate date = instant.atZone(zone).toLocalDate();
    List<SunCrossing> later = new ArrayList<>();
    for (int i = 0; i <= 2; i++) {
      for (SunCrossing crossing : day(date.plusDays(i)).crossings()) {
        if (crossing.time().isAfter(instant)) {
          later.add(crossing);
        }
      }
    }
    if (later.isEmpty()) {
      return isUpWithoutCrossing(date, instant) ? LONGEST_SECONDS : -LONGEST_SECONDS;
    }
    double next = EpochSeconds.of(later.get(0).time()) - time;
    boolean up = !later.get(0).rising();
    return up ? Math.min(next, LONGEST_SECONDS) : -Math.min(next, LONGEST_SECONDS);
  }

  private boolean isUpWithoutCrossing(LocalDate date, Instant instant) {
    Daylight today = day(date);
    if (today.state() != SunState.CROSSES) {
      return today.state() == SunState.ALWAYS_UP;
    }
    boolean up = !today.crossings().get(0).rising();
    for (SunCrossing crossing : today.crossings()) {
      if (!crossing.time().isAfter(instant)) {
        up = crossing.rising();
      }
    }
    return up;
  }
}
