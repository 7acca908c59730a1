package org.ferryglide.nav.quickest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.function.DoubleBinaryOperator;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExtremalFanTest {
  /** What the library promises of the time of a quickest path. */
  private static final double RELATIVE_TIME = 1e-4;

  private static double none(double x, double y) {
    return 0.0;
  }

  private static ExtremalFan fan(StreamField field, double speed, Position start, double metres) {
    return new ExtremalFan(
        new CalmCraft(field, speed),
        Obstacles.none(),
        Math.toRadians(start.latitudeDegrees()),
        Math.toRadians(start.longitudeDegrees()),
        0.0,
        86400.0,
        metres);
  }

  /** Time of the quickest path in units of the plane patch, with speed 1 through the water. */
  private static double units(StreamField field, double x0, double y0, double x1, double y1) {
    Position goal = PlanePatch.at(x1, y1);
    ExtremalFan.Arrival arrival =
        fan(
                field,
                1.0,
                PlanePatch.at(x0, y0),
                Math.hypot(x1 - x0, y1 - y0) * PlanePatch.UNIT_METRES)
            .quickestTo(
                Math.toRadians(goal.latitudeDegrees()), Math.toRadians(goal.longitudeDegrees()));
    assertNotNull(arrival);
    return arrival.seconds() / PlanePatch.UNIT_METRES;
  }

  private static void assertTime(double expected, double actual) {
    assertEquals(expected, actual, expected * RELATIVE_TIME);
  }

  @Test
  void stillWaterIsCrossedAlongTheGeodesic() {
    Position start = Position.ofDegrees(60, -179.9);
    Position goal = Position.ofDegrees(60.2, 179.8);
    double metres = GeodesicLeg.between(start, goal).length().metres();
    ExtremalFan.Arrival arrival =
        fan(StreamField.slack(), 1.8, start, metres)
            .quickestTo(Math.toRadians(60.2), Math.toRadians(179.8));
    assertNotNull(arrival);
    assertEquals(metres / 1.8, arrival.seconds(), 0.01); // 0.02 m at 1.8 m/s
    assertEquals(
        GeodesicLeg.between(start, goal).initialCourse().degrees(),
        Math.toDegrees(arrival.heading()),
        1e-4);
  }

  @Test
  void aUniformStreamGivesTheClosedForm() {
    // the straight track: 1 km at right angles to a stream of 0.6
    assertTime(
        1.0 / 0.8, units(PlanePatch.stream((x, y) -> 0.6, ExtremalFanTest::none), 0, 0, 0, 1));
  }

  /**
   * Source: Betts, Practical Methods for Optimal Control, example 10.148: a linear shear, start
   * (3.5, -1.8), goal at the origin; the time is an independent calculation to seven figures, the
   * book's own was not seen.
   */
  @Test
  void aLinearShearAsInATextbook() {
    assertTime(
        5.264932, units(PlanePatch.stream((x, y) -> -y, ExtremalFanTest::none), 3.5, -1.8, 0, 0));
  }

  /**
   * Source: Bryson and Ho, Applied Optimal Control (1975), linear shear, start (3.66, -1.86), from
   * memory: 5.46; independent calculation 5.4579.
   */
  @Test
  void anotherLinearShear() {
    assertTime(
        5.4579, units(PlanePatch.stream((x, y) -> -y, ExtremalFanTest::none), 3.66, -1.86, 0, 0));
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
            PlanePatch.stream((x, y) -> 4 * peak * y * (1 - y), ExtremalFanTest::none), 0, 0, 0, 1);
    assertEquals(hours, time / 3.5, halfAPrintedDigit + hours * RELATIVE_TIME);
  }

  /** Past a vortex lies a quick way on one side and a slow extremal on the other. */
  @ParameterizedTest
  @CsvSource({"1.2, 0.3", "-1.2, 0.0", "2.0, 0.1"})
  void theQuickSideOfAVortexIsTaken(double spin, double goalY) {
    DoubleBinaryOperator east = (x, y) -> -spin * y * Math.exp(-((x - 2) * (x - 2) + y * y));
    DoubleBinaryOperator north = (x, y) -> spin * (x - 2) * Math.exp(-((x - 2) * (x - 2) + y * y));
    double expected = new PlaneShooting(east, north, 4, goalY, 8).quickest(0, 0);
    assertTime(expected, units(PlanePatch.stream(east, north), 0, 0, 4, goalY));
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
    double expected = new PlaneShooting(east, north, 4, 0, 8).quickest(0, 0);
    assertTime(expected, units(PlanePatch.stream(east, north), 0, 0, 4, 0));
  }

  @Test
  void aStreamThatOutrunsTheCraftCannotBeStemmed() {
    StreamField strong = StreamField.steady(Velocity.ofEastAndNorth(2.0, 0.0));
    Position goal = PlanePatch.at(-1, 0);
    assertNull(
        fan(strong, 1.0, PlanePatch.at(0, 0), 1000)
            .quickestTo(
                Math.toRadians(goal.latitudeDegrees()), Math.toRadians(goal.longitudeDegrees())));
  }
}
