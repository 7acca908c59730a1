package org.ferryglide.tide.harmonic;

import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;

/**
 * A phase lag G counted from the angle V at Greenwich by Universal Time: the height is f H cos(V +
 * u - G).
 *
 * <pre>{@code
 * HarmonicConstant m2 =
 *     new HarmonicConstant(Constituents.M2, 1.371, new GreenwichPhaseLag(109.2));
 * }</pre>
 *
 * @param degrees the lag, degrees, in [0, 360)
 */
public record GreenwichPhaseLag(double degrees) implements PhaseLag {

  private static final long serialVersionUID = 1L;

  /**
   * Takes any angle and reduces it.
   *
   * @param degrees the lag, degrees, any finite number
   * @throws IllegalArgumentException if {@code degrees} is NaN or infinite
   */
  public GreenwichPhaseLag {
    degrees = Angles.reduced(Arguments.finite(degrees, "phase lag", "degrees"));
  }

  @Override
  public GreenwichPhaseLag toGreenwich(Constituent constituent) {
    return this;
  }
}
