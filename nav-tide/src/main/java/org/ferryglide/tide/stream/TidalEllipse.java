package org.ferryglide.tide.stream;

import java.io.Serializable;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.tide.harmonic.Constituent;
import org.ferryglide.tide.harmonic.HarmonicConstant;

/**
 * The ellipse traced by the tip of one constituent's velocity.
 *
 * <pre>{@code
 * new TidalEllipse(Constituents.M2, 0.62, -0.08, TrueBearing.ofDegrees(62), 39.0); // clockwise
 * }</pre>
 *
 * <p>At the time when the constituent's argument equals the lag the velocity is {@code semiMajor}
 * towards {@code majorAxis}; a quarter of a period later it is {@code semiMinor} towards 90° to the
 * left of it. These are the ellipse parameters of oceanographers; their inclination, counted
 * anticlockwise from east, is 90° less the bearing used here.
 *
 * @param constituent which constituent
 * @param semiMajorMetresPerSecond greatest speed, metres a second, finite, at least 0
 * @param semiMinorMetresPerSecond least speed, metres a second, positive if the velocity turns
 *     anticlockwise, at most {@code semiMajorMetresPerSecond} in size
 * @param majorAxis direction of the velocity when the argument equals the lag
 * @param lagDegrees Greenwich phase lag, degrees, finite
 * @see <a href="https://doi.org/10.1016/S0098-3004(02)00013-4">Pawlowicz, Beardsley and Lentz
 *     (2002), Computers and Geosciences 28, ellipse parameters</a>
 */
public record TidalEllipse(
    Constituent constituent,
    double semiMajorMetresPerSecond,
    double semiMinorMetresPerSecond,
    TrueBearing majorAxis,
    double lagDegrees)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param constituent which constituent
   * @param semiMajorMetresPerSecond greatest speed
   * @param semiMinorMetresPerSecond least speed with its sense of turning
   * @param majorAxis direction of the greatest speed
   * @param lagDegrees Greenwich phase lag, reduced to [0, 360)
   * @throws IllegalArgumentException if a number is not finite, the semi-major axis is negative, or
   *     the semi-minor axis is the larger
   */
  public TidalEllipse {
    semiMajorMetresPerSecond =
        Arguments.notNegative(semiMajorMetresPerSecond, "semi-major axis", "metres a second");
    semiMinorMetresPerSecond =
        Arguments.within(
            semiMinorMetresPerSecond,
            -semiMajorMetresPerSecond,
            semiMajorMetresPerSecond,
            "semi-minor axis",
            "metres a second");
    lagDegrees = Angles.reduced(Arguments.finite(lagDegrees, "lag", "degrees"));
  }

  HarmonicConstant eastConstant() {
    double axis = Math.toRadians(majorAxis.degrees());
    return constant(
        semiMajorMetresPerSecond * Math.sin(axis), -semiMinorMetresPerSecond * Math.cos(axis));
  }

  HarmonicConstant northConstant() {
    double axis = Math.toRadians(majorAxis.degrees());
    return constant(
        semiMajorMetresPerSecond * Math.cos(axis), semiMinorMetresPerSecond * Math.sin(axis));
  }

  /** The constant of {@code inPhase cos(argument - lag) + quarterLater sin(argument - lag)}. */
  private HarmonicConstant constant(double inPhase, double quarterLater) {
    double lag = lagDegrees + Math.toDegrees(Math.atan2(quarterLater, inPhase));
    return new HarmonicConstant(
        constituent, Math.hypot(inPhase, quarterLater), Angles.reduced(lag));
  }
}
