package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * A time of springs, when the range of the tide is largest, or of neaps, when it is smallest.
 *
 * <pre>{@code
 * for (SpringNeap turn : SpringsAndNeaps.fromMoon(Duration.ofHours(36), from, to)) {
 *   System.out.println(turn.kind() + " about " + turn.time() + ", give or take " + turn.within());
 * }
 * }</pre>
 *
 * @param kind springs or neaps
 * @param time when, as far as is known
 * @param within how far off the largest or smallest range may be, 19 times of 20
 */
public record SpringNeap(Kind kind, Instant time, Duration within) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Which way the range turns.
   *
   * <pre>{@code
   * boolean springs = turn.kind() == SpringNeap.Kind.SPRINGS;
   * }</pre>
   */
  public enum Kind {
    /** The range is largest. */
    SPRINGS,
    /** The range is smallest. */
    NEAPS
  }

  /**
   * Takes all parts.
   *
   * @param kind springs or neaps
   * @param time when, as far as is known
   * @param within how far off that may be, not negative
   * @throws IllegalArgumentException if {@code within} is negative
   */
  public SpringNeap {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(time, "time");
    if (within.isNegative()) {
      throw new IllegalArgumentException("within must not be negative, but was " + within);
    }
  }
}
