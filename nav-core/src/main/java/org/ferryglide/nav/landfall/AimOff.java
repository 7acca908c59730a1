package org.ferryglide.nav.landfall;

import java.io.Serializable;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.plane.Gaussian;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.ErrorBudget;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.SteadyRun;

/**
 * Aiming off on purpose to one side of a target that one might miss, so that on reaching the coast
 * it is certain which way to turn.
 *
 * <p>Aiming off by k standard deviations puts one on the chosen side in 84.1, 93.3, 97.7, 99.4 and
 * 99.87 % of cases for k of 1, 1.5, 2, 2.5 and 3. Aim off up-stream: then the stream helps down the
 * coast to the target. In a stream the course aimed off takes another time than the straight one,
 * and so has other errors: {@link #inStream} counts them on the course it finds.
 *
 * <pre>{@code
 * AimOff aim = AimOff.upStream(leg, acrossStandardDeviation, 0.95, streamAtTheTarget);
 * aim.offset(); // 620 m to the left: then turn right on reaching the coast
 * aim.course(); // the course to the point aimed at
 * IfNotSeen.after(grace, covariance, aim.course(), speedOverGround, sight, aim.offset());
 * }</pre>
 */
public final class AimOff implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Less than half is no confidence in a side. */
  private static final double EVEN = 0.5;

  /** The offset is found to within this, metres. */
  private static final double FINE_METRES = 0.01;

  private static final int MOST_STEPS = 100;

  private final Offset offset;
  private final Position aimingPoint;
  private final TrueBearing course;
  private final double turnDegrees;
  private final double confidence;

  private AimOff(
      Offset offset,
      Position aimingPoint,
      TrueBearing course,
      double turnDegrees,
      double confidence) {
    this.offset = offset;
    this.aimingPoint = aimingPoint;
    this.course = course;
    this.turnDegrees = turnDegrees;
    this.confidence = confidence;
  }

  /**
   * Aims off to a chosen side.
   *
   * @param leg the straight leg to the target
   * @param acrossStandardDeviation one standard deviation across the leg at the target
   * @param confidence the chance wanted of arriving on the chosen side, in [0.5, 1)
   * @param side on which side of the target to aim
   * @return where to aim; the uncertainty is taken to be the same on the new course, which in a
   *     stream costs one to three points of the confidence ({@link #inStream} does not)
   * @throws IllegalArgumentException if a value is out of range
   */
  public static AimOff to(Leg leg, Distance acrossStandardDeviation, double confidence, Side side) {
    double sigma =
        Arguments.notNegative(
            acrossStandardDeviation.metres(), "standard deviation across", "metres");
    return by(leg, sigma * standardDeviations(confidence), confidence, side);
  }

  /**
   * Aims off to the side from which the stream comes at the target.
   *
   * @param leg the straight leg to the target
   * @param acrossStandardDeviation one standard deviation across the leg at the target
   * @param confidence the chance wanted of arriving on the chosen side, in [0.5, 1)
   * @param streamAtTarget the stream at the target on arrival; if it has no component across the
   *     leg, the left side is taken
   * @return where to aim
   * @throws IllegalArgumentException if a value is out of range
   */
  public static AimOff upStream(
      Leg leg, Distance acrossStandardDeviation, double confidence, Velocity streamAtTarget) {
    boolean setsRight = streamAtTarget.acrossMetresPerSecond(leg.finalCourse()) >= 0.0;
    return to(leg, acrossStandardDeviation, confidence, setsRight ? Side.LEFT : Side.RIGHT);
  }

  /**
   * Aims off in a steady stream, the errors counted on the very course that is aimed off: it may be
   * slower than the straight one, and so less certain.
   *
   * @param leg the straight leg to the target
   * @param run speed through the water and stream; its duration and water track do not matter
   * @param errors the errors of log, compass and stream
   * @param start how well the start is known
   * @param confidence the chance wanted of arriving on the chosen side, in [0.5, 1)
   * @param side on which side of the target to aim
   * @return where to aim; empty if the stream allows no such course, or if the uncertainty grows as
   *     fast as the offset
   * @throws IllegalArgumentException if the confidence is out of range
   */
  public static Optional<AimOff> inStream(
      Leg leg, SteadyRun run, ErrorModel errors, Covariance start, double confidence, Side side) {
    double standardDeviations = standardDeviations(confidence);
    double metres = 0.0;
    for (int i = 0; i < MOST_STEPS; i++) {
      Optional<SteadyRun> paddled = paddled(leg, offsetPoint(leg, metres, side), run);
      if (!paddled.isPresent()) {
        return Optional.empty();
      }
      Covariance at =
          ErrorBudget.of(List.of(paddled.get()), errors).startingFrom(start).covariance();
      double next = standardDeviations * at.standardDeviationAcross(leg.finalCourse()).metres();
      if (Math.abs(next - metres) < FINE_METRES) {
        return Optional.of(by(leg, next, confidence, side));
      }
      metres = next;
    }
    return Optional.empty();
  }

  /** How the leg to a point is paddled; empty where the stream is too strong. */
  private static Optional<SteadyRun> paddled(Leg leg, Position point, SteadyRun like) {
    RhumbLeg aimed = RhumbLeg.between(leg.start(), point);
    double speed = like.speed().metresPerSecond();
    double across = like.stream().acrossMetresPerSecond(aimed.course());
    double along = like.stream().alongMetresPerSecond(aimed.course());
    double made = Math.sqrt(speed * speed - across * across) + along;
    if (!(made > 0.0)) { // NaN too, where the stream across is the faster
      return Optional.empty();
    }
    double ferryAngle = -Math.toDegrees(Math.asin(across / speed));
    Duration time = Duration.ofMillis(Math.round(1000.0 * aimed.length().metres() / made));
    return Optional.of(
        new SteadyRun(time, aimed.course().turnedBy(ferryAngle), like.speed(), like.stream()));
  }

  private static AimOff by(Leg leg, double metres, double confidence, Side side) {
    Position point = offsetPoint(leg, metres, side);
    RhumbLeg aimed = RhumbLeg.between(leg.start(), point);
    RhumbLeg straight = RhumbLeg.between(leg.start(), leg.end());
    return new AimOff(
        Offset.of(side, Distance.ofMetres(metres)),
        point,
        aimed.course(),
        straight.course().turnDegreesTo(aimed.course()),
        confidence);
  }

  private static Position offsetPoint(Leg leg, double metres, Side side) {
    Objects.requireNonNull(side, "side");
    TrueBearing outward = leg.finalCourse().turnedBy(side == Side.RIGHT ? 90.0 : -90.0);
    return RhumbLeg.from(leg.end(), outward, Distance.ofMetres(metres)).end();
  }

  private static double standardDeviations(double confidence) {
    if (!(confidence >= EVEN && confidence < 1.0)) { // written so that NaN fails
      throw new IllegalArgumentException("confidence must be in [0.5, 1), but was " + confidence);
    }
    return Gaussian.quantile(confidence);
  }

  /**
   * On which side of the target one aims.
   *
   * @return the side; on reaching the coast, turn to the other
   */
  public Side side() {
    return offset.side();
  }

  /**
   * How far from the target the aiming point is, and on which side.
   *
   * @return the offset
   */
  public Offset offset() {
    return offset;
  }

  /**
   * The point aimed at.
   *
   * @return its position
   */
  public Position aimingPoint() {
    return aimingPoint;
  }

  /**
   * The course to the point aimed at.
   *
   * @return the rhumb line's course
   */
  public TrueBearing course() {
    return course;
  }

  /**
   * The turn from the straight course.
   *
   * @return degrees, to starboard positive
   */
  public double turnDegrees() {
    return turnDegrees;
  }

  /**
   * The chance of arriving on the chosen side.
   *
   * @return a chance in [0.5, 1)
   */
  public double confidence() {
    return confidence;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof AimOff that
        && offset.equals(that.offset)
        && aimingPoint.equals(that.aimingPoint)
        && course.equals(that.course)
        && turnDegrees == that.turnDegrees
        && confidence == that.confidence;
  }

  @Override
  public int hashCode() {
    return Objects.hash(offset, aimingPoint, course, turnDegrees, confidence);
  }

  /** Course and offset, for people. */
  @Override
  public String toString() {
    return "aim " + offset + " of the target, course " + course;
  }
}
