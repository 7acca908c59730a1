package org.ferryglide.nav.passage;

import java.util.function.DoubleUnaryOperator;
import org.ferryglide.nav.basics.Top;

/**
 * When a margin, of a level or a stream, comes to be enough. The looks are at whole minutes and
 * whole seconds whenever the party landed, so that all who wait for one slack leave at one time.
 */
final class Waits {
  /** Levels and streams of tables move little in a minute. */
  private static final double STEP_SECONDS = 60.0;

  private Waits() {}

  /**
   * The first time at which a margin is at least zero: the time asked from itself, or a whole
   * second at most a second after the margin became zero. Only where it is enough for less than a
   * second the time is its greatest, to a tenth of a second.
   *
   * @return NaN if the margin is not known, positive infinity if it is never enough
   */
  static double firstAtLeastZero(DoubleUnaryOperator margin, double from, double until) {
    double asked = margin.applyAsDouble(from);
    double low = Math.ceil(from);
    // one who comes within the second in which it becomes enough leaves with all who waited
    if (asked >= 0.0 && (low == from || !(margin.applyAsDouble(Math.floor(from)) < 0.0))) {
      return from;
    }
    if (Double.isNaN(asked)) {
      return Double.NaN;
    }
    double value = margin.applyAsDouble(low);
    double before = Double.NEGATIVE_INFINITY;
    double lowBefore = low;
    while (low <= until) {
      if (value >= 0.0) {
        return low;
      }
      if (Double.isNaN(value)) {
        return Double.NaN;
      }
      double high = STEP_SECONDS * (Math.floor(low / STEP_SECONDS) + 1.0);
      double next = margin.applyAsDouble(high);
      if ((value > before && value >= next) || (value >= before && value > next)) {
        double brief = ofTop(margin, lowBefore, high);
        if (brief <= until) {
          return brief;
        }
      }
      if (next >= 0.0) {
        double edge = edge(margin, low, high);
        return edge <= until ? edge : Double.POSITIVE_INFINITY;
      }
      lowBefore = low;
      before = value;
      value = next;
      low = high;
    }
    return Double.POSITIVE_INFINITY;
  }

  /** When a slack shorter than a step begins, which may lie at a top between two whole seconds. */
  private static double ofTop(DoubleUnaryOperator margin, double from, double until) {
    double top = Math.rint(Top.of(margin, from, until, 1.0));
    double best = top;
    for (double beside = Math.max(from, top - 1.0); beside <= top + 1.0; beside++) {
      best = margin.applyAsDouble(beside) > margin.applyAsDouble(best) ? beside : best;
    }
    if (margin.applyAsDouble(best) >= 0.0) {
      return edge(margin, from, best);
    }
    double between = Top.of(margin, Math.max(from, best - 1.0), best + 1.0, 0.1);
    return margin.applyAsDouble(between) >= 0.0 ? between : Double.POSITIVE_INFINITY;
  }

  /** The first whole second at which a margin that is negative at {@code low} is enough. */
  private static double edge(DoubleUnaryOperator margin, double low, double high) {
    double tooLittle = low;
    double enough = high;
    while (enough - tooLittle > 1.0) {
      double middle = Math.floor(0.5 * (tooLittle + enough));
      if (margin.applyAsDouble(middle) >= 0.0) {
        enough = middle;
      } else {
        tooLittle = middle;
      }
    }
    return enough;
  }
}
