package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Reason;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.junit.jupiter.api.Test;

class TimedPlanTest {

  private static Verdict named(TimedPlan plan, String name) {
    Optional<Verdict> verdict =
        plan.verdicts().stream().filter(v -> v.reason().startsWith(name)).findFirst();
    assertTrue(verdict.isPresent(), () -> name + " among " + plan.verdicts());
    return verdict.get();
  }

  @Test
  void legsFollowEachOtherAndHoursFillThem() {
    TimedPlan plan = TimedPlan.of(Scenes.passage(3.5, 1.0).build(), Scenes.NOON).orElseThrow();
    assertEquals(2, plan.legs().size());
    assertEquals(plan.legs().get(0).arrival(), plan.legs().get(1).departure());
    for (PlannedLeg leg : plan.legs()) {
      Duration sum = Duration.ZERO;
      for (PlannedHour hour : leg.hours()) {
        sum = sum.plus(hour.span().duration());
      }
      assertEquals(Seconds.of(leg.duration()), Seconds.of(sum), 0.002);
      assertTrue(leg.earliest().isBefore(leg.arrival()) && leg.latest().isAfter(leg.arrival()));
    }
    assertEquals(Duration.ofMinutes(15), Duration.between(plan.launch(), plan.departure()));
    assertEquals(
        List.of(
            "dangers",
            "lanes and fairways",
            "variation",
            "stream",
            "wind",
            "landing at Slip",
            "landing at Cove"),
        plan.notChecked().stream().map(it -> it.text()).toList());
  }

  private static List<String> open(PassageBuilder passage) {
    return passage.build().notChecked().stream().map(it -> it.text()).toList();
  }

  /**
   * What has no limit, or nothing to be held against one, is said to be open, whatever is given.
   */
  @Test
  void windSwellStreamAndLandingsStayOpenUntilLimitAndDataAreThere() {
    Landing open =
        Landing.atAnyLevel().withOpenSector(TrueBearing.ofDegrees(180), TrueBearing.ofDegrees(270));
    PassageBuilder passage =
        Passage.builder("open", java.time.ZoneOffset.UTC, Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP).withLanding(Landing.atAnyLevel()))
            .to(WayPoint.of("Cove", Scenes.COVE).withLanding(open))
            .dangers(List.of())
            .lanes(List.of())
            .stream(Scenes.turning(0))
            .wind(Told.wind(225, 45));
    List<String> first = open(passage);
    assertTrue(
        first.containsAll(List.of("wind", "stream", "onshore wind", "swell")), first::toString);
    assertTrue(first.stream().noneMatch(it -> it.startsWith("landing")), first::toString);
    PassageLimits limits =
        PassageLimits.none()
            .withStream(Speed.ofKnots(1.5), Speed.ofKnots(2.5))
            .withWind(Speed.ofKnots(10), Speed.ofKnots(16))
            .withOnshoreWind(Speed.ofKnots(10), Speed.ofKnots(16));
    List<String> all = open(passage.limits(limits).swellFrom(TrueBearing.ofDegrees(20)));
    for (String gone : List.of("wind", "stream", "onshore wind", "swell")) {
      assertFalse(all.contains(gone), all::toString);
    }
  }

  @Test
  void aStopDoesNotDrift() {
    WayPoint skerry =
        WayPoint.of("Skerry", Scenes.SKERRY).withStop(Stop.ashore(Duration.ofHours(1)));
    Passage passage =
        Passage.builder("with a stop", java.time.ZoneOffset.UTC, Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(skerry)
            .to(WayPoint.of("Cove", Scenes.COVE))
            .stream(Scenes.turning(1.0))
            .build();
    TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).orElseThrow();
    assertEquals(
        (10 + 60 + 15) * 60.0,
        Seconds.of(Duration.between(plan.legs().get(0).arrival(), plan.legs().get(1).departure())),
        0.002);
    assertEquals(
        0.0,
        org.ferryglide.nav.geodesy.RhumbLeg.between(
                Scenes.SKERRY, plan.route().at(plan.legs().get(0).arrival().plusSeconds(1800)))
            .length()
            .metres(),
        0.5);
  }

  @Test
  void aWindFromTheEastOnASetToTheEastIsAgainst() {
    Passage passage =
        Scenes.passage(3.5, 1.0).stream(
                org.ferryglide.nav.water.StreamField.steady(
                    Velocity.ofSetAndRate(TrueBearing.ofDegrees(90), Speed.ofKnots(1.0))))
            .wind(WindField.steady(Velocity.ofWind(TrueBearing.ofDegrees(90), Speed.ofKnots(12))))
            .limits(
                PassageLimits.none()
                    .withWindAgainstStream(Speed.ofKnots(8), Speed.ofKnots(11), Speed.ofKnots(0.5)))
            .build();
    Verdict against = named(TimedPlan.of(passage, Scenes.NOON).orElseThrow(), "wind against");
    assertEquals(Verdict.Answer.STOPPED, against.answer());
    assertEquals(12.0, against.figure().orElseThrow(), 1e-9);
  }

  @Test
  void aRockOnTheTrackStopsThePlanAndAFarOneDoesNot() {
    Position rock = Position.parse("46°11.0'N 026°17.5'W");
    Passage near =
        Scenes.passage(3.5, 0.0)
            .dangers(List.of(Danger.point("Fang Rock", rock, Distance.ofMetres(200))))
            .build();
    TimedPlan plan = TimedPlan.of(near, Scenes.NOON).orElseThrow();
    assertEquals(Verdict.Answer.STOPPED, named(plan, "Fang Rock").answer());
    assertFalse(plan.holds());
    Passage far =
        Scenes.passage(3.5, 0.0)
            .dangers(
                List.of(
                    Danger.point(
                        "Fang Rock",
                        Position.parse("46°21.0'N 026°30.5'W"),
                        Distance.ofMetres(200))))
            .build();
    TimedPlan clear = TimedPlan.of(far, Scenes.NOON).orElseThrow();
    assertEquals(Verdict.Answer.WITHIN, named(clear, "Fang Rock").answer());
    assertTrue(clear.holds(), () -> clear.verdicts().toString());
  }

  @Test
  void aGapOfTheStreamOfAMinuteIsToldWhereverItLies() {
    StreamField whole = Scenes.turning(1.0);
    double noon = Scenes.NOON.getEpochSecond();
    for (int gap = 60; gap < 3000; gap += 70) {
      double from = noon + gap;
      StreamField torn =
          (latitude, longitude, seconds, out, offset) ->
              !(seconds >= from && seconds <= from + 61.0)
                  && whole.sample(latitude, longitude, seconds, out, offset);
      Passage passage =
          Scenes.passage(3.5, 1.0).stream(torn)
              .dangers(
                  List.of(
                      Danger.point(
                          "Rock", Position.parse("46°21.0'N 026°30.5'W"), Distance.ofMetres(200))))
              .build();
      // the solver looks along each step where the stream may differ by place, and misses none;
      // where no heading leads through the gap, there is none within the horizon
      Reason reason = TimedPlan.of(passage, Scenes.NOON).why().orElseThrow().reason();
      assertTrue(reason == Reason.NO_DATA || reason == Reason.BEYOND_HORIZON, reason::toString);
    }
  }
}
