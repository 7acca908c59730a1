package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.time.Instant;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;

/**
 * A line of a published current table: slack water, or the maximum of a flood or an ebb.
 *
 * <pre>{@code
 * CurrentEvent.slack(Instant.parse("2026-06-01T09:31:00Z"));
 * CurrentEvent.flood(Instant.parse("2026-06-01T11:59:00Z"), TrueBearing.ofDegrees(195), Speed.ofKnots(0.66));
 * }</pre>
 *
 * @param time when
 * @param kind slack, or maximum of flood or ebb
 * @param set where the current goes; north for slack
 * @param rate how fast; zero for slack
 */
public record CurrentEvent(Instant time, Kind kind, TrueBearing set, Speed rate)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * What a line of a current table gives.
   *
   * <pre>{@code
   * boolean turns = event.kind() == CurrentEvent.Kind.SLACK;
   * }</pre>
   */
  public enum Kind {
    /** The current turns. */
    SLACK,
    /** The flood is at its strongest. */
    FLOOD,
    /** The ebb is at its strongest. */
    EBB
  }

  /**
   * Takes all parts; {@link #slack}, {@link #flood} and {@link #ebb} read better.
   *
   * @param time when
   * @param kind slack, or maximum of flood or ebb
   * @param set where the current goes
   * @param rate how fast
   * @throws IllegalArgumentException if slack water has a rate
   */
  public CurrentEvent {
    if (kind == Kind.SLACK && rate.metresPerSecond() > 0.0) {
      throw new IllegalArgumentException("slack water must have no rate, but was " + rate);
    }
  }

  /**
   * Slack water.
   *
   * @param time when the current turns
   * @return the event
   */
  public static CurrentEvent slack(Instant time) {
    return new CurrentEvent(time, Kind.SLACK, TrueBearing.ofDegrees(0.0), Speed.ZERO);
  }

  /**
   * The maximum of a flood.
   *
   * @param time when it is strongest
   * @param set where it goes
   * @param rate how fast
   * @return the event
   */
  public static CurrentEvent flood(Instant time, TrueBearing set, Speed rate) {
    return new CurrentEvent(time, Kind.FLOOD, set, rate);
  }

  /**
   * The maximum of an ebb.
   *
   * @param time when it is strongest
   * @param set where it goes
   * @param rate how fast
   * @return the event
   */
  public static CurrentEvent ebb(Instant time, TrueBearing set, Speed rate) {
    return new CurrentEvent(time, Kind.EBB, set, rate);
  }
}
