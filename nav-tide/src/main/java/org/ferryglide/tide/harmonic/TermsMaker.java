package org.ferryglide.tide.harmonic;

import java.util.List;

/**
 * Prepares the terms of a series for the stretch around a time: all time for corrections held for
 * good, a calendar year for those of its middle, 28 days for those of the instant.
 */
final class TermsMaker {
  private static final double DAY_SECONDS = 86400.0;
  private static final double HOUR_SECONDS = 3600.0;
  private static final double DRIFT_SECONDS = 28.0 * DAY_SECONDS;

  /** Mean Gregorian year, which finds a year but for the days around New Year. */
  private static final double YEAR_SECONDS = 365.2425 * DAY_SECONDS;

  /** Points that a cubic goes through. */
  private static final int POINTS = 4;

  /** Sizes and phases that change by no more than this in a stretch are smooth. */
  private static final double GENTLE_SHARE = 0.1;

  private static final double GENTLE_TURNS = 0.02;

  private final HarmonicConstants constants;
  private final NodalConvention convention;
  private final NodalScheme scheme;
  private final List<Constituent> constituents;
  private final double[] sizes;
  private final double[] lagsDegrees;
  private final double[] speeds;

  TermsMaker(HarmonicConstants constants, NodalConvention convention) {
    this.constants = constants;
    this.convention = convention;
    this.scheme = constants.scheme();
    this.constituents = constants.constituents();
    int count = constituents.size();
    sizes = new double[count];
    lagsDegrees = new double[count];
    speeds = new double[count];
    for (int i = 0; i < count; i++) {
      HarmonicConstant constant = constants.list().get(i);
      sizes[i] = constant.amplitude();
      lagsDegrees[i] = constant.greenwichLagDegrees();
      speeds[i] = constituents.get(i).speedDegreesPerHour() / (360.0 * HOUR_SECONDS);
    }
  }

  private boolean drifts() {
    return convention.equals(NodalConvention.AT_INSTANT);
  }

  /** Number of the stretch that a time is in; beside New Year it may be that of the year before. */
  int roughIndex(double seconds) {
    if (convention.isHeld()) {
      return 0;
    }
    return (int) Math.floor(seconds / (drifts() ? DRIFT_SECONDS : YEAR_SECONDS));
  }

  /** The terms of the stretch that contains a time. */
  Terms around(double seconds) {
    if (convention.isHeld()) {
      double held = convention.heldEpochSeconds();
      return steady(held, held, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
    if (drifts()) {
      return drifting(Math.floor(seconds / DRIFT_SECONDS) * DRIFT_SECONDS);
    }
    int year = CalendarYears.yearOf(seconds);
    double start = CalendarYears.startSeconds(year);
    double end = CalendarYears.startSeconds(year + 1);
    return steady(0.5 * (start + end), start, start, end);
  }

  /** Corrections of one time, V of an epoch and a steady advance from there. */
  private Terms steady(double nodes, double epoch, double start, double end) {
    int count = constituents.size();
    double[] corrections = new double[2 * count];
    scheme.corrections(nodes, constituents, corrections);
    double[] angles = new double[MeanLongitudes.COUNT];
    scheme.meanLongitudes().at(epoch, angles, 0);
    double[] steadySizes = new double[count];
    double[] phases = new double[count];
    for (int i = 0; i < count; i++) {
      steadySizes[i] = sizes[i] * corrections[2 * i];
      double degrees =
          constituents.get(i).argumentDegrees(angles) + corrections[2 * i + 1] - lagsDegrees[i];
      phases[i] = degrees / 360.0 - Math.rint(degrees / 360.0);
    }
    return new SteadyTerms(start, end, epoch, constants.mean(), speeds, steadySizes, phases);
  }

  private Terms drifting(double start) {
    int count = constituents.size();
    double half = 0.5 * DRIFT_SECONDS;
    double centre = start + half;
    double[][] size = new double[POINTS][count];
    double[][] phase = new double[POINTS][count];
    double[] corrections = new double[2 * count];
    double[] angles = new double[MeanLongitudes.COUNT];
    boolean isGentle = true;
    for (int k = 0; k < POINTS; k++) {
      double elapsed = half * Math.cos(turn(k));
      scheme.corrections(centre + elapsed, constituents, corrections);
      scheme.meanLongitudes().at(centre + elapsed, angles, 0);
      for (int i = 0; i < count; i++) {
        double degrees =
            constituents.get(i).argumentDegrees(angles) + corrections[2 * i + 1] - lagsDegrees[i];
        double turns = degrees / 360.0 - speeds[i] * elapsed;
        phase[k][i] = turns - Math.rint(turns - phase[0][i]); // no whole turn between the points
        size[k][i] = sizes[i] * corrections[2 * i];
        isGentle &=
            Math.abs(size[k][i] - size[0][i]) <= GENTLE_SHARE * size[0][i]
                && Math.abs(phase[k][i] - phase[0][i]) <= GENTLE_TURNS;
      }
    }
    double end = start + DRIFT_SECONDS;
    double mean = constants.mean();
    if (isGentle) {
      double[] powers = PolarTerms.powers(cubics(size), cubics(phase), count);
      return new PolarTerms(start, end, mean, speeds, powers);
    }
    double[][] real = new double[POINTS][count];
    double[][] imaginary = new double[POINTS][count];
    for (int k = 0; k < POINTS; k++) {
      for (int i = 0; i < count; i++) {
        real[k][i] = size[k][i] * Turns.cos(phase[k][i]);
        imaginary[k][i] = size[k][i] * Turns.sin(phase[k][i]);
      }
    }
    return new DriftingTerms(start, end, mean, speeds, cubics(real), cubics(imaginary));
  }

  /** Where the points of a cubic lie: those of Chebyshev, radians. */
  private static double turn(int k) {
    return Math.PI * (2 * k + 1) / (2 * POINTS);
  }

  /** The cubics through four values of each term, by power and then by term. */
  private static double[][] cubics(double[][] values) {
    int count = values[0].length;
    double[][] c = new double[POINTS][count];
    for (int k = 0; k < POINTS; k++) {
      for (int j = 0; j < POINTS; j++) {
        double share = (j == 0 ? 1.0 : 2.0) / POINTS * Math.cos(j * turn(k));
        for (int i = 0; i < count; i++) {
          c[j][i] += share * values[k][i];
        }
      }
    }
    toPowers(c, count);
    return c;
  }

  /** From Chebyshev polynomials to powers: T2 = 2x² - 1, T3 = 4x³ - 3x. */
  private static void toPowers(double[][] c, int count) {
    for (int i = 0; i < count; i++) {
      c[0][i] -= c[2][i];
      c[1][i] -= 3.0 * c[3][i];
      c[2][i] *= 2.0;
      c[3][i] *= 4.0;
    }
  }
}
