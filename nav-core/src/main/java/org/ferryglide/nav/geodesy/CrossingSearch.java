package org.ferryglide.nav.geodesy;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * Finds the crossings of two lines, both cut into segments.
 *
 * <p>Two segments can only meet if the straight distance of their middles is at most half the sum
 * of their lengths: every point of a segment lies within half its length of its middle. Pairs that
 * fail are dropped, the others halved until they are short. Of a short pair both ends and the
 * middle of one are seen from the other: where the side changes, or where the line comes nearer
 * from both sides, Newton's method runs from both ends, in the plane that touches the earth there.
 * Short segments bend one way, so from the outside it cannot pass a crossing by.
 */
final class CrossingSearch {
  /** Segments so short bend one way only, so that two of them meet twice at most. */
  private static final double LONGEST_SEGMENT_METRES = 50e3;

  private static final int SEGMENTS_AT_LEAST = 8;
  private static final int MOST_STEPS = 30;

  /** What a crossing may lie off either line, or beyond its end. */
  static final double TOLERANCE_METRES = 1e-6;

  /** Sine of the least angle at which two directions still give a point. */
  static final double LEAST_SINE = 1e-9;

  private final Line a;
  private final Line b;
  private final Ellipsoid ellipsoid;
  private final double fromA;
  private final double toA;
  private final double fromB;
  private final double toB;
  private final double segmentA;
  private final double segmentB;
  private final double[] pointA = new double[3];
  private final double[] pointB = new double[3];
  private final double[] vectorA = new double[3];
  private final double[] vectorB = new double[3];
  private final double[] sight = new double[3];
  private final List<double[]> found = new ArrayList<>();
  private final LineSides sides;
  private double togetherFrom = Double.NaN;
  private double togetherTo = Double.NaN;

  private CrossingSearch(Line a, double fromA, double toA, Line b, double fromB, double toB) {
    this.a = a;
    this.b = b;
    ellipsoid = a.ellipsoid();
    sides = new LineSides(a, b);
    this.fromA = fromA;
    this.toA = toA;
    this.fromB = fromB;
    this.toB = toB;
    segmentA = Math.min(LONGEST_SEGMENT_METRES, (toA - fromA) / SEGMENTS_AT_LEAST);
    segmentB = Math.min(LONGEST_SEGMENT_METRES, (toB - fromB) / SEGMENTS_AT_LEAST);
  }

  /** The crossings of two legs: short ones decided on the chart where that can be. */
  static Crossings search(Leg first, Leg second) {
    requireOneEllipsoid(first.ellipsoid(), second.ellipsoid());
    Crossings decided = ShortCrossing.of(first, second);
    return decided != null
        ? decided
        : search(
            first.line(),
            0.0,
            first.length().metres(),
            second.line(),
            0.0,
            second.length().metres());
  }

  static Crossings search(Line a, double fromA, double toA, Line b, double fromB, double toB) {
    requireOneEllipsoid(a.ellipsoid(), b.ellipsoid());
    CrossingSearch search = new CrossingSearch(a, fromA, toA, b, fromB, toB);
    search.touch(); // first, since an end is known exactly
    search.halve(fromA, toA, fromB, toB);
    return search.crossings();
  }

  private static void requireOneEllipsoid(Ellipsoid first, Ellipsoid second) {
    if (!first.equals(second)) {
      throw new IllegalArgumentException(
          "crossings need two lines on one ellipsoid, but they lie on " + first + " and " + second);
    }
  }

  private void halve(double loA, double hiA, double loB, double hiB) {
    double halfA = 0.5 * (hiA - loA);
    double halfB = 0.5 * (hiB - loB);
    double middleA = loA + halfA;
    double middleB = loB + halfB;
    a.pointAt(middleA, pointA, 0);
    b.pointAt(middleB, pointB, 0);
    Cartesian.vector(ellipsoid, pointA[0], pointA[1], vectorA);
    Cartesian.vector(ellipsoid, pointB[0], pointB[1], vectorB);
    if (Cartesian.distance(vectorA, vectorB) > halfA + halfB + TOLERANCE_METRES) {
      return;
    }
    boolean shortA = 2.0 * halfA <= shortSegment(segmentA, pointA);
    boolean shortB = 2.0 * halfB <= shortSegment(segmentB, pointB);
    if (shortA && shortB) {
      meet(middleB, loA, middleA, hiA);
    } else if (shortB || (!shortA && halfA >= halfB)) {
      halve(loA, middleA, loB, hiB);
      halve(middleA, hiA, loB, hiB);
    } else {
      halve(loA, hiA, loB, middleB);
      halve(loA, hiA, middleB, hiB);
    }
  }

  private double shortSegment(double segment, double[] middle) {
    return Math.min(
        1.001 * segment, Cartesian.gentleSegmentMetres(ellipsoid, middle[0])); // 1.001 for rounding
  }

  /** Two crossings at most, which a lens between the two lines has at its tips. */
  private void meet(double nearB, double... along) {
    double footBefore = nearB;
    double offBefore = 0.0;
    double sineBefore = 0.0;
    for (int i = 0; i < along.length; i++) {
      boolean seen = sides.look(along[i], nearB);
      double foot = seen ? sides.alongLine() : nearB;
      double off = seen ? sides.off() : 0.0; // so that it counts as touching
      double sine = seen ? sides.sine() : 0.0;
      boolean changesSide = !(offBefore * off > 0.0);
      boolean comesNearer = offBefore * sineBefore < 0.0 && off * sine > 0.0;
      boolean touches = Math.min(Math.abs(offBefore), Math.abs(off)) <= TOLERANCE_METRES;
      if (i > 0 && (changesSide || comesNearer || touches)) {
        approach(along[i - 1], footBefore);
        approach(along[i], foot);
      }
      footBefore = foot;
      offBefore = off;
      sineBefore = sine;
    }
  }

  /** Newton's method from a pair of distances along; the lines are taken as straight. */
  private void approach(double startA, double startB) {
    double alongA = startA;
    double alongB = startB;
    double apartBefore = Double.POSITIVE_INFINITY;
    for (int i = 0; i < MOST_STEPS; i++) {
      a.pointAt(alongA, pointA, 0);
      b.pointAt(alongB, pointB, 0);
      Geodesics.inverse(ellipsoid, pointA[0], pointA[1], pointB[0], pointB[1], sight, 0);
      double apart = sight[2];
      double courseB = pointB[2] - (sight[1] - sight[0]); // carried along the sight to A
      double sine = Degrees.sine(courseB - pointA[2]);
      if (apart <= TOLERANCE_METRES && !(apart < 0.5 * apartBefore)) { // rounding is reached
        add(alongA, alongB, sine);
        return;
      }
      if (!(Math.abs(sine) > LEAST_SINE)) { // or NaN, where a rhumb line does not reach
        return;
      }
      double stepA = apart * Degrees.sine(courseB - sight[0]) / sine;
      double stepB = apart * Degrees.sine(pointA[2] - sight[0]) / sine;
      alongA += stepA;
      alongB += stepB;
      if (Math.abs(alongA - startA) > 2.0 * segmentA
          || Math.abs(alongB - startB) > 2.0 * segmentB) {
        return; // it belongs to another pair of segments
      }
      apartBefore = apart;
    }
  }

  /** What a crossing at an angle of this sine may lie beyond an end. */
  static double slackMetres(double sine) {
    return TOLERANCE_METRES + 2e-8 / Math.max(LEAST_SINE, Math.abs(sine));
  }

  private void add(double alongA, double alongB, double sine) {
    double slack = slackMetres(sine);
    boolean onBoth =
        alongA >= fromA - slack
            && alongA <= toA + slack
            && alongB >= fromB - slack
            && alongB <= toB + slack;
    if (!onBoth) {
      return;
    }
    double onA = Math.max(fromA, Math.min(toA, alongA));
    double onB = Math.max(fromB, Math.min(toB, alongB));
    for (double[] known : found) {
      if (Math.abs(known[0] - onA) <= 10.0 * slack && Math.abs(known[1] - onB) <= 10.0 * slack) {
        return;
      }
    }
    found.add(new double[] {onA, onB});
  }

  /**
   * Looks at the four ends, which Newton's method cannot judge where the lines are parallel: lines
   * that run together touch at two ends, and all the way between.
   */
  private void touch() {
    List<double[]> touches = new ArrayList<>();
    for (double end : new double[] {fromA, toA}) {
      a.pointAt(end, pointA, 0);
      double onB = touchOf(pointA, b, fromB, toB);
      if (!Double.isNaN(onB)) {
        touches.add(new double[] {end, onB});
      }
    }
    for (double end : new double[] {fromB, toB}) {
      b.pointAt(end, pointB, 0);
      double onA = touchOf(pointB, a, fromA, toA);
      if (!Double.isNaN(onA)) {
        touches.add(new double[] {onA, end});
      }
    }
    double first = Double.POSITIVE_INFINITY;
    double last = Double.NEGATIVE_INFINITY;
    for (double[] touch : touches) {
      first = Math.min(first, touch[0]);
      last = Math.max(last, touch[0]);
      add(touch[0], touch[1], 1.0);
    }
    if (last - first > 1e3 * TOLERANCE_METRES && onB(first, last, 0.5) && onB(first, last, 0.3)) {
      togetherFrom = first;
      togetherTo = last;
    }
  }

  private boolean onB(double first, double last, double part) {
    a.pointAt(first + part * (last - first), pointA, 0);
    return !Double.isNaN(touchOf(pointA, b, fromB, toB));
  }

  /** How far along a line a point lies that is on it, or NaN. */
  private double touchOf(double[] point, Line line, double from, double to) {
    double half = 0.5 * (to - from);
    double[] middle = new double[3];
    line.pointAt(from + half, middle, 0);
    Cartesian.vector(ellipsoid, middle[0], middle[1], vectorA);
    Cartesian.vector(ellipsoid, point[0], point[1], vectorB);
    if (Cartesian.distance(vectorA, vectorB) > half + TOLERANCE_METRES) {
      return Double.NaN; // out of reach, seen quickly
    }
    ClosestPoint there = ClosestPoint.search(line, from, to, position(point));
    return there.distance().metres() <= TOLERANCE_METRES ? there.alongTrack().metres() : Double.NaN;
  }

  private static Position position(double[] point) {
    return new Position(point[0], point[1]);
  }

  /**
   * At a pole a course depends on the meridian it is counted from; elsewhere both have the same.
   */
  private double courseOfBFromMeridianOfA() {
    return pointB[2] + Degrees.longitudeDifference(pointB[1], pointA[1]) * Degrees.sine(pointA[0]);
  }

  private Crossings crossings() {
    List<Crossings.Crossing> points = new ArrayList<>();
    found.sort((p, q) -> Double.compare(p[0], q[0]));
    for (double[] pair : found) {
      boolean inStretch =
          pair[0] >= togetherFrom - 1e3 * TOLERANCE_METRES
              && pair[0] <= togetherTo + 1e3 * TOLERANCE_METRES;
      if (!inStretch) {
        a.pointAt(pair[0], pointA, 0);
        b.pointAt(pair[1], pointB, 0);
        points.add(
            new Crossings.Crossing(
                position(pointA),
                Distance.ofMetres(pair[0]),
                Distance.ofMetres(pair[1]),
                Angles.turn(pointA[2], courseOfBFromMeridianOfA())));
      }
    }
    return new Crossings(points, !Double.isNaN(togetherFrom));
  }
}
