package org.ferryglide.nav.grid;

/**
 * Coefficients of the series between the latitudes and the plane of the transverse Mercator
 * projection, to the sixth order in the third flattening n = f / (2 - f).
 *
 * <p>What is left out is of the order of n⁷: below 8e-18 radians for the earth's ellipsoids (50
 * millionths of a nanometre), below 1e-15 radians (6 nanometres) for a flattening of 1/150,
 * measured at 23 latitudes against 60-digit arithmetic.
 *
 * @see <a href="https://doi.org/10.1007/s00190-011-0445-3">Karney (2011), Transverse Mercator with
 *     an accuracy of a few nanometers, Journal of Geodesy 85, eqs. 35 and 36, for the plane</a>
 * @see <a href="https://arxiv.org/abs/2212.05818">Karney (2022), On auxiliary latitudes, for the
 *     conformal latitude</a>
 */
final class KruegerSeries {
  private KruegerSeries() {}

  /** From geographic latitude to conformal latitude. */
  static SineSeries geographicToConformal(double n) {
    return new SineSeries(
        n
            * (-2
                + n
                    * (2 / 3.0
                        + n
                            * (4 / 3.0
                                + n * (-82 / 45.0 + n * (32 / 45.0 + n * (4642 / 4725.0)))))),
        n
            * n
            * (5 / 3.0
                + n * (-16 / 15.0 + n * (-13 / 9.0 + n * (904 / 315.0 + n * (-1522 / 945.0))))),
        power(n, 3) * (-26 / 15.0 + n * (34 / 21.0 + n * (8 / 5.0 + n * (-12686 / 2835.0)))),
        power(n, 4) * (1237 / 630.0 + n * (-12 / 5.0 + n * (-24832 / 14175.0))),
        power(n, 5) * (-734 / 315.0 + n * (109598 / 31185.0)),
        power(n, 6) * (444337 / 155925.0));
  }

  /** From conformal latitude to geographic latitude. */
  static SineSeries conformalToGeographic(double n) {
    return new SineSeries(
        n
            * (2
                + n
                    * (-2 / 3.0
                        + n * (-2 + n * (116 / 45.0 + n * (26 / 45.0 + n * (-2854 / 675.0)))))),
        n
            * n
            * (7 / 3.0
                + n * (-8 / 5.0 + n * (-227 / 45.0 + n * (2704 / 315.0 + n * (2323 / 945.0))))),
        power(n, 3) * (56 / 15.0 + n * (-136 / 35.0 + n * (-1262 / 105.0 + n * (73814 / 2835.0)))),
        power(n, 4) * (4279 / 630.0 + n * (-332 / 35.0 + n * (-399572 / 14175.0))),
        power(n, 5) * (4174 / 315.0 + n * (-144838 / 6237.0)),
        power(n, 6) * (601676 / 22275.0));
  }

  /** From the conformal sphere's plane to the ellipsoid's (α of the paper). */
  static SineSeries conformalToPlane(double n) {
    return new SineSeries(
        n
            * (1 / 2.0
                + n
                    * (-2 / 3.0
                        + n
                            * (5 / 16.0
                                + n * (41 / 180.0 + n * (-127 / 288.0 + n * (7891 / 37800.0)))))),
        n
            * n
            * (13 / 48.0
                + n
                    * (-3 / 5.0
                        + n * (557 / 1440.0 + n * (281 / 630.0 + n * (-1983433 / 1935360.0))))),
        power(n, 3)
            * (61 / 240.0 + n * (-103 / 140.0 + n * (15061 / 26880.0 + n * (167603 / 181440.0)))),
        power(n, 4) * (49561 / 161280.0 + n * (-179 / 168.0 + n * (6601661 / 7257600.0))),
        power(n, 5) * (34729 / 80640.0 + n * (-3418889 / 1995840.0)),
        power(n, 6) * (212378941 / 319334400.0));
  }

  /** From the ellipsoid's plane to the conformal sphere's, to be taken off (β of the paper). */
  static SineSeries planeToConformal(double n) {
    return new SineSeries(
        n
            * (1 / 2.0
                + n
                    * (-2 / 3.0
                        + n
                            * (37 / 96.0
                                + n * (-1 / 360.0 + n * (-81 / 512.0 + n * (96199 / 604800.0)))))),
        n
            * n
            * (1 / 48.0
                + n
                    * (1 / 15.0
                        + n * (-437 / 1440.0 + n * (46 / 105.0 + n * (-1118711 / 3870720.0))))),
        power(n, 3) * (17 / 480.0 + n * (-37 / 840.0 + n * (-209 / 4480.0 + n * (5569 / 90720.0)))),
        power(n, 4) * (4397 / 161280.0 + n * (-11 / 504.0 + n * (-830251 / 7257600.0))),
        power(n, 5) * (4583 / 161280.0 + n * (-108847 / 3991680.0)),
        power(n, 6) * (20648693 / 638668800.0));
  }

  private static double power(double n, int exponent) {
    double result = n;
    for (int i = 1; i < exponent; i++) {
      result *= n;
    }
    return result;
  }
}
