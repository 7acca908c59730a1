package org.ferryglide.nav.fix;

import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.RhumbLines;

/** The original line at the place the observer was then. */
final class TransferredEquation extends LineEquation {

  private final LineEquation original;
  private final double courseDegrees;
  private final double runMetres;

  TransferredEquation(TransferredLine line, LineEquation original) {
    this.original = original;
    courseDegrees = line.course().degrees();
    runMetres = line.run().metres();
  }

  @Override
  void write(double lat, double lon, boolean exact, double[] out, double[] scratch) {
    back(lat, lon, scratch);
    double thenLat = scratch[0];
    original.write(thenLat, scratch[1], exact, out, scratch);
    // The run is a rhumb line: a metre north now is a metre north then, but the easting it makes
    // good depends on the latitude, and a metre east now is another length of parallel then.
    double parallelNow = parallelRadius(lat);
    double northToEast =
        -Math.sin(Math.toRadians(courseDegrees))
            * runMetres
            * Math.sin(Math.toRadians(0.5 * (lat + thenLat)))
            / parallelNow;
    double east = out[1];
    out[1] = east * parallelRadius(thenLat) / parallelNow;
    out[2] += east * northToEast;
  }

  private void back(double lat, double lon, double[] out) {
    RhumbLines.direct(lat, lon, courseDegrees + 180.0, runMetres, out, 0);
  }

  @Override
  boolean straight(double[] out, double[] scratch) {
    return original.straight(out, scratch) && forward(out, scratch);
  }

  @Override
  boolean circle(double[] out, double[] scratch) {
    return original.circle(out, scratch) && forward(out, scratch);
  }

  /** Carries a point along the run; always true. */
  private boolean forward(double[] point, double[] scratch) {
    RhumbLines.direct(point[0], point[1], courseDegrees, runMetres, scratch, 0);
    point[0] = scratch[0];
    point[1] = scratch[1];
    return true;
  }

  @Override
  boolean pointsAway(double lat, double lon, double[] scratch) {
    back(lat, lon, scratch);
    return original.pointsAway(scratch[0], scratch[1], scratch);
  }

  @Override
  boolean seenFromBehind(double lat, double lon, double[] scratch) {
    back(lat, lon, scratch);
    return original.seenFromBehind(scratch[0], scratch[1], scratch);
  }

  @Override
  double bearingSigmaDegrees() {
    return original.bearingSigmaDegrees();
  }

  private static double parallelRadius(double latitudeDegrees) {
    return Ellipsoid.WGS84.parallelRadiusMetres(latitudeDegrees);
  }
}
