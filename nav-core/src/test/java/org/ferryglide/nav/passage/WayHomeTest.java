package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.sky.SunDay;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.Window;
import org.junit.jupiter.api.Test;

class WayHomeTest {
  /**
   * The slow way counts on a sphere: the ellipsoid's minutes of latitude and longitude differ from
   * a nautical mile by up to 4 in a thousand, of legs of at most three hours.
   */
  private static final double SPHERE_SECONDS = 60.0;

  private static final Position POINT = Position.parse("46°17.0'N 026°15.5'W");
  private static final LocalDate DAY = LocalDate.of(2026, 6, 14);

  /** A stream too strong to hold the track bars, as in the slow way, and no share below it. */
  private static final PassageLimits ANY_SHARE =
      PassageLimits.none().withCrossStreamShare(0.99, 1.0);

  /** Slip, skerry, cove and point, the track held. */
  private static PassageBuilder three(double paddling, StreamField stream, Landing atSlip) {
    LegOptions held = LegOptions.usual().withStrategy(Strategy.trackHeld());
    return Passage.builder("Slip to point", ZoneOffset.UTC, Scenes.party(paddling))
        .from(WayPoint.of("Slip", Scenes.SLIP).withLanding(atSlip))
        .to(WayPoint.of("Skerry", Scenes.SKERRY), held)
        .to(WayPoint.of("Cove", Scenes.COVE), held)
        .to(WayPoint.of("Point", POINT), held)
        .stream(stream)
        .level("Slip", Scenes.level())
        .dangers(List.of());
  }

  private static double north(double knots, double seconds) {
    double turned = (seconds - Scenes.NOON.getEpochSecond()) / Scenes.TIDE_SECONDS;
    return Speed.ofKnots(knots).metresPerSecond() * Math.cos(2.0 * Math.PI * turned);
  }

  private static TimedPlan plan(Passage passage, String departure) {
    return TimedPlan.of(passage, Instant.parse("2026-06-14T" + departure + "Z")).orElseThrow();
  }

  private static boolean isNearAnEdge(Found<Window> windows, Instant time, double seconds) {
    return windows.items().stream()
        .anyMatch(
            window ->
                Math.abs(Duration.between(window.from(), time).toSeconds()) <= seconds
                    || Math.abs(Duration.between(window.until(), time).toSeconds()) <= seconds);
  }

  private static boolean holds(Found<Window> windows, Instant time) {
    return windows.items().stream().anyMatch(window -> window.contains(time));
  }

  /** Home in daylight with the slip usable, by the slow way, for a speed. */
  private static boolean isHome(
      List<Position> back, double paddling, double stream, double time, double highest) {
    double arrival =
        SlowWay.arrival(
            back, Speed.ofKnots(paddling).metresPerSecond(), t -> north(stream, t), time);
    if (Double.isNaN(arrival)) {
      return false;
    }
    double sunset =
        SunDay.of(DAY, ZoneOffset.UTC, Scenes.SLIP).daylight().set().orElseThrow().getEpochSecond();
    double ashore = arrival + 600.0;
    double level =
        Math.max(Scenes.level().heightMetres(arrival), Scenes.level().heightMetres(ashore));
    return ashore <= sunset && level <= highest;
  }

  private static WayHome homeAgrees(
      double paddling, double stream, double highest, String departure) {
    Passage passage =
        three(
                paddling,
                Scenes.turning(stream),
                Landing.between("Slip", Distance.ofMetres(0.5), Distance.ofMetres(highest)))
            .limits(ANY_SHARE)
            .build();
    WayHome wayHome = WayHome.of(plan(passage, departure));
    List<Position> out = List.of(Scenes.SLIP, Scenes.SKERRY, Scenes.COVE);
    double slower = paddling * Party.USUAL_SLOWER_SHARE;
    for (int k = 1; k <= 2; k++) {
      List<Position> back = new ArrayList<>();
      for (int i = k; i >= 0; i--) {
        back.add(out.get(i));
      }
      Found<Window> home = wayHome.turns().get(k).home();
      Instant last = home.asked().until();
      for (Instant t = home.asked().from(); t.isBefore(last); t = t.plusSeconds(457)) {
        if (!isNearAnEdge(home, t, SPHERE_SECONDS)) {
          boolean both =
              isHome(back, paddling, stream, (double) t.getEpochSecond(), highest)
                  && isHome(back, slower, stream, (double) t.getEpochSecond(), highest);
          assertEquals(both, holds(home, t), "from " + k + " at " + t + ", of " + home.items());
        }
      }
    }
    return wayHome;
  }

  /** The way out, each leg by the slow way, with no bar between the two parties at the next. */
  private static boolean goesOn(int wayPoint, double paddling, double stream, double time) {
    List<Position> places = List.of(Scenes.SLIP, Scenes.SKERRY, Scenes.COVE, POINT);
    double[] arrivals = new double[2];
    for (int i = 0; i < 2; i++) {
      double knots = i == 0 ? paddling : paddling * Party.USUAL_SLOWER_SHARE;
      arrivals[i] =
          SlowWay.arrival(
              places.subList(wayPoint, wayPoint + 2),
              Speed.ofKnots(knots).metresPerSecond(),
              t -> north(stream, t),
              time);
      if (Double.isNaN(arrivals[i])) {
        return false;
      }
    }
    if (wayPoint == 2) {
      double sunset =
          SunDay.of(DAY, ZoneOffset.UTC, POINT).daylight().set().orElseThrow().getEpochSecond();
      return arrivals[1] + 600.0 <= sunset;
    }
    for (double then = arrivals[0]; then < arrivals[1]; then += 240.0) {
      if (!goesOn(wayPoint + 1, paddling, stream, then)) {
        return false;
      }
    }
    return goesOn(wayPoint + 1, paddling, stream, arrivals[1]);
  }

  @Test
  void goingOnIsThatOfVectorsAtOneSecondWithABarInBetween() {
    WayHome wayHome =
        WayHome.of(
            plan(
                three(3.5, Scenes.turning(3.4), Landing.atAnyLevel()).limits(ANY_SHARE).build(),
                "06:00:00"));
    Found<Window> fromCove = wayHome.turns().get(2).goingOn();
    assertTrue(fromCove.items().size() >= 2, fromCove::toString);
    for (int k = 1; k <= 2; k++) {
      Found<Window> goingOn = wayHome.turns().get(k).goingOn();
      Instant last = goingOn.asked().until();
      for (Instant t = goingOn.asked().from(); t.isBefore(last); t = t.plusSeconds(907)) {
        // between two parties the bar is looked at every four minutes
        if (!isNearAnEdge(goingOn, t, SPHERE_SECONDS + 240.0)) {
          boolean slow = goesOn(k, 3.5, 3.4, (double) t.getEpochSecond());
          assertEquals(slow, holds(goingOn, t), "from " + k + " at " + t + ", of " + goingOn);
        }
      }
    }
  }

  @Test
  void theSpansHomeAreThoseOfVectorsAtOneSecond() {
    homeAgrees(3.5, 1.0, 5.0, "10:00:00");
    homeAgrees(3.5, 1.0, 3.2, "07:00:00");
    homeAgrees(3.2, 1.6, 3.6, "07:30:00");
    WayHome barred = homeAgrees(3.5, 3.4, 5.0, "06:00:00");
    Found<Window> skerry = barred.turns().get(1).home();
    assertTrue(skerry.items().size() >= 2, skerry::toString);
  }

  @Test
  void aSpanBarredInBetweenIsShownWithItsReason() {
    Passage passage = three(3.5, Scenes.turning(3.4), Landing.atAnyLevel()).build();
    TurnTimes skerry = WayHome.of(plan(passage, "06:00:00")).turns().get(1);
    List<Window> home = skerry.home().items();
    assertTrue(home.size() >= 2, () -> skerry.toString());
    TimeSpan between = TimeSpan.of(home.get(0).until(), home.get(1).from());
    assertTrue(skerry.homeBarred().containsKey(between), () -> skerry.homeBarred().toString());
    assertTrue(
        skerry.homeBarred().get(between).text().contains("stream"),
        () -> skerry.homeBarred().toString());
    assertFalse(skerry.home().unseen().size() > 0, () -> skerry.home().toString());
  }

  @Test
  void goingOnHoldsUntilNotLaterThanAndFailsAfter() {
    Passage passage = three(3.5, Scenes.turning(1.0), Landing.atAnyLevel()).build();
    TimedPlan plan = plan(passage, "14:00:00");
    WayHome wayHome = WayHome.of(plan);
    double sunset =
        SunDay.of(DAY, ZoneOffset.UTC, POINT).daylight().set().orElseThrow().getEpochSecond();
    List<Position> places = List.of(Scenes.SLIP, Scenes.SKERRY, Scenes.COVE, POINT);
    for (int k = 0; k < 3; k++) {
      TurnTimes times = wayHome.turns().get(k);
      Instant last = times.notLaterThan().orElseThrow();
      // the slower party decides
      for (double off : new double[] {-SPHERE_SECONDS, SPHERE_SECONDS}) {
        double ashore =
            600.0
                + SlowWay.arrival(
                    places.subList(k, 4),
                    Speed.ofKnots(2.8).metresPerSecond(),
                    t -> north(1.0, t),
                    last.getEpochSecond() + off);
        assertEquals(off < 0.0, ashore <= sunset, "from " + k + " at " + last + " and " + off);
      }
      String why = times.goingOnBarred().values().iterator().next().text();
      assertTrue(why.contains("daylight"), why);
      assertTrue(times.planned().isBefore(last));
    }
  }

  @Test
  void whereTheStreamIsNotKnownNothingIsPromised() {
    double end = Instant.parse("2026-06-14T16:00:00Z").getEpochSecond();
    StreamField known = Scenes.turning(1.0);
    StreamField ending =
        (latitude, longitude, seconds, eastNorth, offset) ->
            seconds <= end && known.sample(latitude, longitude, seconds, eastNorth, offset);
    Passage passage = three(3.5, ending, Landing.atAnyLevel()).build();
    TurnTimes skerry = WayHome.of(plan(passage, "09:00:00")).turns().get(1);
    Window home = skerry.home().items().get(0);
    assertTrue(home.openAfter());
    assertTrue(home.until().isBefore(Instant.ofEpochSecond((long) end)));
    assertFalse(skerry.home().isWhole());
    assertTrue(skerry.notLaterThan().orElseThrow().isBefore(home.until()));
  }

  @Test
  void anOwnConditionIsAskedOfTheWholePassage() {
    Instant warn = Instant.parse("2026-06-14T13:00:00Z");
    Instant latest = Instant.parse("2026-06-14T14:00:00Z");
    Passage passage =
        three(3.5, Scenes.turning(0.5), Landing.atAnyLevel())
            .condition(Condition.of("whole way", "legs", 2.5, 1.5, route -> route.legs().size()))
            .condition(Condition.arriveBy(warn, latest))
            .build();
    WayHome wayHome = WayHome.of(plan(passage, "09:00:00"));
    for (TurnTimes times : wayHome.turns()) {
      Instant last = times.notLaterThan().orElseThrow();
      assertTrue(last.isBefore(latest));
      String why = times.goingOnBarred().values().iterator().next().text();
      assertTrue(why.contains("arriving by"), why);
    }
    assertTrue(
        wayHome.notChecked().stream()
            .anyMatch(it -> it.text().equals("whole way on the way home")));
  }

  @Test
  void whatFailsAlreadyHasNoTime() {
    Passage passage =
        three(3.5, Scenes.turning(1.0), Landing.atAnyLevel())
            .limits(
                PassageLimits.none().withTimeAfloat(Duration.ofMinutes(30), Duration.ofHours(1)))
            .build();
    WayHome wayHome = WayHome.of(plan(passage, "09:00:00"));
    for (TurnTimes times : wayHome.turns()) {
      assertFalse(times.notLaterThan().isPresent());
    }
    assertTrue(wayHome.turns().get(2).home().isNever());
  }

  @Test
  void anEndBeforeTheDepartureIsRefused() {
    TimedPlan plan =
        plan(three(3.5, Scenes.turning(1.0), Landing.atAnyLevel()).build(), "09:00:00");
    Instant early = plan.departure().minusSeconds(1);
    assertEquals(
        "the last time must not be before the departure at 2026-06-14T09:00:00Z, but was"
            + " 2026-06-14T08:59:59Z",
        assertThrows(
                IllegalArgumentException.class,
                () -> WayHome.of(plan, early, Duration.ofMinutes(5)))
            .getMessage());
  }

  /**
   * Turns and ways home are asked for alone, at their own price, and are those of both together.
   */
  @Test
  void turnsAndWaysHomeCanBeAskedForAlone() {
    Passage passage = three(3.5, Scenes.turning(1.0), Landing.atAnyLevel()).build();
    TimedPlan plan = plan(passage, "09:00:00");
    Instant until = plan.departure().plus(Duration.ofHours(9));
    Duration step = Duration.ofMinutes(10);
    List<TurnTimes> both = WayHome.of(plan, until, step).turns();
    List<Found<Window>> on = WayHome.goingOn(plan, until, step);
    assertEquals(both.size(), on.size());
    for (int i = 0; i < on.size(); i++) {
      assertEquals(both.get(i).goingOn(), on.get(i));
      assertEquals(both.get(i).home(), WayHome.from(plan, i, until, step));
    }
    assertThrows(
        IllegalArgumentException.class, () -> WayHome.from(plan, both.size(), until, step));
  }
}
