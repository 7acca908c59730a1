package org.ferryglide.tide.height;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;

/**
 * How a height at the standard port becomes the height at a secondary port: by a difference, by a
 * ratio, or by differences printed for springs and for neaps.
 *
 * <pre>{@code
 * // the standard port's mean high water springs 4.2 m and neaps 3.4 m; differences +1.1 and +0.8 m
 * HeightCorrection high = HeightCorrection.betweenLevels(4.2, 1.1, 3.4, 0.8);
 * high.heightMetres(3.8); // 4.75
 * HeightCorrection.ratio(0.95).heightMetres(10.0); // 9.5
 * }</pre>
 *
 * <p>Every one is a straight line, continued beyond springs and neaps.
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
   * @param metres the difference, metres, in [-20, 20]
   * @return the correction
   * @throws IllegalArgumentException if {@code metres} is NaN or outside [-20, 20]
   */
  public static HeightCorrection difference(double metres) {
    return ratioAndDifference(1.0, metres);
  }

  /**
   * A number to multiply the standard port's height by; both heights above their own datum.
   *
   * @param ratio the ratio, in [0, 10]
   * @return the correction
   * @throws IllegalArgumentException if {@code ratio} is NaN or outside [0, 10]
   */
  public static HeightCorrection ratio(double ratio) {
    return ratioAndDifference(ratio, 0.0);
  }

  /**
   * A number to multiply the standard port's height by, and then a height to add.
   *
   * @param ratio the ratio, in [0, 10]
   * @param metres the difference, metres, in [-20, 20]
   * @return the correction
   * @throws IllegalArgumentException if an argument is NaN or outside its range
   */
  public static HeightCorrection ratioAndDifference(double ratio, double metres) {
    return new HeightCorrection(
        Arguments.within(ratio, 0.0, 10.0, "height ratio", "times"),
        Arguments.within(metres, -20.0, 20.0, "height difference", "metres"),
        Double.NEGATIVE_INFINITY,
        Double.POSITIVE_INFINITY);
  }

  /**
   * Differences printed for two levels of the standard port: its mean high waters at springs and at
   * neaps, or its mean low waters.
   *
   * @param springLevelMetres the standard port's level at springs, metres
   * @param springDifferenceMetres height to add at that level, metres, in [-20, 20]
   * @param neapLevelMetres the standard port's level at neaps, metres, not the same
   * @param neapDifferenceMetres height to add at that level, metres, in [-20, 20]
   * @return the correction
   * @throws IllegalArgumentException if an argument is NaN, infinite or outside its range, or the
   *     two levels are the same
   */
  public static HeightCorrection betweenLevels(
      double springLevelMetres,
      double springDifferenceMetres,
      double neapLevelMetres,
      double neapDifferenceMetres) {
    double springs = Arguments.finite(springLevelMetres, "level at springs", "metres");
    double neaps = Arguments.finite(neapLevelMetres, "level at neaps", "metres");
    double atSprings =
        Arguments.within(springDifferenceMetres, -20.0, 20.0, "height difference", "metres");
    double atNeaps =
        Arguments.within(neapDifferenceMetres, -20.0, 20.0, "height difference", "metres");
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

  /**
   * The height at the secondary port.
   *
   * @param standardMetres height at the standard port, metres above its datum
   * @return metres above the secondary port's datum; NaN for NaN
   */
  public double heightMetres(double standardMetres) {
    return factor * standardMetres + addedMetres;
  }

  /**
   * Whether a height lies beyond the two levels that the differences were printed for, so that
   * their line is continued.
   *
   * @param standardMetres height at the standard port, metres above its datum
   * @return true above the higher or below the lower of the two levels; never for a ratio or a
   *     single difference
   */
  public boolean isBeyondLevels(double standardMetres) {
    return standardMetres < lowestMetres || standardMetres > highestMetres;
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
