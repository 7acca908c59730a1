package org.ferryglide.tide.height;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;

/**
 * How a height at the standard port becomes the height at a secondary port: by a difference, by a
 * ratio, or by differences printed for springs and for neaps.
 *
 * <pre>{@code
 * // the standard port's mean high water springs 4.2 m and neaps 3.4 m; differences +1.1 and +0.8 m
 * HeightCorrection high = HeightCorrection.betweenLevels(
 *     Distance.ofMetres(4.2), Distance.ofMetres(1.1), Distance.ofMetres(3.4), Distance.ofMetres(0.8));
 * high.height(Distance.ofMetres(3.8)); // 4.75 m
 * HeightCorrection.ratio(0.95).height(Distance.ofMetres(10.0)); // 9.5 m
 * }</pre>
 *
 * <p>Each is linear in the height, and extrapolated beyond springs and neaps.
 */
public final class HeightCorrection implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double factor;
  private final double addedMetres;

  /** Levels between which the line was printed; everything for a ratio or a difference. */
  private final double lowestMetres;

  private final double highestMetres;

  private HeightCorrection(
      double factor, double addedMetres, double lowestMetres, double highestMetres) {
    this.factor = factor;
    this.addedMetres = addedMetres;
    this.lowestMetres = lowestMetres;
    this.highestMetres = highestMetres;
  }

  /**
   * A height to add to the standard port's.
   *
   * @param difference the difference, in [-20, 20] metres
   * @return the correction
   * @throws IllegalArgumentException if {@code difference} is outside [-20, 20] metres
   */
  public static HeightCorrection difference(Distance difference) {
    return ratioAndDifference(1.0, difference);
  }

  /**
   * A number to multiply the standard port's height by; both heights above their own datum.
   *
   * @param ratio the ratio, in [0, 10]
   * @return the correction
   * @throws IllegalArgumentException if {@code ratio} is NaN or outside [0, 10]
   */
  public static HeightCorrection ratio(double ratio) {
    return ratioAndDifference(ratio, Distance.ZERO);
  }

  /**
   * A number to multiply the standard port's height by, and then a height to add.
   *
   * @param ratio the ratio, in [0, 10]
   * @param difference the difference, in [-20, 20] metres
   * @return the correction
   * @throws IllegalArgumentException if the ratio is NaN, or an argument is outside its range
   */
  public static HeightCorrection ratioAndDifference(double ratio, Distance difference) {
    return new HeightCorrection(
        Arguments.within(ratio, 0.0, 10.0, "height ratio", "times"),
        checked(difference),
        Double.NEGATIVE_INFINITY,
        Double.POSITIVE_INFINITY);
  }

  /**
   * Differences printed for two levels of the standard port: its mean high waters at springs and at
   * neaps, or its mean low waters.
   *
   * @param springLevel the standard port's level at springs
   * @param springDifference height to add at that level, in [-20, 20] metres
   * @param neapLevel the standard port's level at neaps, not the same
   * @param neapDifference height to add at that level, in [-20, 20] metres
   * @return the correction
   * @throws IllegalArgumentException if a difference is outside its range, or the two levels are
   *     the same
   */
  public static HeightCorrection betweenLevels(
      Distance springLevel,
      Distance springDifference,
      Distance neapLevel,
      Distance neapDifference) {
    double springs = springLevel.metres();
    double neaps = neapLevel.metres();
    double atSprings = checked(springDifference);
    double atNeaps = checked(neapDifference);
    if (springs == neaps) {
      throw new IllegalArgumentException(
          "levels at springs and at neaps must differ, but both were " + springs + " metres");
    }
    double gradient = (atSprings - atNeaps) / (springs - neaps);
    return new HeightCorrection(
        1.0 + gradient,
        atNeaps - gradient * neaps,
        Math.min(springs, neaps),
        Math.max(springs, neaps));
  }

  private static double checked(Distance difference) {
    return Arguments.within(difference.metres(), -20.0, 20.0, "height difference", "metres");
  }

  /**
   * The height at the secondary port.
   *
   * @param standard height at the standard port, above its datum
   * @return height above the secondary port's datum
   */
  public Distance height(Distance standard) {
    return Distance.ofMetres(factor * standard.metres() + addedMetres);
  }

  /**
   * Whether a height lies beyond the two levels that the differences were printed for, so that they
   * are extrapolated.
   *
   * @param standard height at the standard port, above its datum
   * @return true above the higher or below the lower of the two levels; never for a ratio or a
   *     single difference
   */
  public boolean isBeyondLevels(Distance standard) {
    return standard.metres() < lowestMetres || standard.metres() > highestMetres;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HeightCorrection that
        && Double.compare(factor, that.factor) == 0
        && Double.compare(addedMetres, that.addedMetres) == 0
        && Double.compare(lowestMetres, that.lowestMetres) == 0
        && Double.compare(highestMetres, that.highestMetres) == 0;
  }

  @Override
  public int hashCode() {
    return Objects.hash(factor, addedMetres, lowestMetres, highestMetres);
  }

  /** Ratio and difference; the levels it was printed between are left out. */
  @Override
  public String toString() {
    return "height x " + factor + " + " + addedMetres + " m";
  }
}
