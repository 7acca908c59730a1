package org.ferryglide.examples.teach;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.teach.Problem;

/** One sharp problem of every kind that a seed has one of. */
final class DrawnProblems {
  private static final int DRAWS = 3000;

  private DrawnProblems() {}

  static List<Problem> of(long seed) {
    Questions questions = new Questions(new Draws(PracticeArea.of(seed), new SeededRandom(~seed)));
    List<Problem> problems = new ArrayList<>();
    for (int kind = 0; kind < questions.kinds(); kind++) {
      for (int draw = 0; draw < DRAWS; draw++) {
        Exercise drawn = questions.draw(kind, 1);
        if (drawn != null && drawn.problem().isSharp()) {
          problems.add(drawn.problem());
          break;
        }
      }
    }
    return problems;
  }
}
