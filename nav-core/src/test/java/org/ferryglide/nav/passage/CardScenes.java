package org.ferryglide.nav.passage;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;

/** Invented plans whose cards are kept and compared. */
final class CardScenes {
  private static final String CHECKS = DeckCard.english().say("card.checks");
  static final CompassRose ROSE = CompassRose.parse("8°50'W 2019 (8'E)");

  private CardScenes() {}

  static Map<String, DeckCard> all() {
    Map<String, DeckCard> cards = new LinkedHashMap<>();
    cards.put("one-leg", oneLeg());
    cards.put("twelve-legs", twelveLegs());
    cards.put("a-stop", withStop());
    cards.put("antimeridian", antimeridian());
    cards.put("seventy-north", seventyNorth());
    cards.put("a-calm", calm());
    cards.put("no-variation", noVariation());
    return cards;
  }

  /**
   * What is kept of a card: all that is the card's own. The checks, and the earliest and latest
   * arrivals, have tests of their own.
   */
  static String kept(DeckCard card) {
    String all = card.toString();
    int checks = all.indexOf(CHECKS);
    StringBuilder kept = new StringBuilder();
    for (String line : all.substring(0, checks).split("\n", 0)) {
      int likely = line.indexOf(" likely, ");
      kept.append(likely < 0 ? line : line.substring(0, likely)).append('\n');
    }
    return kept.toString();
  }

  static DeckCard card(Passage passage) {
    return DeckCard.of(TimedPlan.of(passage, Scenes.NOON).orElseThrow());
  }

  private static DeckCard oneLeg() {
    return card(Passage.builder("Slip to skerry", ZoneId.of("+01:00"), Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(
                WayPoint.of("Skerry", Scenes.SKERRY)
                    .withToSee("white beacon")
                    .withMark(Distance.ofMetres(12)))
            .stream(Scenes.turning(1.4))
            .variation(ROSE)
            .visibility(Distance.ofNauticalMiles(2))
            .build())
        .withMarksEvery(5)
        .withHighWater("Cove bar", Scenes.NOON, Distance.ofMetres(4.06), OptionalDouble.of(0.854))
        .withLaunchInterval("11:40 to 12:20, the stream ends it")
        .withNotLaterThan(1, Instant.parse("2026-06-14T12:25:30Z"))
        .withFurther("WAY HOME", List.of("13:30-14:40 steer 250 magnetic, 95 min"));
  }

  private static DeckCard twelveLegs() {
    PassageBuilder builder =
        Passage.builder("Round the twelve skerries", ZoneOffset.UTC, Scenes.party(3.0))
            .from(WayPoint.of("Skerry 0", Scenes.SLIP));
    for (int i = 1; i <= 12; i++) {
      double north = i % 2 == 0 ? 0.012 : -0.004;
      builder.to(
          WayPoint.of(
              "Skerry " + i,
              Position.ofDegrees(
                  Scenes.SLIP.latitudeDegrees() + north,
                  Scenes.SLIP.longitudeDegrees() + 0.022 * i)));
    }
    return card(
        builder.stream(Scenes.turning(0.8))
            .variation(ROSE)
            .dangers(List.of())
            .lanes(List.of())
            .build());
  }

  private static DeckCard withStop() {
    Passage passage =
        Passage.builder("Slip to cove", ZoneOffset.UTC, Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP).withLanding(Landing.atAnyLevel()))
            .to(
                WayPoint.of("Skerry", Scenes.SKERRY).withStop(Stop.ashore(Duration.ofMinutes(40))),
                LegOptions.usual().withStrategy(Strategy.trackHeld()))
            .to(
                WayPoint.of("Cove with a name that is much too long", Scenes.COVE)
                    .withLanding(
                        Landing.between("Cove bar", Distance.ofMetres(1.5), Distance.ofMetres(3.8))
                            .withOpenSector(
                                TrueBearing.ofDegrees(200), TrueBearing.ofDegrees(290))))
            .stream(Scenes.turning(1.0))
            .level("Cove bar", Scenes.level())
            .variation(ROSE)
            .build();
    return card(passage);
  }

  private static DeckCard antimeridian() {
    return card(
        Passage.builder("Over the line", ZoneId.of("+12:00"), Scenes.party(3.5))
            .from(WayPoint.of("West Cay", Position.parse("10°00.0'S 179°57.0'E")))
            .to(WayPoint.of("East Cay", Position.parse("10°01.0'S 179°57.0'W")))
            .stream(Scenes.turning(0.5))
            .variation(CompassRose.parse("12°30'E 2022 (2'W)"))
            .build());
  }

  private static DeckCard seventyNorth() {
    return card(
        Passage.builder("North fjord", ZoneOffset.UTC, Scenes.party(3.5))
            .from(WayPoint.of("Ness", Position.parse("70°10.0'N 022°00.0'E")))
            .to(WayPoint.of("Holm", Position.parse("70°12.0'N 022°08.0'E")))
            .stream(Scenes.turning(0.5))
            .variation(CompassRose.parse("11°30'E 2022 (12'E)"))
            .build());
  }

  private static DeckCard calm() {
    return card(
        Passage.builder("Calm water", ZoneOffset.UTC, Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(WayPoint.of("Skerry", Scenes.SKERRY))
            .stream(StreamField.slack())
            .wind(WindField.calm())
            .variation(ROSE)
            .build());
  }

  private static DeckCard noVariation() {
    Party party =
        Party.of(Craft.ofSpeed(Speed.ofKnots(3.25)).withRestEachHour(Duration.ofMinutes(8)));
    return card(Scenes.passage(3.5, 0.8).party(party).build());
  }
}
