package org.ferryglide.nav.teach;

import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.DeviationTable;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.GridConvergence;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;

/**
 * Problems of the norths: from the chart or the land map to the compass on deck, and back.
 *
 * <p>The exact answers are those of {@link Variation}, {@link Deviation} and {@link
 * GridConvergence}; rules and slips are common practice, no source.
 *
 * <pre>{@code
 * Problem problem =
 *     BearingProblems.trueToCompass(
 *         TrueBearing.ofDegrees(45), Variation.ofDegreesWest(4), Deviation.ofDegreesEast(3));
 * problem.answer(); // 46.0
 * problem.mark(40.0); // variation with the wrong sign … likeliest first
 * }</pre>
 */
public final class BearingProblems {
  static final String TRUE = "True course";
  private static final String MAGNETIC = "Magnetic course";
  private static final String COMPASS = "Compass course";
  private static final String GRID = "Grid bearing";
  static final String VARIATION = "Variation";
  private static final String DEVIATION = "Deviation";
  private static final String CONVERGENCE = "Convergence";
  static final String WAY_ROUND =
      "which way round: the course must point at the mark, not back from it";

  private BearingProblems() {}

  /**
   * From a course on the chart to one by a compass without deviation.
   *
   * @param course true course
   * @param variation variation at the place and date
   * @return the problem; its answer is the magnetic course
   */
  public static Problem trueToMagnetic(TrueBearing course, Variation variation) {
    return magnetic(
            Problem.titled("Magnetic course of a leg on the chart")
                .given(TRUE, Quantity.TRUE_BEARING, course.degrees(), "laid off on the chart")
                .given(VARIATION, Quantity.EAST_WEST, variation.degreesEast(), "there and then"),
            variation)
        .checked(WAY_ROUND);
  }

  /**
   * From a course on the chart to one by a compass with deviation.
   *
   * @param course true course
   * @param variation variation at the place and date
   * @param deviation deviation on that course
   * @return the problem; its answer is the compass course
   */
  public static Problem trueToCompass(
      TrueBearing course, Variation variation, Deviation deviation) {
    Problem problem =
        magnetic(
            Problem.titled("Compass course of a leg on the chart")
                .given(TRUE, Quantity.TRUE_BEARING, course.degrees(), "laid off on the chart")
                .given(VARIATION, Quantity.EAST_WEST, variation.degreesEast(), "there and then")
                .given(DEVIATION, Quantity.EAST_WEST, deviation.degreesEast(), "on that course"),
            variation);
    return compass(problem, deviation.degreesEast()).checked(WAY_ROUND);
  }

  /**
   * From a course on the chart to one by a compass whose deviation is read from a card, at the
   * magnetic course.
   *
   * @param course true course
   * @param variation variation at the place and date
   * @param card deviation by magnetic heading
   * @return the problem; its answer is the compass course
   */
  public static Problem trueToCompass(
      TrueBearing course, Variation variation, DeviationTable card) {
    double deviation = card.deviationOn(course.toMagnetic(variation)).degreesEast();
    Problem problem =
        magnetic(
                Problem.titled("Compass course by the deviation card")
                    .given(TRUE, Quantity.TRUE_BEARING, course.degrees(), "laid off on the chart")
                    .given(
                        VARIATION, Quantity.EAST_WEST, variation.degreesEast(), "there and then"),
                variation)
            .then(
                DEVIATION,
                Quantity.EAST_WEST,
                "read at the magnetic course",
                f -> onMagnetic(card, f.of(MAGNETIC)))
            .slip(
                DEVIATION,
                "read at the reversed course, the wrong heading",
                Slip.SOMETIMES,
                f -> onMagnetic(card, f.of(MAGNETIC) + 180.0));
    return compass(problem, deviation).checked(WAY_ROUND);
  }

  private static double onMagnetic(DeviationTable card, double degrees) {
    return card.deviationOn(MagneticBearing.ofDegrees(degrees)).degreesEast();
  }

  /**
   * From a bearing by the deck compass to one for the chart.
   *
   * @param bearing compass bearing
   * @param deviation deviation on the heading while it was taken
   * @param variation variation at the place and date
   * @return the problem; its answer is the true bearing
   */
  public static Problem compassToTrue(
      CompassBearing bearing, Deviation deviation, Variation variation) {
    Problem problem =
        Problem.titled("True bearing from the deck compass")
            .given("Compass bearing", Quantity.COMPASS_BEARING, bearing.degrees(), "taken afloat")
            .given(DEVIATION, Quantity.EAST_WEST, deviation.degreesEast(), "on the heading steered")
            .given(VARIATION, Quantity.EAST_WEST, variation.degreesEast(), "there and then")
            .then(
                "Magnetic bearing",
                Quantity.MAGNETIC_BEARING,
                Slips.add("deviation", deviation.degreesEast(), "compass"),
                f -> f.of("Compass bearing") + f.of(DEVIATION))
            .then(
                "True bearing",
                Quantity.TRUE_BEARING,
                Slips.add("variation", variation.degreesEast(), "magnetic"),
                f -> f.of("Magnetic bearing") + f.of(VARIATION));
    problem = Slips.adding(problem, "Magnetic bearing", "Compass bearing", DEVIATION, "deviation");
    return Slips.adding(problem, "True bearing", "Magnetic bearing", VARIATION, "variation")
        .estimated("compass to true: add east, take off west")
        .checked("laid on the chart, the line must pass where the party can be");
  }

  /**
   * From a land map's grid to the deck compass.
   *
   * @param bearing grid bearing
   * @param convergence angle between the norths of the grid and of the meridian
   * @param variation variation at the place and date
   * @return the problem; its answer is the magnetic course
   */
  public static Problem gridToMagnetic(
      GridBearing bearing, GridConvergence convergence, Variation variation) {
    Problem problem =
        Problem.titled("Magnetic course of a leg on the land map")
            .given(GRID, Quantity.GRID_BEARING, bearing.degrees(), "laid off on the map")
            .given(CONVERGENCE, Quantity.EAST_WEST, convergence.degreesEast(), "of the grid there")
            .given(VARIATION, Quantity.EAST_WEST, variation.degreesEast(), "there and then")
            .then(
                TRUE,
                Quantity.TRUE_BEARING,
                Slips.add("convergence", convergence.degreesEast(), "grid"),
                f -> f.of(GRID) + f.of(CONVERGENCE));
    problem = Slips.adding(problem, TRUE, GRID, CONVERGENCE, "convergence");
    return magnetic(problem, variation).checked(WAY_ROUND);
  }

  /**
   * The bearing of the mark left astern, for holding the track.
   *
   * @param track track over the ground
   * @param heading where the bow points meanwhile
   * @param variation variation at the place and date
   * @return the problem; its answer is the magnetic back bearing
   */
  public static Problem backBearing(TrueBearing track, TrueBearing heading, Variation variation) {
    Problem problem =
        Problem.titled("Back bearing that holds the track")
            .given("Track", Quantity.TRUE_BEARING, track.degrees(), "over the ground")
            .given("Heading", Quantity.TRUE_BEARING, heading.degrees(), "where the bow points")
            .given(VARIATION, Quantity.EAST_WEST, variation.degreesEast(), "there and then")
            .then(
                "Astern",
                Quantity.TRUE_BEARING,
                "reverse the track, not the heading",
                f -> f.of("Track") + 180.0)
            .slip(
                "Astern",
                "taken from the heading instead of the track",
                Slip.COMMON,
                f -> f.of("Heading") + 180.0)
            .then(
                "Back bearing",
                Quantity.MAGNETIC_BEARING,
                Slips.takeOff("variation", variation.degreesEast(), "true"),
                f -> f.of("Astern") - f.of(VARIATION));
    return Slips.takingOff(problem, "Back bearing", "Astern", VARIATION, "variation")
        .estimated("two hundred more and twenty less, or the other way about")
        .checked("the mark left must be seen on it from the track");
  }

  static Problem magnetic(Problem problem, Variation variation) {
    return Slips.takingOff(
        problem
            .then(
                MAGNETIC,
                Quantity.MAGNETIC_BEARING,
                Slips.takeOff("variation", variation.degreesEast(), "true"),
                f -> f.of(TRUE) - f.of(VARIATION))
            .estimated(
                "variation "
                    + (variation.degreesEast() < 0
                        ? "west: magnetic is more"
                        : "east: magnetic is less")
                    + " than true"),
        MAGNETIC,
        TRUE,
        VARIATION,
        "variation");
  }

  private static Problem compass(Problem problem, double deviation) {
    return Slips.takingOff(
        problem.then(
            COMPASS,
            Quantity.COMPASS_BEARING,
            Slips.takeOff("deviation", deviation, "magnetic"),
            f -> f.of(MAGNETIC) - f.of(DEVIATION)),
        COMPASS,
        MAGNETIC,
        DEVIATION,
        "deviation");
  }
}
