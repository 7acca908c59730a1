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
 * answer; of a departure that is stopped only the worst of what was looked at is told.
 */
final class InTurn extends PassageCheck {
  private final List<List<Condition>> stages = List.of(list(), list(), list());

  InTurn(Passage part) {
    super(Note.information("check.all", "all checks"), part);
    for (Condition condition : part.checks().conditions()) {
      if (condition instanceof SlowerToo slower) {
        stages.get(1).add(slower.ofThe(false));
        stages.get(2).add(slower.ofThe(true));
      } else {
        stages.get(isCostly(condition) ? 2 : 0).add(condition);
      }
    }
  }

  private static List<Condition> list() {
    return new ArrayList<>();
  }

  /** Whether a check costs more than all that are not costly together. */
  static boolean isCostly(Condition condition) {
    return condition instanceof ReachCheck;
  }

  @Override
  Verdict check(Candidate candidate) {
    List<Verdict> verdicts = new ArrayList<>(stages.size());
    double least = Double.POSITIVE_INFINITY;
    for (List<Condition> stage : stages) {
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
