package org.ferryglide.nav.plane;

/**
 * The Kalman update of a position in a plane, and the statistical distance that goes with it.
 *
 * <p>Differences of products are formed without losing what is small beside what is large: axes of
 * a centimetre and of five kilometres keep both.
 */
public final class KalmanPlane {
  private KalmanPlane() {}

  /** Below this share of the product of the variances a determinant is rounding, not area. */
  private static final double SINGULAR = 1e-14;

  /** Splits a double in two halves of 26 digits each. */
  private static final double SPLIT = 134217729.0;

  /**
   * Weighs a finding of the position against what was known of it and of what goes with it.
   *
   * @param p covariance of what was known, its first two rows and columns the position's; n by n
   * @param re variance east of the finding
   * @param rn variance north of the finding
   * @param rc covariance of both
   * @param difference metres east and north from what was known to the finding
   * @param correction receives what is to be added to each of the n
   * @param updated receives the covariance of the result, n by n
   */
  public static void update(
      double[][] p,
      double re,
      double rn,
      double rc,
      double[] difference,
      double[] correction,
      double[][] updated) {
    int n = p.length;
    double se = p[0][0] + re;
    double sn = p[1][1] + rn;
    double sc = p[0][1] + rc;
    double determinant = differenceOfProducts(se, sn, sc, sc);
    double[][] rest = new double[n][n]; // what is left of each: I - K H
    double[][] gain = new double[n][2]; // K = P H' S^-1
    for (int i = 0; i < n; i++) {
      rest[i][i] = 1.0;
    }
    if (determinant > SINGULAR * se * sn) {
      for (int i = 0; i < n; i++) {
        gain[i][0] = differenceOfProducts(p[i][0], sn, p[i][1], sc) / determinant;
        gain[i][1] = differenceOfProducts(p[i][1], se, p[i][0], sc) / determinant;
      }
      // I - K is R S^-1, and better so where little is left.
      rest[0][0] = differenceOfProducts(re, sn, rc, sc) / determinant;
      rest[0][1] = differenceOfProducts(rc, se, re, sc) / determinant;
      rest[1][0] = differenceOfProducts(rc, sn, rn, sc) / determinant;
      rest[1][1] = differenceOfProducts(rn, se, rc, sc) / determinant;
    } else {
      // Neither admits any error in some direction: the pseudo-inverse of a matrix of one axis.
      double trace = se + sn;
      double squared = trace > 0.0 ? trace * trace : Double.POSITIVE_INFINITY;
      for (int i = 0; i < n; i++) {
        gain[i][0] = (p[i][0] * se + p[i][1] * sc) / squared;
        gain[i][1] = (p[i][0] * sc + p[i][1] * sn) / squared;
      }
      for (int i = 0; i < 2; i++) {
        rest[i][0] -= gain[i][0];
        rest[i][1] -= gain[i][1];
      }
    }
    for (int i = 2; i < n; i++) {
      rest[i][0] = -gain[i][0];
      rest[i][1] = -gain[i][1];
    }
    for (int i = 0; i < n; i++) {
      correction[i] = gain[i][0] * difference[0] + gain[i][1] * difference[1];
    }
    if (se == 0.0 && sn == 0.0) { // both exact: the finding is taken
      correction[0] = difference[0];
      correction[1] = difference[1];
    }
    // Joseph's form stays symmetric and positive: (I-KH) P (I-KH)' + K R K'.
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum =
            gain[i][0] * (re * gain[j][0] + rc * gain[j][1])
                + gain[i][1] * (rc * gain[j][0] + rn * gain[j][1]);
        for (int k = 0; k < n; k++) {
          double inner = 0.0;
          for (int l = 0; l < n; l++) {
            inner += p[k][l] * rest[j][l];
          }
          sum += rest[i][k] * inner;
        }
        updated[i][j] = i == j ? Math.max(0.0, sum) : sum;
        updated[j][i] = updated[i][j];
      }
    }
  }

  /** The product of the first two less that of the others, rounded once or twice. */
  static double differenceOfProducts(double a, double b, double c, double d) {
    double first = a * b;
    double second = c * d;
    double difference = first - second;
    double rounding = error(a, b, first) - error(c, d, second);
    return Double.isNaN(rounding) ? difference : difference + rounding;
  }

  /**
   * What rounding took from a product, exactly.
   *
   * @see "Dekker (1971), A floating-point technique for extending the available precision,
   *     Numerische Mathematik 18, 224-242"
   */
  private static double error(double a, double b, double product) {
    double high = SPLIT * a;
    high -= high - a;
    double low = a - high;
    double otherHigh = SPLIT * b;
    otherHigh -= otherHigh - b;
    double otherLow = b - otherHigh;
    return low * otherLow - (product - high * otherHigh - low * otherHigh - high * otherLow);
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
    double determinant = differenceOfProducts(e, n, c, c);
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
