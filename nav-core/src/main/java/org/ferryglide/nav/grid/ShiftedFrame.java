package org.ferryglide.nav.grid;

import java.io.Serializable;
import org.ferryglide.nav.geodesy.Ellipsoid;

/**
 * The shift between WGS84 and the datum of a map, prepared for one central meridian; radians.
 *
 * <p>Earth-centred axes are turned so that the first points at the central meridian. Sines and
 * cosines of the shifted latitude and longitude follow from coordinates without a call of the
 * mathematics library; the angles themselves from the small difference to what went in.
 *
 * <p>A map has no height, so one must be chosen for the shift. Here it is zero on WGS84 both ways,
 * which makes there and back close exactly. A point 100 m higher shifts differently by less than 3
 * mm in Britain (2.6 mm in its south-east).
 */
final class ShiftedFrame implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Same datum on both sides. */
  static final ShiftedFrame NONE = new ShiftedFrame(Ellipsoid.WGS84, HelmertShift.NONE, 0.0);

  private static final double RADIANS_PER_DEGREE = Math.PI / 180.0;
  private static final double DEGREES_PER_RADIAN = 180.0 / Math.PI;
  private static final double WGS84_RADIUS = Ellipsoid.WGS84.semiMajorAxisMetres();
  private static final double WGS84_E2 = Ellipsoid.WGS84.eccentricitySquared();

  private final boolean none;

  /** The map's ellipsoid. */
  private final Ellipsoid ellipsoid;

  /** Its radius of the equator, metres, kept for the speed of every point. */
  private final double radius;

  /** Its first eccentricity squared. */
  private final double e2;

  /** Ratio of the polar to the equatorial radius. */
  private final double axisRatio;

  // from WGS84: matrix by row and column, and the shift of the centre
  private final double m00;
  private final double m01;
  private final double m02;
  private final double m10;
  private final double m11;
  private final double m12;
  private final double m20;
  private final double m21;
  private final double m22;
  private final double t0;
  private final double t1;
  private final double t2;

  /** To WGS84, row by row. */
  private final double[] inverse;

  ShiftedFrame(Ellipsoid ellipsoid, HelmertShift shift, double centralMeridianDegrees) {
    none = shift.isNone();
    this.ellipsoid = ellipsoid;
    radius = ellipsoid.semiMajorAxisMetres();
    e2 = ellipsoid.eccentricitySquared();
    axisRatio = 1.0 - ellipsoid.flattening();
    double[] m = shift.matrixAbout(centralMeridianDegrees);
    m00 = m[0];
    m01 = m[1];
    m02 = m[2];
    m10 = m[3];
    m11 = m[4];
    m12 = m[5];
    m20 = m[6];
    m21 = m[7];
    m22 = m[8];
    double[] t = shift.translationAbout(centralMeridianDegrees);
    t0 = t[0];
    t1 = t[1];
    t2 = t[2];
    inverse = shift.inverseAbout(centralMeridianDegrees);
  }

  boolean isNone() {
    return none;
  }

  /**
   * Shifts a position of WGS84 to the datum of the map and projects it; turns the convergence from
   * the meridian of that datum to the meridian of WGS84, thousandths of a degree apart.
   */
  void project(
      double latitudeDegrees,
      double lambdaDegrees,
      Projector projection,
      double[] out,
      int offset) {
    double phi = latitudeDegrees * RADIANS_PER_DEGREE;
    double lambda = lambdaDegrees * RADIANS_PER_DEGREE;
    double sinPhi = Math.sin(phi);
    double cosPhi = TransverseMercator.cosineOfLatitude(latitudeDegrees);
    double sinLambda = Math.sin(lambda);
    double cosLambda = Math.cos(lambda);
    if (none) {
      projection.project(phi, sinPhi, cosPhi, sinLambda, cosLambda, out, offset);
      return;
    }
    double normal = Ellipsoid.WGS84.primeVerticalRadiusMetresAtSine(sinPhi);
    double x = normal * cosPhi * cosLambda;
    double y = normal * cosPhi * sinLambda;
    double z = normal * (1.0 - WGS84_E2) * sinPhi;
    double localX = m00 * x + m01 * y + m02 * z + t0;
    double localY = m10 * x + m11 * y + m12 * z + t1;
    double localZ = m20 * x + m21 * y + m22 * z + t2;
    double p = Math.sqrt(localX * localX + localY * localY);

    // latitude by one step of Bowring (1976): exact at height 0, 1e-13 m at the heights met here
    double reducedP = p * axisRatio;
    double hypotenuse = Math.sqrt(localZ * localZ + reducedP * reducedP);
    double sinBeta = localZ / hypotenuse;
    double cosBeta = reducedP / hypotenuse;
    double up = localZ + e2 * radius / axisRatio * sinBeta * sinBeta * sinBeta;
    double outward = p - e2 * radius * cosBeta * cosBeta * cosBeta;
    double length = Math.sqrt(up * up + outward * outward);
    double sinLocal = up / length;
    double cosLocal = outward / length;
    double localSin = p == 0.0 ? 0.0 : localY / p;
    double localCos = p == 0.0 ? 1.0 : localX / p;
    projection.project(
        phi + arcsine(sinLocal * cosPhi - cosLocal * sinPhi),
        sinLocal,
        cosLocal,
        localSin,
        localCos,
        out,
        offset);

    // true north of WGS84 as the map's datum sees it: how far east of its own north
    double northX = -sinPhi * cosLambda;
    double northY = -sinPhi * sinLambda;
    double eastPart =
        (m10 * northX + m11 * northY + m12 * cosPhi) * localCos
            - (m00 * northX + m01 * northY + m02 * cosPhi) * localSin;
    out[offset + 2] -= arcsine(eastPart) * DEGREES_PER_RADIAN;
  }

  /** Shifts a position of the map's datum to WGS84; writes degrees and turns the convergence. */
  void toWgs84(
      double phi,
      double sinPhi,
      double cosPhi,
      double lambda,
      double sinLambda,
      double cosLambda,
      double[] out,
      int offset) {
    double normal = ellipsoid.primeVerticalRadiusMetresAtSine(sinPhi);
    double upX = cosPhi * cosLambda;
    double upY = cosPhi * sinLambda;
    double fromX = normal * upX - t0;
    double fromY = normal * upY - t1;
    double fromZ = normal * (1.0 - e2) * sinPhi - t2;
    double[] m = inverse;
    double x = m[0] * fromX + m[1] * fromY + m[2] * fromZ;
    double y = m[3] * fromX + m[4] * fromY + m[5] * fromZ;
    double z = m[6] * fromX + m[7] * fromY + m[8] * fromZ;
    double vx = m[0] * upX + m[1] * upY + m[2] * sinPhi;
    double vy = m[3] * upX + m[4] * upY + m[5] * sinPhi;
    double vz = m[6] * upX + m[7] * upY + m[8] * sinPhi;

    // go up or down along the map's vertical to height 0 on WGS84: a quadratic equation
    double stretch = 1.0 / (1.0 - WGS84_E2);
    double excess = x * x + y * y + z * z * stretch - WGS84_RADIUS * WGS84_RADIUS;
    double b = x * vx + y * vy + z * vz * stretch;
    double c = vx * vx + vy * vy + vz * vz * stretch;
    double height = -excess / (b + Math.sqrt(b * b - c * excess));
    x += height * vx;
    y += height * vy;
    z += height * vz;

    double p = Math.sqrt(x * x + y * y);
    double across = p * (1.0 - WGS84_E2);
    double length = Math.sqrt(z * z + across * across);
    double shiftPhi = arcsine((z * cosPhi - across * sinPhi) / length);
    double wgs84Sin = p == 0.0 ? 0.0 : y / p;
    double wgs84Cos = p == 0.0 ? 1.0 : x / p;
    double shiftLambda =
        SmallAngles.angle(
            wgs84Sin * cosLambda - wgs84Cos * sinLambda,
            wgs84Cos * cosLambda + wgs84Sin * sinLambda);
    double northX = -sinPhi * cosLambda;
    double northY = -sinPhi * sinLambda;
    double eastPart =
        (m[3] * northX + m[4] * northY + m[5] * cosPhi) * wgs84Cos
            - (m[0] * northX + m[1] * northY + m[2] * cosPhi) * wgs84Sin;
    out[offset] = (phi + shiftPhi) * DEGREES_PER_RADIAN + 0.0;
    out[offset + 1] = (lambda + shiftLambda) * DEGREES_PER_RADIAN + 0.0;
    out[offset + 2] += arcsine(eastPart) * DEGREES_PER_RADIAN;
  }

  private static double arcsine(double sine) {
    return SmallAngles.isSmall(sine) ? SmallAngles.arcsine(sine) : Math.asin(sine);
  }
}
