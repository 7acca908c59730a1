package org.ferryglide.nav.passage;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.ferryglide.nav.timing.Verdict.Answer.NOT_CHECKED;
import static org.ferryglide.nav.timing.Verdict.Answer.STOPPED;
import static org.ferryglide.nav.timing.Verdict.Answer.WARNED;
import static org.ferryglide.nav.timing.Verdict.Answer.WITHIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Optional;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.magnetic.VariationSource;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.WaterLevel;
import org.junit.jupiter.api.Test;

/** Time to a landing, tables and variation: within, beyond, and not checked. */
class ReachAndSourceCheckTest {
  private static final Position SOUTH = Position.ofDegrees(46.0, -26.0);
  private static final Position NORTH = Position.ofDegrees(46.2, -26.0);

  /** Twelve minutes of latitude on WGS84, by the series; the slower party makes 3.2 kn. */
  private static final double HALF_WAY_MINUTES =
      0.1 * (111_132.954 - 559.822 * Math.cos(Math.toRadians(92.2))) / (3.2 * Told.KNOT) / 60.0;

  private static PassageBuilder between(Landing landing) {
    return Passage.builder("north", ZoneOffset.UTC, Scenes.party(4))
        .from(WayPoint.of("South", SOUTH).withLanding(landing))
        .to(WayPoint.of("North", NORTH).withLanding(landing))
        .stream(Told.stream(0, 0));
  }

  private static PassageLimits limits(double warning, double stop) {
    return PassageLimits.none()
        .withTimeToLanding(
            Duration.ofSeconds(Math.round(60 * warning)),
            Duration.ofSeconds(Math.round(60 * stop)));
  }

  @Test
  void theWorstIsHalfWayBetweenTwoLandings() {
    // looked at every ten minutes, which are 13 of the slower party's on each side of the middle
    double[][] around = {{1, 9}, {-10, 9}, {-20, -10}};
    Verdict.Answer[] answers = {WITHIN, WARNED, STOPPED};
    for (int i = 0; i < around.length; i++) {
      PassageLimits limits =
          limits(HALF_WAY_MINUTES + around[i][0], HALF_WAY_MINUTES + around[i][1]);
      Verdict verdict =
          Told.of(between(Landing.atAnyLevel()).limits(limits), Scenes.NOON, "time to a usable");
      assertEquals(answers[i], verdict.answer(), verdict::toString);
      assertEquals(HALF_WAY_MINUTES - 3.0, verdict.figure().orElseThrow(), 3.5);
    }
  }

  @Test
  void aRefugeBesideTheWayShortensIt() {
    PassageBuilder passage =
        between(Landing.atAnyLevel())
            .refuge(
                WayPoint.of("Ledge", Position.ofDegrees(46.1, -26.01))
                    .withLanding(Landing.atAnyLevel()))
            .limits(limits(60, 70));
    assertEquals(WITHIN, Told.of(passage, Scenes.NOON, "time to a usable").answer());
  }

  @Test
  void landingsThatDoNotWorkOrAreNotKnownDoNotCount() {
    PassageBuilder dry =
        between(Landing.between("Bar", ofMetres(8.0), ofMetres(9.0)))
            .level("Bar", Scenes.level())
            .limits(limits(9, 10));
    assertEquals(STOPPED, Told.of(dry, Scenes.NOON, "time to a usable").answer());
    PassageBuilder unknown =
        between(Landing.between("Bar", ofMetres(0.0), ofMetres(9.0)))
            .level("Bar", at(Double.NaN, null))
            .limits(limits(900, 1000));
    assertEquals(NOT_CHECKED, Told.of(unknown, Scenes.NOON, "time to a usable").answer());
    PassageBuilder none = Scenes.passage(4, 0).limits(limits(900, 1000));
    assertEquals(NOT_CHECKED, Told.of(none, Scenes.NOON, "time to a usable").answer());
  }

  private static WaterLevel at(double height, Position place) {
    return new WaterLevel() {
      private static final long serialVersionUID = 1L;

      @Override
      public double heightMetres(double seconds) {
        return height;
      }

      @Override
      public String datum() {
        return "chart datum";
      }

      @Override
      public Optional<Position> position() {
        return Optional.ofNullable(place);
      }
    };
  }

  @Test
  void doubtsAndFarPortsStandAmongTheChecks() {
    assertEquals(WITHIN, Told.of(between(Landing.atAnyLevel()), Scenes.NOON, "tables").answer());
    PassageBuilder doubted =
        between(Landing.atAnyLevel()).note(Note.caution("test.doubt", "a column looks swapped"));
    assertEquals(WARNED, Told.of(doubted, Scenes.NOON, "tables").answer());
    PassageBuilder condemned =
        between(Landing.atAnyLevel()).note(Note.warning("test.doubt", "heights of another port"));
    assertEquals(STOPPED, Told.of(condemned, Scenes.NOON, "tables").answer());
    Landing bar = Landing.between("Bar", ofMetres(0.0), ofMetres(9.0));
    // 0.2° of latitude are 12 NM, 0.5° are 30
    PassageBuilder near = between(bar).level("Bar", at(5, Position.ofDegrees(46.3, -26.0)));
    assertEquals(WITHIN, Told.of(near, Scenes.NOON, "tables").answer());
    PassageBuilder far = between(bar).level("Bar", at(5, Position.ofDegrees(46.6, -26.0)));
    Verdict verdict = Told.of(far, Scenes.NOON, "tables");
    assertEquals(WARNED, verdict.answer());
    assertEquals("tables and places: Bar lies 36 NM from South", verdict.reason());
  }

  @Test
  void aModelInForceIsWithinALapsedOneIsNotCheckedAndARefusalIsNoError() {
    PassageBuilder good = between(Landing.atAnyLevel()).variation(VariationSource.builtInModels());
    assertEquals(WITHIN, Told.of(good, Scenes.NOON, "variation").answer());
    VariationSource refusing =
        (place, date) -> {
          throw new DateTimeException("date must be in 2020 to 2025, but was " + date);
        };
    PassageBuilder lapsed = between(Landing.atAnyLevel()).variation(refusing);
    TimedPlan plan = TimedPlan.of(lapsed.build(), Scenes.NOON).orElseThrow();
    assertEquals(NOT_CHECKED, Told.of(plan, "variation").answer());
    assertFalse(plan.holds());
    assertFalse(plan.legs().get(0).variation().isPresent());
    VariationSource doubtful =
        (place, date) ->
            new org.ferryglide.nav.magnetic.VariationReading(
                Variation.ofDegreesEast(-3.0),
                0.5,
                "an old rose",
                java.util.List.of(Note.caution("test.old", "the rose is old")));
    PassageBuilder old = between(Landing.atAnyLevel()).variation(doubtful);
    assertEquals(WARNED, Told.of(old, Scenes.NOON, "variation").answer());
  }
}
