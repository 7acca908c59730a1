package org.ferryglide.nav.landfall;

import org.ferryglide.nav.plane.Gaussian;
import org.ferryglide.nav.plane.SightChance;

/** The chance of being within sight of a target that lies across the course, by quadrature. */
final class WideTarget {

  /** Points of the midpoint rule on each of the three parts of the target. */
  private static final int POINTS = 2000;

  /** What is further from the mean than this many standard deviations has a chance below 1e-15. */
  private static final double REACH = 8.0;

  /**
   * A standard deviation across of less than this share of that along is what rounding left of
   * none: the square of one is a part in 1e16 of the square of the other.
   */
  static final double NO_WIDTH = 1e-7;

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
    this.slope =
        sigmaAcross > NO_WIDTH * sigmaAlong ? covariance / (sigmaAcross * sigmaAcross) : 0.0;
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
    return sigmaAcross > NO_WIDTH * sigmaAlong ? target.sum() : target.chanceAlong(offset);
  }

  private double sum() {
    double from = mean - REACH * sigmaAcross;
    double to = mean + REACH * sigmaAcross;
    double sum = middle(Math.max(-halfWidth, from), Math.min(halfWidth, to));
    sum += end(1.0, Math.max(halfWidth, from), Math.min(halfWidth + sight, to));
    sum += end(-1.0, Math.max(halfWidth, -to), Math.min(halfWidth + sight, -from));
    return Math.min(1.0, sum);
  }

  private double middle(double from, double to) {
    double sum = 0.0;
    double step = (to - from) / POINTS;
    for (int i = 0; step > 0.0 && i < POINTS; i++) {
      sum += step * weighted(from + (i + 0.5) * step);
    }
    return sum;
  }

  /** One round end, on the side of the sign, where x is halfWidth + sight sin t. */
  private double end(double sign, double from, double to) {
    if (!(to > from)) {
      return 0.0;
    }
    double first = Math.asin((from - halfWidth) / sight);
    double turn = (Math.asin(Math.min(1.0, (to - halfWidth) / sight)) - first) / POINTS;
    double sum = 0.0;
    for (int i = 0; i < POINTS; i++) {
      double t = first + (i + 0.5) * turn;
      sum += sight * Math.cos(t) * turn * weighted(sign * (halfWidth + sight * Math.sin(t)));
    }
    return sum;
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
