package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertNull;

import java.lang.ref.WeakReference;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** A thread that has worked on a passage does not keep it: an app's threads live for days. */
class ForgottenPassageTest {
  private static final int MOST_TRIES = 100;

  private static WeakReference<Passage> worked() {
    Passage passage = Scenes.passage(3.5, 1.0).build();
    TimedPlan.of(passage, Scenes.NOON).orElseThrow();
    WhenToGo.search(passage, Scenes.NOON, Scenes.NOON.plusSeconds(3600), Duration.ofMinutes(20));
    return new WeakReference<>(passage);
  }

  @Test
  void aPassageNobodyAsksForAnyMoreIsForgotten() throws InterruptedException {
    WeakReference<Passage> passage = worked();
    for (int i = 0; i < MOST_TRIES && passage.get() != null; i++) {
      System.gc();
      Thread.sleep(5);
    }
    assertNull(passage.get());
  }
}
