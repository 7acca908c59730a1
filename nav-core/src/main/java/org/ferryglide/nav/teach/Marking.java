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
 * @param explanations what would explain the answer, figure by figure in the order of the problem,
 *     for one figure the likeliest first; all of them lie within the tolerance of what was written,
 *     so none of them is ruled out. Empty where nothing does, and where nothing went wrong. With a
 *     right answer they are errors that cancel
 * @param unexplained names of the figures written that follow from nothing known here, in order
 * @param chance the share of arbitrary wrong answers that would be explained as well, 0 to 1; where
 *     several figures went wrong, the greatest of theirs
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
   * Whether the explanation is worth having: at most half of arbitrary answers would be explained
   * as well.
   *
   * @return false where the answer does not tell what went wrong
   */
  public boolean isInformative() {
    return chance <= TELLS_NOTHING;
  }

  private boolean hasPair() {
    for (Explanation explanation : explanations) {
      if (explanation.slips().size() > 1) {
        return true;
      }
    }
    return false;
  }

  /** The mark in plain English. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(isRight ? "right" : "not right");
    if (isRight && !explanations.isEmpty()) {
      text.append(", but by errors that cancel");
    }
    String figure = "";
    for (Explanation explanation : explanations) {
      text.append(
          figure.isEmpty() ? ": " : figure.equals(explanation.figure()) ? " · or " : "; then ");
      text.append(explanation);
      figure = explanation.figure();
    }
    for (String unknown : unexplained) {
      text.append("; no slip known here leads to ").append(unknown);
    }
    if (!explanations.isEmpty() && !isInformative()) {
      text.append(" (more than half of all answers would be explained as well: this says little)");
    } else if (hasPair()) {
      text.append(" (so would ")
          .append(Math.round(chance * 100.0))
          .append(" in 100 arbitrary wrong answers)");
    }
    return text.toString();
  }
}
