package org.ferryglide.nav.teach;

import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.sight.ClearingBearing;

/**
 * Problems of coming to a coast: aiming off, a clearing bearing, the daylight left.
 *
 * <p>The exact answers are those of plane triangles; rules and slips are common practice, no
 * source.
 *
 * <pre>{@code
 * Problem problem =
 *     LandfallProblems.aimOff(TrueBearing.ofDegrees(90), TrueBearing.ofDegrees(180), 8.0);
 * problem.answer(); // 082: up stream, to the north
 * }</pre>
 */
public final class LandfallProblems {
  private static final String DISTANCE = "Distance";

  private LandfallProblems() {}

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
    double across = course.turnDegreesTo(set);
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
   * @param departureClockMinutes time of day, minutes since midnight
   * @param minutes time under way, minutes, above 0
   * @param sunsetClockMinutes time of day, minutes since midnight
   * @return the problem; its answer is the daylight left in minutes, below zero after sunset
   * @throws IllegalArgumentException if a value is not finite or {@code minutes} is not above 0
   */
  public static Problem daylightLeft(
      double departureClockMinutes, double minutes, double sunsetClockMinutes) {
    Arguments.positive(minutes, "time under way", "minutes");
    return Problem.titled("Daylight left on landing")
        .given("Departure", Quantity.CLOCK, departureClockMinutes, "local time")
        .given("Under way", Quantity.MINUTES, minutes, "rests and stops in it")
        .given("Sunset", Quantity.CLOCK, sunsetClockMinutes, "at the landing, local time")
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
}
