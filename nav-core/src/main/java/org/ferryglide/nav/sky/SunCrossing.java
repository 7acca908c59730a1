package org.ferryglide.nav.sky;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;

/**
 * The sun passing a threshold.
 *
 * <pre>{@code
 * for (SunCrossing crossing : day.civilTwilight().crossings()) {
 *   System.out.println(crossing.time() + (crossing.rising() ? " light" : " dark"));
 * }
 * }</pre>
 *
 * @param time when, on the whole minute
 * @param rising true upward, false downward
 */
public record SunCrossing(Instant time, boolean rising) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes both parts.
   *
   * @param time when
   * @param rising true upward, false downward
   */
  public SunCrossing {
    Objects.requireNonNull(time, "time");
  }
}
