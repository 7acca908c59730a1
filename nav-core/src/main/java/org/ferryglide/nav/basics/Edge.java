package org.ferryglide.nav.basics;

import java.util.function.DoublePredicate;

/**
 * Where yes turns to no, by halving: a jump from one to the other gives a quicker method nothing to
 * go by.
 */
public final class Edge {
  private Edge() {}

  /** The last yes found between a yes and a no, within {@code refined} of where no begins. */
  public static double of(DoublePredicate asked, double yes, double no, double refined) {
    double inside = yes;
    double outside = no;
    while (Math.abs(outside - inside) > refined) {
      double middle = 0.5 * (inside + outside);
      if (middle == inside || middle == outside) {
        return inside; // neighbours among doubles
      }
      if (asked.test(middle)) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return inside;
  }
}
