package org.ferryglide.tide.harmonic;

import java.io.Serializable;

/**
 * How far a constituent's high water lags behind its angle, together with the clock and the
 * meridian that the angle is counted by: lags of different references are different types.
 *
 * <pre>{@code
 * PhaseLag printed = new ZonePhaseLag(59.4, ZoneOffset.ofHours(-10));
 * double greenwich = printed.toGreenwich(Constituents.M2).degrees();
 * }</pre>
 *
 * <p>Mixing references up shifts a semi-diurnal tide by an hour for each hour of zone, so that no
 * constant is made without one.
 */
public sealed interface PhaseLag extends Serializable
    permits GreenwichPhaseLag, ZonePhaseLag, LocalPhaseLag {

  /**
   * The lag in degrees, in its own reference.
   *
   * @return degrees, in [0, 360)
   */
  double degrees();

  /**
   * The same lag referred to Greenwich and Universal Time.
   *
   * @param constituent which constituent it is the lag of
   * @return the Greenwich phase lag
   */
  GreenwichPhaseLag toGreenwich(Constituent constituent);
}
