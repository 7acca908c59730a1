package org.ferryglide.nav.quickest;

import java.util.function.DoubleBinaryOperator;

/**
 * A slow, independent answer to the quickest path in a plane stream that stands still in time: the
 * heading follows Zermelo's own equation, headings all round are tried, and every path that passes
 * near the goal is bent onto it. Speed through the water 1.
 *
 * @see <a href="https://doi.org/10.1002/zamm.19310110205">Zermelo (1931), ZAMM 11, 114-124</a>
 */
final class PlaneShooting {
  private static final int HEADINGS = 360;
  private static final double STEP = 0.02;
  private static final double GRADIENT = 1e-5;

  private final DoubleBinaryOperator east;
  private final DoubleBinaryOperator north;
  private final double goalX;
  private final double goalY;
  private final double longest;
  private double bestTime;

  PlaneShooting(
      DoubleBinaryOperator east,
      DoubleBinaryOperator north,
      double goalX,
      double goalY,
      double longest) {
    this.east = east;
    this.north = north;
    this.goalX = goalX;
    this.goalY = goalY;
    this.longest = longest;
  }

  double quickest(double x, double y) {
    double best = Double.POSITIVE_INFINITY;
    double[] miss = new double[HEADINGS + 2];
    for (int i = 0; i < miss.length; i++) {
      miss[i] = nearest(x, y, angle(i));
    }
    for (int i = 1; i + 1 < miss.length; i++) {
      if (miss[i] <= miss[i - 1] && miss[i] <= miss[i + 1] && miss[i] < 0.5) {
        double low = angle(i - 1);
        double high = angle(i + 1);
        for (int halving = 0; halving < 40; halving++) { // ternary search for the nearest pass
          double a = low + (high - low) / 3;
          double b = high - (high - low) / 3;
          if (nearest(x, y, a) < nearest(x, y, b)) {
            high = b;
          } else {
            low = a;
          }
        }
        if (nearest(x, y, 0.5 * (low + high)) < 1e-3) {
          best = Math.min(best, bestTime);
        }
      }
    }
    return best;
  }

  private static double angle(int i) {
    return 2 * Math.PI * i / HEADINGS;
  }

  /** How near one path comes; leaves the time of it in {@code bestTime}. */
  private double nearest(double x, double y, double heading) {
    double[] s = {x, y, heading};
    double best = Math.hypot(x - goalX, y - goalY);
    bestTime = 0;
    for (double t = 0; t < longest; t += STEP) {
      double beforeX = s[0];
      double beforeY = s[1];
      step(s);
      // the nearest point of the chord is as good as the path, a step being a fiftieth
      double dx = s[0] - beforeX;
      double dy = s[1] - beforeY;
      double length = dx * dx + dy * dy;
      double share =
          length == 0
              ? 0
              : Math.min(
                  1, Math.max(0, ((goalX - beforeX) * dx + (goalY - beforeY) * dy) / length));
      double miss = Math.hypot(beforeX + share * dx - goalX, beforeY + share * dy - goalY);
      if (miss < best) {
        best = miss;
        bestTime = t + share * STEP;
      }
    }
    return best;
  }

  private void step(double[] s) {
    double[] k1 = slope(s[0], s[1], s[2]);
    double[] k2 = slope(s[0] + STEP / 2 * k1[0], s[1] + STEP / 2 * k1[1], s[2] + STEP / 2 * k1[2]);
    double[] k3 = slope(s[0] + STEP / 2 * k2[0], s[1] + STEP / 2 * k2[1], s[2] + STEP / 2 * k2[2]);
    double[] k4 = slope(s[0] + STEP * k3[0], s[1] + STEP * k3[1], s[2] + STEP * k3[2]);
    for (int i = 0; i < 3; i++) {
      s[i] += STEP / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
    }
  }

  /** The angle runs anticlockwise from x, as in the textbooks. */
  private double[] slope(double x, double y, double angle) {
    double sin = Math.sin(angle);
    double cos = Math.cos(angle);
    double ux =
        (east.applyAsDouble(x + GRADIENT, y) - east.applyAsDouble(x - GRADIENT, y))
            / (2 * GRADIENT);
    double uy =
        (east.applyAsDouble(x, y + GRADIENT) - east.applyAsDouble(x, y - GRADIENT))
            / (2 * GRADIENT);
    double vx =
        (north.applyAsDouble(x + GRADIENT, y) - north.applyAsDouble(x - GRADIENT, y))
            / (2 * GRADIENT);
    double vy =
        (north.applyAsDouble(x, y + GRADIENT) - north.applyAsDouble(x, y - GRADIENT))
            / (2 * GRADIENT);
    return new double[] {
      cos + east.applyAsDouble(x, y),
      sin + north.applyAsDouble(x, y),
      sin * sin * vx + sin * cos * (ux - vy) - cos * cos * uy
    };
  }
}
