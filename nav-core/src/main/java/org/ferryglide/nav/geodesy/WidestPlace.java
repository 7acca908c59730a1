package org.ferryglide.nav.geodesy;

import org.ferryglide.nav.measure.Distance;

/**
 * Where a rhumb line is farthest from the geodesic between its ends.
 *
 * @param separationMetres how far apart they are there, metres, at least 0
 * @param alongMetres how far along the rhumb line that is, metres
 */
record WidestPlace(double separationMetres, double alongMetres) {
  private static final int SAMPLES = 16;
  private static final double GOLDEN = 0.5 * (Math.sqrt(5.0) - 1.0);

  /** The curve is round at its top, so that this share of the length is far nearer than need be. */
  private static final double NEAR_ENOUGH = 1e-5;

  /** By the kernel where it answers, else by search. */
  static WidestPlace of(RhumbLeg rhumb, GeodesicLeg geodesic) {
    double[] out = new double[LegComparisons.WIDTH_WITH_SEPARATION];
    LegComparisons.compareWithSeparation(
        Ellipsoid.WGS84,
        rhumb.start().latitudeDegrees(),
        rhumb.start().longitudeDegrees(),
        rhumb.end().latitudeDegrees(),
        rhumb.end().longitudeDegrees(),
        out,
        0);
    double separation = out[LegComparisons.SEPARATION];
    return Double.isNaN(separation)
        ? search(rhumb, geodesic)
        : new WidestPlace(separation, out[LegComparisons.WIDEST_ALONG]);
  }

  /** By samples along the whole of the rhumb line, and a golden-section search round the best. */
  static WidestPlace search(RhumbLeg rhumb, GeodesicLeg geodesic) {
    double length = rhumb.length().metres();
    Line line = rhumb.line();
    Line shortest = geodesic.line();
    double span = geodesic.length().metres();
    double best = 0.0;
    double most = 0.0;
    for (int i = 1; i < SAMPLES; i++) {
      double off = off(line, length * i / SAMPLES, shortest, span);
      if (off > most) {
        most = off;
        best = length * i / SAMPLES;
      }
    }
    double lo = Math.max(0.0, best - length / SAMPLES);
    double hi = Math.min(length, best + length / SAMPLES);
    double left = hi - GOLDEN * (hi - lo);
    double right = lo + GOLDEN * (hi - lo);
    double offLeft = off(line, left, shortest, span);
    double offRight = off(line, right, shortest, span);
    while (hi - lo > NEAR_ENOUGH * length) {
      if (offLeft >= offRight) {
        hi = right;
        right = left;
        offRight = offLeft;
        left = hi - GOLDEN * (hi - lo);
        offLeft = off(line, left, shortest, span);
      } else {
        lo = left;
        left = right;
        offLeft = offRight;
        right = lo + GOLDEN * (hi - lo);
        offRight = off(line, right, shortest, span);
      }
    }
    double along = 0.5 * (lo + hi);
    return new WidestPlace(off(line, along, shortest, span), along);
  }

  private static double off(Line line, double along, Line shortest, double span) {
    return ClosestPoint.search(shortest, 0.0, span, line.pointAt(Distance.ofMetres(along)))
        .distance()
        .metres();
  }
}
