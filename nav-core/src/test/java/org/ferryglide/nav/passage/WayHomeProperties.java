package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.sky.SunDay;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.testing.Seeds;

/** A party really slower than planned that obeys the printed times is home in time. */
class WayHomeProperties {
  private static final LocalDate DAY = LocalDate.of(2026, 6, 14);

  /** The slow way counts on a sphere, over at most some hours. */
  private static final double SPHERE_SECONDS = 90.0;

  /** What the sphere is out by in speed, and more: the party stays so much off both speeds. */
  private static final double SPHERE_SHARE = 0.01;

  private static final double LANDING_SECONDS = 600.0;

  @Property(
      seed = Seeds.SEED,
      tries = Seeds.MORE_IN_THE_SOAK > 1 ? 1000 : 120,
      maxDiscardRatio = 20)
  void aSlowerPartyThatObeysTheTimesIsHomeInTime(@ForAll long seed) {
    Random random = new Random(seed);
    double planned = 3.0 + 1.5 * random.nextDouble();
    double rate = Speed.ofKnots(2.0 * random.nextDouble()).metresPerSecond();
    double turn = Scenes.NOON.getEpochSecond() + Scenes.TIDE_SECONDS * random.nextDouble();
    SlowWay.North stream = t -> rate * Math.cos(2.0 * Math.PI * (t - turn) / Scenes.TIDE_SECONDS);
    List<Position> places = places(random);
    TimedPlan plan =
        TimedPlan.of(
                passage(places, planned, stream),
                Scenes.NOON.plus(Duration.ofMinutes(120 + random.nextInt(300))))
            .solved()
            .orElse(null);
    if (plan == null) { // drawn in vain
      Assume.that(false);
      return;
    }
    Instant sunset = SunDay.of(DAY, ZoneOffset.UTC, places.get(0)).daylight().set().orElseThrow();
    WayHome wayHome = WayHome.of(plan, sunset.plusSeconds(600), Duration.ofMinutes(15));
    // who may not leave is at home
    Assume.that(wayHome.turns().get(0).notLaterThan().isPresent());
    double least = planned * (Party.USUAL_SLOWER_SHARE + SPHERE_SHARE);
    double knots = least + random.nextDouble() * (planned * (1.0 - SPHERE_SHARE) - least);
    paddle(random, Speed.ofKnots(knots).metresPerSecond(), places, wayHome, stream);
  }

  /** Goes from way point to way point, dawdling at each as long as the times allow. */
  private static void paddle(
      Random random, double speed, List<Position> places, WayHome wayHome, SlowWay.North stream) {
    double time = wayHome.turns().get(0).planned().getEpochSecond();
    for (int k = 0; k + 1 < places.size(); k++) {
      TurnTimes times = wayHome.turns().get(k);
      int number = k;
      double last = times.notLaterThan().orElseThrow().getEpochSecond() + 1.0;
      double reached = time;
      assertTrue(reached <= last, () -> "late at " + number + ": " + reached + " of " + times);
      time += random.nextDouble() * (last - time);
      Instant now = Instant.ofEpochSecond((long) time);
      if (k > 0 && times.home().items().stream().anyMatch(span -> span.contains(now))) {
        List<Position> back = new ArrayList<>(places.subList(0, k + 1));
        Collections.reverse(back);
        inDaylight(SlowWay.arrival(back, speed, stream, time), places.get(0), "home from " + k);
      }
      time = SlowWay.arrival(places.subList(k, k + 2), speed, stream, time);
    }
    inDaylight(time, places.get(places.size() - 1), "at the end");
  }

  private static void inDaylight(double arrival, Position place, String what) {
    double sunset =
        SunDay.of(DAY, ZoneOffset.UTC, place).daylight().set().orElseThrow().getEpochSecond();
    assertTrue(
        arrival + LANDING_SECONDS <= sunset + SPHERE_SECONDS, // NaN fails too
        () -> what + " at " + arrival + ", sunset " + sunset);
  }

  private static List<Position> places(Random random) {
    List<Position> places = new ArrayList<>();
    double latitude = 46.0;
    double longitude = -26.0;
    int count = 3 + random.nextInt(2);
    for (int i = 0; i < count; i++) {
      places.add(Position.ofDegrees(latitude, longitude));
      double course = 2.0 * Math.PI * random.nextDouble();
      double miles = 1.0 + 2.5 * random.nextDouble();
      latitude += miles / 60.0 * Math.cos(course);
      longitude += miles / 60.0 * Math.sin(course) / Math.cos(Math.toRadians(latitude));
    }
    return places;
  }

  private static Passage passage(List<Position> places, double knots, SlowWay.North stream) {
    LegOptions held = LegOptions.usual().withStrategy(Strategy.trackHeld());
    PassageBuilder builder =
        Passage.builder("random", ZoneOffset.UTC, Scenes.party(knots))
            .from(WayPoint.of("0", places.get(0)))
            .stream(
                (latitude, longitude, seconds, eastNorth, offset) -> {
                  eastNorth[offset] = 0.0;
                  eastNorth[offset + 1] = stream.at(seconds);
                  return true;
                });
    for (int i = 1; i < places.size(); i++) {
      builder.to(WayPoint.of("" + i, places.get(i)), held);
    }
    return builder.build();
  }
}
