package org.ferryglide.nav.passage;

import java.util.function.DoubleUnaryOperator;
import org.ferryglide.nav.basics.Edge;

/** When a margin, of a level or a stream, comes to be enough. */
final class Waits {
  /** Levels and streams of tables move little in a minute. */
  private static final double STEP_SECONDS = 60.0;

  private Waits() {}

  /** The first time at which a margin is at least zero, to a second and not before it. */
  static double firstAtLeastZero(DoubleUnaryOperator margin, double from, double until) {
    double low = from;
    double value = margin.applyAsDouble(from);
    if (value >= 0.0) {
      return from;
    }
    double before = Double.NEGATIVE_INFINITY;
    while (low < until) {
      if (Double.isNaN(value)) {
        return Double.NaN;
      }
      double high = Math.min(until, low + STEP_SECONDS);
      double next = margin.applyAsDouble(high);
      if (value > before && value > next) { // a slack shorter than a step may lie at the top
        double top = top(margin, Math.max(from, low - STEP_SECONDS), high);
        if (margin.applyAsDouble(top) >= 0.0) {
          return edge(margin, Math.max(from, low - STEP_SECONDS), top);
        }
      }
      if (next >= 0.0) {
        return edge(margin, low, high);
      }
      before = value;
      value = next;
      low = high;
    }
    return Double.isNaN(value) ? Double.NaN : Double.POSITIVE_INFINITY;
  }

  /** Where a margin that is negative at {@code low} has become zero, to half a second. */
  private static double edge(DoubleUnaryOperator margin, double low, double high) {
    return Edge.of(time -> margin.applyAsDouble(time) >= 0.0, high, low, 0.5);
  }

  /** Where a margin with one top between two times has it, by thirds, to a tenth of a second. */
  private static double top(DoubleUnaryOperator margin, double from, double until) {
    double low = from;
    double high = until;
    while (high - low > 0.1) {
      double third = (high - low) / 3.0;
      if (margin.applyAsDouble(low + third) < margin.applyAsDouble(high - third)) {
        low += third;
      } else {
        high -= third;
      }
    }
    return 0.5 * (low + high);
  }
}
