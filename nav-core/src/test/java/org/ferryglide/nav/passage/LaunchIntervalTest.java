package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.magnetic.VariationReading;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.timing.Condition;
import org.junit.jupiter.api.Test;

class LaunchIntervalTest {
  /** Edges are refined to a second. */
  private static final int EDGE_SECONDS = 2;

  private static TimedPlan plan(Passage passage) {
    return TimedPlan.of(passage, Scenes.NOON).orElseThrow();
  }

  /** Every printed heading within 5° and all checks, by plans of their own. */
  private static boolean holds(Passage passage, TimedPlan planned, Instant time) {
    TimedPlan other = TimedPlan.of(passage, time).orElseThrow();
    boolean holds = other.holds();
    for (int leg = 0; leg < planned.legs().size(); leg++) {
      double printed =
          Double.parseDouble(planned.legs().get(leg).heading().threeDigits().substring(0, 3));
      double turn = Math.abs(other.legs().get(leg).heading().degrees() - printed);
      holds &= Math.min(turn, 360.0 - turn) <= 5.0;
    }
    return holds;
  }

  /** Degrees east of true north, so that whole magnetic degrees lie between whole true ones. */
  private static final double EAST = -8.4;

  /** How far the heading of another departure is from the mark that the card prints. */
  private static double offCard(TimedPlan planned, TimedPlan other, int leg, int marks) {
    double printed = planned.legs().get(leg).heading().degrees() - EAST;
    double atMark = marks * Math.floor(printed / marks + 0.5);
    double needed = other.legs().get(leg).heading().degrees() - EAST;
    return Math.abs(Math.IEEEremainder(needed - atMark, 360.0));
  }

  @Test
  void thePrintedNorthAndItsMarksCount() {
    Passage passage =
        Scenes.passage(3.5, 1.5)
            .dangers(List.of())
            .variation(
                (place, date) ->
                    new VariationReading(Variation.ofDegreesEast(EAST), 0.0, "even", List.of()))
            .build();
    TimedPlan plan = plan(passage);
    for (int marks : new int[] {1, 5, 10}) {
      LaunchInterval interval = LaunchInterval.of(plan, marks);
      assertEquals(marks, interval.marksEvery());
      TimeSpan span = interval.span().orElseThrow();
      for (Instant t : List.of(span.from(), span.until())) {
        TimedPlan there = TimedPlan.of(passage, t).orElseThrow();
        int outward = t.equals(span.from()) ? -EDGE_SECONDS : EDGE_SECONDS;
        TimedPlan outside = TimedPlan.of(passage, t.plusSeconds(outward)).orElseThrow();
        double beyond = 0.0;
        for (int leg = 0; leg < 2; leg++) {
          double off = offCard(plan, there, leg, marks);
          assertTrue(off <= 5.0, marks + " at " + t + " is out by " + off);
          beyond = Math.max(beyond, offCard(plan, outside, leg, marks));
        }
        assertTrue(beyond > 5.0, marks + " at " + t);
      }
      DeckCard card = DeckCard.of(plan).withMarksEvery(marks);
      assertTrue(card.withLaunchInterval(interval).toString().contains("launch interval "));
      assertThrows(
          IllegalArgumentException.class,
          () -> card.withLaunchInterval(interval).withMarksEvery(2));
    }
  }

  private static void edgesAgree(Passage passage) {
    TimedPlan plan = plan(passage);
    TimeSpan span = LaunchInterval.of(plan).span().orElseThrow();
    assertTrue(span.contains(plan.departure()));
    for (Instant t = span.from(); t.isBefore(span.until()); t = t.plusSeconds(173)) {
      assertTrue(holds(passage, plan, t), "inside at " + t);
    }
    assertFalse(holds(passage, plan, span.from().minusSeconds(EDGE_SECONDS)));
    assertFalse(holds(passage, plan, span.until().plusSeconds(EDGE_SECONDS)));
  }

  @Test
  void insideEveryHeadingHoldsAndJustOutsideOneDoesNot() {
    Passage passage = Scenes.passage(3.5, 1.5).dangers(List.of()).build();
    edgesAgree(passage);
    LaunchInterval interval = LaunchInterval.of(plan(passage));
    assertTrue(interval.failsLater().text().contains("printed heading of leg"), interval::toString);
    assertTrue(
        interval.failsEarlier().text().contains("printed heading of leg"), interval::toString);
  }

  @Test
  void aCheckThatEndsItIsNamed() {
    Instant latest = plan(Scenes.passage(3.5, 0.5).build()).arrival().plusSeconds(1200);
    Passage passage =
        Scenes.passage(3.5, 0.5)
            .dangers(List.of())
            .condition(Condition.arriveBy(latest.minusSeconds(60), latest))
            .build();
    edgesAgree(passage);
    LaunchInterval interval = LaunchInterval.of(plan(passage));
    assertTrue(interval.failsLater().text().contains("arriving by"), interval::toString);
  }

  @Test
  void withoutAStreamOnlyDaylightEndsIt() {
    Passage passage = Scenes.passage(3.5, 0.0).dangers(List.of()).build();
    LaunchInterval interval = LaunchInterval.of(plan(passage));
    assertTrue(interval.failsLater().text().contains("daylight left"), interval::toString);
    assertTrue(
        interval.failsEarlier().text().contains("sunrise before the launch"), interval::toString);
  }

  @Test
  void whereNothingEndsItThatIsTold() {
    Passage north =
        Passage.builder("north", java.time.ZoneOffset.UTC, Scenes.party(3.5))
            .from(
                WayPoint.of(
                    "A", org.ferryglide.nav.position.Position.parse("75°00.0'N 020°00.0'W")))
            .to(
                WayPoint.of(
                    "B", org.ferryglide.nav.position.Position.parse("75°03.0'N 020°00.0'W")))
            .stream(Scenes.turning(0.0))
            .dangers(List.of())
            .build();
    LaunchInterval interval = LaunchInterval.of(plan(north));
    assertEquals("nothing within 12 hours", interval.failsEarlier().text());
    assertEquals("nothing within 12 hours", interval.failsLater().text());
    assertEquals(Duration.ofHours(24), interval.span().orElseThrow().duration());
  }

  @Test
  void aPlanThatFailsHasNone() {
    Passage passage =
        Scenes.passage(3.5, 1.0)
            .condition(Condition.arriveBy(Scenes.NOON, Scenes.NOON.plusSeconds(60)))
            .build();
    LaunchInterval interval = LaunchInterval.of(plan(passage));
    assertFalse(interval.span().isPresent());
    assertTrue(interval.failsLater().text().contains("arriving by"), interval::toString);
  }
}
