package org.ferryglide.nav.teach;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.note.Working;

/**
 * A problem of the trade as a chain of figures: what is given, how each further figure follows, and
 * the slips that spoil it.
 *
 * <pre>{@code
 * Problem problem =
 *     Problem.titled("How long?")
 *         .given("Distance", Quantity.NAUTICAL_MILES, 4.5, "from the chart")
 *         .given("Speed", Quantity.KNOTS, 3.0, "of the party")
 *         .then("Time", Quantity.MINUTES, "distance over speed, in minutes",
 *             figures -> figures.of("Distance") / figures.of("Speed") * 60.0)
 *         .slip("Time", "multiplied in place of divided", 1.0,
 *             figures -> figures.of("Distance") * figures.of("Speed") * 60.0)
 *         .estimated("a mile is twenty minutes at three knots: about 90 minutes")
 *         .checked("longer than an hour, since it is farther than three miles");
 * System.out.println(problem.working());
 * problem.mark(90.0).isRight(); // true
 * }</pre>
 *
 * <p>Immutable; each method gives a new problem. It holds rules, not data, so it is not
 * serializable: serializable functions need parts of Java that old Android lacks. What is to be
 * sent or kept is data: the figures from which a problem is made, its {@link Working}, a {@link
 * Marking}. The exact answer carries no rounding; the working by hand rounds every line as {@link
 * Quantity} says and uses what it has written.
 */
public final class Problem {
  private static final double[] NOTHING_WRITTEN = {};

  private final String title;
  private final String estimate;
  private final String check;
  private final Line[] lines;
  private final SlipRule[] slips;

  private Problem(String title, String estimate, String check, Line[] lines, SlipRule[] slips) {
    this.title = title;
    this.estimate = estimate;
    this.check = check;
    this.lines = lines;
    this.slips = slips;
  }

  /**
   * Starts a problem without lines.
   *
   * @param title what is asked
   * @return the problem
   * @throws IllegalArgumentException if {@code title} is empty
   */
  public static Problem titled(String title) {
    if (title.isEmpty()) {
      throw new IllegalArgumentException("title of a problem must not be empty");
    }
    return new Problem(title, "", "", new Line[0], new SlipRule[0]);
  }

  /**
   * The same problem with one more given figure. Slips of reading that befall any such figure
   * (reversed, transposed, read backwards, kilometres for miles) come with it.
   *
   * @param name what it is; no two figures of a problem share a name
   * @param quantity what it measures
   * @param value its value, in the unit of {@code quantity}
   * @param from where it comes from, for example {@code from the chart}; may be empty
   * @return the longer problem
   * @throws IllegalArgumentException if the name is empty or taken, or {@code value} is not finite
   */
  public Problem given(String name, Quantity quantity, double value, String from) {
    double finite = Arguments.finite(value, name, quantity.unit());
    return plus(new Line(name, quantity, from, true, figures -> finite));
  }

  /**
   * The same problem with one more figure that follows from earlier ones.
   *
   * @param name what it is; no two figures of a problem share a name
   * @param quantity what it measures
   * @param words the rule in plain English
   * @param rule the rule
   * @return the longer problem
   * @throws IllegalArgumentException if the name or {@code words} is empty or the name taken
   */
  public Problem then(String name, Quantity quantity, String words, Rule rule) {
    if (words.isEmpty()) {
      throw new IllegalArgumentException("the rule of \"" + name + "\" must be put in words");
    }
    return plus(new Line(name, quantity, words, false, rule));
  }

  private Problem plus(Line line) {
    if (line.name().isEmpty() || index(line.name()) >= 0) {
      throw new IllegalArgumentException(
          "name of a figure must be new and not empty, was \"" + line.name() + "\"");
    }
    Line[] more = Arrays.copyOf(lines, lines.length + 1);
    more[lines.length] = line;
    List<SlipRule> all = new ArrayList<>(Arrays.asList(slips));
    all.addAll(ReadingSlips.of(line.name(), line.quantity(), line.given()));
    return new Problem(title, estimate, check, more, all.toArray(new SlipRule[0]));
  }

  /**
   * The same problem with one more way to go wrong.
   *
   * @param figure name of the figure it spoils
   * @param text what was done, in a few words
   * @param likelihood how often beside other slips, above 0; only the order matters
   * @param rule what the figure becomes; it may read the right value of {@code figure} itself
   * @return the problem that knows the slip
   * @throws IllegalArgumentException if there is no such figure, {@code text} is empty or {@code
   *     likelihood} is not above 0
   */
  public Problem slip(String figure, String text, double likelihood, Rule rule) {
    required(figure);
    SlipRule[] more = Arrays.copyOf(slips, slips.length + 1);
    more[slips.length] = new SlipRule(new Slip(figure, text, likelihood), rule);
    return new Problem(title, estimate, check, lines, more);
  }

  /**
   * The same problem with the estimate one makes in the head beforehand.
   *
   * @param words the estimate
   * @return the problem
   */
  public Problem estimated(String words) {
    return new Problem(title, words, check, lines, slips);
  }

  /**
   * The same problem with the check that would catch a gross error.
   *
   * @param words the check
   * @return the problem
   */
  public Problem checked(String words) {
    return new Problem(title, estimate, words, lines, slips);
  }

  /**
   * What is asked.
   *
   * @return the title
   */
  public String title() {
    return title;
  }

  /**
   * The estimate made in the head beforehand.
   *
   * @return the words, empty where there is none
   */
  public String estimate() {
    return estimate;
  }

  /**
   * The check afterwards.
   *
   * @return the words, empty where there is none
   */
  public String check() {
    return check;
  }

  /**
   * The names of all figures in order, the last one the answer's.
   *
   * @return names
   */
  public List<String> figures() {
    List<String> names = new ArrayList<>();
    for (Line line : lines) {
      names.add(line.name());
    }
    return names;
  }

  /**
   * The name of the figure that is asked for.
   *
   * @return the last of {@link #figures()}
   * @throws IllegalStateException if the problem has no lines yet
   */
  public String asked() {
    return lines[last()].name();
  }

  /**
   * What one figure measures.
   *
   * @param figure its name
   * @return its quantity
   * @throws IllegalArgumentException if there is no such figure
   */
  public Quantity quantity(String figure) {
    return lines[required(figure)].quantity();
  }

  /**
   * The given figures in writing, as a question puts them.
   *
   * @return for example {@code True course 045°T (from the chart); Variation 4°00'W}
   */
  public String question() {
    StringBuilder text = new StringBuilder();
    Chain chain = exact(List.of());
    for (int i = 0; i < lines.length; i++) {
      if (lines[i].given()) {
        text.append(text.length() == 0 ? "" : "; ").append(lines[i].name()).append(' ');
        text.append(lines[i].quantity().text(chain.value(i)));
        if (!lines[i].words().isEmpty()) {
          text.append(" (").append(lines[i].words()).append(')');
        }
      }
    }
    return text.toString();
  }

  /**
   * The exact value of one figure.
   *
   * @param figure its name
   * @return its value without any rounding, in the unit of its quantity
   * @throws IllegalArgumentException if there is no such figure
   */
  public double exact(String figure) {
    return exact(List.of()).value(required(figure));
  }

  /**
   * The exact answer.
   *
   * @return the last figure without any rounding, in the unit of its quantity
   * @throws IllegalStateException if the problem has no lines yet
   */
  public double answer() {
    return exact(List.of()).value(last());
  }

  /**
   * The answer that a slip leads to, all else being right.
   *
   * @param slip one of {@link #slips()}
   * @return the last figure, in the unit of its quantity; NaN where the slip leads to none
   * @throws IllegalArgumentException if the slip is not one of this problem's
   */
  public double answerAfter(Slip slip) {
    return after(slip).last();
  }

  /**
   * All figures as somebody would write them who made one slip, all else being right.
   *
   * @param slip one of {@link #slips()}
   * @return exact values by name, in order, in the unit of each quantity; NaN where the slip leads
   *     to none
   * @throws IllegalArgumentException if the slip is not one of this problem's
   */
  public Map<String, Double> figuresAfter(Slip slip) {
    Chain chain = after(slip);
    Map<String, Double> figures = new LinkedHashMap<>();
    for (int i = 0; i < lines.length; i++) {
      figures.put(lines[i].name(), chain.value(i));
    }
    return figures;
  }

  private Chain after(Slip slip) {
    for (SlipRule known : slips) {
      if (known.slip().equals(slip)) {
        return exact(List.of(known));
      }
    }
    throw new IllegalArgumentException("not a slip of this problem: " + slip);
  }

  /**
   * All slips that this problem knows, likeliest first.
   *
   * @return the slips
   */
  public List<Slip> slips() {
    List<Slip> all = new ArrayList<>();
    for (SlipRule slip : slips) {
      all.add(slip.slip());
    }
    all.sort((a, b) -> Double.compare(b.likelihood(), a.likelihood()));
    return all;
  }

  /**
   * Whether nobody can make a slip and still be marked right, nor work carefully by hand and be
   * marked wrong: no slip leads within the tolerance of the answer, but for those that change
   * nothing at all, and rounding every line stays within it.
   *
   * @return true if the question may be set
   */
  public boolean isSharp() {
    double right = answer();
    Quantity quantity = lines[last()].quantity();
    for (SlipRule slip : slips) {
      double off = Math.abs(quantity.difference(exact(List.of(slip)).value(last()), right));
      if (off > Marker.NO_EFFECT && off <= quantity.tolerance()) {
        return false;
      }
    }
    return Math.abs(new HandWork(List.of(lines)).moved()) <= quantity.tolerance();
  }

  /**
   * The working by hand: estimate, given figures, one line for each step, how finely the lines are
   * written and by how much that moved the answer, check. Made when asked.
   *
   * @return the working; its last figure is the answer
   * @throws IllegalStateException if the problem has no lines yet
   */
  public Working working() {
    last();
    return new HandWork(List.of(lines)).working(title, estimate, check);
  }

  /**
   * Marks an answer.
   *
   * @param answer the learner's last figure, in the unit of its quantity
   * @return right, or the slips that lead to it
   * @throws IllegalArgumentException if {@code answer} is NaN or infinite
   */
  public Marking mark(double answer) {
    return mark(Map.of(lines[last()].name(), answer));
  }

  /**
   * Marks an answer with the figures written on the way. Each figure is held against what follows
   * from those written before it, so that an early slip is carried on and named once.
   *
   * @param written the learner's figures by name; the answer must be among them
   * @return right, or where it went wrong and by what slips
   * @throws IllegalArgumentException if a name is unknown, a value is not finite, or the answer is
   *     missing
   */
  public Marking mark(Map<String, Double> written) {
    double[] values = new double[lines.length];
    Arrays.fill(values, Double.NaN);
    for (Map.Entry<String, Double> figure : written.entrySet()) {
      int line = required(figure.getKey());
      values[line] =
          Arguments.finite(figure.getValue(), figure.getKey(), lines[line].quantity().unit());
    }
    if (Double.isNaN(values[last()])) {
      throw new IllegalArgumentException(
          "the answer \"" + lines[last()].name() + "\" is missing from the figures written");
    }
    return new Marker(List.of(lines), List.of(slips)).marked(values);
  }

  private Chain exact(List<SlipRule> made) {
    return Chain.worked(List.of(lines), false, NOTHING_WRITTEN, made);
  }

  private int last() {
    if (lines.length == 0) {
      throw new IllegalStateException("the problem \"" + title + "\" has no lines yet");
    }
    return lines.length - 1;
  }

  private int required(String figure) {
    int index = index(figure);
    if (index < 0) {
      throw new IllegalArgumentException(
          "no figure is named \"" + figure + "\"; there are " + figures());
    }
    return index;
  }

  private int index(String figure) {
    for (int i = 0; i < lines.length; i++) {
      if (lines[i].name().equals(figure)) {
        return i;
      }
    }
    return -1;
  }

  /** Title and given figures. */
  @Override
  public String toString() {
    return title + ": " + question();
  }
}
