package org.ferryglide.nav.reckon;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.plane.KalmanPlane;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;

/**
 * A position together with how far it may be off.
 *
 * <p>Every way of finding a position ends in one, so that any two can be combined: what the
 * reckoning says, then a fix, then the reckoning from there.
 *
 * <pre>{@code
 * EstimatedPosition launch = EstimatedPosition.of(slip, Distance.ofMetres(5));
 * EstimatedPosition better = reckoned.combinedWith(fix.estimatedPosition());
 * better.covariance().ellipse(0.95);
 * }</pre>
 *
 * @param position the most likely position
 * @param covariance how far it may be off
 */
public record EstimatedPosition(Position position, Covariance covariance) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes both parts.
   *
   * @param position the most likely position
   * @param covariance how far it may be off
   */
  public EstimatedPosition {
    Objects.requireNonNull(position, "position");
    Objects.requireNonNull(covariance, "covariance");
  }

  /**
   * A position equally uncertain in every direction.
   *
   * @param position the most likely position
   * @param standardDeviation standard deviation in any one direction, at least 0
   * @return the estimated position
   * @throws IllegalArgumentException if {@code standardDeviation} is negative
   */
  public static EstimatedPosition of(Position position, Distance standardDeviation) {
    return new EstimatedPosition(position, Covariance.ofCircle(standardDeviation));
  }

  /**
   * A position known exactly.
   *
   * @param position the position
   * @return the estimated position, without uncertainty
   */
  public static EstimatedPosition exactly(Position position) {
    return new EstimatedPosition(position, Covariance.ZERO);
  }

  /**
   * This position and another, independent one weighed together (the Kalman update of a position in
   * the plane that touches this one).
   *
   * <p>The result is never less certain than either in any direction. Two exact positions that
   * differ have no weighted mean: the other is taken.
   *
   * @param other the other finding of the same place, its errors independent of this one's
   * @return the most likely position given both
   */
  public EstimatedPosition combinedWith(EstimatedPosition other) {
    double[] difference = LocalPlane.toPlane(position, other.position);
    double[] correction = new double[2];
    double[][] combined = new double[2][2];
    Covariance found = other.covariance;
    KalmanPlane.update(
        covariance.matrix(),
        found.eastVariance(),
        found.northVariance(),
        found.eastNorthCovariance(),
        difference,
        correction,
        combined);
    return new EstimatedPosition(
        LocalPlane.fromPlane(position, correction[0], correction[1]),
        Covariance.bounded(combined[0][0], combined[1][1], combined[0][1]));
  }

  /**
   * How far apart this position and another are beside the uncertainty of both: the statistical
   * distance, squared.
   *
   * @param other the other finding of the same place
   * @return the difference squared over the covariance of the difference; above 5.99 in only one
   *     case of twenty if both are honest, above 9.21 in one of a hundred; infinite if the
   *     difference lies where neither admits any
   */
  public double disagreementWith(EstimatedPosition other) {
    double[] d = LocalPlane.toPlane(position, other.position);
    Covariance sum = covariance.plus(other.covariance);
    return sum.squaredStatisticalDistance(d[0], d[1]);
  }

  /**
   * The standard deviation across a course, as matters for passing a mark.
   *
   * @param course the direction of travel
   * @return one standard deviation, to either side
   */
  public Distance standardDeviationAcross(TrueBearing course) {
    return covariance.standardDeviationAcross(course);
  }

  /** The position and its 95 % ellipse, for people. */
  @Override
  public String toString() {
    return position + ", " + covariance.ellipse(0.95);
  }
}
