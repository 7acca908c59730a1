package org.ferryglide.nav.sight;

import java.io.Serializable;
import java.util.List;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;

/**
 * Distance off by two angles on the bow and the run between them: the running fix done in the head.
 *
 * <p>The run is over the ground. A stream that is left out is a direct error of the distance.
 *
 * <pre>{@code
 * BowBearings.atSecond(run, 30, 60); // doubling the angle: the run itself
 * BowBearings.abeam(run, 45, 90); // four-point bearing: the run itself
 * BowBearings.abeam(run, 22.5, 45); // 0.707 of the run
 * }</pre>
 */
public final class BowBearings {
  private BowBearings() {}

  private static final double HALF_CIRCLE = 180.0;

  /**
   * The pairs of angles with which the run itself is the distance when abeam: cot A - cot B = 1.
   */
  private static final List<AnglePair> RUN_IS_DISTANCE_ABEAM =
      List.of(
          new AnglePair(22.0, secondFor(22.0)),
          new AnglePair(25.0, secondFor(25.0)),
          new AnglePair(Math.toDegrees(Math.atan(0.5)), 45.0),
          new AnglePair(27.0, secondFor(27.0)),
          new AnglePair(29.0, secondFor(29.0)),
          new AnglePair(32.0, secondFor(32.0)),
          new AnglePair(36.0, secondFor(36.0)),
          new AnglePair(40.0, secondFor(40.0)),
          new AnglePair(45.0, 90.0));

  /**
   * The distance of the mark at the second bearing.
   *
   * @param run distance made good over the ground between the bearings, at least 0
   * @param firstDegrees first angle between the track over the ground and the mark, degrees, in (0,
   *     180)
   * @param secondDegrees second angle, degrees, in (firstDegrees, 180)
   * @return run times sin A / sin(B - A)
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Distance atSecond(Distance run, double firstDegrees, double secondDegrees) {
    double metres = Arguments.notNegative(run.metres(), "run", "metres");
    return Distance.ofMetres(metres * atSecondFactor(firstDegrees, secondDegrees));
  }

  /**
   * The distance of the mark when it is, will be or was abeam of the track.
   *
   * @param run distance made good over the ground between the bearings, at least 0
   * @param firstDegrees first angle on the bow, degrees, in (0, 180)
   * @param secondDegrees second angle on the bow, degrees, in (firstDegrees, 180)
   * @return run times sin A sin B / sin(B - A)
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Distance abeam(Distance run, double firstDegrees, double secondDegrees) {
    return atSecond(run, firstDegrees, secondDegrees)
        .times(Math.sin(Math.toRadians(secondDegrees)));
  }

  /**
   * The second angle at which the run will equal the distance abeam.
   *
   * @param firstDegrees first angle on the bow, degrees, in (0, 45]
   * @return the second angle, degrees, in (firstDegrees, 90]
   * @throws IllegalArgumentException if {@code firstDegrees} is out of range
   */
  public static double secondDegreesForRunAbeam(double firstDegrees) {
    if (!(firstDegrees > 0.0 && firstDegrees <= 45.0)) { // written so that NaN fails
      throw new IllegalArgumentException(
          "first angle must be in (0, 45] degrees, but was " + firstDegrees);
    }
    return secondFor(firstDegrees);
  }

  /**
   * Pairs worth remembering with which the run between the bearings is the distance abeam.
   *
   * @return pairs of angles, exact, in ascending order; unmodifiable
   */
  public static List<AnglePair> pairsForRunAbeam() {
    return RUN_IS_DISTANCE_ABEAM;
  }

  private static double secondFor(double first) {
    double cotangent = 1.0 / Math.tan(Math.toRadians(first)) - 1.0;
    return Math.toDegrees(Math.atan2(1.0, cotangent));
  }

  private static double atSecondFactor(double first, double second) {
    if (!(first > 0.0 && first < second && second < HALF_CIRCLE)) { // written so that NaN fails
      throw new IllegalArgumentException(
          "angles on the bow must increase within (0, 180) degrees, but were "
              + first
              + " and "
              + second);
    }
    return Math.sin(Math.toRadians(first)) / Math.sin(Math.toRadians(second - first));
  }

  /**
   * Two angles on the bow.
   *
   * <pre>{@code
   * new BowBearings.AnglePair(45, 90);
   * }</pre>
   *
   * @param firstDegrees the first angle, degrees
   * @param secondDegrees the second angle, degrees
   */
  public record AnglePair(double firstDegrees, double secondDegrees) implements Serializable {

    private static final long serialVersionUID = 1L;

    /**
     * Takes both angles.
     *
     * @param firstDegrees the first angle, degrees, in (0, 180)
     * @param secondDegrees the second angle, degrees, in (firstDegrees, 180)
     * @throws IllegalArgumentException if the angles do not grow within (0, 180)
     */
    public AnglePair {
      atSecondFactor(firstDegrees, secondDegrees);
    }
  }
}
