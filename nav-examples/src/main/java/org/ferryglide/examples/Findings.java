package org.ferryglide.examples;

import java.time.Instant;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.ferryglide.examples.page.Labels;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Words;
import org.ferryglide.nav.timing.Verdict;

/**
 * Findings of checks as plain text in the words and with the rounding of card and page, so that one
 * passage has one set of figures wherever it is read.
 *
 * <pre>{@code
 * Findings findings = Findings.by(time -> time.atOffset(offset).toLocalTime().toString());
 * findings.judged(plan.verdicts().get(0)); // WARNING: stream: 2.4 kn, beyond 2, where it warns
 * }</pre>
 */
public final class Findings {
  private static final Words WORDS = Labels.english().words();
  private final BiFunction<Note, String, String> printing;

  private Findings(Function<Instant, String> clock) {
    this.printing = Units.NAUTICAL.printing(WORDS, clock);
  }

  /**
   * Findings by a clock.
   *
   * @param clock how a time is printed
   * @return how findings are told
   */
  public static Findings by(Function<Instant, String> clock) {
    return new Findings(clock);
  }

  /**
   * What was found.
   *
   * @param verdict the finding
   * @return one line without a full stop, time or place
   */
  public String say(Verdict verdict) {
    return say(verdict.note());
  }

  /**
   * A note in the words of its code.
   *
   * @param note the note
   * @return its words
   */
  public String say(Note note) {
    return WORDS.say(note, printing);
  }

  /**
   * How it was judged and what was found.
   *
   * @param verdict the finding
   * @return the same after {@code WARNING:} and the like
   */
  public String judged(Verdict verdict) {
    return word(verdict) + ": " + say(verdict);
  }

  /**
   * What the worst of several findings says of all.
   *
   * @param worst the worst of them
   * @return how it was judged and what was found; where even that is within, that all checks hold
   */
  public String worst(Verdict worst) {
    return worst.answer() == Verdict.Answer.WITHIN ? "all checks hold" : judged(worst);
  }

  /**
   * What is to be told of all the findings of a plan.
   *
   * @param worstFirst the findings, the worst first
   * @return the worst of what is not within, and of how many more it is; that all checks hold where
   *     nothing is, and that nothing was checked where there is no finding
   */
  public String told(List<Verdict> worstFirst) {
    if (worstFirst.isEmpty()) {
      return "nothing was checked";
    }
    List<Verdict> open =
        worstFirst.stream().filter(it -> it.answer() != Verdict.Answer.WITHIN).toList();
    return open.isEmpty()
        ? "all checks hold"
        : judged(open.get(0))
            + (open.size() == 1 ? "" : "; " + (open.size() - 1) + " more not within");
  }

  /** How it was judged, in a word. */
  static String word(Verdict verdict) {
    return switch (verdict.answer()) {
      case WITHIN -> "within";
      case WARNED -> "WARNING";
      case STOPPED -> "STOP";
      case NOT_CHECKED -> "NOT CHECKED";
    };
  }
}
