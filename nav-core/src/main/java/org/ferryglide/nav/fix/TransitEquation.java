package org.ferryglide.nav.fix;

import org.ferryglide.nav.basics.Angles;

/**
 * Two marks in line: the turn from the rear mark to the front one, which is nothing on the line.
 */
final class TransitEquation extends LineEquation {

  private final double frontLat;
  private final double frontLon;
  private final double rearLat;
  private final double rearLon;
  private final double sigma;

  TransitEquation(TransitLine line) {
    frontLat = line.front().latitudeDegrees();
    frontLon = line.front().longitudeDegrees();
    rearLat = line.rear().latitudeDegrees();
    rearLon = line.rear().longitudeDegrees();
    sigma = line.standardDeviationDegrees();
  }

  @Override
  void write(double lat, double lon, boolean exact, double[] out, double[] scratch) {
    sight(lat, lon, frontLat, frontLon, exact, scratch);
    double front = scratch[0];
    SightLine.azimuthDerivative(lat, front, scratch[2], out, 1);
    double frontEast = out[1];
    double frontNorth = out[2];
    sight(lat, lon, rearLat, rearLon, exact, scratch);
    SightLine.azimuthDerivative(lat, scratch[0], scratch[2], out, 1);
    out[0] = -Angles.turn(scratch[0], front) / sigma;
    out[1] = Math.toDegrees(frontEast - out[1]) / sigma;
    out[2] = Math.toDegrees(frontNorth - out[2]) / sigma;
  }

  @Override
  boolean straight(double[] out, double[] scratch) {
    SightLine.quick(frontLat, frontLon, rearLat, rearLon, scratch);
    out[0] = frontLat;
    out[1] = frontLon;
    out[2] = scratch[0];
    return true;
  }

  @Override
  boolean seenFromBehind(double lat, double lon, double[] scratch) {
    SightLine.quick(lat, lon, frontLat, frontLon, scratch);
    double front = scratch[2];
    SightLine.quick(lat, lon, rearLat, rearLon, scratch);
    return scratch[2] < front;
  }
}
