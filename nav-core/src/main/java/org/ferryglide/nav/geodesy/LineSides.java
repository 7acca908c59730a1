package org.ferryglide.nav.geodesy;

/**
 * On which side of one line the points of another lie: how far off, and how fast that changes along
 * the other line. Two lines cross where the side changes, and cannot cross where it does not.
 */
final class LineSides {
  private static final int MOST_STEPS = 8;

  /** The foot of a point need not be known better than this for a start. */
  private static final double FOOT_METRES = 1e-4;

  private final Line points;
  private final Line line;
  private final double[] point = new double[3];
  private final double[] foot = new double[3];
  private final double[] sight = new double[3];
  private double alongLine;
  private double off;
  private double sine;

  LineSides(Line points, Line line) {
    this.points = points;
    this.line = line;
  }

  /**
   * Looks from the line to a point of the other.
   *
   * @param alongPoints how far along the other line, metres
   * @param near a place along the line to begin with, metres
   * @return whether the point has a foot; not where a rhumb line ends at a pole before it
   */
  boolean look(double alongPoints, double near) {
    points.pointAt(alongPoints, point, 0);
    alongLine = near;
    for (int i = 0; i < MOST_STEPS; i++) {
      line.pointAt(alongLine, foot, 0);
      Geodesics.inverse(line.ellipsoid(), foot[0], foot[1], point[0], point[1], sight, 0);
      double step = sight[2] * Degrees.cosine(sight[0] - foot[2]);
      if (!(Math.abs(step) > FOOT_METRES)) { // or NaN
        off = sight[2] * Degrees.sine(sight[0] - foot[2]);
        sine = Degrees.sine(point[2] - (sight[1] - sight[0]) - foot[2]);
        return !Double.isNaN(off) && !Double.isNaN(sine);
      }
      alongLine += step;
    }
    return false;
  }

  /** Where on the line the foot of the point lies, metres along. */
  double alongLine() {
    return alongLine;
  }

  /** How far the point lies off the line, metres, to the right positive. */
  double off() {
    return off;
  }

  /** How fast {@link #off} grows along the other line: the sine of the angle between the two. */
  double sine() {
    return sine;
  }
}
