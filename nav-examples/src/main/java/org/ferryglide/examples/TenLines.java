package org.ferryglide.examples;

import java.time.Instant;
import java.time.LocalDate;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.water.StreamField;

/** The example of the README, compiled and run by the build. */
public final class TenLines {
  private TenLines() {}

  /**
   * Prints a heading for the deck compass, from two positions and a stream.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    RhumbLeg leg =
        RhumbLeg.between(
            Position.parse("46°11.8'N 026°17.6'W"), Position.parse("46°12.1'N 026°13.0'W"));
    StreamField stream =
        StreamField.steady(Velocity.ofSetAndRate(TrueBearing.ofDegrees(5), Speed.ofKnots(1.7)));
    Variation variation =
        CompassRose.parse("8°50'W 2019 (8'E)").variationAt(LocalDate.of(2026, 6, 14));
    System.out.println(
        CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3.5)), stream)
            .solve(leg, Instant.parse("2026-06-14T11:00:00Z"))
            .map(
                steered ->
                    steered.courseToSteer().toMagnetic(variation).threeDigits() + " magnetic")
            .orElse(why -> "not possible: " + why.message()));
  }
}
