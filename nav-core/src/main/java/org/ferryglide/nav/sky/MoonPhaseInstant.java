package org.ferryglide.nav.sky;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;

/**
 * A phase of the moon and when it happens.
 *
 * <pre>{@code
 * List<MoonPhaseInstant> june = Moon.phasesBetween(from, to);
 * }</pre>
 *
 * @param phase which phase
 * @param time when, on the whole minute
 */
public record MoonPhaseInstant(MoonPhase phase, Instant time) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes both parts.
   *
   * @param phase which phase
   * @param time when
   */
  public MoonPhaseInstant {
    Objects.requireNonNull(phase, "phase");
    Objects.requireNonNull(time, "time");
  }
}
