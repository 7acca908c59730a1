package org.ferryglide.nav.grid;

import org.ferryglide.nav.geodesy.Ellipsoid;

/**
 * The conformal cone about a pole, which {@link LambertConic} is, and {@link PolarStereographic}
 * too, its sine being 1; radians.
 *
 * <p>The plane's origin is the apex. Everything is worked in the half of the earth in which the
 * cone stands: a southern one is the mirror of a northern one.
 */
final class Cone extends Projector {
  private static final long serialVersionUID = 1L;

  private static final double RADIANS_PER_DEGREE = Math.PI / 180.0;
  private static final double DEGREES_PER_RADIAN = 180.0 / Math.PI;

  /** 1 for a northern cone, -1 for a southern one. */
  private final double side;

  /** Degrees on the plane for a degree of longitude, in (0, 1]. */
  private final double sine;

  /** Distance of the conformal equator from the apex, metres. */
  private final double equatorDistance;

  /** Distance from the apex of where the scale is as given, metres. */
  private final double bestDistance;

  private final Ellipsoid ellipsoid;
  private final SineSeries geographicToConformal;
  private final SineSeries conformalToGeographic;

  private Cone(
      Ellipsoid ellipsoid, double side, double sine, double equatorDistance, double bestDistance) {
    this.side = side;
    this.sine = sine;
    this.equatorDistance = equatorDistance;
    this.bestDistance = bestDistance;
    this.ellipsoid = ellipsoid;
    geographicToConformal = KruegerSeries.geographicToConformal(ellipsoid.thirdFlattening());
    conformalToGeographic = KruegerSeries.conformalToGeographic(ellipsoid.thirdFlattening());
  }

  /** A cone of one parallel or two, in degrees, with a scale on them. */
  static Cone ofParallels(Ellipsoid ellipsoid, double parallel1, double parallel2, double scale) {
    double side = Math.signum(parallel1 + parallel2);
    Cone any = new Cone(ellipsoid, side, 1.0, 1.0, 0.0);
    double m1 = any.parallelRadius(side * parallel1);
    double t1 = any.halfTangent(side * parallel1);
    double sine =
        parallel1 == parallel2
            ? Math.sin(side * parallel1 * RADIANS_PER_DEGREE)
            : Math.log(m1 / any.parallelRadius(side * parallel2))
                / Math.log(t1 / any.halfTangent(side * parallel2));
    double distance = scale * m1 / sine;
    return new Cone(ellipsoid, side, sine, distance / Math.pow(t1, sine), distance);
  }

  /** A cone so flat that it is a plane, with a scale at the pole. */
  static Cone ofPole(Ellipsoid ellipsoid, double poleScale, boolean north) {
    double unit = 2.0 * poleScale * ellipsoid.semiMajorAxisMetres();
    double distance = unit / poleFactor(ellipsoid.eccentricitySquared());
    return new Cone(ellipsoid, north ? 1.0 : -1.0, 1.0, distance, 0.0);
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

  private double parallelRadius(double latitudeDegrees) {
    double sinPhi = Math.sin(latitudeDegrees * RADIANS_PER_DEGREE);
    return ellipsoid.primeVerticalRadiusMetresAtSine(sinPhi)
        * TransverseMercator.cosineOfLatitude(latitudeDegrees);
  }

  private double halfTangent(double latitudeDegrees) {
    double sinPhi = Math.sin(latitudeDegrees * RADIANS_PER_DEGREE);
    double cosPhi = TransverseMercator.cosineOfLatitude(latitudeDegrees);
    return cosPhi * halfTangentOverCosine(sinPhi, cosPhi);
  }

  /** tan(π/4 - χ/2) / cos φ, χ the conformal latitude: finite at the pole of the cone. */
  private double halfTangentOverCosine(double sinPhi, double cosPhi) {
    double series = geographicToConformal.overSine((cosPhi - sinPhi) * (cosPhi + sinPhi));
    double dOverCos = 2.0 * sinPhi * series;
    double d = cosPhi * dOverCos;
    double sineRatio = SmallAngles.sineOverAngle(d * d);
    double cosD = SmallAngles.cosine(d * d);
    double cosineRatio = cosD - sinPhi * dOverCos * sineRatio; // cos chi / cos phi
    double sinChi = sinPhi * cosD + cosPhi * d * sineRatio;
    return cosineRatio / (1.0 + sinChi);
  }

  /** What the public classes call forward; degrees in, so that convergence is exact. */
  void plot(double latitudeDegrees, double lambdaDegrees, double[] out, int offset) {
    plot(
        Math.sin(latitudeDegrees * RADIANS_PER_DEGREE),
        TransverseMercator.cosineOfLatitude(latitudeDegrees),
        lambdaDegrees * RADIANS_PER_DEGREE,
        out,
        offset);
    out[offset + 2] = side * sine * lambdaDegrees + 0.0;
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
    double overCosine = halfTangentOverCosine(side * sinPhi, cosPhi);
    double distance = equatorDistance * Math.pow(cosPhi * overCosine, sine);
    double angle = sine * lambda;
    out[offset] = distance * Math.sin(angle) + 0.0;
    out[offset + 1] = -side * distance * Math.cos(angle) + 0.0;
    out[offset + 2] = side * angle * DEGREES_PER_RADIAN + 0.0;
    out[offset + 3] = scale(sinPhi, cosPhi, overCosine);
  }

  /** The parallel on the plane over the parallel of the ellipsoid, written to hold at the pole. */
  private double scale(double sinPhi, double cosPhi, double overCosine) {
    return equatorDistance
        * sine
        * overCosine
        * Math.pow(cosPhi * overCosine, sine - 1.0)
        / ellipsoid.primeVerticalRadiusMetresAtSine(sinPhi);
  }

  @Override
  void unproject(
      double eastingMetres, double northingMetres, ShiftedFrame frame, double[] out, int offset) {
    double ahead = -side * northingMetres;
    double distance = Math.sqrt(eastingMetres * eastingMetres + ahead * ahead);
    double angle = distance == 0.0 ? 0.0 : SmallAngles.angle(eastingMetres, ahead);
    double lambda = angle / sine;
    double t = Math.pow(distance / equatorDistance, 1.0 / sine);
    double inverse = 1.0 / (1.0 + t * t);
    double sinChi = (1.0 - t) * (1.0 + t) * inverse;
    double cosChi = 2.0 * t * inverse;
    double chi = Math.PI / 2.0 - 2.0 * Math.atan(t);
    double series = conformalToGeographic.overSine((cosChi - sinChi) * (cosChi + sinChi));
    double dOverCos = 2.0 * sinChi * series;
    double d = cosChi * dOverCos;
    double sineRatio = SmallAngles.sineOverAngle(d * d);
    double cosD = SmallAngles.cosine(d * d);
    double sinPhi = sinChi * cosD + cosChi * d * sineRatio;
    double cosineRatio = cosD - sinChi * dOverCos * sineRatio; // cos phi / cos chi
    double cosPhi = cosChi * cosineRatio;
    out[offset + 2] = side * angle * DEGREES_PER_RADIAN + 0.0;
    out[offset + 3] = scale(sinPhi, cosPhi, 1.0 / (cosineRatio * (1.0 + sinChi)));
    if (frame.isNone()) {
      out[offset] = side * ((chi + d) * DEGREES_PER_RADIAN) + 0.0;
      out[offset + 1] = lambda * DEGREES_PER_RADIAN + 0.0;
    } else {
      frame.toWgs84(
          side * (chi + d),
          side * sinPhi,
          cosPhi,
          lambda,
          Math.sin(lambda),
          Math.cos(lambda),
          out,
          offset);
    }
  }

  @Override
  double metresFromCentre(double eastingMetres, double northingMetres) {
    return Math.abs(Math.hypot(eastingMetres, northingMetres) - bestDistance);
  }

  @Override
  String centre() {
    return bestDistance == 0.0 ? "the pole" : "its parallels";
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Cone that
        && side == that.side
        && sine == that.sine
        && equatorDistance == that.equatorDistance
        && ellipsoid.equals(that.ellipsoid);
  }

  @Override
  public int hashCode() {
    return Double.hashCode(side * sine) + 31 * Double.hashCode(equatorDistance);
  }

  /** The sine, negative in the south. */
  @Override
  public String toString() {
    return "conformal cone of sine " + side * sine;
  }
}
