package org.ferryglide.nav.fix;

import java.util.List;
import org.ferryglide.nav.geodesy.Geodesics;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;

/** A circle is cut twice, by a straight line as by another circle; this finds the nearer place. */
final class TwoPlaces {
  private TwoPlaces() {}

  /** Whether these lines can meet in two places: two lines, a circle among them. */
  static boolean possible(List<PositionLine> lines) {
    return lines.size() == 2
        && (lines.get(0) instanceof DistanceCircle || lines.get(1) instanceof DistanceCircle)
        && !cutOnce(lines.get(0), lines.get(1));
  }

  /** A bearing and a distance of one mark: the other place has the mark behind. */
  private static boolean cutOnce(PositionLine a, PositionLine b) {
    if (a instanceof BearingLine bearing && b instanceof DistanceCircle circle) {
      return bearing.mark().equals(circle.mark());
    }
    return b instanceof BearingLine && cutOnce(b, a);
  }

  /** Solves from the mirror image of a solution too and leaves the solver at the nearer of both. */
  static void settleNearer(List<PositionLine> lines, LeastSquares squares, Position near) {
    double lat = squares.lat;
    double lon = squares.lon;
    double[] mirror = mirror(lines, squares);
    boolean nearer =
        squares.solveFrom(mirror[0], mirror[1])
            && squares.reversedBearing() < 0
            && metres(squares.lat, squares.lon, near) < metres(lat, lon, near);
    if (!nearer) {
      squares.solveFrom(lat, lon);
    }
  }

  private static double metres(double lat, double lon, Position near) {
    double[] line = new double[3];
    Geodesics.inverse(lat, lon, near.latitudeDegrees(), near.longitudeDegrees(), line, 0);
    return line[2];
  }

  /** The solution mirrored in the axis through the circle's mark. */
  private static double[] mirror(List<PositionLine> lines, LeastSquares squares) {
    int index = lines.get(0) instanceof DistanceCircle ? 0 : 1;
    double[] mark = toMark((DistanceCircle) lines.get(index), squares);
    double axisEast;
    double axisNorth;
    if (lines.get(1 - index) instanceof DistanceCircle other) {
      double[] otherMark = toMark(other, squares);
      axisEast = otherMark[0] - mark[0];
      axisNorth = otherMark[1] - mark[1];
    } else { // across the line, which is along its gradient
      double[] row = squares.equation(1 - index);
      axisEast = row[1];
      axisNorth = row[2];
    }
    double along =
        (-mark[0] * axisEast - mark[1] * axisNorth) / (axisEast * axisEast + axisNorth * axisNorth);
    double[] out = new double[2];
    LocalPlane.fromPlane(
        squares.lat,
        squares.lon,
        2.0 * (mark[0] + along * axisEast),
        2.0 * (mark[1] + along * axisNorth),
        out,
        0);
    return out;
  }

  private static double[] toMark(DistanceCircle circle, LeastSquares squares) {
    double[] eastNorth = new double[2];
    LocalPlane.toPlane(
        squares.lat,
        squares.lon,
        circle.mark().latitudeDegrees(),
        circle.mark().longitudeDegrees(),
        eastNorth,
        0);
    return eastNorth;
  }
}
