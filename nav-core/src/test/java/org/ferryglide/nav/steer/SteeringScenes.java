package org.ferryglide.nav.steer;

import java.time.Instant;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;

/** Legs, streams and craft of tests of steering and timing. */
public final class SteeringScenes {
  public static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");
  public static final double NOON_SECONDS = EpochSeconds.of(NOON);
  public static final Position START = Position.ofDegrees(55, -6);

  /** Hour by hour from two hours before noon; it turns. */
  public static final StreamField TIDE =
      HourlyStream.lines(
          NOON_SECONDS - 7200,
          new double[] {0.2, 1.0, 1.8, 1.5, 0.4, -0.8, -1.6, -1.2, -0.3, 0.5},
          new double[] {-0.5, -0.9, -1.1, -0.6, 0.1, 0.7, 1.2, 0.9, 0.2, -0.4});

  private SteeringScenes() {}

  public static RhumbLeg leg(double course, double miles) {
    return RhumbLeg.from(START, TrueBearing.ofDegrees(course), Distance.ofNauticalMiles(miles));
  }

  public static CourseToSteer solver(double knots, StreamField stream) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(knots)), stream)
        .withLimits(SteeringLimits.NONE);
  }

  public static StreamField steady(double set, double knots) {
    return StreamField.steady(
        Velocity.ofSetAndRate(TrueBearing.ofDegrees(set), Speed.ofKnots(knots)));
  }
}
