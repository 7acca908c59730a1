package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.WindResponse;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WaterLevel;
import org.ferryglide.nav.water.WindField;
import org.ferryglide.nav.water.Window;
import org.ferryglide.testing.Seeds;

/**
 * A passage mirrored east to west, or with all its tables a while later, is the same passage. Where
 * the sun does not set, daylight is the same too.
 */
class PassageSymmetryProperties {
  private static final double MERIDIAN = -20.0;
  private static final Instant START = Instant.parse("2026-06-14T06:00:00Z");

  /** Edges are refined to a second. */
  private static final double EDGE_SECONDS = 1.5;

  /** Where mirrored or shifted arithmetic rounds otherwise, over hours at less than 5 m/s. */
  private static final double ROUNDING = 1e-4;

  /** One of a kind: the same draw makes the passage, its mirror image and its later twin. */
  private static final class Scene {
    final double sign;
    final Duration later;
    final Instant departure;
    final Passage passage;

    Scene(long seed, double sign, Duration later) {
      this.sign = sign;
      this.later = later;
      Random random = new Random(seed);
      departure = START.plusSeconds(random.nextInt(7200)).plus(later);
      List<WayPoint> places = new ArrayList<>();
      double latitude = 75.0;
      double east = 0.0;
      for (int i = 0; i < 3; i++) {
        places.add(WayPoint.of("P" + i, at(latitude, east)));
        double course = 2.0 * Math.PI * random.nextDouble();
        double miles = 1.5 + 2.0 * random.nextDouble();
        latitude += miles / 60.0 * Math.cos(course);
        east += miles / 60.0 * Math.sin(course) / Math.cos(Math.toRadians(latitude));
      }
      double north = 1.5 * random.nextDouble();
      double across = 1.5 * random.nextDouble();
      double phase = 6.0 * random.nextDouble();
      Danger danger =
          Danger.point(
              "rock",
              at(75.02 + 0.05 * random.nextDouble(), 0.2 * random.nextDouble() - 0.1),
              Distance.ofMetres(300));
      Party party = Scenes.party(3.0 + random.nextDouble());
      party = party.withCraft(party.craft().withWindResponse(WindResponse.none().withDrift(0.02)));
      double blows = 10.0 * random.nextDouble();
      int kind = random.nextInt(3);
      if (kind > 0) {
        Stop stop =
            kind == 1
                ? Stop.ashore(Duration.ofMinutes(25))
                : Stop.untilLevelAtMost("port", Distance.ofMetres(2.5));
        places.set(1, places.get(1).withStop(stop));
      }
      passage =
          Passage.builder("scene", ZoneOffset.UTC, party)
              .from(
                  places
                      .get(0)
                      .withLanding(
                          Landing.between("port", Distance.ofMetres(1.0), Distance.ofMetres(4.5))))
              .to(places.get(1))
              .to(
                  places
                      .get(2)
                      .withLanding(
                          Landing.between("port", Distance.ofMetres(1.2), Distance.ofMetres(3.8))))
              .stream(stream(north, across, phase))
              .wind(wind(blows, phase))
              .level("port", level(phase))
              .dangers(List.of(danger))
              .limits(
                  PassageLimits.none()
                      .withStream(Speed.ofKnots(0.8), Speed.ofKnots(2.0))
                      .withWind(Speed.ofKnots(4.0), Speed.ofKnots(9.0)))
              .build();
    }

    private Position at(double latitude, double east) {
      return Position.ofDegrees(latitude, MERIDIAN + sign * east);
    }

    private double turned(double seconds) {
      return 2.0
          * Math.PI
          * (seconds - START.getEpochSecond() - later.toSeconds())
          / Scenes.TIDE_SECONDS;
    }

    private StreamField stream(double north, double across, double phase) {
      double most = Speed.ofKnots(1.0).metresPerSecond();
      return (latitude, longitude, seconds, eastNorth, offset) -> {
        eastNorth[offset] = sign * most * across * Math.sin(turned(seconds) + phase);
        eastNorth[offset + 1] = most * north * Math.cos(turned(seconds) + phase);
        return true;
      };
    }

    private WindField wind(double knots, double phase) {
      double most = Speed.ofKnots(knots).metresPerSecond();
      return (latitude, longitude, seconds, eastNorth, offset) -> {
        eastNorth[offset] = sign * most * Math.cos(0.7 * turned(seconds));
        eastNorth[offset + 1] = most * Math.sin(0.7 * turned(seconds) + phase);
        return true;
      };
    }

    private WaterLevel level(double phase) {
      return new WaterLevel() {
        private static final long serialVersionUID = 1L;

        @Override
        public double heightMetres(double seconds) {
          return 2.5 + 1.8 * Math.cos(turned(seconds) + 0.7 * phase);
        }

        @Override
        public String datum() {
          return "chart datum";
        }
      };
    }
  }

  private static void sameSpans(Found<Window> one, Found<Window> other, Duration later) {
    assertEquals(one.items().size(), other.items().size(), () -> one + " and " + other);
    for (int i = 0; i < one.items().size(); i++) {
      Window first = one.items().get(i);
      Window second = other.items().get(i);
      assertEquals(0.0, apart(first.from(), second.from(), later), EDGE_SECONDS);
      assertEquals(0.0, apart(first.until(), second.until(), later), EDGE_SECONDS);
    }
  }

  private static double apart(Instant one, Instant other, Duration later) {
    return Duration.between(one.plus(later), other).toMillis() / 1000.0;
  }

  private static void samePlans(Scene one, Scene other) {
    TimedPlan plan = TimedPlan.of(one.passage, one.departure).orElseThrow();
    TimedPlan twin = TimedPlan.of(other.passage, other.departure).orElseThrow();
    assertEquals(0.0, apart(plan.arrival(), twin.arrival(), other.later), 0.01);
    assertEquals(plan.verdicts().size(), twin.verdicts().size());
    for (int leg = 0; leg < plan.legs().size(); leg++) {
      double heading = plan.legs().get(leg).heading().degrees();
      double turn = other.sign * twin.legs().get(leg).heading().degrees() - heading;
      assertEquals(0.0, Math.IEEEremainder(turn, 360.0), ROUNDING);
    }
    for (int i = 0; i < plan.verdicts().size(); i++) {
      assertEquals(
          plan.verdicts().get(i).margin().orElseThrow(),
          twin.verdicts().get(i).margin().orElseThrow(),
          ROUNDING,
          plan.verdicts().get(i).reason());
    }
  }

  private static void sameTimes(Scene one, Scene other) {
    Duration step = Duration.ofMinutes(30);
    Duration reach = Duration.ofHours(8);
    sameSpans(
        WhenToGo.search(one.passage, one.departure, one.departure.plus(reach), step).windows(),
        WhenToGo.search(other.passage, other.departure, other.departure.plus(reach), step)
            .windows(),
        other.later);
    TimedPlan plan = TimedPlan.of(one.passage, one.departure).orElseThrow();
    TimedPlan twin = TimedPlan.of(other.passage, other.departure).orElseThrow();
    WayHome home = WayHome.of(plan, one.departure.plus(reach), step);
    WayHome its = WayHome.of(twin, other.departure.plus(reach), step);
    for (int i = 0; i < home.turns().size(); i++) {
      sameSpans(home.turns().get(i).goingOn(), its.turns().get(i).goingOn(), other.later);
      sameSpans(home.turns().get(i).home(), its.turns().get(i).home(), other.later);
    }
  }

  @Property(seed = Seeds.SEED, tries = 50)
  void aMirroredPlanIsTheMirrorOfThePlan(@ForAll long seed) {
    samePlans(new Scene(seed, 1.0, Duration.ZERO), new Scene(seed, -1.0, Duration.ZERO));
  }

  @Property(seed = Seeds.SEED, tries = 50)
  void aLaterPlanIsThePlanLater(@ForAll long seed) {
    Duration later = Duration.ofHours(Math.floorMod(seed, 400));
    samePlans(new Scene(seed, 1.0, Duration.ZERO), new Scene(seed, 1.0, later));
  }

  @Property(seed = Seeds.SEED, tries = 10)
  void mirroredTimesAreTheSameTimes(@ForAll long seed) {
    sameTimes(new Scene(seed, 1.0, Duration.ZERO), new Scene(seed, -1.0, Duration.ZERO));
  }

  @Property(seed = Seeds.SEED, tries = 10)
  void laterTimesAreTheTimesLater(@ForAll long seed) {
    Duration later = Duration.ofHours(Math.floorMod(seed, 400));
    sameTimes(new Scene(seed, 1.0, Duration.ZERO), new Scene(seed, 1.0, later));
  }
}
