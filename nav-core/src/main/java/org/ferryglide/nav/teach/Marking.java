package org.ferryglide.nav.teach;

import java.io.Serializable;
import java.util.List;
import org.ferryglide.nav.basics.Arguments;

/**
 * What a learner's answer came to: right, or where it went wrong and by which slips.
 *
 * <pre>{@code
 * Marking marking = problem.mark(41.0);
 * marking.isRight(); // false
 * marking.explanations().get(0).slips(); // variation with the wrong sign
 * }</pre>
 *
 * @param isRight whether the answer lies within the tolerance of the right one
 * @param answer the right answer, exact, in the unit of its quantity
 * @param explanations what would explain the answer, likeliest first; all of them lie within the
 *     tolerance of what was written, so none of them is ruled out. Empty where nothing does, and
 *     where nothing went wrong. With a right answer they are wrongs that cancel
 * @param unexplained names of the figures written that follow from nothing known here, in order
 * @param chance the share of arbitrary wrong answers that would be explained as well, 0 to 1
 */
public record Marking(
    boolean isRight,
    double answer,
    List<Explanation> explanations,
    List<String> unexplained,
    double chance)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Above this share of arbitrary answers explained, an explanation tells nothing. */
  private static final double TELLS_NOTHING = 0.5;

  /**
   * Checks the parts.
   *
   * @param isRight whether the answer is right
   * @param answer the right answer
   * @param explanations what would explain the answer
   * @param unexplained names of figures that follow from nothing known
   * @param chance share of arbitrary answers explained as well, 0 to 1
   * @throws IllegalArgumentException if {@code chance} is not in 0 to 1
   */
  public Marking {
    explanations = List.copyOf(explanations);
    unexplained = List.copyOf(unexplained);
    chance = Arguments.within(chance, 0.0, 1.0, "chance", "of one");
  }

  /**
   * Whether the explanation says anything: at most half of arbitrary answers would be explained as
   * well.
   *
   * @return false where the answer does not tell what went wrong
   */
  public boolean tells() {
    return chance <= TELLS_NOTHING;
  }

  /** The mark in plain English. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(isRight ? "right" : "not right");
    if (isRight && !explanations.isEmpty()) {
      text.append(", but by wrongs that cancel");
    }
    for (int i = 0; i < explanations.size(); i++) {
      text.append(i == 0 ? ": " : " · or ").append(explanations.get(i));
    }
    for (String figure : unexplained) {
      text.append("; no slip known here leads to ").append(figure);
    }
    if (!explanations.isEmpty() && !tells()) {
      text.append(" (half of all answers would be explained so: it does not tell)");
    }
    return text.toString();
  }
}
