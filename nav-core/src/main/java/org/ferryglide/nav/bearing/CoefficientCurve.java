package org.ferryglide.nav.bearing;

/** The deviation of five coefficients, with a proven bound on its steepest fall. */
final class CoefficientCurve implements DeviationCurve {
  private static final long serialVersionUID = 1L;

  /** Half a degree: between samples the slope can only fall by what the curvature allows. */
  private static final int SAMPLES = 720;

  private final DeviationCoefficients coefficients;
  private final double leastSlope;
  private final double steepestHeading;

  CoefficientCurve(DeviationCoefficients coefficients) {
    this.coefficients = coefficients;
    double least = Double.POSITIVE_INFINITY;
    double at = 0.0;
    double step = 360.0 / SAMPLES;
    for (int i = 0; i < SAMPLES; i++) {
      double slope = slope(i * step);
      if (slope < least) {
        least = slope;
        at = i * step;
      }
    }
    double curvature =
        Math.toRadians(
            Math.toRadians(
                Math.hypot(coefficients.b(), coefficients.c())
                    + 4.0 * Math.hypot(coefficients.d(), coefficients.e())));
    leastSlope = least - curvature * step / 2.0;
    steepestHeading = at;
  }

  @Override
  public double degreesEast(double headingDegrees) {
    return coefficients.degreesEast(headingDegrees);
  }

  @Override
  public double slope(double headingDegrees) {
    double heading = Math.toRadians(headingDegrees);
    double perRadian =
        coefficients.b() * Math.cos(heading)
            - coefficients.c() * Math.sin(heading)
            + 2.0 * coefficients.d() * Math.cos(2.0 * heading)
            - 2.0 * coefficients.e() * Math.sin(2.0 * heading);
    return Math.toRadians(perRadian);
  }

  @Override
  public double leastSlope() {
    return leastSlope;
  }

  @Override
  public double steepestHeadingDegrees() {
    return steepestHeading;
  }

  @Override
  public double mostDegrees() {
    return Math.abs(coefficients.a())
        + Math.hypot(coefficients.b(), coefficients.c())
        + Math.hypot(coefficients.d(), coefficients.e());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CoefficientCurve that && coefficients.equals(that.coefficients);
  }

  @Override
  public int hashCode() {
    return coefficients.hashCode();
  }
}
