package org.ferryglide.nav.plane;

/**
 * The chance of coming within sight of a target, on plain doubles.
 *
 * <p>The position is normally distributed about where it should be. Passing by, only the distance
 * across the track counts; stopping at a place, a circle about it does: Rayleigh's distribution
 * where the errors are the same in every direction and centred, Rice's (Marcum's Q function) where
 * they are off centre, and a quadrature for an ellipse.
 *
 * <pre>{@code
 * SightChance.passing(400, 0, 400); // 0.683: sigma 400 m, on the line, visibility 400 m
 * SightChance.withinCircle(400, 200, 0, 0, 500);
 * }</pre>
 *
 * <p>NaN in gives NaN out; nothing is allocated.
 */
public final class SightChance {
  private SightChance() {}

  /** A quadrature reaches this many standard deviations; what is beyond is below 1e-15. */
  private static final double REACH = 8.2;

  /** A standard deviation below this share of the radius is taken as none. */
  private static final double NONE = 1e-9;

  /**
   * Panels of the quadrature are at most this wide, in standard deviations: three for the whole
   * reach. With 20 points what the quadrature leaves is rounding, 1.1e-13 at most over 60 000
   * random ellipses against panels of a quarter of a standard deviation.
   */
  private static final double PANEL = 5.5;

  /**
   * Nodes and weights of Gauss-Legendre quadrature with 20 points, the positive half, computed with
   * mpmath at 40 digits and rounded to doubles; the same to the digits printed as Abramowitz and
   * Stegun (1964), Handbook of Mathematical Functions, table 25.4.
   */
  private static final double[] NODES = {
    0.07652652113349734,
    0.22778585114164507,
    0.37370608871541955,
    0.5108670019508271,
    0.636053680726515,
    0.7463319064601508,
    0.8391169718222188,
    0.912234428251326,
    0.9639719272779138,
    0.9931285991850949
  };

  private static final double[] WEIGHTS = {
    0.15275338713072584,
    0.14917298647260374,
    0.14209610931838204,
    0.13168863844917664,
    0.11819453196151841,
    0.10193011981724044,
    0.08327674157670475,
    0.06267204833410907,
    0.04060142980038694,
    0.017614007139152118
  };

  /**
   * The chance of passing within a distance of a mark.
   *
   * @param sigma standard deviation across the track, metres, at least 0
   * @param offset how far to one side of the mark the track is aimed, metres
   * @param reach the distance within which the mark is seen, metres, at least 0
   * @return the chance, in [0, 1]; a negative {@code sigma} or {@code reach} gives NaN
   */
  public static double passing(double sigma, double offset, double reach) {
    if (!(sigma >= 0.0 && reach >= 0.0 && !Double.isNaN(offset))) {
      return Double.NaN;
    }
    if (sigma == 0.0) {
      return Math.abs(offset) <= reach ? 1.0 : 0.0;
    }
    return between((-reach - offset) / sigma, (reach - offset) / sigma);
  }

  /** The chance of a standard normal variable between two values, without cancelling in a tail. */
  static double between(double low, double high) {
    return low > 0.0
        ? Gaussian.cumulative(-low) - Gaussian.cumulative(-high)
        : Gaussian.cumulative(high) - Gaussian.cumulative(low);
  }

  /**
   * The chance of being within a circle about a target.
   *
   * @param sigmaX standard deviation along one axis of the error ellipse, metres, at least 0
   * @param sigmaY standard deviation along the other axis, metres, at least 0
   * @param offsetX how far the mean lies from the target along the first axis, metres
   * @param offsetY how far along the other, metres
   * @param radius radius of the circle, metres, at least 0
   * @return the chance, in [0, 1]; absolute error below 1e-12, measured against mpmath over 60
   *     cases; a negative standard deviation or radius gives NaN
   */
  public static double withinCircle(
      double sigmaX, double sigmaY, double offsetX, double offsetY, double radius) {
    if (!(sigmaX >= 0.0 && sigmaY >= 0.0 && radius >= 0.0) || Double.isNaN(offsetX + offsetY)) {
      return Double.NaN;
    }
    if (radius == 0.0) {
      return sigmaX == 0.0 && sigmaY == 0.0 && offsetX == 0.0 && offsetY == 0.0 ? 1.0 : 0.0;
    }
    if (sigmaX == sigmaY && sigmaX > NONE * radius) {
      return rice(Math.hypot(offsetX, offsetY) / sigmaX, radius / sigmaX);
    }
    // The quadrature runs along the narrower axis, the exact part along the wider one: then nothing
    // changes faster than the step.
    return sigmaX <= sigmaY
        ? ellipse(sigmaX, sigmaY, Math.abs(offsetX), Math.abs(offsetY), radius)
        : ellipse(sigmaY, sigmaX, Math.abs(offsetY), Math.abs(offsetX), radius);
  }

  /**
   * One less Marcum's Q function of the first order: the chance that a point with unit errors in
   * either direction, its mean off centre, lies within a radius.
   *
   * @param offset distance of the mean from the centre, in standard deviations, at least 0
   * @param radius the radius, in standard deviations, at least 0
   * @return the chance, in [0, 1]; Rayleigh's 1 - exp(-r²/2) for no offset; absolute error below
   *     1e-12, measured against mpmath over 60 cases
   */
  public static double rice(double offset, double radius) {
    if (!(offset >= 0.0 && radius >= 0.0)) {
      return Double.NaN;
    }
    if (offset == 0.0) {
      return -Math.expm1(-0.5 * radius * radius);
    }
    if (radius > offset + REACH) {
      return 1.0;
    }
    return ellipse(1.0, 1.0, offset, 0.0, radius);
  }

  /**
   * The sum over the narrow axis of the density there times the exact chance along the wide one.
   * The ends of the circle, where the chord shrinks as a square root, are smoothed by y = r sin t.
   */
  private static double ellipse(double narrow, double wide, double my, double mx, double r) {
    if (narrow <= NONE * r) {
      double chord = my < r ? Math.sqrt((r - my) * (r + my)) : my == r ? 0.0 : -1.0;
      return chord < 0.0 ? 0.0 : along(chord, wide, mx, r);
    }
    double low = Math.max(-r, my - REACH * narrow);
    double high = Math.min(r, my + REACH * narrow);
    if (!(low < high)) {
      return 0.0;
    }
    double from = Math.asin(low / r);
    double to = Math.asin(high / r);
    int panels = Math.max(2, (int) Math.ceil((to - from) * r / (PANEL * narrow)));
    double half = 0.5 * (to - from) / panels;
    double sum = 0.0;
    for (int i = 0; i < panels; i++) {
      double middle = from + (2 * i + 1) * half;
      for (int k = 0; k < NODES.length; k++) {
        double step = half * NODES[k];
        sum +=
            WEIGHTS[k]
                * (slice(middle - step, narrow, wide, my, mx, r)
                    + slice(middle + step, narrow, wide, my, mx, r));
      }
    }
    return Math.min(1.0, Math.max(0.0, sum * half));
  }

  private static double slice(
      double t, double narrow, double wide, double my, double mx, double r) {
    double chord = r * Math.cos(t);
    double y = (r * Math.sin(t) - my) / narrow;
    return Gaussian.density(y) / narrow * along(chord, wide, mx, r) * chord;
  }

  /** The chance of being within half a chord along the wide axis. */
  private static double along(double chord, double wide, double mx, double r) {
    if (wide <= NONE * r) {
      return mx <= chord ? 1.0 : 0.0;
    }
    return between((-chord - mx) / wide, (chord - mx) / wide);
  }
}
