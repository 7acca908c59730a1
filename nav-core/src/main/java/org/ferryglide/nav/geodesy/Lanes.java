package org.ferryglide.nav.geodesy;

/**
 * Arithmetic on blocks of rows, one quantity a loop, so that the compiler works several rows at
 * once.
 *
 * <p>HotSpot's C2 does so for loops of + - * / and square roots over arrays, and with min, max and
 * abs; not for calls, comparisons or branches, nor where a product or sum takes two values that
 * were just worked in the same way. Hence so many small loops, and steps made of min and max.
 */
@SuppressWarnings("FloatingPointLiteralPrecision") // digits of the exact coefficients
final class Lanes {
  /** Rows in a block: few enough that its quantities stay near the processor. */
  static final int ROWS = 512;

  /** Rows handed to a processor at once, so that the room for the blocks costs little. */
  static final int ROWS_SHARED = 32 * ROWS;

  /** A block of fewer rows is not worth it. */
  private static final int FEWEST_ROWS = 32;

  /** Nor one with fewer short rows in it: the loops take a fifth of the time of single calls. */
  private static final double LEAST_SHARE = 0.4;

  /** Half a degree in radians. */
  static final double HALF_DEGREE = 0.5 * Math.PI / 180.0;

  /** Twice a radian in degrees. */
  private static final double TWICE_DEGREES = 360.0 / Math.PI;

  /** Makes any difference that a double can have between two angles at least 1. */
  private static final double STEEP = 1e300;

  private Lanes() {}

  static double[] lane() {
    return new double[ROWS];
  }

  /** Differences of angles in degrees, radians. */
  static void differences(double[] degrees1, double[] degrees2, int first, int n, double[] out) {
    for (int i = 0; i < n; i++) {
      out[i] = (degrees2[first + i] - degrees1[first + i]) * (2.0 * HALF_DEGREE);
    }
  }

  /** Sines and cosines of angles of at most 90°, from their halves in radians. */
  static void sinesAndCosines(
      double[] half, int n, double[] z, double[] t, double[] sin, double[] cos) {
    for (int i = 0; i < n; i++) {
      z[i] = half[i] * half[i];
    }
    for (int i = 0; i < n; i++) {
      double x = z[i];
      double high = 1.0 / 6227020800.0 - x * (1.0 / 1307674368000.0 - x / 355687428096000.0);
      double low = 1.0 / 5040.0 - x * (1.0 / 362880.0 - x * (1.0 / 39916800.0 - x * high));
      t[i] = 1.0 - x * (1.0 / 6.0 - x * (1.0 / 120.0 - x * low));
    }
    for (int i = 0; i < n; i++) {
      t[i] = half[i] * t[i];
    }
    for (int i = 0; i < n; i++) {
      double x = z[i];
      double high = 1.0 / 479001600.0 - x * (1.0 / 87178291200.0 - x / 20922789888000.0);
      double low = 1.0 / 720.0 - x * (1.0 / 40320.0 - x * (1.0 / 3628800.0 - x * high));
      cos[i] = 1.0 - x * (0.5 - x * (1.0 / 24.0 - x * low));
    }
    for (int i = 0; i < n; i++) {
      sin[i] = 2.0 * t[i] * cos[i];
    }
    for (int i = 0; i < n; i++) {
      cos[i] = 1.0 - 2.0 * t[i] * t[i];
    }
  }

  /**
   * Courses from their parts, degrees in [0, 360], by the arctangent of half the angle to the
   * nearer axis: a polynomial that interpolates it, within 1.3e-18 of it up to 22.5°. NaN comes out
   * where both parts are 0.
   */
  static void courses(
      double[] east, double[] north, int n, double[] a, double[] b, double[] t, double[] course) {
    for (int i = 0; i < n; i++) {
      a[i] = Math.abs(east[i]);
    }
    for (int i = 0; i < n; i++) {
      b[i] = Math.abs(north[i]);
    }
    for (int i = 0; i < n; i++) {
      t[i] = Math.min(a[i], b[i]);
    }
    for (int i = 0; i < n; i++) {
      course[i] = Math.max(a[i], b[i]);
    }
    for (int i = 0; i < n; i++) {
      b[i] = Math.min(1.0, Math.max(0.0, STEEP * (a[i] - b[i]))); // nearer east or west
    }
    for (int i = 0; i < n; i++) {
      a[i] = t[i] * t[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = course[i] + Math.sqrt(course[i] * course[i] + a[i]);
    }
    for (int i = 0; i < n; i++) {
      t[i] = t[i] / a[i];
    }
    for (int i = 0; i < n; i++) {
      a[i] = t[i] * t[i];
    }
    for (int i = 0; i < n; i++) {
      double x = a[i];
      double high =
          0.05846873503411509
              + x * (-0.05035080589113427 + x * (0.03796469507021349 - x * 0.01780477396050943));
      double middle =
          0.11111110744810647
              + x
                  * (-0.09090896805912162
                      + x * (0.07692045274291998 + x * (-0.06662951162727927 + x * high)));
      course[i] =
          1.0
              + x
                  * (-0.3333333333333312
                      + x * (0.19999999999940868 + x * (-0.14285714279248055 + x * middle)));
    }
    for (int i = 0; i < n; i++) {
      course[i] = TWICE_DEGREES * (t[i] * course[i]);
    }
    for (int i = 0; i < n; i++) {
      course[i] = course[i] + b[i] * (90.0 - 2.0 * course[i]);
    }
    for (int i = 0; i < n; i++) {
      b[i] = Math.min(1.0, Math.max(0.0, -STEEP * north[i]));
    }
    for (int i = 0; i < n; i++) {
      course[i] = course[i] + b[i] * (180.0 - 2.0 * course[i]);
    }
    for (int i = 0; i < n; i++) {
      b[i] = Math.min(1.0, Math.max(0.0, -STEEP * east[i]));
    }
    for (int i = 0; i < n; i++) {
      course[i] = course[i] + b[i] * (360.0 - 2.0 * course[i]);
    }
  }

  /** Whether a block is worth working so: many of its rows are short lines clear of the poles. */
  static boolean areManyShort(
      double[] lat1, double[] lon1, double[] lat2, double[] lon2, int from, int n) {
    int count = 0;
    for (int i = from; i < from + n; i++) {
      if (isShort(lat1[i], lon1[i], lat2[i], lon2[i])) {
        count++;
      }
    }
    return isWorthIt(count, n);
  }

  /** Whether a block with so many short rows among its rows is worth working so. */
  static boolean isWorthIt(int shortRows, int rows) {
    return rows >= FEWEST_ROWS && shortRows >= LEAST_SHARE * rows;
  }

  /** A line whose differences are small, though not as small as underflow. */
  static boolean isShort(double lat1, double lon1, double lat2, double lon2) {
    double dLat = Math.abs(lat2 - lat1);
    double dLon = Math.abs(lon2 - lon1);
    return dLat <= 0.5
        && dLon <= 5.0
        && (dLat >= 1e-200 || dLat == 0.0)
        && (dLon >= 1e-200 || dLon == 0.0)
        && Math.abs(lat1) <= 84.0
        && Math.abs(lon1) <= 360.0;
  }
}
