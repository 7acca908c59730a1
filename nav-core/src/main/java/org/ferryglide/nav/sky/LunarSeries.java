package org.ferryglide.nav.sky;

/**
 * The instants of the moon's phases from the periodic terms of Meeus.
 *
 * <p>What vouches for each term is the check of the whole: the book's two worked examples to 2 s
 * and 1237 phases of PyEphem within 30 s; see the tests. Angles are radians inside, times days of
 * dynamical time.
 *
 * @see "Meeus, Astronomical Algorithms, 2nd edition (1998), chapter 49"
 */
final class LunarSeries {
  private LunarSeries() {}

  /** Dynamical time less universal time, seconds; within 16 s of the true value 1985 to 2050. */
  private static final double DYNAMICAL_LESS_UNIVERSAL_SECONDS = 70.0;

  /** Julian date of 1970-01-01T00:00:00Z. */
  private static final double JULIAN_DATE_OF_1970 = 2440587.5;

  private static final double SECONDS_PER_DAY = 86400.0;

  /** Mean new moon of lunation 0 (6 January 2000), Julian ephemeris date. */
  private static final double FIRST_NEW_MOON = 2451550.09766;

  /** Mean synodic month, days. */
  static final double SYNODIC_MONTH_DAYS = 29.530588861;

  /** Multiples of M, M', F and Omega, then the power of E, shared by new and full moon. */
  private static final int[][] SYZYGY = {
    {0, 1, 0, 0, 0}, {1, 0, 0, 0, 1}, {0, 2, 0, 0, 0}, {0, 0, 2, 0, 0}, {-1, 1, 0, 0, 1},
    {1, 1, 0, 0, 1}, {2, 0, 0, 0, 2}, {0, 1, -2, 0, 0}, {0, 1, 2, 0, 0}, {1, 2, 0, 0, 1},
    {0, 3, 0, 0, 0}, {1, 0, 2, 0, 1}, {1, 0, -2, 0, 1}, {-1, 2, 0, 0, 1}, {0, 0, 0, 1, 0},
    {2, 1, 0, 0, 0}, {0, 2, -2, 0, 0}, {3, 0, 0, 0, 0}, {1, 1, -2, 0, 0}, {0, 2, 2, 0, 0},
    {1, 1, 2, 0, 0}, {-1, 1, 2, 0, 0}, {-1, 1, -2, 0, 0}, {1, 3, 0, 0, 0}, {0, 4, 0, 0, 0}
  };

  private static final double[] NEW = {
    -0.40720, 0.17241, 0.01608, 0.01039, 0.00739,
    -0.00514, 0.00208, -0.00111, -0.00057, 0.00056,
    -0.00042, 0.00042, 0.00038, -0.00024, -0.00017,
    -0.00007, 0.00004, 0.00004, 0.00003, 0.00003,
    -0.00003, 0.00003, -0.00002, -0.00002, 0.00002
  };

  private static final double[] FULL = {
    -0.40614, 0.17302, 0.01614, 0.01043, 0.00734,
    -0.00515, 0.00209, -0.00111, -0.00057, 0.00056,
    -0.00042, 0.00042, 0.00038, -0.00024, -0.00017,
    -0.00007, 0.00004, 0.00004, 0.00003, 0.00003,
    -0.00003, 0.00003, -0.00002, -0.00002, 0.00002
  };

  /** As {@link #SYZYGY}, for the quarters. */
  private static final int[][] QUADRATURE = {
    {0, 1, 0, 0, 0}, {1, 0, 0, 0, 1}, {1, 1, 0, 0, 1}, {0, 2, 0, 0, 0}, {0, 0, 2, 0, 0},
    {-1, 1, 0, 0, 1}, {2, 0, 0, 0, 2}, {0, 1, -2, 0, 0}, {0, 1, 2, 0, 0}, {0, 3, 0, 0, 0},
    {-1, 2, 0, 0, 1}, {1, 0, 2, 0, 1}, {1, 0, -2, 0, 1}, {2, 1, 0, 0, 2}, {1, 2, 0, 0, 1},
    {0, 0, 0, 1, 0}, {-1, 1, -2, 0, 0}, {0, 2, 2, 0, 0}, {1, 1, 2, 0, 0}, {-2, 1, 0, 0, 0},
    {1, 1, -2, 0, 0}, {3, 0, 0, 0, 0}, {0, 2, -2, 0, 0}, {-1, 1, 2, 0, 0}, {1, 3, 0, 0, 0}
  };

  private static final double[] QUARTER = {
    -0.62801, 0.17172, -0.01183, 0.00862, 0.00804,
    0.00454, 0.00204, -0.00180, -0.00070, -0.00040,
    -0.00034, 0.00032, 0.00032, -0.00028, 0.00027,
    -0.00017, -0.00005, 0.00004, -0.00004, 0.00004,
    0.00003, 0.00003, 0.00002, 0.00002, -0.00002
  };

  /** Planetary terms: amplitude in days, constant in degrees, degrees per lunation. */
  private static final double[][] PLANETARY = {
    {0.000325, 299.77, 0.107408}, {0.000165, 251.88, 0.016321}, {0.000164, 251.83, 26.651886},
    {0.000126, 349.42, 36.412478}, {0.000110, 84.66, 18.206239}, {0.000062, 141.74, 53.303771},
    {0.000060, 207.14, 2.453732}, {0.000056, 154.84, 7.306860}, {0.000047, 34.52, 27.261239},
    {0.000042, 207.19, 0.121824}, {0.000040, 291.34, 1.844379}, {0.000037, 161.72, 24.198154},
    {0.000035, 239.56, 25.513099}, {0.000023, 331.55, 3.592518}
  };

  /** The squared term of the first planetary argument, degrees per century squared. */
  private static final double FIRST_PLANETARY_SQUARED = -0.009173;

  /**
   * When a phase happens.
   *
   * @param quarters quarters of lunations since the new moon of 6 January 2000; its remainder by 4
   *     is the phase
   * @return seconds since 1970-01-01T00:00:00Z
   */
  static double epochSeconds(int quarters) {
    return (julianEphemerisDate(quarters) - JULIAN_DATE_OF_1970) * SECONDS_PER_DAY
        - DYNAMICAL_LESS_UNIVERSAL_SECONDS;
  }

  /** As {@link #epochSeconds}, as a Julian ephemeris date (dynamical time). */
  static double julianEphemerisDate(int quarters) {
    double k = quarters / 4.0;
    double t = k / 1236.85; // centuries since 2000
    double e = 1.0 - t * (0.002516 + t * 0.0000074);
    double sun = Math.toRadians(2.5534 + 29.10535670 * k - t * t * (0.0000014 + t * 0.00000011));
    double moon =
        Math.toRadians(
            201.5643 + 385.81693528 * k + t * t * (0.0107582 + t * (0.00001238 - t * 0.000000058)));
    double latitude =
        Math.toRadians(
            160.7108 + 390.67050284 * k - t * t * (0.0016118 + t * (0.00000227 - t * 0.000000011)));
    double node = Math.toRadians(124.7746 - 1.56375588 * k + t * t * (0.0020672 + t * 0.00000215));
    double mean =
        FIRST_NEW_MOON
            + SYNODIC_MONTH_DAYS * k
            + t * t * (0.00015437 - t * (0.000000150 - t * 0.00000000073));
    int phase = Math.floorMod(quarters, 4);
    int[][] multiples = phase % 2 == 0 ? SYZYGY : QUADRATURE;
    double[] amplitudes = phase == 0 ? NEW : phase == 2 ? FULL : QUARTER;
    double sum = 0.0;
    for (int i = 0; i < amplitudes.length; i++) {
      int[] m = multiples[i];
      double angle = m[0] * sun + m[1] * moon + m[2] * latitude + m[3] * node;
      sum += amplitudes[i] * (m[4] == 0 ? 1.0 : m[4] == 1 ? e : e * e) * Math.sin(angle);
    }
    if (phase % 2 != 0) {
      double w =
          0.00306
              - 0.00038 * e * Math.cos(sun)
              + 0.00026 * Math.cos(moon)
              - 0.00002 * Math.cos(moon - sun)
              + 0.00002 * Math.cos(moon + sun)
              + 0.00002 * Math.cos(2.0 * latitude);
      sum += phase == 1 ? w : -w;
    }
    return mean + sum + planetary(k, t);
  }

  private static double planetary(double k, double t) {
    double sum = 0.0;
    for (int i = 0; i < PLANETARY.length; i++) {
      double[] term = PLANETARY[i];
      double degrees = term[1] + term[2] * k + (i == 0 ? FIRST_PLANETARY_SQUARED * t * t : 0.0);
      sum += term[0] * Math.sin(Math.toRadians(degrees));
    }
    return sum;
  }
}
