package org.ferryglide.tide.height;

/** The shape of each interval of a table between its two waters; times as fractions, in [0, 1]. */
interface SegmentShape {
  /** Fraction of the rise or fall passed. */
  double passed(int segment, double fraction);

  /** Slope of {@link #passed}; at a break point the slope after it. */
  double slope(int segment, double fraction);

  /**
   * Upper bound of the magnitude of the second derivative of {@link #passed} between break points.
   */
  double greatestSlopeChange(int segment);

  /** The first fraction above {@code fraction} at which the shape is not smooth, 1 if none. */
  double nextBreak(int segment, double fraction);

  /** Whether the tide may turn inside an interval too. */
  default boolean mayTurn() {
    return false;
  }

  /** The farthest that the shape lies from the cosine, as a fraction of the rise or fall. */
  default double fromCosine(int segment) {
    return from(TideShapes.COSINES, segment);
  }

  /** The farthest that the shape lies from the twelfths, as a fraction of the rise or fall. */
  default double fromTwelfths(int segment) {
    return from(TideShapes.TWELFTHS, segment);
  }

  /** The farthest from what another shape has passed at even steps over an interval. */
  private double from(double[] passed, int segment) {
    double farthest = 0.0;
    int last = passed.length - 1;
    for (int i = 1; i < last; i++) {
      double off = Math.abs(passed(segment, (double) i / last) - passed[i]);
      if (off > farthest) {
        farthest = off;
      }
    }
    return farthest;
  }
}
