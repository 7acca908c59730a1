package org.ferryglide.nav.basics;

import java.util.function.DoubleUnaryOperator;

/** Where a function with one top between two ends has it, by thirds: it needs no slope. */
public final class Top {
  private Top() {}

  /** The middle of a span no longer than {@code refined} that holds the top. */
  public static double of(DoubleUnaryOperator height, double low, double high, double refined) {
    double from = low;
    double until = high;
    while (until - from > refined) {
      double third = (until - from) / 3.0;
      double early = from + third;
      double late = until - third;
      if (!(from < early && late < until)) {
        break; // neighbours among doubles
      }
      if (height.applyAsDouble(early) < height.applyAsDouble(late)) {
        from = early;
      } else {
        until = late;
      }
    }
    return 0.5 * (from + until);
  }
}
