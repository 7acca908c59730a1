package org.ferryglide.nav.teach;

import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.sight.BowBearings;
import org.ferryglide.nav.sight.ClearingBearing;
import org.ferryglide.nav.sight.DistanceOff;

/**
 * Problems of finding out where one is: distance off, running fix, aiming off, clearing bearing,
 * daylight.
 *
 * <p>The exact answers are those of plane triangles, and of {@link BowBearings} and {@link
 * DistanceOff} where they answer; rules and slips are common practice, no source.
 *
 * <pre>{@code
 * Problem problem = FixingProblems.bowBearings(Distance.ofNauticalMiles(1.2), 35.0, 70.0);
 * problem.answer(); // 1.2: the angle has doubled, so the run is the distance off
 * }</pre>
 */
public final class FixingProblems {
  private static final String RUN = "Run";
  private static final String FIRST = "First angle";
  private static final String SECOND = "Second angle";
  private static final String OFF = "Distance off";
  private static final String DISTANCE = "Distance";

  /** Minutes of arc times miles off for a metre of height: 3437.75 minutes in 1852 metres. */
  private static final double MILES_MINUTES_PER_METRE = Math.toDegrees(60.0) / 1852.0;

  private FixingProblems() {}

  /**
   * Distance off by two bearings on the bow and the run between them.
   *
   * @param run distance made good between the bearings, above 0
   * @param firstDegrees first angle on the bow, degrees, in (0, 180)
   * @param secondDegrees second angle, degrees, in (firstDegrees, 180)
   * @return the problem; its answer is the distance off at the second bearing
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Problem bowBearings(Distance run, double firstDegrees, double secondDegrees) {
    BowBearings.atSecond(run, firstDegrees, secondDegrees); // refuses what is out of range
    return Problem.titled("Distance off by two bearings on the bow")
        .given(RUN, Quantity.NAUTICAL_MILES, run.nauticalMiles(), "made good between them")
        .given(FIRST, Quantity.ANGLE, firstDegrees, "on the bow")
        .given(SECOND, Quantity.ANGLE, secondDegrees, "on the bow")
        .then(
            "Angle between",
            Quantity.ANGLE,
            "second angle less the first",
            f -> f.of(SECOND) - f.of(FIRST))
        .then(
            OFF,
            Quantity.NAUTICAL_MILES,
            "run times sine of the first angle over sine of the angle between",
            f -> f.of(RUN) * sine(f.of(FIRST)) / sine(f.of("Angle between")))
        .slip(
            OFF,
            "sine of the second angle taken",
            Slip.SOMETIMES,
            f -> f.of(RUN) * sine(f.of(SECOND)) / sine(f.of("Angle between")))
        .slip(OFF, "run taken though the angle has not doubled", Slip.COMMON, f -> f.of(RUN))
        .slip(
            OFF,
            "distance when abeam taken",
            Slip.SOMETIMES,
            f -> f.of(RUN) * sine(f.of(FIRST)) / sine(f.of("Angle between")) * sine(f.of(SECOND)))
        .estimated("an angle that has doubled: as far off as I have run")
        .checked("a mark that comes abeam fast is near");
  }

  /**
   * Distance off by the height of a mark and the angle it stands under.
   *
   * @param heightMetres height of the top above the water now, metres, above 0
   * @param minutesOfArc angle from the waterline to the top, minutes, above 0 and at most 600
   * @return the problem; its answer is the distance off
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Problem verticalAngle(double heightMetres, double minutesOfArc) {
    Arguments.positive(heightMetres, "height", "metres");
    Arguments.positive(minutesOfArc, "angle", "minutes of arc");
    Arguments.within(minutesOfArc, 0.0, 600.0, "angle", "minutes of arc");
    return Problem.titled("Distance off by a vertical angle")
        .given("Height", Quantity.METRES, heightMetres, "above the water now")
        .given("Angle", Quantity.ARC_MINUTES, minutesOfArc, "waterline to top")
        .then(
            OFF,
            Quantity.NAUTICAL_MILES,
            "height in metres over minutes of arc, times 1.86",
            f -> f.of("Height") / 1852.0 / Math.tan(Math.toRadians(f.of("Angle") / 60.0)))
        .slip(
            OFF,
            "height taken in feet",
            Slip.SOMETIMES,
            f -> f.of("Height") * 0.3048 * MILES_MINUTES_PER_METRE / f.of("Angle"))
        .slip(
            OFF,
            "statute miles for nautical miles",
            Slip.SOMETIMES,
            f -> f.of("Height") / 1609.344 * Math.toDegrees(60.0) / f.of("Angle"))
        .slip(
            OFF,
            "angle over height",
            Slip.RARE,
            f -> f.of("Angle") * MILES_MINUTES_PER_METRE / f.of("Height"))
        .estimated("twice the height over the minutes, a little less")
        .checked("a mark under a wide angle is near");
  }

  /**
   * How far a small angle carries one off: one in sixty.
   *
   * @param distance distance paddled, above 0
   * @param degrees angle off, degrees, above 0 and at most 20
   * @return the problem; its answer is the distance off the line
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Problem oneInSixty(Distance distance, double degrees) {
    Arguments.positive(distance.metres(), "distance", "metres");
    Arguments.within(degrees, 0.1, 20.0, "angle", "degrees");
    return Problem.titled("How far off by a small angle")
        .given(DISTANCE, Quantity.NAUTICAL_MILES, distance.nauticalMiles(), "paddled")
        .given("Angle", Quantity.ANGLE, degrees, "off the line")
        .then(
            "Off the line",
            Quantity.NAUTICAL_MILES,
            "one degree in sixty is one: distance times angle over 60",
            f -> f.of(DISTANCE) * f.of("Angle") / 60.0)
        .slip(
            "Off the line",
            "ten per degree in place of one in sixty",
            Slip.RARE,
            f -> f.of(DISTANCE) * f.of("Angle") / 10.0)
        .slip(
            "Off the line",
            "angle divided by the distance",
            Slip.SOMETIMES,
            f -> f.of("Angle") / f.of(DISTANCE))
        .estimated("six degrees is a tenth of the way")
        .checked("a small angle is a small share of the way");
  }

  /**
   * A running fix on one mark: the first bearing carried along by the run and by the stream.
   *
   * @param first first true bearing of the mark
   * @param second second true bearing of the mark
   * @param waterTrack track through the water between them
   * @param run distance run through the water between them, above 0
   * @param set where the stream goes
   * @param drift how far it carried meanwhile, at least 0
   * @return the problem; its answer is the distance off at the second bearing
   * @throws IllegalArgumentException if the bearings do not cut ahead of the party
   */
  public static Problem runningFix(
      TrueBearing first,
      TrueBearing second,
      TrueBearing waterTrack,
      Distance run,
      TrueBearing set,
      Distance drift) {
    Problem problem =
        Problem.titled("Distance off by a running fix")
            .given("First bearing", Quantity.TRUE_BEARING, first.degrees(), "of the mark")
            .given("Second bearing", Quantity.TRUE_BEARING, second.degrees(), "of the same mark")
            .given(
                "Water track", Quantity.TRUE_BEARING, waterTrack.degrees(), "between the bearings")
            .given(RUN, Quantity.NAUTICAL_MILES, run.nauticalMiles(), "through the water")
            .given("Set", Quantity.TRUE_BEARING, set.degrees(), "of the stream")
            .given("Drift", Quantity.NAUTICAL_MILES, drift.nauticalMiles(), "of the stream")
            .then(
                OFF,
                Quantity.NAUTICAL_MILES,
                "first bearing carried on by run and drift; where it cuts the second",
                f -> carried(f, 1.0, 1.0))
            .slip(
                OFF,
                "first bearing not carried with the stream",
                Slip.COMMON,
                f -> carried(f, 1.0, 0.0))
            .slip(
                OFF,
                "first bearing carried against the stream",
                Slip.COMMON,
                f -> carried(f, 1.0, -1.0))
            .slip(OFF, "run left out: carried by the stream only", Slip.RARE, f -> carried(f, 0, 1))
            .slip(
                OFF, "distance at the first bearing taken", Slip.SOMETIMES, FixingProblems::atFirst)
            .estimated("as far off as I have run, where the angle has doubled")
            .checked("does the place lie down stream of the dead reckoning?");
    if (!(problem.answer() > 0.0)) {
      throw new IllegalArgumentException(
          "bearings " + first + " and " + second + " do not cut ahead of the party on this run");
    }
    return problem;
  }

  /** Distance off at the second bearing; below zero or NaN where the lines do not cut ahead. */
  private static double carried(Figures f, double runs, double drifts) {
    double[] moved = moved(f, runs, drifts);
    double one = Math.toRadians(f.of("First bearing"));
    double two = Math.toRadians(f.of("Second bearing"));
    double cut = Math.sin(two - one);
    double across = moved[0] * Math.cos(one) - moved[1] * Math.sin(one);
    return cut == 0.0 ? Double.NaN : -across / cut;
  }

  private static double atFirst(Figures f) {
    double[] moved = moved(f, 1.0, 1.0);
    double one = Math.toRadians(f.of("First bearing"));
    double two = Math.toRadians(f.of("Second bearing"));
    double cut = Math.sin(two - one);
    double across = moved[0] * Math.cos(two) - moved[1] * Math.sin(two);
    return cut == 0.0 ? Double.NaN : -across / cut;
  }

  private static double[] moved(Figures f, double runs, double drifts) {
    double track = Math.toRadians(f.of("Water track"));
    double set = Math.toRadians(f.of("Set"));
    double run = runs * f.of(RUN);
    double drift = drifts * f.of("Drift");
    return new double[] {
      run * Math.sin(track) + drift * Math.sin(set), run * Math.cos(track) + drift * Math.cos(set)
    };
  }

  /**
   * Aiming off up stream of a mark, so that one knows which way to turn at the coast.
   *
   * @param course true course to the mark
   * @param set where the stream goes, not along the course
   * @param degrees how far to aim off, degrees, above 0 and at most 30
   * @return the problem; its answer is the true course to aim
   * @throws IllegalArgumentException if {@code degrees} is out of range, or the stream sets along
   *     the course
   */
  public static Problem aimOff(TrueBearing course, TrueBearing set, double degrees) {
    Arguments.within(degrees, 0.5, 30.0, "angle aimed off", "degrees");
    double across = course.turnTo(set);
    if (across == 0.0 || Math.abs(across) == 180.0) {
      throw new IllegalArgumentException("a stream along the course has no side to aim up to");
    }
    return Problem.titled("Aiming off up stream of a mark")
        .given("Course", Quantity.TRUE_BEARING, course.degrees(), "straight to the mark")
        .given("Set", Quantity.TRUE_BEARING, set.degrees(), "where the stream goes")
        .given("Angle", Quantity.ANGLE, degrees, "to aim off by")
        .then(
            "Course aimed",
            Quantity.TRUE_BEARING,
            "turned away from where the stream goes",
            f -> f.of("Course") - side(f) * f.of("Angle"))
        .slip(
            "Course aimed",
            "aimed off down stream",
            Slip.COMMON,
            f -> f.of("Course") + side(f) * f.of("Angle"))
        .slip("Course aimed", "not aimed off", Slip.SOMETIMES, f -> f.of("Course"))
        .estimated("the stream brings me down to it; never the other way")
        .checked("at the coast, the turn to the mark is down stream");
  }

  private static double side(Figures f) {
    return Math.signum(Angles.turn(f.of("Course"), f.of("Set")));
  }

  /**
   * The limiting bearing of a mark past a danger.
   *
   * @param toDanger true bearing of the danger's middle from the mark
   * @param distance distance of the danger's middle from the mark
   * @param clearance distance to keep from it, above 0 and below {@code distance}
   * @param danger on which side of one who looks at the mark the danger lies
   * @return the problem; its answer is the limiting true bearing of the mark
   * @throws IllegalArgumentException if {@code clearance} is out of range
   */
  public static Problem clearingBearing(
      TrueBearing toDanger, Distance distance, Distance clearance, ClearingBearing.Danger danger) {
    Arguments.positive(clearance.metres(), "clearance", "metres");
    if (clearance.metres() >= distance.metres()) {
      throw new IllegalArgumentException(
          "clearance must be less than the distance of the danger from the mark, was "
              + clearance.inNauticalMiles(2)
              + " of "
              + distance.inNauticalMiles(2));
    }
    boolean toPort = danger == ClearingBearing.Danger.TO_PORT;
    double side = toPort ? -1.0 : 1.0;
    return Problem.titled(
            "Clearing bearing with the danger " + (toPort ? "to port" : "to starboard"))
        .given("Mark to danger", Quantity.TRUE_BEARING, toDanger.degrees(), "on the chart")
        .given(DISTANCE, Quantity.NAUTICAL_MILES, distance.nauticalMiles(), "mark to danger")
        .given("Clearance", Quantity.NAUTICAL_MILES, clearance.nauticalMiles(), "to keep off")
        .then(
            "Half angle",
            Quantity.ANGLE,
            "of the ring round the danger, seen from the mark",
            f -> Math.toDegrees(Math.asin(f.of("Clearance") / f.of(DISTANCE))))
        .then(
            "Clearing bearing",
            Quantity.TRUE_BEARING,
            "touching the ring on my side, reversed: from me to the mark",
            f -> f.of("Mark to danger") + side * f.of("Half angle") + 180.0)
        .slip(
            "Clearing bearing",
            "touching the ring on the wrong side",
            Slip.COMMON,
            f -> f.of("Mark to danger") - side * f.of("Half angle") + 180.0)
        .slip(
            "Clearing bearing",
            "laid through the danger itself",
            Slip.SOMETIMES,
            f -> f.of("Mark to danger") + 180.0)
        .estimated("a little outside the line from danger to mark")
        .checked("from anywhere on it, is the danger on the side I think?");
  }

  /**
   * The daylight left when the party lands.
   *
   * @param departure time of day, minutes since midnight
   * @param minutes time under way, minutes, above 0
   * @param sunset time of day, minutes since midnight
   * @return the problem; its answer is the daylight left in minutes, below zero after sunset
   * @throws IllegalArgumentException if a value is not finite or {@code minutes} is not above 0
   */
  public static Problem daylightLeft(double departure, double minutes, double sunset) {
    Arguments.positive(minutes, "time under way", "minutes");
    return Problem.titled("Daylight left on landing")
        .given("Departure", Quantity.CLOCK, departure, "local time")
        .given("Under way", Quantity.MINUTES, minutes, "rests and stops in it")
        .given("Sunset", Quantity.CLOCK, sunset, "at the landing, local time")
        .then(
            "Arrival",
            Quantity.CLOCK,
            "departure and time under way",
            f -> f.of("Departure") + f.of("Under way"))
        .then(
            "Daylight left",
            Quantity.MINUTES,
            "sunset less arrival",
            f -> f.of("Sunset") - f.of("Arrival"))
        .estimated("hours first, then minutes")
        .checked("does departure, time and daylight add up to sunset?");
  }

  private static double sine(double degrees) {
    return Math.sin(Math.toRadians(degrees));
  }
}
