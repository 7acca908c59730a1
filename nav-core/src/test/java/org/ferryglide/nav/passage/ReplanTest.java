package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

class ReplanTest {
  private static final double KNOT = 1852.0 / 3600.0;
  private static final Covariance GOOD_FIX = Covariance.ofCircle(Distance.ofMetres(10));
  private static final Instant LEAVING = Scenes.NOON.plus(Duration.ofHours(1));

  /** Under way on the first leg, which takes about an hour and a quarter. */
  private static final Instant FIXED = LEAVING.plus(Duration.ofMinutes(60));

  private static TimedPlan plan() {
    return TimedPlan.of(Scenes.passage(3.5, 1.5).dangers(List.of()).build(), LEAVING).orElseThrow();
  }

  /** Where a party is on its first heading: plane vectors at one second, WGS84 radii of 46.19°. */
  private static Position paddled(
      TimedPlan plan, double speedFactor, double rateFactor, double lateSeconds) {
    double bow = Math.toRadians(plan.legs().get(0).heading().degrees());
    double seconds = Duration.between(LEAVING, FIXED).getSeconds();
    double north = 0.0;
    for (double t = 0.5; t < seconds; t++) {
      north +=
          rateFactor
              * 1.5
              * KNOT
              * Math.cos(2.0 * Math.PI * (3600.0 + t - lateSeconds) / Scenes.TIDE_SECONDS);
    }
    north += 3.5 * KNOT * speedFactor * Math.cos(bow) * seconds;
    double east = 3.5 * KNOT * speedFactor * Math.sin(bow) * seconds;
    double w = 1.0 - 0.00669437999 * Math.pow(Math.sin(Math.toRadians(46.19)), 2);
    double meridian = 6378137.0 * (1.0 - 0.00669437999) / Math.pow(w, 1.5);
    double normal = 6378137.0 / Math.sqrt(w) * Math.cos(Math.toRadians(46.19));
    return Position.ofDegrees(
        Scenes.SLIP.latitudeDegrees() + Math.toDegrees(north / meridian),
        Scenes.SLIP.longitudeDegrees() + Math.toDegrees(east / normal));
  }

  @Test
  void aFixOnTheReckoningChangesNothing() {
    TimedPlan plan = plan();
    Position fix = plan.route().at(FIXED);
    Replan now = Replan.from(plan, fix, GOOD_FIX, FIXED);
    assertEquals(0.0, now.difference().metres(), 1e-3);
    assertTrue(now.isWithinError());
    assertEquals(1.0, now.speedFactor(), 1e-6);
    assertEquals(1.0, now.streamFactor(), 1e-6);
    assertEquals(0, now.streamLate().getSeconds());
    for (TimedPlan rest :
        List.of(
            now.asPlanned().orElseThrow(),
            now.slower().orElseThrow(),
            now.otherStream().orElseThrow())) {
      assertEquals(0, Duration.between(plan.arrival(), rest.arrival()).toMillis(), 500);
      assertEquals("fix", rest.legs().get(0).leg().from().name());
    }
    // the error that the fix leaves is carried on
    assertTrue(now.latestArrival().orElseThrow().isAfter(plan.arrival()));
    assertEquals("replan.within-error", now.notes().get(0).code());
  }

  @Test
  void aSlowerPartyIsFoundAndStaysSlower() {
    TimedPlan plan = plan();
    Replan now = Replan.from(plan, paddled(plan, 0.85, 1.0, 0.0), GOOD_FIX, FIXED);
    assertEquals(0.85, now.speedFactor(), 0.01);
    Instant slower = now.slower().orElseThrow().arrival();
    assertTrue(slower.isAfter(now.asPlanned().orElseThrow().arrival()));
    assertTrue(now.latestArrival().orElseThrow().isAfter(slower));
    // by hand: the same passage at that speed from the same departure
    Instant whole =
        TimedPlan.of(Scenes.passage(3.5 * 0.85, 1.5).dangers(List.of()).build(), LEAVING)
            .orElseThrow()
            .arrival();
    // it steered for the planned speed until the fix, which costs a little
    assertEquals(0, Duration.between(whole, slower).getSeconds(), 120);
  }

  @Test
  void aPartyThatIsAheadIsNotCountedOn() {
    TimedPlan plan = plan();
    Replan now = Replan.from(plan, paddled(plan, 1.15, 1.0, 0.0), GOOD_FIX, FIXED);
    assertEquals(1.15, now.speedFactor(), 0.02);
    assertEquals(now.asPlanned().orElseThrow().arrival(), now.slower().orElseThrow().arrival());
    assertTrue(now.notes().stream().anyMatch(note -> note.code().equals("replan.ahead")));
  }

  @Test
  void aStrongerStreamIsCarriedOnByTheTablesOwnCourse() {
    TimedPlan plan = plan();
    Replan now = Replan.from(plan, paddled(plan, 1.0, 1.4, 0.0), GOOD_FIX, FIXED);
    assertTrue(now.streamFactor() > 1.2, () -> "factor " + now.streamFactor());
    StreamField tabled = plan.passage().stream();
    StreamField found = now.otherStream().orElseThrow().passage().stream();
    double[] flow = new double[2];
    double late = now.streamLate().toMillis() / 1000.0;
    double noon = Scenes.NOON.getEpochSecond();
    for (double hours = 0.0; hours < 13.0; hours += 0.5) {
      double time = noon + hours * 3600.0;
      assertTrue(tabled.sample(46.2, -26.2, time - late, flow, 0));
      double expected = now.streamFactor() * flow[1];
      assertTrue(found.sample(46.2, -26.2, time, flow, 0));
      assertEquals(expected, flow[1], 1e-3);
    }
    // half a tide on it sets the other way, which no constant vector would
    assertTrue(found.sample(46.2, -26.2, noon, flow, 0) && flow[1] > 0.0);
    assertTrue(found.sample(46.2, -26.2, noon + Scenes.TIDE_SECONDS / 2, flow, 0) && flow[1] < 0.0);
  }

  @Test
  void theStreamFoundExplainsTheFix() {
    TimedPlan plan = plan();
    for (double[] truth : new double[][] {{1.3, 0.0}, {0.75, 0.0}, {1.0, 1500.0}, {1.1, -1500.0}}) {
      Replan now = Replan.from(plan, paddled(plan, 1.0, truth[0], truth[1]), GOOD_FIX, FIXED);
      double late = now.streamLate().toMillis() / 1000.0;
      Position explained = paddled(plan, 1.0, now.streamFactor(), late);
      Position fix = paddled(plan, 1.0, truth[0], truth[1]);
      double metres = 111_100.0 * (explained.latitudeDegrees() - fix.latitudeDegrees());
      assertEquals(0.0, metres, 15.0); // within the 14 m that a fix is trusted to
    }
  }

  @Test
  void theRestOfAPlanIsHeldAgainstTheTimeAfloatSinceTheStart() {
    Passage passage =
        Scenes.passage(3.5, 1.5)
            .dangers(List.of())
            .limits(
                PassageLimits.none().withTimeAfloat(Duration.ofMinutes(60), Duration.ofMinutes(90)))
            .build();
    TimedPlan plan = TimedPlan.of(passage, LEAVING).orElseThrow();
    Replan now = Replan.from(plan, plan.route().at(FIXED), GOOD_FIX, FIXED);
    assertFalse(plan.holds());
    assertTrue(
        now.asPlanned().orElseThrow().verdicts().stream()
            .anyMatch(v -> v.answer() == Verdict.Answer.STOPPED));
  }

  @Test
  void theEarlierTurnIsShown() {
    TimedPlan plan = plan();
    Replan good = Replan.from(plan, plan.route().at(FIXED), GOOD_FIX, FIXED);
    Replan bad = Replan.from(plan, paddled(plan, 0.6, 1.0, 0.0), GOOD_FIX, FIXED);
    assertFalse(bad.isWithinError());
    assertEquals("replan.beyond-error", bad.notes().get(0).code());
    Map<String, Instant> planned = good.notLaterThan();
    Map<String, Instant> earlier = bad.notLaterThan();
    assertEquals(List.of("Skerry"), List.copyOf(planned.keySet()));
    assertTrue(
        earlier.isEmpty() || earlier.get("Skerry").isBefore(planned.get("Skerry")),
        () -> planned + " " + earlier);
    // less slow, there is still a time, and it is the earlier one
    int later = 0;
    for (double share : new double[] {0.82, 0.78, 0.74, 0.7, 0.66}) {
      Replan mild = Replan.from(plan, paddled(plan, share, 1.0, 0.0), GOOD_FIX, FIXED);
      Instant sooner = mild.notLaterThan().get("Skerry");
      if (!mild.isWithinError() && sooner != null) {
        assertTrue(sooner.isBefore(planned.get("Skerry")), () -> planned + " " + sooner);
        later++;
      }
    }
    assertTrue(later > 0, "none of them had a time left");
  }

  @Test
  void aTimeThatIsNotUnderWayIsRefused() {
    TimedPlan plan = plan();
    for (Instant time : List.of(LEAVING.minusSeconds(1), plan.arrival().plusSeconds(1))) {
      IllegalArgumentException refused =
          assertThrows(
              IllegalArgumentException.class, () -> Replan.from(plan, Scenes.SLIP, GOOD_FIX, time));
      assertTrue(
          refused.getMessage().startsWith("time of a fix must be while the plan is under way"));
    }
  }
}
