package org.ferryglide.tide.harmonic;

import java.time.ZoneOffset;
import java.util.Objects;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;

/**
 * A phase lag counted by the clock of a zone, as if its clock showed Universal Time at Greenwich:
 * what an analysis of a record in zone time gives, often written g, or κ′.
 *
 * <p>G = g - (speed in degrees an hour) × (hours that the zone is ahead of UTC), after Schureman
 * (1958), with his west longitudes turned to offsets ahead of UTC.
 *
 * <pre>{@code
 * PhaseLag lag = new ZonePhaseLag(77.7, ZoneOffset.ofHours(-7));
 * }</pre>
 *
 * @param degrees the lag, degrees, in [0, 360)
 * @param zone how far the clock is ahead of UTC; standard time, without daylight saving
 */
public record ZonePhaseLag(double degrees, ZoneOffset zone) implements PhaseLag {

  private static final long serialVersionUID = 1L;

  private static final double HOUR_SECONDS = 3600.0;

  /**
   * Takes any angle and reduces it.
   *
   * @param degrees the lag, degrees, any finite number
   * @param zone how far the clock is ahead of UTC
   * @throws IllegalArgumentException if {@code degrees} is NaN or infinite
   */
  public ZonePhaseLag {
    degrees = Angles.reduced(Arguments.finite(degrees, "phase lag", "degrees"));
    Objects.requireNonNull(zone, "zone");
  }

  @Override
  public GreenwichPhaseLag toGreenwich(Constituent constituent) {
    double hoursAhead = zone.getTotalSeconds() / HOUR_SECONDS;
    return new GreenwichPhaseLag(degrees - constituent.speedDegreesPerHour() * hoursAhead);
  }
}
