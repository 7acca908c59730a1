package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ferryglide.nav.landfall.Offset;
import org.ferryglide.nav.landfall.Side;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DeckCardTest {
  private static final Pattern WITHOUT_A_WORD =
      Pattern.compile("(?<!astern |stream to |true )[0-9_]{3}°(?!T)");
  private static final Pattern HEADING_LINE =
      Pattern.compile("[0-9_]{3}°  ([0-9]+) min +ETA ([0-9]{2}):([0-9]{2})(\\+1)?");
  private static final Pattern LEAVE =
      Pattern.compile("[0-9]+/[0-9]+ ([0-9]{2}):([0-9]{2})(\\+1)? to");

  /** Regression values: printed by this library, and looked at. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "one-leg",
        "twelve-legs",
        "a-stop",
        "antimeridian",
        "seventy-north",
        "a-calm",
        "no-variation"
      })
  void cardsStayAsTheyWere(String name) throws IOException {
    try (InputStream golden = DeckCardTest.class.getResourceAsStream("cards/" + name + ".txt")) {
      String kept = new String(golden.readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(kept, CardScenes.kept(CardScenes.all().get(name)));
    }
  }

  @Test
  void noSideIsLargerThanItsPaper() {
    CardScenes.all()
        .forEach(
            (name, card) -> {
              card.afloat().forEach(side -> assertFits(name, side, 24, 10));
              card.summary().forEach(side -> assertFits(name, side, 24, 10));
              card.further().forEach(side -> assertFits(name, side, 40, 30));
            });
  }

  private static void assertFits(String name, String side, int columns, int lines) {
    List<String> all = side.lines().toList();
    assertTrue(all.size() <= lines, name + "\n" + side);
    all.forEach(
        line -> assertTrue(line.codePointCount(0, line.length()) <= columns, name + ": " + line));
    assertTrue(side.contains("void on any other day"), name);
    assertTrue(all.get(0).contains("checked"), name);
    assertTrue(side.contains(" kn"), name);
    assertTrue(side.contains("2026"), name);
  }

  @Test
  void anAfloatSideHasOneDirectionWithoutAWord() {
    CardScenes.all()
        .forEach(
            (name, card) -> {
              for (String side : card.afloat()) {
                Matcher matcher = WITHOUT_A_WORD.matcher(side);
                assertTrue(matcher.find(), side);
                assertFalse(matcher.find(), side);
              }
            });
  }

  @Test
  void minutesAreTheDifferencesOfPrintedTimesAndArrivalsAreNeverEarly() {
    CardScenes.all()
        .forEach(
            (name, card) -> {
              int number = 0;
              for (String side : card.afloat()) {
                Matcher heading = HEADING_LINE.matcher(side);
                Matcher leave = LEAVE.matcher(side);
                assertTrue(heading.find() && leave.find(), side);
                int eta = minutes(heading, 2);
                assertEquals(eta - minutes(leave, 1), Integer.parseInt(heading.group(1)), side);
                Instant arrival = card.plan().legs().get(number++).arrival();
                long early = Duration.between(arrival, CardText.later(arrival)).getSeconds();
                assertTrue(early >= 0 && early < 60, side);
              }
            });
  }

  private static int minutes(Matcher matcher, int group) {
    return Integer.parseInt(matcher.group(group)) * 60
        + Integer.parseInt(matcher.group(group + 1))
        + (matcher.group(group + 2) == null ? 0 : 1440);
  }

  @Test
  void whatIsNotKnownIsABlankAndNeverAZero() {
    String side = CardScenes.all().get("no-variation").afloat().get(0);
    assertTrue(side.contains("___°"), side);
    assertTrue(side.contains("true "), side);
    assertTrue(side.contains("HW__:__"), side);
    StreamField nowhereAfterNoon =
        (latitude, longitude, seconds, eastNorth, offset) -> {
          eastNorth[offset] = 0.0;
          eastNorth[offset + 1] = 0.1;
          return seconds < Scenes.NOON.getEpochSecond() + 1200.0;
        };
    TimedPlan plan = TimedPlan.of(Scenes.passage(3.5, 0.8).build(), Scenes.NOON).orElseThrow();
    assertEquals(
        "stream to ___° __ kn",
        AfloatSides.stream(
            DeckCard.of(plan).text(),
            plan.legs().get(0),
            nowhereAfterNoon.at(Scenes.SLIP, Scenes.NOON.plusSeconds(3600))));
  }

  @Test
  void aMissIsToldWithItsSideAndTurnOnlyWhereItIsSure() {
    Map<String, DeckCard> cards = CardScenes.all();
    for (DeckCard card : cards.values()) {
      for (int i = 0; i < card.afloat().size(); i++) {
        PlannedLeg leg = card.plan().legs().get(i);
        java.util.Optional<Side> side = leg.sighting().flatMap(Sighting::sideIfMissed);
        String text = card.afloat().get(i);
        assertEquals(!side.isPresent(), text.contains("either side: aim off"), text);
        if (side.isPresent()) {
          assertTrue(text.contains("mark " + side.get() + " turn "), text);
        }
      }
    }
  }

  /**
   * A party turns to where the mark lies: the mark's direction from a party abeam of it, worked out
   * with vectors on a plane and turned to magnetic north by 7°54' W, named by the sectors of 45°.
   */
  @Test
  void aMissIsToldByTheCompassOfTheParty() {
    String[] names = {"N", "NE", "E", "SE", "S", "SW", "W", "NW"};
    double west = 8.0 + 50.0 / 60.0 - 7.45 * 8.0 / 60.0; // carried to the middle of June 2026
    for (int course = 3; course < 360; course += 17) {
      double north = Math.cos(Math.toRadians(course));
      double east = Math.sin(Math.toRadians(course));
      Passage passage =
          Passage.builder("One leg", ZoneOffset.UTC, Scenes.party(3.5))
              .from(WayPoint.of("Slip", Position.ofDegrees(0.0, 10.0)))
              .to(WayPoint.of("Mark", Position.ofDegrees(0.02 * north, 10.0 + 0.02 * east)))
              .stream(StreamField.slack())
              .variation(CardScenes.ROSE)
              .build();
      TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).orElseThrow();
      CardText text = DeckCard.of(plan).text();
      PlannedLeg leg = plan.legs().get(0);
      // to the left of (north, east) lies (east, -north), as north and east parts
      double left = Math.toDegrees(Math.atan2(-north, east)) + west;
      double right = Math.toDegrees(Math.atan2(north, -east)) + west;
      assertEquals(
          "miss: mark LEFT turn " + names[(int) Math.floorMod(Math.round(left / 45.0), 8L)],
          AfloatSides.ifMissed(text, missed(leg, 0.3, 0.01)));
      assertEquals(
          "miss: mark RIGHT turn " + names[(int) Math.floorMod(Math.round(right / 45.0), 8L)],
          AfloatSides.ifMissed(text, missed(leg, 0.01, 0.3)));
      assertEquals("either side: aim off", AfloatSides.ifMissed(text, missed(leg, 0.2, 0.1)));
    }
  }

  private static PlannedLeg missed(PlannedLeg leg, double left, double right) {
    return new PlannedLeg(
        leg.leg(),
        leg.steered(),
        leg.hours(),
        leg.spread(),
        0.0,
        leg.variation().orElse(null),
        null,
        new Sighting(
            1.0 - left - right,
            Distance.ofNauticalMiles(1),
            left,
            right,
            null,
            leg.leg().leg().finalCourse(),
            Offset.NONE));
  }

  /** The stream runs at 2 kn for ten minutes of the leg only, off the middles of its hours. */
  @Test
  void theStreamOfALegIsItsStrongestEverywhere() {
    StreamField shortRace =
        (latitude, longitude, seconds, eastNorth, offset) -> {
          double after = seconds - Scenes.NOON.getEpochSecond();
          eastNorth[offset] = 0.0;
          eastNorth[offset + 1] = after > 300 && after < 900 ? 2.0 * 1852.0 / 3600.0 : 0.1;
          return true;
        };
    Passage passage = Scenes.passage(3.5, 0.0).stream(shortRace).build();
    String side = CardScenes.card(passage).afloat().get(0);
    assertTrue(side.contains("stream to 000°T 2.0 kn"), side);
  }

  @Test
  void figuresGoToTheirWorseSide() {
    assertEquals("1.3", CardText.up(1.21));
    assertEquals("1.2", CardText.up(1.2));
    assertEquals("4.0", CardText.down(4.06));
    assertEquals("-0.1", CardText.down(-0.04));
    Instant time = Instant.parse("2026-06-14T12:25:30Z");
    assertEquals(Instant.parse("2026-06-14T12:26:00Z"), CardText.later(time));
    assertEquals(Instant.parse("2026-06-14T12:25:00Z"), CardText.earlier(time));
    assertEquals("355°", CardText.atMark(357.4, 5));
    assertEquals("000°", CardText.atMark(357.6, 5));
  }

  @Test
  void longLinesAreContinuedAndNeverCut() {
    List<String> lines = CardText.wrap("one two three four five six seven", 12);
    assertEquals(List.of("one two", "  three four", "  five six", "  seven"), lines);
    String summary = String.join("", CardScenes.all().get("twelve-legs").summary());
    for (int leg = 1; leg <= 12; leg++) {
      assertTrue(summary.contains("\n" + leg + " "), summary);
    }
  }

  @Test
  void badOptionsAreRefused() {
    DeckCard card = CardScenes.all().get("a-calm");
    assertThrows(IllegalArgumentException.class, () -> card.withMarksEvery(3));
    assertThrows(IllegalArgumentException.class, () -> card.withNotLaterThan(2, Scenes.NOON));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            card.withHighWater(
                "Bar", Scenes.NOON, Distance.ofMetres(5.3), OptionalDouble.of(Double.NaN)));
    assertThrows(IllegalArgumentException.class, () -> card.withLaunchInterval(" "));
    assertThrows(
        IllegalArgumentException.class, () -> card.withFurther("Home", List.of("a\u001b[2J")));
  }

  @Test
  void theMarkIsLookedForBeforeItIsReached() {
    Passage passage = Scenes.passage(3.5, 0.5).visibility(Distance.ofNauticalMiles(1)).build();
    PlannedLeg leg = TimedPlan.of(passage, Scenes.NOON).orElseThrow().legs().get(0);
    Instant sighted =
        leg.arrival()
            .minusSeconds((long) Math.floor(1852.0 / leg.speedMadeGood().metresPerSecond()));
    String clock = CardText.later(sighted).toString().substring(11, 16);
    assertTrue(CardScenes.card(passage).afloat().get(0).contains("by " + clock));
  }
}
