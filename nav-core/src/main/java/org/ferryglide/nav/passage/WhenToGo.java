package org.ferryglide.nav.passage;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Departure;
import org.ferryglide.nav.timing.DepartureSearch;
import org.ferryglide.nav.timing.Departures;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.Window;

/**
 * Every departure in a span of time, put through all checks of a passage: the windows in which
 * everything was looked at and nothing lies beyond a stop limit, the best of them, and why the
 * others fail.
 *
 * <pre>{@code
 * WhenToGo day = WhenToGo.search(passage, morning, evening, Duration.ofMinutes(10));
 * day.windows().items().forEach(System.out::println);
 * day.mostMargin().ifPresentOrElse(
 *     best -> System.out.println(best.time()),
 *     () -> System.out.println("none; least bad: " + day.leastBad()));
 * }</pre>
 *
 * <p>A departure for which a check failed, or could not be made, lies in no window and is never
 * called best.
 */
public final class WhenToGo {
  private final Departures departures;
  private final List<Departure> choices;
  private final List<Note> notChecked;

  private WhenToGo(Departures departures, List<Note> notChecked) {
    this.departures = departures;
    this.choices = departures.all();
    this.notChecked = notChecked;
  }

  /**
   * Tries every departure in a span of time, on one core.
   *
   * @param passage the passage
   * @param from first departure
   * @param until last departure
   * @param step time between departures, at least a second
   * @return what was found
   * @throws IllegalArgumentException if the times are the wrong way round or the step too short
   */
  public static WhenToGo search(Passage passage, Instant from, Instant until, Duration step) {
    return search(passage, from, until, step, false);
  }

  /**
   * Tries every departure in a span of time, on all cores.
   *
   * @param passage the passage
   * @param from first departure
   * @param until last departure
   * @param step time between departures, at least a second
   * @return what {@link #search} finds
   * @throws IllegalArgumentException if the times are the wrong way round or the step too short
   */
  public static WhenToGo searchInParallel(
      Passage passage, Instant from, Instant until, Duration step) {
    return search(passage, from, until, step, true);
  }

  private static WhenToGo search(
      Passage passage, Instant from, Instant until, Duration step, boolean parallel) {
    Checks checks = passage.checks();
    DepartureSearch search = DepartureSearch.of(PassageSolver.lean(passage)).withStep(step);
    if (parallel) {
      search = search.onAllCores();
    }
    for (Condition condition : checks.conditions()) {
      search = search.withCondition(condition);
    }
    return new WhenToGo(search.between(from, until), checks.notChecked());
  }

  /**
   * Every departure tried, with its outcome and verdicts.
   *
   * @return in order of time; unmodifiable
   */
  public List<Departure> choices() {
    return choices;
  }

  /**
   * The windows in which all checks hold, refined to the second inward.
   *
   * @return the windows, and what stretch could be seen
   */
  public Found<Window> windows() {
    return departures.windows();
  }

  /**
   * What the departures tried within a window warn of: a window only says that nothing stops.
   *
   * @param window one of {@link #windows}
   * @return for each check that warns the number of departures for which it does, the commonest
   *     first; unmodifiable
   */
  public Map<Note, Integer> warnings(Window window) {
    Map<Note, Integer> counts = new LinkedHashMap<>();
    for (Departure departure : choices) {
      if (!window.contains(departure.time())) {
        continue;
      }
      for (int i = 0; i < departure.verdicts().size(); i++) {
        if (departure.verdicts().get(i).answer() == Verdict.Answer.WARNED) {
          counts.merge(departures.conditions().get(i).about(), 1, Integer::sum);
        }
      }
    }
    return commonestFirst(counts);
  }

  /**
   * Cautions about the windows: one that ends on both sides within less than twice the error of the
   * stream's turn may be missed altogether by a stream that turns early or late.
   *
   * @param errors how wrong the times of turn may be
   * @return {@code passage.window-shorter-than-turn} with the times of the window, one for each
   *     that the search did not cut; unmodifiable
   */
  public List<Note> cautions(PlanErrors errors) {
    Duration turn = errors.turnOfStream().multipliedBy(2);
    List<Note> cautions = new ArrayList<>();
    for (Window window : windows()) {
      boolean whole = !window.openBefore() && !window.openAfter();
      if (whole && window.duration().compareTo(turn) < 0) {
        cautions.add(
            Note.caution(
                    "passage.window-shorter-than-turn",
                    "The window is shorter than the error of the stream's turn: the stream may turn"
                        + " early or late by more than the window lasts.")
                .with("from", window.from().toString())
                .with("until", window.until().toString())
                .with("errorMinutes", Seconds.of(errors.turnOfStream()) / 60.0));
      }
    }
    return Collections.unmodifiableList(cautions);
  }

  /**
   * What was not checked since the passage does not give it, for the line at the top of everything
   * printed.
   *
   * @return for example {@code dangers}; unmodifiable
   */
  public List<Note> notChecked() {
    return notChecked;
  }

  /**
   * The departure of those tried that takes the least time, all checks holding.
   *
   * @return the departure; empty if none is left
   */
  public Optional<Departure> leastTime() {
    return best(route -> -(route.arrivalSeconds() - route.departureSeconds()));
  }

  /**
   * The departure of those tried whose worst margin is the largest, all checks holding; what was
   * found without a figure counts only where it warns.
   *
   * @return the departure; empty if none is left
   */
  public Optional<Departure> mostMargin() {
    Departure best = null;
    for (Departure departure : choices) {
      if (departure.isFit() && (best == null || worstMargin(departure) > worstMargin(best))) {
        best = departure;
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * The departure of those tried that spends the least share of the speed against what sets across,
   * all checks holding.
   *
   * @return the departure; empty if none is left
   */
  public Optional<Departure> leastCrossStreamShare() {
    return best(route -> -route.crossStreamShare());
  }

  /**
   * The least bad departure where none is left: the one with the fewest checks failed or not made,
   * then the largest worst margin. What fails or is unchecked stands first among its verdicts only
   * if the reader sorts them; see {@link #worst}.
   *
   * @return the departure; empty if some departure is fit, or none is possible at all
   */
  public Optional<Departure> leastBad() {
    Departure best = null;
    for (Departure departure : choices) {
      if (departure.isFit()) {
        return Optional.empty();
      }
      if (departure.outcome().isSolved() && (best == null || isLessBad(departure, best))) {
        best = departure;
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean isLessBad(Departure one, Departure other) {
    int failed = Long.compare(failures(one), failures(other));
    return failed != 0 ? failed < 0 : worstMargin(one) > worstMargin(other);
  }

  private static long failures(Departure departure) {
    return departure.verdicts().stream().filter(verdict -> !verdict.holds()).count();
  }

  /**
   * The worst verdict of a departure: what was not checked first, then the least margin.
   *
   * @param departure one of {@link #choices}
   * @return the verdict; empty if the passage is not possible then
   */
  public static Optional<Verdict> worst(Departure departure) {
    List<Verdict> verdicts = departure.verdicts();
    return Checks.worst(verdicts).isPresent()
        ? Optional.of(verdicts.get(Checks.worst(verdicts).getAsInt()))
        : Optional.empty();
  }

  static double worstMargin(Departure departure) {
    double least = Double.POSITIVE_INFINITY;
    for (Verdict verdict : departure.verdicts()) {
      // what has no figure and holds says nothing of how well: it would make all of them alike
      if (verdict.figure().isPresent() || verdict.answer() != Verdict.Answer.WITHIN) {
        least = Math.min(least, verdict.margin().orElse(Double.NEGATIVE_INFINITY));
      }
    }
    return least;
  }

  /**
   * Why departures fail: for each check the number of those tried that it stops, for each that
   * could not be made the same, and for each reason why the passage is not possible.
   *
   * @return the commonest first; unmodifiable
   */
  public Map<Note, Integer> whyNot() {
    Map<Note, Integer> counts = new LinkedHashMap<>();
    for (Departure departure : choices) {
      departure.outcome().why().ifPresent(why -> counts.merge(impossible(why), 1, Integer::sum));
      for (int i = 0; i < departure.verdicts().size(); i++) {
        Verdict verdict = departure.verdicts().get(i);
        if (!verdict.holds()) {
          Note about = departures.conditions().get(i).about();
          boolean unknown = verdict.answer() == Verdict.Answer.NOT_CHECKED;
          counts.merge(unknown ? unknown(about) : about, 1, Integer::sum);
        }
      }
    }
    return commonestFirst(counts);
  }

  private static Map<Note, Integer> commonestFirst(Map<Note, Integer> counts) {
    List<Map.Entry<Note, Integer>> entries = new ArrayList<>(counts.entrySet());
    entries.sort((a, b) -> b.getValue() - a.getValue());
    Map<Note, Integer> sorted = new LinkedHashMap<>();
    entries.forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
    return Collections.unmodifiableMap(sorted);
  }

  private static Note impossible(NotPossible why) {
    Note reason = why.reason().note();
    return Note.information("against.not-possible", "not possible: " + reason.text())
        .with("reason", reason);
  }

  private static Note unknown(Note about) {
    return Note.information("against.not-checked", about.text() + " (not checked)")
        .with("about", about);
  }

  private Optional<Departure> best(ToDoubleFunction<SteeredRoute> merit) {
    Departure best = null;
    double most = Double.NEGATIVE_INFINITY;
    for (Departure departure : choices) {
      if (departure.isFit()) {
        double here = merit.applyAsDouble(departure.outcome().orElseThrow());
        if (here > most) {
          most = here;
          best = departure;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  @Override
  public String toString() {
    return choices.size() + " departures, " + windows().items().size() + " windows";
  }
}
