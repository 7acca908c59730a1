package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.ferryglide.testing.Seeds;

/** Quickest paths in wind with rests, among islands and an area that is closed for a time. */
class QuickestInWindProperties {
  private static final Instant DEPARTURE = Instant.parse("2026-06-14T10:00:00Z");
  private static final double TIDE_SECONDS = 7115.0;
  private static final int CORNERS = 7;

  /** Mirrored waters are searched by another grid, and both answers are polygons. */
  private static final double SETTLED_SHARE = 5e-4;

  /** A drawn sea; mirrored, what is north of the line of the leg lies south of it. */
  private static final class Sea {
    final List<List<Position>> islands = new ArrayList<>();
    final List<Position> area;
    final TimeSpan closed;
    final StreamField stream;
    final WindField wind;

    Sea(long seed, boolean mirrored) {
      Random random = new Random(seed);
      double side = mirrored ? -1.0 : 1.0;
      for (int k = 0; k < 2; k++) {
        double x = 1.0 + 2.0 * random.nextDouble();
        double y = -0.6 + 1.2 * random.nextDouble();
        List<Position> island = new ArrayList<>();
        for (int c = 0; c < CORNERS; c++) {
          double far = 0.2 + 0.35 * random.nextDouble();
          double angle = 2.0 * Math.PI * c / CORNERS;
          island.add(PlanePatch.at(x + far * Math.cos(angle), side * (y + far * Math.sin(angle))));
        }
        islands.add(island);
      }
      double x = 1.0 + 2.0 * random.nextDouble();
      double y = 0.6 - 1.2 * random.nextDouble();
      double[][] corners = {{x - 0.4, y - 0.4}, {x + 0.4, y - 0.4}, {x + 0.4, y + 0.4}};
      area = new ArrayList<>();
      for (double[] corner : corners) {
        area.add(PlanePatch.at(corner[0], side * corner[1]));
      }
      closed =
          TimeSpan.of(
              DEPARTURE.plusSeconds(random.nextInt(2000)),
              Duration.ofSeconds(600 + random.nextInt(2000)));
      double phase = 6.0 * random.nextDouble();
      double start = DEPARTURE.getEpochSecond();
      stream =
          (latitude, longitude, time, out, offset) -> {
            double tide = 0.8 * Math.cos((time - start) / TIDE_SECONDS + phase);
            return PlanePatch.stream(
                    (east, north) -> tide * Math.sin(2.0 * side * north + phase),
                    (east, north) -> side * tide * Math.cos(east))
                .sample(latitude, longitude, time, out, offset);
          };
      double from = 360.0 * random.nextDouble();
      wind =
          WindField.steady(
              Velocity.ofWind(
                  TrueBearing.ofDegrees(mirrored ? 180.0 - from : from),
                  Speed.ofKnots(4.0 + 10.0 * random.nextDouble())));
    }

    CourseToSteer solver() {
      Craft craft =
          Craft.ofSpeed(Speed.ofMetresPerSecond(1.6))
              .withRestEachHour(Duration.ofMinutes(6))
              .withWindResponse(WindResponse.commonPractice(WindResponse.Trim.ORDINARY));
      return CourseToSteer.with(craft, stream)
          .withWind(wind)
          .withStrategy(Strategy.quickestAround(islands).withClosure(area, closed))
          .withLimits(SteeringLimits.NONE);
    }

    Optional<SteeredLeg> path() {
      return solver()
          .solve(RhumbLeg.between(PlanePatch.at(0, 0), PlanePatch.at(4, 0)), DEPARTURE)
          .solved();
    }
  }

  private static double seconds(SteeredLeg path) {
    return path.arrivalSeconds() - DEPARTURE.getEpochSecond();
  }

  /** By counting the edges that a meridian meets south of a place. */
  private static boolean contains(List<Position> outline, Position place) {
    boolean within = false;
    for (int i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
      Position a = outline.get(i);
      Position b = outline.get(j);
      boolean isBetween =
          a.longitudeDegrees() > place.longitudeDegrees()
              != b.longitudeDegrees() > place.longitudeDegrees();
      if (isBetween) {
        double share =
            (place.longitudeDegrees() - a.longitudeDegrees())
                / (b.longitudeDegrees() - a.longitudeDegrees());
        double met = a.latitudeDegrees() + share * (b.latitudeDegrees() - a.latitudeDegrees());
        within ^= met < place.latitudeDegrees();
      }
    }
    return within;
  }

  @Property(seed = Seeds.SEED, tries = 3 * Seeds.MORE_IN_THE_SOAK)
  void thePathKeepsOutAndTakesAsLongWithItsTracksHeld(@ForAll int seed) {
    Sea sea = new Sea(seed, false);
    Optional<SteeredLeg> found = sea.path();
    assertTrue(found.isPresent(), "an answer exists: islands and area can be gone round");
    SteeredLeg path = found.get();
    for (TrackPoint point : path.groundTrack().pointsEvery(1.0)) {
      for (List<Position> island : sea.islands) {
        assertFalse(contains(island, point.position()), () -> "in an island: " + point);
      }
      boolean closed =
          point.time().isAfter(sea.closed.from()) && point.time().isBefore(sea.closed.until());
      assertFalse(closed && contains(sea.area, point.position()), () -> "closed: " + point);
    }
    List<Position> places = new ArrayList<>();
    boolean waits = false;
    for (TrackPoint point : path.groundTrack().points()) {
      boolean stays = !places.isEmpty() && places.get(places.size() - 1).equals(point.position());
      waits |= stays;
      if (!stays) {
        places.add(point.position());
      }
    }
    if (!waits) {
      SteeredRoute held =
          sea.solver()
              .withStrategy(Strategy.trackHeld())
              .solve(Route.ofRhumbLegs(places.toArray(new Position[0])), DEPARTURE)
              .orElseThrow();
      assertEquals(path.arrivalSeconds(), held.arrivalSeconds(), 1.0);
    }
  }

  @Property(seed = Seeds.SEED, tries = 2 * Seeds.MORE_IN_THE_SOAK)
  void theMirroredSeaTakesAsLong(@ForAll int seed) {
    double one = seconds(new Sea(seed, false).path().orElseThrow());
    double other = seconds(new Sea(seed, true).path().orElseThrow());
    assertEquals(one, other, SETTLED_SHARE * one);
  }
}
