package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;

/**
 * How fast each element of the field changes at one place and date, as the model has it.
 *
 * <pre>{@code
 * SecularChange change = snapshot.secularChange(place);
 * change.annualChange().printed(); // 12'E, to set beside the rose's
 * }</pre>
 *
 * @param northNanotesla north component, nanotesla a year
 * @param eastNanotesla east component, nanotesla a year
 * @param downNanotesla down component, nanotesla a year
 * @param horizontalNanotesla horizontal intensity, nanotesla a year
 * @param totalNanotesla total intensity, nanotesla a year
 * @param dipDegrees dip, degrees a year, down positive
 * @param declinationDegrees declination, degrees a year, east positive
 */
public record SecularChange(
    double northNanotesla,
    double eastNanotesla,
    double downNanotesla,
    double horizontalNanotesla,
    double totalNanotesla,
    double dipDegrees,
    double declinationDegrees)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final double MINUTES_IN_DEGREE = 60.0;

  /**
   * Takes all seven changes in a year.
   *
   * @param northNanotesla north component, nanotesla
   * @param eastNanotesla east component, nanotesla
   * @param downNanotesla down component, nanotesla
   * @param horizontalNanotesla horizontal intensity, nanotesla
   * @param totalNanotesla total intensity, nanotesla
   * @param dipDegrees dip, degrees
   * @param declinationDegrees declination, degrees
   * @throws IllegalArgumentException if one is NaN or infinite, as they are where the horizontal
   *     field vanishes
   */
  public SecularChange {
    northNanotesla = Arguments.finite(northNanotesla, "change of north", "nanotesla");
    eastNanotesla = Arguments.finite(eastNanotesla, "change of east", "nanotesla");
    downNanotesla = Arguments.finite(downNanotesla, "change of down", "nanotesla");
    horizontalNanotesla =
        Arguments.finite(horizontalNanotesla, "change of horizontal intensity", "nanotesla");
    totalNanotesla = Arguments.finite(totalNanotesla, "change of total intensity", "nanotesla");
    dipDegrees = Arguments.finite(dipDegrees, "change of dip", "degrees");
    declinationDegrees = Arguments.finite(declinationDegrees, "change of declination", "degrees");
  }

  /**
   * The change of the variation as charts print it.
   *
   * @return minutes of arc a year
   * @throws IllegalArgumentException beside a magnetic pole, where it exceeds a full turn a year
   */
  public AnnualChange annualChange() {
    return AnnualChange.ofMinutesEast(declinationDegrees * MINUTES_IN_DEGREE);
  }
}
