package org.ferryglide.examples;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.ferryglide.examples.page.Labels;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.timing.Verdict;

/**
 * Findings of checks as plain text in the words and with the rounding of card and page, so that one
 * passage has one set of figures wherever it is read.
 *
 * <pre>{@code
 * Findings findings = Findings.by(time -> time.atOffset(offset).toLocalTime().toString());
 * findings.judged(plan.verdicts().get(0)); // WARNING: stream: 2.3 kn, beyond 2, where it warns
 * }</pre>
 */
public final class Findings {
  private static final Labels ENGLISH = Labels.english();

  private final Labels labels;
  private final Function<Instant, String> clock;
  private final BiFunction<Note, String, String> printing;

  private Findings(Function<Instant, String> clock, Labels labels) {
    this.labels = labels;
    this.clock = clock;
    this.printing = Units.NAUTICAL.printing(labels.words(), clock);
  }

  /**
   * Findings by a clock.
   *
   * @param clock how a time is printed
   * @return how findings are told
   */
  public static Findings by(Function<Instant, String> clock) {
    return by(clock, ENGLISH);
  }

  /**
   * Findings by a clock in the words of a translation.
   *
   * @param clock how a time is printed
   * @param labels the words
   * @return how findings are told
   */
  public static Findings by(Function<Instant, String> clock, Labels labels) {
    return new Findings(clock, labels);
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
    return labels.words().say(note, printing);
  }

  /**
   * A part of a note in the words of its code.
   *
   * @param note the note
   * @param part its name, as {@code about} or {@code reason}
   * @return its words
   */
  public String sayPart(Note note, String part) {
    return labels.words().sayPart(note, part, printing);
  }

  /**
   * What was not checked: what nobody gave anything for, and what could not be made.
   *
   * @param notGiven what nothing was given for
   * @param verdicts the findings of a plan; none where there is no plan
   * @return one line, also where all that was given was checked
   */
  public String notChecked(List<Note> notGiven, List<Verdict> verdicts) {
    return labels.notChecked(notGiven, verdicts, this::say);
  }

  /**
   * Why something is not possible, and when.
   *
   * @param why the reason
   * @return one line without a full stop or place
   */
  public String say(NotPossible why) {
    return say(why.note()) + at(why.when());
  }

  /**
   * A time behind what happens then.
   *
   * @param time the time
   * @return its words after a comma; nothing if there is none
   */
  public String at(Optional<Instant> time) {
    return time.map(clock).map(told -> labels.say("card.time", "time", told)).orElse("");
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
    return worst.answer() == Verdict.Answer.WITHIN ? labels.say("what-if.all-hold") : judged(worst);
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
      return labels.say("what-if.not-checked");
    }
    List<Verdict> open =
        worstFirst.stream().filter(it -> it.answer() != Verdict.Answer.WITHIN).toList();
    if (open.isEmpty()) {
      return labels.say("what-if.all-hold");
    }
    String first = judged(open.get(0));
    return open.size() == 1
        ? first
        : labels.say("text.more", "finding", first, "more", Integer.toString(open.size() - 1));
  }

  /** How it was judged, in a word. */
  String word(Verdict verdict) {
    return labels.answer(verdict);
  }
}
