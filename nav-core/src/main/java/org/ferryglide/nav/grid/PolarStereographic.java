package org.ferryglide.nav.grid;

import java.io.Serializable;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.note.Arguments;

/**
 * The polar stereographic projection of an ellipsoid: a plane that touches at a pole, on which maps
 * of the polar seas are drawn.
 *
 * <pre>{@code
 * PolarStereographic projection = PolarStereographic.north(Ellipsoid.WGS84, 0.994);
 * double[] out = new double[4]; // easting, northing, convergence, scale
 * projection.forward(86.5, 14.0, out, 0);
 * projection.reverse(out[0], out[1], out, 0); // latitude, longitude, convergence, scale
 * }</pre>
 *
 * <p>The pole has easting and northing 0. On the north plane grid north points from the pole along
 * longitude 180°, on the south plane along longitude 0, so that convergence turns with longitude.
 *
 * <p>Accuracy: 5 nanometres forward and back within 30° of the pole, measured against GeoConvert of
 * GeographicLib 2.1.2. NaN in gives NaN out, and the far pole gives infinity. Nothing is allocated.
 * Immutable.
 *
 * @see <a href="https://doi.org/10.3133/pp1395">Snyder (1987), USGS PP 1395, eqs. 21-33 to 21-36,
 *     with the conformal latitude by series</a>
 */
public final class PolarStereographic implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double RADIANS_PER_DEGREE = Math.PI / 180.0;
  private static final double DEGREES_PER_RADIAN = 180.0 / Math.PI;

  /** 1 for the north pole, -1 for the south pole. */
  private final double side;

  private final double equatorialRadius;
  private final double eccentricity2;

  /** Radius on the plane of the conformal equator, metres. */
  private final double unit;

  private final SineSeries geographicToConformal;
  private final SineSeries conformalToGeographic;

  private PolarStereographic(Ellipsoid ellipsoid, double poleScale, double side) {
    this.side = side;
    equatorialRadius = ellipsoid.semiMajorAxisMetres();
    eccentricity2 = ellipsoid.eccentricitySquared();
    unit = 2.0 * poleScale * equatorialRadius / poleFactor(eccentricity2);
    geographicToConformal = KruegerSeries.geographicToConformal(ellipsoid.thirdFlattening());
    conformalToGeographic = KruegerSeries.conformalToGeographic(ellipsoid.thirdFlattening());
  }

  /**
   * sqrt((1 + e)^(1 + e) (1 - e)^(1 - e)): the exponent of ½ ln(1 - e²) + e artanh e, as its
   * series, which also serves a body longer than wide.
   */
  private static double poleFactor(double e2) {
    double sum = 0.0;
    double power = e2;
    for (int k = 1; k <= 12; k++) { // e² is at most 0.04: 12 terms reach the last place
      sum += power * (1.0 / (2 * k - 1) - 1.0 / (2 * k));
      power *= e2;
    }
    return Math.exp(sum);
  }

  /**
   * Prepares the projection about the north pole.
   *
   * @param ellipsoid the figure of the earth
   * @param poleScale scale at the pole, above 0; 0.994 for the universal grid
   * @return the projection
   * @throws IllegalArgumentException if {@code poleScale} is NaN, infinite or not above 0
   */
  public static PolarStereographic north(Ellipsoid ellipsoid, double poleScale) {
    return of(ellipsoid, poleScale, 1.0);
  }

  /**
   * Prepares the projection about the south pole.
   *
   * @param ellipsoid the figure of the earth
   * @param poleScale scale at the pole, above 0; 0.994 for the universal grid
   * @return the projection
   * @throws IllegalArgumentException if {@code poleScale} is NaN, infinite or not above 0
   */
  public static PolarStereographic south(Ellipsoid ellipsoid, double poleScale) {
    return of(ellipsoid, poleScale, -1.0);
  }

  private static PolarStereographic of(Ellipsoid ellipsoid, double poleScale, double side) {
    return new PolarStereographic(
        ellipsoid,
        Arguments.positive(poleScale, "scale at the pole", "metres on the map a metre"),
        side);
  }

  /**
   * From latitude and longitude to the plane.
   *
   * @param latitudeDegrees geographic latitude, degrees, in [-90, 90]; beyond gives NaN
   * @param longitudeDegrees longitude, degrees
   * @param out receives easting and northing, metres, convergence, degrees in [-180, 180], positive
   *     when grid north lies east of true north, and scale, metres on the plane a metre on the
   *     ground
   * @param offset index in {@code out} of the easting
   */
  public void forward(double latitudeDegrees, double longitudeDegrees, double[] out, int offset) {
    double latitude = side * latitudeDegrees;
    double sinPhi = Math.sin(latitude * RADIANS_PER_DEGREE);
    double cosPhi = TransverseMercator.cosineOfLatitude(latitude);
    double series = geographicToConformal.overSine((cosPhi - sinPhi) * (cosPhi + sinPhi));
    double dOverCos = 2.0 * sinPhi * series;
    double d = cosPhi * dOverCos;
    double d2 = d * d;
    double sineRatio = SmallAngles.sineOverAngle(d2);
    double cosD = SmallAngles.cosine(d2);
    double cosineRatio = cosD - sinPhi * dOverCos * sineRatio;
    double sinChi = sinPhi * cosD + cosPhi * d * sineRatio;
    double perCosine = unit * cosineRatio / (1.0 + sinChi);
    double radius = perCosine * cosPhi;
    double lambda = longitudeDegrees * RADIANS_PER_DEGREE;
    out[offset] = radius * Math.sin(lambda) + 0.0;
    out[offset + 1] = -side * radius * Math.cos(lambda) + 0.0;
    out[offset + 2] = side * longitudeDegrees + 0.0;
    out[offset + 3] =
        perCosine * Math.sqrt(1.0 - eccentricity2 * sinPhi * sinPhi) / equatorialRadius;
  }

  /**
   * From the plane to latitude and longitude.
   *
   * @param eastingMetres metres from the pole towards longitude 90° E
   * @param northingMetres metres from the pole towards longitude 180° (north plane) or 0 (south)
   * @param out receives latitude and longitude, degrees (longitude 0 at the pole), convergence,
   *     degrees, positive when grid north lies east of true north, and scale, metres on the plane a
   *     metre on the ground
   * @param offset index in {@code out} of the latitude
   */
  public void reverse(double eastingMetres, double northingMetres, double[] out, int offset) {
    double radius = Math.sqrt(eastingMetres * eastingMetres + northingMetres * northingMetres);
    double t = radius / unit;
    double inverse = 1.0 / (1.0 + t * t);
    double sinChi = (1.0 - t) * (1.0 + t) * inverse;
    double cosChi = 2.0 * t * inverse;
    double chi = Math.PI / 2.0 - 2.0 * Math.atan(t);
    double series = conformalToGeographic.overSine((cosChi - sinChi) * (cosChi + sinChi));
    double dOverCos = 2.0 * sinChi * series;
    double d = cosChi * dOverCos;
    double d2 = d * d;
    double sineRatio = SmallAngles.sineOverAngle(d2);
    double cosD = SmallAngles.cosine(d2);
    double cosineRatio = cosD - sinChi * dOverCos * sineRatio; // cos phi / cos chi
    double sinPhi = sinChi * cosD + cosChi * d * sineRatio;
    double longitude =
        radius == 0.0
            ? 0.0
            : SmallAngles.angle(eastingMetres, -side * northingMetres) * DEGREES_PER_RADIAN;
    out[offset] = side * ((chi + d) * DEGREES_PER_RADIAN) + 0.0;
    out[offset + 1] = longitude + 0.0;
    out[offset + 2] = side * longitude + 0.0;
    out[offset + 3] =
        unit
            / ((1.0 + sinChi) * cosineRatio)
            * Math.sqrt(1.0 - eccentricity2 * sinPhi * sinPhi)
            / equatorialRadius;
  }
}
