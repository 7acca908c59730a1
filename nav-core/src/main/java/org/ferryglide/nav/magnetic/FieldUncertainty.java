package org.ferryglide.nav.magnetic;

import java.io.Serializable;

/**
 * One-sigma errors of the elements at one place, from the errors published with the model.
 *
 * <p>Two times in three the truth lies within one sigma, nineteen times in twenty within two;
 * charted local anomalies excepted.
 *
 * <pre>{@code
 * snapshot.uncertainty(place).get().declinationDegrees(); // 0.38
 * }</pre>
 *
 * @param northNanotesla north component, nanotesla
 * @param eastNanotesla east component, nanotesla
 * @param downNanotesla down component, nanotesla
 * @param horizontalNanotesla horizontal intensity, nanotesla
 * @param totalNanotesla total intensity, nanotesla
 * @param dipDegrees dip, degrees
 * @param declinationDegrees declination, degrees, at most 180
 */
public record FieldUncertainty(
    double northNanotesla,
    double eastNanotesla,
    double downNanotesla,
    double horizontalNanotesla,
    double totalNanotesla,
    double dipDegrees,
    double declinationDegrees)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  static FieldUncertainty of(MagneticErrorModel errors, double horizontalNanotesla) {
    return new FieldUncertainty(
        errors.northNanotesla(),
        errors.eastNanotesla(),
        errors.downNanotesla(),
        errors.horizontalNanotesla(),
        errors.totalNanotesla(),
        errors.dipDegrees(),
        errors.declinationDegrees(horizontalNanotesla));
  }
}
