package org.ferryglide.nav.passage;

import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.timing.Departure;
import org.ferryglide.nav.timing.Verdict;

/** Which of several verdicts to tell: what stops comes before what could not be checked. */
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
    return stops || unknown == null ? java.util.Objects.requireNonNull(least) : unknown;
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
