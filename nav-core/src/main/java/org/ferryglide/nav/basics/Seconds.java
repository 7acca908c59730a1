package org.ferryglide.nav.basics;

import java.time.Duration;

/** Durations as the arithmetic takes them. */
public final class Seconds {
  private Seconds() {}

  private static final double PER_NANOSECOND = 1e-9;

  /** Seconds of a duration, fractions included. */
  public static double of(Duration duration) {
    return duration.getSeconds() + duration.getNano() * PER_NANOSECOND;
  }
}
