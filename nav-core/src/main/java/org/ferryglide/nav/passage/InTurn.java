package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Verdict;

/**
 * All checks of a part of a passage as one, for a search that asks only when all of them hold: the
 * cheap ones first, then those of the slower party, then the costly ones of both, and no further
 * once one of them stops. Whether all hold, and whether that is known, is what all together would
 * answer; of a departure that is stopped only the worst of what was looked at is reported.
 */
final class InTurn extends PassageCheck {
  private final List<Condition> cheap = new ArrayList<>();
  private final List<Condition> ofTheSlower = new ArrayList<>();
  private final List<Condition> costly = new ArrayList<>();

  InTurn(Passage part) {
    super(Note.information("check.all", "all checks"), part);
    for (Condition condition : part.checks().conditions()) {
      if (condition instanceof SlowerToo slower) {
        ofTheSlower.add(slower.ofThe(false));
        costly.add(slower.ofThe(true));
      } else {
        (isCostly(condition) ? costly : cheap).add(condition);
      }
    }
  }

  /** Whether a check costs more than all that are not costly together. */
  static boolean isCostly(Condition condition) {
    return condition instanceof ReachCheck;
  }

  @Override
  Verdict check(Candidate candidate) {
    List<Verdict> verdicts = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    for (List<Condition> stage : List.of(cheap, ofTheSlower, costly)) {
      Verdict worst = Failing.worst(candidate, stage, least);
      if (worst != null) {
        verdicts.add(worst);
        least = Math.min(least, worst.margin().orElse(least));
        if (worst.answer() == Verdict.Answer.STOPPED) {
          break;
        }
      }
    }
    return Failing.worst(verdicts); // there is always a check of the tables
  }
}
