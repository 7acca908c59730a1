package org.ferryglide.nav.grid;

import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.geodesy.Ellipsoid;

/**
 * The transverse Mercator projection of an ellipsoid: a cylinder that touches along a meridian, on
 * which most map grids are drawn.
 *
 * <p>Prepare one for an ellipsoid and a central scale, and ask it as often as you like:
 *
 * <pre>{@code
 * TransverseMercator projection = TransverseMercator.of(Ellipsoid.WGS84, 0.9996);
 * double[] out = new double[4]; // easting, northing, convergence, scale
 * projection.forward(50.105, -2.535, out, 0);
 * projection.reverse(out[0], out[1], out, 0); // latitude, longitude, convergence, scale
 * }</pre>
 *
 * <p>Northings count from the equator and eastings from the central meridian, both without a false
 * origin; {@link MapGrid} adds that, and the datum. Longitudes are taken from the central meridian.
 * Beyond 90° from it the plane goes on over the pole.
 *
 * <p>Accuracy: within 3900 km of the central meridian 4 nanometres forward and back, convergence
 * 5e-13° (a hair's breadth from a pole, where it turns with longitude, the error of the position
 * over the distance to the pole), scale 2e-15; measured at 280 points of WGS84 against a 50-digit
 * evaluation of the defining equations. Farther out it falls off: the series is of the sixth order
 * in the third flattening. On the equator 90° from the central meridian the plane is infinite, and
 * the answer is NaN.
 *
 * <p>NaN in gives NaN out. Nothing is allocated. Immutable; two of the same ellipsoid and scale are
 * equal.
 *
 * @see <a href="https://doi.org/10.1007/s00190-011-0445-3">Karney (2011), Transverse Mercator with
 *     an accuracy of a few nanometers, Journal of Geodesy 85</a>
 */
final class TransverseMercator extends Projector {
  private static final long serialVersionUID = 1L;

  private static final double RADIANS_PER_DEGREE = Math.PI / 180.0;
  private static final double DEGREES_PER_RADIAN = 180.0 / Math.PI;

  private final double eccentricity2;
  private final double centralScale;

  /** Metres on the plane for a radian of rectifying latitude, central scale included. */
  private final double metresPerRadian;

  /** Central scale times rectifying radius over equatorial radius. */
  private final double scaleUnit;

  private final SineSeries geographicToConformal;
  private final SineSeries conformalToGeographic;
  private final SineSeries conformalToPlane;
  private final SineSeries planeToConformal;

  private TransverseMercator(Ellipsoid ellipsoid, double centralScale) {
    double n = ellipsoid.thirdFlattening();
    eccentricity2 = ellipsoid.eccentricitySquared();
    this.centralScale = centralScale;
    metresPerRadian = centralScale * ellipsoid.rectifyingRadiusMetres();
    scaleUnit = metresPerRadian / ellipsoid.semiMajorAxisMetres();
    geographicToConformal = KruegerSeries.geographicToConformal(n);
    conformalToGeographic = KruegerSeries.conformalToGeographic(n);
    conformalToPlane = KruegerSeries.conformalToPlane(n);
    planeToConformal = KruegerSeries.planeToConformal(n);
  }

  /**
   * Prepares the projection.
   *
   * @param ellipsoid the figure of the earth
   * @param centralScale scale along the central meridian, above 0; 0.9996 for UTM
   * @return the projection
   * @throws IllegalArgumentException if {@code centralScale} is NaN, infinite or not above 0
   */
  public static TransverseMercator of(Ellipsoid ellipsoid, double centralScale) {
    return new TransverseMercator(
        ellipsoid, Arguments.positive(centralScale, "central scale", "metres on the map a metre"));
  }

  /**
   * From latitude and longitude to the plane.
   *
   * @param latitudeDegrees geographic latitude, degrees, in [-90, 90]; beyond gives NaN
   * @param eastOfCentralMeridianDegrees longitude less that of the central meridian, degrees
   * @param out receives easting and northing, metres, convergence, degrees, positive when grid
   *     north lies east of true north, and scale, metres on the plane a metre on the ground
   * @param offset index in {@code out} of the easting
   */
  public void forward(
      double latitudeDegrees, double eastOfCentralMeridianDegrees, double[] out, int offset) {
    double phi = latitudeDegrees * RADIANS_PER_DEGREE;
    double lambda = eastOfCentralMeridianDegrees * RADIANS_PER_DEGREE;
    project(
        phi,
        Math.sin(phi),
        cosineOfLatitude(latitudeDegrees),
        Math.sin(lambda),
        Math.cos(lambda),
        out,
        offset);
  }

  /** Exactly zero at the poles, and NaN beyond them. */
  static double cosineOfLatitude(double degrees) {
    double fromPole = 90.0 - Math.abs(degrees);
    if (fromPole >= 45.0) {
      return Math.cos(degrees * RADIANS_PER_DEGREE);
    }
    return fromPole >= 0.0 ? Math.sin(fromPole * RADIANS_PER_DEGREE) : Double.NaN;
  }

  @Override
  void project(
      double phi,
      double sinPhi,
      double cosPhi,
      double sinLambda,
      double cosLambda,
      double[] out,
      int offset) {
    // conformal latitude chi = phi + d; the ratio of the cosines stays exact to the pole
    double series = geographicToConformal.overSine((cosPhi - sinPhi) * (cosPhi + sinPhi));
    double dOverCos = 2.0 * sinPhi * series;
    double d = cosPhi * dOverCos;
    double d2 = d * d;
    double sineRatio = SmallAngles.sineOverAngle(d2);
    double cosD = SmallAngles.cosine(d2);
    double cosineRatio = cosD - sinPhi * dOverCos * sineRatio; // cos chi / cos phi
    double sinChi = sinPhi * cosD + cosPhi * d * sineRatio;
    double cosChi = cosPhi * cosineRatio;

    // the same point on the sphere turned on its side: u is the sine of its latitude there
    double u = cosChi * sinLambda;
    double q = cosChi * cosLambda;
    double root2 = sinChi * sinChi + q * q; // 1 - u², without the loss near the equator at 90°
    double root = Math.sqrt(root2);
    double eta = SmallAngles.inverseHyperbolicTangent(u, root);
    double xi = alongMeridian(phi, d, sinChi, cosChi, sinLambda, cosLambda, root);

    double inverse2 = 1.0 / root2;
    conformalToPlane.complex(
        2.0 * sinChi * q * inverse2,
        (q - sinChi) * (q + sinChi) * inverse2,
        2.0 * u * inverse2,
        (1.0 + u * u) * inverse2,
        out,
        offset);
    double p = 1.0 + out[offset + 2];
    double s = -out[offset + 3];
    double northing = (xi + out[offset]) * metresPerRadian + 0.0;
    out[offset] = (eta + out[offset + 1]) * metresPerRadian + 0.0;
    out[offset + 1] = northing;
    out[offset + 2] = convergenceDegrees(sinChi, sinLambda, cosLambda, p, s);
    out[offset + 3] =
        scaleUnit
            * cosineRatio
            * Math.sqrt((p * p + s * s) * (1.0 - eccentricity2 * sinPhi * sinPhi) * inverse2);
  }

  /** atan2(sin chi, cos chi cos lambda), as chi and a small angle where that angle is small. */
  private static double alongMeridian(
      double phi,
      double d,
      double sinChi,
      double cosChi,
      double sinLambda,
      double cosLambda,
      double root) {
    double versine = sinLambda * sinLambda / (1.0 + cosLambda);
    double sineBeyond = sinChi * cosChi * versine / root;
    return cosLambda > 0.0 && SmallAngles.isSmall(sineBeyond)
        ? phi + (d + SmallAngles.arcsine(sineBeyond))
        : Math.atan2(sinChi, cosChi * cosLambda);
  }

  /** That of the sphere and that of the series (argument of p + is) together. */
  private static double convergenceDegrees(
      double sinChi, double sinLambda, double cosLambda, double p, double s) {
    double meridian = sinLambda * sinChi;
    return SmallAngles.angle(meridian * p + cosLambda * s, cosLambda * p - meridian * s)
            * DEGREES_PER_RADIAN
        + 0.0;
  }

  /**
   * From the plane to latitude and longitude.
   *
   * @param eastingMetres metres east of the central meridian
   * @param northingMetres metres north of the equator along the central meridian
   * @param out receives latitude and longitude from the central meridian, degrees, convergence,
   *     degrees, positive when grid north lies east of true north, and scale, metres on the plane a
   *     metre on the ground
   * @param offset index in {@code out} of the latitude
   */
  public void reverse(double eastingMetres, double northingMetres, double[] out, int offset) {
    unproject(eastingMetres, northingMetres, ShiftedFrame.NONE, out, offset);
  }

  @Override
  void unproject(
      double eastingMetres, double northingMetres, ShiftedFrame frame, double[] out, int offset) {
    double eta = eastingMetres / metresPerRadian;
    double xi = northingMetres / metresPerRadian;
    double sin = Math.sin(xi);
    double cos = Math.cos(xi);
    double sinh = SmallAngles.hyperbolicSine(eta);
    double cosh = Math.sqrt(1.0 + sinh * sinh);
    planeToConformal.complex(
        2.0 * sin * cos,
        (cos - sin) * (cos + sin),
        2.0 * sinh * cosh,
        1.0 + 2.0 * sinh * sinh,
        out,
        offset);
    double dXi = -out[offset];
    double dEta = -out[offset + 1];
    double p = 1.0 - out[offset + 2];
    double s = -out[offset + 3];

    // turn both by their small corrections; the hyperbolic functions are circular ones of i dEta
    double dXi2 = dXi * dXi;
    double sinD = dXi * SmallAngles.sineOverAngle(dXi2);
    double cosD = SmallAngles.cosine(dXi2);
    double sinXi = sin * cosD + cos * sinD;
    double cosXi = cos * cosD - sin * sinD;
    double dEta2 = -(dEta * dEta);
    double sinhD = dEta * SmallAngles.sineOverAngle(dEta2);
    double coshD = SmallAngles.cosine(dEta2);
    double sinhEta = sinh * coshD + cosh * sinhD;
    double coshEta = cosh * coshD + sinh * sinhD;

    double fromPole = Math.sqrt(sinhEta * sinhEta + cosXi * cosXi);
    double sinChi = sinXi / coshEta;
    double cosChi = fromPole / coshEta;
    double sinLambda = fromPole == 0.0 ? 0.0 : sinhEta / fromPole;
    double cosLambda = fromPole == 0.0 ? 1.0 : cosXi / fromPole;
    double lambda = SmallAngles.angle(sinhEta, cosXi);
    double sineBeyond = sinXi * sinhEta * sinhEta / (coshEta * (fromPole + cosXi));
    double chi =
        cosXi > 0.0 && SmallAngles.isSmall(sineBeyond)
            ? xi + (dXi - SmallAngles.arcsine(sineBeyond))
            : Math.atan2(sinXi, fromPole);

    double series = conformalToGeographic.overSine((cosChi - sinChi) * (cosChi + sinChi));
    double dOverCos = 2.0 * sinChi * series;
    double d = cosChi * dOverCos;
    double d2 = d * d;
    double sineRatio = SmallAngles.sineOverAngle(d2);
    double cosLast = SmallAngles.cosine(d2);
    double cosineRatio = cosLast - sinChi * dOverCos * sineRatio; // cos phi / cos chi
    double sinPhi = sinChi * cosLast + cosChi * d * sineRatio;
    out[offset + 2] = convergenceDegrees(sinChi, sinLambda, cosLambda, p, s);
    out[offset + 3] =
        scaleUnit
            * coshEta
            / cosineRatio
            * Math.sqrt((1.0 - eccentricity2 * sinPhi * sinPhi) / (p * p + s * s));
    if (frame.isNone()) {
      out[offset] = (chi + d) * DEGREES_PER_RADIAN + 0.0;
      out[offset + 1] = lambda * DEGREES_PER_RADIAN + 0.0;
    } else {
      frame.toWgs84(
          chi + d, sinPhi, cosChi * cosineRatio, lambda, sinLambda, cosLambda, out, offset);
    }
  }

  @Override
  double metresFromCentre(double eastingMetres, double northingMetres) {
    double fromMeridian = Math.abs(eastingMetres) / centralScale;
    double quarterMeridian = metresPerRadian * (Math.PI / 2.0);
    return Math.max(fromMeridian, (Math.abs(northingMetres) - quarterMeridian) / centralScale);
  }

  @Override
  String centre() {
    return "the central meridian";
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TransverseMercator that
        && metresPerRadian == that.metresPerRadian
        && centralScale == that.centralScale
        && eccentricity2 == that.eccentricity2;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(metresPerRadian);
  }

  /** The central scale. */
  @Override
  public String toString() {
    return "transverse Mercator, central scale " + centralScale;
  }
}
