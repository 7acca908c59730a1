package org.ferryglide.nav.water;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;
import org.ferryglide.nav.measure.Velocity;

/**
 * The stream at a notable time: strongest of the day, or least between two maxima.
 *
 * <pre>{@code
 * StreamMoment strongest = streamHere.strongest(from, until).first().get();
 * strongest.stream().setAndRate(); // 062° 2.8 kn
 * }</pre>
 *
 * @param time when
 * @param stream where the water goes then
 */
public record StreamMoment(Instant time, Velocity stream) implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * Takes both parts.
   *
   * @param time when
   * @param stream where the water goes then
   */
  public StreamMoment {
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(stream, "stream");
  }
}
