package org.ferryglide.nav.landfall;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.plane.Gaussian;
import org.ferryglide.nav.plane.SightChance;
import org.ferryglide.nav.reckon.Covariance;

/**
 * The chance of finding a target at the end of a leg.
 *
 * <pre>{@code
 * TargetChance chance =
 *     TargetChance.of(budget.covariance(), course, Distance.ofMetres(800)) // visibility
 *         .withWidth(Distance.ofMetres(300)); // a small island
 * chance.whenPassing(); // 0.59, going on until it is abeam
 * chance.atArrival(); // 0.24, from the reckoned place alone
 * chance.withOffset(aim.offset()).whenPassing(); // how much less, having aimed off
 * }</pre>
 */
public final class TargetChance implements Serializable {

  private static final long serialVersionUID = 1L;

  private final Covariance covariance;
  private final TrueBearing course;
  private final double visibilityMetres;
  private final double widthMetres;
  private final double offsetMetres;

  private TargetChance(
      Covariance covariance,
      TrueBearing course,
      double visibilityMetres,
      double widthMetres,
      double offsetMetres) {
    this.covariance = Objects.requireNonNull(covariance, "covariance");
    this.course = Objects.requireNonNull(course, "course");
    this.visibilityMetres = Arguments.notNegative(visibilityMetres, "visibility", "metres");
    this.widthMetres = Arguments.notNegative(widthMetres, "width of the target", "metres");
    this.offsetMetres = Arguments.finite(offsetMetres, "offset", "metres");
  }

  /**
   * A mark at the end of a leg, aimed at straight.
   *
   * @param covariance uncertainty of the position at the end of the leg
   * @param course the direction of travel there
   * @param visibility how far off the mark is seen, at least 0
   * @return the question
   * @throws IllegalArgumentException if the visibility is negative
   */
  public static TargetChance of(Covariance covariance, TrueBearing course, Distance visibility) {
    return new TargetChance(covariance, course, visibility.metres(), 0.0, 0.0);
  }

  /**
   * A target with width: an island, a stretch of coast, a string of buoys.
   *
   * @param width how wide it lies across the course, at least 0
   * @return a question with everything else the same
   * @throws IllegalArgumentException if the width is negative
   */
  public TargetChance withWidth(Distance width) {
    return new TargetChance(covariance, course, visibilityMetres, width.metres(), offsetMetres);
  }

  /**
   * Aimed off to one side.
   *
   * @param aimed how far to which side of the middle of the target one aims
   * @return a question with everything else the same
   */
  public TargetChance withOffset(Offset aimed) {
    return new TargetChance(covariance, course, visibilityMetres, widthMetres, aimed.metresRight());
  }

  /**
   * The chance of passing within sight of the target, going on until it must be abeam.
   *
   * @return a chance in [0, 1]
   */
  public double whenPassing() {
    return SightChance.passing(
        covariance.standardDeviationAcross(course).metres(),
        offsetMetres,
        visibilityMetres + 0.5 * widthMetres);
  }

  /**
   * The chance of passing outside sight on one side.
   *
   * @param side the side of the track on which the target then lies
   * @return a chance in [0, 1]; both sides and {@link #whenPassing} add up to 1
   */
  public double missedTo(Side side) {
    double sigma = covariance.standardDeviationAcross(course).metres();
    double reach = visibilityMetres + 0.5 * widthMetres;
    // The craft is right of the target by more than the reach: the target lies to the left.
    double beyond = side == Side.LEFT ? offsetMetres - reach : -offsetMetres - reach;
    return sigma > 0.0 ? Gaussian.cumulative(beyond / sigma) : beyond > 0.0 ? 1.0 : 0.0;
  }

  /**
   * The chance of seeing the target from the place reckoned to be the end of the leg, without going
   * on.
   *
   * @return a chance in [0, 1]; a target with width counts where its nearest point is within sight
   */
  public double atArrival() {
    double e = covariance.eastVariance();
    double n = covariance.northVariance();
    double c = covariance.eastNorthCovariance();
    double radians = Math.toRadians(course.degrees());
    double offEast = offsetMetres * Math.cos(radians);
    double offNorth = -offsetMetres * Math.sin(radians);
    if (widthMetres > 0.0) {
      return WideTarget.within(
          covariance.standardDeviationAlong(course).metres(),
          covariance.standardDeviationAcross(course).metres(),
          covariance.alongWithAcross(course),
          offsetMetres,
          0.5 * widthMetres,
          visibilityMetres);
    }
    double axis = 0.5 * Math.atan2(2.0 * c, e - n); // of the ellipse, from east to north
    double cosine = Math.cos(axis);
    double sine = Math.sin(axis);
    double wide = e * cosine * cosine + 2.0 * c * sine * cosine + n * sine * sine;
    double narrow = e * sine * sine - 2.0 * c * sine * cosine + n * cosine * cosine;
    return SightChance.withinCircle(
        Math.sqrt(Math.max(0.0, wide)),
        Math.sqrt(Math.max(0.0, narrow)),
        offEast * cosine + offNorth * sine,
        -offEast * sine + offNorth * cosine,
        visibilityMetres);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TargetChance that
        && covariance.equals(that.covariance)
        && course.equals(that.course)
        && visibilityMetres == that.visibilityMetres
        && widthMetres == that.widthMetres
        && offsetMetres == that.offsetMetres;
  }

  @Override
  public int hashCode() {
    return Objects.hash(covariance, course, visibilityMetres, widthMetres, offsetMetres);
  }

  /** The question and its answer, for people. */
  @Override
  public String toString() {
    return "target seen from "
        + Math.round(visibilityMetres)
        + " m, found with chance "
        + Math.round(whenPassing() * 100.0)
        + " % when passing";
  }
}
