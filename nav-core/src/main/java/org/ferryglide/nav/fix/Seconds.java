package org.ferryglide.nav.fix;

import java.time.Duration;

/** Durations as the arithmetic takes them. */
final class Seconds {
  private Seconds() {}

  private static final double PER_NANOSECOND = 1e-9;

  /** Seconds of a duration, fractions included. */
  static double of(Duration duration) {
    return duration.getSeconds() + duration.getNano() * PER_NANOSECOND;
  }
}
