package org.ferryglide.tide.height;

import java.io.Serializable;

/** Half a cosine wave in every interval. */
final class CosineShape implements SegmentShape, Serializable {
  private static final long serialVersionUID = 1L;

  @Override
  public double passed(int segment, double fraction) {
    return TideShapes.cosine(fraction);
  }

  @Override
  public double slope(int segment, double fraction) {
    return TideShapes.cosineSlope(fraction);
  }

  @Override
  public double greatestSlopeChange(int segment) {
    return 0.5 * Math.PI * Math.PI;
  }

  @Override
  public double nextBreak(int segment, double fraction) {
    return 1.0;
  }

  @Override
  public double fromCosine(int segment) {
    return 0.0;
  }

  @Override
  public double fromTwelfths(int segment) {
    return TideShapes.TWELFTHS_FROM_COSINE;
  }
}
