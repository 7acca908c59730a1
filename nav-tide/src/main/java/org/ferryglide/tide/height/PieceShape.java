package org.ferryglide.tide.height;

/** The shape of each interval of a table between its two waters; times as fractions, in [0, 1]. */
interface PieceShape {
  /** Fraction of the rise or fall passed. */
  double passed(int piece, double fraction);

  /** Slope of {@link #passed}; at a knot the slope after it. */
  double slope(int piece, double fraction);

  /** Upper bound of the magnitude of the second derivative of {@link #passed} between knots. */
  double greatestSlopeChange(int piece);

  /** The first fraction above {@code fraction} at which the shape is not smooth, 1 if none. */
  double nextKnot(int piece, double fraction);
}
