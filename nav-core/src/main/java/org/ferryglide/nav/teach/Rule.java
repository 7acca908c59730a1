package org.ferryglide.nav.teach;

/**
 * How one figure of a problem follows from earlier ones; rightly, or by a slip.
 *
 * <pre>{@code
 * Rule reversed = figures -> figures.of("True course") + 180.0;
 * }</pre>
 */
@FunctionalInterface
public interface Rule {
  /**
   * The figure that follows.
   *
   * @param figures the earlier figures; for a slip also the figure it spoils, as it should be
   * @return the value, in the unit of the figure's {@link Quantity}; NaN where there is none
   */
  double from(Figures figures);
}
