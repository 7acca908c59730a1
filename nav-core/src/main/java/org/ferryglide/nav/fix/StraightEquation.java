package org.ferryglide.nav.fix;

import org.ferryglide.nav.basics.Angles;

/** A known line: metres to one side of it. */
final class StraightEquation extends LineEquation {

  private final double pointLat;
  private final double pointLon;
  private final double degrees;
  private final double sigma;

  StraightEquation(StraightLine line) {
    pointLat = line.point().latitudeDegrees();
    pointLon = line.point().longitudeDegrees();
    degrees = line.direction().degrees();
    sigma = line.standardDeviation().metres();
  }

  @Override
  void write(double lat, double lon, boolean exact, double[] out, double[] scratch) {
    SightLine.exact(pointLat, pointLon, lat, lon, scratch);
    double turn = scratch[2] > 0.0 ? Angles.turn(scratch[0], scratch[1]) : 0.0;
    double off = Math.toRadians(scratch[0] - degrees);
    double there = Math.toRadians(degrees + turn);
    out[0] = -scratch[2] * Math.sin(off) / sigma;
    out[1] = Math.cos(there) / sigma;
    out[2] = -Math.sin(there) / sigma;
  }

  @Override
  boolean straight(double[] out, double[] scratch) {
    out[0] = pointLat;
    out[1] = pointLon;
    out[2] = degrees;
    return true;
  }
}
