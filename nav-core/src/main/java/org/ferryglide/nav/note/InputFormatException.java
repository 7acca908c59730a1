package org.ferryglide.nav.note;

import java.util.List;

/**
 * Refusal of an input file, listing every problem found in it and not only the first.
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

  /** What is wrong, in file order; an array because it is always serializable. */
  private final InputProblem[] problems;

  /**
   * Makes a refusal whose message has one line for each problem.
   *
   * @param problems what is wrong, in file order, at least one
   * @throws IllegalArgumentException if {@code problems} is empty
   */
  public InputFormatException(List<InputProblem> problems) {
    super(message(problems));
    this.problems = problems.toArray(new InputProblem[0]);
  }

  /**
   * Makes a refusal for a single problem.
   *
   * @param problem what is wrong
   */
  public InputFormatException(InputProblem problem) {
    this(List.of(problem));
  }

  private static String message(List<InputProblem> problems) {
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("problems must not be empty");
    }
    StringBuilder text = new StringBuilder();
    for (InputProblem problem : problems) {
      text.append(text.length() == 0 ? "" : "\n").append(problem);
    }
    return text.toString();
  }

  /**
   * Every problem found.
   *
   * @return the problems in file order, never empty, unmodifiable
   */
  public List<InputProblem> problems() {
    return List.of(problems);
  }
}
