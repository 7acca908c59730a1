package org.ferryglide.nav.landfall;

import org.ferryglide.nav.plane.Gaussian;

/** The chance of being within sight of a target that lies across the course, by quadrature. */
final class WideTarget {

  /** Points of the midpoint rule on each of the three parts of the target. */
  private static final int POINTS = 2000;

  private final double mean;
  private final double sigmaAcross;
  private final double slope;
  private final double sigmaAlong;
  private final double halfWidth;
  private final double sight;

  private WideTarget(
      double sigmaAlong,
      double sigmaAcross,
      double covariance,
      double mean,
      double halfWidth,
      double sight) {
    this.mean = mean;
    this.sigmaAcross = sigmaAcross;
    // Along given across is normal too, its mean on the line of regression.
    this.slope = sigmaAcross > 0.0 ? covariance / (sigmaAcross * sigmaAcross) : 0.0;
    this.sigmaAlong = Math.sqrt(Math.max(0.0, sigmaAlong * sigmaAlong - slope * covariance));
    this.halfWidth = halfWidth;
    this.sight = sight;
  }

  /**
   * The chance that the nearest point of a line across the course is within sight.
   *
   * @param sigmaAlong standard deviation along the course, metres
   * @param sigmaAcross standard deviation across it, metres
   * @param covariance of both, square metres
   * @param offset how far right of the target's middle the track is aimed, metres
   * @param halfWidth half the width of the target, metres
   * @param sight how far off it is seen, metres
   * @return the chance; the midpoint rule is right to about 1e-6
   */
  static double within(
      double sigmaAlong,
      double sigmaAcross,
      double covariance,
      double offset,
      double halfWidth,
      double sight) {
    WideTarget target =
        new WideTarget(sigmaAlong, sigmaAcross, covariance, offset, halfWidth, sight);
    return sigmaAcross > 0.0 ? target.sum() : target.chanceAlong(offset);
  }

  private double sum() {
    double sum = 0.0;
    double step = 2.0 * halfWidth / POINTS;
    double turn = 0.5 * Math.PI / POINTS;
    for (int i = 0; i < POINTS; i++) {
      sum += step * weighted(-halfWidth + (i + 0.5) * step);
      double t = (i + 0.5) * turn; // the round ends, x = halfWidth + sight sin t
      double x = halfWidth + sight * Math.sin(t);
      sum += sight * Math.cos(t) * turn * (weighted(x) + weighted(-x));
    }
    return Math.min(1.0, sum);
  }

  private double weighted(double x) {
    return Gaussian.density((x - mean) / sigmaAcross) / sigmaAcross * chanceAlong(x);
  }

  /** The chance of being near enough along the course, at this place across it. */
  private double chanceAlong(double x) {
    double beside = Math.max(0.0, Math.abs(x) - halfWidth);
    if (beside > sight) {
      return 0.0;
    }
    double chord = Math.sqrt((sight - beside) * (sight + beside));
    return SightChance.passing(sigmaAlong, slope * (x - mean), chord);
  }
}
