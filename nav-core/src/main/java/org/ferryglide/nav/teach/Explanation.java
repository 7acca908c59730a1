package org.ferryglide.nav.teach;

import java.io.Serializable;
import java.util.List;

/**
 * One way in which a figure may have gone wrong: a slip, or a pair of them.
 *
 * <pre>{@code
 * Explanation first = problem.mark(41.0).explanations().get(0);
 * System.out.println(first.figure() + " " + first.slips());
 * }</pre>
 *
 * @param figure name of the figure at which the error first shows
 * @param slips the slips that together lead to what was written, at least one
 * @param value what they lead to, in the unit of the figure's quantity
 */
public record Explanation(String figure, List<Slip> slips, double value) implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * Checks the parts.
   *
   * @param figure name of the figure at which the error first shows
   * @param slips the slips, at least one
   * @param value what they lead to
   * @throws IllegalArgumentException if there is no slip
   */
  public Explanation {
    slips = List.copyOf(slips);
    if (slips.isEmpty()) {
      throw new IllegalArgumentException("an explanation names at least one slip");
    }
  }

  /** How likely beside others; slips that come together are each seldom. */
  double likelihood() {
    double product = 1.0;
    for (Slip slip : slips) {
      product *= slip.likelihood();
    }
    return product;
  }

  /** The slips on one line. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    for (Slip slip : slips) {
      text.append(text.length() == 0 ? "" : " and ").append(slip);
    }
    return text.toString();
  }
}
