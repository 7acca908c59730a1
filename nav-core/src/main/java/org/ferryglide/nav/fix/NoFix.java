package org.ferryglide.nav.fix;

import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.note.Why;
import org.ferryglide.nav.position.Position;

/**
 * Why position lines give no position.
 *
 * <pre>{@code
 * NoFix why = outcome.why().get();
 * why.reason(); // PARALLEL
 * why.message(); // the position lines are parallel and never cross
 * }</pre>
 *
 * @param reason which condition fails
 * @param message the finding as plain English, one line without a full stop
 */
public record NoFix(Reason reason, String message) implements Why {

  private static final long serialVersionUID = 1L;

  /** Honest errors are not larger than this many standard deviations. */
  private static final double HONEST = 3.0;

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

  /** Why these lines, with which no place was found, have none. */
  static NoFix diagnose(List<PositionLine> lines, LeastSquares squares) {
    LineEquation[] equations = squares.equations();
    if (ofOneMark(lines)) {
      return new NoFix(
          Reason.PARALLEL, "bearings of one mark alone cross nowhere but at the mark itself");
    }
    int reversed = RoughMeeting.reversedWhereLinesMeet(equations);
    if (reversed >= 0 && nearlyParallel(equations)) {
      return unbounded();
    }
    if (reversed >= 0) {
      return new NoFix(
          Reason.MEET_ASTERN,
          "the bearings meet only where that of "
              + lines.get(reversed).name()
              + " points away from its mark; was it read at the wrong end?");
    }
    boolean crossNowhere = RoughMeeting.of(equations).isEmpty();
    if (!crossNowhere && nearlyParallel(equations)) {
      return unbounded();
    }
    if (squares.endedParallel() || crossNowhere) {
      return new NoFix(Reason.PARALLEL, "the position lines are parallel and never cross");
    }
    return new NoFix(Reason.NOT_FOUND, "no place was found that the lines agree on");
  }

  static NoFix unbounded() {
    return new NoFix(
        Reason.UNBOUNDED,
        "the position lines are so nearly parallel, for their uncertainty, that they may meet"
            + " anywhere along them");
  }

  private static boolean ofOneMark(List<PositionLine> lines) {
    Position mark = null;
    for (PositionLine line : lines) {
      if (!(line instanceof BearingLine bearing)
          || (mark != null && !mark.equals(bearing.mark()))) {
        return false;
      }
      mark = bearing.mark();
    }
    return true;
  }

  /** Whether all are bearings that honest errors may have turned out of parallel. */
  private static boolean nearlyParallel(LineEquation[] equations) {
    double[] point = new double[3];
    double[] scratch = new double[6];
    double first = Double.NaN;
    for (LineEquation equation : equations) {
      double sigma = equation.bearingSigmaDegrees();
      if (Double.isNaN(sigma) || !equation.straight(point, scratch)) {
        return false;
      }
      first = Double.isNaN(first) ? point[2] : first;
      double cut = Math.abs(Math.IEEEremainder(point[2] - first, 180.0));
      if (cut > HONEST * Math.sqrt(2.0) * sigma) {
        return false;
      }
    }
    return true;
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
    /** Two lines meet in two places; a rough position is needed to tell which. */
    NO_ROUGH_POSITION,
    /**
     * The lines are so nearly parallel, for their uncertainty, that no bounded region holds the
     * true position in 95 of 100 cases.
     */
    UNBOUNDED,
    /** No place was found that the lines agree on. */
    NOT_FOUND
  }
}
