package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Departure;
import org.ferryglide.nav.timing.Verdict;
import org.jspecify.annotations.Nullable;

/** Which of several verdicts to report: what stops comes before what could not be checked. */
final class Failing {
  private Failing() {}

  /**
   * The worst of some verdicts: the one that stops with the least margin, else one not checked,
   * else the one with the least margin.
   *
   * @param verdicts at least one
   */
  static Verdict worst(List<Verdict> verdicts) {
    Verdict least = null;
    Verdict unknown = null;
    for (Verdict verdict : verdicts) {
      if (verdict.answer() == Verdict.Answer.NOT_CHECKED) {
        unknown = verdict;
      } else if (least == null || verdict.margin().getAsDouble() < least.margin().getAsDouble()) {
        least = verdict;
      }
    }
    boolean stops = least != null && least.answer() == Verdict.Answer.STOPPED;
    return stops || unknown == null ? Objects.requireNonNull(least) : unknown;
  }

  /**
   * The worst that some conditions say of a candidate; null if there are none, or all that is known
   * of them is that their margins are no less than one found before.
   */
  static @Nullable Verdict worst(Candidate candidate, List<Condition> conditions, double margin) {
    List<Verdict> verdicts = new ArrayList<>(conditions.size());
    double least = margin;
    for (Condition condition : conditions) {
      Verdict verdict =
          condition instanceof PassageCheck own
              ? own.worseThan(candidate, least)
              : condition.check(candidate.route);
      if (verdict != null) {
        verdicts.add(verdict);
        least = Math.min(least, verdict.margin().orElse(least));
      }
    }
    return verdicts.isEmpty() ? null : worst(verdicts);
  }

  /** Why one may not leave then; empty if one may. */
  static Optional<Note> of(Departure departure) {
    if (departure.isFit()) {
      return Optional.empty();
    }
    return Optional.of(
        departure.outcome().match(route -> worst(departure.verdicts()).note(), NotPossible::note));
  }
}
