package org.ferryglide.tide.height;

import java.io.Serializable;
import java.util.Arrays;
import java.util.Objects;

/**
 * A cubic through points, with a continuous slope, that goes one way between two points; level at
 * both ends.
 *
 * <p>Slopes at the inner points after Fritsch and Butland (1984), SIAM J. Sci. Stat. Comput. 5,
 * 300, DOI 10.1137/0905021: the weighted harmonic mean of the slopes on both sides, zero where they
 * differ in sign.
 */
final class MonotoneCubic implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] x;
  private final double[] y;
  private final double[] slope;
  private final double greatestSlopeChange;

  /** Takes points, at least two, {@code x} increasing; copied. */
  MonotoneCubic(double[] x, double[] y) {
    this.x = x.clone();
    this.y = y.clone();
    this.slope = new double[x.length];
    for (int i = 1; i < x.length - 1; i++) {
      double before = x[i] - x[i - 1];
      double after = x[i + 1] - x[i];
      double secantBefore = (y[i] - y[i - 1]) / before;
      double secantAfter = (y[i + 1] - y[i]) / after;
      if (secantBefore * secantAfter > 0.0) {
        double weight = (before + 2.0 * after) / (3.0 * (before + after));
        slope[i] =
            secantBefore * secantAfter / (weight * secantAfter + (1.0 - weight) * secantBefore);
      }
    }
    double greatest = 0.0;
    for (int i = 0; i < x.length - 1; i++) {
      double width = x[i + 1] - x[i];
      double secant = (y[i + 1] - y[i]) / width;
      // the second derivative of a cubic is a straight line, greatest at an end
      double atStart = (6.0 * secant - 4.0 * slope[i] - 2.0 * slope[i + 1]) / width;
      double atEnd = (-6.0 * secant + 2.0 * slope[i] + 4.0 * slope[i + 1]) / width;
      greatest = Math.max(greatest, Math.max(Math.abs(atStart), Math.abs(atEnd)));
    }
    greatestSlopeChange = greatest;
  }

  private int segment(double at) {
    int found = Arrays.binarySearch(x, at);
    int segment = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(segment, x.length - 2));
  }

  double value(double at) {
    int i = segment(at);
    double width = x[i + 1] - x[i];
    double t = (at - x[i]) / width;
    double u = 1.0 - t;
    return u * u * (y[i] * (1.0 + 2.0 * t) + width * slope[i] * t)
        + t * t * (y[i + 1] * (1.0 + 2.0 * u) - width * slope[i + 1] * u);
  }

  double slope(double at) {
    int i = segment(at);
    double width = x[i + 1] - x[i];
    double t = (at - x[i]) / width;
    double u = 1.0 - t;
    return 6.0 * t * u * (y[i + 1] - y[i]) / width
        + u * (1.0 - 3.0 * t) * slope[i]
        + t * (1.0 - 3.0 * u) * slope[i + 1];
  }

  double greatestSlopeChange() {
    return greatestSlopeChange;
  }

  /** The first point later than a place, the last point if there is none. */
  double nextPoint(double after) {
    int found = Arrays.binarySearch(x, after);
    int next = found >= 0 ? found + 1 : -found - 1;
    return x[Math.min(next, x.length - 1)];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof MonotoneCubic that
        && Arrays.equals(x, that.x)
        && Arrays.equals(y, that.y)
        && Arrays.equals(slope, that.slope);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Arrays.hashCode(x), Arrays.hashCode(y), Arrays.hashCode(slope));
  }
}
