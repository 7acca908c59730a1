package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.ferryglide.nav.magnetic.ChartRoses;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.magnetic.MagneticModel;
import org.ferryglide.nav.magnetic.VariationSource;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.sky.SunDay;
import org.ferryglide.nav.timing.Verdict;
import org.junit.jupiter.api.Test;

/** A rose read with the wrong letter, and a launch before sunrise, as a plan tells of them. */
class RoseAndDarkTest {
  private static final Position SOUTH = Position.ofDegrees(46.0, -26.0);
  private static final Position NORTH = Position.ofDegrees(46.1, -26.0);
  private static final LocalDate DAY = LocalDate.of(2026, 6, 14);

  /** Seconds: sunrise is worked out from the same sun, but printed to the second. */
  private static final double A_SECOND = 1.0;

  @Test
  void aRoseWithTheWrongLetterIsDoubtedByTheCheckItself() {
    assertEquals(Verdict.Answer.WITHIN, variation("7°40'W 2026 (8'E)").answer());
    assertDoubted(CompassRose.parse("7°40'E 2026 (8'E)"), variation("7°40'E 2026 (8'E)"));
  }

  @Test
  void thatARoseIsOldDoesNotHideThatItIsUnlikeTheModel() {
    assertTrue(variation("10°00'W 2014 (8'E)").note().text().contains("is 12 years old"));
    assertDoubted(CompassRose.parse("7°40'E 2014 (8'E)"), variation("7°40'E 2014 (8'E)"));
  }

  @Test
  void oneOfSeveralRosesIsDoubtedWhereItStands() {
    CompassRose right = CompassRose.parse("7°40'W 2026 (8'E)");
    CompassRose wrong = CompassRose.parse("7°40'E 2026 (8'E)");
    ChartRoses roses = ChartRoses.of(SOUTH, right).and(Position.ofDegrees(46.2, -26.4), right);
    assertEquals(Verdict.Answer.WITHIN, variation(roses).answer());
    assertDoubted(wrong, variation(roses.and(NORTH, wrong)));
  }

  /** That the plan tells how far the rose is from the model, degrees begun counted. */
  private static void assertDoubted(CompassRose rose, Verdict verdict) {
    double most = 0.0;
    for (Position place : new Position[] {SOUTH, NORTH}) {
      double model = MagneticModel.wmm2025().at(place, DAY).variation().degreesEast();
      most = Math.max(most, Math.abs(rose.variationAt(DAY).degreesEast() - model));
    }
    assertEquals(Verdict.Answer.WARNED, verdict.answer());
    assertEquals("why.rose-unlike-model", verdict.note().data().get("whyCode"));
    String differ = "rose and model differ by " + (int) Math.ceil(most) + "°";
    assertTrue(verdict.note().text().contains(differ), verdict.toString());
  }

  @Test
  void aLaunchInTheDarkLacksTheTimeUntilSunrise() {
    Instant sunrise = SunDay.of(DAY, ZoneOffset.UTC, SOUTH).daylight().rise().orElseThrow();
    double launching = Scenes.party(4).launching().toSeconds(); // it begins so long before
    for (int minutes : new int[] {2, 32, 60}) {
      Verdict dark =
          verdict(
              plan(CompassRose.parse("7°40'W 2026 (8'E)"), sunrise.minusSeconds(60L * minutes)),
              "sun");
      assertEquals(-60.0 * minutes - launching, 60.0 * dark.figure().orElseThrow(), A_SECOND);
    }
  }

  /** In December the day is too short for six miles at a slow knot: the greater lack is told. */
  @Test
  void aLaunchInTheDarkThatLandsInTheDarkLacksTheMoreOfTheTwo() {
    LocalDate day = LocalDate.of(2026, 12, 14);
    Instant sunrise = SunDay.of(day, ZoneOffset.UTC, SOUTH).daylight().rise().orElseThrow();
    Instant sunset = SunDay.of(day, ZoneOffset.UTC, NORTH).daylight().set().orElseThrow();
    TimedPlan plan =
        TimedPlan.of(
                Passage.builder("slowly north", ZoneOffset.UTC, Scenes.party(0.7))
                    .from(WayPoint.of("South", SOUTH))
                    .to(WayPoint.of("North", NORTH))
                    .stream(Told.stream(0, 0))
                    .build(),
                sunrise)
            .orElseThrow();
    Party party = plan.passage().party();
    TimedPlan slower = TimedPlan.of(plan.passage().slower(), sunrise).orElseThrow();
    double lack =
        Duration.between(slower.arrival().plus(party.landing()), sunset).toMillis() / 60_000.0;
    assertTrue(lack < -party.launching().toMinutes(), "" + lack);
    double told = verdict(plan, "sun").figure().orElseThrow();
    // the sunset here and the arrival of the slower party are each printed, to the second at worst
    assertEquals(lack, told, 2.0 * A_SECOND / 60.0);
  }

  private static Verdict variation(String rose) {
    return variation(CompassRose.parse(rose));
  }

  private static Verdict variation(VariationSource source) {
    return verdict(plan(source, Scenes.NOON), "variation");
  }

  private static Verdict verdict(TimedPlan plan, String name) {
    return plan.verdicts().stream()
        .filter(one -> one.about().text().startsWith(name))
        .findFirst()
        .orElseThrow();
  }

  private static TimedPlan plan(VariationSource source, Instant departure) {
    return TimedPlan.of(
            Passage.builder("north", ZoneOffset.UTC, Scenes.party(4))
                .from(WayPoint.of("South", SOUTH))
                .to(WayPoint.of("North", NORTH))
                .stream(Told.stream(0, 0))
                .variation(source)
                .build(),
            departure)
        .orElseThrow();
  }
}
