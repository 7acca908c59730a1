package org.ferryglide.nav.geodesy;

/**
 * Finds the point of a line that is nearest to a position, over the whole of a stretch, by dividing
 * it until each part is settled. A part is settled
 *
 * <ul>
 *   <li>if a bound from below shows that no point of it is nearer than the best known;
 *   <li>if the square of the distance is convex on it, so that its one minimum is found by the
 *       slope;
 *   <li>if the distance runs so straight on it that nothing worth having can hide between its ends.
 * </ul>
 *
 * <p>With θ the angle from the course to the sight, the distance d changes along the line by d' =
 * -cos θ and d'' = κ sin²θ ± k sin θ, where k is the geodesic curvature of the line and κ that of
 * the circle of radius d about the position. Along a sight κ obeys κ' + κ² + K = 0, K being the
 * curvature of the earth, so that it lies between cot(d/r)/r for the least and the greatest r =
 * 1/√K. The upper bound also holds where two sights are equally short, since there the distance has
 * a ridge, not a minimum.
 *
 * <p>Distances that stay alike for thousands of kilometres, as those of a parallel from its pole,
 * take many parts; other questions take few.
 */
final class NearestPointSearch {
  /** A gain below this is the rounding of two distances. */
  private static final double NO_GAIN_METRES = 1e-7;

  /** A distance that bends by less than this share of itself is taken for straight. */
  private static final double STRAIGHT = 1e-8;

  /** Parts so short are settled by their ends; only turns right round a pole get there. */
  private static final double SHORTEST_METRES = 1e-3;

  /** An estimate this small is rounding: 20 nanometres are what is known of it. */
  private static final double ROUNDING_METRES = 2e-8;

  private static final int MOST_STEPS = 100;

  private final Line line;
  private final Ellipsoid ellipsoid;

  /** Least radius of curvature, 1/√K. */
  private final double leastRadius;

  /** Greatest radius of curvature, 1/√K: at a pole of an oblate ellipsoid, a²/b. */
  private final double greatestRadius;

  private final double lat;
  private final double lon;

  /** Sine of a rhumb line's course, 0 on a geodesic, which has no curvature. */
  private final double sineOfCourse;

  private final double[] point = new double[3];
  private final double[] sight = new double[3];
  private double best;
  private double least = Double.POSITIVE_INFINITY;

  private NearestPointSearch(Line line, Ellipsoid ellipsoid, double lat, double lon) {
    this.line = line;
    this.ellipsoid = ellipsoid;
    this.lat = lat;
    this.lon = lon;
    leastRadius = NearestPoint.leastRadius(ellipsoid);
    greatestRadius =
        Math.max(
            ellipsoid.semiMinorAxisMetres(),
            ellipsoid.semiMajorAxisMetres() / (1.0 - ellipsoid.flattening()));
    sineOfCourse =
        line instanceof RhumbLine rhumb ? Math.abs(Degrees.sine(rhumb.course().degrees())) : 0.0;
  }

  /** How far along the line its nearest point lies, within [from, to]. */
  static double search(
      Line line, Ellipsoid ellipsoid, double from, double to, double lat, double lon) {
    NearestPointSearch search = new NearestPointSearch(line, ellipsoid, lat, lon);
    Sample start = search.sample(from);
    if (to > from) {
      search.settleAll(start, search.sample(to));
    }
    return search.best;
  }

  /** What is known at one point of the line. */
  private record Sample(double along, double distance, double ahead, double latitude) {}

  /** Measures at a point, and keeps it if it is nearer than any so far. */
  private Sample sample(double along) {
    Sample here = measure(along);
    if (here.distance < least) {
      keep(here);
    }
    return here;
  }

  private void keep(Sample here) {
    least = Math.min(least, here.distance);
    best = here.along;
  }

  private Sample measure(double along) {
    line.pointAt(along, point, 0);
    Geodesics.inverse(ellipsoid, point[0], point[1], lat, lon, sight, 0);
    double distance = sight[2];
    double ahead = distance * Degrees.cosine(sight[0] - point[2]);
    return new Sample(along, distance, ahead, point[0]);
  }

  private void settleAll(Sample a, Sample b) {
    if (!isConvex(a, b)) { // a good guess first settles the rest the sooner
      Sample guess = sample(Math.max(a.along, Math.min(b.along, 0.0)));
      for (int i = 0; i < 3; i++) {
        guess = sample(Math.max(a.along, Math.min(b.along, guess.along + guess.ahead)));
      }
    }
    settle(a, b);
  }

  private void settle(Sample a, Sample b) {
    if (isConvex(a, b)) {
      if (atLeast(a, b) < least) {
        descend(a, b);
      }
      return;
    }
    double length = b.along - a.along;
    double bend = mostBend(a, b) * length * length / 8.0;
    // a minimum as low as the best is kept, since its place is known better than its value
    double worthless = least + (isHollow(a, b) ? NO_GAIN_METRES : -NO_GAIN_METRES);
    if (atLeast(a, b) >= worthless || atLeast(a, b, bend) >= worthless) {
      return;
    }
    if (bend <= STRAIGHT * Math.min(a.distance, b.distance) || length <= SHORTEST_METRES) {
      descend(a, b);
      return;
    }
    Sample middle = sample(a.along + 0.5 * length);
    if (a.distance <= b.distance) {
      settle(a, middle);
      settle(middle, b);
    } else {
      settle(middle, b);
      settle(a, middle);
    }
  }

  /** A metre along changes the distance by a metre at most. */
  private static double atLeast(Sample a, Sample b) {
    return 0.5 * (a.distance + b.distance - (b.along - a.along));
  }

  /** The least of a distance between two ends that sags below the straight by at most this. */
  private static double atLeast(Sample a, Sample b, double sag) {
    double rise = Math.abs(b.distance - a.distance);
    double lower = Math.min(a.distance, b.distance);
    // the parabola lower + rise s - 4 sag s (1 - s)
    return rise >= 4.0 * sag ? lower : lower - (4.0 * sag - rise) * (4.0 * sag - rise) / (16 * sag);
  }

  /** An upper bound of the second derivative of the distance, a metre; 0 where it is concave. */
  private double mostBend(Sample a, Sample b) {
    double nearest = atLeast(a, b);
    if (!(nearest > 0.0)) {
      return Double.POSITIVE_INFINITY;
    }
    double x = nearest / greatestRadius;
    double circle = x >= 0.5 * Math.PI ? 0.0 : 1.0 / (greatestRadius * Math.tan(x));
    return circle + curvature(a, b);
  }

  /** Whether the square of the distance is convex, so that there is one minimum or none. */
  private boolean isConvex(Sample a, Sample b) {
    double farthest = 0.5 * (a.distance + b.distance + (b.along - a.along));
    double x = farthest / leastRadius;
    if (!(x < 0.5 * Math.PI)) {
      return false;
    }
    double flat = x == 0.0 ? 1.0 : x / Math.tan(x);
    return farthest * curvature(a, b) < 0.99 * flat;
  }

  /** The greatest geodesic curvature of the line between two points, radians a metre. */
  private double curvature(Sample a, Sample b) {
    if (sineOfCourse == 0.0) {
      return 0.0;
    }
    double polar = Math.max(Math.abs(a.latitude), Math.abs(b.latitude));
    double cosine = Degrees.cosine(polar);
    return cosine == 0.0
        ? Double.POSITIVE_INFINITY
        : sineOfCourse * Degrees.sine(polar) / (cosine * ellipsoid.semiMajorAxisMetres());
  }

  /** Whether the distance falls at the beginning of a part and rises at its end. */
  private static boolean isHollow(Sample a, Sample b) {
    return a.ahead > 0.0 && b.ahead < 0.0;
  }

  /** Finds a minimum by the slope: the zero of what lies ahead. */
  private void descend(Sample a, Sample b) {
    if (!isHollow(a, b)) {
      return; // an end is nearest, and the ends are known
    }
    double left = a.along;
    double right = b.along;
    Sample before = a.distance <= b.distance ? a : b;
    double t = before.along + before.ahead;
    for (int i = 0; i < MOST_STEPS; i++) {
      if (!(t > left && t < right)) {
        t = 0.5 * (left + right);
      }
      Sample here = measure(t);
      if (here.ahead > 0.0) {
        left = t;
      } else {
        right = t;
      }
      double next = t - here.ahead * (t - before.along) / (here.ahead - before.ahead); // the secant
      if (Math.abs(here.ahead) <= ROUNDING_METRES
          || Math.abs(next - t) <= 1e-9 + 2.0 * Math.ulp(t)) {
        if (here.distance <= least + NO_GAIN_METRES) {
          keep(here);
        }
        return;
      }
      before = here;
      t = next;
    }
  }
}
