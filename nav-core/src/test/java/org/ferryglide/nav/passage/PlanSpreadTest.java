package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.Spread;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.steer.WindResponse;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.junit.jupiter.api.Test;

class PlanSpreadTest {
  private static final int DRAWS = 1500;

  /** 1500 draws tell a standard deviation to 1.8 in a hundred; the rest is what is linear. */
  private static final double TENTH = 0.1;

  private static final double FIFTH = 0.2;

  private static TimedPlan plan() {
    return TimedPlan.of(Scenes.passage(3.5, 1.2).dangers(List.of()).build(), Scenes.NOON)
        .orElseThrow();
  }

  @Test
  void withoutErrorsEveryDrawIsThePlan() {
    TimedPlan plan = plan();
    PlanSpread spread = PlanSpread.of(plan, PlanErrors.of(ErrorModel.none()), 3, 1L);
    for (int i = 1; i <= plan.legs().size(); i++) {
      Instant planned = plan.legs().get(i - 1).arrival();
      for (double share : new double[] {0.01, 1.0}) {
        Instant drawn = spread.arrival(i, share).orElseThrow();
        assertEquals(0, Duration.between(planned, drawn).toMillis(), 50);
      }
      assertEquals(0.0, spread.covariance(i).rootMeanSquare().metres(), 0.1);
    }
    assertEquals(1.0, spread.chancePossible());
    assertEquals(1.0, spread.chances().get("daylight"));
    assertTrue(spread.unknown().isEmpty());
  }

  @Test
  void theLinearBudgetIsTheSameWithinATenth() {
    TimedPlan plan = plan();
    PlanSpread spread = PlanSpread.inParallel(plan, PlanErrors.of(ErrorModel.usual()), DRAWS, 5L);
    for (PlannedLeg leg : plan.legs()) {
      Covariance drawn = spread.covariance(leg.leg().number());
      for (double direction = 0.0; direction < 180.0; direction += 45.0) {
        TrueBearing bearing = TrueBearing.ofDegrees(direction);
        double linear = leg.spread().standardDeviationAlong(bearing).metres();
        double sigma = drawn.standardDeviationAlong(bearing).metres();
        assertEquals(linear, sigma, TENTH * linear, () -> leg + " along " + bearing);
      }
      double linear = Duration.between(leg.arrival(), leg.latest()).toMillis() / 1960.0;
      double sigma = spread.arrivalSpread(leg.leg().number()).toMillis() / 1000.0;
      assertEquals(linear, sigma, FIFTH * linear, () -> "arrival of " + leg);
    }
  }

  @Test
  void theSameSeedGivesTheSameOnOneCoreAndOnMany() {
    TimedPlan plan = plan();
    PlanSpread one = PlanSpread.of(plan, PlanErrors.usual(), 60, 9L);
    assertEquals(one, PlanSpread.inParallel(plan, PlanErrors.usual(), 60, 9L));
    assertNotEquals(one, PlanSpread.of(plan, PlanErrors.usual(), 60, 10L));
  }

  @Test
  void aLateDepartureIsALateArrivalInStillWater() {
    Passage passage =
        Scenes.passage(3.5, 1.2).stream(StreamField.slack()).dangers(List.of()).build();
    TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).orElseThrow();
    PlanErrors late = PlanErrors.of(ErrorModel.none()).withDeparture(Duration.ofMinutes(10));
    PlanSpread spread = PlanSpread.of(plan, late, 500, 3L);
    assertEquals(spread.arrivalSpread(0).toMillis(), spread.arrivalSpread(2).toMillis(), 20);
    assertEquals(600, spread.arrivalSpread(0).getSeconds(), 600 * TENTH);
    assertEquals(0.0, spread.covariance(2).rootMeanSquare().metres(), 0.1);
  }

  @Test
  void aWindThatIsNotTheForecastOneCarriesAside() {
    Craft craft =
        Craft.ofSpeed(Speed.ofKnots(3.5)).withWindResponse(WindResponse.none().withDrift(0.03));
    WindField wind =
        WindField.steady(Velocity.ofWind(TrueBearing.ofDegrees(330), Speed.ofKnots(12)));
    Passage passage =
        Scenes.passage(3.5, 1.2).party(Party.of(craft)).stream(StreamField.slack())
            .wind(wind)
            .dangers(List.of())
            .build();
    TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).orElseThrow();
    PlanErrors windy = PlanErrors.of(ErrorModel.none()).withWindSpeed(Spread.constant(0.25));
    PlanSpread spread = PlanSpread.of(plan, windy, DRAWS, 3L);
    double seconds = plan.legs().get(0).duration().toMillis() / 1000.0;
    // by hand: a quarter of the drift of 3 % of 12 knots, down the wind
    double metres = 0.25 * 0.03 * Speed.ofKnots(12).metresPerSecond() * seconds;
    double down = spread.covariance(1).standardDeviationAlong(TrueBearing.ofDegrees(150)).metres();
    assertEquals(metres, down, 0.06 * metres); // 1500 draws: 1.8 in a hundred, and none is negative
    assertTrue(
        spread.covariance(1).standardDeviationAcross(TrueBearing.ofDegrees(150)).metres() < 1.0);
  }

  @Test
  void aDayOnWhichItIsNotPossibleIsOneOnWhichNothingHolds() {
    Passage passage =
        Passage.builder("stemming", ZoneOffset.UTC, Scenes.party(3.0))
            .from(WayPoint.of("Cove", Scenes.COVE))
            .to(WayPoint.of("Skerry", Scenes.SKERRY))
            .stream(
                StreamField.steady(
                    Velocity.ofSetAndRate(TrueBearing.ofDegrees(25), Speed.ofKnots(2.6))))
            .dangers(List.of())
            .build();
    TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).orElseThrow();
    PlanErrors rate =
        PlanErrors.of(ErrorModel.none().with(ErrorSource.STREAM_RATE, Spread.constant(0.25)));
    PlanSpread spread = PlanSpread.of(plan, rate, 400, 3L);
    assertTrue(spread.chancePossible() < 0.9 && spread.chancePossible() > 0.4);
    assertTrue(spread.chances().get("tables and places") <= spread.chancePossible());
    assertTrue(spread.chanceAllHold() <= spread.chancePossible());
    assertTrue(spread.arrival(1, 0.999).isEmpty());
  }

  @Test
  void aWindowShorterThanTheErrorOfItsTurnIsCautioned() {
    Passage gated =
        Scenes.passage(3.5, 2.0)
            .dangers(List.of())
            .limits(PassageLimits.none().withStream(Speed.ofKnots(1.0), Speed.ofKnots(1.6)))
            .build();
    Instant from = Scenes.NOON.minus(Duration.ofHours(7));
    WhenToGo day =
        WhenToGo.search(gated, from, from.plus(Duration.ofHours(14)), Duration.ofMinutes(10));
    Duration shortest = day.windows().items().get(0).duration();
    PlanErrors small = PlanErrors.usual().withTurnOfStream(shortest.dividedBy(4));
    assertEquals(List.of(), day.cautions(small));
    PlanErrors large = PlanErrors.usual().withTurnOfStream(Duration.ofHours(5));
    assertTrue(
        day.cautions(large).stream()
            .allMatch(note -> note.code().equals("passage.window-shorter-than-turn")));
    long whole =
        day.windows().items().stream()
            .filter(window -> !window.openBefore() && !window.openAfter())
            .count();
    assertTrue(whole > 0);
    assertEquals(whole, day.cautions(large).size());
  }

  @Test
  void badArgumentsAreRefused() {
    TimedPlan plan = plan();
    assertThrows(
        IllegalArgumentException.class, () -> PlanSpread.of(plan, PlanErrors.usual(), 1, 1L));
    PlanSpread spread = PlanSpread.of(plan, PlanErrors.usual(), 2, 1L);
    assertThrows(IllegalArgumentException.class, () -> spread.arrival(1, 0.0));
    assertThrows(
        IllegalArgumentException.class,
        () -> PlanErrors.usual().withDeparture(Duration.ofSeconds(-1)));
    assertThrows(
        IllegalArgumentException.class,
        () -> PlanErrors.usual().withTurnOfStream(Duration.ofSeconds(-1)));
  }

  /** How a plan along a held track is built for the comparison with the plain simulation. */
  static TimedPlan heldTrack(double afloatMinutes, double streamKnots) {
    Passage passage =
        Passage.builder("held", ZoneOffset.UTC, Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(
                WayPoint.of("Skerry", Scenes.SKERRY),
                LegOptions.usual().withStrategy(Strategy.trackHeld()))
            .to(
                WayPoint.of("Cove", Scenes.COVE),
                LegOptions.usual().withStrategy(Strategy.trackHeld()))
            .stream(Scenes.turning(1.5))
            .dangers(List.of())
            .limits(
                PassageLimits.none()
                    .withTimeAfloat(
                        Duration.ofSeconds(Math.round(60 * afloatMinutes) - 600),
                        Duration.ofSeconds(Math.round(60 * afloatMinutes)))
                    .withStream(Speed.ofKnots(streamKnots - 0.1), Speed.ofKnots(streamKnots)))
            .build();
    return TimedPlan.of(passage, Scenes.NOON.plus(Duration.ofHours(1))).orElseThrow();
  }
}
