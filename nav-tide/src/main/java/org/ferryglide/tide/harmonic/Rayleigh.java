package org.ferryglide.tide.harmonic;

import java.util.ArrayList;
import java.util.List;

/** Which constituents a record is long enough to tell apart. */
final class Rayleigh {
  private Rayleigh() {}

  /** Turns that two constituents drift apart over a record; at least 1 tells them apart well. */
  static double turnsApart(double oneSpeed, double otherSpeed, double spanSeconds) {
    return Math.abs(oneSpeed - otherSpeed) * spanSeconds / (3600.0 * 360.0);
  }

  /**
   * Constituents in the order given, each if it is apart from the mean and from all before it, and
   * turns at most half a turn between values.
   */
  static List<Constituent> choose(
      List<Constituent> candidates, ObservedSeries record, double leastTurns) {
    double fastest = 180.0 * 3600.0 / record.medianStepSeconds();
    List<Constituent> chosen = new ArrayList<>();
    for (Constituent candidate : candidates) {
      double speed = candidate.speedDegreesPerHour();
      boolean apart =
          speed < fastest
              && turnsApart(speed, 0.0, record.spanSeconds()) >= leastTurns
              && chosen.stream()
                  .allMatch(
                      other ->
                          turnsApart(speed, other.speedDegreesPerHour(), record.spanSeconds())
                              >= leastTurns);
      if (apart) {
        chosen.add(candidate);
      }
    }
    return chosen;
  }
}
