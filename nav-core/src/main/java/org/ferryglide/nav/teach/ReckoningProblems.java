package org.ferryglide.nav.teach;

import java.util.List;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.plane.SteadyTriangle;
import org.ferryglide.nav.steer.CurrentTriangle;

/**
 * Problems of reckoning: where the party has got to, and a constant heading through several hours.
 *
 * <p>The exact answers are those of {@link CurrentTriangle} and of plane vectors; rules and slips
 * are common practice, no source.
 *
 * <pre>{@code
 * Problem problem =
 *     ReckoningProblems.estimatedPosition(
 *         TrueBearing.ofDegrees(90), 5.0, Speed.ofKnots(3.5), 60.0,
 *         Velocity.ofSetAndRate(TrueBearing.ofDegrees(180), Speed.ofKnots(1.2)));
 * problem.exact("Distance made good"); // nautical miles
 * }</pre>
 */
public final class ReckoningProblems {
  private static final String COURSE = "Course";
  private static final String SPEED = "Paddling speed";
  private static final String SET = "Set";
  private static final String RATE = "Rate";
  private static final String VARIATION = "Variation";
  private static final String WATER_TRACK = "Water track";
  private static final String HEADING = "Heading";
  private static final double MINUTES_IN_HOUR = 60.0;

  private ReckoningProblems() {}

  /**
   * How far and where to the party has come: dead reckoning with leeway, then the stream.
   *
   * @param heading true heading steered
   * @param leewayDegrees degrees to starboard positive, within 45 either way
   * @param speed speed through the water, above 0
   * @param minutes time since the start, above 0
   * @param stream the stream meanwhile
   * @return the problem; its answer is the track from the start, and {@code Distance made good}
   *     among its figures is how far
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Problem estimatedPosition(
      TrueBearing heading, double leewayDegrees, Speed speed, double minutes, Velocity stream) {
    Arguments.positive(minutes, "time", "minutes");
    double leeway = Arguments.within(leewayDegrees, -45.0, 45.0, "leeway", "degrees");
    return Problem.titled("Estimated position from the start")
        .given(HEADING, Quantity.TRUE_BEARING, heading.degrees(), "steered, made true")
        .given("Leeway", Quantity.ANGLE, leeway, "to starboard; to port below zero")
        .given(SPEED, Quantity.KNOTS, speed.knots(), "through the water")
        .given("Time", Quantity.MINUTES, minutes, "since the start")
        .given(SET, Quantity.TRUE_BEARING, stream.set().degrees(), "where the stream goes")
        .given(RATE, Quantity.KNOTS, stream.rate().knots(), "of the stream")
        .then(
            WATER_TRACK,
            Quantity.TRUE_BEARING,
            "the heading, turned down wind by the leeway",
            f -> f.of(HEADING) + f.of("Leeway"))
        .slip(
            WATER_TRACK,
            "leeway to the wrong side",
            Slip.COMMON,
            f -> f.of(HEADING) - f.of("Leeway"))
        .slip(WATER_TRACK, "leeway left out", Slip.SOMETIMES, f -> f.of(HEADING))
        .then(
            "Run",
            Quantity.NAUTICAL_MILES,
            "speed times time",
            f -> f.of(SPEED) * f.of("Time") / MINUTES_IN_HOUR)
        .then(
            "Drift",
            Quantity.NAUTICAL_MILES,
            "rate times the same time",
            f -> f.of(RATE) * f.of("Time") / MINUTES_IN_HOUR)
        .slip("Drift", "stream of a whole hour", Slip.COMMON, f -> f.of(RATE))
        .slip("Drift", "stream left out", Slip.SOMETIMES, f -> 0.0)
        .slip("Drift", "stream taken backwards", Slip.COMMON, f -> -f.of("Drift"))
        .then(
            "Distance made good",
            Quantity.NAUTICAL_MILES,
            "from the start to the end of both vectors",
            f -> Math.hypot(madeGood(f)[0], madeGood(f)[1]))
        .then(
            "Track",
            Quantity.TRUE_BEARING,
            "from the start to the end of both vectors",
            f -> Angles.reduced(Math.toDegrees(Math.atan2(madeGood(f)[0], madeGood(f)[1]))))
        .estimated("where the water went, then where it carried me")
        .checked("does it lie down stream of the dead reckoning?");
  }

  private static double[] madeGood(Figures f) {
    double track = Math.toRadians(f.of(WATER_TRACK));
    double set = Math.toRadians(f.of(SET));
    return new double[] {
      f.of("Run") * Math.sin(track) + f.of("Drift") * Math.sin(set),
      f.of("Run") * Math.cos(track) + f.of("Drift") * Math.cos(set)
    };
  }

  /**
   * A constant heading through several hours of stream: the hourly vectors laid off one after
   * another, the paddling of all those hours swung from their end.
   *
   * @param course true course to make good
   * @param speed speed through the water, above 0
   * @param hours the stream of each hour, at least one
   * @param variation variation at the place and date
   * @return the problem; its answer is the magnetic heading, and {@code Distance made good} among
   *     its figures is how far the hours carry
   * @throws IllegalArgumentException if there is no hour or the course cannot be made good
   */
  public static Problem hourlyVectors(
      TrueBearing course, Speed speed, List<Velocity> hours, Variation variation) {
    if (hours.isEmpty()) {
      throw new IllegalArgumentException("hourly vectors need at least one hour");
    }
    int count = hours.size();
    Problem problem =
        Problem.titled("One heading through " + count + (count == 1 ? " hour" : " hours"))
            .given(COURSE, Quantity.TRUE_BEARING, course.degrees(), "laid off on the chart")
            .given(SPEED, Quantity.KNOTS, speed.knots(), "through the water");
    for (int hour = 1; hour <= count; hour++) {
      Velocity stream = hours.get(hour - 1);
      problem =
          problem
              .given(
                  SET + " " + hour, Quantity.TRUE_BEARING, stream.set().degrees(), "hour " + hour)
              .given(RATE + " " + hour, Quantity.KNOTS, stream.rate().knots(), "hour " + hour);
    }
    problem =
        problem
            .given(VARIATION, Quantity.EAST_WEST, variation.degreesEast(), "there and then")
            .then(
                WATER_TRACK,
                Quantity.TRUE_BEARING,
                "all vectors from the start; from their end swing the paddling of all hours",
                f -> throughHours(f, count, count, 0)[0])
            .then(
                "Distance made good",
                Quantity.NAUTICAL_MILES,
                "from the start to where the swing cuts the track",
                f -> throughHours(f, count, count, 0)[1])
            .then(
                HEADING,
                Quantity.MAGNETIC_BEARING,
                Slips.takeOff("variation", variation.degreesEast(), "true"),
                f -> f.of(WATER_TRACK) - f.of(VARIATION));
    if (count > 1) {
      problem =
          problem
              .slip(
                  WATER_TRACK,
                  "paddling of one hour with the stream of all",
                  Slip.COMMON,
                  f -> throughHours(f, count, 1, 0)[0])
              .slip(
                  WATER_TRACK,
                  "first hour's vector only",
                  Slip.SOMETIMES,
                  f -> throughHours(f, 1, count, 0)[0])
              .slip(
                  WATER_TRACK,
                  "first hour left out: table hour off by one",
                  Slip.COMMON,
                  f -> throughHours(f, count, count, 1)[0]);
    }
    problem =
        problem.slip(
            WATER_TRACK,
            "aimed off down stream",
            Slip.COMMON,
            f -> 2.0 * f.of(COURSE) - throughHours(f, count, count, 0)[0]);
    if (Double.isNaN(problem.answer())) {
      throw new IllegalArgumentException(
          "no one heading makes good " + course + " through these hours");
    }
    return Slips.takingOff(problem, HEADING, WATER_TRACK, VARIATION, "variation")
        .estimated("streams that turn cancel: only what is left over needs an allowance")
        .checked("is the bow up stream of the course, for what is left over?");
  }

  private static double[] throughHours(Figures f, int to, int paddled, int from) {
    double east = 0.0;
    double north = 0.0;
    for (int hour = from + 1; hour <= to; hour++) {
      double set = Math.toRadians(f.of(SET + " " + hour));
      east += f.of(RATE + " " + hour) * Math.sin(set);
      north += f.of(RATE + " " + hour) * Math.cos(set);
    }
    double[] out = new double[2];
    SteadyTriangle.solve(f.of(COURSE), f.of(SPEED) * paddled, east, north, out, 0);
    return out;
  }
}
