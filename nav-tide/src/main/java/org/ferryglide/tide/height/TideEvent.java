package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;

/**
 * A high or a low water: when the tide turns, and how high it stands then.
 *
 * <pre>{@code
 * TideEvent.high(Instant.parse("2026-06-01T09:30:00Z"), 4.2);
 * }</pre>
 *
 * @param time when the tide turns
 * @param heightMetres height above the table's datum, metres, finite
 * @param kind high or low water
 */
public record TideEvent(Instant time, double heightMetres, Kind kind) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Which way the tide turns.
   *
   * <pre>{@code
   * boolean high = event.kind() == TideEvent.Kind.HIGH;
   * }</pre>
   */
  public enum Kind {
    /** High water: the tide stops rising. */
    HIGH,
    /** Low water: the tide stops falling. */
    LOW;

    /**
     * The other way to turn.
     *
     * @return low for high, high for low
     */
    public Kind opposite() {
      return this == HIGH ? LOW : HIGH;
    }
  }

  /**
   * Takes all parts; {@link #high} and {@link #low} read better.
   *
   * @param time when the tide turns
   * @param heightMetres height above the table's datum, metres; -0.0 becomes 0.0
   * @param kind high or low water
   * @throws IllegalArgumentException if {@code heightMetres} is NaN or infinite
   */
  public TideEvent {
    Objects.requireNonNull(time, "time");
    heightMetres = Arguments.finite(heightMetres, "height", "metres");
    Objects.requireNonNull(kind, "kind");
  }

  /**
   * A high water.
   *
   * @param time when the tide turns
   * @param heightMetres height above the table's datum, metres, finite
   * @return the event
   * @throws IllegalArgumentException if {@code heightMetres} is NaN or infinite
   */
  public static TideEvent high(Instant time, double heightMetres) {
    return new TideEvent(time, heightMetres, Kind.HIGH);
  }

  /**
   * A low water.
   *
   * @param time when the tide turns
   * @param heightMetres height above the table's datum, metres, finite
   * @return the event
   * @throws IllegalArgumentException if {@code heightMetres} is NaN or infinite
   */
  public static TideEvent low(Instant time, double heightMetres) {
    return new TideEvent(time, heightMetres, Kind.LOW);
  }

  /**
   * Whether the tide stops rising here.
   *
   * @return true for a high water
   */
  public boolean isHigh() {
    return kind == Kind.HIGH;
  }
}
