package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.testing.Seeds;

/**
 * A passage recomputed by a slow path of its own: vectors added up second by second on degrees of
 * the WGS84 ellipsoid, with a stream, a level and distances that share no code with the library.
 */
class SlowPathProperties {
  private static final double A = 6378137.0;
  private static final double E2 = 0.00669437999014;
  private static final double KNOT = 1852.0 / 3600.0;

  /** The heading is held; a second's step of the middle point rule adds up to centimetres. */
  private static final double ARRIVAL_METRES = 2.0;

  /** A parabola between looks a minute apart against looks a second apart. */
  private static final double RATE_PART = 2e-3;

  /** Plane distances against each other, a few miles off. */
  private static final double CLEARANCE_METRES = 3.0;

  /** Everything drawn for one passage. */
  private record World(
      double latitude,
      double longitude,
      double knots,
      double rate,
      double set,
      double phase,
      double gradient,
      double[] east,
      double[] north,
      double rockEast,
      double rockNorth) {

    static World of(Random random) {
      double[] east = new double[4];
      double[] north = new double[4];
      double direction = 2.0 * Math.PI * random.nextDouble();
      for (int i = 1; i < 4; i++) {
        double length = 1500.0 + 4000.0 * random.nextDouble();
        direction += random.nextDouble() - 0.5;
        east[i] = east[i - 1] + length * Math.sin(direction);
        north[i] = north[i - 1] + length * Math.cos(direction);
      }
      return new World(
          -70.0 + 140.0 * random.nextDouble(),
          random.nextInt(4) == 0 ? 179.95 : -180.0 + 360.0 * random.nextDouble(),
          2.5 + 2.0 * random.nextDouble(),
          1.8 * random.nextDouble(),
          360.0 * random.nextDouble(),
          random.nextDouble(),
          1e-5 * (random.nextDouble() - 0.5),
          east,
          north,
          6000.0 * (random.nextDouble() - 0.5),
          6000.0 * (random.nextDouble() - 0.5));
    }

    double metresNorth(double lat) {
      double w = 1.0 - E2 * Math.pow(Math.sin(Math.toRadians(lat)), 2);
      return A * (1.0 - E2) / Math.pow(w, 1.5) * Math.PI / 180.0;
    }

    double metresEast(double lat) {
      double w = 1.0 - E2 * Math.pow(Math.sin(Math.toRadians(lat)), 2);
      return A / Math.sqrt(w) * Math.cos(Math.toRadians(lat)) * Math.PI / 180.0;
    }

    Position place(double e, double n) {
      return Position.ofDegrees(
          latitude + n / metresNorth(latitude),
          Candidate.longitude(longitude + e / metresEast(latitude)));
    }

    /** Rate to the set, metres a second: turns with the tide and grows to one side. */
    double along(double lat, double seconds) {
      double tide =
          Math.cos(
              2.0
                  * Math.PI
                  * ((seconds - Scenes.NOON.getEpochSecond()) / Scenes.TIDE_SECONDS + phase));
      return rate * KNOT * tide * (1.0 + gradient * (lat - latitude) * 111_000.0);
    }
  }

  private static Passage passage(World world) {
    double sine = Math.sin(Math.toRadians(world.set));
    double cosine = Math.cos(Math.toRadians(world.set));
    PassageBuilder builder =
        Passage.builder(
                "drawn", ZoneOffset.UTC, Party.of(Craft.ofSpeed(Speed.ofKnots(world.knots))))
            .from(WayPoint.of("A", world.place(0.0, 0.0)))
            .stream(
                (lat, lon, seconds, out, offset) -> {
                  double along = world.along(lat, seconds);
                  out[offset] = along * sine;
                  out[offset + 1] = along * cosine;
                  return true;
                })
            .errors(ErrorModel.none())
            .dangers(
                List.of(
                    Danger.point(
                        "Rock",
                        world.place(world.rockEast, world.rockNorth),
                        Distance.ofMetres(300))))
            .limits(PassageLimits.none().withStream(Speed.ofKnots(9), Speed.ofKnots(10)));
    for (int i = 1; i < 4; i++) {
      builder.to(WayPoint.of("W" + i, world.place(world.east[i], world.north[i])));
    }
    return builder.build();
  }

  @Property(seed = Seeds.SEED, tries = 60)
  void secondBySecondThePartyComesToTheSamePlacesAndChecks(@ForAll Random random) {
    World world = World.of(random);
    Instant departure = Scenes.NOON.plusSeconds(random.nextInt(86_400));
    TimedPlan plan = TimedPlan.of(passage(world), departure).solved().orElse(null);
    if (plan == null) {
      return; // the stream outruns the party: nothing to follow, and rare at these rates
    }
    double fastest = 0.0;
    double clear = Double.POSITIVE_INFINITY;
    Position rock = world.place(world.rockEast, world.rockNorth);
    for (PlannedLeg leg : plan.legs()) {
      double lat = leg.leg().from().position().latitudeDegrees();
      double lon = leg.leg().from().position().longitudeDegrees();
      double heading = Math.toRadians(leg.heading().degrees());
      double time = leg.departure().toEpochMilli() / 1000.0;
      double end = leg.arrival().toEpochMilli() / 1000.0;
      while (time < end) {
        double dt = Math.min(1.0, end - time);
        double stream = world.along(lat, time + 0.5 * dt);
        fastest = Math.max(fastest, Math.abs(world.along(lat, time)) / KNOT);
        double n = rock.latitudeDegrees() - lat;
        double e = Math.IEEEremainder(rock.longitudeDegrees() - lon, 360.0);
        clear = Math.min(clear, Math.hypot(n * world.metresNorth(lat), e * world.metresEast(lat)));
        double set = Math.toRadians(world.set);
        double speed = world.knots * KNOT;
        lat += (speed * Math.cos(heading) + stream * Math.cos(set)) * dt / world.metresNorth(lat);
        lon += (speed * Math.sin(heading) + stream * Math.sin(set)) * dt / world.metresEast(lat);
        time += dt;
      }
      Position goal = leg.leg().to().position();
      double missed =
          Math.hypot(
              (goal.latitudeDegrees() - lat) * world.metresNorth(lat),
              Math.IEEEremainder(goal.longitudeDegrees() - lon, 360.0) * world.metresEast(lat));
      assertTrue(missed < ARRIVAL_METRES, () -> leg + " missed by " + missed + " m");
    }
    Verdict stream = found(plan, "stream: ");
    double told = stream.figure().orElseThrow();
    assertEquals(1.25 * fastest, told, RATE_PART * told + 1e-3);
    Verdict danger = found(plan, "Rock");
    assertEquals(clear - 300.0, danger.figure().orElseThrow(), CLEARANCE_METRES);
  }

  private static Verdict found(TimedPlan plan, String name) {
    return plan.verdicts().stream()
        .filter(verdict -> verdict.reason().startsWith(name))
        .findFirst()
        .orElseThrow();
  }
}
