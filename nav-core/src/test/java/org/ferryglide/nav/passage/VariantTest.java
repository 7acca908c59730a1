package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Reason;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.junit.jupiter.api.Test;

class VariantTest {
  /** A sphere of 60 NM a degree against the ellipsoid, over less than three hours. */
  private static final double SPHERE_SECONDS = 60.0;

  private static final List<Position> PLACES = List.of(Scenes.SLIP, Scenes.SKERRY, Scenes.COVE);

  private static Passage passage(StreamField own) {
    LegOptions held = LegOptions.usual().withStrategy(Strategy.trackHeld());
    return Passage.builder("Slip to cove", ZoneOffset.UTC, Scenes.party(3.5))
        .from(WayPoint.of("Slip", Scenes.SLIP))
        .to(WayPoint.of("Skerry", Scenes.SKERRY), held)
        .to(WayPoint.of("Cove", Scenes.COVE).withMark(Distance.ofMetres(9)), held.withStream(own))
        .stream(Scenes.turning(1.2))
        .dangers(List.of())
        .build();
  }

  private static Variant named(List<Variant> variants, String name) {
    return variants.stream()
        .filter(variant -> variant.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError(name + " in " + variants));
  }

  private static void arrives(
      List<Variant> variants, String name, double knots, double factor, int late, int departs) {
    double departure = Scenes.NOON.plus(Duration.ofMinutes(departs)).getEpochSecond();
    double rate = factor * Speed.ofKnots(1.2).metresPerSecond();
    double arrival =
        SlowWay.arrival(
            PLACES,
            Speed.ofKnots(knots).metresPerSecond(),
            t ->
                rate
                    * Math.cos(
                        2.0
                            * Math.PI
                            * (t - 60.0 * late - Scenes.NOON.getEpochSecond())
                            / Scenes.TIDE_SECONDS),
            departure);
    TimedPlan plan = named(variants, name).outcome().orElseThrow();
    assertEquals(arrival, plan.route().arrivalSeconds(), SPHERE_SECONDS, name);
    assertEquals(departure, (double) plan.departure().getEpochSecond(), 0.0, name);
  }

  @Test
  void eachArrivesWhenVectorsSayLegsWithAStreamOfTheirOwnToo() {
    List<Variant> all = Variant.sideBySide(passage(Scenes.turning(1.2)), Scenes.NOON);
    assertEquals(14, all.size());
    assertEquals(Variant.AS_PLANNED, all.get(0).name());
    arrives(all, "as planned", 3.5, 1.0, 0, 0);
    arrives(all, "slower party", 2.8, 1.0, 0, 0);
    arrives(all, "30 minutes early", 3.5, 1.0, 0, -30);
    arrives(all, "30 minutes late", 3.5, 1.0, 0, 30);
    arrives(all, "60 minutes late", 3.5, 1.0, 0, 60);
    arrives(all, "stream 60 minutes early", 3.5, 1.0, -60, 0);
    arrives(all, "stream 30 minutes early", 3.5, 1.0, -30, 0);
    arrives(all, "stream 30 minutes late", 3.5, 1.0, 30, 0);
    arrives(all, "stream 60 minutes late", 3.5, 1.0, 60, 0);
    arrives(all, "stream a quarter stronger", 3.5, 1.25, 0, 0);
    arrives(all, "stream a quarter weaker", 3.5, 0.75, 0, 0);
    arrives(all, "no stream", 3.5, 0.0, 0, 0);
  }

  @Test
  void withoutWindAndVisibilityTheirVariantsAreNotKnown() {
    List<Variant> all = Variant.sideBySide(passage(Scenes.turning(1.2)), Scenes.NOON);
    for (String name : List.of("more wind, none was given", "less visibility, none was given")) {
      assertEquals(Reason.NO_DATA, named(all, name).outcome().why().orElseThrow().reason());
      assertFalse(named(all, name).holds());
    }
  }

  @Test
  void aWindWithinItsLimitIsBeyondWhenHalfAsStrongAgain() {
    Passage windy =
        passage(Scenes.turning(1.2)).toBuilder()
            .wind(WindField.steady(Velocity.ofWind(TrueBearing.ofDegrees(200), Speed.ofKnots(12))))
            .limits(PassageLimits.none().withWind(Speed.ofKnots(11), Speed.ofKnots(16)))
            .visibility(Distance.ofNauticalMiles(2))
            .build();
    List<Variant> all = Variant.sideBySide(windy, Scenes.NOON);
    assertTrue(named(all, Variant.AS_PLANNED).holds());
    Variant more = named(all, "half as much wind again");
    assertFalse(more.holds());
    Verdict worst = more.outcome().orElseThrow().worst().orElseThrow();
    assertEquals(18.0, worst.figure().orElseThrow(), 1e-9);
    TimedPlan thick = named(all, "half the visibility").outcome().orElseThrow();
    assertEquals(1.0, thick.legs().get(1).sighting().orElseThrow().reach().nauticalMiles(), 1e-9);
  }

  @Test
  void whatIsNotKnownStaysUnknownWithoutAStream() {
    double end = Scenes.NOON.plusSeconds(1800).getEpochSecond();
    StreamField known = Scenes.turning(1.2);
    StreamField ending =
        (latitude, longitude, seconds, eastNorth, offset) ->
            seconds <= end && known.sample(latitude, longitude, seconds, eastNorth, offset);
    List<Variant> all = Variant.sideBySide(passage(ending), Scenes.NOON);
    assertEquals(Reason.NO_DATA, named(all, "no stream").outcome().why().orElseThrow().reason());
  }

  @Test
  void aStreamTooStrongBarsOneVariantAndSaysWhy() {
    Instant against = Scenes.NOON.plus(Duration.ofMinutes(373));
    Passage passage = passage(Scenes.turning(3.1)).toBuilder().stream(Scenes.turning(3.1)).build();
    List<Variant> all = Variant.sideBySide(passage, against);
    assertTrue(named(all, Variant.AS_PLANNED).outcome().isSolved());
    Variant stronger = named(all, "stream a quarter stronger");
    assertFalse(stronger.outcome().isSolved());
    assertTrue(stronger.toString().contains("stream"), stronger::toString);
  }
}
