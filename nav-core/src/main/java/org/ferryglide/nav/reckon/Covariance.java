package org.ferryglide.nav.reckon;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.plane.KalmanPlane;

/**
 * How far a position may be off, and in which directions: the variances of its easting and northing
 * and their covariance.
 *
 * <p>East and north are those of the place, in metres on the plane that touches it. Covariances of
 * independent errors add.
 *
 * <pre>{@code
 * Covariance drift = Covariance.ofAxes(TrueBearing.ofDegrees(60), along, across);
 * Covariance total = drift.plus(Covariance.ofCircle(Distance.ofMetres(50)));
 * total.standardDeviationAlong(TrueBearing.ofDegrees(0)); // metres north and south
 * total.ellipse(0.95).semiMajorAxis();
 * }</pre>
 *
 * @param eastVariance variance of the easting, square metres, at least 0
 * @param northVariance variance of the northing, square metres, at least 0
 * @param eastNorthCovariance covariance of the two, square metres; its square is at most the
 *     product of the variances
 */
public record Covariance(double eastVariance, double northVariance, double eastNorthCovariance)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /** A position known exactly. */
  public static final Covariance ZERO = new Covariance(0.0, 0.0, 0.0);

  /** Rounding may take the squared covariance this much above the product of the variances. */
  private static final double ROUNDING = 1e-9;

  /**
   * Takes the three numbers.
   *
   * @param eastVariance variance of the easting, square metres
   * @param northVariance variance of the northing, square metres
   * @param eastNorthCovariance covariance of the two, square metres
   * @throws IllegalArgumentException if a number is NaN or infinite, a variance is negative, or the
   *     covariance is greater than the variances allow
   */
  public Covariance {
    eastVariance = Arguments.notNegative(eastVariance, "variance of the easting", "square metres");
    northVariance =
        Arguments.notNegative(northVariance, "variance of the northing", "square metres");
    eastNorthCovariance =
        Arguments.finite(eastNorthCovariance, "covariance of east and north", "square metres");
    double limit = Math.sqrt(eastVariance) * Math.sqrt(northVariance);
    if (Math.abs(eastNorthCovariance) > limit * (1.0 + ROUNDING)) {
      throw new IllegalArgumentException(
          "covariance of east and north must be within ±"
              + limit
              + " square metres for these variances, but was "
              + eastNorthCovariance);
    }
  }

  /** Three numbers whose covariance rounding may have taken past what the variances allow. */
  static Covariance bounded(double east, double north, double cross) {
    double limit = Math.sqrt(east) * Math.sqrt(north);
    return new Covariance(east, north, Math.max(-limit, Math.min(limit, cross)));
  }

  /** The three numbers as a matrix, east first. */
  double[][] matrix() {
    return new double[][] {
      {eastVariance, eastNorthCovariance}, {eastNorthCovariance, northVariance}
    };
  }

  /**
   * The same uncertainty in every direction.
   *
   * @param standardDeviation standard deviation in any one direction, at least 0
   * @return the covariance
   * @throws IllegalArgumentException if {@code standardDeviation} is negative
   */
  public static Covariance ofCircle(Distance standardDeviation) {
    double sigma = Arguments.notNegative(standardDeviation.metres(), "uncertainty", "metres");
    return new Covariance(sigma * sigma, sigma * sigma, 0.0);
  }

  /**
   * Different uncertainties along a direction and across it, independent of each other.
   *
   * @param direction the direction
   * @param along standard deviation along it, at least 0
   * @param across standard deviation across it, at least 0
   * @return the covariance
   * @throws IllegalArgumentException if a standard deviation is negative
   */
  public static Covariance ofAxes(TrueBearing direction, Distance along, Distance across) {
    double a = Arguments.notNegative(along.metres(), "uncertainty along", "metres");
    double b = Arguments.notNegative(across.metres(), "uncertainty across", "metres");
    double sine = Math.sin(Math.toRadians(direction.degrees()));
    double cosine = Math.cos(Math.toRadians(direction.degrees()));
    return new Covariance(
        a * a * sine * sine + b * b * cosine * cosine,
        a * a * cosine * cosine + b * b * sine * sine,
        (a * a - b * b) * sine * cosine);
  }

  /**
   * This uncertainty and another, independent one together.
   *
   * @param other the other
   * @return the sum
   */
  public Covariance plus(Covariance other) {
    return new Covariance(
        eastVariance + other.eastVariance,
        northVariance + other.northVariance,
        eastNorthCovariance + other.eastNorthCovariance);
  }

  /**
   * The standard deviation in one direction.
   *
   * @param direction the direction; its reciprocal gives the same
   * @return one standard deviation
   */
  public Distance standardDeviationAlong(TrueBearing direction) {
    double sine = Math.sin(Math.toRadians(direction.degrees()));
    double cosine = Math.cos(Math.toRadians(direction.degrees()));
    double variance =
        sine * (sine * eastVariance + cosine * eastNorthCovariance)
            + cosine * (sine * eastNorthCovariance + cosine * northVariance);
    return Distance.ofMetres(Math.sqrt(Math.max(0.0, variance)));
  }

  /**
   * The standard deviation square to one direction, as matters for passing a mark.
   *
   * @param direction the direction of travel
   * @return one standard deviation across it
   */
  public Distance standardDeviationAcross(TrueBearing direction) {
    return standardDeviationAlong(direction.turnedBy(90.0));
  }

  /**
   * The covariance of the errors along a direction and across it.
   *
   * @param direction the direction
   * @return covariance of the errors along it and across it, to the right positive; square metres
   */
  public double alongWithAcross(TrueBearing direction) {
    double sine = Math.sin(Math.toRadians(direction.degrees()));
    double cosine = Math.cos(Math.toRadians(direction.degrees()));
    return sine * cosine * (eastVariance - northVariance)
        + eastNorthCovariance * (cosine * cosine - sine * sine);
  }

  /**
   * How large a difference is beside this uncertainty: the statistical distance, squared.
   *
   * @param eastMetres the difference to the east, metres
   * @param northMetres the difference to the north, metres
   * @return the difference squared over the covariance; above 5.99 in only one case of twenty,
   *     above 9.21 in one of a hundred; infinite if the difference lies where the covariance admits
   *     none
   */
  public double squaredStatisticalDistance(double eastMetres, double northMetres) {
    return KalmanPlane.squaredStatisticalDistance(
        eastVariance, northVariance, eastNorthCovariance, eastMetres, northMetres);
  }

  /**
   * The root mean square distance from the true position, every direction taken together.
   *
   * @return the square root of the sum of both variances
   */
  public Distance rootMeanSquare() {
    return Distance.ofMetres(Math.sqrt(eastVariance + northVariance));
  }

  /**
   * The ellipse that holds the true position with a given chance, errors being normal.
   *
   * @param chance the chance, in [0, 1)
   * @return the ellipse about the position
   * @throws IllegalArgumentException if {@code chance} is NaN or outside [0, 1)
   */
  public ErrorEllipse ellipse(double chance) {
    return ErrorEllipse.of(this, chance);
  }

  /** The three numbers, without loss. */
  @Override
  public String toString() {
    return "east "
        + eastVariance
        + " m², north "
        + northVariance
        + " m², east-north "
        + eastNorthCovariance
        + " m²";
  }
}
