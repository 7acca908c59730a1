package org.ferryglide.nav.bearing;

import java.util.Arrays;
import org.ferryglide.nav.basics.Angles;

/**
 * The cubic spline through given headings that closes on itself: value, slope and curvature run on
 * through north.
 *
 * @see <a href="https://doi.org/10.1007/978-1-4612-6333-3">de Boor (1978), A Practical Guide to
 *     Splines, chapter IV, for the conditions; the cyclic system is solved as two tridiagonal ones
 *     (Sherman and Morrison)</a>
 */
final class PeriodicSpline implements DeviationCurve {
  private static final long serialVersionUID = 1L;

  private static final double CIRCLE = 360.0;

  /** Increasing, in [0, 360); one more at the end, a circle after the first. */
  private final double[] headings;

  private final double[] values;

  /** Second derivatives at the headings. */
  private final double[] curvatures;

  private final double leastSlope;
  private final double steepestHeading;
  private final double most;

  /**
   * Lays the spline.
   *
   * @param sortedHeadings at least three, strictly increasing in [0, 360)
   * @param deviations degrees east at each
   */
  PeriodicSpline(double[] sortedHeadings, double[] deviations) {
    int n = sortedHeadings.length;
    headings = Arrays.copyOf(sortedHeadings, n + 1);
    headings[n] = sortedHeadings[0] + CIRCLE;
    values = Arrays.copyOf(deviations, n + 1);
    values[n] = deviations[0];
    curvatures = curvatures(headings, values);

    double least = Double.POSITIVE_INFINITY;
    double at = 0.0;
    double greatest = 0.0;
    for (int i = 0; i < n; i++) {
      // the slope is a parabola in each segment: least at an end, or where the curvature is zero
      double width = headings[i + 1] - headings[i];
      double turn = curvatures[i] - curvatures[i + 1];
      double inner = turn == 0.0 ? 0.0 : Math.min(1.0, Math.max(0.0, curvatures[i] / turn));
      for (double part : new double[] {0.0, inner, 1.0}) {
        double slope = slopeIn(i, part * width);
        if (slope < least) {
          least = slope;
          at = headings[i] + part * width;
        }
      }
      // the chord plus what a parabola of the greatest curvature can add
      double bulge =
          Math.max(Math.abs(curvatures[i]), Math.abs(curvatures[i + 1])) * width * width / 8.0;
      greatest = Math.max(greatest, Math.max(Math.abs(values[i]), Math.abs(values[i + 1])) + bulge);
    }
    leastSlope = least;
    steepestHeading = Angles.reduced(at);
    most = greatest;
  }

  private static double[] curvatures(double[] x, double[] y) {
    int n = x.length - 1;
    double[] below = new double[n];
    double[] middle = new double[n];
    double[] above = new double[n];
    double[] right = new double[n];
    for (int i = 0; i < n; i++) {
      int before = (i + n - 1) % n;
      double left = x[before + 1] - x[before];
      double next = x[i + 1] - x[i];
      below[i] = left;
      middle[i] = 2.0 * (left + next);
      above[i] = next;
      right[i] = 6.0 * ((y[i + 1] - y[i]) / next - (y[before + 1] - y[before]) / left);
    }
    // the corner elements, which couple the first heading with the last
    double corner = below[0];
    double shift = -middle[0];
    double[] unit = new double[n];
    unit[0] = shift;
    unit[n - 1] = corner;
    middle[0] -= shift;
    middle[n - 1] -= corner * corner / shift;
    double[] plain = tridiagonal(below, middle, above, right);
    double[] coupled = tridiagonal(below, middle, above, unit);
    double share =
        (plain[0] + corner / shift * plain[n - 1])
            / (1.0 + coupled[0] + corner / shift * coupled[n - 1]);
    double[] curvatures = new double[n + 1];
    for (int i = 0; i < n; i++) {
      curvatures[i] = plain[i] - share * coupled[i];
    }
    curvatures[n] = curvatures[0];
    return curvatures;
  }

  private static double[] tridiagonal(
      double[] below, double[] middle, double[] above, double[] right) {
    int n = middle.length;
    double[] ratio = new double[n];
    double[] solution = new double[n];
    double pivot = middle[0];
    solution[0] = right[0] / pivot;
    for (int i = 1; i < n; i++) {
      ratio[i] = above[i - 1] / pivot;
      pivot = middle[i] - below[i] * ratio[i];
      solution[i] = (right[i] - below[i] * solution[i - 1]) / pivot;
    }
    for (int i = n - 2; i >= 0; i--) {
      solution[i] -= ratio[i + 1] * solution[i + 1];
    }
    return solution;
  }

  /** The segment that holds a heading already brought into [first, first + 360). */
  private int segment(double heading) {
    int low = 0;
    int high = headings.length - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (headings[middle] <= heading) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private double inSpan(double headingDegrees) {
    double heading = Angles.reduced(headingDegrees);
    return heading < headings[0] ? heading + CIRCLE : heading;
  }

  @Override
  public double degreesEast(double headingDegrees) {
    double heading = inSpan(headingDegrees);
    int i = segment(heading);
    double width = headings[i + 1] - headings[i];
    double b = (heading - headings[i]) / width;
    double a = 1.0 - b;
    return a * values[i]
        + b * values[i + 1]
        + ((a * a * a - a) * curvatures[i] + (b * b * b - b) * curvatures[i + 1])
            * width
            * width
            / 6.0;
  }

  @Override
  public double slope(double headingDegrees) {
    double heading = inSpan(headingDegrees);
    int i = segment(heading);
    return slopeIn(i, heading - headings[i]);
  }

  private double slopeIn(int i, double fromStart) {
    double width = headings[i + 1] - headings[i];
    double b = fromStart / width;
    double a = 1.0 - b;
    return (values[i + 1] - values[i]) / width
        + ((1.0 - 3.0 * a * a) * curvatures[i] + (3.0 * b * b - 1.0) * curvatures[i + 1])
            * width
            / 6.0;
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
    return most;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PeriodicSpline that
        && Arrays.equals(headings, that.headings)
        && Arrays.equals(values, that.values);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(headings) + Arrays.hashCode(values);
  }
}
