package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.junit.jupiter.api.Test;

class LandingInReachTest {
  /** A sphere of 60 NM a degree against the ellipsoid, over at most two hours. */
  private static final double SPHERE_SECONDS = 40.0;

  private static final Position BIGHT = Position.parse("46°12.5'N 026°18.5'W");

  private static PassageBuilder passage(StreamField stream) {
    return Passage.builder("Slip to cove", ZoneOffset.UTC, Scenes.party(3.5))
        .from(WayPoint.of("Slip", Scenes.SLIP).withLanding(Landing.atAnyLevel()))
        .to(WayPoint.of("Skerry", Scenes.SKERRY))
        .to(
            WayPoint.of("Cove", Scenes.COVE)
                .withLanding(
                    Landing.between("Cove bar", Distance.ofMetres(0.0), Distance.ofMetres(3.0))))
        .stream(stream)
        .refuge(WayPoint.of("Bight", BIGHT).withLanding(Landing.atAnyLevel()))
        .level("Cove bar", Scenes.level())
        .dangers(List.of());
  }

  private static TimedPlan plan(PassageBuilder builder) {
    return TimedPlan.of(builder.build(), Scenes.NOON).orElseThrow();
  }

  private static LandingInReach named(List<LandingInReach> all, String name) {
    return all.stream().filter(one -> one.place().name().equals(name)).findFirst().orElseThrow();
  }

  /** Seconds on one heading to a place in a uniform stream, by trial of whole seconds. */
  private static double seconds(Position from, Position to, double knots, double rate, double at) {
    double north = (to.latitudeDegrees() - from.latitudeDegrees()) * 60.0 * 1852.0;
    double east =
        (to.longitudeDegrees() - from.longitudeDegrees())
            * 60.0
            * 1852.0
            * Math.cos(Math.toRadians(0.5 * (from.latitudeDegrees() + to.latitudeDegrees())));
    double speed = Speed.ofKnots(knots).metresPerSecond();
    double carried = 0.0;
    double noon = Scenes.NOON.getEpochSecond();
    for (int second = 0; ; second++) {
      if (Math.hypot(east, north - carried) <= speed * second) {
        return second;
      }
      double turned = (at + second + 0.5 - noon) / Scenes.TIDE_SECONDS;
      carried += Speed.ofKnots(rate).metresPerSecond() * Math.cos(2.0 * Math.PI * turned);
    }
  }

  /** A minute of latitude at 46° north is 1852.6 m by the radius of the meridian of WGS 84. */
  @Test
  void nearerThanFiftyMetresThePartyIsThere() {
    LandingInReach bight =
        named(LandingInReach.from(plan(passage(Scenes.turning(1.2))), Scenes.NOON), "Bight");
    double minute = 1.0 / 60.0;
    for (double metres : new double[] {-51.0, -49.0, 0.0, 49.0, 51.0}) {
      Position here =
          Position.ofDegrees(
              BIGHT.latitudeDegrees() + metres / 1852.6 * minute, BIGHT.longitudeDegrees());
      assertEquals(Math.abs(metres) < 50.0, bight.isAt(here), metres + " m");
    }
  }

  @Test
  void eachIsReachedWhenVectorsSayAndTheNearestStandsFirst() {
    TimedPlan plan = plan(passage(Scenes.turning(1.2)));
    for (PlannedLeg leg : plan.legs()) {
      for (PlannedHour hour : leg.hours()) {
        Instant time = hour.span().from();
        List<LandingInReach> all = LandingInReach.from(plan, time);
        assertEquals(3, all.size());
        double last = 0.0;
        for (LandingInReach one : all) {
          if (hour.position().equals(one.place().position())) {
            continue;
          }
          double at = time.toEpochMilli() / 1000.0;
          Position to = one.place().position();
          double planned = seconds(hour.position(), to, 3.5, 1.2, at);
          double slower = seconds(hour.position(), to, 2.8, 1.2, at);
          assertEquals(
              planned,
              (double) Duration.between(time, one.arrival().orElseThrow()).toSeconds(),
              SPHERE_SECONDS);
          assertEquals(slower, (double) one.slowerTime().orElseThrow().toSeconds(), SPHERE_SECONDS);
          assertTrue(one.isUsable() == !one.ruledOutBy().isPresent());
          assertTrue(!one.isUsable() || slower + SPHERE_SECONDS >= last, all::toString);
          last = one.isUsable() ? slower - SPHERE_SECONDS : last;
        }
      }
    }
  }

  @Test
  void aLevelOutsideItsLimitsAndAnOnshoreWindLieAgainstIt() {
    TimedPlan plan = plan(passage(Scenes.turning(1.2)));
    LandingInReach cove = named(LandingInReach.from(plan, plan.departure()), "Cove");
    // an hour or two after high water of 4 m
    assertFalse(cove.isUsable());
    assertEquals(Verdict.Answer.STOPPED, cove.ruledOutBy().orElseThrow().answer());
    assertTrue(cove.heading().isPresent());
    Landing open =
        Landing.atAnyLevel().withOpenSector(TrueBearing.ofDegrees(200), TrueBearing.ofDegrees(290));
    PassageBuilder windy =
        passage(Scenes.turning(1.2))
            .refuge(
                WayPoint.of("Open Bay", Position.parse("46°11.5'N 026°18.0'W")).withLanding(open))
            .wind(WindField.steady(Velocity.ofWind(TrueBearing.ofDegrees(240), Speed.ofKnots(14))))
            .limits(PassageLimits.none().withOnshoreWind(Speed.ofKnots(6), Speed.ofKnots(12)));
    LandingInReach bay = named(LandingInReach.from(plan(windy), Scenes.NOON), "Open Bay");
    assertTrue(bay.ruledOutBy().orElseThrow().message().contains("wind onto it"), bay::toString);
  }

  @Test
  void aDangerOnTheStraightWayLiesAgainstIt() {
    Position between = Position.parse("46°11.25'N 026°19.25'W");
    PassageBuilder rocky =
        passage(Scenes.turning(0.0))
            .dangers(List.of(Danger.point("Fang Rock", between, Distance.ofMetres(200))));
    TimedPlan plan = plan(rocky);
    LandingInReach bight = named(LandingInReach.from(plan, plan.departure()), "Bight");
    assertTrue(bight.ruledOutBy().orElseThrow().reason().contains("Fang Rock"), bight::toString);
  }

  @Test
  void theLongestStretchIsHeldAgainstTheLimit() {
    PassageBuilder builder =
        passage(Scenes.turning(0.0))
            .limits(
                PassageLimits.none()
                    .withTimeToLanding(Duration.ofMinutes(45), Duration.ofMinutes(120)));
    TimedPlan plan = plan(builder);
    Verdict verdict = LandingInReach.check(plan);
    double worst = 0.0;
    double end = plan.route().arrivalSeconds();
    for (double next = plan.route().departureSeconds(); next < end + 300.0; next += 300.0) {
      double at = Math.min(end, next);
      Position here = plan.route().at(Instant.ofEpochMilli(Math.round(1000.0 * at)));
      double least = seconds(here, BIGHT, 2.8, 0.0, at);
      least = Math.min(least, seconds(here, Scenes.SLIP, 2.8, 0.0, at));
      double toCove = seconds(here, Scenes.COVE, 2.8, 0.0, at);
      double planned = seconds(here, Scenes.COVE, 3.5, 0.0, at);
      boolean works =
          Scenes.level().heightMetres(at + planned) <= 3.0
              && Scenes.level().heightMetres(at + toCove + 600.0) <= 3.0;
      worst = Math.max(worst, works ? Math.min(least, toCove) : least);
    }
    assertEquals(worst / 60.0, verdict.figure().orElseThrow(), SPHERE_SECONDS / 60.0);
    assertEquals(Verdict.Answer.WARNED, verdict.answer(), verdict::message);
    assertTrue(verdict.reason().contains("none within 45 minutes from 2026-06-14T1"));
    assertTrue(verdict.when().isPresent() && verdict.where().isPresent());
  }

  @Test
  void withoutLimitOrLandingOrTableItIsNotChecked() {
    assertEquals(
        "time to a landing: not checked, no limit was chosen",
        LandingInReach.check(plan(passage(Scenes.turning(0.0)))).reason());
    PassageLimits limits =
        PassageLimits.none().withTimeToLanding(Duration.ofMinutes(45), Duration.ofMinutes(90));
    assertEquals(
        "time to a landing: not checked, no landing was given",
        LandingInReach.check(plan(Scenes.passage(3.5, 0.0).limits(limits))).reason());
    double end = Scenes.NOON.plus(Duration.ofHours(3)).getEpochSecond();
    StreamField known = Scenes.turning(0.2);
    StreamField ending =
        (latitude, longitude, seconds, eastNorth, offset) ->
            seconds <= end && known.sample(latitude, longitude, seconds, eastNorth, offset);
    Verdict verdict = LandingInReach.check(plan(passage(ending).limits(limits)));
    assertEquals(Verdict.Answer.NOT_CHECKED, verdict.answer(), verdict::message);
  }

  @Test
  void whereNoneCanBeUsedItStops() {
    PassageBuilder builder =
        Passage.builder("Slip to cove", ZoneOffset.UTC, Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(WayPoint.of("Skerry", Scenes.SKERRY))
            .to(
                WayPoint.of("Cove", Scenes.COVE)
                    .withLanding(
                        Landing.between("Bar", Distance.ofMetres(9.0), Distance.ofMetres(10.0))))
            .stream(Scenes.turning(0.5))
            .level("Bar", Scenes.level())
            .limits(
                PassageLimits.none()
                    .withTimeToLanding(Duration.ofMinutes(45), Duration.ofMinutes(90)));
    Verdict verdict = LandingInReach.check(plan(builder));
    assertEquals(Verdict.Answer.STOPPED, verdict.answer());
    assertTrue(verdict.reason().endsWith("no usable landing"), verdict::reason);
  }
}
