package org.ferryglide.nav.teach;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;

/**
 * A slip that people make, at one figure of a problem.
 *
 * <pre>{@code
 * Slip slip = problem.slips().get(0);
 * System.out.println(slip.figure() + ": " + slip.text()); // Magnetic bearing: variation left out
 * }</pre>
 *
 * @param figure name of the figure it spoils
 * @param text what was done, in a few words
 * @param likelihood how often beside others, above 0; only the order matters (common practice, no
 *     source)
 */
public record Slip(String figure, String text, double likelihood) implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Seen in every class. */
  static final double COMMON = 4.0;

  /** Seen now and then. */
  static final double SOMETIMES = 2.0;

  /** Seldom seen. */
  static final double RARE = 1.0;

  /**
   * Checks the parts.
   *
   * @param figure name of the figure it spoils
   * @param text what was done
   * @param likelihood how often beside others, above 0
   * @throws IllegalArgumentException if a text is empty or {@code likelihood} is not above 0
   */
  public Slip {
    if (figure.isEmpty() || text.isEmpty()) {
      throw new IllegalArgumentException("figure and text of a slip must not be empty");
    }
    likelihood = Arguments.positive(likelihood, "likelihood", "of a slip");
  }

  /** Figure and slip on one line. */
  @Override
  public String toString() {
    return figure + ": " + text;
  }
}
