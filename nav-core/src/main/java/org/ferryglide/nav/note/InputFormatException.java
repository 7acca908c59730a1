package org.ferryglide.nav.note;

import java.util.List;

/**
 * Refusal of an input file, listing every problem found in it and not only the first; past {@link
 * #MOST_KEPT} of them it says how many more there are.
 *
 * <pre>{@code
 * try {
 *   TideTable.read("tides.csv", reader);
 * } catch (InputFormatException e) {
 *   e.problems().forEach(problem -> System.err.println(problem));
 * }
 * }</pre>
 */
public class InputFormatException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** How many problems are listed; nobody mends more at a time. */
  public static final int MOST_KEPT = 100;

  /** What is wrong, in file order; an array because it is always serializable. */
  private final InputProblem[] problems;

  /** How many problems were found, those not listed included. */
  private final long found;

  /**
   * Makes a refusal whose message has one line for each problem.
   *
   * @param problems what is wrong, in file order, at least one
   * @throws IllegalArgumentException if {@code problems} is empty
   */
  public InputFormatException(List<InputProblem> problems) {
    this(problems, problems.size());
  }

  /**
   * As above, where more were found than are listed.
   *
   * @param problems what is wrong, in file order, at least one
   * @param found how many problems were found, those not in {@code problems} included
   * @throws IllegalArgumentException if {@code problems} is empty
   */
  public InputFormatException(List<InputProblem> problems, long found) {
    super(message(problems, found));
    this.problems =
        problems.subList(0, Math.min(MOST_KEPT, problems.size())).toArray(new InputProblem[0]);
    this.found = found;
  }

  /**
   * Makes a refusal for a single problem.
   *
   * @param problem what is wrong
   */
  public InputFormatException(InputProblem problem) {
    this(List.of(problem));
  }

  private static String message(List<InputProblem> problems, long found) {
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("problems must not be empty");
    }
    StringBuilder text = new StringBuilder();
    int listed = Math.min(MOST_KEPT, problems.size());
    for (InputProblem problem : problems.subList(0, listed)) {
      text.append(text.length() == 0 ? "" : "\n").append(problem);
    }
    if (found > listed) {
      text.append("\nand ").append(found - listed).append(" more problems");
    }
    return text.toString();
  }

  /**
   * The problems found, at most {@link #MOST_KEPT} of them.
   *
   * @return the problems in file order, never empty, unmodifiable
   */
  public List<InputProblem> problems() {
    return List.of(problems);
  }

  /**
   * How many problems were found, those that {@link #problems} leaves out included.
   *
   * @return the number, at least 1
   */
  public long found() {
    return found;
  }
}
