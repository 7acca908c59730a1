package org.ferryglide.nav.teach;

import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Distance;

/**
 * Problems of finding out where one is.
 *
 * <p>The exact answers are those of plane triangles; rules and slips are common practice, no
 * source.
 *
 * <pre>{@code
 * Problem problem =
 *     FixingProblems.runningFix(
 *         TrueBearing.ofDegrees(50), TrueBearing.ofDegrees(80), TrueBearing.ofDegrees(20),
 *         Distance.ofNauticalMiles(1.3), TrueBearing.ofDegrees(90), Distance.ofNauticalMiles(0.3));
 * problem.answer(); // nautical miles from the mark at the second bearing
 * }</pre>
 */
public final class FixingProblems {
  private static final String RUN = "Run";
  private static final String OFF = "Distance off";

  private static final String BETWEEN = "First to second mark";
  private static final String APART = "Distance between marks";
  private static final String FIRST = "First bearing";
  private static final String SECOND = "Second bearing";
  private static final String FIRST_TRUE = "First bearing, true";
  private static final String SECOND_TRUE = "Second bearing, true";

  /** What a sine of nought may come to, and more: a party in line with both marks has no cut. */
  private static final double ROUNDED = 1e-9;

  private FixingProblems() {}

  /**
   * A fix by the bearings of two marks, with a hand compass without deviation.
   *
   * @param between true bearing of the second mark from the first, off the chart
   * @param apart distance between the marks, above 0
   * @param first magnetic bearing of the first mark
   * @param second magnetic bearing of the second mark
   * @param variation variation at the place and date
   * @return the problem; its answer is the distance off the first mark, along its bearing reversed,
   *     and {@code Off the second mark} is among its figures
   * @throws IllegalArgumentException if the bearings do not cut on the side of the party
   */
  public static Problem twoBearings(
      TrueBearing between,
      Distance apart,
      MagneticBearing first,
      MagneticBearing second,
      Variation variation) {
    double east = variation.degreesEast();
    Problem problem =
        Problem.titled("Fix by the bearings of two marks")
            .given(BETWEEN, Quantity.TRUE_BEARING, between.degrees(), "off the chart")
            .given(APART, Quantity.NAUTICAL_MILES, apart.nauticalMiles(), "off the chart")
            .given(FIRST, Quantity.MAGNETIC_BEARING, first.degrees(), "of the first mark")
            .given(SECOND, Quantity.MAGNETIC_BEARING, second.degrees(), "of the second mark")
            .given("Variation", Quantity.EAST_WEST, east, "there and then")
            .then(
                FIRST_TRUE,
                Quantity.TRUE_BEARING,
                Slips.add("variation", east, "magnetic"),
                f -> f.of(FIRST) + f.of("Variation"))
            .then(
                SECOND_TRUE,
                Quantity.TRUE_BEARING,
                Slips.add("variation", east, "magnetic"),
                f -> f.of(SECOND) + f.of("Variation"))
            .slip(FIRST_TRUE, "variation left out", Slip.COMMON, f -> f.of(FIRST))
            .slip(SECOND_TRUE, "variation left out", Slip.COMMON, f -> f.of(SECOND))
            .slip(
                SECOND_TRUE,
                "variation with the wrong sign",
                Slip.COMMON,
                f -> f.of(SECOND) - f.of("Variation"))
            .then(
                "Off the second mark",
                Quantity.NAUTICAL_MILES,
                "both bearings laid off, reversed, from their marks; measured to where they cut",
                f -> offSecond(f))
            .then(
                OFF,
                Quantity.NAUTICAL_MILES,
                "the same, measured to the first mark",
                f -> offFirst(f, FIRST_TRUE, SECOND_TRUE))
            .slip(
                OFF,
                "bearings of the two marks swapped",
                Slip.SOMETIMES,
                f -> offFirst(f, SECOND_TRUE, FIRST_TRUE))
            .slip(OFF, "measured to the other mark", Slip.COMMON, f -> f.of("Off the second mark"))
            .estimated("a wide cut is a good fix: at least thirty degrees between the bearings")
            .checked("does a third bearing pass where the two cut?");
    double one = first.toTrue(variation).degrees();
    double two = second.toTrue(variation).degrees();
    double cut = sine(two - one);
    if (!(Math.abs(cut) > ROUNDED
        && sine(between.degrees() - two) / cut > ROUNDED
        && sine(between.degrees() - one) / cut > ROUNDED)) {
      throw new IllegalArgumentException(
          "bearings " + first + " and " + second + " do not cut on this side of the marks");
    }
    return problem;
  }

  /** A line of bearing is the same from both its ends, so that a distance has no sign. */
  private static double offFirst(Figures f, String first, String second) {
    double one = f.of(first);
    double two = f.of(second);
    return f.of(APART) * Math.abs(sine(f.of(BETWEEN) - two) / sine(two - one));
  }

  private static double offSecond(Figures f) {
    double one = f.of(FIRST_TRUE);
    double two = f.of(SECOND_TRUE);
    return f.of(APART) * Math.abs(sine(f.of(BETWEEN) - one) / sine(two - one));
  }

  private static double sine(double degrees) {
    return Math.sin(Math.toRadians(degrees));
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
            .given(FIRST, Quantity.TRUE_BEARING, first.degrees(), "of the mark")
            .given(SECOND, Quantity.TRUE_BEARING, second.degrees(), "of the same mark")
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
    if (!(problem.answer() > ROUNDED)) {
      throw new IllegalArgumentException(
          "bearings " + first + " and " + second + " do not cut ahead of the party on this run");
    }
    return problem;
  }

  /** Distance off at the second bearing; below zero or NaN where the lines do not cut ahead. */
  private static double carried(Figures f, double runs, double drifts) {
    double[] moved = moved(f, runs, drifts);
    double one = Math.toRadians(f.of(FIRST));
    double two = Math.toRadians(f.of(SECOND));
    double cut = Math.sin(two - one);
    double across = moved[0] * Math.cos(one) - moved[1] * Math.sin(one);
    return cut == 0.0 ? Double.NaN : -across / cut;
  }

  private static double atFirst(Figures f) {
    double[] moved = moved(f, 1.0, 1.0);
    double one = Math.toRadians(f.of(FIRST));
    double two = Math.toRadians(f.of(SECOND));
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
}
