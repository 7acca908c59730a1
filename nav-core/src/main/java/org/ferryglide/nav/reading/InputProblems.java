package org.ferryglide.nav.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;

/**
 * Gathers what is wrong with one source while it is read, and refuses it in the end with everything
 * found.
 *
 * <pre>{@code
 * InputProblems problems = new InputProblems("tides.csv");
 * problems.add(7, 3, "height must be a number of metres, but was \"4,2\"");
 * problems.refuseIfAny();
 * }</pre>
 *
 * <p>The first {@link InputFormatException#MOST_KEPT} are kept, later ones are only counted, so
 * that a file of nothing but mistakes costs no memory. Belongs to one thread.
 */
public final class InputProblems {
  private final String source;
  private final List<InputProblem> kept = new ArrayList<>();
  private long found;

  /**
   * Starts with nothing wrong.
   *
   * @param source the file or other source, as messages should name it
   */
  public InputProblems(String source) {
    this.source = source;
  }

  /**
   * Adds one more.
   *
   * @param line line number, the first is 1; 0 for the whole source
   * @param column field number, the first is 1; 0 for the whole line
   * @param message what was given and what is allowed
   */
  public void add(int line, int column, String message) {
    add(new InputProblem(source, line, column, message));
  }

  /**
   * Adds one more, of whatever source.
   *
   * @param problem what is wrong
   */
  public void add(InputProblem problem) {
    found++;
    if (kept.size() < InputFormatException.MOST_KEPT) {
      kept.add(problem);
    }
  }

  /**
   * Whether nothing was wrong so far.
   *
   * @return true if no problem was added
   */
  public boolean isEmpty() {
    return found == 0;
  }

  /**
   * Whether further problems are only counted; a reader may stop here.
   *
   * @return true if as many were added as are kept
   */
  public boolean isFull() {
    return kept.size() == InputFormatException.MOST_KEPT;
  }

  /**
   * Refuses the source if anything was wrong with it.
   *
   * @throws InputFormatException with the problems by line and column
   */
  public void refuseIfAny() {
    if (found > 0) {
      List<InputProblem> sorted = new ArrayList<>(kept);
      sorted.sort(
          Comparator.comparingInt(InputProblem::line).thenComparingInt(InputProblem::column));
      throw new InputFormatException(sorted, found);
    }
  }
}
