package org.ferryglide.nav.teach;

import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.magnetic.CompassRose;

/**
 * Problems of the chart itself: its rose and its scales.
 *
 * <p>The exact answers are those of {@link CompassRose}; rules and slips are common practice, no
 * source.
 *
 * <pre>{@code
 * Problem problem =
 *     ChartProblems.roseCarriedForward(
 *         TrueBearing.ofDegrees(100), CompassRose.parse("4°15'W 2012 (8'E)"), 2026);
 * problem.answer(); // magnetic
 * }</pre>
 */
public final class ChartProblems {

  private static final String TRUE = BearingProblems.TRUE;
  private static final String VARIATION = BearingProblems.VARIATION;
  private static final String PRINTED = "Printed variation";
  private static final String NORTH = "North";
  private static final String EAST = "East";
  private static final String LATITUDE = "Middle latitude";
  private static final String EDGE = "Latitude of the other edge";
  private static final String DEPARTURE = "Miles east";
  private static final String LENGTH = "Distance";

  private ChartProblems() {}

  /**
   * A printed rose carried forward to a later year, then applied.
   *
   * @param course true course
   * @param rose the rose printed on the chart
   * @param year the year it is used in
   * @return the problem; its answer is the magnetic course
   * @throws IllegalArgumentException if {@code year} is beyond the years of {@link
   *     CompassRose#variationInYear}
   */
  public static Problem roseCarriedForward(TrueBearing course, CompassRose rose, int year) {
    Variation now = rose.variationInYear(year);
    double printed = rose.variation().degreesEast();
    int years = year - rose.year();
    double change = years == 0 ? 0.0 : (now.degreesEast() - printed) / years;
    Problem problem =
        Problem.titled("Magnetic course with a rose of " + rose.year() + " in " + year)
            .given(PRINTED, Quantity.EAST_WEST, printed, "on the rose")
            .given("Years since", Quantity.COUNT, years, "this year less the rose's")
            .given(TRUE, Quantity.TRUE_BEARING, course.degrees(), "outer ring of the rose")
            .slip(
                TRUE,
                "wrong ring of the rose: the inner one is magnetic already",
                Slip.COMMON,
                f -> f.of(TRUE) - f.of(PRINTED))
            .then(
                "Change since",
                Quantity.EAST_WEST,
                "years times " + rose.annualChange() + " a year",
                f -> f.of("Years since") * change)
            .then(
                VARIATION,
                Quantity.EAST_WEST,
                "printed variation and change, east and west apart",
                f -> f.of(PRINTED) + f.of("Change since"))
            .slip(VARIATION, "year of the rose forgotten", Slip.COMMON, f -> f.of(PRINTED))
            .slip(
                VARIATION,
                "change taken the wrong way",
                Slip.COMMON,
                f -> f.of(PRINTED) - f.of("Change since"))
            .slip("Change since", "change of one year only", Slip.RARE, f -> change);
    return BearingProblems.magnetic(problem, now).checked(BearingProblems.WAY_ROUND);
  }

  /**
   * The length of a leg measured on a chart, from its minutes of latitude and longitude.
   *
   * <p>A minute of longitude is a mile times the cosine of the middle latitude. On a sphere the
   * answer is within 0.1 % of the rhumb line for legs up to 60 NM below 65° of latitude; the
   * ellipsoid moves it by up to 0.6 %.
   *
   * @param minutesNorth difference of latitude, minutes, north positive
   * @param minutesEast difference of longitude, minutes, east positive
   * @param middleLatitudeDegrees middle latitude of the leg, degrees either way of the equator, in
   *     [0, 75]
   * @param otherEdgeDegrees latitude of the chart's far edge, where a careless reader holds the
   *     dividers, degrees, in [0, 80]
   * @return the problem; its answer is the length, and {@code Course} among its figures the course
   * @throws IllegalArgumentException if a value is out of range or the leg has no length
   */
  public static Problem measuredLeg(
      double minutesNorth,
      double minutesEast,
      double middleLatitudeDegrees,
      double otherEdgeDegrees) {
    Arguments.within(middleLatitudeDegrees, 0.0, 75.0, "middle latitude", "degrees");
    Arguments.within(otherEdgeDegrees, 0.0, 80.0, "latitude of the other edge", "degrees");
    Arguments.positive(Math.hypot(minutesNorth, minutesEast), "leg", "minutes");
    return Problem.titled("Length of a leg on the chart")
        .given(NORTH, Quantity.LATITUDE_MINUTES, minutesNorth, "minutes of latitude, south below 0")
        .given(EAST, Quantity.LATITUDE_MINUTES, minutesEast, "minutes of longitude, west below 0")
        .given(LATITUDE, Quantity.ANGLE, middleLatitudeDegrees, "of the leg")
        .given(EDGE, Quantity.ANGLE, otherEdgeDegrees, "of the same chart")
        .then(
            DEPARTURE,
            Quantity.NAUTICAL_MILES,
            "minutes of longitude times the cosine of the middle latitude",
            f -> f.of(EAST) * cosine(f.of(LATITUDE)))
        .slip(DEPARTURE, "minutes of longitude taken for miles", Slip.COMMON, f -> f.of(EAST))
        .then(
            "Course",
            Quantity.TRUE_BEARING,
            "from the miles east and north",
            f -> Angles.reduced(Math.toDegrees(Math.atan2(f.of(DEPARTURE), f.of(NORTH)))))
        .then(
            LENGTH,
            Quantity.NAUTICAL_MILES,
            "with dividers, held to the latitude scale beside the leg",
            f -> Math.hypot(f.of(NORTH), f.of(DEPARTURE)))
        .slip(
            LENGTH,
            "miles off the longitude scale",
            Slip.COMMON,
            f -> f.of(LENGTH) / cosine(f.of(LATITUDE)))
        .slip(
            LENGTH,
            "latitude scale at the wrong latitude",
            Slip.SOMETIMES,
            f -> f.of(LENGTH) * cosine(f.of(EDGE)) / cosine(f.of(LATITUDE)))
        .slip(
            LENGTH,
            "north and east added, not taken as two sides",
            Slip.RARE,
            f -> Math.abs(f.of(NORTH)) + Math.abs(f.of(DEPARTURE)))
        .estimated("a minute of latitude is a mile; a minute of longitude is less")
        .checked("longer than its longer side, shorter than both together?");
  }

  private static double cosine(double degrees) {
    return Math.cos(Math.toRadians(degrees));
  }
}
