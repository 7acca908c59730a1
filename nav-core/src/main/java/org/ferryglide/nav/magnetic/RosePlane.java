package org.ferryglide.nav.magnetic;

import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.position.Position;

/**
 * How much each of three or more roses counts at a place: the plane that fits them best, plus what
 * each stands off that plane, weighed by the inverse square of its distance. Both parts run on
 * without a jump, and at a rose that rose alone counts.
 */
final class RosePlane {
  /** Roses nearly in a line tell little about what lies across it; this keeps that little small. */
  private static final double RIDGE = 1e-4;

  /** Beyond this many times the farthest rose's distance from their middle the answer is held. */
  private static final double REACH = 1.5;

  private final double latitude;
  private final double longitude;
  private final double eastScale;
  private final double[] east;
  private final double[] north;
  private final double reach;

  /** Inverse of the matrix of second moments. */
  private final double ee;

  private final double en;
  private final double nn;

  private RosePlane(PlacedRose[] roses) {
    int n = roses.length;
    double firstLongitude = roses[0].position().longitudeDegrees();
    double latitudes = 0.0;
    double longitudes = 0.0;
    for (PlacedRose rose : roses) {
      latitudes += rose.position().latitudeDegrees() / n;
      longitudes += Angles.shortWay(rose.position().longitudeDegrees() - firstLongitude) / n;
    }
    latitude = latitudes;
    longitude = firstLongitude + longitudes;
    eastScale = Math.cos(Math.toRadians(latitude));
    east = new double[n];
    north = new double[n];
    double sumEe = 0.0;
    double sumEn = 0.0;
    double sumNn = 0.0;
    double farthest = 0.0;
    for (int i = 0; i < n; i++) {
      east[i] = east(roses[i].position());
      north[i] = north(roses[i].position());
      sumEe += east[i] * east[i];
      sumEn += east[i] * north[i];
      sumNn += north[i] * north[i];
      farthest = Math.max(farthest, Math.hypot(east[i], north[i]));
    }
    double ridge = RIDGE * (sumEe + sumNn);
    sumEe += ridge;
    sumNn += ridge;
    double determinant = sumEe * sumNn - sumEn * sumEn;
    ee = sumNn / determinant;
    en = -sumEn / determinant;
    nn = sumEe / determinant;
    reach = REACH * farthest;
  }

  static RosePlane through(PlacedRose[] roses) {
    return new RosePlane(roses);
  }

  /** Degrees of latitude's length, east of the middle. */
  private double east(Position place) {
    return Angles.shortWay(place.longitudeDegrees() - longitude) * eastScale;
  }

  private double north(Position place) {
    return place.latitudeDegrees() - latitude;
  }

  boolean isBeyond(Position place) {
    return Math.hypot(east(place), north(place)) > reach;
  }

  /** One weight for each rose; they sum to 1. */
  double[] weights(Position place) {
    double x = east(place);
    double y = north(place);
    double out = Math.hypot(x, y);
    if (out > reach) {
      x *= reach / out;
      y *= reach / out;
    }
    double[] nearness = nearness(x, y);
    double[] weights = planeWeights(x, y);
    for (int i = 0; i < weights.length; i++) {
      weights[i] += nearness[i];
    }
    for (int k = 0; k < weights.length; k++) { // what the plane already holds of each rose
      double[] plane = planeWeights(east[k], north[k]);
      for (int i = 0; i < weights.length; i++) {
        weights[i] -= nearness[k] * plane[i];
      }
    }
    return weights;
  }

  private double[] planeWeights(double x, double y) {
    double[] weights = new double[east.length];
    double gradientEast = ee * x + en * y;
    double gradientNorth = en * x + nn * y;
    for (int i = 0; i < weights.length; i++) {
      weights[i] = 1.0 / weights.length + gradientEast * east[i] + gradientNorth * north[i];
    }
    return weights;
  }

  /** Parts that sum to 1, by the inverse square of the distance. */
  private double[] nearness(double x, double y) {
    double[] parts = new double[east.length];
    double sum = 0.0;
    for (int i = 0; i < parts.length; i++) {
      double squared = Math.pow(x - east[i], 2) + Math.pow(y - north[i], 2);
      if (squared == 0.0) {
        double[] alone = new double[east.length];
        alone[i] = 1.0;
        return alone;
      }
      parts[i] = 1.0 / squared;
      sum += parts[i];
    }
    for (int i = 0; i < parts.length; i++) {
      parts[i] /= sum;
    }
    return parts;
  }
}
