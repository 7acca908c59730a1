package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Streams that vary from place to place: eddies a few miles across that turn with the tide. */
class StreamsByPlaceTest {
  private static final double PROMISED_METRES = 0.1;
  private static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");
  private static final double NOON_SECONDS = EpochSeconds.of(NOON);
  private static final double KNOT = Speed.METRES_PER_SECOND_PER_KNOT;

  /** Eddies around 50°N 4°W, of up to about so many knots. */
  private static StreamField eddies(Random random, double knots) {
    double a = random.nextDouble() * knots * KNOT;
    double b = random.nextDouble() * knots * KNOT;
    double size = 1.0 + 3.0 * random.nextDouble();
    double phase = 6.0 * random.nextDouble();
    return (latitude, longitude, time, out, offset) -> {
      double x = (longitude + 4.0) * 38.6 / size;
      double y = (latitude - 50.0) * 60.0 / size;
      double tide = 2.0 * Math.PI * time / 44712.0;
      out[offset] = a * Math.cos(tide + phase) * Math.cos(y) + b * Math.sin(x) * Math.cos(tide);
      out[offset + 1] = b * Math.cos(tide + phase) * Math.cos(x) - a * Math.sin(y) * Math.sin(tide);
      return true;
    };
  }

  private static RhumbLeg leg(Random random, double miles) {
    return RhumbLeg.from(
        Position.ofDegrees(50, -4),
        TrueBearing.ofDegrees(360.0 * random.nextDouble()),
        Distance.ofNauticalMiles(1.0 + miles * random.nextDouble()));
  }

  @TestFactory
  List<DynamicTest> theEndIsHitAmongEddies() {
    return new Random(7)
        .ints(10)
        .mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () -> hits(new Random(seed))))
        .toList();
  }

  private static void hits(Random random) {
    StreamField eddies = eddies(random, 1.8);
    RhumbLeg leg = leg(random, 8.0);
    CourseToSteer solver =
        CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3.3)), eddies)
            .withLimits(SteeringLimits.NONE);
    for (Strategy strategy :
        List.of(Strategy.constantHeading(), Strategy.newHeadingEvery(Duration.ofMinutes(40)))) {
      SteeredLeg steered = solver.withStrategy(strategy).solve(leg, NOON).orElseThrow();
      SlowFollower slow = new SlowFollower(50, -4, NOON_SECONDS);
      List<TrackPoint> headings = steered.headings();
      for (int i = 0; i < headings.size(); i++) {
        Instant until = i + 1 < headings.size() ? headings.get(i + 1).time() : steered.arrival();
        slow.follow(
            headings.get(i).heading().degrees(), 3.3 * KNOT, eddies, EpochSeconds.of(until));
      }
      assertEquals(
          0.0,
          slow.metresFrom(leg.end().latitudeDegrees(), leg.end().longitudeDegrees()),
          PROMISED_METRES,
          strategy.words());
      // what is told of the track half way is where the slow follower is
      Instant half = NOON.plus(steered.duration().dividedBy(2));
      if (headings.size() == 1) {
        SlowFollower halfWay = new SlowFollower(50, -4, NOON_SECONDS);
        halfWay.follow(
            headings.get(0).heading().degrees(), 3.3 * KNOT, eddies, EpochSeconds.of(half));
        Position told = steered.groundTrack().at(half);
        assertEquals(
            0.0,
            halfWay.metresFrom(told.latitudeDegrees(), told.longitudeDegrees()),
            1.0,
            "half way");
      }
    }
  }

  /** The nearest of five tables, so that the stream jumps where the nearest changes. */
  private static StreamField nearest(Random random) {
    int tables = 5;
    double[] latitude = new double[tables];
    double[] longitude = new double[tables];
    HourlyStream[] streams = new HourlyStream[tables];
    for (int i = 0; i < tables; i++) {
      latitude[i] = 50.0 + 0.05 * random.nextGaussian();
      longitude[i] = -4.0 + 0.08 * random.nextGaussian();
      double rate = 2.5 * random.nextDouble();
      double set = 6.0 * random.nextDouble();
      double phase = 6.0 * random.nextDouble();
      double[] east = new double[30];
      double[] north = new double[30];
      for (int k = 0; k < 30; k++) {
        east[k] = rate * Math.cos(0.5 * k + phase) * Math.sin(set);
        north[k] = rate * Math.cos(0.5 * k + phase) * Math.cos(set);
      }
      streams[i] = HourlyStream.lines(NOON_SECONDS - 3600, east, north);
    }
    return new StreamField() {
      @Override
      public boolean sample(double lat, double lon, double time, double[] out, int offset) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < tables; i++) {
          double north = lat - latitude[i];
          double east = 0.64 * (lon - longitude[i]);
          if (north * north + east * east < least) {
            least = north * north + east * east;
            best = i;
          }
        }
        return streams[best].sample(lat, lon, time, out, offset);
      }

      @Override
      public double nextBreakAfter(double time) {
        return streams[0].nextBreakAfter(time);
      }
    };
  }

  @TestFactory
  List<DynamicTest> theEndIsHitThroughAStreamThatJumps() {
    return new Random(5)
        .ints(12)
        .mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () -> jumps(new Random(seed))))
        .toList();
  }

  private static void jumps(Random random) {
    StreamField nearest = nearest(random);
    RhumbLeg leg = leg(random, 6.0);
    Outcome<SteeredLeg, NotPossible> outcome =
        CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3.3)), nearest)
            .withLimits(SteeringLimits.NONE)
            .solve(leg, NOON);
    if (!outcome.isSolved()) { // no one heading leads there past the jumps
      NotPossible why = outcome.why().orElseThrow();
      assertEquals(Reason.BEYOND_HORIZON, why.reason());
      assertTrue(why.shortBy().isEmpty());
      return;
    }
    SteeredLeg steered = outcome.orElseThrow();
    SlowFollower slow = new SlowFollower(50, -4, NOON_SECONDS);
    slow.stepSeconds = 0.05;
    slow.follow(
        steered.courseToSteer().degrees(), 3.3 * KNOT, nearest, EpochSeconds.of(steered.arrival()));
    assertEquals(
        0.0,
        slow.metresFrom(leg.end().latitudeDegrees(), leg.end().longitudeDegrees()),
        PROMISED_METRES);
  }

  /**
   * Every half degree of heading followed in the plane in steps of 20 seconds, for the first time
   * at which the target lies between neighbours. The streams outrun the craft.
   */
  @TestFactory
  List<DynamicTest> theEarliestOfSeveralIsFoundAsABruteSearchFindsIt() {
    return new Random(11)
        .ints(8)
        .mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () -> earliest(new Random(seed))))
        .toList();
  }

  private static void earliest(Random random) {
    StreamField eddies = eddies(random, 4.0);
    RhumbLeg leg = leg(random, 6.0);
    double knots = 2.5 + random.nextDouble();
    Outcome<SteeredLeg, NotPossible> outcome =
        CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(knots)), eddies)
            .withLimits(SteeringLimits.NONE)
            .withLongestDuration(Duration.ofHours(8))
            .solve(leg, NOON);
    double brute = brute(eddies, knots * KNOT, leg.end());
    if (brute < 7.5 * 3600) {
      double solved = outcome.orElseThrow().duration().toMillis() / 1000.0;
      assertEquals(brute, solved, 80.0); // four steps of the search
    } else if (outcome.isSolved()) {
      assertTrue(outcome.orElseThrow().duration().toHours() >= 7);
    }
  }

  private static double brute(StreamField stream, double speed, Position target) {
    int headings = 720;
    double step = 20.0;
    double[] flow = new double[2];
    double[] east = new double[headings];
    double[] north = new double[headings];
    double meridian = Ellipsoid.WGS84.meridianRadiusMetres(50);
    double vertical = Ellipsoid.WGS84.primeVerticalRadiusMetres(50);
    double[] latitude = new double[headings];
    double[] longitude = new double[headings];
    Arrays.fill(latitude, 50.0);
    Arrays.fill(longitude, -4.0);
    double[] beforeEast = new double[headings];
    double[] beforeNorth = new double[headings];
    for (int i = 0; i < 8 * 3600 / step; i++) {
      for (int h = 0; h < headings; h++) {
        double heading = 2.0 * Math.PI * h / headings;
        beforeEast[h] = east[h];
        beforeNorth[h] = north[h];
        stream.sample(latitude[h], longitude[h], NOON_SECONDS + (i + 0.5) * step, flow, 0);
        latitude[h] += Math.toDegrees((flow[1] + speed * Math.cos(heading)) * step / meridian);
        double parallel = vertical * Math.cos(Math.toRadians(latitude[h]));
        longitude[h] += Math.toDegrees((flow[0] + speed * Math.sin(heading)) * step / parallel);
        north[h] = Math.toRadians(latitude[h] - target.latitudeDegrees()) * meridian;
        east[h] = Math.toRadians(longitude[h] - target.longitudeDegrees()) * parallel;
      }
      for (int h = 0; i > 0 && h < headings; h++) {
        int g = (h + 1) % headings;
        if (holds(beforeEast[h], beforeNorth[h], beforeEast[g], beforeNorth[g], east[g], north[g])
            || holds(beforeEast[h], beforeNorth[h], east[g], north[g], east[h], north[h])) {
          return i * step;
        }
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Whether a triangle holds the origin. */
  private static boolean holds(double ax, double ay, double bx, double by, double cx, double cy) {
    double a = ax * by - bx * ay;
    double b = bx * cy - cx * by;
    double c = cx * ay - ax * cy;
    return (a >= 0 && b >= 0 && c >= 0) || (a <= 0 && b <= 0 && c <= 0);
  }

  @Test
  void answersGoThroughSerialization() throws IOException, ClassNotFoundException {
    Random random = new Random(3);
    CourseToSteer solver =
        CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3.3)), eddies(random, 1.5));
    Outcome<SteeredRoute, NotPossible> solved =
        solver.solve(Route.of(List.of(leg(random, 4.0))), NOON);
    Outcome<SteeredRoute, NotPossible> not =
        solver
            .withLongestDuration(Duration.ofMinutes(1))
            .solve(Route.of(List.of(leg(random, 4.0))), NOON);
    for (Outcome<SteeredRoute, NotPossible> outcome : List.of(solved, not)) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
        out.writeObject(outcome);
      }
      try (ObjectInputStream in =
          new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
        assertEquals(outcome, in.readObject());
      }
    }
    assertEquals(Reason.BEYOND_HORIZON, not.why().orElseThrow().reason());
  }
}
