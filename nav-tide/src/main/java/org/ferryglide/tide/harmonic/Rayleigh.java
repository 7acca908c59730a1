package org.ferryglide.tide.harmonic;

import java.util.ArrayList;
import java.util.List;

/**
 * Which constituents a record can tell apart. One is left out if, over the record, it does not
 * drift far enough from the mean or from a more important one, be that found or itself left out for
 * want of length; if the readings are too far apart for it; or if one that they are too far apart
 * for looks like it.
 */
final class Rayleigh {
  /**
   * Turns that two constituents drift apart over a record that tells them apart. The criterion says
   * one turn; a calendar year has 0.9993 of the year of SA, T2 and R2, and a record of a whole
   * number of days is seldom longer than the turn it was made for.
   */
  static final double TELLS_APART = 0.97;

  /** Constituents found, in the order of the candidates. */
  final List<Constituent> chosen = new ArrayList<>();

  /** Those left out, each with what it runs together with: "N2 with M2". */
  final List<String> runTogether = new ArrayList<>();

  /** Those left out since readings as far apart as these look like another: "MSF like M2". */
  final List<String> aliased = new ArrayList<>();

  /** Those that turn more than half a turn between readings. */
  final List<Constituent> tooFast = new ArrayList<>();

  private final double spanSeconds;
  private final double stepSeconds;
  private final double leastTurns;

  /** Left out for want of length: what they leave in the record, others nearby would take up. */
  private final List<Constituent> unresolved = new ArrayList<>();

  private Rayleigh(ObservedSeries record, double leastTurns) {
    this.spanSeconds = record.spanSeconds() + record.medianStepSeconds();
    this.stepSeconds = record.medianStepSeconds();
    this.leastTurns = leastTurns;
  }

  /** Turns that two constituents drift apart over a record. */
  static double turnsApart(double oneSpeed, double otherSpeed, double spanSeconds) {
    return Math.abs(oneSpeed - otherSpeed) * spanSeconds / (3600.0 * 360.0);
  }

  /** Judges candidates in the order given, the most important first. */
  static Rayleigh choose(List<Constituent> candidates, ObservedSeries record, double leastTurns) {
    Rayleigh rule = new Rayleigh(record, leastTurns);
    double fastest = 180.0 * 3600.0 / rule.stepSeconds;
    for (Constituent candidate : candidates) {
      if (candidate.speedDegreesPerHour() >= fastest) {
        rule.tooFast.add(candidate);
      }
    }
    for (Constituent candidate : candidates) {
      if (candidate.speedDegreesPerHour() < fastest) {
        rule.judge(candidate);
      }
    }
    return rule;
  }

  private void judge(Constituent candidate) {
    double speed = candidate.speedDegreesPerHour();
    if (areTogether(speed, 0.0)) {
      leaveOut(candidate, "the mean", true);
      return;
    }
    for (Constituent other : unresolved) {
      if (areTogether(speed, other.speedDegreesPerHour())) {
        leaveOut(candidate, other.name(), true);
        return;
      }
    }
    for (Constituent other : chosen) {
      if (areTogether(speed, other.speedDegreesPerHour())) {
        leaveOut(candidate, other.name(), false);
        return;
      }
    }
    for (Constituent fast : tooFast) {
      if (areTogether(speed, aliasSpeed(fast))) {
        aliased.add(candidate.name() + " like " + fast.name());
        return;
      }
    }
    chosen.add(candidate);
  }

  private boolean areTogether(double oneSpeed, double otherSpeed) {
    return turnsApart(oneSpeed, otherSpeed, spanSeconds) < leastTurns;
  }

  private void leaveOut(Constituent candidate, String with, boolean hidesOthers) {
    runTogether.add(candidate.name() + " with " + with);
    if (hidesOthers) {
      unresolved.add(candidate);
    }
  }

  /** The slowest speed that gives the same readings at the record's steps, degrees an hour. */
  private double aliasSpeed(Constituent fast) {
    return Math.abs(Math.IEEEremainder(fast.speedDegreesPerHour(), 360.0 * 3600.0 / stepSeconds));
  }
}
