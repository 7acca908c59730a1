package org.ferryglide.nav.fix;

import org.ferryglide.nav.basics.Angles;

/** A bearing: the turn from what the mark would bear to what it did. */
final class BearingEquation extends LineEquation {

  private static final double RIGHT_ANGLE = 90.0;

  private final double markLat;
  private final double markLon;
  private final double degrees;
  private final double sigma;

  BearingEquation(BearingLine line) {
    markLat = line.mark().latitudeDegrees();
    markLon = line.mark().longitudeDegrees();
    degrees = line.bearing().degrees();
    sigma = line.standardDeviationDegrees();
  }

  @Override
  void write(double lat, double lon, boolean exact, double[] out, double[] scratch) {
    sight(lat, lon, markLat, markLon, exact, scratch);
    out[0] = Angles.turn(scratch[0], degrees) / sigma;
    SightLine.azimuthDerivative(lat, scratch[0], scratch[2], out, 1);
    out[1] = Math.toDegrees(out[1]) / sigma;
    out[2] = Math.toDegrees(out[2]) / sigma;
  }

  @Override
  boolean straight(double[] out, double[] scratch) {
    out[0] = markLat;
    out[1] = markLon;
    out[2] = degrees;
    return true;
  }

  @Override
  boolean pointsAway(double lat, double lon, double[] scratch) {
    SightLine.quick(lat, lon, markLat, markLon, scratch);
    return Math.abs(Angles.turn(scratch[0], degrees)) > RIGHT_ANGLE;
  }

  @Override
  double bearingSigmaDegrees() {
    return sigma;
  }
}
