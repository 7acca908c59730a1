package org.ferryglide.nav.timing;

import java.util.function.DoublePredicate;

/** Where yes turns to no: whether a passage is possible jumps, so that nothing smoother fits. */
final class Edge {
  private Edge() {}

  /** The last yes between a yes and a no, within {@code refined} of where no begins. */
  static double of(DoublePredicate asked, double yes, double no, double refined) {
    double inside = yes;
    double outside = no;
    while (Math.abs(outside - inside) > refined) {
      double middle = 0.5 * (inside + outside);
      if (asked.test(middle)) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return inside;
  }
}
