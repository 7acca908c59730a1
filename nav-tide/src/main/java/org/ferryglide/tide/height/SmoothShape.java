package org.ferryglide.tide.height;

import java.io.Serializable;

/**
 * One polynomial of the fifth degree in every interval, so joined that slope and curvature are
 * continuous through every water, and so bounded that the tide never turns between two waters.
 *
 * <p>The slope in an interval is x(1 − x)(α(1 − x)² + 2βx(1 − x) + γx²), x the fraction of the
 * interval; its integral is 1 for β = 15 − 3(α + γ)/4. The curvature at a water is the harmonic
 * mean of those of the cosines on its two sides, so that α and γ are below π² and β is above 0, and
 * with them the slope.
 */
final class SmoothShape implements SegmentShape, Serializable {
  private static final long serialVersionUID = 1L;

  /** Curvature of the cosine at either end. */
  private static final double COSINE_CURVATURE = 0.5 * Math.PI * Math.PI;

  private final double[] alpha;
  private final double[] gamma;

  SmoothShape(TideTable table) {
    int segments = table.segments();
    alpha = new double[segments];
    gamma = new double[segments];
    for (int segment = 0; segment < segments; segment++) {
      alpha[segment] = curvature(table, segment, segment - 1);
      gamma[segment] = curvature(table, segment, segment + 1);
    }
  }

  /** Curvature of an interval where it meets a neighbour. */
  private static double curvature(TideTable table, int segment, int neighbour) {
    if (neighbour < 0 || neighbour >= table.segments()) {
      return COSINE_CURVATURE;
    }
    double own = bend(table, segment);
    double other = bend(table, neighbour);
    return other == 0.0 ? 0.0 : COSINE_CURVATURE * 2.0 * other / (own + other);
  }

  private static double bend(TideTable table, int segment) {
    double interval = table.seconds(segment + 1) - table.seconds(segment);
    return Math.abs(table.height(segment + 1) - table.height(segment)) / (interval * interval);
  }

  private double beta(int segment) {
    return 15.0 - 0.75 * (alpha[segment] + gamma[segment]);
  }

  @Override
  public double passed(int segment, double fraction) {
    double x = fraction;
    double y = 1.0 - fraction;
    double second = alpha[segment] / 20.0;
    double third = second + beta(segment) / 15.0;
    return x * x * (y * y * (10.0 * (y * second + x * third)) + x * x * (5.0 * y + x));
  }

  @Override
  public double slope(int segment, double fraction) {
    double x = fraction;
    double y = 1.0 - fraction;
    return x * y * (alpha[segment] * y * y + 2.0 * beta(segment) * x * y + gamma[segment] * x * x);
  }

  @Override
  public double greatestSlopeChange(int segment) {
    // the second derivative in Bernstein form stays between its coefficients
    double start = alpha[segment];
    double end = gamma[segment];
    double middle = 4.0 / 3.0 * beta(segment);
    return Math.max(
        Math.max(start, end), Math.max(Math.abs(middle - start), Math.abs(end - middle)));
  }

  @Override
  public double nextBreak(int segment, double fraction) {
    return 1.0;
  }
}
