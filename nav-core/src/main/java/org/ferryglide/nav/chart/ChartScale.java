package org.ferryglide.nav.chart;

import java.io.Serializable;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;

/**
 * The natural scale of a chart, and the way between millimetres on paper and distance on the water.
 *
 * <pre>{@code
 * ChartScale chart = ChartScale.mercator(75000, 50.0);
 * chart.millimetres(Distance.ofNauticalMiles(5.2), 50.1); // 128.7
 * chart.distance(20.0, 49.5); // 1515 m: a little more than at the reference latitude
 * ChartScale map = ChartScale.plan(50000); // a land map, or a harbour plan
 * }</pre>
 *
 * <p>A Mercator chart has its natural scale on one parallel, printed as for example "1:75 000 at
 * latitude 50°"; elsewhere the same distance is drawn the longer the nearer it is to the pole. A
 * plan or a land map has one scale throughout, within a few parts in a thousand.
 *
 * <p>At the side of a Mercator chart a minute of latitude serves as a nautical mile:
 *
 * <pre>{@code
 * ChartScale.minuteOfLatitude(50.0); // 1854 m
 * ChartScale.distanceOfMinutes(5.2, 50.0); // what 5.2 minutes are on the ground there
 * ChartScale.minutesOfLatitude(Distance.ofNauticalMiles(5.2), 50.0); // how far to open the dividers
 * }</pre>
 *
 * <p>Minutes and parallels are those of WGS84, on which charts are drawn; on another ellipsoid of
 * the earth they are as long within 11 parts in 100 000 (compared with Airy 1830, each degree of
 * latitude), less than a pencil line. {@link #millimetres(RhumbLeg)} uses the leg's ellipsoid.
 *
 * <p>A minute is 1842.9 m at the equator, 1852 m near 45°, 1861.6 m at the poles. Taking it for
 * 1852 m is wrong by 0.52 % at the poles, 0.50 % at the equator and 0.10 % at 50°. The chart
 * stretches with latitude, so that minutes must be read at the latitude of the leg; {@link
 * #latitudeReadingRatio} tells what reading them elsewhere costs.
 */
public final class ChartScale implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double MINUTES_PER_RADIAN = 60.0 * 180.0 / Math.PI;

  private static final double MILLIMETRES_PER_METRE = 1000.0;

  private final double denominator;

  /** Degrees; 0 on a plan, which does not use it. */
  private final double referenceLatitude;

  private final boolean mercator;

  private ChartScale(double denominator, double referenceLatitude, boolean mercator) {
    this.denominator = denominator;
    this.referenceLatitude = referenceLatitude;
    this.mercator = mercator;
  }

  /**
   * A Mercator chart.
   *
   * @param denominator the scale's second number, 75000 for 1:75 000, above 0
   * @param referenceLatitudeDegrees the latitude at which it holds, degrees, in [-85, 85]
   * @return the scale
   * @throws IllegalArgumentException if a number is NaN or out of range
   */
  public static ChartScale mercator(double denominator, double referenceLatitudeDegrees) {
    return new ChartScale(
        Arguments.positive(denominator, "denominator of a scale", "metres on the ground a metre"),
        mercatorLatitude(referenceLatitudeDegrees),
        true);
  }

  /**
   * A chart or map of one scale.
   *
   * @param denominator the scale's second number, 50000 for 1:50 000, above 0
   * @return the scale
   * @throws IllegalArgumentException if the number is NaN, infinite or not above 0
   */
  public static ChartScale plan(double denominator) {
    return new ChartScale(
        Arguments.positive(denominator, "denominator of a scale", "metres on the ground a metre"),
        0.0,
        false);
  }

  /** Charts on Mercator's projection end short of the poles, which lie at infinity. */
  static double mercatorLatitude(double degrees) {
    return Arguments.within(degrees, -85.0, 85.0, "latitude on a Mercator chart", "degrees");
  }

  /**
   * The scale at a latitude.
   *
   * @param latitudeDegrees latitude, degrees, in [-85, 85] on a Mercator chart
   * @return the scale's second number there
   * @throws IllegalArgumentException if the latitude is NaN or out of range
   */
  public double denominatorAt(double latitudeDegrees) {
    if (!mercator) {
      Arguments.within(latitudeDegrees, -90.0, 90.0, "latitude", "degrees");
      return denominator;
    }
    return denominator
        * (parallelRadius(mercatorLatitude(latitudeDegrees)) / parallelRadius(referenceLatitude));
  }

  /**
   * How long a distance is on paper.
   *
   * @param distance distance on the water
   * @param latitudeDegrees latitude of the middle of the leg, degrees
   * @return millimetres on the chart
   * @throws IllegalArgumentException if the latitude is NaN or out of range
   */
  public double millimetres(Distance distance, double latitudeDegrees) {
    return distance.metres() * MILLIMETRES_PER_METRE / denominatorAt(latitudeDegrees);
  }

  /**
   * The distance that a length on paper stands for.
   *
   * @param millimetres length on the chart, millimetres, finite
   * @param latitudeDegrees latitude of the middle of the leg, degrees
   * @return distance on the water
   * @throws IllegalArgumentException if a value is NaN or out of range
   */
  public Distance distance(double millimetres, double latitudeDegrees) {
    return Distance.ofMetres(
        Arguments.finite(millimetres, "length on the chart", "millimetres")
            / MILLIMETRES_PER_METRE
            * denominatorAt(latitudeDegrees));
  }

  /**
   * How long a rhumb leg is on paper, exactly, however many latitudes it crosses: on a Mercator
   * chart the leg is a straight line of this length. The chart is taken to be drawn on the leg's
   * ellipsoid.
   *
   * @param leg the leg, within latitudes [-85, 85] on a Mercator chart
   * @return millimetres on the chart
   * @throws IllegalArgumentException if an end is beyond the chart
   */
  public double millimetres(RhumbLeg leg) {
    Ellipsoid ellipsoid = leg.ellipsoid();
    if (!mercator) {
      return millimetres(leg.length(), leg.start().latitudeDegrees());
    }
    double startLatitude = mercatorLatitude(leg.start().latitudeDegrees());
    double endLatitude = mercatorLatitude(leg.end().latitudeDegrees());
    double east =
        Math.toRadians(
            Angles.shortWay(leg.end().longitudeDegrees() - leg.start().longitudeDegrees()));
    double north =
        isometricLatitude(ellipsoid, endLatitude) - isometricLatitude(ellipsoid, startLatitude);
    return Math.hypot(east, north)
        * ellipsoid.parallelRadiusMetres(referenceLatitude)
        * MILLIMETRES_PER_METRE
        / denominator;
  }

  /** Radius of a parallel of WGS84, metres. */
  static double parallelRadius(double latitudeDegrees) {
    return Ellipsoid.WGS84.parallelRadiusMetres(latitudeDegrees);
  }

  /** Snyder (1987), USGS PP 1395, eq. 7-7, in the form with artanh; good to 1e-15. */
  private static double isometricLatitude(Ellipsoid ellipsoid, double latitudeDegrees) {
    double sine = Math.sin(Math.toRadians(latitudeDegrees));
    double e2 = ellipsoid.eccentricitySquared();
    double e = Math.sqrt(Math.abs(e2)); // longer than wide where negative
    return inverseTanh(sine) - (e2 < 0.0 ? -e * Math.atan(e * sine) : e * inverseTanh(e * sine));
  }

  private static double inverseTanh(double x) {
    return 0.5 * Math.log((1.0 + x) / (1.0 - x));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ChartScale that
        && denominator == that.denominator
        && referenceLatitude == that.referenceLatitude
        && mercator == that.mercator;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(denominator) + Double.hashCode(referenceLatitude);
  }

  /** The scale, and the latitude at which it holds. */
  @Override
  public String toString() {
    return "1:" + denominator + (mercator ? " at latitude " + referenceLatitude + "°" : "");
  }

  /**
   * The length of a minute of latitude, on plain doubles.
   *
   * @param latitudeDegrees latitude, degrees; NaN gives NaN
   * @return metres for a minute of latitude
   */
  public static double metresPerMinuteOfLatitude(double latitudeDegrees) {
    return Ellipsoid.WGS84.meridianRadiusMetres(latitudeDegrees) / MINUTES_PER_RADIAN;
  }

  /**
   * The length of a minute of latitude.
   *
   * @param latitudeDegrees latitude of its middle, degrees, in [-90, 90]
   * @return the length on the ground
   * @throws IllegalArgumentException if the latitude is NaN or out of range
   */
  public static Distance minuteOfLatitude(double latitudeDegrees) {
    return Distance.ofMetres(metresPerMinuteOfLatitude(latitude(latitudeDegrees)));
  }

  /**
   * The distance that a reading of the latitude scale stands for.
   *
   * @param minutes minutes of latitude between the points of the dividers, finite
   * @param latitudeDegrees latitude of the leg, at which the scale was read, degrees, in [-90, 90]
   * @return the distance; good for legs that span a few degrees of latitude at most
   * @throws IllegalArgumentException if a value is NaN or out of range
   */
  public static Distance distanceOfMinutes(double minutes, double latitudeDegrees) {
    return Distance.ofMetres(
        Arguments.finite(minutes, "reading of the latitude scale", "minutes")
            * metresPerMinuteOfLatitude(latitude(latitudeDegrees)));
  }

  /**
   * How far to open the dividers for a distance.
   *
   * @param distance the distance on the ground
   * @param latitudeDegrees latitude of the leg, at which the scale is read, degrees, in [-90, 90]
   * @return minutes of latitude
   * @throws IllegalArgumentException if the latitude is NaN or out of range
   */
  public static double minutesOfLatitude(Distance distance, double latitudeDegrees) {
    return distance.metres() / metresPerMinuteOfLatitude(latitude(latitudeDegrees));
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
  public static double latitudeReadingRatio(
      double scaleLatitudeDegrees, double legLatitudeDegrees) {
    double scale = mercatorLatitude(scaleLatitudeDegrees);
    double leg = mercatorLatitude(legLatitudeDegrees);
    // the chart draws a parallel of any latitude with one length, so it stretches by 1 / radius
    return parallelRadius(scale) / parallelRadius(leg);
  }

  private static double latitude(double degrees) {
    return Arguments.within(degrees, -90.0, 90.0, "latitude", "degrees");
  }
}
