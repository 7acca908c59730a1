package org.ferryglide.nav.note;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * One line of a worked calculation: a figure that was given, or one that follows by a rule from
 * figures above it.
 *
 * <pre>{@code
 * Step step = working.steps().get(2);
 * step.name(); // Magnetic bearing
 * step.rule(); // variation is west: add it to true
 * step.result().exact(); // 49.25
 * }</pre>
 *
 * @param rule how the result follows from the inputs, in plain English; for a given figure where it
 *     comes from, or empty
 * @param inputs the figures the rule uses, in the order it uses them; empty for a given figure
 * @param result what stands on the line
 */
public record Step(String rule, List<Figure> inputs, Figure result) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param rule how the result follows, in plain English
   * @param inputs the figures used; copied
   * @param result what stands on the line
   * @throws IllegalArgumentException if there are inputs but no rule
   */
  public Step {
    Objects.requireNonNull(result, "result");
    inputs = List.copyOf(inputs);
    if (rule.isEmpty() && !inputs.isEmpty()) {
      throw new IllegalArgumentException("a step that uses figures must name its rule");
    }
  }

  /**
   * What the line is called.
   *
   * @return the name of the result
   */
  public String name() {
    return result.name();
  }

  /**
   * Whether the figure was given rather than worked out.
   *
   * @return true if there are no inputs
   */
  public boolean isGiven() {
    return inputs.isEmpty();
  }

  /** Name, value and rule on one line. */
  @Override
  public String toString() {
    return rule.isEmpty() ? result.toString() : result + ": " + rule;
  }
}
