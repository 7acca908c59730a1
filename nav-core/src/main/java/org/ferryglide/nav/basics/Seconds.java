package org.ferryglide.nav.basics;

import java.time.Duration;

/** Durations as the arithmetic takes them, and back. */
public final class Seconds {
  private Seconds() {}

  private static final double PER_NANOSECOND = 1e-9;

  /** Seconds of a duration, fractions included. */
  public static double of(Duration duration) {
    return duration.getSeconds() + duration.getNano() * PER_NANOSECOND;
  }

  /** The duration of finite seconds, to the nearest nanosecond. */
  public static Duration toDuration(double seconds) {
    double whole = Math.floor(seconds);
    return Duration.ofSeconds((long) whole, Math.round((seconds - whole) / PER_NANOSECOND));
  }
}
