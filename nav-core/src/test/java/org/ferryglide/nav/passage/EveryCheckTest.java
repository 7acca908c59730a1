package org.ferryglide.nav.passage;

import static org.ferryglide.nav.timing.Verdict.Answer.NOT_CHECKED;
import static org.ferryglide.nav.timing.Verdict.Answer.STOPPED;
import static org.ferryglide.nav.timing.Verdict.Answer.WARNED;
import static org.ferryglide.nav.timing.Verdict.Answer.WITHIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.magnetic.VariationSource;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Verdict.Answer;
import org.junit.jupiter.api.Test;

/**
 * No kind of check without a case within its limits, one beyond, and one that could not be made;
 * the figures of each are held against others by the tests of its own.
 */
class EveryCheckTest {
  private static final Position NORTH = Position.ofDegrees(46.1, -26.0);
  private static final Instant NIGHT = Scenes.NOON.plus(Duration.ofHours(12));
  private static final Instant FAR_YEAR = Instant.parse("2150-06-14T12:00:00Z");

  /** What is known wherever the passage is possible at all, and what was told or was not. */
  private static final Set<String> ALWAYS_KNOWN =
      Set.of("share of the speed", "tables and places", "shore as drawn");

  /** What is no reason to stay ashore by itself. */
  private static final Set<String> ONLY_WARNING = Set.of("land down wind", "variation");

  /** A line across the way, three miles on. */
  private static final List<Position> ACROSS =
      List.of(Position.ofDegrees(46.05, -26.1), Position.ofDegrees(46.05, -25.9));

  /** A passage, when it leaves, and what a check then answers. */
  private record Case(Instant departure, Answer answer, UnaryOperator<PassageBuilder> made) {}

  private static Case noon(Answer answer, UnaryOperator<PassageBuilder> made) {
    return new Case(Scenes.NOON, answer, made);
  }

  /** Six miles north in still water without wind. */
  private static PassageBuilder north(Landing landing) {
    return Passage.builder("north", ZoneOffset.UTC, Scenes.party(4))
        .from(WayPoint.of("South", Position.ofDegrees(46.0, -26.0)))
        .to(WayPoint.of("North", NORTH).withLanding(landing))
        .stream(Told.stream(0, 0));
  }

  private static final Landing OPEN =
      Landing.atAnyLevel().withOpenSector(TrueBearing.ofDegrees(225), TrueBearing.ofDegrees(315));

  /** Everything asked for that can be. */
  private static PassageBuilder everything() {
    return north(OPEN)
        .wind(Told.wind(270, 5))
        .variation(VariationSource.builtInModels())
        .dangers(List.of(danger(2000)))
        .shores(List.of(List.of(Position.ofDegrees(45.9, -25.9), Position.ofDegrees(46.2, -25.9))))
        .lanes(List.of(lane(90)))
        .limits(
            PassageLimits.none()
                .withStream(knots(1), knots(2))
                .withWind(knots(8), knots(12))
                .withWindAgainstStream(knots(8), knots(12), knots(0.5))
                .withReserve(knots(1), knots(0.5))
                .withTimeAfloat(Duration.ofHours(3), Duration.ofHours(4))
                .withTimeToLanding(Duration.ofHours(3), Duration.ofHours(4))
                .withLaneAngle(15, 30)
                .withOnshoreWind(knots(8), knots(12)));
  }

  private static Speed knots(double knots) {
    return Speed.ofKnots(knots);
  }

  private static Danger danger(double metresEast) {
    return Danger.point(
        "Fang Rock",
        Position.ofDegrees(46.05, -26.0 + metresEast / 77_300.0),
        Distance.ofMetres(100));
  }

  private static Lane lane(double direction) {
    double east = 0.03 * Math.sin(Math.toRadians(direction));
    double north = 0.02 * Math.cos(Math.toRadians(direction));
    return Lane.along(
        "Orrin fairway",
        List.of(
            Position.ofDegrees(46.05 - north, -26.0 - east),
            Position.ofDegrees(46.05 + north, -26.0 + east)),
        Distance.ofMetres(400));
  }

  /** Not told for ten seconds at a look, so short that a party can be steered over them. */
  private static PassageBuilder withGap(PassageBuilder passage) {
    double look = Scenes.NOON.getEpochSecond() + 1080.0;
    return passage.stream(
        (lat, lon, time, out, at) -> {
          out[at] = 0.0;
          out[at + 1] = 0.1;
          return Math.abs(time - look) > 5.0;
        });
  }

  private static PassageBuilder windless(PassageBuilder passage) {
    Passage windy = passage.build();
    PassageBuilder bare =
        Passage.builder("windless", ZoneOffset.UTC, windy.party()).from(windy.wayPoints().get(0));
    windy.legs().forEach(leg -> bare.to(leg.to(), leg.options()));
    windy.shores().ifPresent(bare::shores);
    windy.dangers().ifPresent(bare::dangers);
    return bare.stream(windy.stream()).limits(windy.limits());
  }

  private static PassageBuilder same(PassageBuilder passage) {
    return passage;
  }

  /** By the beginning of its name. */
  private static Map<String, List<Case>> cases() {
    Map<String, List<Case>> all = new LinkedHashMap<>();
    all.put(
        "daylight",
        List.of(
            noon(WITHIN, EveryCheckTest::same),
            new Case(NIGHT, STOPPED, EveryCheckTest::same),
            new Case(FAR_YEAR, NOT_CHECKED, EveryCheckTest::same)));
    all.put( // known wherever the passage is possible at all
        "share of the speed",
        List.of(
            noon(WITHIN, EveryCheckTest::same),
            noon(STOPPED, p -> p.stream(Told.stream(90, 3.7)))));
    all.put(
        "reserve",
        List.of(
            noon(WITHIN, EveryCheckTest::same),
            noon(STOPPED, p -> p.stream(Told.stream(180, 3))),
            noon(NOT_CHECKED, EveryCheckTest::withGap)));
    all.put(
        "stream",
        List.of(
            noon(WITHIN, EveryCheckTest::same),
            noon(STOPPED, p -> p.stream(Told.stream(0, 1.7))),
            noon(NOT_CHECKED, EveryCheckTest::withGap)));
    all.put(
        "wind",
        List.of(
            noon(WITHIN, EveryCheckTest::same),
            noon(STOPPED, p -> p.wind(Told.wind(270, 13))),
            noon(NOT_CHECKED, EveryCheckTest::windless)));
    all.put( // a wind FROM 090° on a set of 090° is against
        "wind against stream",
        List.of(
            noon(WITHIN, p -> p.stream(Told.stream(90, 1)).wind(Told.wind(270, 13))),
            noon(STOPPED, p -> p.stream(Told.stream(90, 1)).wind(Told.wind(90, 13))),
            noon(NOT_CHECKED, p -> windless(p.stream(Told.stream(90, 1))))));
    all.put(
        "landing at",
        List.of(
            noon(WITHIN, EveryCheckTest::same),
            noon(STOPPED, p -> p.wind(Told.wind(270, 13))),
            noon(NOT_CHECKED, EveryCheckTest::windless)));
    Danger closed = danger(0).closedAboveWind(knots(4));
    all.put(
        "Fang Rock",
        List.of(
            noon(WITHIN, EveryCheckTest::same),
            noon(STOPPED, p -> p.dangers(List.of(danger(0)))),
            noon(NOT_CHECKED, p -> windless(p.dangers(List.of(closed))))));
    all.put(
        "drift without paddling",
        List.of(
            noon(WITHIN, EveryCheckTest::same),
            noon(STOPPED, p -> p.stream(Told.stream(90, 1)).dangers(List.of(danger(300)))),
            noon(NOT_CHECKED, EveryCheckTest::untilArrival)));
    all.put(
        "shore as drawn",
        List.of(noon(WITHIN, EveryCheckTest::same), noon(STOPPED, p -> p.shores(List.of(ACROSS)))));
    all.put( // open water is a warning, never a stop
        "land down wind",
        List.of(
            noon(WITHIN, EveryCheckTest::same),
            noon(WARNED, p -> p.wind(Told.wind(90, 5))),
            noon(NOT_CHECKED, EveryCheckTest::windless)));
    all.put(
        "time to a usable landing",
        List.of(
            noon(WITHIN, EveryCheckTest::same),
            noon(
                STOPPED,
                p -> {
                  Duration hour = Duration.ofHours(1);
                  return p.limits(p.build().limits().withTimeToLanding(hour.dividedBy(2), hour));
                }),
            noon(NOT_CHECKED, EveryCheckTest::windless)));
    all.put(
        "crossing Orrin fairway",
        List.of(
            noon(WITHIN, EveryCheckTest::same),
            noon(STOPPED, p -> p.lanes(List.of(lane(10)))),
            noon(NOT_CHECKED, p -> p.limits(PassageLimits.none()))));
    all.put(
        "time afloat",
        List.of(
            noon(WITHIN, EveryCheckTest::same),
            noon(
                STOPPED,
                p -> {
                  Duration hour = Duration.ofHours(1);
                  return p.limits(p.build().limits().withTimeAfloat(hour.dividedBy(2), hour));
                }),
            noon(NOT_CHECKED, p -> p.stream(Told.stream(180, 3.3)))));
    all.put( // doubts are there or not
        "tables and places",
        List.of(
            noon(WITHIN, EveryCheckTest::same),
            noon(STOPPED, p -> p.note(Note.warning("test.doubt", "no")))));
    VariationSource lapsed =
        (place, date) -> {
          throw new DateTimeException("lapsed");
        };
    all.put( // doubts warn, never stop
        "variation",
        List.of(
            noon(WITHIN, EveryCheckTest::same),
            noon(WARNED, p -> p.variation(CompassRose.parse("7°40'E 2026 (8'E)"))),
            noon(NOT_CHECKED, p -> p.variation(lapsed))));
    return all;
  }

  /** Told until the party has arrived, half an hour's drift before which begins on the hour. */
  private static PassageBuilder untilArrival(PassageBuilder passage) {
    PassageBuilder helped = passage.stream(Told.stream(0, 0.5));
    Instant arrival = TimedPlan.of(helped.build(), Scenes.NOON).orElseThrow().arrival();
    return passage.stream(
        (lat, lon, time, out, at) -> {
          out[at] = 0.0;
          out[at + 1] = 0.5 * Told.KNOT;
          return time < arrival.getEpochSecond() + 30.0;
        });
  }

  @Test
  void everyKindOfCheckHasACaseWithinBeyondAndNotChecked() {
    Map<String, List<Case>> cases = cases();
    Set<String> without = new TreeSet<>();
    for (Condition condition : everything().build().checks().conditions()) {
      long named = cases.keySet().stream().filter(condition.name()::startsWith).count();
      if (named == 0) {
        without.add(condition.name());
      }
    }
    assertEquals(Set.of(), without);
    assertEquals(cases.size(), everything().build().checks().conditions().size());
  }

  /** Within, beyond and not checked, but for the checks that know only two of the three. */
  @Test
  void noKindOfCheckIsWithoutAnAnswerThatItCanGive() {
    cases()
        .forEach(
            (name, list) -> {
              Set<Answer> answers = EnumSet.noneOf(Answer.class);
              list.forEach(one -> answers.add(one.answer));
              Set<Answer> expected = EnumSet.of(WITHIN, STOPPED, NOT_CHECKED);
              if (ALWAYS_KNOWN.contains(name)) {
                expected.remove(NOT_CHECKED);
              } else if (ONLY_WARNING.contains(name)) {
                expected = EnumSet.of(WITHIN, WARNED, NOT_CHECKED);
              }
              assertEquals(expected, answers, name);
            });
  }

  @Test
  void theCasesAnswerAsTheyShould() {
    cases()
        .forEach(
            (name, list) -> {
              for (Case one : list) {
                Passage passage = one.made.apply(everything()).build();
                TimedPlan plan = TimedPlan.of(passage, one.departure).orElseThrow();
                Condition check =
                    passage.checks().conditions().stream()
                        .filter(condition -> condition.name().equals(name) || isOf(condition, name))
                        .findFirst()
                        .orElseThrow();
                assertEquals(one.answer, check.check(plan.route()).answer(), () -> name + one);
                boolean beyond = one.answer == STOPPED || one.answer == NOT_CHECKED;
                assertTrue(!beyond || !plan.holds(), () -> name + " holds");
              }
            });
  }

  /** The stream and the wind are names that others begin with. */
  private static boolean isOf(Condition condition, String name) {
    return !name.equals("wind") && !name.equals("stream") && condition.name().startsWith(name);
  }
}
