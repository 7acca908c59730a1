package org.ferryglide.examples.page;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.Landing;
import org.ferryglide.nav.passage.LegOptions;
import org.ferryglide.nav.passage.Party;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageBuilder;
import org.ferryglide.nav.passage.PassageLimits;
import org.ferryglide.nav.passage.Stop;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WaterLevel;
import org.ferryglide.nav.water.WindField;

/** Invented passages, one for each thing that a page must cope with. */
public final class PageScenes {
  /** When every passage leaves. */
  public static final Instant NOON = Instant.parse("2026-06-14T12:00:00Z");

  private static final double TIDE_SECONDS = 12.42 * 3600.0;
  private static final Position SLIP = Position.parse("46°10.0'N 026°20.0'W");
  private static final Position SKERRY = Position.parse("46°12.0'N 026°15.0'W");
  private static final Position COVE = Position.parse("46°15.0'N 026°13.0'W");
  private static final CompassRose ROSE = CompassRose.parse("8°50'W 2019 (8'E)");

  private PageScenes() {}

  /**
   * All of them.
   *
   * @return the passages by name
   */
  public static Map<String, WorkedPassage> all() {
    return Worked.ALL;
  }

  /** Worked out once for all tests. */
  private static final class Worked {
    private static final Map<String, WorkedPassage> ALL = Collections.unmodifiableMap(workOut());
  }

  private static Map<String, WorkedPassage> workOut() {
    Map<String, Passage> passages = new LinkedHashMap<>();
    passages.put("one-leg", oneLeg());
    passages.put("twelve-legs", twelveLegs());
    passages.put("a-stop", aStop());
    passages.put("antimeridian", antimeridian());
    passages.put("seventy-north", seventyNorth());
    passages.put("a-calm", calm());
    passages.put("not-possible", notPossible());
    passages.put("none-left", noneLeft());
    passages.put("hostile-names", hostileNames());
    passages.put("strange-names", strangeNames());
    passages.put("long-names", longNames());
    passages.put("no-length", noLength());
    passages.put("forty-legs", fortyLegs());
    Map<String, WorkedPassage> worked = new LinkedHashMap<>();
    passages.forEach((name, passage) -> worked.put(name, WorkedPassage.of(passage, NOON)));
    worked.computeIfPresent("long-names", (name, without) -> without.withWayHome());
    return worked;
  }

  static Party party(double knots) {
    return Party.of(Craft.ofSpeed(Speed.ofKnots(knots)))
        .withLaunching(Duration.ofMinutes(15))
        .withLanding(Duration.ofMinutes(10));
  }

  /** North-going at noon with a rate, south-going half a tide later. */
  static StreamField turning(double knots) {
    double most = Speed.ofKnots(knots).metresPerSecond();
    double noon = NOON.getEpochSecond();
    return (latitude, longitude, seconds, eastNorth, offset) -> {
      eastNorth[offset] = 0.0;
      eastNorth[offset + 1] = most * Math.cos(2.0 * Math.PI * (seconds - noon) / TIDE_SECONDS);
      return !Double.isNaN(seconds);
    };
  }

  static WaterLevel level() {
    double noon = NOON.getEpochSecond();
    return new WaterLevel() {
      private static final long serialVersionUID = 1L;

      @Override
      public double heightMetres(double seconds) {
        return 2.5 + 1.5 * Math.cos(2.0 * Math.PI * (seconds - noon) / TIDE_SECONDS);
      }

      @Override
      public String datum() {
        return "chart datum";
      }
    };
  }

  static Passage oneLeg() {
    return Passage.builder("Slip to skerry", ZoneId.of("+01:00"), party(3.5))
        .from(WayPoint.of("Slip", SLIP))
        .to(WayPoint.of("Skerry", SKERRY).withToSee("white beacon").withMark(Distance.ofMetres(12)))
        .stream(turning(1.4))
        .variation(ROSE)
        .visibility(Distance.ofNauticalMiles(2))
        .build();
  }

  static Passage twelveLegs() {
    PassageBuilder builder =
        Passage.builder("Round the twelve skerries", ZoneOffset.UTC, party(3.0))
            .from(WayPoint.of("Skerry 0", SLIP));
    for (int i = 1; i <= 12; i++) {
      double north = i % 2 == 0 ? 0.012 : -0.004;
      builder.to(
          WayPoint.of(
              "Skerry " + i,
              Position.ofDegrees(
                  SLIP.latitudeDegrees() + north, SLIP.longitudeDegrees() + 0.022 * i)));
    }
    return builder.stream(turning(0.8)).variation(ROSE).dangers(List.of()).lanes(List.of()).build();
  }

  static Passage aStop() {
    return Passage.builder("Slip to cove", ZoneOffset.UTC, party(3.5))
        .from(WayPoint.of("Slip", SLIP).withLanding(Landing.atAnyLevel()))
        .to(
            WayPoint.of("Skerry", SKERRY)
                .withStop(Stop.ashore(Duration.ofMinutes(40)))
                .withLanding(Landing.atAnyLevel()),
            LegOptions.usual().withStrategy(Strategy.trackHeld()))
        .to(
            WayPoint.of("Cove with a name that is much too long", COVE)
                .withLanding(
                    Landing.between("Cove bar", Distance.ofMetres(1.5), Distance.ofMetres(3.8))
                        .withOpenSector(TrueBearing.ofDegrees(200), TrueBearing.ofDegrees(290))),
            LegOptions.usual().withStrategy(Strategy.newHeadingEvery(Duration.ofMinutes(30))))
        .stream(turning(1.0))
        .level("Cove bar", level())
        .variation(ROSE)
        .build();
  }

  private static Passage antimeridian() {
    return Passage.builder("Over the line", ZoneId.of("+12:00"), party(3.5))
        .from(WayPoint.of("West Cay", Position.parse("10°00.0'S 179°57.0'E")))
        .to(WayPoint.of("East Cay", Position.parse("10°01.0'S 179°57.0'W")))
        .stream(turning(0.5))
        .variation(CompassRose.parse("12°30'E 2022 (2'W)"))
        .build();
  }

  private static Passage seventyNorth() {
    return Passage.builder("North fjord", ZoneOffset.UTC, party(3.5))
        .from(WayPoint.of("Ness", Position.parse("70°10.0'N 022°00.0'E")))
        .to(WayPoint.of("Holm", Position.parse("70°12.0'N 022°08.0'E")))
        .stream(turning(0.5))
        .variation(CompassRose.parse("11°30'E 2022 (12'E)"))
        .build();
  }

  private static Passage calm() {
    return Passage.builder("Calm water", ZoneOffset.UTC, party(3.5))
        .from(WayPoint.of("Slip", SLIP))
        .to(WayPoint.of("Skerry", SKERRY))
        .stream(StreamField.slack())
        .wind(WindField.calm())
        .variation(ROSE)
        .build();
  }

  /** The second leg lies across a stream faster than the party. */
  private static Passage notPossible() {
    return Passage.builder("Across the race", ZoneOffset.UTC, party(3.5))
        .from(WayPoint.of("Slip", SLIP))
        .to(WayPoint.of("Skerry", SKERRY))
        .to(
            WayPoint.of("Far side", Position.parse("46°12.0'N 026°10.0'W")),
            LegOptions.usual()
                .withStream(
                    StreamField.steady(
                        Velocity.ofSetAndRate(TrueBearing.ofDegrees(0), Speed.ofKnots(6)))))
        .stream(turning(0.5))
        .variation(ROSE)
        .build();
  }

  /** A rock that is always closed lies on the way, and the stream is stronger than the limit. */
  private static Passage noneLeft() {
    return Passage.builder("Past the rock", ZoneOffset.UTC, party(3.5))
        .from(WayPoint.of("Slip", SLIP))
        .to(WayPoint.of("Skerry", SKERRY))
        .stream(turning(1.0))
        .variation(ROSE)
        .limits(PassageLimits.none().withStream(Speed.ofKnots(0.1), Speed.ofKnots(0.2)))
        .dangers(
            List.of(
                Danger.point(
                    "Old Fang", Position.parse("46°11.0'N 026°17.5'W"), Distance.ofMetres(300))))
        .build();
  }

  private static Passage fortyLegs() {
    PassageBuilder builder =
        Passage.builder("Forty short legs", ZoneOffset.UTC, party(3.0))
            .from(WayPoint.of("Point 0", SLIP));
    for (int i = 1; i <= 40; i++) {
      builder.to(
          WayPoint.of(
              "Point " + i,
              Position.ofDegrees(
                  SLIP.latitudeDegrees() + 0.004 * (i % 2), SLIP.longitudeDegrees() + 0.006 * i)));
    }
    return builder.stream(turning(0.8)).variation(ROSE).build();
  }

  /** The second leg ends where it begins. */
  private static Passage noLength() {
    return Passage.builder("There and there", ZoneOffset.UTC, party(3.5))
        .from(WayPoint.of("Slip", SLIP))
        .to(WayPoint.of("Skerry", SKERRY))
        .to(WayPoint.of("The same skerry", SKERRY))
        .stream(turning(0.5))
        .variation(ROSE)
        .build();
  }

  /** Very long, from right to left, and of characters that take two halves. */
  private static Passage strangeNames() {
    return Passage.builder("نخلة".repeat(20), ZoneOffset.UTC, party(3.5))
        .from(WayPoint.of("🛶🌊".repeat(30), SLIP))
        .to(WayPoint.of("סלע", SKERRY).withToSee("Ab".repeat(60)))
        .stream(turning(0.5))
        .variation(ROSE)
        .build();
  }

  /** Sixty letters without a blank, in every table that names places. */
  private static Passage longNames() {
    String name = "Langernameohnejedeslueckchen".repeat(3).substring(0, 60);
    return Passage.builder(name, ZoneOffset.UTC, party(3.5))
        .from(WayPoint.of(name, SLIP).withLanding(Landing.atAnyLevel()))
        .to(
            WayPoint.of(name + "2", SKERRY)
                .withLanding(Landing.between(name, Distance.ofMetres(1.0), Distance.ofMetres(3.5))))
        .level(name, level())
        .stream(turning(1.0))
        .variation(ROSE)
        .dangers(
            List.of(
                Danger.point(
                    name + "3", Position.parse("46°11.0'N 026°18.5'W"), Distance.ofMetres(50))))
        .build();
  }

  private static Passage hostileNames() {
    return Passage.builder("<script>alert('&\"1\")</script>", ZoneOffset.UTC, party(3.5))
        .from(WayPoint.of("A <b> & \"c\"", SLIP))
        .to(WayPoint.of("]]> --> Ünïcödé 海", SKERRY).withToSee("{braces} & <tags>"))
        .stream(turning(0.5))
        .build();
  }
}
