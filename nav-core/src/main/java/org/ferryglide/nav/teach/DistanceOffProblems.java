package org.ferryglide.nav.teach;

import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.sight.BowBearings;
import org.ferryglide.nav.sight.DistanceOff;
import org.ferryglide.nav.sight.Refraction;

/**
 * Problems of how far off a mark is: by two bearings on the bow, by the vertical angle of its
 * height, by one in sixty.
 *
 * <p>The exact answers are those of {@link BowBearings} and {@link DistanceOff}; rules and slips
 * are common practice, no source.
 *
 * <pre>{@code
 * Problem problem = DistanceOffProblems.bowBearings(Distance.ofNauticalMiles(1.2), 35.0, 70.0);
 * problem.answer(); // 1.2: the angle has doubled, so the run is the distance off
 * }</pre>
 */
public final class DistanceOffProblems {
  private static final String RUN = "Run";
  private static final String FIRST = "First angle";
  private static final String SECOND = "Second angle";
  private static final String OFF = "Distance off";
  private static final String DISTANCE = "Distance";
  private static final String CHARTED = "Charted height";
  private static final String DATUM = "Level of heights";
  private static final String TIDE = "Tide";
  private static final String LIGHT = "Horizon of the light";
  private static final String EYE = "Horizon of the eye";

  /** Miles to the horizon from a metre of height; Bowditch's constant for metres is 2.12. */
  private static final double HORIZON_MILES =
      Refraction.ONE_SEVENTH.horizon(Distance.ofMetres(1.0)).nauticalMiles();

  private static final double MILES_MINUTES_PER_METRE = Math.toDegrees(60.0) / 1852.0;

  private DistanceOffProblems() {}

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
   * Distance off by the height of a mark and its vertical angle.
   *
   * @param charted height as charted, above the level the chart states for heights
   * @param datum that level above chart datum
   * @param tide height of the tide above chart datum now
   * @param minutesOfArc angle from the waterline to the top, minutes, above 0 and at most 600
   * @return the problem; its answer is the distance off
   * @throws IllegalArgumentException if a value is out of range or the mark stands under water
   */
  public static Problem verticalAngle(
      Distance charted, Distance datum, Distance tide, double minutesOfArc) {
    Arguments.positive(charted.metres(), "charted height", "metres");
    Arguments.positive(charted.plus(datum).minus(tide).metres(), "height above water", "metres");
    Arguments.positive(minutesOfArc, "angle", "minutes of arc");
    Arguments.within(minutesOfArc, 0.0, 600.0, "angle", "minutes of arc");
    return Problem.titled("Distance off by a vertical angle")
        .given(CHARTED, Quantity.METRES, charted.metres(), "above the level of heights")
        .given(DATUM, Quantity.METRES, datum.metres(), "that level above chart datum")
        .given(TIDE, Quantity.METRES, tide.metres(), "above chart datum now")
        .given("Angle", Quantity.ARC_MINUTES, minutesOfArc, "waterline to top")
        .then(
            "Height",
            Quantity.METRES,
            "charted height, and what the tide has fallen below the level of heights",
            f -> f.of(CHARTED) + f.of(DATUM) - f.of(TIDE))
        .slip(
            "Height",
            "height from the wrong datum: taken as charted",
            Slip.COMMON,
            f -> f.of(CHARTED))
        .slip(
            "Height",
            "height from the wrong datum: taken from chart datum",
            Slip.SOMETIMES,
            f -> f.of(CHARTED) + f.of(DATUM))
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
   * Distance off a light as it rises above the horizon or dips below it.
   *
   * @param height height of the light above the water now, above 0
   * @param eyeHeight height of the eye above the water, above 0
   * @return the problem; its answer is the distance off
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Problem risingLight(Distance height, Distance eyeHeight) {
    Arguments.positive(height.metres(), "height of the light", "metres");
    Arguments.positive(eyeHeight.metres(), "height of the eye", "metres");
    return Problem.titled("Distance off a light that rises or dips")
        .given("Height", Quantity.METRES, height.metres(), "of the light above the water now")
        .given("Eye", Quantity.METRES, eyeHeight.metres(), "above the water")
        .then(
            LIGHT,
            Quantity.NAUTICAL_MILES,
            "2.08 times the square root of the light's height in metres",
            f -> HORIZON_MILES * Math.sqrt(f.of("Height")))
        .then(
            EYE,
            Quantity.NAUTICAL_MILES,
            "2.08 times the square root of the eye's height in metres",
            f -> HORIZON_MILES * Math.sqrt(f.of("Eye")))
        .then(OFF, Quantity.NAUTICAL_MILES, "both horizons together", f -> f.of(LIGHT) + f.of(EYE))
        .slip(OFF, "horizon of the eye left out", Slip.COMMON, f -> f.of(LIGHT))
        .slip(
            OFF,
            "one root of both heights together",
            Slip.SOMETIMES,
            f -> HORIZON_MILES * Math.sqrt(f.of("Height") + f.of("Eye")))
        .slip(
            OFF,
            "statute miles for nautical miles",
            Slip.SOMETIMES,
            f -> f.of(OFF) * 1852.0 / 1609.344)
        .estimated("twice the root of the height, and two miles for my own eye")
        .checked("no farther than the light's own range?");
  }

  private static double sine(double degrees) {
    return Math.sin(Math.toRadians(degrees));
  }
}
