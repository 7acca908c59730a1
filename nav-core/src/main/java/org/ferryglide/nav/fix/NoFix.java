package org.ferryglide.nav.fix;

import java.util.Objects;
import org.ferryglide.nav.note.Why;

/**
 * Why position lines give no position.
 *
 * <pre>{@code
 * NoFix why = outcome.why().get();
 * why.reason(); // PARALLEL
 * why.message(); // the position lines are parallel and never meet
 * }</pre>
 *
 * @param reason which condition fails
 * @param message the finding as plain English, one line without a full stop
 */
public record NoFix(Reason reason, String message) implements Why {

  private static final long serialVersionUID = 1L;

  /**
   * Takes both parts.
   *
   * @param reason which condition fails
   * @param message the finding as plain English
   */
  public NoFix {
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(message, "message");
  }

  @Override
  public String toString() {
    return "no fix: " + message;
  }

  /**
   * Which condition fails. More reasons may be added, so a {@code switch} needs a default.
   *
   * <pre>{@code
   * boolean takeAnotherBearing = noFix.reason() == NoFix.Reason.TOO_FEW_LINES;
   * }</pre>
   */
  public enum Reason {
    /** One line is not a position, unless a reckoned one is given as well. */
    TOO_FEW_LINES,
    /** The lines do not cross: marks in one line with the observer, or circles that do not meet. */
    PARALLEL,
    /** The bearings meet only where one of them points away from its mark. */
    MEET_ASTERN,
    /** Distances alone meet in two places; a rough position is needed to tell which. */
    NO_ROUGH_POSITION,
    /** No place was found that the lines agree on. */
    NOT_FOUND
  }
}
