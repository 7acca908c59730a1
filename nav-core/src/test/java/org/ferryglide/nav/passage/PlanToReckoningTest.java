package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.DeadReckoning;
import org.ferryglide.nav.reckon.ErrorBudget;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSimulation;
import org.ferryglide.nav.reckon.SteadyRun;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.steer.WindResponse;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.junit.jupiter.api.Test;

/** A plan goes straight into error budget and simulation. */
class PlanToReckoningTest {
  /**
   * The plan looks every minute, the runs are cut every five: they differ by this share at most.
   */
  private static final double SHARE = 1e-3;

  /** The plane the runs are summed on turns with the meridians: its share of a leg of 6 NM. */
  private static final double SHARE_OF_THE_LEG = 1e-5;

  /** Dead reckoning runs rhumb lines between the looks at a track that bends with the stream. */
  private static final double SHARE_RECKONED = 1e-4;

  private static List<Passage> passages() {
    WindField wind =
        WindField.steady(Velocity.ofSetAndRate(TrueBearing.ofDegrees(200), Speed.ofKnots(11)));
    Party windy =
        Party.of(
            Craft.ofSpeed(Speed.ofKnots(3.3))
                .withRestEachHour(Duration.ofMinutes(6))
                .withWindResponse(
                    WindResponse.commonPractice(WindResponse.Trim.ORDINARY).withDrift(0.02)));
    List<Passage> passages = new ArrayList<>();
    passages.add(Scenes.passage(3.5, 1.6).build());
    passages.add(Scenes.passage(3.5, 1.6).party(windy).wind(wind).build());
    passages.add(
        Passage.builder("held, with a stop", java.time.ZoneOffset.UTC, windy)
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(
                WayPoint.of("Skerry", Scenes.SKERRY).withStop(Stop.ashore(Duration.ofMinutes(40))),
                LegOptions.usual().withStrategy(Strategy.trackHeld()))
            .to(WayPoint.of("Cove", Scenes.COVE))
            .stream(Scenes.turning(1.2))
            .wind(wind)
            .build());
    return passages;
  }

  @Test
  void theErrorBudgetOfAPlanIsThatOfItsRuns() {
    for (Passage passage : passages()) {
      TimedPlan plan = TimedPlan.of(passage, Scenes.NOON.plus(Duration.ofHours(2))).orElseThrow();
      List<SteadyRun> runs = new ArrayList<>();
      for (PlannedLeg leg : plan.legs()) {
        if (leg.leg().from().stop().isPresent()) {
          runs.clear(); // the place is known ashore
        }
        runs.addAll(SteadyRun.along(leg.steered(), passage.stream()));
        Covariance counted = ErrorBudget.of(runs, passage.errors()).covariance();
        double size = counted.eastVariance() + counted.northVariance();
        assertEquals(counted.eastVariance(), leg.spread().eastVariance(), SHARE * size);
        assertEquals(counted.northVariance(), leg.spread().northVariance(), SHARE * size);
        assertEquals(
            counted.eastNorthCovariance(), leg.spread().eastNorthCovariance(), SHARE * size);
      }
    }
  }

  @Test
  void theRunsLeadToTheEndOfTheLegAndTakeItsTime() {
    for (Passage passage : passages()) {
      TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).orElseThrow();
      for (SteeredLeg leg : plan.route().legs()) {
        double east = 0.0;
        double north = 0.0;
        Duration time = Duration.ZERO;
        for (SteadyRun run : SteadyRun.along(leg, passage.stream())) {
          double seconds = run.duration().toNanos() * 1e-9;
          east += run.overGround().eastMetresPerSecond() * seconds;
          north += run.overGround().northMetresPerSecond() * seconds;
          time = time.plus(run.duration());
          assertTrue(run.duration().compareTo(Duration.ofMinutes(5)) <= 0);
        }
        GeodesicLeg straight = GeodesicLeg.between(leg.leg().start(), leg.leg().end());
        double length = straight.length().metres();
        assertEquals(length, Math.hypot(east, north), SHARE_OF_THE_LEG * length);
        assertEquals(leg.duration().toMillis(), time.toMillis(), 1);
      }
    }
  }

  private static TimedPlan withStreamOfItsOwn() {
    LegOptions inshore = LegOptions.usual().withStream(Told.stream(90, 1.5));
    Passage passage =
        Passage.builder("own", java.time.ZoneOffset.UTC, Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(WayPoint.of("Skerry", Scenes.SKERRY), inshore)
            .to(WayPoint.of("Cove", Scenes.COVE).withStop(Stop.ashore(Duration.ofMinutes(20))))
            .to(WayPoint.of("Skerry", Scenes.SKERRY))
            .stream(Scenes.turning(0.8))
            .build();
    return TimedPlan.of(passage, Scenes.NOON).orElseThrow();
  }

  @Test
  void runsTakeTheStreamOfTheirLegAndBeginAnewAfterAStop() {
    TimedPlan plan = withStreamOfItsOwn();
    for (int leg = 1; leg <= 3; leg++) {
      for (SteadyRun run : plan.runs(leg)) {
        assertEquals(3.5, run.speed().knots(), 2e-3);
      }
    }
    assertEquals(plan.runs(1), plan.runs(2).subList(0, plan.runs(1).size()));
    Duration last = Duration.ZERO;
    for (SteadyRun run : plan.runs(3)) {
      last = last.plus(run.duration());
    }
    assertEquals(plan.legs().get(2).duration().toMillis(), last.toMillis(), 1);
  }

  @Test
  void aStreamThatTheLegWasNotSteeredInIsRefused() {
    TimedPlan plan = withStreamOfItsOwn();
    for (StreamField other : List.of(plan.passage().stream(), Told.stream(90, 2.5))) {
      IllegalArgumentException refused =
          assertThrows(IllegalArgumentException.class, () -> SteadyRun.along(plan.route(), other));
      assertTrue(
          String.valueOf(refused.getMessage()).startsWith("stream must be the one that the leg"),
          refused::toString);
    }
  }

  @Test
  void aSteeredLegGoesStraightIntoDeadReckoning() {
    for (Passage passage : passages()) {
      for (SteeredLeg leg : TimedPlan.of(passage, Scenes.NOON).orElseThrow().route().legs()) {
        DeadReckoning reckoning = DeadReckoning.along(leg, passage.stream());
        double length = leg.leg().length().metres();
        double off =
            GeodesicLeg.between(reckoning.estimated().orElseThrow(), leg.leg().end())
                .length()
                .metres();
        assertTrue(off <= SHARE_RECKONED * length, leg + " ends " + off + " m off");
      }
    }
  }

  @Test
  void stillAirAndOneHeadingGiveThatHeadingAndThePaddlingSpeed() {
    TimedPlan plan = TimedPlan.of(Scenes.passage(3.5, 1.6).build(), Scenes.NOON).orElseThrow();
    SteeredLeg leg = plan.route().legs().get(0);
    for (SteadyRun run : SteadyRun.along(leg, plan.passage().stream())) {
      assertEquals(3.5, run.speed().knots(), 1e-3);
      assertEquals(0.0, leg.courseToSteer().turnDegreesTo(run.waterTrack()), 0.02);
    }
  }

  @Test
  void aRouteLeavesOutItsStopsAndGoesIntoASimulation() {
    Passage passage = passages().get(2);
    SteeredRoute route = TimedPlan.of(passage, Scenes.NOON).orElseThrow().route();
    List<SteadyRun> runs = SteadyRun.along(route, passage.stream());
    Duration afloat = Duration.ZERO;
    for (SteadyRun run : runs) {
      afloat = afloat.plus(run.duration());
    }
    assertEquals(route.duration().minusMinutes(40).toMillis(), afloat.toMillis(), 2);
    Covariance counted = ErrorBudget.of(runs, ErrorModel.usual()).covariance();
    Covariance drawn = ErrorSimulation.of(runs, ErrorModel.usual(), 4000, 7L).covariance();
    Distance across = counted.rootMeanSquare();
    // 4000 draws tell a standard deviation to 1.1 in a hundred, and the budget is to first order
    assertEquals(across.metres(), drawn.rootMeanSquare().metres(), 0.05 * across.metres());
  }

  @Test
  void aStreamWithoutDataIsRefused() {
    SteeredLeg leg =
        TimedPlan.of(Scenes.passage(3.5, 1.0).build(), Scenes.NOON)
            .orElseThrow()
            .route()
            .legs()
            .get(0);
    StreamField nothing = (latitude, longitude, seconds, eastNorth, offset) -> false;
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> SteadyRun.along(leg, nothing));
    assertTrue(
        String.valueOf(refused.getMessage())
            .startsWith("stream must be known all along the steered leg"),
        refused::toString);
  }
}
