package org.ferryglide.nav.note;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * A calculation as a learner would write it, line by line, and the same facts as data.
 *
 * <p>An answer does not carry its working: a method makes it when asked, so that it costs nothing
 * otherwise.
 *
 * <pre>{@code
 * Figure course = new Figure("True bearing", 45.0, 45.0, "degrees", "045°T");
 * Figure variation = new Figure("Variation", -4.25, -4.0, "degrees east", "4°W");
 * Working working =
 *     Working.titled("True to magnetic")
 *         .given("from the chart", course)
 *         .given("from the rose", variation)
 *         .then(
 *             "variation is west: add it to true",
 *             new Figure("Magnetic bearing", 49.25, 49.0, "degrees", "049°M"),
 *             course,
 *             variation);
 * System.out.println(working); // four lines, in columns
 * }</pre>
 */
public final class Working implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final String GAP = "  ";

  /** Closer than this the written value is the exact one, whatever the unit. */
  private static final double SAME = 1e-9;

  private final String title;

  /** An array because it is always serializable. */
  private final Step[] steps;

  private Working(String title, Step[] steps) {
    this.title = title;
    this.steps = steps;
  }

  /**
   * Starts a working without lines.
   *
   * @param title what is worked out
   * @return the working
   * @throws IllegalArgumentException if {@code title} is empty
   */
  public static Working titled(String title) {
    if (title.isEmpty()) {
      throw new IllegalArgumentException("title of a working must not be empty");
    }
    return new Working(title, new Step[0]);
  }

  /**
   * The same working with one more line, for a figure that was given.
   *
   * @param from where it comes from, for example {@code from the chart}; may be empty
   * @param figure the figure
   * @return the longer working
   */
  public Working given(String from, Figure figure) {
    return plus(new Step(from, List.of(), figure));
  }

  /**
   * The same working with one more line, for a figure that follows from earlier ones.
   *
   * @param rule how it follows, in plain English
   * @param result what follows
   * @param inputs the figures it follows from, in the order the rule uses them
   * @return the longer working
   * @throws IllegalArgumentException if {@code rule} is empty
   */
  public Working then(String rule, Figure result, Figure... inputs) {
    return plus(new Step(rule, List.of(inputs), result));
  }

  /**
   * The same working with one more line.
   *
   * @param step the line
   * @return the longer working
   */
  public Working plus(Step step) {
    Objects.requireNonNull(step, "step");
    Step[] more = Arrays.copyOf(steps, steps.length + 1);
    more[steps.length] = step;
    return new Working(title, more);
  }

  /**
   * This working, then the lines of another under this title.
   *
   * @param next the working that goes on from here
   * @return the longer working
   */
  public Working plus(Working next) {
    List<Step> all = new ArrayList<>(List.of(steps));
    all.addAll(List.of(next.steps));
    return new Working(title, all.toArray(new Step[0]));
  }

  /**
   * What is worked out.
   *
   * @return the title
   */
  public String title() {
    return title;
  }

  /**
   * The lines in order.
   *
   * @return the steps, unmodifiable
   */
  public List<Step> steps() {
    return List.of(steps);
  }

  /**
   * What the last line says.
   *
   * @return the last figure
   * @throws IllegalStateException if there are no lines yet
   */
  public Figure result() {
    if (steps.length == 0) {
      throw new IllegalStateException("the working \"" + title + "\" has no lines yet");
    }
    return steps[steps.length - 1].result();
  }

  /**
   * The title and one line for each step, in columns: name, value as written by hand, rule. A last
   * line gives the exact result where rounding by hand has moved it, a time of day by the clock.
   */
  @Override
  public String toString() {
    int names = 0;
    int values = 0;
    for (Step step : steps) {
      names = Math.max(names, step.name().length());
      values = Math.max(values, step.result().text().length());
    }
    StringBuilder text = new StringBuilder(title);
    for (Step step : steps) {
      text.append('\n').append(GAP);
      padded(text, step.name(), names);
      text.append(GAP);
      if (step.rule().isEmpty()) {
        text.append(step.result().text());
      } else {
        padded(text, step.result().text(), values);
        text.append(GAP).append(step.rule());
      }
    }
    if (steps.length > 0 && Math.abs(result().exact() - result().byHand()) > SAME) {
      text.append('\n').append(GAP).append("without rounding on the way: ").append(exact(result()));
    }
    return text.toString();
  }

  private static String exact(Figure figure) {
    return figure.unit().equals(Figure.MINUTES_OF_THE_DAY)
        ? clock(Math.floorMod(Math.round(figure.exact() * 10.0), 14400L))
        : Math.rint(figure.exact() * 1e4) / 1e4 + " " + figure.unit();
  }

  private static String clock(long tenths) {
    long minute = tenths / 10;
    return two(minute / 60) + ":" + two(minute % 60) + "." + tenths % 10;
  }

  private static String two(long number) {
    return (number < 10 ? "0" : "") + number;
  }

  private static void padded(StringBuilder text, String value, int width) {
    text.append(value);
    for (int i = value.length(); i < width; i++) {
      text.append(' ');
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Working that
        && title.equals(that.title)
        && Arrays.equals(steps, that.steps);
  }

  @Override
  public int hashCode() {
    return 31 * title.hashCode() + Arrays.hashCode(steps);
  }
}
