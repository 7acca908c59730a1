package org.ferryglide.nav.landfall;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Arguments;
import org.ferryglide.nav.plane.Gaussian;
import org.ferryglide.nav.position.Position;

/**
 * Aiming off on purpose to one side of a target that one might miss, so that on reaching the coast
 * it is certain which way to turn.
 *
 * <p>Aiming off by k standard deviations puts one on the chosen side with 84.1, 93.3, 97.7, 99.4
 * and 99.87 % for k of 1, 1.5, 2, 2.5 and 3. Aim off up-stream: then the stream helps down the
 * coast to the target.
 *
 * <pre>{@code
 * AimOff aim = AimOff.upStream(leg, acrossStandardDeviation, 0.95, streamAtTheTarget);
 * aim.offset(); // 620 m
 * aim.side(); // LEFT: then turn right on reaching the coast
 * aim.course(); // the course to the point aimed at
 * }</pre>
 *
 * @param side on which side of the target one aims
 * @param offset how far from the target the aiming point is, at least 0
 * @param aimingPoint the point aimed at
 * @param course the course to it
 * @param turnDegrees the turn from the straight course, degrees, to starboard positive
 * @param confidence the chance of arriving on the chosen side
 */
public record AimOff(
    Side side,
    Distance offset,
    Position aimingPoint,
    TrueBearing course,
    double turnDegrees,
    double confidence)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Less than half is no confidence in a side. */
  private static final double EVEN = 0.5;

  /**
   * Takes all parts; {@link #to} computes them.
   *
   * @param side on which side of the target one aims
   * @param offset how far from the target the aiming point is
   * @param aimingPoint the point aimed at
   * @param course the course to it
   * @param turnDegrees the turn from the straight course
   * @param confidence the chance of arriving on the chosen side
   */
  public AimOff {
    Objects.requireNonNull(side, "side");
    Objects.requireNonNull(offset, "offset");
    Objects.requireNonNull(aimingPoint, "aimingPoint");
    Objects.requireNonNull(course, "course");
  }

  /**
   * A side of the track, looking along it.
   *
   * <pre>{@code
   * Side turn = aim.side().opposite(); // which way to turn at the coast
   * }</pre>
   */
  public enum Side {
    /** To the left of the track. */
    LEFT,
    /** To the right of the track. */
    RIGHT;

    /**
     * The other side: where the target lies from where one aims.
     *
     * @return right for left, left for right
     */
    public Side opposite() {
      return this == LEFT ? RIGHT : LEFT;
    }
  }

  /**
   * Aims off to a chosen side.
   *
   * @param leg the straight leg to the target
   * @param acrossStandardDeviation one standard deviation across the leg at the target
   * @param confidence the chance wanted of arriving on the chosen side, in [0.5, 1)
   * @param side on which side of the target to aim
   * @return where to aim; the uncertainty is taken to be the same on the new course
   * @throws IllegalArgumentException if a value is out of range
   */
  public static AimOff to(Leg leg, Distance acrossStandardDeviation, double confidence, Side side) {
    if (!(confidence >= EVEN && confidence < 1.0)) { // written so that NaN fails
      throw new IllegalArgumentException("confidence must be in [0.5, 1), but was " + confidence);
    }
    double sigma =
        Arguments.notNegative(
            acrossStandardDeviation.metres(), "standard deviation across", "metres");
    Distance offset = Distance.ofMetres(sigma * Gaussian.quantile(confidence));
    TrueBearing outward = leg.finalCourse().turnedBy(side == Side.RIGHT ? 90.0 : -90.0);
    Position point = RhumbLeg.from(leg.end(), outward, offset).end();
    RhumbLeg aimed = RhumbLeg.between(leg.start(), point);
    RhumbLeg straight = RhumbLeg.between(leg.start(), leg.end());
    return new AimOff(
        side, offset, point, aimed.course(), straight.course().turnTo(aimed.course()), confidence);
  }

  /**
   * Aims off to the side from which the stream comes at the target.
   *
   * @param leg the straight leg to the target
   * @param acrossStandardDeviation one standard deviation across the leg at the target
   * @param confidence the chance wanted of arriving on the chosen side, in [0.5, 1)
   * @param streamAtTarget the stream at the target on arrival; one without a part across the leg
   *     leaves the left side
   * @return where to aim
   * @throws IllegalArgumentException if a value is out of range
   */
  public static AimOff upStream(
      Leg leg, Distance acrossStandardDeviation, double confidence, Velocity streamAtTarget) {
    boolean setsRight = streamAtTarget.acrossMetresPerSecond(leg.finalCourse()) >= 0.0;
    return to(leg, acrossStandardDeviation, confidence, setsRight ? Side.LEFT : Side.RIGHT);
  }
}
