package org.ferryglide.tide.height;

/** The shape of each interval of a table between its two waters; times as fractions, in [0, 1]. */
interface SegmentShape {
  /** Steps in which two shapes are compared over an interval. */
  int COMPARED = 48;

  /** Fraction of the rise or fall passed. */
  double passed(int segment, double fraction);

  /** Slope of {@link #passed}; at a knot the slope after it. */
  double slope(int segment, double fraction);

  /** Upper bound of the magnitude of the second derivative of {@link #passed} between knots. */
  double greatestSlopeChange(int segment);

  /** The first fraction above {@code fraction} at which the shape is not smooth, 1 if none. */
  double nextBreak(int segment, double fraction);

  /** Whether the tide may turn inside an interval too. */
  default boolean mayTurn() {
    return false;
  }

  /** The farthest that the shape lies from the cosine, as a fraction of the rise or fall. */
  default double fromCosine(int segment) {
    double farthest = 0.0;
    for (int i = 1; i < COMPARED; i++) {
      double fraction = (double) i / COMPARED;
      farthest =
          Math.max(farthest, Math.abs(passed(segment, fraction) - TideShapes.cosine(fraction)));
    }
    return farthest;
  }

  /** The farthest that the shape lies from the twelfths, as a fraction of the rise or fall. */
  default double fromTwelfths(int segment) {
    double farthest = 0.0;
    for (int i = 1; i < COMPARED; i++) {
      double fraction = (double) i / COMPARED;
      farthest =
          Math.max(farthest, Math.abs(passed(segment, fraction) - TideShapes.twelfths(fraction)));
    }
    return farthest;
  }
}
