package org.ferryglide.nav.note;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;

/**
 * One number in a worked calculation: what it is, its exact value, and what somebody working by
 * hand would write down for it.
 *
 * <pre>{@code
 * Figure variation = new Figure("Variation", -4.25, -4.0, "degrees east", "4°W");
 * }</pre>
 *
 * @param name what it is, as a learner would label it
 * @param exact the value as computed, in {@code unit}; finite
 * @param byHand the value as rounded for working by hand, in {@code unit}; finite. In a result it
 *     follows from the rounded inputs, so that the written steps add up
 * @param unit the unit of both values, with its sign convention: {@code degrees east}
 * @param text {@code byHand} as it would be written: {@code 4°W}
 */
public record Figure(String name, double exact, double byHand, String unit, String text)
    implements Serializable {

  /** The unit of a time of day: minutes since midnight, which are written as a clock shows them. */
  public static final String MINUTES_OF_THE_DAY = "minutes of the day";

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param name what it is
   * @param exact the value as computed, finite
   * @param byHand the value as rounded by hand, finite
   * @param unit the unit of both
   * @param text {@code byHand} as it would be written
   * @throws IllegalArgumentException if a value is NaN or infinite, or {@code name} or {@code text}
   *     is empty
   */
  public Figure {
    if (name.isEmpty() || text.isEmpty()) {
      throw new IllegalArgumentException("name and text of a figure must not be empty");
    }
    exact = Arguments.finite(exact, name, unit);
    byHand = Arguments.finite(byHand, name, unit);
  }

  /** Name and written value: {@code Variation 4°W}. */
  @Override
  public String toString() {
    return name + " " + text;
  }
}
