package org.ferryglide.nav.water;

import java.time.Instant;
import java.util.Optional;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;

/**
 * The wind over the ground as a function of place and time, held as where the air goes.
 *
 * <p>Implementations are immutable and safe to share between threads.
 *
 * <pre>{@code
 * WindField wind = WindField.steady(Velocity.ofWind(TrueBearing.ofDegrees(45), Speed.ofKnots(12)));
 * }</pre>
 */
public interface WindField {

  /**
   * The wind at a place and time, without allocation.
   *
   * @param latitudeDegrees latitude, degrees, in [-90, 90]
   * @param longitudeDegrees longitude, degrees, in [-180, 180]
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @param eastNorth receives the parts to the east and north, metres a second, positive to where
   *     the air goes; untouched if there are no data
   * @param offset index of the east part; the north part follows it
   * @return false if this field has no data there and then, or an argument is NaN
   */
  boolean sample(
      double latitudeDegrees,
      double longitudeDegrees,
      double epochSeconds,
      double[] eastNorth,
      int offset);

  /**
   * The wind at a place and time.
   *
   * @param position where
   * @param instant when
   * @return where the air goes; empty if this field has no data there and then
   */
  default Optional<Velocity> at(Position position, Instant instant) {
    double[] eastNorth = new double[2];
    return sample(
            position.latitudeDegrees(),
            position.longitudeDegrees(),
            EpochSeconds.of(instant),
            eastNorth,
            0)
        ? Optional.of(Velocity.ofEastAndNorth(eastNorth[0], eastNorth[1]))
        : Optional.empty();
  }

  /**
   * The next instant at which the wind is not smooth in time.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @return the first seam strictly later than {@code epochSeconds}, seconds; positive infinity,
   *     the default, if there is none or none is known
   */
  default double nextSeamAfter(double epochSeconds) {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * A speed the wind never exceeds.
   *
   * @return an upper bound, not necessarily reached; empty, the default, if none is known
   */
  default Optional<Speed> maxSpeed() {
    return Optional.empty();
  }

  /**
   * Whether the wind is the same at every place where there are data.
   *
   * @return false by default, which is always safe
   */
  default boolean isUniform() {
    return false;
  }

  /**
   * A wind that is the same everywhere and always.
   *
   * @param wind where the air goes; see {@link Velocity#ofWind}
   * @return the field
   */
  static WindField steady(Velocity wind) {
    return new SteadyField(wind);
  }

  /**
   * No wind anywhere at any time.
   *
   * @return a field of calm, which is not a field without data
   */
  static WindField calm() {
    return new SteadyField(Velocity.STILL);
  }
}
