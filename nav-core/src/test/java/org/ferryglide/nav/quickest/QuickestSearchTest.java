package org.ferryglide.nav.quickest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuickestSearchTest {
  /** What the library promises of the time of a quickest path among closed forms. */
  private static final double RELATIVE_TIME = 1e-6;

  private static double none(double x, double y) {
    return 0.0;
  }

  static List<FoundWay> ways(
      StreamField field, double speed, Position start, Position goal, Waters waters) {
    double difference =
        Math.IEEEremainder(goal.longitudeDegrees() - start.longitudeDegrees(), 360.0);
    return new QuickestSearch(
            new CalmCraft(field, speed),
            waters,
            new double[] {start.latitudeDegrees(), start.longitudeDegrees()},
            new double[] {goal.latitudeDegrees(), start.longitudeDegrees() + difference},
            0.0,
            86400.0)
        .ways(3);
  }

  /** Time of the quickest path in units of the plane patch, with speed 1 through the water. */
  private static double units(StreamField field, double x0, double y0, double x1, double y1) {
    return ways(field, 1.0, PlanePatch.at(x0, y0), PlanePatch.at(x1, y1), Waters.open())
            .get(0)
            .seconds()
        / PlanePatch.UNIT_METRES;
  }

  private static void assertTime(double expected, double actual, double printed) {
    assertEquals(expected, actual, expected * RELATIVE_TIME + printed);
  }

  @Test
  void stillWaterIsCrossedAlongTheGeodesic() {
    Position start = Position.ofDegrees(60, -179.9);
    Position goal = Position.ofDegrees(60.2, 179.8);
    double metres = GeodesicLeg.between(start, goal).length().metres();
    FoundWay way = ways(StreamField.slack(), 1.8, start, goal, Waters.open()).get(0);
    assertTime(metres / 1.8, way.seconds(), 0.0);
    assertEquals(
        GeodesicLeg.between(start, goal).initialCourse().degrees(),
        (Math.toDegrees(way.rows()[0][FoundWay.HEADING]) + 360.0) % 360.0,
        1e-4);
  }

  @Test
  void aUniformStreamGivesTheClosedForm() {
    // the straight track: 1 km at right angles to a stream of 0.6
    assertTime(
        1.0 / 0.8,
        units(PlanePatch.stream((x, y) -> 0.6, QuickestSearchTest::none), 0, 0, 0, 1),
        0.0);
  }

  /**
   * Source: Betts, Practical Methods for Optimal Control, example 10.148: a linear shear, start
   * (3.5, -1.8), goal at the origin; the time is an independent calculation to seven figures, the
   * book's own was not seen.
   */
  @Test
  void aLinearShearAsInATextbook() {
    assertTime(
        5.264932,
        units(PlanePatch.stream((x, y) -> -y, QuickestSearchTest::none), 3.5, -1.8, 0, 0),
        5e-7);
  }

  /**
   * A linear shear of stream y to the east: with speed 1 the heading's tangent runs down evenly,
   * tan(theta) = tan(theta0) - t, and place follows in closed form (theta anticlockwise from x).
   */
  @ParameterizedTest
  @CsvSource({"1.2, 2.0", "0.8, 1.0", "-0.3, 1.5", "1.3, 3.0"})
  void aLinearShearInClosedForm(double theta0, double time) {
    double tan0 = Math.tan(theta0);
    double sec0 = 1.0 / Math.cos(theta0);
    double tan = tan0 - time;
    double sec = Math.sqrt(1.0 + tan * tan);
    // dy/dt = sin, dx/dt = cos + y, with dt = -d(tan)
    double y = sec0 - sec;
    double x =
        asinh(tan0)
            - asinh(tan)
            + sec0 * time
            - 0.5 * (tan0 * sec0 + asinh(tan0) - tan * sec - asinh(tan));
    assertTime(
        time, units(PlanePatch.stream((u, v) -> v, QuickestSearchTest::none), 0, 0, x, y), 0.0);
  }

  private static double asinh(double x) {
    return Math.log(x + Math.sqrt(x * x + 1.0));
  }

  /**
   * A channel 1 NM wide with a parabola of stream, craft 3.5 kn: hours from a curve of constant
   * V/cos(heading) + stream, an independent calculation printed to four decimals.
   */
  @ParameterizedTest
  @CsvSource({"2.0, 0.3089", "3.0, 0.3454", "3.4, 0.3669"})
  void aParabolicChannel(double peakKnots, double hours) {
    final double halfAPrintedDigit = 0.00005;
    double peak = peakKnots / 3.5;
    double time =
        units(
            PlanePatch.stream((x, y) -> 4 * peak * y * (1 - y), QuickestSearchTest::none),
            0,
            0,
            0,
            1);
    assertTime(hours, time / 3.5, halfAPrintedDigit);
  }

  /**
   * A channel 1 km wide with a parabola of stream u across it: along an extremal 1 / cos(heading) +
   * u stays the same (heading anticlockwise from the stream), so that time and place down stream
   * are integrals over the width, and the constant is the one that ends abreast of the start.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.6, 0.9})
  void aParabolicChannelInClosedForm(double peak) {
    double low = -1e6;
    double high = -1.0 - 1e-9;
    for (int i = 0; i < 200; i++) {
      double constant = 0.5 * (low + high);
      if (acrossChannel(peak, constant)[0] > 0.0) {
        low = constant;
      } else {
        high = constant;
      }
    }
    StreamField channel =
        PlanePatch.stream((x, y) -> 4.0 * peak * y * (1.0 - y), QuickestSearchTest::none);
    assertTime(acrossChannel(peak, low)[1], units(channel, 0, 0, 0, 1), 0.0);
  }

  /** How far down stream and when the other side is reached, by the midpoint rule. */
  private static double[] acrossChannel(double peak, double constant) {
    final int parts = 20000;
    double down = 0.0;
    double time = 0.0;
    for (int i = 0; i < parts; i++) {
      double y = (i + 0.5) / parts;
      double stream = 4.0 * peak * y * (1.0 - y);
      double cosine = 1.0 / (constant - stream);
      double sine = Math.sqrt(1.0 - cosine * cosine);
      down += (stream + cosine) / sine / parts;
      time += 1.0 / sine / parts;
    }
    return new double[] {down, time};
  }

  /**
   * Water that turns like a wheel: seen turning with it, it is still, and the path a straight line,
   * so that the time is how far the goal, turned back by then, is from the start.
   */
  @ParameterizedTest
  @CsvSource({"0.5, -0.5, 1.2", "-0.5, -0.5, 1.2", "0.8, 0.2, -0.9", "0.3, -1.5, 0.4"})
  void aWheelOfWaterInClosedForm(double turn, double goalX, double goalY) {
    double time = 0.0;
    for (int i = 0; i < 2000; i++) { // the distance changes at less than the craft's speed
      double x = goalX * Math.cos(turn * time) + goalY * Math.sin(turn * time);
      double y = goalY * Math.cos(turn * time) - goalX * Math.sin(turn * time);
      time += 0.1 * (Math.hypot(x - 1.0, y) - time);
    }
    StreamField wheel = PlanePatch.stream((x, y) -> -turn * y, (x, y) -> turn * x);
    assertTime(time, units(wheel, 1, 0, goalX, goalY), 0.0);
  }

  /** Past a vortex lies a quick way on one side and a slow extremal on the other. */
  @ParameterizedTest
  @CsvSource({"1.2, 0.3", "-1.2, 0.0", "2.0, 0.1"})
  void theQuickSideOfAVortexIsTaken(double spin, double goalY) {
    DoubleBinaryOperator east = (x, y) -> -spin * y * Math.exp(-((x - 2) * (x - 2) + y * y));
    DoubleBinaryOperator north = (x, y) -> spin * (x - 2) * Math.exp(-((x - 2) * (x - 2) + y * y));
    final double shooting = 2e-6; // it comes within a thousandth of a unit of the goal, sideways
    double expected = new PlaneShooting(east, north, 4, goalY, 8).quickest(0, 0);
    assertTime(expected, units(PlanePatch.stream(east, north), 0, 0, 4, goalY), shooting);
  }

  /** Two vortices, so that more than two extremals arrive. */
  @Test
  void theQuickestOfManyExtremalsIsTaken() {
    DoubleBinaryOperator east =
        (x, y) ->
            -1.5 * (y - 0.5) * Math.exp(-((x - 1) * (x - 1) + (y - 0.5) * (y - 0.5)) * 2)
                + 1.5 * (y + 0.5) * Math.exp(-((x - 3) * (x - 3) + (y + 0.5) * (y + 0.5)) * 2);
    DoubleBinaryOperator north =
        (x, y) ->
            1.5 * (x - 1) * Math.exp(-((x - 1) * (x - 1) + (y - 0.5) * (y - 0.5)) * 2)
                - 1.5 * (x - 3) * Math.exp(-((x - 3) * (x - 3) + (y + 0.5) * (y + 0.5)) * 2);
    final double shooting = 2e-6;
    double expected = new PlaneShooting(east, north, 4, 0, 8).quickest(0, 0);
    assertTime(expected, units(PlanePatch.stream(east, north), 0, 0, 4, 0), shooting);
  }

  /**
   * One smooth eddy: leg of 10 km east, craft 1.8 m/s, eddy of 2.3236 m/s at its radius of 1357 m
   * about (5972, -1861) m. Three straight legs by (4000, -2500) and (8500, -1500) m take 1:23:16.
   */
  @Test
  void aPlainRouteOfThreeLegsIsNotQuicker() {
    Eddies eddy = Eddies.one(5.972, -1.861, 1.357, 2.3236 / 1.8);
    FoundWay way =
        ways(eddy.field(), 1.0, PlanePatch.at(0, 0), PlanePatch.at(10, 0), Waters.open()).get(0);
    double threeLegsSeconds = 83 * 60 + 16;
    assertTrue(way.seconds() / 1.8 < threeLegsSeconds, way.toString());
  }

  @Test
  void aStreamThatOutrunsTheCraftCannotBeStemmed() {
    StreamField strong = StreamField.steady(Velocity.ofEastAndNorth(2.0, 0.0));
    assertTrue(
        ways(strong, 1.0, PlanePatch.at(0, 0), PlanePatch.at(-1, 0), Waters.open()).isEmpty());
  }

  /** At the start the stream outruns the craft for a while: it cannot wait there, but goes. */
  @Test
  void nobodyWaitsWhereNobodyHolds() {
    CraftMotion craft = EddyKind.TORRENT_WINDY.craft(690);
    CourseSpeed speeds = new CourseSpeed(craft);
    SearchPlane plane = new SearchPlane(0.0, 0.0, 0.0, PlanePatch.longitude(10.0));
    TrackTimes times = new TrackTimes(craft, speeds, Waters.open(), plane, 0.0);
    times.stepAtMost(0.01 * plane.length);
    RoughWays rough = new RoughWays(craft, Waters.open(), speeds, plane, 0.0);
    List<Way> ways = rough.within(86400.0, 1);
    assertTrue(ways.stream().anyMatch(way -> way.arrival(times) > 0.0));
    assertTrue(ways.stream().allMatch(way -> way.lenientArrival(times) > 0.0));
  }
}
