package org.ferryglide.nav.teach;

import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.plane.SteadyTriangle;
import org.ferryglide.nav.steer.CurrentTriangle;

/**
 * Problems of stream and wind: the heading that makes good a course, how long it takes, and what
 * the wind does.
 *
 * <p>The exact answers are those of {@link CurrentTriangle}, drawn as on the chart: the stream laid
 * off from the start, the paddling speed swung from its end to cut the track. Rules and slips are
 * common practice, no source.
 *
 * <pre>{@code
 * Problem problem =
 *     SteeringProblems.courseToSteer(
 *         TrueBearing.ofDegrees(90), Speed.ofKnots(3.5),
 *         Velocity.ofSetAndRate(TrueBearing.ofDegrees(180), Speed.ofKnots(1.2)),
 *         Variation.ofDegreesWest(2));
 * problem.exact("Water track"); // 069.95…
 * }</pre>
 */
public final class SteeringProblems {
  private static final String COURSE = "Course";
  private static final String SPEED = "Paddling speed";
  private static final String SET = "Set";
  private static final String RATE = "Rate";
  private static final String VARIATION = "Variation";
  private static final String WATER_TRACK = "Water track";
  private static final String HEADING = "Heading";
  private static final double MINUTES_IN_HOUR = 60.0;
  private static final String DISTANCE = "Distance";
  private static final String MADE_GOOD = "Speed made good";

  private SteeringProblems() {}

  /**
   * The magnetic heading that makes good a course in a steady stream.
   *
   * @param course true course to make good
   * @param speed speed through the water, above 0
   * @param stream the stream
   * @param variation variation at the place and date
   * @return the problem; its answer is the magnetic heading
   * @throws IllegalArgumentException if the course cannot be made good
   */
  public static Problem courseToSteer(
      TrueBearing course, Speed speed, Velocity stream, Variation variation) {
    Problem problem =
        triangle(Problem.titled("Heading across a stream"), course, speed, stream)
            .given(VARIATION, Quantity.EAST_WEST, variation.degreesEast(), "there and then")
            .then(
                HEADING,
                Quantity.MAGNETIC_BEARING,
                Slips.takeOff("variation", variation.degreesEast(), "true"),
                f -> f.of(WATER_TRACK) - f.of(VARIATION));
    return Slips.takingOff(problem, HEADING, WATER_TRACK, VARIATION, "variation")
        .estimated(
            "a third of my speed straight across is twenty degrees: about "
                + Math.round(
                    MINUTES_IN_HOUR
                        * Math.abs(stream.acrossMetresPerSecond(course))
                        / speed.metresPerSecond())
                + "°, up stream")
        .checked("is the bow up stream of the course?");
  }

  /**
   * The time a leg takes in a steady stream.
   *
   * @param course true course to make good
   * @param distance length of the leg
   * @param speed speed through the water, above 0
   * @param stream the stream
   * @return the problem; its answer is the time in minutes
   * @throws IllegalArgumentException if the course cannot be made good
   */
  public static Problem timeInStream(
      TrueBearing course, Distance distance, Speed speed, Velocity stream) {
    return triangle(
            Problem.titled("Time of a leg in a stream")
                .given(DISTANCE, Quantity.NAUTICAL_MILES, distance.nauticalMiles(), "on the chart"),
            course,
            speed,
            stream)
        .then(
            MADE_GOOD,
            Quantity.KNOTS,
            "from the start to where the swing cuts the track",
            f -> solved(f, f.of(SPEED))[1])
        .slip(MADE_GOOD, "paddling speed taken for it", Slip.COMMON, f -> f.of(SPEED))
        .slip(
            MADE_GOOD,
            "speed and rate added whatever the angle",
            Slip.SOMETIMES,
            f -> f.of(SPEED) + f.of(RATE))
        .slip(
            MADE_GOOD,
            "rate taken from speed whatever the angle",
            Slip.SOMETIMES,
            f -> f.of(SPEED) - f.of(RATE))
        .then(
            "Time",
            Quantity.MINUTES,
            "distance over speed made good, in minutes",
            f -> f.of(DISTANCE) / f.of(MADE_GOOD) * MINUTES_IN_HOUR)
        .estimated("a mile is twenty minutes at three knots")
        .checked("with the stream helping, quicker than on still water; else slower");
  }

  private static Problem triangle(
      Problem problem, TrueBearing course, Speed speed, Velocity stream) {
    double[] out = new double[2];
    int finding =
        SteadyTriangle.solve(
            course.degrees(),
            speed.metresPerSecond(),
            stream.eastMetresPerSecond(),
            stream.northMetresPerSecond(),
            out,
            0);
    if (finding != SteadyTriangle.SOLVED) {
      throw new IllegalArgumentException(
          "no heading makes good "
              + course
              + " at "
              + speed.inKnots(1)
              + " in "
              + stream.setAndRate());
    }
    return problem
        .given(COURSE, Quantity.TRUE_BEARING, course.degrees(), "laid off on the chart")
        .given(SPEED, Quantity.KNOTS, speed.knots(), "through the water")
        .given(SET, Quantity.TRUE_BEARING, stream.set().degrees(), "where the stream goes")
        .given(RATE, Quantity.KNOTS, stream.rate().knots(), "of the stream")
        .then(
            WATER_TRACK,
            Quantity.TRUE_BEARING,
            "an hour of stream from the start; from its end swing an hour of paddling to the track",
            f -> solved(f, f.of(SPEED))[0])
        .slip(
            WATER_TRACK,
            "aimed off down stream",
            Slip.COMMON,
            f -> 2.0 * f.of(COURSE) - solved(f, f.of(SPEED))[0])
        .slip(
            WATER_TRACK,
            "end of the stream joined to the mark, not the paddling speed swung to the track",
            Slip.COMMON,
            f -> joined(f))
        .slip(WATER_TRACK, "stream left out", Slip.SOMETIMES, f -> f.of(COURSE))
        .slip(
            WATER_TRACK,
            "an hour of stream with half an hour of paddling",
            Slip.SOMETIMES,
            f -> solved(f, f.of(SPEED) / 2.0)[0])
        .slip(
            WATER_TRACK,
            "half an hour of stream with an hour of paddling",
            Slip.SOMETIMES,
            f -> solved(f, f.of(SPEED) * 2.0)[0]);
  }

  /** Water track and speed made good, degrees and knots; NaN where not possible. */
  private static double[] solved(Figures f, double speedKnots) {
    double set = Math.toRadians(f.of(SET));
    double[] out = new double[2];
    SteadyTriangle.solve(
        f.of(COURSE), speedKnots, f.of(RATE) * Math.sin(set), f.of(RATE) * Math.cos(set), out, 0);
    return out;
  }

  /** The mark an hour's paddling off along the course, joined from the end of the stream. */
  private static double joined(Figures f) {
    double course = Math.toRadians(f.of(COURSE));
    double set = Math.toRadians(f.of(SET));
    double east = f.of(SPEED) * Math.sin(course) - f.of(RATE) * Math.sin(set);
    double north = f.of(SPEED) * Math.cos(course) - f.of(RATE) * Math.cos(set);
    return Angles.reduced(Math.toDegrees(Math.atan2(east, north)));
  }

  /**
   * The heading that allows for leeway.
   *
   * @param waterTrack the water track wanted
   * @param windFrom where the wind comes from
   * @param leewayDegrees how far the craft is set down wind of its heading, degrees, above 0 and
   *     below 45
   * @param variation variation at the place and date
   * @return the problem; its answer is the magnetic heading
   * @throws IllegalArgumentException if {@code leewayDegrees} is out of range or the wind is dead
   *     ahead or astern
   */
  public static Problem leeway(
      TrueBearing waterTrack, TrueBearing windFrom, double leewayDegrees, Variation variation) {
    double angle = Arguments.within(leewayDegrees, 0.0, 45.0, "leeway", "degrees");
    double off = waterTrack.turnDegreesTo(windFrom);
    if (off == 0.0 || Math.abs(off) == 180.0) {
      throw new IllegalArgumentException(
          "wind from " + windFrom + " is dead ahead or astern of " + waterTrack + ": no leeway");
    }
    Problem problem =
        Problem.titled("Heading that allows for leeway")
            .given(
                WATER_TRACK,
                Quantity.TRUE_BEARING,
                waterTrack.degrees(),
                "wanted through the water")
            .given("Wind from", Quantity.TRUE_BEARING, windFrom.degrees(), "forecast")
            .slip(
                "Wind from",
                "wind taken as where it goes",
                Slip.COMMON,
                f -> f.of("Wind from") + 180.0)
            .given("Leeway", Quantity.ANGLE, angle, "of this craft in this wind")
            .given(VARIATION, Quantity.EAST_WEST, variation.degreesEast(), "there and then")
            .then(
                "True heading",
                Quantity.TRUE_BEARING,
                "leeway applied towards the wind",
                f ->
                    f.of(WATER_TRACK)
                        + Math.copySign(
                            f.of("Leeway"), Angles.turn(f.of(WATER_TRACK), f.of("Wind from"))))
            .slip(
                "True heading",
                "leeway to the wrong side",
                Slip.COMMON,
                f ->
                    f.of(WATER_TRACK)
                        - Math.copySign(
                            f.of("Leeway"), Angles.turn(f.of(WATER_TRACK), f.of("Wind from"))))
            .slip("True heading", "leeway left out", Slip.SOMETIMES, f -> f.of(WATER_TRACK))
            .then(
                HEADING,
                Quantity.MAGNETIC_BEARING,
                Slips.takeOff("variation", variation.degreesEast(), "true"),
                f -> f.of("True heading") - f.of(VARIATION));
    return Slips.takingOff(problem, HEADING, "True heading", VARIATION, "variation")
        .estimated("the wind on my " + (off > 0 ? "right" : "left") + ": the bow goes that way")
        .checked("is the bow up wind of the water track?");
  }
}
