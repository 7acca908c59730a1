package org.ferryglide.tide.harmonic;

/**
 * Where the mean moon and the mean sun stand: the slowly turning angles that every constituent's
 * argument is a sum of.
 *
 * <p>Six angles, in the order of Doodson's numbers: τ, the mean lunar time counted from the moon's
 * lower transit; s, the moon; h, the sun; p, the moon's perigee; N′, the ascending node with its
 * sign turned; p₁, the sun's perigee. All are referred to Greenwich and to Universal Time.
 *
 * <pre>{@code
 * double[] angles = new double[MeanLongitudes.COUNT];
 * MeanLongitudes.SCHUREMAN.at(epochSeconds, angles, 0);
 * double moonDegrees = angles[MeanLongitudes.S];
 * }</pre>
 *
 * <p>The two series differ by less than 0.04° between 1900 and 2100. A station's constants belong
 * to the series, and to the nodal scheme, that they were found with.
 */
enum MeanLongitudes {
  /**
   * The polynomials of Schureman, Manual of Harmonic Analysis and Prediction of Tides, US Coast and
   * Geodetic Survey Special Publication 98 (1958), table 1: moon after Brown, sun after Newcomb.
   */
  SCHUREMAN(
      36525.0,
      new double[][] {
        {
          degrees(270, 26, 14.72),
          1336 * 360.0 + seconds(1108411.20),
          seconds(9.09),
          seconds(0.0068)
        },
        {degrees(279, 41, 48.04), seconds(129602768.13), seconds(1.089), 0.0},
        {
          degrees(334, 19, 40.87), 11 * 360.0 + seconds(392515.94), seconds(-37.24), seconds(-0.045)
        },
        {-degrees(259, 10, 57.12), 5 * 360.0 + seconds(482912.63), seconds(-7.58), seconds(-0.008)},
        {degrees(281, 13, 15.0), seconds(6189.03), seconds(1.63), seconds(0.012)}
      }),

  /**
   * The polynomials of the Explanatory Supplement to the Astronomical Ephemeris (1961), pages 98
   * and 107, as Foreman, Manual for Tidal Heights Analysis and Prediction, Pacific Marine Science
   * Report 77-10 (1977), uses them.
   */
  EXPLANATORY_SUPPLEMENT(
      10000.0,
      new double[][] {
        {270.434164, 131763.965268, -0.0000850, 0.000000039},
        {279.696678, 9856.473354, 0.00002267, 0.0},
        {334.329556, 1114.040803, -0.0007739, -0.00000026},
        {-259.183275, 529.539222, -0.0001557, -0.000000050},
        {281.220844, 0.470684, 0.0000339, 0.000000070}
      });

  /** How many angles there are. */
  public static final int COUNT = 6;

  /** Index of τ, the mean lunar time. */
  public static final int TAU = 0;

  /** Index of s, the mean longitude of the moon. */
  public static final int S = 1;

  /** Index of h, the mean longitude of the sun. */
  public static final int H = 2;

  /** Index of p, the mean longitude of the moon's perigee. */
  public static final int P = 3;

  /** Index of N′, the mean longitude of the moon's ascending node with its sign turned. */
  public static final int N_PRIME = 4;

  /** Index of p₁, the mean longitude of the sun's perigee. */
  public static final int P1 = 5;

  /** 1899-12-31T12:00:00Z in seconds since 1970, where both series start. */
  private static final double START_EPOCH_SECONDS = -2209032000.0;

  private static final double DAY_SECONDS = 86400.0;

  /** Days that the polynomials count as one. */
  private final double unitDays;

  /** Coefficients of s, h, p, N′ and p₁, degrees, constant first; never written. */
  @SuppressWarnings("ImmutableEnumChecker")
  private final double[][] coefficients;

  MeanLongitudes(double unitDays, double[][] coefficients) {
    this.unitDays = unitDays;
    this.coefficients = coefficients;
  }

  private static double degrees(int degrees, int minutes, double seconds) {
    return degrees + minutes / 60.0 + seconds / 3600.0;
  }

  private static double seconds(double seconds) {
    return seconds / 3600.0;
  }

  /**
   * The angles at an instant, without allocation.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z; NaN gives NaN
   * @param out receives τ, s, h, p, N′ and p₁, degrees, in [0, 360), to about 1e-10 as rounded
   * @param offset index of τ in {@code out}
   */
  public void at(double epochSeconds, double[] out, int offset) {
    double time = (epochSeconds - START_EPOCH_SECONDS) / (DAY_SECONDS * unitDays);
    for (int i = 0; i < coefficients.length; i++) {
      double[] c = coefficients[i];
      out[offset + 1 + i] = reduced(c[0] + time * (c[1] + time * (c[2] + time * c[3])));
    }
    double dayFraction = epochSeconds / DAY_SECONDS;
    dayFraction -= Math.floor(dayFraction);
    out[offset] = reduced(360.0 * dayFraction + out[offset + H] - out[offset + S]);
  }

  /**
   * How fast the angles turn at an instant, without allocation.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z; NaN gives NaN
   * @param out receives the speeds of τ, s, h, p, N′ and p₁, degrees an hour
   * @param offset index of the speed of τ in {@code out}
   */
  public void ratesAt(double epochSeconds, double[] out, int offset) {
    double time = (epochSeconds - START_EPOCH_SECONDS) / (DAY_SECONDS * unitDays);
    for (int i = 0; i < coefficients.length; i++) {
      double[] c = coefficients[i];
      out[offset + 1 + i] = (c[1] + time * (2.0 * c[2] + time * 3.0 * c[3])) / (24.0 * unitDays);
    }
    out[offset] = 15.0 + out[offset + H] - out[offset + S];
  }

  private static double reduced(double degrees) {
    double turned = degrees - 360.0 * Math.floor(degrees / 360.0);
    return turned >= 360.0 ? 0.0 : turned;
  }
}
