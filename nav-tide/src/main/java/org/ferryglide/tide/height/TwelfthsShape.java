package org.ferryglide.tide.height;

import java.io.Serializable;

/** The rule of twelfths on sixths of every interval. */
final class TwelfthsShape implements SegmentShape, Serializable {
  private static final long serialVersionUID = 1L;

  @Override
  public double passed(int segment, double fraction) {
    return TideShapes.twelfths(fraction);
  }

  @Override
  public double slope(int segment, double fraction) {
    return TideShapes.twelfthsSlope(fraction);
  }

  @Override
  public double greatestSlopeChange(int segment) {
    return 0.0;
  }

  @Override
  public double nextBreak(int segment, double fraction) {
    return (Math.floor(6.0 * fraction) + 1.0) / 6.0;
  }

  @Override
  public double fromCosine(int segment) {
    return TideShapes.TWELFTHS_FROM_COSINE;
  }

  @Override
  public double fromTwelfths(int segment) {
    return 0.0;
  }
}
