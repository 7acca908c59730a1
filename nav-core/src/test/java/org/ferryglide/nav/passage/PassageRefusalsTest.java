package org.ferryglide.nav.passage;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.WaterLevel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What a passage refuses, and that it says what was given and what is allowed. */
class PassageRefusalsTest {
  private static final PassageLimits NONE = PassageLimits.none();

  private static void refused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }

  @Test
  void limitsTheWrongWayRoundAreRefusedInTheUnitsOfTheParty() {
    refused(
        "warning limit of stream must be below its stop limit, but warning was to begin at 2.50 kn"
            + " and stop at 1.50 kn",
        () -> NONE.withStream(Speed.ofKnots(2.5), Speed.ofKnots(1.5)));
    refused(
        "warning limit of reserve of speed must be above its stop limit, but warning was to begin"
            + " at 0.50 kn and stop at 0.50 kn",
        () -> NONE.withReserve(Speed.ofKnots(0.5), Speed.ofKnots(0.5)));
    refused(
        "limits of time afloat must be at least PT0S, but one was PT-1H",
        () -> NONE.withTimeAfloat(Duration.ofHours(-1), Duration.ofHours(1)));
    refused(
        "limits of daylight left must be at least PT0S, but one was PT-1M",
        () -> NONE.withDaylight(Duration.ofHours(1), Duration.ofMinutes(-1)));
    refused(
        "angle must be in [0, 90] degrees, but was NaN", () -> NONE.withLaneAngle(Double.NaN, 30));
    refused(
        "warning limit of angle across a lane must be below its stop limit, but warning was to"
            + " begin at 30.0° and stop at 15.0°",
        () -> NONE.withLaneAngle(30, 15));
    refused(
        "error of the rate must be in [0, 1] parts, but was 25.0", () -> NONE.withRateError(25));
  }

  @Test
  void limitsAreToldInWords() {
    String told =
        NONE.withStream(Speed.ofKnots(1.5), Speed.ofKnots(2.5)).withRateError(0.2).toString();
    assertEquals(
        "limits of the party, stream 1.5 and 2.5 kn, daylight left 60.0 and 0.0 min, rate exceeded"
            + " by up to 20 %",
        told);
  }

  @Test
  void namesThatATerminalWouldObeyAreRefused() {
    for (String name : new String[] {"a\nb", "a\u001b[2J", "a\u2028b", "a\u202eb", "a\u2066b"}) {
      refused(
          "name of a way point must hold no control characters, but has one at character 2",
          () -> WayPoint.of(name, Scenes.SLIP));
    }
    refused(
        "name of a way point must not be empty, but was \" \"",
        () -> WayPoint.of(" ", Scenes.SLIP));
  }

  @Test
  void dangersAndRefugesHaveNamesOfTheirOwn() {
    Danger one = Danger.point("Rock", Scenes.SKERRY, ofMetres(100));
    Danger other = Danger.point("Rock", Scenes.COVE, ofMetres(100));
    refused(
        "dangers must have names of their own, but two were called Rock",
        () -> Scenes.passage(3, 0).dangers(List.of(one, other)));
    PassageBuilder elsewhere =
        Scenes.passage(3, 0)
            .refuge(WayPoint.of("Slip", Scenes.COVE).withLanding(Landing.atAnyLevel()));
    String message = assertThrows(IllegalStateException.class, elsewhere::build).getMessage();
    assertTrue(message.startsWith("refuge Slip must not have the name of a way point"), message);
    Scenes.passage(3, 0)
        .refuge(WayPoint.of("Slip", Scenes.SLIP).withLanding(Landing.atAnyLevel()))
        .build();
  }

  @Test
  void moreDrawsThanMemoryHoldsAreRefused() {
    TimedPlan plan = TimedPlan.of(Scenes.passage(3.5, 1).build(), Scenes.NOON).orElseThrow();
    refused(
        "draws must be in [2, 1000000] passages, but was 2147483647",
        () -> PlanSpread.of(plan, PlanErrors.usual(), Integer.MAX_VALUE, 1));
  }

  @Test
  void aLevelWithoutEndIsNotKnown() {
    WaterLevel endless =
        new WaterLevel() {
          private static final long serialVersionUID = 1L;

          @Override
          public double heightMetres(double seconds) {
            return Double.POSITIVE_INFINITY;
          }

          @Override
          public String datum() {
            return "chart datum";
          }
        };
    PassageBuilder passage =
        Passage.builder("endless", ZoneOffset.UTC, Scenes.party(3.5))
            .from(
                WayPoint.of("Slip", Scenes.SLIP)
                    .withLanding(Landing.between("Bar", ofMetres(0), ofMetres(5))))
            .to(WayPoint.of("Skerry", Scenes.SKERRY).withMark(ofMetres(9), "Bar"))
            .stream(Scenes.turning(1.0))
            .level("Bar", endless)
            .visibility(Distance.ofNauticalMiles(2));
    assertEquals(
        Verdict.Answer.NOT_CHECKED, Told.of(passage, Scenes.NOON, "landing at Slip").answer());
    TimedPlan plan = TimedPlan.of(passage.build(), Scenes.NOON).orElseThrow();
    assertEquals(
        "the height of the water is not known then",
        plan.legs().get(0).sighting().orElseThrow().whyUnsure().orElseThrow());
  }

  @Test
  void oneNameIsOnePlace() {
    PassageBuilder builder =
        Passage.builder("there and back", ZoneOffset.UTC, Scenes.party(3))
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(WayPoint.of("Cove", Scenes.COVE));
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> builder.to(WayPoint.of("Slip", Scenes.SKERRY)))
            .getMessage();
    assertTrue(message.contains("Slip must be at one place"), message);
    assertTrue(message.contains(Scenes.SKERRY.toString()), message);
    Passage back = builder.to(WayPoint.of("Slip", Scenes.SLIP)).stream(Scenes.turning(0.5)).build();
    assertTrue(TimedPlan.of(back, Scenes.NOON).isSolved());
  }

  @Test
  void dangersRefuseWhatWouldNeverCloseOrHasNoShape() {
    Danger rock = Danger.point("Rock", Scenes.SKERRY, ofMetres(100));
    refused(
        "times at which Rock is closed must be at least one, but were none",
        () -> rock.closedDuring(List.of()));
    refused(
        "name of a port must not be empty, but was \"\"",
        () -> rock.closedBelowLevel("", ofMetres(1)));
    refused(
        "outline of Race must have at least 3 corners, but had 2",
        () -> Danger.area("Race", List.of(Scenes.SLIP, Scenes.COVE), Distance.ZERO));
    List<Position> wide =
        List.of(Scenes.SLIP, Scenes.COVE, Position.ofDegrees(Scenes.SLIP.latitudeDegrees(), 10.0));
    String message =
        assertThrows(IllegalArgumentException.class, () -> Danger.area("Race", wide, Distance.ZERO))
            .getMessage();
    assertTrue(message.startsWith("corners of Race must lie within 60 NM of each other"), message);
    PassageBuilder builder = Scenes.passage(3, 0);
    assertThrows(NullPointerException.class, () -> builder.dangers(Arrays.asList(rock, null)));
  }

  @Test
  void shoresNeedLines() {
    PassageBuilder builder = Scenes.passage(3, 0);
    refused("shores must have at least 1 line, but had none", () -> builder.shores(List.of()));
    refused(
        "line of a shore must have at least 2 points, but had 1",
        () -> builder.shores(List.of(List.of(Scenes.SLIP))));
  }

  @Test
  void landingsRefuseLevelsTheWrongWayRound() {
    refused(
        "highest level must be at least the lowest of 3.0 metres, but was 1.0",
        () -> Landing.between("Bar", ofMetres(3), ofMetres(1)));
  }

  @Test
  void aLandingTellsItsLevelsAndHowFarTheWaterIsWithinThem() {
    Landing cove = Landing.between("Bar", ofMetres(0.5), ofMetres(4));
    assertEquals(Optional.of(ofMetres(0.5)), cove.lowest());
    assertEquals(Optional.of(ofMetres(4)), cove.highest());
    assertEquals(Optional.of(ofMetres(0.25)), cove.margin(ofMetres(0.75)));
    assertEquals(Optional.of(ofMetres(-1)), cove.margin(ofMetres(5)));
    Landing slip = Landing.atAnyLevel();
    assertEquals(Optional.empty(), slip.lowest());
    assertEquals(Optional.empty(), slip.highest());
    assertEquals(Optional.empty(), slip.margin(ofMetres(5)));
  }
}
