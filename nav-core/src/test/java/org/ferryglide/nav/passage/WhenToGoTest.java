package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.timing.Departure;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.Window;
import org.junit.jupiter.api.Test;

class WhenToGoTest {
  private static final Duration STEP = Duration.ofMinutes(10);

  private static Passage gated() {
    return Scenes.passage(3.5, 2.0)
        .dangers(List.of())
        .limits(PassageLimits.none().withStream(Speed.ofKnots(1.0), Speed.ofKnots(1.6)))
        .build();
  }

  @Test
  void everyDepartureInAWindowHoldsAndEveryOneOutsideFails() {
    Instant from = Scenes.NOON.minus(Duration.ofHours(7));
    WhenToGo search = WhenToGo.search(gated(), from, from.plus(Duration.ofHours(14)), STEP);
    List<Window> windows = search.windows().items();
    assertFalse(windows.isEmpty());
    for (Instant t = from; t.isBefore(from.plus(Duration.ofHours(14))); t = t.plusSeconds(97)) {
      Instant time = t;
      boolean inside = windows.stream().anyMatch(window -> window.contains(time));
      boolean near =
          windows.stream()
              .anyMatch(
                  window ->
                      Math.abs(Seconds.of(Duration.between(window.from(), time))) < 5
                          || Math.abs(Seconds.of(Duration.between(window.until(), time))) < 5);
      if (!near) {
        boolean holds = TimedPlan.of(gated(), time).<Boolean>match(TimedPlan::holds, why -> false);
        assertEquals(inside, holds, () -> "leaving at " + time);
      }
    }
  }

  @Test
  void theBestAreAmongTheFitAndBetterThanTheRest() {
    Instant from = Scenes.NOON.minus(Duration.ofHours(7));
    WhenToGo search = WhenToGo.search(gated(), from, from.plus(Duration.ofHours(14)), STEP);
    Departure best = search.mostMargin().orElseThrow();
    for (Departure other : search.choices()) {
      if (other.isFit()) {
        assertTrue(WhenToGo.worstMargin(other) <= WhenToGo.worstMargin(best));
      }
    }
    assertTrue(search.leastBad().isEmpty());
    assertTrue(search.leastTime().orElseThrow().isFit());
    assertTrue(search.leastCrossStreamShare().orElseThrow().isFit());
  }

  @Test
  void theWarningsOfAWindowAreThoseOfTheDeparturesInIt() {
    Instant from = Scenes.NOON.minus(Duration.ofHours(7));
    WhenToGo search = WhenToGo.search(gated(), from, from.plus(Duration.ofHours(14)), STEP);
    int told = 0;
    for (Window window : search.windows()) {
      int warned = 0;
      for (Departure tried : search.choices()) {
        if (window.contains(tried.time())) {
          warned +=
              TimedPlan.of(gated(), tried.time()).orElseThrow().verdicts().stream()
                      .anyMatch(
                          verdict ->
                              verdict.about().text().equals("stream")
                                  && verdict.answer() == Verdict.Answer.WARNED)
                  ? 1
                  : 0;
        }
      }
      int counted =
          search.warnings(window).entrySet().stream()
              .filter(entry -> entry.getKey().text().equals("stream"))
              .mapToInt(entry -> entry.getValue())
              .sum();
      assertEquals(warned, counted);
      told += counted;
    }
    assertTrue(told > 0, "no window warns");
  }

  @Test
  void whereNoneIsLeftTheAnswerIsNoneAndTheLeastBadIsTold() {
    Passage hopeless =
        Scenes.passage(3.5, 2.0)
            .dangers(List.of())
            .limits(PassageLimits.none().withStream(Speed.ofKnots(0.01), Speed.ofKnots(0.02)))
            .build();
    WhenToGo search =
        WhenToGo.search(hopeless, Scenes.NOON, Scenes.NOON.plus(Duration.ofHours(6)), STEP);
    assertTrue(search.windows().items().isEmpty());
    assertTrue(search.mostMargin().isEmpty());
    assertTrue(search.leastTime().isEmpty());
    Departure least = search.leastBad().orElseThrow();
    assertFalse(least.isFit());
    assertEquals("stream", search.whyNot().keySet().iterator().next().text());
  }
}
