package org.ferryglide.nav.reckon;

import java.io.Serializable;
import java.time.Duration;
import java.util.Arrays;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.plane.KalmanPlane;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;

/**
 * Keeps the position on passage and learns the stream on the way: each run widens the uncertainty,
 * each fix narrows it and corrects the stream that the next run is reckoned with (a Kalman filter
 * of position and stream in the plane that touches the latest position).
 *
 * <p>Immutable: every step gives a new keeper.
 *
 * <pre>{@code
 * PositionKeeper keeper =
 *     PositionKeeper.start(launch, tabulatedStream, Speed.ofKnots(0.5))
 *         .afterRun(Duration.ofMinutes(30), throughWater, Speed.ofKnots(0.3))
 *         .afterFix(fix.estimatedPosition());
 * keeper.position(); // better than the fix alone
 * keeper.stream(); // what the stream turned out to be
 * }</pre>
 */
public final class PositionKeeper implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final int STATES = 4;

  private final Position position;
  private final Velocity stream;

  /** Covariance of east, north (metres), stream east and stream north (metres a second). */
  private final double[][] covariance;

  private PositionKeeper(Position position, Velocity stream, double[][] covariance) {
    this.position = position;
    this.stream = stream;
    this.covariance = covariance;
  }

  /**
   * A keeper at the start.
   *
   * @param start where, and how well known
   * @param expectedStream the stream to begin with, from tables, or {@link Velocity#STILL}
   * @param streamStandardDeviation how uncertain it is, in each of two directions
   * @return the keeper
   */
  public static PositionKeeper start(
      EstimatedPosition start, Velocity expectedStream, Speed streamStandardDeviation) {
    double[][] p = new double[STATES][STATES];
    p[0][0] = start.covariance().eastVariance();
    p[1][1] = start.covariance().northVariance();
    p[0][1] = start.covariance().eastNorthCovariance();
    p[1][0] = p[0][1];
    double sigma = streamStandardDeviation.metresPerSecond();
    p[2][2] = sigma * sigma;
    p[3][3] = sigma * sigma;
    return new PositionKeeper(start.position(), expectedStream, p);
  }

  /**
   * The keeper after a run.
   *
   * @param duration how long, at least 0
   * @param throughWater velocity through the water, leeway included
   * @param waterStandardDeviation how uncertain that velocity is over this run, in each of two
   *     directions, independently of other runs
   * @return the keeper at the end of the run
   * @throws IllegalArgumentException if {@code duration} is negative
   */
  public PositionKeeper afterRun(
      Duration duration, Velocity throughWater, Speed waterStandardDeviation) {
    double t = Arguments.notNegative(Seconds.of(duration), "duration", "seconds");
    Velocity over = throughWater.plus(stream);
    double[] latLon = new double[2];
    RhumbLines.direct(
        position.latitudeDegrees(),
        position.longitudeDegrees(),
        over.set().degrees(),
        over.rate().metresPerSecond() * t,
        latLon,
        0);
    double[][] p = copy();
    double run = waterStandardDeviation.metresPerSecond() * t;
    for (int i = 0; i < 2; i++) { // F P F' with F adding t times the stream to the position
      for (int j = 0; j < STATES; j++) {
        p[i][j] += t * p[i + 2][j];
      }
    }
    for (int i = 0; i < STATES; i++) {
      for (int j = 0; j < 2; j++) {
        p[i][j] += t * p[i][j + 2];
      }
    }
    p[0][0] += run * run;
    p[1][1] += run * run;
    return new PositionKeeper(Position.ofDegrees(latLon[0], latLon[1]), stream, p);
  }

  /**
   * The keeper after the stream may have changed.
   *
   * @param change how much it may have changed since the last step, one standard deviation in each
   *     of two directions
   * @return a keeper less sure of the stream
   */
  public PositionKeeper afterStreamMayHaveChanged(Speed change) {
    double[][] p = copy();
    double variance = change.metresPerSecond() * change.metresPerSecond();
    p[2][2] += variance;
    p[3][3] += variance;
    return new PositionKeeper(position, stream, p);
  }

  /**
   * The keeper after a fix.
   *
   * @param fix a position found independently, with its uncertainty
   * @return the keeper with position and stream corrected
   */
  public PositionKeeper afterFix(EstimatedPosition fix) {
    double[] difference = LocalPlane.toPlane(position, fix.position());
    double[] correction = new double[STATES];
    double[][] updated = new double[STATES][STATES];
    Covariance found = fix.covariance();
    KalmanPlane.update(
        covariance,
        found.eastVariance(),
        found.northVariance(),
        found.eastNorthCovariance(),
        difference,
        correction,
        updated);
    return new PositionKeeper(
        LocalPlane.fromPlane(position, correction[0], correction[1]),
        stream.plus(Velocity.ofEastAndNorth(correction[2], correction[3])),
        updated);
  }

  /**
   * Where one is, with its uncertainty.
   *
   * @return the estimated position
   */
  public EstimatedPosition position() {
    return new EstimatedPosition(position, bounded(0));
  }

  /**
   * The stream as learned so far.
   *
   * @return the stream
   */
  public Velocity stream() {
    return stream;
  }

  /**
   * How uncertain the stream still is in one direction.
   *
   * @param direction the direction
   * @return one standard deviation
   */
  public Speed streamStandardDeviation(TrueBearing direction) {
    return Speed.ofMetresPerSecond(bounded(2).standardDeviationAlong(direction).metres());
  }

  private Covariance bounded(int first) {
    return Covariance.bounded(
        covariance[first][first], covariance[first + 1][first + 1], covariance[first][first + 1]);
  }

  private double[][] copy() {
    double[][] p = new double[STATES][];
    for (int i = 0; i < STATES; i++) {
      p[i] = Arrays.copyOf(covariance[i], STATES);
    }
    return p;
  }

  /** Position and stream, for people. */
  @Override
  public String toString() {
    return position() + ", stream " + stream.setAndRate();
  }
}
