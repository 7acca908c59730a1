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
 * if (light.isDownAllDay()) {
 *   // no daylight at all
 * }
 * }</pre>
 *
 * @param threshold the altitude of the sun that is meant
 * @param upAtStart whether the sun is above it when the day begins
 * @param crossings every crossing of the day in order of time, rises and sets in turn
 */
public record Daylight(SunThreshold threshold, boolean upAtStart, List<SunCrossing> crossings)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts, which must agree.
   *
   * @param threshold the altitude of the sun that is meant
   * @param upAtStart whether the sun is above it when the day begins
   * @param crossings every crossing in order of time; copied
   * @throws IllegalArgumentException if the sun rises while it is up, or sets while it is down
   */
  public Daylight {
    Objects.requireNonNull(threshold, "threshold");
    crossings = List.copyOf(crossings);
    boolean up = upAtStart;
    for (SunCrossing crossing : crossings) {
      if (crossing.rising() == up) {
        throw new IllegalArgumentException(
            "the sun is " + (up ? "up" : "down") + " before " + crossing.time() + " already");
      }
      up = crossing.rising();
    }
  }

  /**
   * Whether the sun stays above the threshold.
   *
   * @return true if it is up from the start of the day to its end
   */
  public boolean isUpAllDay() {
    return upAtStart && crossings.isEmpty();
  }

  /**
   * Whether the sun stays below the threshold.
   *
   * @return true if it is down from the start of the day to its end
   */
  public boolean isDownAllDay() {
    return !upAtStart && crossings.isEmpty();
  }

  /**
   * Whether the sun is above the threshold at a time of the day.
   *
   * @param time when; before the day as at its start, after it as at its end
   * @return true if it is up, from the minute of a rise until before that of a set
   */
  public boolean isUpAt(Instant time) {
    boolean up = upAtStart;
    for (SunCrossing crossing : crossings) {
      if (crossing.time().isAfter(time)) {
        break;
      }
      up = crossing.rising();
    }
    return up;
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
