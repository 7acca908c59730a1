package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.Spread;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.junit.jupiter.api.Test;

/** Every check is asked of the water, the wind and the party as they were drawn. */
class DrawnWorldTest {
  private static final int DRAWS = 2000;

  /** Chance of a normal deviate below one, Abramowitz and Stegun (1964), table 26.1. */
  private static final double BELOW_ONE_SIGMA = 0.84134;

  private static final double FOUR_SIGMA =
      4.0 * Math.sqrt(BELOW_ONE_SIGMA * (1.0 - BELOW_ONE_SIGMA) / DRAWS);

  /** Six miles north, an hour and a half at four knots. */
  private static PassageBuilder north(Landing start, Landing end) {
    return Passage.builder("north", ZoneOffset.UTC, Scenes.party(4))
        .from(WayPoint.of("South", Position.ofDegrees(46.0, -26.0)).withLanding(start))
        .to(WayPoint.of("North", Position.ofDegrees(46.1, -26.0)).withLanding(end))
        .stream(StreamField.slack())
        .errors(ErrorModel.none());
  }

  private static double chance(PassageBuilder passage, PlanErrors errors, String check) {
    return chance(passage, errors, check, DRAWS);
  }

  private static double chance(PassageBuilder passage, PlanErrors errors, String check, int draws) {
    TimedPlan plan = TimedPlan.of(passage.build(), Scenes.NOON).orElseThrow();
    return PlanSpread.of(plan, errors, draws, 3L).chances().get(check);
  }

  @Test
  void aDangerClosedAboveARateIsClosedAsOftenAsTheRateIsDrawnAboveIt() {
    Danger race =
        Danger.point("Fang Race", Position.ofDegrees(46.05, -26.0), Distance.ofMetres(200))
            .closedAboveStream(Speed.ofKnots(1.2));
    PassageBuilder passage =
        north(Landing.atAnyLevel(), Landing.atAnyLevel()).stream(
                StreamField.steady(
                    Velocity.ofSetAndRate(TrueBearing.ofDegrees(0), Speed.ofKnots(1))))
            .dangers(List.of(race));
    ErrorModel rate = ErrorModel.none().with(ErrorSource.STREAM_RATE, Spread.constant(0.2));
    assertEquals(BELOW_ONE_SIGMA, chance(passage, PlanErrors.of(rate), "Fang Race"), FOUR_SIGMA);
  }

  @Test
  void theWindOntoALandingIsTheDrawnOne() {
    Landing open =
        Landing.atAnyLevel().withOpenSector(TrueBearing.ofDegrees(225), TrueBearing.ofDegrees(315));
    PassageBuilder passage =
        north(Landing.atAnyLevel(), open)
            .wind(WindField.steady(Velocity.ofWind(TrueBearing.ofDegrees(270), Speed.ofKnots(10))))
            .limits(PassageLimits.none().withOnshoreWind(Speed.ofKnots(8), Speed.ofKnots(12)));
    PlanErrors wind = PlanErrors.of(ErrorModel.none()).withWindSpeed(Spread.constant(0.2));
    assertEquals(BELOW_ONE_SIGMA, chance(passage, wind, "landing at North"), FOUR_SIGMA);
  }

  @Test
  void theTimeToALandingIsThatOfTheDrawnParty() {
    Passage oneLanding =
        Passage.builder("north", ZoneOffset.UTC, Scenes.party(4))
            .from(
                WayPoint.of("South", Position.ofDegrees(46.0, -26.0))
                    .withLanding(Landing.atAnyLevel()))
            .to(WayPoint.of("North", Position.ofDegrees(46.1, -26.0)))
            .stream(StreamField.slack())
            .errors(ErrorModel.none())
            .build();
    TimedPlan bare = TimedPlan.of(oneLanding, Scenes.NOON).orElseThrow();
    // farthest from the landing at the end: back in as long as it took out, by a party in ten
    // slower
    double back = bare.legs().get(0).duration().toMillis() / 0.9;
    PassageBuilder passage =
        oneLanding.toBuilder()
            .limits(
                PassageLimits.none()
                    .withTimeToLanding(Duration.ofHours(1), Duration.ofMillis(Math.round(back))));
    ErrorModel speed = ErrorModel.none().with(ErrorSource.SPEED, Spread.constant(0.1));
    assertEquals(
        BELOW_ONE_SIGMA,
        chance(passage, PlanErrors.of(speed), "time to a usable landing"),
        FOUR_SIGMA);
  }

  /** Two intervals of an hour are drawn in an hour and a half; both must be well. */
  private static final double BOTH_BELOW_ONE_SIGMA = BELOW_ONE_SIGMA * BELOW_ONE_SIGMA;

  private static final double FOUR_SIGMA_OF_BOTH =
      4.0 * Math.sqrt(BOTH_BELOW_ONE_SIGMA * (1.0 - BOTH_BELOW_ONE_SIGMA) / DRAWS);

  @Test
  void theReserveIsThatOfTheSlowestHourAndNotOfTheMean() {
    PassageBuilder passage =
        north(Landing.atAnyLevel(), Landing.atAnyLevel())
            .limits(PassageLimits.none().withReserve(Speed.ofKnots(3.8), Speed.ofKnots(3.6)));
    ErrorModel speed = ErrorModel.none().with(ErrorSource.SPEED, Spread.of(0.0, 0.1));
    assertEquals(
        BOTH_BELOW_ONE_SIGMA,
        chance(passage, PlanErrors.of(speed), "reserve of speed"),
        FOUR_SIGMA_OF_BOTH);
  }

  @Test
  void aPartyCarriedAsideHasTheReserveOfItsPaddlesAlone() {
    PassageBuilder passage =
        north(Landing.atAnyLevel(), Landing.atAnyLevel())
            .limits(PassageLimits.none().withReserve(Speed.ofKnots(4.2), Speed.ofKnots(4.01)));
    ErrorModel askew = ErrorModel.none().with(ErrorSource.COMPASS, Spread.constant(15.0));
    assertEquals(0.0, chance(passage, PlanErrors.of(askew), "reserve of speed"));
  }

  @Test
  void aWindThatJumpsFromHourToHourIsNoStrongerThanEitherHour() {
    PassageBuilder passage =
        north(Landing.atAnyLevel(), Landing.atAnyLevel())
            .wind(WindField.steady(Velocity.ofWind(TrueBearing.ofDegrees(270), Speed.ofKnots(10))))
            .limits(PassageLimits.none().withWind(Speed.ofKnots(9), Speed.ofKnots(12)));
    PlanErrors wind = PlanErrors.of(ErrorModel.none()).withWindSpeed(Spread.of(0.0, 0.2));
    // four times the draws, half the tolerance
    assertEquals(
        BOTH_BELOW_ONE_SIGMA, chance(passage, wind, "wind", 4 * DRAWS), 0.5 * FOUR_SIGMA_OF_BOTH);
  }
}
