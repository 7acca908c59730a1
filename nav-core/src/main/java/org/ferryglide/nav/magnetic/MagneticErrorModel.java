package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;

/**
 * One-sigma errors of a magnetic model, in the form in which the World Magnetic Model publishes
 * them.
 *
 * <p>They cover what the model cannot know (rocks, currents in the upper atmosphere) as well as the
 * error of its coefficients, and are averages over the globe and the model's five years. Near a
 * charted local anomaly they do not hold. The error of the declination grows where the horizontal
 * field is weak: {@code sqrt(offset² + (slope / H)²)}, at most 180°.
 *
 * <pre>{@code
 * MagneticErrorModel errors = MagneticModel.wmm2025().errorModel().get();
 * errors.declinationDegrees(19_000.0); // 0.386: one sigma, about 0.4°
 * }</pre>
 *
 * @param northNanotesla error of the north component, nanotesla
 * @param eastNanotesla error of the east component, nanotesla
 * @param downNanotesla error of the down component, nanotesla
 * @param horizontalNanotesla error of the horizontal intensity, nanotesla
 * @param totalNanotesla error of the total intensity, nanotesla
 * @param dipDegrees error of the dip, degrees
 * @param declinationOffsetDegrees least error of the declination, degrees
 * @param declinationSlope what the error of the declination gains as the horizontal field weakens,
 *     degrees times nanotesla
 */
public record MagneticErrorModel(
    double northNanotesla,
    double eastNanotesla,
    double downNanotesla,
    double horizontalNanotesla,
    double totalNanotesla,
    double dipDegrees,
    double declinationOffsetDegrees,
    double declinationSlope)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /** WMM2025's, for a model that came without: such models are about as good as one another. */
  static final MagneticErrorModel USUAL =
      new MagneticErrorModel(137.0, 89.0, 141.0, 133.0, 138.0, 0.20, 0.26, 5417.0);

  private static final double MOST_DEGREES = 180.0;

  /**
   * Takes all eight figures as published with a model.
   *
   * @param northNanotesla error of the north component, nanotesla
   * @param eastNanotesla error of the east component, nanotesla
   * @param downNanotesla error of the down component, nanotesla
   * @param horizontalNanotesla error of the horizontal intensity, nanotesla
   * @param totalNanotesla error of the total intensity, nanotesla
   * @param dipDegrees error of the dip, degrees
   * @param declinationOffsetDegrees least error of the declination, degrees
   * @param declinationSlope degrees times nanotesla
   * @throws IllegalArgumentException if a figure is NaN, infinite or negative
   */
  public MagneticErrorModel {
    Arguments.notNegative(northNanotesla, "error of the north component", "nanotesla");
    Arguments.notNegative(eastNanotesla, "error of the east component", "nanotesla");
    Arguments.notNegative(downNanotesla, "error of the down component", "nanotesla");
    Arguments.notNegative(horizontalNanotesla, "error of the horizontal intensity", "nanotesla");
    Arguments.notNegative(totalNanotesla, "error of the total intensity", "nanotesla");
    Arguments.notNegative(dipDegrees, "error of the dip", "degrees");
    Arguments.notNegative(declinationOffsetDegrees, "offset of the declination error", "degrees");
    Arguments.notNegative(
        declinationSlope, "slope of the declination error", "degrees times nanotesla");
  }

  /**
   * One-sigma error of the declination where the horizontal field has a given strength.
   *
   * @param horizontalNanotesla horizontal intensity, nanotesla, at least 0
   * @return degrees, in (0, 180]; 180 where the horizontal field vanishes
   * @throws IllegalArgumentException if {@code horizontalNanotesla} is NaN, infinite or negative
   */
  public double declinationDegrees(double horizontalNanotesla) {
    double h = Arguments.notNegative(horizontalNanotesla, "horizontal intensity", "nanotesla");
    if (h == 0.0) {
      return MOST_DEGREES;
    }
    double weak = declinationSlope / h;
    return Math.min(
        MOST_DEGREES, Math.sqrt(declinationOffsetDegrees * declinationOffsetDegrees + weak * weak));
  }
}
