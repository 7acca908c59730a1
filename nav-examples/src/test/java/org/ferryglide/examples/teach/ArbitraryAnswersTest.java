package org.ferryglide.examples.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.examples.teach.ArbitraryAnswers.Count;
import org.ferryglide.testing.Seeds;

/**
 * Answers that no slip made are seldom explained: no oftener than the tolerance makes them be, and
 * as often as the marking says.
 */
class ArbitraryAnswersTest {
  /** Pairs may explain that share of arbitrary wrong answers beyond what single slips must. */
  private static final double PAIRS_AT_MOST = 0.05;

  private static final double ROUNDING = 1e-9;

  @Property(seed = Seeds.SEED, tries = 1)
  void answersAreExplainedAsOftenAsTheToleranceAllowsAndTheMarkingStates(@ForAll long seed) {
    ArbitraryAnswers answers = new ArbitraryAnswers(seed).drawn(2000 * Seeds.MORE_IN_THE_SOAK);
    for (Map.Entry<String, Count> kind : answers.kinds().entrySet()) {
      Count count = kind.getValue();
      singleSlipsExplainAsPredictedAndStated(kind.getKey(), count);
      assertEquals(0.0, count.statedUnlike, ROUNDING, kind::getKey);
      // exact, whatever the draws: where pairs would explain more than that, none is offered
      assertTrue(
          count.greatestPairShare <= PAIRS_AT_MOST + ROUNDING,
          () -> kind.getKey() + " " + count.greatestPairShare);
      if (Seeds.MORE_IN_THE_SOAK > 1) { // the gate draws some seventy of a kind, too few to tell
        pairsExplainAsStatedAndFew(kind.getKey(), count, count.noise(PAIRS_AT_MOST));
      }
    }
    singleSlipsExplainAsPredictedAndStated("all kinds", answers.all());
    pairsExplainAsStatedAndFew("all kinds", answers.all(), 0.0);
  }

  private static void singleSlipsExplainAsPredictedAndStated(String name, Count count) {
    double share = count.share(count.single);
    double predicted = count.predicted / count.wrong;
    assertEquals(predicted, share, count.noise(predicted), () -> name + " predicted");
    double stated = count.statedSingle / count.wrong;
    assertEquals(stated, share, count.noise(stated), () -> name + " stated");
    // the same figure by two ways, without any draw between them
    assertEquals(predicted, stated, ROUNDING, () -> name + " predicted and stated");
  }

  private static void pairsExplainAsStatedAndFew(String name, Count count, double noise) {
    double share = count.share(count.pair);
    double stated = count.statedPair / count.wrong;
    assertEquals(stated, share, count.noise(stated), () -> name + " pairs stated");
    assertTrue(share <= PAIRS_AT_MOST + noise, () -> name + " pairs " + share);
  }
}
