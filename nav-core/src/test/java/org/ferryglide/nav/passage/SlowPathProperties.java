package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
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
import org.ferryglide.nav.steer.WindResponse;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.testing.Seeds;

/**
 * A passage recomputed by a slow path of its own: vectors added up second by second on degrees of
 * the WGS84 ellipsoid, with a stream, a wind, a stop, a lane and distances that share no code with
 * the library.
 */
class SlowPathProperties {
  private static final double A = 6378137.0; // WGS84, NIMA TR8350.2 (2000), table 3.1
  private static final double E2 = 0.00669437999014;
  private static final double KNOT = 1852.0 / 3600.0;

  /** The heading is held; a second's step of the middle point rule adds up to centimetres. */
  private static final double ARRIVAL_METRES = 2.0;

  /** A parabola between looks a minute apart against looks a second apart. */
  private static final double RATE_PART = 2e-3;

  /** Plane distances against each other, a few miles off. */
  private static final double CLEARANCE_METRES = 3.0;

  private static final double LANE_HALF_WIDTH_METRES = 200.0;

  /** Bearings in the plane at one end of a lane of a mile against one at its middle, at 70°. */
  private static final double LANE_DEGREES = 0.05;

  /** Minutes inside are begun ones, by looks five seconds apart at both edges. */
  private static final double INSIDE_SECONDS = 70.0;

  private static final Duration ASHORE = Duration.ofMinutes(20);
  private static final Duration LAUNCHING = Duration.ofMinutes(15);
  private static final Duration LANDING = Duration.ofMinutes(10);

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
      double rockNorth,
      double windKnots,
      double windTo,
      double drift,
      double laneTurn) {

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
          6000.0 * (random.nextDouble() - 0.5),
          12.0 * random.nextDouble(),
          360.0 * random.nextDouble(),
          0.03 * random.nextDouble(),
          60.0 * random.nextDouble() - 30.0);
    }

    World withKnots(double other) {
      return new World(
          latitude, longitude, other, rate, set, phase, gradient, east, north, rockEast, rockNorth,
          windKnots, windTo, drift, laneTurn);
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

    /** Where the wind goes, east and north, metres a second: it freshens and backs by the clock. */
    double[] wind(double seconds) {
      double turn = 2.0 * Math.PI * (seconds - Scenes.NOON.getEpochSecond()) / 40_000.0;
      double speed = windKnots * KNOT * (1.0 + 0.3 * Math.sin(turn));
      double to = Math.toRadians(windTo + 30.0 * Math.cos(turn));
      return new double[] {speed * Math.sin(to), speed * Math.cos(to)};
    }

    /** The ends of a lane across the middle of the last leg. */
    Position[] lane() {
      double e = 0.5 * (east[2] + east[3]);
      double n = 0.5 * (north[2] + north[3]);
      double to =
          Math.atan2(east[3] - east[2], north[3] - north[2]) + Math.toRadians(90.0 + laneTurn);
      double dx = 900.0 * Math.sin(to);
      double dy = 900.0 * Math.cos(to);
      return new Position[] {place(e - dx, n - dy), place(e + dx, n + dy)};
    }
  }

  /** One party paddled second by second along printed headings. */
  private static final class Paddled {
    private final World world;
    private final Position rock;
    private double lat;
    private double lon;
    private double fastest;
    private double windiest;
    private double clear = Double.POSITIVE_INFINITY;
    private double nearestToLane = Double.POSITIVE_INFINITY;
    private double insideSeconds;
    private double worstOff;

    Paddled(World world) {
      this.world = world;
      rock = world.place(world.rockEast, world.rockNorth);
    }

    /** Along a leg; how far from its end, metres. */
    double missed(PlannedLeg leg) {
      lat = leg.leg().from().position().latitudeDegrees();
      lon = leg.leg().from().position().longitudeDegrees();
      double heading = leg.heading().degrees();
      double sine = Math.sin(Math.toRadians(heading));
      double cosine = Math.cos(Math.toRadians(heading));
      double time = leg.departure().toEpochMilli() / 1000.0;
      double end = leg.arrival().toEpochMilli() / 1000.0;
      double set = Math.toRadians(world.set);
      while (time < end) {
        double dt = Math.min(1.0, end - time);
        double stream = world.along(lat, time + 0.5 * dt);
        look(time, dt, heading);
        double[] wind = world.wind(time + 0.5 * dt);
        double speed = world.knots * KNOT;
        double still = 1.0 - world.drift; // the wind drives the boat over the moving water
        double east = speed * sine + still * stream * Math.sin(set) + world.drift * wind[0];
        double north = speed * cosine + still * stream * Math.cos(set) + world.drift * wind[1];
        lat += north * dt / world.metresNorth(lat);
        lon += east * dt / world.metresEast(lat);
        time += dt;
      }
      return off(leg.leg().to().position());
    }

    private double off(Position there) {
      return Math.hypot(
          (there.latitudeDegrees() - lat) * world.metresNorth(lat),
          Math.IEEEremainder(there.longitudeDegrees() - lon, 360.0) * world.metresEast(lat));
    }

    private void look(double time, double dt, double heading) {
      fastest = Math.max(fastest, Math.abs(world.along(lat, time)) / KNOT);
      double[] wind = world.wind(time);
      windiest = Math.max(windiest, Math.hypot(wind[0], wind[1]) / KNOT);
      clear = Math.min(clear, off(rock));
      double[] lane = toLane();
      nearestToLane = Math.min(nearestToLane, lane[0]);
      if (lane[0] <= LANE_HALF_WIDTH_METRES) {
        insideSeconds += dt;
        double between = Math.abs(Math.IEEEremainder(heading - lane[1], 180.0));
        worstOff = Math.max(worstOff, 90.0 - between);
      }
    }

    /** Metres to the middle line of the lane, and its direction in degrees, in the plane. */
    private double[] toLane() {
      Position[] ends = world.lane();
      double[] x = new double[2];
      double[] y = new double[2];
      for (int i = 0; i < 2; i++) {
        x[i] = Math.IEEEremainder(ends[i].longitudeDegrees() - lon, 360.0) * world.metresEast(lat);
        y[i] = (ends[i].latitudeDegrees() - lat) * world.metresNorth(lat);
      }
      double dx = x[1] - x[0];
      double dy = y[1] - y[0];
      double part = -(x[0] * dx + y[0] * dy) / (dx * dx + dy * dy);
      part = Math.max(0.0, Math.min(1.0, part));
      return new double[] {
        Math.hypot(x[0] + part * dx, y[0] + part * dy), Math.toDegrees(Math.atan2(dx, dy))
      };
    }
  }

  private static Passage passage(World world) {
    double sine = Math.sin(Math.toRadians(world.set));
    double cosine = Math.cos(Math.toRadians(world.set));
    PassageBuilder builder =
        Passage.builder(
                "drawn",
                ZoneOffset.UTC,
                Party.of(
                        Craft.ofSpeed(Speed.ofKnots(world.knots))
                            .withWindResponse(WindResponse.none().withDrift(world.drift)))
                    .withLaunching(LAUNCHING)
                    .withLanding(LANDING))
            .from(WayPoint.of("A", world.place(0.0, 0.0)))
            .stream(
                (lat, lon, seconds, out, offset) -> {
                  double along = world.along(lat, seconds);
                  out[offset] = along * sine;
                  out[offset + 1] = along * cosine;
                  return true;
                })
            .wind(
                (lat, lon, seconds, out, offset) -> {
                  double[] wind = world.wind(seconds);
                  out[offset] = wind[0];
                  out[offset + 1] = wind[1];
                  return true;
                })
            .lanes(
                List.of(
                    Lane.along(
                        "Lane",
                        List.of(world.lane()),
                        Distance.ofMetres(2.0 * LANE_HALF_WIDTH_METRES))))
            .errors(ErrorModel.none())
            .dangers(
                List.of(
                    Danger.point(
                        "Rock",
                        world.place(world.rockEast, world.rockNorth),
                        Distance.ofMetres(300))))
            .limits(
                PassageLimits.none()
                    .withStream(Speed.ofKnots(9), Speed.ofKnots(10))
                    .withWind(Speed.ofKnots(30), Speed.ofKnots(40))
                    .withLaneAngle(45.0, 80.0));
    for (int i = 1; i < 4; i++) {
      WayPoint place = WayPoint.of("W" + i, world.place(world.east[i], world.north[i]));
      builder.to(i == 1 ? place.withStop(Stop.ashore(ASHORE)) : place);
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
    Paddled party = paddled(world, plan);
    Instant again = plan.legs().get(0).arrival().plus(LANDING).plus(ASHORE).plus(LAUNCHING);
    assertEquals(0.0, seconds(again, plan.legs().get(1).departure()), 1e-3);
    assertEquals(0.0, seconds(plan.legs().get(1).arrival(), plan.legs().get(2).departure()), 1e-3);
    Verdict stream = found(plan, "stream: ");
    double told = stream.figure().orElseThrow();
    assertEquals(1.25 * party.fastest, told, RATE_PART * told + 1e-3);
    double wind = found(plan, "wind: ").figure().orElseThrow();
    assertEquals(party.windiest, wind, RATE_PART * wind + 1e-3);
    Verdict danger = found(plan, "Rock");
    assertEquals(party.clear - 300.0, danger.figure().orElseThrow(), CLEARANCE_METRES);
    lane(world, plan, party);
  }

  private static Paddled paddled(World world, TimedPlan plan) {
    Paddled party = new Paddled(world);
    for (PlannedLeg leg : plan.legs()) {
      double missed = party.missed(leg);
      assertTrue(missed < ARRIVAL_METRES, () -> leg + " missed by " + missed + " m");
    }
    return party;
  }

  /** The angle as planned, the minutes of the slower party. */
  private static void lane(World world, TimedPlan plan, Paddled party) {
    Verdict verdict = found(plan, "crossing Lane");
    if (Math.abs(party.nearestToLane - LANE_HALF_WIDTH_METRES) < CLEARANCE_METRES) {
      return; // along its edge
    }
    if (party.nearestToLane > LANE_HALF_WIDTH_METRES) {
      assertFalse(verdict.figure().isPresent(), verdict::reason);
      return;
    }
    assertEquals(party.worstOff, verdict.figure().orElseThrow(), LANE_DEGREES);
    TimedPlan slow = TimedPlan.of(plan.passage().slower(), plan.departure()).solved().orElse(null);
    if (slow != null) {
      World slower = world.withKnots(plan.passage().party().slowerSpeed().knots());
      double minutes = Double.parseDouble(verdict.note().data().get("insideMinutes"));
      assertEquals(paddled(slower, slow).insideSeconds, 60.0 * minutes, INSIDE_SECONDS);
    }
  }

  private static double seconds(Instant from, Instant until) {
    return Duration.between(from, until).toNanos() / 1e9;
  }

  private static Verdict found(TimedPlan plan, String name) {
    return plan.verdicts().stream()
        .filter(verdict -> verdict.reason().startsWith(name))
        .findFirst()
        .orElseThrow();
  }
}
