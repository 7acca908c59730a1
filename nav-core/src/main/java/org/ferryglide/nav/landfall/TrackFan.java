package org.ferryglide.nav.landfall;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.plane.LocalPlane;

/**
 * Straight tracks from the start of a leg past its end, and the first line each of them crosses.
 */
final class TrackFan {

  /** Each line's points as distances to the right of the leg and beyond its end, metres. */
  private final List<double[][]> lines = new ArrayList<>();

  private final double length;
  private double run;
  private double angleDegrees;

  TrackFan(Leg leg, List<Backstop> backstops) {
    length = leg.length().metres();
    double radians = Math.toRadians(leg.finalCourse().degrees());
    double sine = Math.sin(radians);
    double cosine = Math.cos(radians);
    for (Backstop backstop : backstops) {
      double[][] points = new double[backstop.line().size()][];
      for (int i = 0; i < points.length; i++) {
        double[] at = LocalPlane.toPlane(leg.end(), backstop.line().get(i));
        points[i] = new double[] {at[0] * cosine - at[1] * sine, at[0] * sine + at[1] * cosine};
      }
      lines.add(points);
    }
  }

  /**
   * Follows the track that passes the target at a distance.
   *
   * @param x metres to the right of the target
   * @param beyond how far past it
   * @return index of the first line crossed, or -1
   */
  int firstCrossing(double x, double beyond) {
    double dx = x / Math.hypot(x, length);
    double dy = length / Math.hypot(x, length);
    double best = Math.hypot(x, length) + beyond;
    int found = -1;
    for (int k = 0; k < lines.size(); k++) {
      double[][] points = lines.get(k);
      for (int i = 1; i < points.length; i++) {
        double ax = points[i - 1][0];
        double ay = points[i - 1][1] + length; // from the start of the leg
        double ex = points[i][0] - points[i - 1][0];
        double ey = points[i][1] - points[i - 1][1];
        double determinant = dx * ey - dy * ex;
        double along = (ax * ey - ay * ex) / determinant;
        double share = (ax * dy - ay * dx) / determinant;
        if (along > 0.0 && along < best && share >= 0.0 && share <= 1.0) {
          best = along;
          found = k;
          double cosine = Math.abs(dx * ex + dy * ey) / Math.hypot(ex, ey);
          angleDegrees = Math.toDegrees(Math.acos(Math.min(1.0, cosine)));
        }
      }
    }
    run = best;
    return found;
  }

  /** How far the last track ran from the start to its crossing. */
  double run() {
    return run;
  }

  /** At what angle it crossed. */
  double angleDegrees() {
    return angleDegrees;
  }
}
