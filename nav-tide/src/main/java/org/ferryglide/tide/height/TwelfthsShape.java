package org.ferryglide.tide.height;

import java.io.Serializable;

/** The rule of twelfths on sixths of every interval. */
final class TwelfthsShape implements PieceShape, Serializable {
  private static final long serialVersionUID = 1L;

  @Override
  public double passed(int piece, double fraction) {
    return TideShapes.twelfths(fraction);
  }

  @Override
  public double slope(int piece, double fraction) {
    return TideShapes.twelfthsSlope(fraction);
  }

  @Override
  public double greatestSlopeChange(int piece) {
    return 0.0;
  }

  @Override
  public double nextBreak(int piece, double fraction) {
    return (Math.floor(6.0 * fraction) + 1.0) / 6.0;
  }

  @Override
  public double fromCosine(int piece) {
    return TideShapes.TWELFTHS_FROM_COSINE;
  }

  @Override
  public double fromTwelfths(int piece) {
    return 0.0;
  }
}
