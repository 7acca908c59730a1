package org.ferryglide.tide.teach;

import java.time.LocalTime;
import java.util.Objects;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;
import org.ferryglide.tide.height.ClockDifferences;
import org.ferryglide.tide.height.HeightCorrection;

/**
 * Problems of a secondary port: the time and the height of a water from those of its standard port.
 *
 * <p>Clock times are minutes since midnight and may pass midnight. The exact answers are those of
 * {@link ClockDifferences} and {@link HeightCorrection}; slips are common practice, no source.
 *
 * <pre>{@code
 * ClockDifferences differences =
 *     ClockDifferences.of(LocalTime.of(3, 0), 51).and(LocalTime.of(9, 0), 44);
 * Problem problem = SecondaryPortProblems.time(406.0, differences, 60.0);
 * problem.answer(); // minutes since midnight by the local clock
 * }</pre>
 */
public final class SecondaryPortProblems {
  private static final String STANDARD = "Standard port";
  private static final String SPRINGS = "Springs";
  private static final String NEAPS = "Neaps";
  private static final String AT_SPRINGS = "Difference at springs";
  private static final String AT_NEAPS = "Difference at neaps";
  private static final String DIFFERENCE = "Difference";
  private static final String HEIGHT = "Height";

  private SecondaryPortProblems() {}

  /**
   * The time of a high or low water at a secondary port.
   *
   * @param standardClockMinutes time at the standard port in its table's zone, minutes since
   *     midnight
   * @param differences the port's differences by the clock of the standard port
   * @param summerTimeMinutes minutes to add for local summer time, after the differences
   * @return the problem; its answer is the time by the local clock
   * @throws IllegalArgumentException if a value is NaN or infinite
   */
  public static Problem time(
      double standardClockMinutes, ClockDifferences differences, double summerTimeMinutes) {
    return Problem.titled("Time of a water at a secondary port")
        .given("Standard port", Quantity.CLOCK, standardClockMinutes, "its table, its zone")
        .given("Summer time", Quantity.MINUTES, summerTimeMinutes, "to add, last of all")
        .then(
            "Difference",
            Quantity.MINUTES,
            "between the printed columns, by the time at the standard port",
            f -> difference(differences, f.of("Standard port")))
        .slip(
            "Difference",
            "hour of summer time added before the difference was looked up",
            4.0,
            f -> difference(differences, f.of("Standard port") + f.of("Summer time")))
        .slip("Difference", "difference taken the wrong way", 4.0, f -> -f.of("Difference"))
        .slip("Difference", "difference left out: the standard port's own time", 4.0, f -> 0.0)
        .then(
            "Port's own zone",
            Quantity.CLOCK,
            "standard port and difference",
            f -> f.of("Standard port") + f.of("Difference"))
        .then(
            "Local clock",
            Quantity.CLOCK,
            "summer time added",
            f -> f.of("Port's own zone") + f.of("Summer time"))
        .slip(
            "Local clock",
            "summer time taken off",
            2.0,
            f -> f.of("Port's own zone") - f.of("Summer time"))
        .estimated("about the standard port's time, an hour on in summer")
        .checked("does the flood get there before or after it passes the standard port?");
  }

  private static double difference(ClockDifferences differences, double clockMinutes) {
    long second = Math.floorMod(Math.round(clockMinutes * 60.0), 86400L);
    return differences.minutesAt(LocalTime.ofSecondOfDay(second));
  }

  /**
   * The height of a high or low water at a secondary port.
   *
   * @param standard height of the water at the standard port
   * @param springLevel mean spring level of that water at the standard port
   * @param springDifference difference printed for it
   * @param neapLevel mean neap level at the standard port
   * @param neapDifference difference printed for it
   * @return the problem; its answer is the height at the secondary port
   * @throws IllegalArgumentException if a difference or a level is beyond what {@link
   *     HeightCorrection#betweenLevels} takes
   */
  public static Problem height(
      Distance standard,
      Distance springLevel,
      Distance springDifference,
      Distance neapLevel,
      Distance neapDifference) {
    Objects.requireNonNull(standard, "standard");
    HeightCorrection.betweenLevels(
        springLevel, springDifference, neapLevel, neapDifference); // refuses
    return Problem.titled("Height of a water at a secondary port")
        .given(STANDARD, Quantity.METRES, standard.metres(), "height of the water there")
        .given(SPRINGS, Quantity.METRES, springLevel.metres(), "mean level at the standard port")
        .given(AT_SPRINGS, Quantity.METRES, springDifference.metres(), "printed")
        .given(NEAPS, Quantity.METRES, neapLevel.metres(), "mean level at the standard port")
        .given(AT_NEAPS, Quantity.METRES, neapDifference.metres(), "printed")
        .then(
            "Neaps to springs",
            Quantity.SHARE,
            "height less the neap level over spring level less neap level",
            f -> (f.of(STANDARD) - f.of(NEAPS)) / (f.of(SPRINGS) - f.of(NEAPS)))
        .slip(
            "Neaps to springs",
            "springs and neaps swapped",
            4.0,
            f -> 1.0 - f.of("Neaps to springs"))
        .then(
            DIFFERENCE,
            Quantity.METRES,
            "the neap difference and its share of the way to the spring one",
            f -> f.of(AT_NEAPS) + f.of("Neaps to springs") * (f.of(AT_SPRINGS) - f.of(AT_NEAPS)))
        .slip(DIFFERENCE, "spring difference taken as it stands", 2.0, f -> f.of(AT_SPRINGS))
        .slip(DIFFERENCE, "neap difference taken as it stands", 2.0, f -> f.of(AT_NEAPS))
        .then(
            HEIGHT,
            Quantity.METRES,
            "height at the standard port and the difference",
            f -> f.of(STANDARD) + f.of(DIFFERENCE))
        .slip(HEIGHT, "difference taken the wrong way", 4.0, f -> f.of(STANDARD) - f.of(DIFFERENCE))
        .slip(
            HEIGHT, "difference left out: the standard port's own height", 4.0, f -> f.of(STANDARD))
        .estimated("the standard port's height, more or less as the differences say")
        .checked("is the difference between the two printed ones, or just beyond them?");
  }
}
