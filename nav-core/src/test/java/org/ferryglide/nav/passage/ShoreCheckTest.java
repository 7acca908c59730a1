package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.timing.Verdict;
import org.junit.jupiter.api.Test;

/** No leg and no way to a landing crosses the shore as drawn, but for its ends. */
class ShoreCheckTest {
  /** North of the skerry, from west to east. */
  private static final double SHORE_LATITUDE = 46.0 + 12.2 / 60.0;

  /** Degrees of latitude of a metre, 1852 m to the minute. */
  private static final double METRE = 1.0 / 60.0 / 1852.0;

  private static List<List<Position>> shore(double latitude) {
    return List.of(
        List.of(Position.ofDegrees(latitude, -26.45), Position.ofDegrees(latitude, -26.05)));
  }

  private static PassageBuilder to(Position end) {
    return Passage.builder("along a shore", ZoneOffset.UTC, Scenes.party(3.5))
        .from(WayPoint.of("Slip", Scenes.SLIP))
        .to(WayPoint.of("End", end))
        .stream(Scenes.turning(0.4))
        .wind(Told.wind(180, 5))
        .dangers(List.of());
  }

  @Test
  void aLegThroughTheShoreIsStoppedWhereItCrosses() {
    PassageBuilder through = to(Scenes.COVE).shores(shore(SHORE_LATITUDE));
    Verdict crossed = Told.of(through, Scenes.NOON, "shore as drawn");
    assertEquals(Verdict.Answer.STOPPED, crossed.answer());
    // looks are a minute or two apart, at most 3.9 kn over the ground
    assertEquals(SHORE_LATITUDE, crossed.where().orElseThrow().latitudeDegrees(), 250.0 * METRE);
    assertFalse(TimedPlan.of(through.build(), Scenes.NOON).orElseThrow().holds());
    Verdict south = Told.of(to(Scenes.SKERRY).shores(shore(SHORE_LATITUDE)), Scenes.NOON, "shore");
    assertEquals(Verdict.Answer.WITHIN, south.answer());
  }

  @Test
  void theLastFiftyMetresOfALegMayLieBehindTheLine() {
    for (double metres : new double[] {20.0, 45.0, 56.0, 90.0}) {
      Position behind =
          Position.ofDegrees(SHORE_LATITUDE + metres * METRE, Scenes.SLIP.longitudeDegrees());
      Verdict verdict = Told.of(to(behind).shores(shore(SHORE_LATITUDE)), Scenes.NOON, "shore");
      assertEquals(
          metres < 50.0 ? Verdict.Answer.WITHIN : Verdict.Answer.STOPPED,
          verdict.answer(),
          () -> metres + " m behind the line");
    }
  }

  @Test
  void aLandingBehindTheShoreIsNotInReach() {
    WayPoint behind =
        WayPoint.of("Behind", Position.parse("46°13.0'N 026°17.0'W"))
            .withLanding(Landing.atAnyLevel());
    WayPoint before =
        WayPoint.of("Before", Position.parse("46°11.0'N 026°17.0'W"))
            .withLanding(Landing.atAnyLevel());
    TimedPlan plan =
        TimedPlan.of(
                to(Scenes.SKERRY)
                    .shores(shore(SHORE_LATITUDE))
                    .refuge(behind)
                    .refuge(before)
                    .limits(
                        PassageLimits.none()
                            .withTimeToLanding(Duration.ofHours(1), Duration.ofHours(2)))
                    .build(),
                Scenes.NOON)
            .orElseThrow();
    // the check of the way sees no landing behind it either: only the one before it counts
    double minutes = Told.of(plan, "time to a usable landing").figure().orElseThrow();
    TimedPlan without =
        TimedPlan.of(
                to(Scenes.SKERRY)
                    .shores(shore(SHORE_LATITUDE))
                    .refuge(before)
                    .limits(plan.passage().limits())
                    .build(),
                Scenes.NOON)
            .orElseThrow();
    assertEquals(
        Told.of(without, "time to a usable landing").figure().orElseThrow(), minutes, 1e-9);
    for (LandingInReach landing :
        LandingInReach.from(plan, Scenes.NOON.plus(Duration.ofMinutes(40)))) {
      boolean isBefore = landing.place().name().equals("Before");
      assertEquals(isBefore, landing.isUsable(), landing::toString);
      assertTrue(
          isBefore || landing.ruledOutBy().orElseThrow().reason().contains("shore as drawn"),
          landing::toString);
    }
  }
}
