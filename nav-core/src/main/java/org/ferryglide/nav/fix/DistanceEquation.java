package org.ferryglide.nav.fix;

/** A distance off a mark. */
final class DistanceEquation extends LineEquation {

  private final double markLat;
  private final double markLon;
  private final double metres;
  private final double sigma;

  DistanceEquation(DistanceCircle line) {
    markLat = line.mark().latitudeDegrees();
    markLon = line.mark().longitudeDegrees();
    metres = line.distance().metres();
    sigma = line.standardDeviation().metres();
  }

  @Override
  void write(double lat, double lon, boolean exact, double[] out, double[] scratch) {
    sight(lat, lon, markLat, markLon, exact, scratch);
    double radians = Math.toRadians(scratch[0]);
    out[0] = (metres - scratch[2]) / sigma;
    out[1] = -Math.sin(radians) / sigma;
    out[2] = -Math.cos(radians) / sigma;
  }

  @Override
  boolean circle(double[] out, double[] scratch) {
    out[0] = markLat;
    out[1] = markLon;
    out[2] = metres;
    return true;
  }
}
