package org.ferryglide.nav.plane;

/** The Kalman update of a position in a plane, and the statistical distance that goes with it. */
public final class KalmanPlane {
  private KalmanPlane() {}

  /** Below this share of the product of the variances a determinant is rounding, not area. */
  private static final double SINGULAR = 1e-12;

  /**
   * Weighs two findings of one place.
   *
   * @param first variance east, variance north and covariance of the first, which lies at the
   *     origin
   * @param second the same of the second
   * @param difference metres east and north from the first to the second
   * @param eastNorth receives metres east and north of the result
   * @param combined receives variance east, variance north and covariance of the result
   */
  public static void combine(
      double[] first, double[] second, double[] difference, double[] eastNorth, double[] combined) {
    double pe = first[0];
    double pn = first[1];
    double pc = first[2];
    double se = pe + second[0];
    double sn = pn + second[1];
    double sc = pc + second[2];
    double determinant = se * sn - sc * sc;
    // Gain K = P S^-1, with a pseudo-inverse where neither admits any error in some direction.
    double ie;
    double in;
    double ic;
    if (determinant > SINGULAR * se * sn) {
      ie = sn / determinant;
      in = se / determinant;
      ic = -sc / determinant;
    } else {
      double trace = se + sn;
      double squared = trace * trace;
      ie = trace > 0.0 ? se / squared : 0.0;
      in = trace > 0.0 ? sn / squared : 0.0;
      ic = trace > 0.0 ? sc / squared : 0.0;
    }
    double kee = pe * ie + pc * ic;
    double ken = pe * ic + pc * in;
    double kne = pc * ie + pn * ic;
    double knn = pc * ic + pn * in;
    eastNorth[0] = kee * difference[0] + ken * difference[1];
    eastNorth[1] = kne * difference[0] + knn * difference[1];
    if (se == 0.0 && sn == 0.0) {
      eastNorth[0] = difference[0];
      eastNorth[1] = difference[1];
    }
    // Joseph's form stays symmetric and positive: (I-K) P (I-K)' + K R K'.
    double aee = 1.0 - kee;
    double ann = 1.0 - knn;
    double re = second[0];
    double rn = second[1];
    double rc = second[2];
    double east = quadratic(aee, -ken, pe, pn, pc) + quadratic(kee, ken, re, rn, rc);
    double north = quadratic(-kne, ann, pe, pn, pc) + quadratic(kne, knn, re, rn, rc);
    double cross =
        bilinear(aee, -ken, -kne, ann, pe, pn, pc) + bilinear(kee, ken, kne, knn, re, rn, rc);
    double limit = Math.sqrt(east) * Math.sqrt(north);
    combined[0] = east;
    combined[1] = north;
    combined[2] = Math.max(-limit, Math.min(limit, cross)); // rounding only
  }

  private static double quadratic(double a, double b, double e, double n, double c) {
    return Math.max(0.0, a * a * e + 2.0 * a * b * c + b * b * n);
  }

  private static double bilinear(
      double a, double b, double c, double d, double e, double n, double cross) {
    return a * c * e + (a * d + b * c) * cross + b * d * n;
  }

  /**
   * The square of a difference over a covariance.
   *
   * @param e variance east
   * @param n variance north
   * @param c covariance of east and north
   * @param east metres east
   * @param north metres north
   * @return the statistical distance, squared; infinite where the covariance admits none
   */
  public static double squaredStatisticalDistance(
      double e, double n, double c, double east, double north) {
    double determinant = e * n - c * c;
    if (east == 0.0 && north == 0.0) {
      return 0.0;
    }
    if (determinant > SINGULAR * e * n) {
      return (n * east * east - 2.0 * c * east * north + e * north * north) / determinant;
    }
    double trace = e + n;
    double squaredMetres = (east * e + north * c) * east + (east * c + north * n) * north;
    double along = trace > 0.0 ? squaredMetres / (trace * trace) : 0.0;
    // What is left across a covariance without width is more than it can explain.
    boolean across = along * trace < (east * east + north * north) * (1.0 - 1e-9);
    return across ? Double.POSITIVE_INFINITY : along;
  }
}
