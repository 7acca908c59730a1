package org.ferryglide.nav.reckon;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;

/**
 * The ellipse about a position that holds the true one with a stated chance.
 *
 * <p>The chance is part of the ellipse, because ellipses drawn without it mislead: the one of one
 * standard deviation holds the truth in only 39 cases of a hundred, and the usual 95 % ellipse is
 * 2.4477 times as large. The factor is √(-2 ln(1 - chance)), exact for normal errors.
 *
 * <pre>{@code
 * ErrorEllipse ellipse = estimated.covariance().ellipse(0.95);
 * ellipse.semiMajorAxis().inNauticalMiles(1); // 0.4 NM
 * ellipse.direction().threeDigits(); // 062°, or its reciprocal
 * }</pre>
 *
 * @param semiMajorAxis half the longest diameter
 * @param semiMinorAxis half the shortest diameter
 * @param direction where the longest diameter points, in [0, 180); 000 for a circle
 * @param chance the chance that the true position lies inside, in [0, 1)
 */
public record ErrorEllipse(
    Distance semiMajorAxis, Distance semiMinorAxis, TrueBearing direction, double chance)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /** What the ellipse of one standard deviation holds: 1 - e^(-1/2), 39.35 %. */
  public static final double ONE_STANDARD_DEVIATION = 1.0 - Math.exp(-0.5);

  /**
   * Takes all parts.
   *
   * @param semiMajorAxis half the longest diameter
   * @param semiMinorAxis half the shortest diameter, in [0, semiMajorAxis]
   * @param direction where the longest diameter points
   * @param chance the chance that the true position lies inside, in [0, 1)
   * @throws IllegalArgumentException if {@code chance} is outside [0, 1) or the axes are not in
   *     order
   */
  public ErrorEllipse {
    chanceOf(chance);
    Arguments.within(
        semiMinorAxis.metres(), 0.0, semiMajorAxis.metres(), "semi-minor axis", "metres");
  }

  static ErrorEllipse of(Covariance covariance, double chance) {
    double factor = Math.sqrt(-2.0 * Math.log1p(-chanceOf(chance)));
    double mean = 0.5 * (covariance.eastVariance() + covariance.northVariance());
    double difference = 0.5 * (covariance.eastVariance() - covariance.northVariance());
    double offDiagonal = covariance.eastNorthCovariance();
    double spread = Math.hypot(difference, offDiagonal);
    double greatest = mean + spread;
    // The product of both is the determinant; taking the least from it does not cancel.
    double determinant =
        covariance.eastVariance() * covariance.northVariance() - offDiagonal * offDiagonal;
    double least = greatest > 0.0 ? Math.max(0.0, determinant / greatest) : 0.0;
    double radians = spread > 0.0 ? 0.5 * Math.atan2(offDiagonal, -difference) : 0.0;
    double degrees = Math.toDegrees(radians);
    return new ErrorEllipse(
        Distance.ofMetres(factor * Math.sqrt(greatest)),
        Distance.ofMetres(factor * Math.sqrt(Math.min(least, greatest))),
        TrueBearing.ofDegrees(degrees < 0.0 ? degrees + 180.0 : degrees >= 180.0 ? 0.0 : degrees),
        chance);
  }

  private static double chanceOf(double chance) {
    if (!(chance >= 0.0 && chance < 1.0)) { // written so that NaN fails
      throw new IllegalArgumentException("chance must be in [0, 1), but was " + chance);
    }
    return chance;
  }

  /**
   * The area inside.
   *
   * @return square metres
   */
  public double areaSquareMetres() {
    return Math.PI * semiMajorAxis.metres() * semiMinorAxis.metres();
  }

  /** For people: chance, axes in whole metres, direction. */
  @Override
  public String toString() {
    return Math.round(chance * 1000.0) / 10.0
        + " % ellipse, "
        + Math.round(semiMajorAxis.metres())
        + " m by "
        + Math.round(semiMinorAxis.metres())
        + " m, longest toward "
        + direction.threeDigits();
  }
}
