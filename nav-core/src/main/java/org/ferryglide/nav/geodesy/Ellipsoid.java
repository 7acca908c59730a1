package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import net.sf.geographiclib.Geodesic;
import org.ferryglide.nav.basics.Arguments;

/**
 * An ellipsoid of revolution that stands for the earth: its size, its shape, and what follows from
 * them.
 *
 * <pre>{@code
 * Ellipsoid.WGS84.semiMajorAxisMetres(); // 6378137.0
 * Ellipsoid.WGS84.quarterMeridianMetres(); // 10001965.729
 * Ellipsoid globe = Ellipsoid.sphere(6371008.8);
 * }</pre>
 *
 * <p>Two ellipsoids of equal axis and flattening are equal.
 */
public final class Ellipsoid implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * The greatest flattening accepted, of either sign; the series used are for nearly round bodies.
   */
  public static final double GREATEST_FLATTENING = 0.02;

  /** The World Geodetic System 1984; EPSG 7030. */
  public static final Ellipsoid WGS84 = ofInverseFlattening(6378137.0, 298.257223563);

  /** The Geodetic Reference System 1980; EPSG 7019. */
  public static final Ellipsoid GRS80 = ofInverseFlattening(6378137.0, 298.257222101);

  /** Airy 1830, of the British National Grid; EPSG 7001. */
  public static final Ellipsoid AIRY_1830 = ofInverseFlattening(6377563.396, 299.3249646);

  /** Airy Modified 1849, of the Irish Grid; EPSG 7002. */
  public static final Ellipsoid AIRY_MODIFIED_1849 = ofInverseFlattening(6377340.189, 299.3249646);

  private final double semiMajorAxisMetres;
  private final double flattening;

  /** First eccentricity squared, negative for an ellipsoid longer than it is wide. */
  final transient double e2;

  /** Radius of the circle as long as the meridian, metres. */
  final transient double rectifyingRadius;

  /** What GeographicLib prepares for geodesics on it. */
  final transient Geodesic geodesic;

  // Rectifying latitude from geographic latitude: mu = phi + sum of toMuK sin(2K phi).
  final transient double toMu1;
  final transient double toMu2;
  final transient double toMu3;
  final transient double toMu4;
  final transient double toMu5;
  final transient double toMu6;

  // Geographic latitude from rectifying latitude: phi = mu + sum of toPhiK sin(2K mu).
  final transient double toPhi1;
  final transient double toPhi2;
  final transient double toPhi3;
  final transient double toPhi4;
  final transient double toPhi5;
  final transient double toPhi6;

  private Ellipsoid(double semiMajorAxisMetres, double flattening) {
    this.semiMajorAxisMetres = Arguments.positive(semiMajorAxisMetres, "semi-major axis", "metres");
    this.flattening =
        Arguments.within(
            flattening, -GREATEST_FLATTENING, GREATEST_FLATTENING, "flattening", "(no unit)");
    e2 = flattening * (2.0 - flattening);
    geodesic = new Geodesic(semiMajorAxisMetres, flattening);
    // The series in the third flattening n to the sixth order: Karney (2023), On auxiliary
    // latitudes, eqs. A5 and A6; the same as Helmert (1880) and Kawase (2011).
    double n = thirdFlattening();
    double n2 = n * n;
    rectifyingRadius =
        semiMajorAxisMetres
            / (1.0 + n)
            * (1.0 + n2 * (1.0 / 4.0 + n2 * (1.0 / 64.0 + n2 * (1.0 / 256.0))));
    toMu1 = n * (-3.0 / 2.0 + n2 * (9.0 / 16.0 - n2 * (3.0 / 32.0)));
    toMu2 = n2 * (15.0 / 16.0 + n2 * (-15.0 / 32.0 + n2 * (135.0 / 2048.0)));
    toMu3 = n * n2 * (-35.0 / 48.0 + n2 * (105.0 / 256.0));
    toMu4 = n2 * n2 * (315.0 / 512.0 - n2 * (189.0 / 512.0));
    toMu5 = -n * n2 * n2 * (693.0 / 1280.0);
    toMu6 = n2 * n2 * n2 * (1001.0 / 2048.0);
    toPhi1 = n * (3.0 / 2.0 + n2 * (-27.0 / 32.0 + n2 * (269.0 / 512.0)));
    toPhi2 = n2 * (21.0 / 16.0 + n2 * (-55.0 / 32.0 + n2 * (6759.0 / 4096.0)));
    toPhi3 = n * n2 * (151.0 / 96.0 - n2 * (417.0 / 128.0));
    toPhi4 = n2 * n2 * (1097.0 / 512.0 - n2 * (15543.0 / 2560.0));
    toPhi5 = n * n2 * n2 * (8011.0 / 2560.0);
    toPhi6 = n2 * n2 * n2 * (293393.0 / 61440.0);
  }

  /**
   * Makes an ellipsoid from its larger axis and its flattening.
   *
   * @param semiMajorAxisMetres radius of the equator, metres, above 0
   * @param flattening 1 less the ratio of the polar to the equatorial radius, in [-0.02, 0.02]
   * @return the ellipsoid
   * @throws IllegalArgumentException if a value is NaN or out of range
   */
  public static Ellipsoid ofFlattening(double semiMajorAxisMetres, double flattening) {
    return new Ellipsoid(semiMajorAxisMetres, flattening);
  }

  /**
   * Makes an ellipsoid as it is most often printed.
   *
   * @param semiMajorAxisMetres radius of the equator, metres, above 0
   * @param inverseFlattening one over the flattening, at least 50 in magnitude; infinite for a
   *     sphere
   * @return the ellipsoid
   * @throws IllegalArgumentException if a value is NaN or out of range
   */
  public static Ellipsoid ofInverseFlattening(
      double semiMajorAxisMetres, double inverseFlattening) {
    if (!(Math.abs(inverseFlattening) >= 1.0 / GREATEST_FLATTENING)) { // written so that NaN fails
      throw new IllegalArgumentException(
          "inverse flattening must be at least 50 or at most -50, but was " + inverseFlattening);
    }
    return new Ellipsoid(semiMajorAxisMetres, 1.0 / inverseFlattening);
  }

  /**
   * Makes an ellipsoid from its two radii.
   *
   * @param semiMajorAxisMetres radius of the equator, metres, above 0
   * @param semiMinorAxisMetres distance from the centre to a pole, metres, within a fiftieth of the
   *     other
   * @return the ellipsoid
   * @throws IllegalArgumentException if a value is NaN or out of range
   */
  public static Ellipsoid ofAxes(double semiMajorAxisMetres, double semiMinorAxisMetres) {
    return new Ellipsoid(
        semiMajorAxisMetres, (semiMajorAxisMetres - semiMinorAxisMetres) / semiMajorAxisMetres);
  }

  /**
   * Makes a sphere.
   *
   * @param radiusMetres the radius, metres, above 0
   * @return an ellipsoid without flattening
   * @throws IllegalArgumentException if the radius is NaN, infinite or not above 0
   */
  public static Ellipsoid sphere(double radiusMetres) {
    return new Ellipsoid(radiusMetres, 0.0);
  }

  /**
   * The radius of the equator.
   *
   * @return metres
   */
  public double semiMajorAxisMetres() {
    return semiMajorAxisMetres;
  }

  /**
   * The distance from the centre to a pole.
   *
   * @return metres
   */
  public double semiMinorAxisMetres() {
    return semiMajorAxisMetres * (1.0 - flattening);
  }

  /**
   * The flattening, (a - b) / a.
   *
   * @return a number without unit, 0 for a sphere
   */
  public double flattening() {
    return flattening;
  }

  /**
   * The first eccentricity squared, f (2 - f).
   *
   * @return a number without unit, negative for an ellipsoid longer than it is wide
   */
  public double eccentricitySquared() {
    return e2;
  }

  /**
   * The third flattening, n = (a - b) / (a + b), the variable of this package's series.
   *
   * @return a number without unit
   */
  public double thirdFlattening() {
    return flattening / (2.0 - flattening);
  }

  /**
   * The radius of the circle that is as long as a meridian.
   *
   * @return metres
   */
  public double rectifyingRadiusMetres() {
    return rectifyingRadius;
  }

  /**
   * The distance from the equator to a pole.
   *
   * @return metres; 10 001 965.729 for WGS84
   */
  public double quarterMeridianMetres() {
    return rectifyingRadius * (Math.PI / 2.0);
  }

  /**
   * The radius of curvature of the meridian at a latitude: how fast northing grows with latitude.
   *
   * @param latitudeDegrees latitude, degrees; NaN gives NaN
   * @return metres for each radian of latitude
   */
  public double meridianRadiusMetres(double latitudeDegrees) {
    return meridianRadiusMetresAtSine(Math.sin(Math.toRadians(latitudeDegrees)));
  }

  /**
   * {@link #meridianRadiusMetres} for a caller who has the sine at hand.
   *
   * @param sine sine of the latitude, in [-1, 1]; NaN gives NaN
   * @return metres for each radian of latitude
   */
  public double meridianRadiusMetresAtSine(double sine) {
    double w2 = 1.0 - e2 * sine * sine;
    return semiMajorAxisMetres * (1.0 - e2) / (w2 * Math.sqrt(w2));
  }

  /**
   * The radius of curvature across the meridian at a latitude.
   *
   * @param latitudeDegrees latitude, degrees; NaN gives NaN
   * @return metres for each radian of direction across the meridian
   */
  public double primeVerticalRadiusMetres(double latitudeDegrees) {
    return primeVerticalRadiusMetresAtSine(Math.sin(Math.toRadians(latitudeDegrees)));
  }

  /**
   * {@link #primeVerticalRadiusMetres} for a caller who has the sine at hand.
   *
   * @param sine sine of the latitude, in [-1, 1]; NaN gives NaN
   * @return metres for each radian of direction across the meridian
   */
  public double primeVerticalRadiusMetresAtSine(double sine) {
    return semiMajorAxisMetres / Math.sqrt(1.0 - e2 * sine * sine);
  }

  /**
   * The radius of the circle of equal latitude.
   *
   * @param latitudeDegrees latitude, degrees; NaN gives NaN
   * @return metres for each radian of longitude
   */
  public double parallelRadiusMetres(double latitudeDegrees) {
    return primeVerticalRadiusMetres(latitudeDegrees) * Degrees.cosine(latitudeDegrees);
  }

  /**
   * {@link #parallelRadiusMetres} for a caller who has the sine at hand.
   *
   * <p>The sine of a latitude near a pole hardly tells how near: within a micrometre of {@link
   * #parallelRadiusMetres} up to 85°, and within a metre at the pole itself.
   *
   * @param sine sine of the latitude, in [-1, 1]; NaN gives NaN
   * @return metres for each radian of longitude
   */
  public double parallelRadiusMetresAtSine(double sine) {
    return semiMajorAxisMetres * Math.sqrt((1.0 - sine) * (1.0 + sine) / (1.0 - e2 * sine * sine));
  }

  private Object readResolve() {
    return new Ellipsoid(semiMajorAxisMetres, flattening);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Ellipsoid that
        && semiMajorAxisMetres == that.semiMajorAxisMetres
        && flattening == that.flattening;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(semiMajorAxisMetres) + Double.hashCode(flattening);
  }

  /** Axis and flattening, without loss. */
  @Override
  public String toString() {
    return "ellipsoid a " + semiMajorAxisMetres + " m, f " + flattening;
  }
}
