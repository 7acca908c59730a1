package org.ferryglide.tide.harmonic;

import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;

/**
 * A phase lag counted from the angle at the station's own meridian, written κ: how long after the
 * mean moon's passage over the place the constituent's high water comes.
 *
 * <p>G = κ - (species) × (longitude, east positive), after Schureman (1958), who counts longitude
 * west.
 *
 * <pre>{@code
 * PhaseLag lag = new LocalPhaseLag(330.1, -71.05);
 * }</pre>
 *
 * @param degrees the lag, degrees, in [0, 360)
 * @param longitudeDegrees the station's longitude, degrees, east positive, in [-180, 180]
 */
public record LocalPhaseLag(double degrees, double longitudeDegrees) implements PhaseLag {

  private static final long serialVersionUID = 1L;

  /**
   * Takes any angle and reduces it.
   *
   * @param degrees the lag, degrees, any finite number
   * @param longitudeDegrees the station's longitude, degrees, east positive
   * @throws IllegalArgumentException if {@code degrees} is NaN or infinite, or the longitude is NaN
   *     or outside [-180, 180]
   */
  public LocalPhaseLag {
    degrees = Angles.reduced(Arguments.finite(degrees, "phase lag", "degrees"));
    longitudeDegrees =
        Arguments.within(longitudeDegrees, -180.0, 180.0, "longitude of a station", "degrees");
  }

  @Override
  public GreenwichPhaseLag toGreenwich(Constituent constituent) {
    return new GreenwichPhaseLag(degrees - constituent.species() * longitudeDegrees);
  }
}
