package org.ferryglide.nav.chart;

import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.measure.Distance;

/**
 * The scale at the side of a Mercator chart, where a minute of latitude serves as a nautical mile.
 *
 * <pre>{@code
 * LatitudeScale.lengthOfMinute(50.0); // 1854 m
 * LatitudeScale.distance(5.2, 50.0); // what 5.2 minutes of the scale are on the ground there
 * LatitudeScale.minutes(Distance.ofNauticalMiles(5.2), 50.0); // how far to open the dividers
 * }</pre>
 *
 * <p>The minute is that of the WGS84 ellipsoid: 1842.9 m at the equator, 1852 m near 45°, 1861.6 m
 * at the poles. Taking it for 1852 m is wrong by 0.52 % at the poles, 0.50 % at the equator and
 * 0.10 % at 50°.
 *
 * <p>The chart stretches with latitude, so that the scale must be read at the latitude of the leg;
 * {@link #readingRatio} tells what reading it elsewhere costs.
 */
public final class LatitudeScale {
  private LatitudeScale() {}

  private static final double MINUTES_PER_RADIAN = 60.0 * 180.0 / Math.PI;

  /**
   * The length of a minute of latitude, on plain doubles.
   *
   * @param latitudeDegrees latitude, degrees; NaN gives NaN
   * @return metres for a minute of latitude
   */
  public static double metresPerMinute(double latitudeDegrees) {
    return Ellipsoid.WGS84.meridianRadiusMetres(latitudeDegrees) / MINUTES_PER_RADIAN;
  }

  /**
   * The length of a minute of latitude.
   *
   * @param latitudeDegrees latitude of its middle, degrees, in [-90, 90]
   * @return the length on the ground
   * @throws IllegalArgumentException if the latitude is NaN or out of range
   */
  public static Distance lengthOfMinute(double latitudeDegrees) {
    return Distance.ofMetres(metresPerMinute(latitude(latitudeDegrees)));
  }

  /**
   * What a reading of the scale is on the ground.
   *
   * @param minutes minutes of latitude between the points of the dividers, finite
   * @param latitudeDegrees latitude of the leg, at which the scale was read, degrees, in [-90, 90]
   * @return the distance; good for legs that span a few degrees of latitude at most
   * @throws IllegalArgumentException if a value is NaN or out of range
   */
  public static Distance distance(double minutes, double latitudeDegrees) {
    return Distance.ofMetres(
        Arguments.finite(minutes, "reading of the latitude scale", "minutes")
            * metresPerMinute(latitude(latitudeDegrees)));
  }

  /**
   * How far to open the dividers for a distance.
   *
   * @param distance the distance on the ground
   * @param latitudeDegrees latitude of the leg, at which the scale is read, degrees, in [-90, 90]
   * @return minutes of latitude
   * @throws IllegalArgumentException if the latitude is NaN or out of range
   */
  public static double minutes(Distance distance, double latitudeDegrees) {
    return distance.metres() / metresPerMinute(latitude(latitudeDegrees));
  }

  /**
   * What reading the scale at the wrong latitude does to a distance.
   *
   * @param scaleLatitudeDegrees latitude at which the scale is read, degrees, in [-85, 85]
   * @param legLatitudeDegrees latitude of the leg, degrees, in [-85, 85]
   * @return distance read over distance on the ground: below 1 when the scale is read nearer the
   *     pole, where its minutes are drawn longer; 0.98 for a degree at latitude 50
   * @throws IllegalArgumentException if a latitude is NaN or out of range
   */
  public static double readingRatio(double scaleLatitudeDegrees, double legLatitudeDegrees) {
    double scale = ChartScale.mercatorLatitude(scaleLatitudeDegrees);
    double leg = ChartScale.mercatorLatitude(legLatitudeDegrees);
    // the chart draws a parallel of any latitude with one length, so it stretches by 1 / radius
    return ChartScale.parallelRadius(scale) / ChartScale.parallelRadius(leg);
  }

  private static double latitude(double degrees) {
    return Arguments.within(degrees, -90.0, 90.0, "latitude", "degrees");
  }
}
