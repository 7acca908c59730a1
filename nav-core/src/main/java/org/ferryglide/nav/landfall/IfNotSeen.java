package org.ferryglide.nav.landfall;

import java.io.Serializable;
import java.time.Duration;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.plane.Gaussian;
import org.ferryglide.nav.reckon.Covariance;

/**
 * Where the target is likely to be if it has not been seen by a stated time, and which way to turn.
 *
 * <p>Not having seen it is knowledge too: the places from which it would have been seen are ruled
 * out, and the other chances grow. Having aimed off, the answer is nearly always the chosen side.
 *
 * <pre>{@code
 * Duration grace = IfNotSeen.goOnFor(covariance, course, speedOverGround, 0.95);
 * IfNotSeen answer =
 *     IfNotSeen.after(grace, covariance, course, speedOverGround, sight, aim.offset());
 * answer.advice(); // TURN_RIGHT, having aimed off to the left
 * answer.toRight(); // 0.93
 * }</pre>
 *
 * @param ahead chance that it is still ahead
 * @param toLeft chance that it has been passed and lies to the left
 * @param toRight chance that it has been passed and lies to the right
 * @param advice what that suggests
 */
public record IfNotSeen(double ahead, double toLeft, double toRight, Advice advice)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /** A turn is advised where one side is at least so likely. */
  private static final double CLEAR = 0.7;

  private static final int POINTS = 2000;
  private static final double REACH = 7.0;

  /**
   * Takes all parts; {@link #after} computes them.
   *
   * @param ahead chance that it is still ahead
   * @param toLeft chance that it lies to the left
   * @param toRight chance that it lies to the right
   * @param advice what that suggests
   * @throws IllegalArgumentException if a chance is NaN or outside [0, 1]
   */
  public IfNotSeen {
    Arguments.within(ahead, 0.0, 1.0, "chance ahead", "(no unit)");
    Arguments.within(toLeft, 0.0, 1.0, "chance to the left", "(no unit)");
    Arguments.within(toRight, 0.0, 1.0, "chance to the right", "(no unit)");
    Objects.requireNonNull(advice, "advice");
  }

  /**
   * What the chances suggest; common sense and the look of the sea come first.
   *
   * <pre>{@code
   * if (answer.advice() == IfNotSeen.Advice.SEARCH) {
   *   ExpandingSquare square = ExpandingSquare.about(reckoned, sight, 0.9);
   * }
   * }</pre>
   */
  public enum Advice {
    /** It is most likely still ahead. */
    GO_ON,
    /** It is most likely to the left. */
    TURN_LEFT,
    /** It is most likely to the right. */
    TURN_RIGHT,
    /** No one direction is much likelier than the others: search about the reckoned place. */
    SEARCH
  }

  /**
   * How long to go on past the reckoned time before a target not seen must have been passed.
   *
   * @param covariance uncertainty of the position at the reckoned time of arrival
   * @param course the direction of travel
   * @param speedOverGround the speed over the ground, above 0
   * @param confidence the chance wanted of having come abeam of it, in [0.5, 1)
   * @return the time to add to the reckoned time, rounded up to a whole second
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Duration goOnFor(
      Covariance covariance, TrueBearing course, Speed speedOverGround, double confidence) {
    if (!(confidence >= 0.5 && confidence < 1.0)) { // written so that NaN fails
      throw new IllegalArgumentException("confidence must be in [0.5, 1), but was " + confidence);
    }
    double speed =
        Arguments.positive(speedOverGround.metresPerSecond(), "speed", "metres a second");
    double metres =
        covariance.standardDeviationAlong(course).metres() * Gaussian.quantile(confidence);
    return Duration.ofSeconds((long) Math.ceil(metres / speed));
  }

  /**
   * The chances of where the target is, given that it has not been seen.
   *
   * @param pastReckonedTime time gone on past the reckoned time of arrival; negative before it
   * @param covariance uncertainty of the position at the reckoned time of arrival
   * @param course the direction of travel
   * @param speedOverGround the speed over the ground
   * @param sight how far off the target is seen, half its width included, at least 0
   * @param aimed how far to which side of the target one aimed; {@link Offset#NONE} for straight at
   *     it
   * @return chances that add up to 1, and the advice
   * @throws IllegalArgumentException if {@code sight} is negative
   */
  public static IfNotSeen after(
      Duration pastReckonedTime,
      Covariance covariance,
      TrueBearing course,
      Speed speedOverGround,
      Distance sight,
      Offset aimed) {
    double reach = Arguments.notNegative(sight.metres(), "sight", "metres");
    double along = covariance.standardDeviationAlong(course).metres();
    double across = covariance.standardDeviationAcross(course).metres();
    double mean = speedOverGround.metresPerSecond() * Seconds.of(pastReckonedTime);
    boolean wide = across > WideTarget.NO_WIDTH * along;
    double slope = wide ? covariance.alongWithAcross(course) / (across * across) : 0.0;
    double rest = Math.sqrt(Math.max(0.0, along * along - slope * slope * across * across));
    double ahead = 0.0;
    double left = 0.0;
    double right = 0.0;
    double step = 2.0 * REACH / POINTS;
    for (int i = 0; i < POINTS; i++) {
      double z = -REACH + (i + 0.5) * step;
      double weight = Gaussian.density(z) * step;
      double x = aimed.metresRight() + across * z; // right of the target
      double y = mean + slope * across * z; // beyond it
      double seenFrom = Math.abs(x) < reach ? -Math.sqrt(reach * reach - x * x) : 0.0;
      double notYet = below(seenFrom, y, rest);
      ahead += weight * notYet;
      if (x >= reach) {
        left += weight * (1.0 - notYet);
      } else if (x <= -reach) {
        right += weight * (1.0 - notYet);
      }
    }
    double all = ahead + left + right;
    if (!(all > 0.0)) { // it cannot have been missed, so far as these figures go
      return new IfNotSeen(0.0, 0.5, 0.5, Advice.SEARCH);
    }
    return new IfNotSeen(
        ahead / all, left / all, right / all, advise(ahead / all, left / all, right / all));
  }

  private static Advice advise(double ahead, double left, double right) {
    if (ahead >= CLEAR) {
      return Advice.GO_ON;
    }
    if (left >= CLEAR) {
      return Advice.TURN_LEFT;
    }
    return right >= CLEAR ? Advice.TURN_RIGHT : Advice.SEARCH;
  }

  private static double below(double limit, double mean, double sigma) {
    return sigma > 0.0 ? Gaussian.cumulative((limit - mean) / sigma) : mean < limit ? 1.0 : 0.0;
  }
}
