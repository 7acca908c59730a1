package org.ferryglide.nav.passage;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WaterLevel;

/** An invented passage: three places, a stream that turns with the tide, a level. */
final class Scenes {
  static final Instant NOON = Instant.parse("2026-06-14T12:00:00Z");
  static final double TIDE_SECONDS = 12.42 * 3600.0;
  static final Position SLIP = Position.parse("46°10.0'N 026°20.0'W");
  static final Position SKERRY = Position.parse("46°12.0'N 026°15.0'W");
  static final Position COVE = Position.parse("46°15.0'N 026°13.0'W");

  private Scenes() {}

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

  /** High water of 4 m at noon, low water of 1 m half a tide later. */
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

  static PassageBuilder passage(double paddling, double stream) {
    return Passage.builder("Slip to cove", ZoneOffset.UTC, party(paddling))
        .from(WayPoint.of("Slip", SLIP))
        .to(WayPoint.of("Skerry", SKERRY).withMark(Distance.ofMetres(12)))
        .to(WayPoint.of("Cove", COVE))
        .stream(turning(stream))
        .level("Cove bar", level());
  }
}
