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
final class SmoothShape implements PieceShape, Serializable {
  private static final long serialVersionUID = 1L;

  /** Curvature of the cosine at either end. */
  private static final double COSINE_CURVATURE = 0.5 * Math.PI * Math.PI;

  private final double[] alpha;
  private final double[] gamma;

  SmoothShape(TideTable table) {
    int pieces = table.pieces();
    alpha = new double[pieces];
    gamma = new double[pieces];
    for (int piece = 0; piece < pieces; piece++) {
      alpha[piece] = curvature(table, piece, piece - 1);
      gamma[piece] = curvature(table, piece, piece + 1);
    }
  }

  /** Curvature of an interval where it meets a neighbour. */
  private static double curvature(TideTable table, int piece, int neighbour) {
    if (neighbour < 0 || neighbour >= table.pieces()) {
      return COSINE_CURVATURE;
    }
    double own = bend(table, piece);
    double other = bend(table, neighbour);
    return other == 0.0 ? 0.0 : COSINE_CURVATURE * 2.0 * other / (own + other);
  }

  private static double bend(TideTable table, int piece) {
    double interval = table.seconds(piece + 1) - table.seconds(piece);
    return Math.abs(table.height(piece + 1) - table.height(piece)) / (interval * interval);
  }

  private double beta(int piece) {
    return 15.0 - 0.75 * (alpha[piece] + gamma[piece]);
  }

  @Override
  public double passed(int piece, double fraction) {
    double x = fraction;
    double y = 1.0 - fraction;
    double second = alpha[piece] / 20.0;
    double third = second + beta(piece) / 15.0;
    return x * x * (y * y * (10.0 * (y * second + x * third)) + x * x * (5.0 * y + x));
  }

  @Override
  public double slope(int piece, double fraction) {
    double x = fraction;
    double y = 1.0 - fraction;
    return x * y * (alpha[piece] * y * y + 2.0 * beta(piece) * x * y + gamma[piece] * x * x);
  }

  @Override
  public double greatestSlopeChange(int piece) {
    // the second derivative in Bernstein form stays between its coefficients
    double start = alpha[piece];
    double end = gamma[piece];
    double middle = 4.0 / 3.0 * beta(piece);
    return Math.max(
        Math.max(start, end), Math.max(Math.abs(middle - start), Math.abs(end - middle)));
  }

  @Override
  public double nextBreak(int piece, double fraction) {
    return 1.0;
  }
}
