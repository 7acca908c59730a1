package org.ferryglide.nav.water;

import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;

/**
 * The tidal stream, or any current, as a function of place and time: where the water goes.
 *
 * <p>Implementations are immutable, safe to share between threads, and serializable if what they
 * hold is. One's own needs {@link #sample} only:
 *
 * <pre>{@code
 * StreamField eastGoing =
 *     (latitude, longitude, seconds, eastNorth, offset) -> {
 *       eastNorth[offset] = 0.5; // metres a second
 *       eastNorth[offset + 1] = 0.0;
 *       return true;
 *     };
 * }</pre>
 */
public interface StreamField extends FlowField {

  /**
   * A rate the stream never exceeds.
   *
   * @return an upper bound, not necessarily reached; empty, the default, if none is known
   */
  default Optional<Speed> maxRate() {
    return Optional.empty();
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

  /**
   * Streams on top of each other, such as a tidal stream and a steady surface drift before the
   * wind. Where one of them has no data, the sum has none.
   *
   * <pre>{@code
   * StreamField both = StreamField.sum(List.of(tidal, StreamField.steady(windDrift)));
   * }</pre>
   *
   * @param fields the streams, at least one
   * @return their sum
   * @throws IllegalArgumentException if there is none
   */
  static StreamField sum(List<? extends StreamField> fields) {
    return SummedStream.of(fields);
  }
}
