package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * The point of a leg or line closest to a position, with how far along and how far off that is.
 *
 * <pre>{@code
 * ClosestPoint rock = leg.closestTo(rockPosition);
 * rock.alongTrack(); // distance from the start to where the rock lies abeam
 * rock.crossTrack(); // how far off, to starboard positive
 * }</pre>
 *
 * @param position the closest point
 * @param alongTrack distance along from the start or origin; behind it negative
 * @param crossTrack distance from the closest point to the position over the ellipsoid, positive
 *     when the position is to the right of the course; 0 on the line. At an end of a leg it is the
 *     distance to that end, with the sign of the side
 * @param course the true course at the closest point
 * @param bearing the true bearing of the position from the closest point; the course if they are
 *     one point
 * @param place whether the position lies abeam, or before the start, or beyond the end
 */
public record ClosestPoint(
    Position position,
    Distance alongTrack,
    Distance crossTrack,
    TrueBearing course,
    TrueBearing bearing,
    Place place)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Where the closest point lies.
   *
   * <pre>{@code
   * boolean passed = leg.closestTo(boat).place() == ClosestPoint.Place.END;
   * }</pre>
   */
  public enum Place {
    /** Between the ends: the position is at right angles to the course. */
    ABEAM,
    /** The start of the leg, which the position lies behind. */
    START,
    /** The end of the leg, which the position lies beyond. */
    END
  }

  /**
   * How far off the position is, to whichever side.
   *
   * @return the cross-track distance without its sign
   */
  public Distance distance() {
    return crossTrack.magnitude();
  }

  static ClosestPoint search(Line line, double from, double to, Position position) {
    ToPosition function = new ToPosition(line, position);
    double along = LeastDistance.search(function, from, to);
    double[] sight = function.sight(along);
    double metres = sight[2];
    double turn = Math.IEEEremainder(sight[0] - function.point[2], 360.0);
    Place place =
        along <= from && metres > 0.0 && Math.abs(turn) > 90.0
            ? Place.START
            : along >= to && metres > 0.0 && Math.abs(turn) < 90.0 ? Place.END : Place.ABEAM;
    return new ClosestPoint(
        new Position(function.point[0], function.point[1]),
        Distance.ofMetres(along),
        Distance.ofMetres(turn < 0.0 ? -metres : metres),
        new TrueBearing(function.point[2]),
        new TrueBearing(metres == 0.0 ? function.point[2] : sight[0]),
        place);
  }

  /** The distance of one position as a function of the way along a line. */
  private static final class ToPosition implements LeastDistance.Function {
    private static final double LONGEST_STEP_METRES = 300e3;

    private final Line line;
    private final Position position;
    private final double[] target = new double[3];
    private final double[] vector = new double[3];
    private final double[] sight = new double[3];
    private final double[] point = new double[3];
    private double sampledLatitude;

    ToPosition(Line line, Position position) {
      this.line = line;
      this.position = position;
      Cartesian.vector(position.latitudeDegrees(), position.longitudeDegrees(), target);
    }

    @Override
    public double chord(double along) {
      line.pointAt(along, point, 0);
      Cartesian.vector(point[0], point[1], vector);
      sampledLatitude = point[0];
      return Cartesian.distance(vector, target);
    }

    @Override
    public double step(double along) {
      return Math.min(LONGEST_STEP_METRES, Cartesian.gentlePieceMetres(sampledLatitude));
    }

    @Override
    public double estimate(double along) {
      double[] there = sight(along);
      return there[2] * Degrees.cosine(there[0] - point[2]);
    }

    @Override
    public double distance(double along) {
      return sight(along)[2];
    }

    double[] sight(double along) {
      line.pointAt(along, point, 0);
      Geodesics.inverse(
          point[0], point[1], position.latitudeDegrees(), position.longitudeDegrees(), sight, 0);
      return sight;
    }
  }
}
