package org.ferryglide.nav.geodesy;

import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.position.Position;

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

  /**
   * By the kernel where it answers, else by search.
   *
   * @param out a row of {@link LegComparisons#compare}, with room for the separation
   */
  static WidestPlace of(Ellipsoid ellipsoid, Position start, Position end, double[] out) {
    LegComparisons.separate(
        ellipsoid,
        start.latitudeDegrees(),
        start.longitudeDegrees(),
        end.latitudeDegrees(),
        end.longitudeDegrees(),
        out,
        0);
    double separation = out[LegComparisons.SEPARATION];
    return Double.isNaN(separation)
        ? search(ellipsoid, start, end)
        : new WidestPlace(separation, out[LegComparisons.SEPARATION_ALONG]);
  }

  /** By samples along the whole of the rhumb line, and a golden-section search round the best. */
  static WidestPlace search(Ellipsoid ellipsoid, Position start, Position end) {
    Lines lines = new Lines(ellipsoid, start, end);
    double length = lines.rhumbLength;
    double best = 0.0;
    double most = 0.0;
    for (int i = 1; i < SAMPLES; i++) {
      double off = lines.off(length * i / SAMPLES);
      if (off > most) {
        most = off;
        best = length * i / SAMPLES;
      }
    }
    double lo = Math.max(0.0, best - length / SAMPLES);
    double hi = Math.min(length, best + length / SAMPLES);
    double left = hi - GOLDEN * (hi - lo);
    double right = lo + GOLDEN * (hi - lo);
    double offLeft = lines.off(left);
    double offRight = lines.off(right);
    while (hi - lo > NEAR_ENOUGH * length) {
      if (offLeft >= offRight) {
        hi = right;
        right = left;
        offRight = offLeft;
        left = hi - GOLDEN * (hi - lo);
        offLeft = lines.off(left);
      } else {
        lo = left;
        left = right;
        offLeft = offRight;
        right = lo + GOLDEN * (hi - lo);
        offRight = lines.off(right);
      }
    }
    double along = 0.5 * (lo + hi);
    return new WidestPlace(lines.off(along), along);
  }

  /** A point of the rhumb line; one that leaves a pole runs along the meridian of its end. */
  static void rhumbPoint(
      Ellipsoid ellipsoid,
      Position start,
      Position end,
      TrueBearing course,
      double along,
      double[] out) {
    Position meridian = Math.abs(start.latitudeDegrees()) == 90.0 ? end : start;
    RhumbLines.direct(
        ellipsoid,
        start.latitudeDegrees(),
        meridian.longitudeDegrees(),
        course.degrees(),
        along,
        out,
        0);
  }

  /** Both lines of one comparison. */
  private static final class Lines {
    private final Ellipsoid ellipsoid;
    private final Position start;
    private final Position end;
    private final TrueBearing course;
    private final double rhumbLength;
    private final GeodesicLine shortest;
    private final double geodesicLength;
    private final double[] point = new double[2];

    Lines(Ellipsoid ellipsoid, Position start, Position end) {
      LegComparison comparison = LegComparison.between(ellipsoid, start, end);
      this.ellipsoid = ellipsoid;
      this.start = start;
      this.end = end;
      course = comparison.rhumbCourse();
      rhumbLength = comparison.rhumbLength().metres();
      shortest = GeodesicLine.from(ellipsoid, start, comparison.initialCourse());
      geodesicLength = comparison.geodesicLength().metres();
    }

    /** How far a point of the rhumb line lies off the geodesic. */
    double off(double along) {
      rhumbPoint(ellipsoid, start, end, course, along, point);
      return NearestPoint.search(shortest, 0.0, geodesicLength, point[0], point[1]).metres();
    }
  }
}
