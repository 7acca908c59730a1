package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.Reason;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

/** Every kind of stop, and passages of which one leg is not possible. */
class StopsTest {
  private static PassageBuilder stopping(Stop stop) {
    return Passage.builder("with a stop", ZoneOffset.UTC, Scenes.party(3.5))
        .from(WayPoint.of("Slip", Scenes.SLIP))
        .to(WayPoint.of("Skerry", Scenes.SKERRY).withStop(stop))
        .to(WayPoint.of("Cove", Scenes.COVE))
        .stream(Scenes.turning(1.0))
        .level("Bar", Scenes.level());
  }

  /** When the party is under way again. */
  private static double afloat(PassageBuilder passage) {
    TimedPlan plan = TimedPlan.of(passage.build(), Scenes.NOON).orElseThrow();
    return plan.legs().get(1).departure().toEpochMilli() / 1000.0 - noon();
  }

  /** When it would be if it launched as soon as it has landed: ten minutes and fifteen. */
  private static double atOnce(PassageBuilder passage) {
    TimedPlan plan = TimedPlan.of(passage.build(), Scenes.NOON).orElseThrow();
    return plan.legs().get(0).arrival().toEpochMilli() / 1000.0 + 1500.0 - noon();
  }

  private static double noon() {
    return Scenes.NOON.getEpochSecond();
  }

  @Test
  void everyStopTellsWhatEndsIt() {
    Duration forty = Duration.ofMinutes(40);
    Distance deep = Distance.ofMetres(2.5);
    Speed slack = Speed.ofKnots(0.5);
    assertEquals(ends(forty, null, null, null, null, null), ends(Stop.ashore(forty)));
    assertEquals(ends(null, Scenes.NOON, null, null, null, null), ends(Stop.until(Scenes.NOON)));
    assertEquals(
        ends(null, null, "Bar", deep, null, null), ends(Stop.untilLevelAtLeast("Bar", deep)));
    assertEquals(
        ends(null, null, "Bar", null, deep, null), ends(Stop.untilLevelAtMost("Bar", deep)));
    assertEquals(ends(null, null, null, null, null, slack), ends(Stop.untilStreamAtMost(slack)));
  }

  private static List<Optional<?>> ends(Stop stop) {
    return List.of(
        stop.length(),
        stop.time(),
        stop.port(),
        stop.leastLevel(),
        stop.greatestLevel(),
        stop.slackRate());
  }

  private static List<Optional<?>> ends(Object... parts) {
    List<Optional<?>> ends = new ArrayList<>();
    for (Object part : parts) {
      ends.add(Optional.ofNullable(part));
    }
    return ends;
  }

  @Test
  void minutesAndTimesEndWhenTheyAreOver() {
    PassageBuilder forty = stopping(Stop.ashore(Duration.ofMinutes(40)));
    assertEquals(2400.0, afloat(forty) - atOnce(forty), 0.01);
    PassageBuilder six = stopping(Stop.until(Scenes.NOON.plus(Duration.ofHours(6))));
    assertEquals(21_600.0, afloat(six), 0.01);
    PassageBuilder past = stopping(Stop.until(Scenes.NOON));
    assertEquals(atOnce(past), afloat(past), 0.01);
  }

  @Test
  void levelsEndWhenTheCosineReachesThem() {
    // 2.5 + 1.5 cos(2πt/T): falls through 2 m at arccos(-1/3) of the tide, rises through it later
    double falls = Scenes.TIDE_SECONDS * Math.acos(-1.0 / 3.0) / (2.0 * Math.PI);
    assertEquals(
        falls, afloat(stopping(Stop.untilLevelAtMost("Bar", Distance.ofMetres(2.0)))), 1.0);
    double rises = Scenes.TIDE_SECONDS * (1.0 - Math.acos(0.9) / (2.0 * Math.PI));
    assertEquals(
        rises, afloat(stopping(Stop.untilLevelAtLeast("Bar", Distance.ofMetres(2.5 + 1.35)))), 1.0);
    PassageBuilder now = stopping(Stop.untilLevelAtLeast("Bar", Distance.ofMetres(1.0)));
    assertEquals(atOnce(now), afloat(now), 0.01);
  }

  @Test
  void whatWasWaitedForHoldsAsThePartyIsUnderWayAgain() {
    for (double knots : new double[] {0.4, 0.1, 0.05, 0.01}) {
      PassageBuilder slack = stopping(Stop.untilStreamAtMost(Speed.ofKnots(knots)));
      TimedPlan plan = TimedPlan.of(slack.build(), Scenes.NOON).orElseThrow();
      Instant leaving = plan.legs().get(1).departure();
      double then = Scenes.turning(1.0).at(Scenes.SKERRY, leaving).orElseThrow().rate().knots();
      assertTrue(then <= knots, "leaves in " + then + " kn where " + knots + " were asked");
    }
    Instant three = Scenes.NOON.plus(Duration.ofHours(3));
    TimedPlan until = TimedPlan.of(stopping(Stop.until(three)).build(), Scenes.NOON).orElseThrow();
    assertEquals(three, until.legs().get(1).departure());
  }

  @Test
  void homeFromAStopMayBeginAsSoonAsThePartyHasLandedAndLaunched() {
    PassageBuilder lunch = stopping(Stop.ashore(Duration.ofHours(2)));
    TimedPlan plan = TimedPlan.of(lunch.build(), Scenes.NOON).orElseThrow();
    TurnTimes skerry = WayHome.of(plan).turns().get(1);
    Instant from = skerry.home().asked().from();
    assertEquals(atOnce(lunch), from.getEpochSecond() - noon(), 1.0);
    assertEquals(plan.legs().get(1).departure(), skerry.planned());
    assertTrue(skerry.home().items().get(0).contains(from), skerry::toString);
  }

  @Test
  void aStopAtAnEndOfThePassageIsNotMadeAndThatIsSaid() {
    Stop lunch = Stop.ashore(Duration.ofHours(1));
    WayPoint slip = WayPoint.of("Slip", Scenes.SLIP).withStop(lunch);
    WayPoint skerry = WayPoint.of("Skerry", Scenes.SKERRY).withStop(lunch);
    PassageBuilder there =
        Passage.builder("there", ZoneOffset.UTC, Scenes.party(3.5)).from(slip).to(skerry).stream(
            Scenes.turning(1.0));
    assertEquals(
        List.of(
            "The stop at Slip is not made: the passage begins there",
            "The stop at Skerry is not made: the passage ends there"),
        there.build().notes().stream().map(note -> note.text()).toList());
    assertEquals(Verdict.Answer.WARNED, Told.of(there, Scenes.NOON, "tables and places").answer());
    List<Note> round = there.build().toBuilder().to(slip).build().notes();
    assertEquals(1, round.size());
    assertEquals(Severity.INFORMATION, round.get(0).severity());
    assertEquals(
        "The stop at Slip is not made: the passage begins and ends there", round.get(0).text());
    assertEquals(List.of(), stopping(lunch).build().notes());
  }

  @Test
  void slackIsFoundHoweverShort() {
    double slack = Scenes.TIDE_SECONDS / 4.0;
    for (double knots : new double[] {0.3, 0.1, 0.01, 0.003, 0.001}) {
      PassageBuilder passage = stopping(Stop.untilStreamAtMost(Speed.ofKnots(knots)));
      double begins = Scenes.TIDE_SECONDS * Math.acos(knots) / (2.0 * Math.PI);
      assertEquals(begins, afloat(passage), 1.0);
      assertTrue(afloat(passage) < slack + 1.0);
    }
  }

  @Test
  void whatNeverEndsIsNotPossibleAndNamesTheLegAfterIt() {
    Stop[] never = {
      Stop.untilLevelAtLeast("Bar", Distance.ofMetres(4.1)),
      Stop.untilLevelAtMost("Bar", Distance.ofMetres(0.9)),
      Stop.ashore(Duration.ofDays(2)),
      Stop.ashore(Duration.ofSeconds(Long.MAX_VALUE)),
      Stop.until(Scenes.NOON.plus(Duration.ofDays(2))),
      Stop.until(Instant.MAX)
    };
    for (Stop stop : never) {
      NotPossible why = why(stopping(stop));
      assertEquals(Reason.BEYOND_HORIZON, why.reason(), stop::toString);
      assertEquals(2, why.legNumber().orElseThrow());
      assertEquals(Scenes.SKERRY, why.where().orElseThrow());
    }
    PassageBuilder steady =
        stopping(Stop.untilStreamAtMost(Speed.ofKnots(0.5))).stream(Told.stream(20, 1));
    assertEquals(Reason.BEYOND_HORIZON, why(steady).reason());
    PassageBuilder long3 = stopping(Stop.ashore(Duration.ofDays(2)));
    assertEquals(172_800.0, afloat(long3.longestDuration(Duration.ofDays(3))) - atOnce(long3), 0.1);
  }

  private static NotPossible why(PassageBuilder passage) {
    return TimedPlan.of(passage.build(), Scenes.NOON).why().orElseThrow();
  }

  @Test
  void anUnknownLevelOrStreamIsNoData() {
    StreamField ends =
        (lat, lon, time, out, at) -> {
          out[at] = 0.0;
          out[at + 1] = 0.5;
          return time < noon() + 9000.0;
        };
    NotPossible why = why(stopping(Stop.untilStreamAtMost(Speed.ofKnots(0.1))).stream(ends));
    assertEquals(Reason.NO_DATA, why.reason());
    assertTrue(why.isDataMissing());
    assertEquals(2, why.legNumber().orElseThrow());
  }

  @Test
  void aLegBeyondEveryReachOfTheStreamIsABlankThatIsNamed() {
    double edge = Scenes.SKERRY.longitudeDegrees() + 0.01;
    StreamField reach =
        (lat, lon, time, out, at) -> {
          out[at] = 0.1;
          out[at + 1] = 0.1;
          return lon < edge;
        };
    PassageBuilder passage = Scenes.passage(3.5, 0).stream(reach);
    NotPossible why = why(passage);
    assertEquals(Reason.NO_DATA, why.reason());
    assertEquals(2, why.legNumber().orElseThrow());
    assertTrue(why.where().isPresent());
    assertTrue(why.message().contains("leg 2"), why.message());
    LegOptions inshore = LegOptions.usual().withStream(Told.stream(0, 0.1));
    PassageBuilder own =
        Passage.builder("own stream", ZoneOffset.UTC, Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(WayPoint.of("Skerry", Scenes.SKERRY))
            .to(WayPoint.of("Cove", Scenes.COVE), inshore)
            .stream(reach);
    assertTrue(TimedPlan.of(own.build(), Scenes.NOON).isSolved());
  }

  @Test
  void aStreamTooStrongNamesItsLegByNumber() {
    StreamField strong =
        (lat, lon, time, out, at) -> {
          out[at] = lat > 46.21 ? -5.0 : 0.0;
          out[at + 1] = 0.0;
          return true;
        };
    assertEquals(2, why(Scenes.passage(3.5, 0).stream(strong)).legNumber().orElseThrow());
  }

  @Test
  void aLegWithoutLengthTakesNoTime() {
    Position here = Scenes.SKERRY;
    PassageBuilder passage =
        Passage.builder("twice", ZoneOffset.UTC, Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(WayPoint.of("Skerry", here))
            .to(WayPoint.of("Skerry beacon", here).withMark(Distance.ofMetres(5)))
            .to(WayPoint.of("Cove", Scenes.COVE))
            .stream(Scenes.turning(1.0))
            .visibility(Distance.ofNauticalMiles(3))
            .limits(
                PassageLimits.none()
                    .withReserve(Speed.ofKnots(0.2), Speed.ofKnots(0.1))
                    .withStream(Speed.ofKnots(5), Speed.ofKnots(6)));
    Outcome<TimedPlan, NotPossible> outcome = TimedPlan.of(passage.build(), Scenes.NOON);
    TimedPlan plan = outcome.orElseThrow();
    assertEquals(Duration.ZERO, plan.legs().get(1).duration());
    assertTrue(plan.holds(), () -> plan.verdicts().toString());
  }

  @Test
  void hoursFollowThePartysClockAndTellTheLevels() {
    PassageBuilder half =
        Passage.builder("half", ZoneOffset.ofHoursMinutes(5, 30), Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(WayPoint.of("Cove", Scenes.COVE))
            .stream(Scenes.turning(1.0))
            .level("Bar", Scenes.level());
    TimedPlan plan = TimedPlan.of(half.build(), Scenes.NOON).orElseThrow();
    PlannedHour first = plan.legs().get(0).hours().get(0);
    assertEquals(Duration.ofMinutes(30), first.span().duration());
    assertEquals(4.0, first.levels().get("Bar").metres(), 1e-9);
    PlannedHour second = plan.legs().get(0).hours().get(1);
    double then = 2.5 + 1.5 * Math.cos(2.0 * Math.PI * 1800.0 / Scenes.TIDE_SECONDS);
    assertEquals(then, second.levels().get("Bar").metres(), 1e-9);
    assertEquals(
        1800.0,
        plan.daylightLeftSeconds(first.span().from())
            - plan.daylightLeftSeconds(second.span().from()),
        1e-3);
  }
}
