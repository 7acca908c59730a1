package org.ferryglide.nav.water;

import java.time.Instant;
import java.util.Optional;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;

/**
 * The tidal stream, or any current, as a function of place and time.
 *
 * <p>Implementations are immutable and safe to share between threads.
 *
 * <pre>{@code
 * double[] eastNorth = new double[2];
 * if (field.sample(50.1, -5.5, departureSeconds, eastNorth, 0)) {
 *   double eastMetresPerSecond = eastNorth[0];
 * }
 * }</pre>
 */
public interface StreamField {

  /**
   * The stream at a place and time, without allocation.
   *
   * @param latitudeDegrees latitude, degrees, in [-90, 90]
   * @param longitudeDegrees longitude, degrees, in [-180, 180]
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @param eastNorth receives the parts to the east and north, metres a second, positive to where
   *     the water goes; untouched if there are no data
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
   * The stream at a place and time.
   *
   * @param position where
   * @param instant when
   * @return where the water goes; empty if this field has no data there and then, which is not the
   *     same as slack water
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
   * The next instant at which the stream is not smooth in time, so that an integrator can step up
   * to it.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @return the first seam strictly later than {@code epochSeconds}, anywhere in the field,
   *     seconds; positive infinity, the default, if there is none or none is known
   */
  default double nextSeamAfter(double epochSeconds) {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * A rate the stream never exceeds.
   *
   * @return an upper bound, not necessarily reached; empty, the default, if none is known
   */
  default Optional<Speed> maxRate() {
    return Optional.empty();
  }

  /**
   * Whether the stream is the same at every place where there are data.
   *
   * @return false by default, which is always safe
   */
  default boolean isUniform() {
    return false;
  }

  /**
   * How the answer at a place and time comes about: sources, weights and notes.
   *
   * @param position where
   * @param instant when
   * @return the explanation; by default one without sources
   */
  default FlowExplanation explain(Position position, Instant instant) {
    return FlowExplanation.NONE;
  }

  /**
   * A stream that is the same everywhere and always.
   *
   * @param stream where the water goes
   * @return the field
   */
  static StreamField steady(Velocity stream) {
    return new SteadyField(stream);
  }

  /**
   * Still water everywhere and always.
   *
   * @return a field of no stream, which is not a field without data
   */
  static StreamField slack() {
    return new SteadyField(Velocity.STILL);
  }
}
