package org.ferryglide.tide.harmonic;

import java.io.Serializable;
import java.time.ZoneOffset;
import java.util.Objects;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;

/**
 * How large a constituent is at a place, and how far it lags: the height is f H cos(V + u - G).
 *
 * <p>A lag is counted by some clock and from some meridian, and mixing references up shifts a
 * semi-diurnal tide by an hour for each hour of zone; so there is one factory method for each
 * reference, and what is held is always G, counted from the angle V at Greenwich by Universal Time.
 *
 * <pre>{@code
 * HarmonicConstant.ofGreenwich(Constituents.M2, 1.371, 109.2);
 * HarmonicConstant.ofZone(Constituents.M2, 0.5, 59.4, ZoneOffset.ofHours(-10)).greenwichLagDegrees();
 * }</pre>
 *
 * @param constituent which constituent
 * @param amplitude half its range, nodal correction taken out, in the unit of the series: metres
 *     for heights, metres a second for streams; not negative
 * @param greenwichLagDegrees its phase lag G, degrees, in [0, 360)
 */
public record HarmonicConstant(
    Constituent constituent, double amplitude, double greenwichLagDegrees) implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final double HOUR_SECONDS = 3600.0;

  /**
   * Takes all parts; {@link #ofGreenwich} says which lag it is.
   *
   * @param constituent which constituent
   * @param amplitude half its range
   * @param greenwichLagDegrees its phase lag G, degrees, any finite number
   * @throws IllegalArgumentException if {@code amplitude} is NaN, infinite or negative, or the lag
   *     is NaN or infinite
   */
  public HarmonicConstant {
    Objects.requireNonNull(constituent, "constituent");
    amplitude =
        Arguments.notNegative(amplitude, "amplitude of " + constituent, "units of the series");
    greenwichLagDegrees =
        Angles.reduced(Arguments.finite(greenwichLagDegrees, "phase lag", "degrees"));
  }

  /**
   * A constant whose lag, written G, is counted from the angle at Greenwich by Universal Time.
   *
   * @param constituent which constituent
   * @param amplitude half its range, in the unit of the series
   * @param lagDegrees the lag G, degrees, any finite number
   * @return the constant
   * @throws IllegalArgumentException if {@code amplitude} is NaN, infinite or negative, or the lag
   *     is NaN or infinite
   */
  public static HarmonicConstant ofGreenwich(
      Constituent constituent, double amplitude, double lagDegrees) {
    return new HarmonicConstant(constituent, amplitude, lagDegrees);
  }

  /**
   * A constant whose lag is counted by the clock of a zone, as if its clock showed Universal Time
   * at Greenwich: what an analysis of a record in zone time gives, often written g, or κ′.
   *
   * <p>G = g - (speed in degrees an hour) × (hours that the zone is ahead of UTC), after Schureman
   * (1958), with his west longitudes turned to offsets ahead of UTC.
   *
   * @param constituent which constituent
   * @param amplitude half its range, in the unit of the series
   * @param lagDegrees the lag g, degrees, any finite number
   * @param zone how far the clock is ahead of UTC; standard time, without daylight saving
   * @return the constant
   * @throws IllegalArgumentException if {@code amplitude} is NaN, infinite or negative, or the lag
   *     is NaN or infinite
   */
  public static HarmonicConstant ofZone(
      Constituent constituent, double amplitude, double lagDegrees, ZoneOffset zone) {
    double reduced = Angles.reduced(Arguments.finite(lagDegrees, "phase lag", "degrees"));
    double hoursAhead = zone.getTotalSeconds() / HOUR_SECONDS;
    return new HarmonicConstant(
        constituent, amplitude, reduced - constituent.speedDegreesPerHour() * hoursAhead);
  }

  /**
   * A constant whose lag is counted from the angle at the station's own meridian, written κ: how
   * long after the mean moon's transit at the place the constituent's high water comes.
   *
   * <p>G = κ - (species) × (longitude, east positive), after Schureman (1958), who counts longitude
   * west.
   *
   * @param constituent which constituent
   * @param amplitude half its range, in the unit of the series
   * @param lagDegrees the lag κ, degrees, any finite number
   * @param longitudeDegrees the station's longitude, degrees, east positive, in [-180, 180]
   * @return the constant
   * @throws IllegalArgumentException if {@code amplitude} is NaN, infinite or negative, the lag is
   *     NaN or infinite, or the longitude is NaN or outside [-180, 180]
   */
  public static HarmonicConstant ofLocal(
      Constituent constituent, double amplitude, double lagDegrees, double longitudeDegrees) {
    double reduced = Angles.reduced(Arguments.finite(lagDegrees, "phase lag", "degrees"));
    double longitude =
        Arguments.within(longitudeDegrees, -180.0, 180.0, "longitude of a station", "degrees");
    return new HarmonicConstant(
        constituent, amplitude, reduced - constituent.species() * longitude);
  }
}
