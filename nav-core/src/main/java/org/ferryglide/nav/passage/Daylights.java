package org.ferryglide.nav.passage;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.sky.Daylight;
import org.ferryglide.nav.sky.SunCrossing;
import org.ferryglide.nav.sky.SunDay;
import org.ferryglide.nav.sky.SunThreshold;

/**
 * The sun's comings and goings at a place, each day of UTC worked out once: a clock ashore may skip
 * a day, the sun does not.
 */
final class Daylights {
  /** What is told where the sun does not set, or rise, for days. */
  static final double LONGEST_SECONDS = 48.0 * 3600.0;

  /** The years of {@link SunDay}. */
  private static final int FIRST_YEAR = 1900;

  private static final int LAST_YEAR = 2100;

  private final Position place;
  private final SunThreshold light;
  private final ConcurrentMap<LocalDate, Daylight> days = new ConcurrentHashMap<>();

  Daylights(Position place, SunThreshold light) {
    this.light = light;
    this.place = place;
  }

  private Daylight day(LocalDate date) {
    Daylight known = days.get(date);
    return known != null
        ? known
        : days.computeIfAbsent(date, day -> SunDay.of(day, ZoneOffset.UTC, place).at(light));
  }

  /**
   * Seconds of daylight left at a time; negative in the dark: seconds until the sun rises. At most
   * two days either way; NaN outside the years that the sun is worked out for.
   */
  double leftAt(double time) {
    Instant instant = EpochSeconds.toInstant(time);
    LocalDate date = instant.atOffset(ZoneOffset.UTC).toLocalDate();
    if (date.getYear() <= FIRST_YEAR || date.getYear() >= LAST_YEAR) {
      return Double.NaN;
    }
    for (int i = 0; i <= 2; i++) {
      for (SunCrossing crossing : day(date.plusDays(i)).crossings()) {
        if (crossing.time().isAfter(instant)) {
          double next = Math.min(EpochSeconds.of(crossing.time()) - time, LONGEST_SECONDS);
          return crossing.rising() ? -next : next;
        }
      }
    }
    return day(date).isUpAt(instant) ? LONGEST_SECONDS : -LONGEST_SECONDS;
  }

  /**
   * Seconds of daylight left from a launch on, for a passage of some length: where the sun does not
   * set for days it is followed until the end, at most two days beyond it.
   */
  double leftFor(double launch, double seconds) {
    double left = leftAt(launch);
    while (left >= LONGEST_SECONDS && left < seconds + LONGEST_SECONDS) {
      double more = leftAt(launch + left);
      if (!(more > 0.0)) {
        return left;
      }
      left += more;
      if (more < LONGEST_SECONDS) {
        return left;
      }
    }
    return left;
  }
}
