package org.ferryglide.nav.reckon;

import java.io.Serializable;
import java.time.Duration;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;

/**
 * The stream that explains the difference between where log and compass lead and where a fix puts
 * one: set and rate experienced.
 *
 * <p>Whatever else went wrong is in it too: leeway not allowed for, a speed misjudged, a compass
 * error.
 *
 * <pre>{@code
 * StreamExperienced stream =
 *     StreamExperienced.between(reckoning.deadReckoning(), fix.estimatedPosition(), elapsed);
 * stream.velocity().setAndRate(); // 214° 2.0 kn
 * stream.rateStandardDeviation().inKnots(1); // ± 0.3 kn
 * }</pre>
 *
 * @param velocity the stream, mean over the time
 * @param duration over how long
 * @param uncertainty covariance of the drift in that time, square metres
 */
public record StreamExperienced(Velocity velocity, Duration duration, Covariance uncertainty)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param velocity the stream
   * @param duration over how long
   * @param uncertainty covariance of the drift in that time
   * @throws IllegalArgumentException if {@code duration} is not above 0
   */
  public StreamExperienced {
    Objects.requireNonNull(velocity, "velocity");
    Objects.requireNonNull(uncertainty, "uncertainty");
    Arguments.positive(Seconds.of(duration), "duration", "seconds");
  }

  /**
   * From a dead-reckoned position and a fix of the same moment.
   *
   * @param deadReckoning where log and compass alone lead from the last fix
   * @param fix where one is
   * @param elapsed time since the last fix, above 0
   * @return set and rate, with the uncertainty of the fix
   * @throws IllegalArgumentException if {@code elapsed} is not above 0
   */
  public static StreamExperienced between(
      Position deadReckoning, EstimatedPosition fix, Duration elapsed) {
    return between(EstimatedPosition.exactly(deadReckoning), fix, elapsed);
  }

  /**
   * From a dead-reckoned position that is itself uncertain and a fix of the same moment.
   *
   * @param deadReckoning where log and compass alone lead, with all errors but those of the stream
   * @param fix where one is
   * @param elapsed time since the last fix, above 0
   * @return set and rate, with both uncertainties
   * @throws IllegalArgumentException if {@code elapsed} is not above 0
   */
  public static StreamExperienced between(
      EstimatedPosition deadReckoning, EstimatedPosition fix, Duration elapsed) {
    double seconds = Arguments.positive(Seconds.of(elapsed), "time elapsed", "seconds");
    double[] courseAndMetres = new double[2];
    RhumbLines.inverse(
        deadReckoning.position().latitudeDegrees(),
        deadReckoning.position().longitudeDegrees(),
        fix.position().latitudeDegrees(),
        fix.position().longitudeDegrees(),
        courseAndMetres,
        0);
    return new StreamExperienced(
        Velocity.ofSetAndRate(
            TrueBearing.ofDegrees(courseAndMetres[0]),
            Speed.ofMetresPerSecond(courseAndMetres[1] / seconds)),
        elapsed,
        deadReckoning.covariance().plus(fix.covariance()));
  }

  /**
   * From two fixes and the heading and speed held between them.
   *
   * @param first the earlier fix
   * @param second the later fix
   * @param throughWater velocity through the water held meanwhile, leeway included
   * @param elapsed time between the fixes, above 0
   * @return set and rate, with the uncertainty of both fixes
   * @throws IllegalArgumentException if {@code elapsed} is not above 0
   */
  public static StreamExperienced betweenFixes(
      EstimatedPosition first, EstimatedPosition second, Velocity throughWater, Duration elapsed) {
    double seconds = Arguments.positive(Seconds.of(elapsed), "time elapsed", "seconds");
    double[] latLon = new double[2];
    RhumbLines.direct(
        first.position().latitudeDegrees(),
        first.position().longitudeDegrees(),
        throughWater.set().degrees(),
        throughWater.rate().metresPerSecond() * seconds,
        latLon,
        0);
    EstimatedPosition reckoned =
        new EstimatedPosition(Position.ofDegrees(latLon[0], latLon[1]), first.covariance());
    return between(reckoned, second, elapsed);
  }

  /**
   * How far the water has carried in that time.
   *
   * @return the drift
   */
  public Distance drift() {
    return Distance.ofMetres(velocity.rate().metresPerSecond() * Seconds.of(duration));
  }

  /**
   * How uncertain the rate is.
   *
   * @return one standard deviation along the set
   */
  public Speed rateStandardDeviation() {
    return Speed.ofMetresPerSecond(
        uncertainty.standardDeviationAlong(velocity.set()).metres() / Seconds.of(duration));
  }

  /**
   * How uncertain the set is.
   *
   * @return one standard deviation, degrees; 180 where the drift is no larger than its uncertainty
   *     across
   */
  public double setStandardDeviationDegrees() {
    double across = uncertainty.standardDeviationAcross(velocity.set()).metres();
    double drift = drift().metres();
    return across < drift ? Math.toDegrees(Math.asin(across / drift)) : 180.0;
  }
}
