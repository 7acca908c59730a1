package org.ferryglide.examples.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.examples.teach.ArbitraryAnswers.Count;
import org.ferryglide.testing.Seeds;

/** Answers that no slip made are seldom explained: no oftener than the tolerance makes them be. */
class ArbitraryAnswersTest {
  /** Pairs may explain that share of arbitrary wrong answers beyond what single slips must. */
  private static final double PAIRS_AT_MOST = 0.05;

  @Property(seed = Seeds.SEED, tries = 1)
  void singleSlipsExplainWhatTheToleranceCoversAndPairsAtMostAFewMore(@ForAll long seed) {
    ArbitraryAnswers answers = new ArbitraryAnswers(seed).drawn(2000 * Seeds.MORE_IN_THE_SOAK);
    for (Map.Entry<String, Count> kind : answers.kinds().entrySet()) {
      holds(kind.getKey(), kind.getValue());
    }
    holds("all kinds", answers.all());
  }

  private static void holds(String name, Count count) {
    double predicted = count.predicted / count.wrong;
    assertEquals(predicted, count.share(count.single), count.noise(predicted), () -> name);
    double pairs = count.share(count.pair);
    assertTrue(pairs <= PAIRS_AT_MOST + count.noise(PAIRS_AT_MOST), () -> name + " " + pairs);
    assertTrue(count.greatestPairChance <= 1.0, () -> name);
  }
}
