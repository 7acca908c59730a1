package org.ferryglide.examples.teach;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;
import org.ferryglide.nav.teach.Marking;
import org.ferryglide.nav.teach.Problem;

/**
 * A learner's answers, read from lines and marked.
 *
 * <p>A line is {@code number,value} for the answer of an exercise, or {@code number,figure,value}
 * for a figure written on the way; {@code #} begins a comment. Values are written as by hand: 049,
 * 049°M, 14:05, 1 h 05 min, 3.4 NM, 4°15'W.
 *
 * <pre>{@code
 * MarkedSheet marked = MarkedSheet.of(Exercises.of(7, 12), "answers.csv", List.of("1,043", "2,2.0"));
 * System.out.println(marked);
 * }</pre>
 */
public final class MarkedSheet {
  private final Map<Integer, Marking> markings;

  private MarkedSheet(Map<Integer, Marking> markings) {
    this.markings = markings;
  }

  /**
   * Reads and marks.
   *
   * @param exercises the exercises that were set
   * @param source what the lines come from, for messages
   * @param lines the lines
   * @return the marks
   * @throws InputFormatException listing every line that cannot be read
   */
  public static MarkedSheet of(Exercises exercises, String source, List<String> lines) {
    Map<Integer, Map<String, Double>> written = new LinkedHashMap<>();
    List<InputProblem> problems = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line =
          i == 0 && lines.get(0).startsWith("\uFEFF") ? lines.get(0).substring(1) : lines.get(i);
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      try {
        read(exercises, line, written);
      } catch (IllegalArgumentException e) {
        problems.add(new InputProblem(source, i + 1, 1, String.valueOf(e.getMessage())));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputFormatException(problems);
    }
    Map<Integer, Marking> markings = new LinkedHashMap<>();
    for (Exercise exercise : exercises.list()) {
      Map<String, Double> figures = written.get(exercise.number());
      if (figures != null && figures.containsKey(exercise.problem().asked())) {
        markings.put(exercise.number(), exercise.problem().mark(figures));
      }
    }
    return new MarkedSheet(markings);
  }

  private static void read(
      Exercises exercises, String line, Map<Integer, Map<String, Double>> written) {
    String[] cells = line.split(",", -1);
    if (cells.length < 2 || cells.length > 3) {
      throw new IllegalArgumentException(
          "a line must be number,value or number,figure,value, was \"" + line + "\"");
    }
    Problem problem = exercise(exercises, cells[0].trim()).problem();
    String figure = cells.length == 2 ? problem.asked() : cells[1].trim();
    double value = WrittenFigure.read(problem.quantity(figure), cells[cells.length - 1]);
    int number = Integer.parseInt(cells[0].trim());
    Double before = written.computeIfAbsent(number, n -> new LinkedHashMap<>()).put(figure, value);
    if (before != null) {
      throw new IllegalArgumentException("exercise " + number + " has two values of " + figure);
    }
  }

  private static Exercise exercise(Exercises exercises, String number) {
    for (Exercise exercise : exercises.list()) {
      if (Integer.toString(exercise.number()).equals(number)) {
        return exercise;
      }
    }
    throw new IllegalArgumentException(
        "number of an exercise must be in 1 to "
            + exercises.list().size()
            + ", was \""
            + number
            + "\"");
  }

  /**
   * The marks by number of exercise.
   *
   * @return marks of those that were answered, in order
   */
  public Map<Integer, Marking> markings() {
    return Collections.unmodifiableMap(markings);
  }

  /**
   * How many are right.
   *
   * @return number of right answers
   */
  public int right() {
    return (int) markings.values().stream().filter(Marking::isRight).count();
  }

  /** One line for each exercise, and how many are right. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    markings.forEach(
        (number, marking) -> text.append(number).append(". ").append(marking).append('\n'));
    return text.append(right())
        .append(" of ")
        .append(markings.size())
        .append(" right\n")
        .toString();
  }
}
