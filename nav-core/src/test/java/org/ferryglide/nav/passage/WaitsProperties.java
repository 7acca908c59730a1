package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.testing.Seeds;

/** Waits for slack and for a level, against looks at every second. */
class WaitsProperties {
  private static final double HOUR = 3600.0;

  /** A whole second is found at most this much after the margin became zero. */
  private static final double A_SECOND = 1.0;

  /** Of a slack so short that no whole second lies in it, the top is found to a tenth. */
  private static final double TENTH = 0.1;

  private static final double LOOK = 0.05;

  @Property(seed = Seeds.SEED, tries = 300)
  void theFirstTimeIsThatOfLooksAtEveryTwentiethOfASecond(@ForAll long seed) {
    Random random = new Random(seed);
    double from = 1.78e9 + 1e5 * random.nextDouble();
    double slack = from + 600.0 * random.nextDouble() - 60.0;
    double slope = 1e-3 * (0.1 + random.nextDouble());
    double most = slope * Math.pow(10.0, 2.5 * random.nextDouble() - 1.0);
    DoubleUnaryOperator margin =
        random.nextBoolean()
            ? t -> most - Math.abs(slope * (t - slack))
            : t -> slope * (t - slack - 60.0);
    double found = Waits.firstAtLeastZero(margin, from, from + HOUR);
    double looked = from;
    while (looked <= from + HOUR && margin.applyAsDouble(looked) < 0.0) {
      looked += LOOK;
    }
    if (looked <= from + HOUR) {
      assertTrue(margin.applyAsDouble(found) >= 0.0, () -> "not yet at " + found);
      assertEquals(looked, found, A_SECOND + LOOK);
    } else {
      assertEquals(Double.POSITIVE_INFINITY, found);
    }
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void allWhoWaitForOneSlackLeaveAtOneTime(@ForAll long seed) {
    Random random = new Random(seed);
    double slack = 1.78e9 + 1e5 * random.nextDouble();
    double slope = 1e-3 * (0.1 + random.nextDouble());
    double most = slope * (1.0 + 400.0 * random.nextDouble());
    DoubleUnaryOperator margin = t -> most - Math.abs(slope * (t - slack));
    double begins = slack - most / slope;
    double first = Waits.firstAtLeastZero(margin, begins - HOUR, slack + HOUR);
    assertEquals(Math.ceil(begins), first, TENTH);
    double before = Double.NEGATIVE_INFINITY;
    for (double off : new double[] {3600, 500, 61, 60, 59, 1.2, 1, 0.7, 0.01, -0.01, -0.3, -0.9}) {
      double now = Waits.firstAtLeastZero(margin, begins - off, slack + HOUR);
      if (off > 0.0) {
        assertEquals(first, now, "coming " + off + " s before");
      }
      assertTrue(now >= before, "who comes later leaves later");
      before = now;
    }
  }

  /** The planned and the slower party, each left at every 53rd second and asked alone. */
  @Property(seed = Seeds.SEED, tries = 5)
  void noGoodDepartureBeforeAWaitIsBarred(@ForAll long seed) {
    Random random = new Random(seed);
    Stop stop =
        random.nextBoolean()
            ? Stop.untilStreamAtMost(Speed.ofKnots(0.1 + 0.4 * random.nextDouble()))
            : Stop.untilLevelAtLeast("Cove bar", Distance.ofMetres(2.0 + random.nextDouble()));
    Passage passage =
        Passage.builder("waiting", ZoneOffset.UTC, Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(WayPoint.of("Skerry", Scenes.SKERRY).withStop(stop))
            .to(WayPoint.of("Cove", Scenes.COVE))
            .stream(Scenes.turning(0.8 + 0.6 * random.nextDouble()))
            .level("Cove bar", Scenes.level())
            .build();
    Passage slower = passage.toBuilder().party(passage.party().slower()).build();
    Instant first = Scenes.NOON.minus(Duration.ofMinutes(330L + random.nextInt(60)));
    TimedPlan plan = TimedPlan.of(passage, first).orElseThrow();
    TurnTimes slip = WayHome.of(plan).turns().get(0);
    for (int second = 0; second < 6000; second += 53) {
      Instant time = first.plusSeconds(second);
      if (holds(passage, time) && holds(slower, time)) {
        assertTrue(
            slip.goingOn().items().stream().anyMatch(window -> window.contains(time)),
            () -> stop.words() + " at " + time + " of " + slip.goingOn() + slip.goingOnBarred());
      }
    }
  }

  private static boolean holds(Passage passage, Instant time) {
    return TimedPlan.of(passage, time).<Boolean>match(TimedPlan::holds, why -> false);
  }
}
