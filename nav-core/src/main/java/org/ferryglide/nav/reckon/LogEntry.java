package org.ferryglide.nav.reckon;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Speed;

/**
 * A line of the paddler's log: from this time on this heading and speed, until the next line.
 *
 * <pre>{@code
 * LogEntry start = LogEntry.of(nine, TrueBearing.ofDegrees(72), Speed.ofKnots(3.2));
 * LogEntry windier = LogEntry.of(ten, TrueBearing.ofDegrees(65), Speed.ofKnots(3)).withLeeway(6);
 * LogEntry rest = LogEntry.drifting(half);
 * }</pre>
 *
 * @param time when it begins
 * @param heading where the bow points
 * @param speed speed through the water
 * @param leewayDegrees how far the water track lies to starboard of the heading, degrees, to port
 *     negative, in [-90, 90]
 */
public record LogEntry(Instant time, TrueBearing heading, Speed speed, double leewayDegrees)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts; {@link #of} reads better.
   *
   * @param time when it begins
   * @param heading where the bow points
   * @param speed speed through the water
   * @param leewayDegrees leeway, degrees, to starboard positive
   * @throws IllegalArgumentException if the leeway is NaN or outside [-90, 90]
   */
  public LogEntry {
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(heading, "heading");
    Objects.requireNonNull(speed, "speed");
    leewayDegrees = Arguments.within(leewayDegrees, -90.0, 90.0, "leeway", "degrees");
  }

  /**
   * A true heading and a speed, without leeway.
   *
   * @param time when it begins
   * @param heading where the bow points
   * @param speed speed through the water
   * @return the entry
   */
  public static LogEntry of(Instant time, TrueBearing heading, Speed speed) {
    return new LogEntry(time, heading, speed, 0.0);
  }

  /**
   * A heading as the deck compass showed it.
   *
   * @param time when it begins
   * @param heading where the bow points by the compass
   * @param deviation the deviation of that compass on that heading
   * @param variation the variation at the place and date
   * @param speed speed through the water
   * @return the entry
   */
  public static LogEntry ofCompass(
      Instant time, CompassBearing heading, Deviation deviation, Variation variation, Speed speed) {
    return of(time, variation.toTrue(deviation.toMagnetic(heading)), speed);
  }

  /**
   * No way through the water: a rest, a rescue, a lunch afloat. The stream still carries.
   *
   * @param time when it begins
   * @return the entry
   */
  public static LogEntry drifting(Instant time) {
    return of(time, TrueBearing.ofDegrees(0.0), Speed.ZERO);
  }

  /**
   * The same entry with leeway.
   *
   * @param degrees how far the water track lies to starboard of the heading, to port negative, in
   *     [-90, 90]
   * @return an entry with everything else the same
   * @throws IllegalArgumentException if {@code degrees} is NaN or outside [-90, 90]
   */
  public LogEntry withLeeway(double degrees) {
    return new LogEntry(time, heading, speed, degrees);
  }

  /**
   * Where the craft goes through the water.
   *
   * @return heading plus leeway
   */
  public TrueBearing waterTrack() {
    return heading.turnedBy(leewayDegrees);
  }
}
