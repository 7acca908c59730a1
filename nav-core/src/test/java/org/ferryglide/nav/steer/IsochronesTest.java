package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IsochronesTest {
  private static final Instant NOON = Instant.parse("2026-06-14T12:00:00Z");
  private static final Duration TWO_HOURS = Duration.ofHours(2);
  private static final double SPEED = 1.5;

  /**
   * How late corners of a line may be in a uniform stream: their time is met to 0.002 %, and the
   * patch is not quite plane; 0.0031 % at most here.
   */
  private static final double LATE_CORNER = 5e-5;

  /** How early: not at all but for rounding, since a timed track leads to each. */
  private static final double EARLY_CORNER = 1e-6;

  /** How late the time of any place may be in a uniform stream, as the javadoc says. */
  private static final double LATE = 4e-4;

  /**
   * How late the reach out may be in the tide below against the quickest path, and the reach out
   * from the reach back; 0.15 % and 0.07 % at most at 20 places.
   */
  private static final double LATE_IN_A_TIDE = 0.003;

  /** How much less far the line may lie where streams of several craft speeds carry it. */
  private static final double LATE_IN_A_TORRENT = 0.001;

  /** So much earlier than its own estimate a path may be steered, or later. */
  private static final double STEERED = 2e-4;

  /** Nearer the place than so many squares of the grid its times are rougher. */
  private static final double FEW_SQUARES = 4.0;

  /** The patch is not quite plane. */
  private static final double PLANE = 1e-4;

  private static CourseToSteer solver(StreamField stream) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofMetresPerSecond(SPEED)), stream)
        .withStrategy(Strategy.quickest());
  }

  @Test
  void inStillWaterTheLinesAreCircles() {
    Position start = Position.ofDegrees(46, -26);
    Isochrones out = Isochrones.from(solver(StreamField.slack()), start, NOON, TWO_HOURS);
    for (int minutes = 40; minutes <= 120; minutes += 10) {
      List<List<Position>> lines = out.lineAt(NOON.plus(Duration.ofMinutes(minutes)));
      assertEquals(1, lines.size());
      double radius = 60.0 * minutes * SPEED;
      assertTrue(lines.get(0).size() > 60);
      for (Position corner : lines.get(0)) {
        double metres = GeodesicLeg.between(start, corner).length().metres();
        assertTrue(
            metres <= radius * (1.0 + EARLY_CORNER) && metres >= radius * (1.0 - LATE_CORNER),
            minutes + " min: " + metres + " m");
      }
    }
    assertTrue(out.lineAt(NOON.plus(TWO_HOURS).plusSeconds(1)).isEmpty());
    assertTrue(out.lineAt(NOON).isEmpty());
    CourseToSteer solver = solver(StreamField.slack());
    Instant end = NOON.plus(TWO_HOURS);
    assertEquals(out.lineAt(end), solver.isochrone(start, NOON, end));
    assertEquals(1, solver.reachBack(start, end, NOON).size());
  }

  /** Doubles hold no instant with a fraction of a second exactly; the last line is there alike. */
  @Test
  void theLastLineIsThereWhateverTheFractionsOfASecond() {
    CourseToSteer solver = solver(StreamField.slack());
    Position place = Position.ofDegrees(46, -26);
    Random random = new Random(20261127);
    for (int i = 0; i < 6; i++) {
      int resolution = i % 2 == 0 ? 1_000_000 : 1; // milliseconds and nanoseconds
      Instant early = NOON.plusNanos((long) resolution * random.nextInt(3_600_000));
      Instant late = early.plusSeconds(3600).plusNanos((long) resolution * random.nextInt(1000));
      assertEquals(1, solver.isochrone(place, early, late).size(), early + " to " + late);
      assertEquals(1, solver.reachBack(place, late, early).size(), early + " to " + late);
    }
  }

  @Test
  void aSteadyStreamCarriesTheCircleAlong() {
    StreamField east = StreamField.steady(Velocity.ofEastAndNorth(0.9, 0.0));
    Isochrones out = Isochrones.from(solver(east), PlanePatch.at(0, 0), NOON, TWO_HOURS);
    for (int seconds = 2400; seconds <= 7200; seconds += 800) {
      List<List<Position>> lines = out.lineAt(NOON.plusSeconds(seconds));
      assertEquals(1, lines.size());
      double radius = seconds * SPEED / PlanePatch.UNIT_METRES;
      for (Position corner : lines.get(0)) {
        double x = PlanePatch.x(corner.longitudeDegrees()) - 0.9 * seconds / PlanePatch.UNIT_METRES;
        double y = PlanePatch.y(corner.latitudeDegrees());
        double share = Math.hypot(x, y) / radius;
        assertTrue(
            share < 1.0 + EARLY_CORNER && share > 1.0 - LATE_CORNER, seconds + " s: " + share);
      }
    }
  }

  /** From a third of the way on, at random places, against the circle that is carried along. */
  @ParameterizedTest
  @CsvSource({"0.0", "0.9", "1.2", "1.35"})
  void timesInAUniformStreamAreAsLateAsPromised(double stream) {
    Isochrones out =
        Isochrones.from(
            solver(StreamField.steady(Velocity.ofEastAndNorth(stream, 0.0))),
            PlanePatch.at(0, 0),
            NOON,
            TWO_HOURS);
    Random random = new Random(20261126);
    double end = 7200.0 / (1.0 + LATE);
    double square = 1.6 * 1.6 * SPEED * 7.2 / 100.0; // the area once widened
    int looks = 0;
    for (int i = 0; i < 1000; i++) {
      double seconds = 2400.0 + (end - 2400.0) * random.nextDouble();
      double heading = 2.0 * Math.PI * random.nextDouble();
      double x = seconds * (stream + SPEED * Math.cos(heading)) / PlanePatch.UNIT_METRES;
      double y = seconds * SPEED * Math.sin(heading) / PlanePatch.UNIT_METRES;
      if (Math.hypot(x, y) < FEW_SQUARES * square) {
        continue; // so near the place they are rougher
      }
      double share = seconds(NOON, out.timeAt(PlanePatch.at(x, y)).orElseThrow()) / seconds - 1.0;
      assertTrue(share > -PLANE && share < LATE, x + ", " + y + ": " + share);
      looks++;
    }
    assertTrue(looks > 500, looks + " places");
  }

  private static final StreamField TIDE =
      (latitude, longitude, seconds, out, offset) -> {
        out[offset] = 0.8 * Math.sin(seconds / 7000.0) * Math.cos(PlanePatch.y(latitude) / 4);
        out[offset + 1] = 0.3 * Math.cos(seconds / 7000.0);
        return true;
      };

  private static double seconds(Instant from, Instant until) {
    return Duration.between(from, until).toMillis() / 1e3;
  }

  /** At random places, out by the quickest path itself, and back again by the reach back. */
  @Test
  void inATideReachesAgreeWithTheQuickestPathAndWithEachOther() {
    Position middle = PlanePatch.at(0, 0);
    CourseToSteer solver = solver(TIDE).withLimits(SteeringLimits.NONE);
    Isochrones out = Isochrones.from(solver, middle, NOON, Duration.ofHours(3));
    Isochrones home = Isochrones.backFrom(solver, middle, NOON, Duration.ofHours(3));
    Random random = new Random(20261126);
    for (int i = 0; i < 10 * Seeds.MORE_IN_THE_SOAK; i++) {
      double angle = 2.0 * Math.PI * random.nextDouble();
      double away = 3.5 + 4.5 * random.nextDouble();
      Position place = PlanePatch.at(away * Math.cos(angle), away * Math.sin(angle));
      Instant quickest =
          solver.solve(GeodesicLeg.between(middle, place), NOON).orElseThrow().arrival();
      double takes = seconds(NOON, quickest);
      double late = seconds(NOON, out.timeAt(place).orElseThrow()) / takes - 1.0;
      assertTrue(late > -STEERED && late < LATE_IN_A_TIDE, "out: " + late);
      Instant leave = home.timeAt(place).orElseThrow();
      Instant back =
          Isochrones.from(solver, place, leave, Duration.ofHours(4)).timeAt(middle).orElseThrow();
      double allowed = seconds(leave, NOON);
      assertEquals(allowed, seconds(leave, back), LATE_IN_A_TIDE * allowed);
    }
  }

  /** The reach back is the reach out in the stream that runs the other way. */
  @Test
  void theReachBackTellsTheLatestDeparture() {
    StreamField east = StreamField.steady(Velocity.ofEastAndNorth(0.9, 0.0));
    Position goal = PlanePatch.at(0, 0);
    Isochrones home = Isochrones.backFrom(solver(east), goal, NOON, TWO_HOURS);
    double upStreamSeconds =
        Duration.between(home.timeAt(PlanePatch.at(-9.6, 0)).orElseThrow(), NOON).toMillis() / 1e3;
    assertEquals(9600.0 / 2.4, upStreamSeconds, 4000.0 * LATE);
    double downStreamSeconds =
        Duration.between(home.timeAt(PlanePatch.at(2.4, 0)).orElseThrow(), NOON).toMillis() / 1e3;
    assertEquals(2400.0 / 0.6, downStreamSeconds, 4000.0 * LATE);
    assertEquals(Optional.empty(), home.timeAt(PlanePatch.at(6, 0)));
  }

  /** In a stream that turns, from where the reach back says the goal is made in time. */
  @Test
  void whoLeavesByTheReachBackIsInTime() {
    Position goal = PlanePatch.at(0, 0);
    Isochrones home = Isochrones.backFrom(solver(TIDE), goal, NOON, Duration.ofHours(3));
    for (double[] place : new double[][] {{6, 2}, {-5, 3}, {1, -7}, {-3, -6}}) {
      Position from = PlanePatch.at(place[0], place[1]);
      Instant leave = home.timeAt(from).orElseThrow();
      Instant arrival =
          solver(TIDE)
              .withLimits(SteeringLimits.NONE)
              .solve(GeodesicLeg.between(from, goal), leave)
              .orElseThrow()
              .arrival();
      double spare = Duration.between(arrival, NOON).toMillis() / 1e3;
      double takes = Duration.between(leave, NOON).toMillis() / 1e3;
      assertTrue(spare > -STEERED * takes && spare < LATE_IN_A_TIDE * takes, spare + " s to spare");
    }
  }

  private static List<Position> box(double west, double south, double east, double north) {
    return List.of(
        PlanePatch.at(west, south),
        PlanePatch.at(east, south),
        PlanePatch.at(east, north),
        PlanePatch.at(west, north));
  }

  /** The same box turned about the origin by quarters. */
  private static List<Position> box(double[] sides, int quarters) {
    double[] s = sides;
    for (int i = 0; i < quarters; i++) {
      s = new double[] {-s[3], s[0], -s[1], s[2]};
    }
    return box(s[0], s[1], s[2], s[3]);
  }

  /** By how often rays to the east cross the lines. */
  private static boolean isWithin(List<List<Position>> lines, double x, double y) {
    boolean within = false;
    for (List<Position> line : lines) {
      for (int i = 0, j = line.size() - 1; i < line.size(); j = i++) {
        double x0 = PlanePatch.x(line.get(j).longitudeDegrees());
        double y0 = PlanePatch.y(line.get(j).latitudeDegrees());
        double x1 = PlanePatch.x(line.get(i).longitudeDegrees());
        double y1 = PlanePatch.y(line.get(i).latitudeDegrees());
        within ^= (y0 > y) != (y1 > y) && x < x0 + (x1 - x0) * (y - y0) / (y1 - y0);
      }
    }
    return within;
  }

  private static List<List<Position>> lines(
      List<List<Position>> land, boolean back, Duration duration) {
    CourseToSteer solver = solver(StreamField.slack()).withStrategy(Strategy.quickestAround(land));
    Position place = PlanePatch.at(0, 0);
    return back
        ? solver.reachBack(place, NOON, NOON.minus(duration))
        : solver.isochrone(place, NOON, NOON.plus(duration));
  }

  /**
   * A wall of 20 m on each side in turn, round the ends of which the craft gets: what lies within
   * the line behind it can be made by way of its nearer end.
   */
  @Test
  void behindAWallNothingIsPromisedThatCannotBeMade() {
    Random random = new Random(20261127);
    int within = 0;
    for (int i = 0; i < 8; i++) {
      int quarters = i % 4;
      double off = 1.9 + 0.3 * random.nextDouble();
      double left = 2.0 + random.nextDouble();
      double right = 2.0 + 6.0 * random.nextDouble();
      List<Position> wall = box(new double[] {off, -left, off + 0.02, right}, quarters);
      List<List<Position>> lines = lines(List.of(wall), i >= 4, Duration.ofSeconds(4000));
      for (int k = 0; k < 3000; k++) {
        double x = off + 0.02 + 0.3 * random.nextDouble() * random.nextDouble();
        double y = -left + (left + right) * random.nextDouble();
        double leftWay = Math.hypot(off, left) + Math.hypot(x - off, y + left);
        double rightWay = Math.hypot(off, right) + Math.hypot(x - off, y - right);
        double[] turned = {x, y};
        for (int q = 0; q < quarters; q++) {
          turned = new double[] {-turned[1], turned[0]};
        }
        if (isWithin(lines, turned[0], turned[1])) {
          double takes = Math.min(leftWay, rightWay) * PlanePatch.UNIT_METRES / SPEED;
          assertTrue(takes < 4000.0 * (1.0 + LATE), i + ": " + x + ", " + y + ": " + takes + " s");
          within++;
        }
      }
    }
    assertTrue(within > 1000, within + " places");
  }

  /** A lagoon between walls of 20 m on each side in turn. */
  @Test
  void intoAClosedLagoonNoLineLeads() {
    Random random = new Random(20261127);
    for (int i = 0; i < 8; i++) {
      double off = 2.0 + 0.2 * random.nextDouble();
      double low = -1.0 - 0.2 * random.nextDouble();
      double high = 1.0 + 0.2 * random.nextDouble();
      List<List<Position>> walls =
          List.of(
              box(new double[] {off, low - 0.02, off + 0.02, high + 0.02}, i % 4),
              box(new double[] {off + 2.0, low - 0.02, off + 2.02, high + 0.02}, i % 4),
              box(new double[] {off, high, off + 2.02, high + 0.02}, i % 4),
              box(new double[] {off, low - 0.02, off + 2.02, low}, i % 4));
      List<List<Position>> lines = lines(walls, i >= 4, TWO_HOURS);
      for (int k = 0; k < 3000; k++) {
        double x = off + 0.02 + 1.98 * Math.pow(random.nextDouble(), 3);
        double y = low + (high - low) * random.nextDouble();
        double[] turned = {x, y};
        for (int q = 0; q < i % 4; q++) {
          turned = new double[] {-turned[1], turned[0]};
        }
        assertTrue(!isWithin(lines, turned[0], turned[1]), i + ": " + x + ", " + y);
      }
    }
  }

  /**
   * Streams of four to seven craft speeds, one of them along a column of the grid and none of the
   * others along a move to a near node.
   */
  @ParameterizedTest
  @CsvSource({"10.0, 0.0", "7.3900, 3.0614", "5.9229, 0.9593"})
  void howeverHardTheStreamTheLineGoesAsFarAsItCarries(double east, double north) {
    double seconds = 3600.0;
    CourseToSteer solver = solver(StreamField.steady(Velocity.ofEastAndNorth(east, north)));
    double farthest = 0.0;
    for (List<Position> line :
        solver.isochrone(PlanePatch.at(0, 0), NOON, NOON.plusSeconds(3600))) {
      for (Position corner : line) {
        double x = PlanePatch.x(corner.longitudeDegrees());
        double y = PlanePatch.y(corner.latitudeDegrees());
        farthest = Math.max(farthest, Math.hypot(x, y));
      }
    }
    double carried = (Math.hypot(east, north) + SPEED) * seconds / PlanePatch.UNIT_METRES;
    assertEquals(carried, farthest, LATE_IN_A_TORRENT * carried);
  }

  @Test
  void severalLinesComeFromOneSearchInTheOrderAskedFor() {
    CourseToSteer solver = solver(StreamField.steady(Velocity.ofEastAndNorth(0.6, 0.0)));
    Position place = PlanePatch.at(0, 0);
    List<Instant> after =
        List.of(NOON.plusSeconds(5400), NOON.plusMillis(1), NOON.plusSeconds(2700));
    Map<Instant, List<List<Position>>> out = solver.isochrones(place, NOON, after);
    assertEquals(after, List.copyOf(out.keySet()));
    List<Instant> before = List.of(NOON.minusSeconds(2700), NOON.minusSeconds(5400));
    Map<Instant, List<List<Position>>> home = solver.reachesBack(place, NOON, before);
    assertEquals(before, List.copyOf(home.keySet()));
    for (Map.Entry<Instant, List<List<Position>>> entry : out.entrySet()) {
      assertOnCircle(entry.getValue(), seconds(NOON, entry.getKey()), 0.6, LATE_CORNER);
    }
    for (Map.Entry<Instant, List<List<Position>>> entry : home.entrySet()) {
      // latest departures are found to half a second
      assertOnCircle(entry.getValue(), seconds(entry.getKey(), NOON), -0.6, LATE);
    }
    assertEquals(out.get(after.get(0)), solver.isochrone(place, NOON, after.get(0)));
    assertEquals(home.get(before.get(1)), solver.reachBack(place, NOON, before.get(1)));
    assertThrows(UnsupportedOperationException.class, () -> out.remove(after.get(0)));
  }

  private static void assertOnCircle(
      List<List<Position>> lines, double seconds, double east, double late) {
    assertEquals(1, lines.size());
    for (Position corner : lines.get(0)) {
      double x = PlanePatch.x(corner.longitudeDegrees()) * PlanePatch.UNIT_METRES - east * seconds;
      double y = PlanePatch.y(corner.latitudeDegrees()) * PlanePatch.UNIT_METRES;
      double share = Math.hypot(x, y) / (SPEED * seconds);
      assertTrue(share < 1.0 + EARLY_CORNER && share > 1.0 - late, seconds + " s: " + share);
    }
  }

  /** As a quickest path from there finds no way. */
  @Test
  void fromAClosedAreaNothingIsReached() {
    Strategy closed =
        Strategy.quickest()
            .withClosure(
                box(-0.5, -0.5, 0.5, 0.5),
                TimeSpan.of(NOON.minusSeconds(600), Duration.ofMinutes(20)));
    CourseToSteer solver = solver(StreamField.slack()).withStrategy(closed);
    Position place = PlanePatch.at(0, 0);
    assertEquals(List.of(), solver.isochrone(place, NOON, NOON.plusSeconds(3600)));
    assertEquals(List.of(), solver.reachBack(place, NOON, NOON.minusSeconds(3600)));
    assertEquals(1, solver.isochrone(place, NOON.plusSeconds(601), NOON.plusSeconds(3600)).size());
  }

  private static void assertRefused(String words, Executable asked) {
    String message = assertThrows(IllegalArgumentException.class, asked).getMessage();
    assertTrue(message.contains(words), message);
  }

  @Test
  void whatNoLineCanBeDrawnForIsRefused() {
    CourseToSteer open = solver(StreamField.slack());
    CourseToSteer landlocked =
        open.withStrategy(Strategy.quickestAround(List.of(box(-1, -1, 1, 1))));
    Position place = PlanePatch.at(0, 0);
    Instant later = NOON.plusSeconds(3600);
    String inside = "must not lie inside an obstacle";
    assertRefused("start " + inside, () -> landlocked.isochrone(place, NOON, later));
    assertRefused("goal " + inside, () -> landlocked.reachBack(place, later, NOON));
    assertRefused(
        "goal must lie within 89 degrees",
        () -> open.reachBack(Position.ofDegrees(89.5, 0), later, NOON));
    assertRefused("start must lie", () -> open.isochrone(Position.ofDegrees(-90, 0), NOON, later));
    Instant far = Instant.parse("+12026-06-14T12:00:00Z");
    String years = " must lie in the years 1 to 4999";
    assertRefused("departure" + years, () -> open.isochrone(place, far, far.plusSeconds(60)));
    assertRefused("time" + years, () -> open.isochrone(place, NOON, far));
    assertRefused("arrival" + years, () -> open.reachBack(place, far, NOON));
    assertRefused("leaving" + years, () -> open.reachBack(place, NOON, Instant.MIN));
    assertRefused(
        "PT1440H from latitude 50",
        () -> open.isochrone(Position.ofDegrees(50, 0), NOON, NOON.plus(Duration.ofDays(60))));
    assertRefused("after the departure", () -> open.isochrone(place, NOON, NOON));
    assertRefused("before the arrival", () -> open.reachBack(place, NOON, NOON));
    assertRefused("there was none", () -> open.isochrones(place, NOON, List.of()));
    assertRefused("there was none", () -> open.reachesBack(place, NOON, List.of()));
    List<Instant> mixed = List.of(later, NOON.minusSeconds(1));
    assertRefused("after the departure, but one", () -> open.isochrones(place, NOON, mixed));
    assertRefused("before the arrival, but one", () -> open.reachesBack(place, NOON, mixed));
    CourseToSteer drifting = open.withCraft(Craft.ofSpeed(Speed.ZERO));
    assertRefused("some speed", () -> drifting.isochrone(place, NOON, later));
    assertRefused("some speed", () -> drifting.reachBack(place, later, NOON));
    assertRefused("above PT0S", () -> Isochrones.from(open, place, NOON, Duration.ZERO));
  }
}
