package org.ferryglide.examples.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class SheetFrameTest {
  private static final double HUNDREDTH_OF_A_DEGREE = 0.01;

  private static void assertTrueToAngles(Position from, Position to) {
    SheetFrame frame = SheetFrame.around(List.of(from, to), 0, 0, 340, 200, 400);
    double dx = frame.x(to) - frame.x(from);
    double dy = frame.y(from) - frame.y(to);
    RhumbLeg leg = RhumbLeg.between(from, to);
    double drawn = Math.toDegrees(Math.atan2(dx, dy));
    double error = Math.IEEEremainder(drawn - leg.course().degrees(), 360.0);
    assertEquals(0.0, error, HUNDREDTH_OF_A_DEGREE, from + " to " + to);
    double middle = 0.5 * (from.latitudeDegrees() + to.latitudeDegrees());
    assertEquals(
        1.0, Math.hypot(dx, dy) / frame.units(leg.length().metres(), middle), 0.002, from + "");
    assertTrue(frame.holds(from) && frame.holds(to));
  }

  /** A Mercator's straight lines are rhumb lines, at every latitude and over 180°. */
  @Test
  void bearingsAndLengthsAreTrue() {
    assertTrueToAngles(
        Position.parse("46°10.0'N 026°20.0'W"), Position.parse("46°15.0'N 026°13.0'W"));
    assertTrueToAngles(
        Position.parse("10°00.0'S 179°57.0'E"), Position.parse("10°01.0'S 179°57.0'W"));
    assertTrueToAngles(
        Position.parse("70°10.0'N 022°00.0'E"), Position.parse("70°02.0'N 022°28.0'E"));
    assertTrueToAngles(
        Position.parse("00°03.0'N 000°03.0'E"), Position.parse("00°03.0'S 000°03.0'W"));
  }

  @Test
  void theGraticuleIsNamedOnTheLine() {
    SheetFrame frame =
        SheetFrame.around(
            List.of(Position.parse("10°00.0'S 179°57.0'E"), Position.parse("10°01.0'S 179°57.0'W")),
            0,
            0,
            340,
            200,
            400);
    for (SheetFrame.Line line : frame.meridians()) {
      Position on =
          Position.parse(
              "10°00.0'S " + (line.words().startsWith("180") ? "180°00'W" : line.words()));
      assertEquals(frame.x(on), line.at(), 0.01, line.words());
    }
    assertTrue(frame.parallels().size() >= 2);
  }
}
