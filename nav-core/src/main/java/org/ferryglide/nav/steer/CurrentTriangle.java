package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.plane.SteadyTriangle;

/**
 * The current triangle: course, stream and paddling speed give the course to steer and the speed
 * made good, for a stream that is steady over the leg.
 *
 * <pre>{@code
 * Velocity stream = Velocity.ofSetAndRate(TrueBearing.ofDegrees(180), Speed.ofKnots(1.2));
 * CurrentTriangle out =
 *     CurrentTriangle.solve(TrueBearing.ofDegrees(90), Craft.ofSpeed(Speed.ofKnots(3.5)), stream)
 *         .orElseThrow();
 * out.courseToSteer().threeDigits(); // 070°
 * out.speedMadeGood().inKnots(2); // 3.29 kn
 * }</pre>
 *
 * <p>This is geometry: it answers whenever the course can be held at all, however little reserve is
 * left; see {@link #crossStreamShare}. The way home is another triangle, not the reciprocal
 * heading.
 *
 * @param course the course made good
 * @param courseToSteer the heading: the bow points here
 * @param waterTrack the direction through the water: heading and leeway
 * @param speedMadeGood the speed over the ground along the course, above zero
 * @param crossStreamShare the share of the speed through the water that is spent against what sets
 *     across, in [0, 1]
 */
public record CurrentTriangle(
    TrueBearing course,
    TrueBearing courseToSteer,
    TrueBearing waterTrack,
    Speed speedMadeGood,
    double crossStreamShare)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts; {@link #solve} finds them.
   *
   * @param course the course made good
   * @param courseToSteer the heading
   * @param waterTrack the direction through the water
   * @param speedMadeGood the speed over the ground, above zero
   * @param crossStreamShare the share spent against what sets across, in [0, 1]
   * @throws IllegalArgumentException if the speed is not above zero, or the share is NaN or out of
   *     range
   */
  public CurrentTriangle {
    Objects.requireNonNull(course, "course");
    Objects.requireNonNull(courseToSteer, "courseToSteer");
    Objects.requireNonNull(waterTrack, "waterTrack");
    Arguments.positive(speedMadeGood.metresPerSecond(), "speed made good", "metres a second");
    crossStreamShare =
        Arguments.within(crossStreamShare, 0.0, 1.0, "share spent across", "of the speed");
  }

  /**
   * Solves the triangle in calm air; of two headings, the faster.
   *
   * @param course the course to make good
   * @param craft the craft, whose mean speed counts, rests taken off
   * @param stream the stream
   * @return the triangle, or why the course cannot be made good and by how much
   */
  public static Outcome<CurrentTriangle, NotPossible> solve(
      TrueBearing course, Craft craft, Velocity stream) {
    double radians = Math.toRadians(course.degrees());
    double sine = Math.sin(radians);
    double cosine = Math.cos(radians);
    double east = stream.eastMetresPerSecond();
    double north = stream.northMetresPerSecond();
    double along = east * sine + north * cosine;
    double across = east * cosine - north * sine;
    double waterSpeed = craft.speed().metresPerSecond() * craft.paddlingShare();
    int finding = SteadyTriangle.finding(along, across, waterSpeed);
    if (finding != SteadyTriangle.SOLVED) {
      return unsolved(finding, SteadyTriangle.leastWaterSpeed(along, across) - waterSpeed);
    }
    TrueBearing heading = // which in calm air is the water track
        TrueBearing.ofDegrees(
            course.degrees() - SteadyTriangle.ferryAngleDegrees(across, waterSpeed));
    return Outcome.ofSolved(
        new CurrentTriangle(
            course,
            heading,
            heading,
            Speed.ofMetresPerSecond(SteadyTriangle.speedMadeGood(along, across, waterSpeed)),
            shareAcross(across, waterSpeed)));
  }

  /**
   * Solves the triangle in a wind; of several headings, the fastest.
   *
   * @param course the course to make good
   * @param craft the craft with its {@link WindResponse}
   * @param stream the stream
   * @param wind the wind over the ground; the stream is taken off it here
   * @return the triangle, or why the course cannot be made good and by how much
   */
  public static Outcome<CurrentTriangle, NotPossible> solveInWind(
      TrueBearing course, Craft craft, Velocity stream, Velocity wind) {
    Motion motion = Motion.inSteady(craft, stream, wind);
    double radians = Math.toRadians(course.degrees());
    int finding = motion.holdCourse(course.degrees(), Math.sin(radians), Math.cos(radians));
    if (finding != SteadyTriangle.SOLVED) {
      return unsolved(finding, motion.shortBy());
    }
    double ferryAngle = SteadyTriangle.ferryAngleDegrees(motion.crossStream(), motion.waterSpeed());
    return Outcome.ofSolved(
        new CurrentTriangle(
            course,
            TrueBearing.ofDegrees(motion.headingDegrees()),
            motion.windy
                ? course.turnedBy(-ferryAngle)
                : TrueBearing.ofDegrees(motion.headingDegrees()),
            Speed.ofMetresPerSecond(motion.speedMadeGood()),
            shareAcross(motion.crossStream(), motion.waterSpeed())));
  }

  private static Outcome<CurrentTriangle, NotPossible> unsolved(int finding, double shortBy) {
    NotPossible why = NotPossible.because(Reasons.of(finding, Reason.NO_PROGRESS));
    return Outcome.ofUnsolved(
        finding == SteadyTriangle.NO_PROGRESS || Double.isNaN(shortBy)
            ? why
            : why.by(Speed.ofMetresPerSecond(Math.max(0.0, shortBy))));
  }

  private static double shareAcross(double across, double waterSpeed) {
    return across == 0.0 ? 0.0 : Math.min(1.0, Math.abs(across) / waterSpeed);
  }

  /**
   * The slower of the two headings that hold the course in calm air, when the stream outruns the
   * craft and sets near enough along the course.
   *
   * @param course the course to make good
   * @param craft the craft, whose mean speed counts, rests taken off
   * @param stream the stream
   * @return the other triangle; empty if there is only one heading, or none
   */
  public static Optional<CurrentTriangle> slower(TrueBearing course, Craft craft, Velocity stream) {
    double[] out = new double[2];
    double speed = craft.meanSpeed().metresPerSecond();
    if (!SteadyTriangle.slower(
        course.degrees(),
        speed,
        stream.eastMetresPerSecond(),
        stream.northMetresPerSecond(),
        out,
        0)) {
      return Optional.empty();
    }
    TrueBearing heading = new TrueBearing(out[0]);
    return Optional.of(
        new CurrentTriangle(
            course,
            heading,
            heading,
            Speed.ofMetresPerSecond(out[1]),
            Math.min(1.0, Math.abs(stream.acrossMetresPerSecond(course)) / speed)));
  }

  /**
   * The ferry angle: how far the bow points off the course, which is also how far off the transit
   * it points when a transit is held.
   *
   * @return degrees in (-180, 180], to starboard positive
   */
  public double ferryAngleDegrees() {
    return course.turnDegreesTo(courseToSteer);
  }

  /**
   * How long a distance along the course takes.
   *
   * @param distance the distance, at least 0
   * @return the time, to the millisecond
   * @throws IllegalArgumentException if the distance is negative
   */
  public Duration timeFor(Distance distance) {
    if (distance.metres() < 0.0) {
      throw new IllegalArgumentException("distance must be at least 0, but was " + distance);
    }
    return Duration.ofMillis(
        Math.round(1000.0 * distance.metres() / speedMadeGood.metresPerSecond()));
  }
}
