package org.ferryglide.nav.teach;

/**
 * The figures of a problem worked so far, by name; what a {@link Rule} reads.
 *
 * <pre>{@code
 * Rule rule = figures -> figures.of("True course") - figures.of("Variation");
 * }</pre>
 */
public interface Figures {
  /**
   * A figure given or worked out before.
   *
   * @param name its name in the problem
   * @return its value, in the unit of its {@link Quantity}
   * @throws IllegalArgumentException if no earlier figure has this name
   */
  double of(String name);
}
