package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.sky.SunDay;
import org.ferryglide.nav.timing.Verdict;
import org.junit.jupiter.api.Test;

/** A rose read with the wrong letter, and a launch before sunrise, as a plan tells of them. */
class RoseAndDarkTest {
  private static final Position SOUTH = Position.ofDegrees(46.0, -26.0);
  private static final LocalDate DAY = LocalDate.of(2026, 6, 14);

  /** Seconds: sunrise is worked out from the same sun, but printed to the second. */
  private static final double A_SECOND = 1.0;

  @Test
  void aRoseWithTheWrongLetterIsDoubtedByTheCheckItself() {
    assertEquals(Verdict.Answer.WITHIN, variation("7°40'W 2026 (8'E)").answer());
    Verdict wrong = variation("7°40'E 2026 (8'E)");
    assertEquals(Verdict.Answer.WARNED, wrong.answer());
    assertTrue(wrong.note().text().contains("rose and model differ by 16°"), wrong.toString());
  }

  @Test
  void aLaunchInTheDarkLacksTheTimeUntilSunrise() {
    Instant sunrise = SunDay.of(DAY, ZoneOffset.UTC, SOUTH).daylight().rise().orElseThrow();
    double launching = Scenes.party(4).launching().toSeconds(); // it begins so long before
    for (int minutes : new int[] {2, 32, 60}) {
      Verdict dark = verdict(plan("7°40'W 2026 (8'E)", sunrise.minusSeconds(60L * minutes)), "sun");
      assertEquals(-60.0 * minutes - launching, 60.0 * dark.figure().orElseThrow(), A_SECOND);
    }
  }

  private static Verdict variation(String rose) {
    return verdict(plan(rose, Scenes.NOON), "variation");
  }

  private static Verdict verdict(TimedPlan plan, String name) {
    return plan.verdicts().stream()
        .filter(one -> one.about().text().startsWith(name))
        .findFirst()
        .orElseThrow();
  }

  private static TimedPlan plan(String rose, Instant departure) {
    return TimedPlan.of(
            Passage.builder("north", ZoneOffset.UTC, Scenes.party(4))
                .from(WayPoint.of("South", SOUTH))
                .to(WayPoint.of("North", Position.ofDegrees(46.1, -26.0)))
                .stream(Told.stream(0, 0))
                .variation(CompassRose.parse(rose))
                .build(),
            departure)
        .orElseThrow();
  }
}
