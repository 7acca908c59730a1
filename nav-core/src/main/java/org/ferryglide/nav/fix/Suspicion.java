package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.util.Objects;

/**
 * A mistake that would explain why position lines disagree, and the fix without it.
 *
 * <pre>{@code
 * Suspicion first = BlunderSearch.standard().withMark("pole", pole).look(solver, lines).get(0);
 * first.kind(); // REVERSED
 * first.text(); // the bearing of tower was read at the wrong end
 * first.fix().position(); // where one would be then
 * }</pre>
 *
 * @param kind what went wrong, if this is it
 * @param text the same as plain English, without a full stop
 * @param fix the fix with the mistake undone; its {@link Fix#agreement} says how well it explains
 *     all lines
 */
public record Suspicion(Kind kind, String text, Fix fix) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param kind what went wrong
   * @param text the same as plain English
   * @param fix the fix with the mistake undone
   */
  public Suspicion {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(fix, "fix");
  }

  /**
   * The mistakes that are looked for. More may be added, so a {@code switch} needs a default.
   *
   * <pre>{@code
   * boolean takeItAgain = suspicion.kind() == Suspicion.Kind.REVERSED;
   * }</pre>
   */
  public enum Kind {
    /** A bearing was read at the wrong end of the needle: 180 degrees off. */
    REVERSED,
    /** The variation went in with the wrong sign, on every bearing. */
    VARIATION_WRONG_WAY,
    /**
     * All bearings are off to the same side by as much, as when the variation, or the deviation,
     * was not applied.
     */
    VARIATION_NOT_APPLIED,
    /** The bearings were true already, and the variation was applied to them once more. */
    VARIATION_NOT_NEEDED,
    /** A bearing was taken of another mark than the one named. */
    MARK_MISIDENTIFIED,
    /** One line does not go with the others, whatever the reason. */
    ONE_LINE_WRONG
  }
}
