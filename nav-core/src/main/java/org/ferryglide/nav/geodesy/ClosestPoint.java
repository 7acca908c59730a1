package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import java.util.Objects;
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
 * @param alongTrack distance along the leg from its start, or along the line from its origin;
 *     negative behind it
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
   * Takes all parts; {@link Leg#closestTo} finds them.
   *
   * @param position the closest point
   * @param alongTrack distance along from the start or origin
   * @param crossTrack distance from the closest point, to starboard positive
   * @param course the true course at the closest point
   * @param bearing the true bearing of the position from it
   * @param place whether the position lies abeam, or before the start, or beyond the end
   */
  public ClosestPoint {
    Objects.requireNonNull(position, "position");
    Objects.requireNonNull(alongTrack, "alongTrack");
    Objects.requireNonNull(crossTrack, "crossTrack");
    Objects.requireNonNull(course, "course");
    Objects.requireNonNull(bearing, "bearing");
    Objects.requireNonNull(place, "place");
  }

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
    NearestPoint nearest =
        NearestPoint.search(
            line, from, to, position.latitudeDegrees(), position.longitudeDegrees());
    double along = nearest.along();
    double metres = nearest.metres();
    double turn = nearest.turn();
    Place place =
        along <= from && metres > 0.0 && Math.abs(turn) > 90.0
            ? Place.START
            : along >= to && metres > 0.0 && Math.abs(turn) < 90.0 ? Place.END : Place.ABEAM;
    return new ClosestPoint(
        new Position(nearest.latitude(), nearest.longitude()),
        Distance.ofMetres(along),
        Distance.ofMetres(turn < 0.0 ? -metres : metres),
        new TrueBearing(nearest.course()),
        TrueBearing.ofDegrees(nearest.course() + turn),
        place);
  }
}
