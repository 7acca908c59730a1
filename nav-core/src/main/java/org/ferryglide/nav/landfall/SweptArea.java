package org.ferryglide.nav.landfall;

import org.ferryglide.nav.plane.Gaussian;

/**
 * The share of a normal distribution that tracks have come within sight of, on a grid of places.
 */
final class SweptArea {

  /** Places along each axis, at even chances, so that each stands for as much as any other. */
  private static final int PLACES = 101;

  private final double[] x = new double[PLACES];
  private final double[] y = new double[PLACES];
  private final boolean[] seen = new boolean[PLACES * PLACES];
  private final double sight;
  private int count;

  SweptArea(double sigmaX, double sigmaY, double sight) {
    this.sight = sight;
    for (int i = 0; i < PLACES; i++) {
      double z = Gaussian.quantile((i + 0.5) / PLACES);
      x[i] = sigmaX * z;
      y[i] = sigmaY * z;
    }
    sweep(0.0, 0.0, 0.0, 0.0); // what is seen from the start
  }

  /** Marks all places within sight of a straight track. */
  void sweep(double fromX, double fromY, double toX, double toY) {
    double dx = toX - fromX;
    double dy = toY - fromY;
    double squaredLength = dx * dx + dy * dy;
    for (int i = 0; i < PLACES; i++) {
      for (int j = 0; j < PLACES; j++) {
        if (!seen[i * PLACES + j]) {
          double px = x[i] - fromX;
          double py = y[j] - fromY;
          double share =
              squaredLength > 0.0
                  ? Math.max(0.0, Math.min(1.0, (px * dx + py * dy) / squaredLength))
                  : 0.0;
          if (Math.hypot(px - share * dx, py - share * dy) <= sight) {
            seen[i * PLACES + j] = true;
            count++;
          }
        }
      }
    }
  }

  double share() {
    return count / (double) seen.length;
  }
}
