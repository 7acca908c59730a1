package org.ferryglide.nav.steer;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;

/**
 * A drawn sea of two islands and an area that is closed for a time, in a stream that turns and a
 * steady wind; or the same laid otherwise: turned, mirrored, or larger in place and time, so that
 * all speeds stay as they are.
 */
final class DrawnSea {
  static final Instant DEPARTURE = Instant.parse("2026-06-14T10:00:00Z");
  private static final double TIDE_SECONDS = 7115.0;
  private static final int CORNERS = 7;

  /**
   * How a sea is laid.
   *
   * @param degrees turned to the left by so much
   * @param side -1 if mirrored, 1 if not
   * @param factor how much larger it is
   */
  record Laid(double degrees, double side, double factor) {
    static final Laid AS_DRAWN = new Laid(0.0, 1.0, 1.0);

    Position place(double x, double y) {
      return PlanePatch.at(
          factor * (cosine() * x - sine() * side * y), factor * (sine() * x + cosine() * side * y));
    }

    private double cosine() {
      return Math.cos(Math.toRadians(degrees));
    }

    private double sine() {
      return Math.sin(Math.toRadians(degrees));
    }
  }

  final List<List<Position>> islands = new ArrayList<>();
  final List<Position> area = new ArrayList<>();
  final TimeSpan closed;
  final Laid laid;
  private final StreamField stream;
  private final WindField wind;

  DrawnSea(long seed, Laid laid) {
    this.laid = laid;
    Random random = new Random(seed);
    for (int k = 0; k < 2; k++) {
      double x = 1.0 + 2.0 * random.nextDouble();
      double y = -0.6 + 1.2 * random.nextDouble();
      List<Position> island = new ArrayList<>();
      for (int c = 0; c < CORNERS; c++) {
        double far = 0.2 + 0.35 * random.nextDouble();
        double angle = 2.0 * Math.PI * c / CORNERS;
        island.add(laid.place(x + far * Math.cos(angle), y + far * Math.sin(angle)));
      }
      islands.add(island);
    }
    double x = 1.0 + 2.0 * random.nextDouble();
    double y = 0.6 - 1.2 * random.nextDouble();
    area.add(laid.place(x - 0.4, y - 0.4));
    area.add(laid.place(x + 0.4, y - 0.4));
    area.add(laid.place(x + 0.4, y + 0.4));
    closed =
        TimeSpan.of(
            DEPARTURE.plusMillis(Math.round(1e3 * laid.factor() * random.nextInt(2000))),
            Duration.ofMillis(Math.round(1e3 * laid.factor() * (600 + random.nextInt(2000)))));
    stream = stream(6.0 * random.nextDouble());
    double from = 90.0 - 360.0 * random.nextDouble();
    wind =
        WindField.steady(
            Velocity.ofWind(
                TrueBearing.ofDegrees(90.0 - laid.degrees() - laid.side() * from),
                Speed.ofKnots(4.0 + 10.0 * random.nextDouble())));
  }

  private StreamField stream(double phase) {
    double start = DEPARTURE.getEpochSecond();
    double cosine = laid.cosine();
    double sine = laid.sine();
    return (latitude, longitude, time, out, offset) -> {
      double tide = 0.8 * Math.cos((time - start) / laid.factor() / TIDE_SECONDS + phase);
      double east = PlanePatch.x(longitude) / laid.factor();
      double north = PlanePatch.y(latitude) / laid.factor();
      double x = cosine * east + sine * north;
      double y = laid.side() * (cosine * north - sine * east);
      double ahead = tide * Math.sin(2.0 * y + phase);
      double aside = laid.side() * tide * Math.cos(x);
      out[offset] = cosine * ahead - sine * aside;
      out[offset + 1] = sine * ahead + cosine * aside;
      return true;
    };
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

  /** The quickest path along its leg of four units. */
  Optional<SteeredLeg> path() {
    return path(laid.place(0, 0), laid.place(4, 0), DEPARTURE);
  }

  Optional<SteeredLeg> path(Position from, Position to, Instant departure) {
    return solver().solve(RhumbLeg.between(from, to), departure).solved();
  }
}
