package org.ferryglide.nav.water;

import java.util.Optional;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;

/**
 * The wind over the ground as a function of place and time, held as where the air goes.
 *
 * <p>Implementations are immutable, safe to share between threads, and serializable if what they
 * hold is. One's own needs {@link #sample} only.
 *
 * <pre>{@code
 * WindField wind = WindField.steady(Velocity.ofWind(TrueBearing.ofDegrees(45), Speed.ofKnots(12)));
 * }</pre>
 */
public interface WindField extends FlowField {

  /**
   * A speed the wind never exceeds.
   *
   * @return an upper bound, not necessarily reached; empty, the default, if none is known
   */
  default Optional<Speed> maxSpeed() {
    return Optional.empty();
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
