package org.ferryglide.nav.fix;

import org.ferryglide.nav.bearing.Angles;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.reckon.Covariance;

/**
 * What a position line says about a place: how many standard deviations it is off the line, and how
 * that changes with a metre east and a metre north.
 */
final class LineEquation {
  private LineEquation() {}

  /**
   * Writes, in standard deviations, the observed value less the value at the place, and the
   * derivative of the latter by metres east and north.
   *
   * @param line the observation
   * @param lat latitude of the place, degrees
   * @param lon longitude of the place, degrees
   * @param exact true for geodesics, false for the quick form
   * @param out receives residual, east and north derivative
   * @param scratch at least 6 long, overwritten
   */
  static void write(
      PositionLine line, double lat, double lon, boolean exact, double[] out, double[] scratch) {
    if (line instanceof BearingLine bearing) {
      bearing(bearing, lat, lon, exact, out, scratch);
    } else if (line instanceof DistanceCircle circle) {
      distance(circle, lat, lon, exact, out, scratch);
    } else if (line instanceof TransitLine transit) {
      transit(transit, lat, lon, exact, out, scratch);
    } else if (line instanceof StraightLine straight) {
      straight(straight, lat, lon, out, scratch);
    } else {
      transferred((TransferredLine) line, lat, lon, exact, out, scratch);
    }
  }

  private static void sight(
      double lat, double lon, double markLat, double markLon, boolean exact, double[] scratch) {
    if (exact) {
      SightLine.exact(lat, lon, markLat, markLon, scratch);
    } else {
      SightLine.quick(lat, lon, markLat, markLon, scratch);
    }
  }

  private static void bearing(
      BearingLine line, double lat, double lon, boolean exact, double[] out, double[] scratch) {
    sight(lat, lon, line.mark().latitudeDegrees(), line.mark().longitudeDegrees(), exact, scratch);
    double perSigma = 1.0 / line.standardDeviationDegrees();
    out[0] = Angles.turn(scratch[0], line.bearing().degrees()) * perSigma;
    SightLine.azimuthDerivative(lat, scratch[0], scratch[2], out, 1);
    out[1] = Math.toDegrees(out[1]) * perSigma;
    out[2] = Math.toDegrees(out[2]) * perSigma;
  }

  private static void distance(
      DistanceCircle line, double lat, double lon, boolean exact, double[] out, double[] scratch) {
    sight(lat, lon, line.mark().latitudeDegrees(), line.mark().longitudeDegrees(), exact, scratch);
    double perSigma = 1.0 / line.standardDeviation().metres();
    double radians = Math.toRadians(scratch[0]);
    out[0] = (line.distance().metres() - scratch[2]) * perSigma;
    out[1] = -Math.sin(radians) * perSigma;
    out[2] = -Math.cos(radians) * perSigma;
  }

  /** The turn from the rear mark to the front one, which is nothing on the line. */
  private static void transit(
      TransitLine line, double lat, double lon, boolean exact, double[] out, double[] scratch) {
    sight(
        lat, lon, line.front().latitudeDegrees(), line.front().longitudeDegrees(), exact, scratch);
    double front = scratch[0];
    SightLine.azimuthDerivative(lat, front, scratch[2], out, 1);
    double frontEast = out[1];
    double frontNorth = out[2];
    sight(lat, lon, line.rear().latitudeDegrees(), line.rear().longitudeDegrees(), exact, scratch);
    SightLine.azimuthDerivative(lat, scratch[0], scratch[2], out, 1);
    double perSigma = 1.0 / line.standardDeviationDegrees();
    out[0] = -Angles.turn(scratch[0], front) * perSigma;
    out[1] = Math.toDegrees(frontEast - out[1]) * perSigma;
    out[2] = Math.toDegrees(frontNorth - out[2]) * perSigma;
  }

  private static void straight(
      StraightLine line, double lat, double lon, double[] out, double[] scratch) {
    SightLine.exact(
        line.point().latitudeDegrees(), line.point().longitudeDegrees(), lat, lon, scratch);
    double turn = scratch[2] > 0.0 ? Angles.turn(scratch[0], scratch[1]) : 0.0;
    double off = Math.toRadians(scratch[0] - line.direction().degrees());
    double there = Math.toRadians(line.direction().degrees() + turn);
    double perSigma = 1.0 / line.standardDeviation().metres();
    out[0] = -scratch[2] * Math.sin(off) * perSigma;
    out[1] = Math.cos(there) * perSigma;
    out[2] = -Math.sin(there) * perSigma;
  }

  /**
   * The original line at the place the observer was then, widened by the uncertainty of the run.
   */
  private static void transferred(
      TransferredLine line, double lat, double lon, boolean exact, double[] out, double[] scratch) {
    RhumbLines.direct(lat, lon, line.course().degrees() + 180.0, line.run().metres(), scratch, 0);
    double thenLat = scratch[0];
    double thenLon = scratch[1];
    write(line.original(), thenLat, thenLon, exact, out, scratch);
    Covariance run = line.uncertainty();
    double variance =
        out[1] * (out[1] * run.eastVariance() + 2.0 * out[2] * run.eastNorthCovariance())
            + out[2] * out[2] * run.northVariance();
    double widened = 1.0 / Math.sqrt(1.0 + Math.max(0.0, variance));
    // The run is a rhumb line: a metre north now is a metre north then, but the easting it makes
    // good depends on the latitude, and a metre east now is another length of parallel then.
    double parallelNow = parallelRadius(lat);
    double northToEast =
        -Math.sin(Math.toRadians(line.course().degrees()))
            * line.run().metres()
            * Math.sin(Math.toRadians(0.5 * (lat + thenLat)))
            / parallelNow;
    double east = out[1];
    out[0] *= widened;
    out[1] = widened * east * parallelRadius(thenLat) / parallelNow;
    out[2] = widened * (out[2] + east * northToEast);
  }

  private static double parallelRadius(double latitudeDegrees) {
    return Ellipsoid.WGS84.primeVerticalRadiusMetres(latitudeDegrees)
        * Math.cos(Math.toRadians(latitudeDegrees));
  }
}
