package org.ferryglide.nav.teach;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The values that some slips would explain, as bands of one tolerance either way, and the share of
 * arbitrary wrong answers that fall into them.
 */
final class Bands {
  private final Quantity quantity;
  private final double right;
  private final double least;
  private final double greatest;
  private final List<double[]> bands = new ArrayList<>();
  private final List<double[]> left = new ArrayList<>();

  Bands(Quantity quantity, double right) {
    this.quantity = quantity;
    this.right = right;
    double half = quantity.halfSpan(right);
    this.least = -half;
    this.greatest = half;
    left.add(new double[] {-quantity.tolerance(), quantity.tolerance()}); // that would be right
  }

  void add(double value) {
    double off = quantity.difference(value, right);
    double tolerance = quantity.tolerance();
    bands.add(new double[] {off - tolerance, off + tolerance});
    if (quantity.isBearing()) { // the same band a turn away, where the circle is cut open
      double turned = off > 0 ? off - 360.0 : off + 360.0;
      bands.add(new double[] {turned - tolerance, turned + tolerance});
    }
  }

  /** Does not count what the others explain already. */
  void without(Bands others) {
    left.addAll(others.bands);
  }

  double share() {
    double wrong = greatest - least - length(left);
    return wrong <= 0.0 ? 1.0 : (lengthOfBoth() - length(left)) / wrong;
  }

  private double lengthOfBoth() {
    List<double[]> both = new ArrayList<>(bands);
    both.addAll(left);
    return length(both);
  }

  /** Length of the union within the span. */
  private double length(List<double[]> some) {
    double[][] sorted = some.toArray(new double[0][]);
    Arrays.sort(sorted, (a, b) -> Double.compare(a[0], b[0]));
    double end = least;
    double length = 0.0;
    for (double[] band : sorted) {
      double from = Math.max(band[0], end);
      double to = Math.min(band[1], greatest);
      if (to > from) {
        length += to - from;
        end = to;
      }
    }
    return length;
  }
}
