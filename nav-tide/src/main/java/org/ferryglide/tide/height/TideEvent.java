package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;
import org.ferryglide.nav.measure.Distance;

/**
 * A high or a low water: when the tide turns, and how high it stands then.
 *
 * <pre>{@code
 * TideEvent.high(Instant.parse("2026-06-01T09:30:00Z"), Distance.ofMetres(4.2));
 * }</pre>
 *
 * @param time when the tide turns
 * @param height height above the table's datum
 * @param kind high or low water
 */
public record TideEvent(Instant time, Distance height, Kind kind) implements Serializable {

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
   * @param height height above the table's datum
   * @param kind high or low water
   */
  public TideEvent {
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(height, "height");
    Objects.requireNonNull(kind, "kind");
  }

  /**
   * A high water.
   *
   * @param time when the tide turns
   * @param height height above the table's datum
   * @return the event
   */
  public static TideEvent high(Instant time, Distance height) {
    return new TideEvent(time, height, Kind.HIGH);
  }

  /**
   * A low water.
   *
   * @param time when the tide turns
   * @param height height above the table's datum
   * @return the event
   */
  public static TideEvent low(Instant time, Distance height) {
    return new TideEvent(time, height, Kind.LOW);
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
