package org.ferryglide.nav.grid;

import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.note.Arguments;

/**
 * The conformal conic projection of Lambert: a cone that cuts the ellipsoid along two parallels or
 * touches it along one, on which countries that stretch east and west draw their maps.
 *
 * <pre>{@code
 * LambertConic projection = LambertConic.of(Ellipsoid.GRS80, 49.0, 44.0);
 * double[] out = new double[4]; // easting, northing, convergence, scale
 * projection.forward(48.5, -8.0, out, 0);
 * projection.reverse(out[0], out[1], out, 0); // latitude, longitude, convergence, scale
 * }</pre>
 *
 * <p>At the pole that is the apex of the cone scale is infinite.
 *
 * <p>Eastings count from the central meridian, northings from the apex of the cone, negative in
 * front of it; {@link MapGrid} adds the false origin. Longitudes are taken from the central
 * meridian. Convergence is longitude times the sine of the cone.
 *
 * <p>Accuracy: 10 nanometres there and back within 3000 km of the parallels, and within the
 * micrometre that PROJ 9.1.1 prints. (Parallels two degrees apart fix the cone to some 5e-15, which
 * far from the origin is 40 nanometres.) NaN in gives NaN out. Nothing is allocated. Immutable; two
 * of the same ellipsoid, parallels and scale are equal.
 *
 * @see <a href="https://doi.org/10.3133/pp1395">Snyder (1987), USGS PP 1395, eqs. 15-1 to 15-11,
 *     with the conformal latitude by series</a>
 */
public final class LambertConic extends Projector {
  private static final long serialVersionUID = 1L;

  private static final double RADIANS_PER_DEGREE = Math.PI / 180.0;
  private static final double DEGREES_PER_RADIAN = 180.0 / Math.PI;

  private final double equatorialRadius;
  private final double eccentricity2;

  /** Sine of the cone: degrees on the plane for a degree of longitude. */
  private final double cone;

  /** Distance from the apex of the conformal equator, metres, with the sign of the cone. */
  private final double equatorDistance;

  /** Distance from the apex of the first parallel, metres, positive. */
  private final double parallelDistance;

  private final SineSeries geographicToConformal;
  private final SineSeries conformalToGeographic;

  private LambertConic(Ellipsoid ellipsoid, double parallel1, double parallel2, double scale) {
    equatorialRadius = ellipsoid.semiMajorAxisMetres();
    eccentricity2 = ellipsoid.eccentricitySquared();
    geographicToConformal = KruegerSeries.geographicToConformal(ellipsoid.thirdFlattening());
    conformalToGeographic = KruegerSeries.conformalToGeographic(ellipsoid.thirdFlattening());
    double t1 = tangentOfHalf(parallel1);
    double m1 = parallelRadius(parallel1);
    cone =
        parallel1 == parallel2
            ? Math.sin(parallel1 * RADIANS_PER_DEGREE)
            : Math.log(m1 / parallelRadius(parallel2)) / Math.log(t1 / tangentOfHalf(parallel2));
    equatorDistance = scale * m1 / (cone * Math.pow(t1, cone));
    parallelDistance = scale * m1 / Math.abs(cone);
  }

  /**
   * Prepares a cone that cuts the ellipsoid along two parallels, where its scale is 1.
   *
   * @param ellipsoid the figure of the earth
   * @param firstParallelDegrees latitude of one, degrees, in [-89, 89]
   * @param secondParallelDegrees latitude of the other, degrees, in [-89, 89]; the same for a cone
   *     that touches
   * @return the projection
   * @throws IllegalArgumentException if a latitude is NaN or out of range, or their mean lies
   *     within 1° of the equator
   */
  public static LambertConic of(
      Ellipsoid ellipsoid, double firstParallelDegrees, double secondParallelDegrees) {
    return checked(ellipsoid, firstParallelDegrees, secondParallelDegrees, 1.0);
  }

  /**
   * Prepares a cone about one parallel, with a scale on it.
   *
   * @param ellipsoid the figure of the earth
   * @param parallelDegrees latitude of the parallel, degrees, at least 1 from the equator, in [-89,
   *     89]
   * @param scale scale along it, above 0
   * @return the projection
   * @throws IllegalArgumentException if a value is NaN or out of range
   */
  public static LambertConic withScale(Ellipsoid ellipsoid, double parallelDegrees, double scale) {
    return checked(
        ellipsoid,
        parallelDegrees,
        parallelDegrees,
        Arguments.positive(scale, "scale on the parallel", "metres on the map a metre"));
  }

  private static LambertConic checked(
      Ellipsoid ellipsoid, double parallel1, double parallel2, double scale) {
    Arguments.within(parallel1, -89.0, 89.0, "latitude of a parallel", "degrees");
    Arguments.within(parallel2, -89.0, 89.0, "latitude of a parallel", "degrees");
    // a flatter cone is all but a cylinder, and its apex is lost in the distance
    if (Math.abs(parallel1 + parallel2) < 2.0) {
      throw new IllegalArgumentException(
          "the mean of the parallels must be at least 1 degree from the equator, but they were "
              + parallel1
              + " and "
              + parallel2);
    }
    return new LambertConic(ellipsoid, parallel1, parallel2, scale);
  }

  /** tan(π/4 - χ/2), of the conformal latitude. */
  private double tangentOfHalf(double latitudeDegrees) {
    double sinPhi = Math.sin(latitudeDegrees * RADIANS_PER_DEGREE);
    double cosPhi = TransverseMercator.cosineOfLatitude(latitudeDegrees);
    double series = geographicToConformal.overSine((cosPhi - sinPhi) * (cosPhi + sinPhi));
    double chi = latitudeDegrees * RADIANS_PER_DEGREE + 2.0 * sinPhi * cosPhi * series;
    return Math.cos(chi) / (1.0 + Math.sin(chi));
  }

  private double parallelRadius(double latitudeDegrees) {
    double sinPhi = Math.sin(latitudeDegrees * RADIANS_PER_DEGREE);
    return equatorialRadius
        * TransverseMercator.cosineOfLatitude(latitudeDegrees)
        / Math.sqrt(1.0 - eccentricity2 * sinPhi * sinPhi);
  }

  /**
   * From latitude and longitude to the plane.
   *
   * @param latitudeDegrees geographic latitude, degrees, in [-90, 90]; beyond gives NaN
   * @param eastOfCentralMeridianDegrees longitude less that of the central meridian, degrees, in
   *     [-180, 180]
   * @param out receives easting and northing, metres, convergence, degrees, positive when grid
   *     north lies east of true north, and scale, metres on the plane a metre on the ground
   * @param offset index in {@code out} of the easting
   */
  public void forward(
      double latitudeDegrees, double eastOfCentralMeridianDegrees, double[] out, int offset) {
    double phi = latitudeDegrees * RADIANS_PER_DEGREE;
    double lambda = eastOfCentralMeridianDegrees * RADIANS_PER_DEGREE;
    plot(Math.sin(phi), TransverseMercator.cosineOfLatitude(latitudeDegrees), lambda, out, offset);
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
    plot(sinPhi, cosPhi, SmallAngles.angle(sinLambda, cosLambda), out, offset);
  }

  private void plot(double sinPhi, double cosPhi, double lambda, double[] out, int offset) {
    double series = geographicToConformal.overSine((cosPhi - sinPhi) * (cosPhi + sinPhi));
    double dOverCos = 2.0 * sinPhi * series;
    double d = cosPhi * dOverCos;
    double d2 = d * d;
    double sineRatio = SmallAngles.sineOverAngle(d2);
    double cosD = SmallAngles.cosine(d2);
    double cosineRatio = cosD - sinPhi * dOverCos * sineRatio; // cos chi / cos phi
    double sinChi = sinPhi * cosD + cosPhi * d * sineRatio;
    double cosChi = cosPhi * cosineRatio;
    double t = sinChi >= 0.0 ? cosChi / (1.0 + sinChi) : (1.0 - sinChi) / cosChi;
    double distance = equatorDistance * Math.pow(t, cone);
    double angle = cone * lambda;
    out[offset] = distance * Math.sin(angle) + 0.0;
    out[offset + 1] = -distance * Math.cos(angle) + 0.0;
    out[offset + 2] = angle * DEGREES_PER_RADIAN + 0.0;
    out[offset + 3] = scale(distance * cone, sinPhi, cosPhi);
  }

  /** The parallel on the plane over the parallel of the ellipsoid; infinite at the apex. */
  private double scale(double distanceTimesCone, double sinPhi, double cosPhi) {
    double parallel = equatorialRadius * cosPhi;
    return parallel == 0.0
        ? Double.POSITIVE_INFINITY
        : distanceTimesCone * Math.sqrt(1.0 - eccentricity2 * sinPhi * sinPhi) / parallel;
  }

  @Override
  double metresFromCentre(double eastingMetres, double northingMetres) {
    return Math.abs(Math.hypot(eastingMetres, northingMetres) - parallelDistance);
  }

  @Override
  String centre() {
    return "its parallels";
  }

  /**
   * From the plane to latitude and longitude.
   *
   * @param eastingMetres metres east of the central meridian
   * @param northingMetres metres north of the apex, negative in front of a northern cone
   * @param out receives latitude and longitude from the central meridian, degrees, convergence,
   *     degrees, and scale
   * @param offset index in {@code out} of the latitude
   */
  public void reverse(double eastingMetres, double northingMetres, double[] out, int offset) {
    unproject(eastingMetres, northingMetres, ShiftedFrame.NONE, out, offset);
  }

  @Override
  void unproject(
      double eastingMetres, double northingMetres, ShiftedFrame frame, double[] out, int offset) {
    double side = Math.signum(cone);
    double distance = Math.sqrt(eastingMetres * eastingMetres + northingMetres * northingMetres);
    double angle =
        distance == 0.0 ? 0.0 : SmallAngles.angle(side * eastingMetres, -side * northingMetres);
    double lambda = angle / cone;
    double t = Math.pow(distance / Math.abs(equatorDistance), 1.0 / cone);
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
    double sinPhi = sinChi * cosD + cosChi * d * sineRatio;
    double cosPhi = cosChi * (cosD - sinChi * dOverCos * sineRatio);
    out[offset + 2] = angle * DEGREES_PER_RADIAN + 0.0;
    out[offset + 3] = scale(distance * Math.abs(cone), sinPhi, cosPhi);
    if (frame.isNone()) {
      out[offset] = (chi + d) * DEGREES_PER_RADIAN + 0.0;
      out[offset + 1] = lambda * DEGREES_PER_RADIAN + 0.0;
    } else {
      frame.toWgs84(
          chi + d, sinPhi, cosPhi, lambda, Math.sin(lambda), Math.cos(lambda), out, offset);
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LambertConic that
        && cone == that.cone
        && equatorDistance == that.equatorDistance
        && equatorialRadius == that.equatorialRadius
        && eccentricity2 == that.eccentricity2;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(cone) + 31 * Double.hashCode(equatorDistance);
  }

  /** The sine of the cone. */
  @Override
  public String toString() {
    return "Lambert's conformal cone of sine " + cone;
  }
}
