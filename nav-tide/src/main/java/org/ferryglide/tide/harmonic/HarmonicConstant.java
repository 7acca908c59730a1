package org.ferryglide.tide.harmonic;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;

/**
 * How large a constituent is at a place, and how far it lags.
 *
 * <pre>{@code
 * new HarmonicConstant(Constituents.M2, 1.371, new GreenwichPhaseLag(109.2));
 * }</pre>
 *
 * @param constituent which constituent
 * @param amplitude half its range, nodal correction taken out, in the unit of the series: metres
 *     for heights, metres a second for streams; not negative
 * @param lag its phase lag
 */
public record HarmonicConstant(Constituent constituent, double amplitude, PhaseLag lag)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param constituent which constituent
   * @param amplitude half its range
   * @param lag its phase lag
   * @throws IllegalArgumentException if {@code amplitude} is NaN, infinite or negative
   */
  public HarmonicConstant {
    Objects.requireNonNull(constituent, "constituent");
    amplitude =
        Arguments.notNegative(amplitude, "amplitude of " + constituent, "units of the series");
    Objects.requireNonNull(lag, "lag");
  }

  /**
   * The lag referred to Greenwich and Universal Time.
   *
   * @return degrees, in [0, 360)
   */
  public double greenwichLagDegrees() {
    return lag.toGreenwich(constituent).degrees();
  }
}
