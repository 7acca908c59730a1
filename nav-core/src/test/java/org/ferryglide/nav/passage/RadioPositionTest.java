package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

/**
 * The form is that of IMO resolution A.918(22), Standard Marine Communication Phrases: the bearing
 * is that of the position FROM the mark, in the 360 degrees notation from true north. The figures
 * are worked on a plane by hand: a mile is a minute of latitude.
 */
class RadioPositionTest {
  private static final WayPoint TARN =
      WayPoint.of("Tarn Skerry", Position.parse("46°14.6'N 026°11.2'W"));

  /** Southwest of the mark by 1.5 miles: 1.0607' south, 1.0607'/cos 46.23° = 1.533' west. */
  @Test
  void theBearingIsFromTheMarkToTheParty() {
    Position party = Position.ofDegrees(46.0 + 13.5393 / 60.0, -(26.0 + 12.733 / 60.0));
    assertEquals(
        "two two five degrees true from Tarn Skerry, one decimal five miles",
        RadioPosition.from(TARN, party).text());
  }

  @Test
  void everyFigureIsSpoken() {
    Position north =
        Position.ofDegrees(TARN.position().latitudeDegrees() + 12.04 / 60.0, -26.18667);
    assertEquals(
        "zero zero zero degrees true from Tarn Skerry, one two decimal zero miles",
        RadioPosition.from(TARN, north).text());
  }

  @Test
  void atTheMarkThereIsNoBearing() {
    assertEquals("at Tarn Skerry", RadioPosition.from(TARN, TARN.position()).text());
  }

  @Test
  void timesOutsideThePlanAreItsEnds() {
    TimedPlan plan = TimedPlan.of(Scenes.passage(3.5, 1.0).build(), Scenes.NOON).orElseThrow();
    assertEquals("at Slip", plan.radioPosition(Scenes.NOON.minusSeconds(3600)).text());
    assertEquals("at Cove", plan.radioPosition(plan.arrival().plusSeconds(3600)).text());
    assertTrue(
        plan.radioPosition(plan.departure().plusSeconds(1800))
            .text()
            .contains(" degrees true from "));
  }
}
