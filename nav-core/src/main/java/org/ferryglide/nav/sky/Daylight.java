package org.ferryglide.nav.sky;

import java.io.Serializable;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the sun does at one threshold during one calendar day.
 *
 * <p>Most days have one rise and one set. In high latitudes a day can have one of them only, none,
 * or (where the sun sets just after midnight and again just before the next) two of a kind; {@link
 * #crossings} has them all in order.
 *
 * <pre>{@code
 * Daylight light = day.civilTwilight();
 * Optional<Instant> lastLight = light.set();
 * if (light.state() == SunState.ALWAYS_DOWN) {
 *   // no daylight at all
 * }
 * }</pre>
 *
 * @param threshold the altitude of the sun that is meant
 * @param state whether it crosses, or on which side it stays
 * @param crossings every crossing of the day in order of time; empty unless {@code state} is {@link
 *     SunState#CROSSES}
 */
public record Daylight(SunThreshold threshold, SunState state, List<SunCrossing> crossings)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts, which must agree.
   *
   * @param threshold the altitude of the sun that is meant
   * @param state whether it crosses, or on which side it stays
   * @param crossings every crossing in order of time; copied
   * @throws IllegalArgumentException if there are crossings and {@code state} denies them, or the
   *     other way round
   */
  public Daylight {
    Objects.requireNonNull(threshold, "threshold");
    Objects.requireNonNull(state, "state");
    crossings = List.copyOf(crossings);
    if (crossings.isEmpty() == (state == SunState.CROSSES)) {
      throw new IllegalArgumentException(
          "state " + state + " does not go with " + crossings.size() + " crossings");
    }
  }

  /**
   * When the sun comes up through the threshold: sunrise, or morning twilight begins.
   *
   * @return the first rise of the day; empty if there is none
   */
  public Optional<Instant> rise() {
    return crossings.stream().filter(SunCrossing::rising).map(SunCrossing::time).findFirst();
  }

  /**
   * When the sun goes down through the threshold: sunset, or evening twilight ends.
   *
   * @return the last set of the day; empty if there is none
   */
  public Optional<Instant> set() {
    return crossings.stream()
        .filter(crossing -> !crossing.rising())
        .map(SunCrossing::time)
        .reduce((earlier, later) -> later);
  }
}
