package org.ferryglide.nav.geodesy;

import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * A line without ends through a point, prepared for many points along it.
 *
 * <p>Distances along it count from the origin, forward positive. A rhumb line ends at the poles; a
 * geodesic goes round the earth. Searches along a line (closest point, crossings) follow it half
 * the way round the earth, {@link #SEARCH_SPAN}, ahead and astern. Within a kilometre of a pole,
 * where a rhumb line winds tightly, a search for crossings may miss a turn.
 *
 * <pre>{@code
 * Line line = RhumbLeg.between(landing, island).line();
 * ClosestPoint rock = line.closestTo(rockPosition);
 * rock.crossTrack(); // right of the line positive
 * }</pre>
 */
public sealed interface Line permits RhumbLine, GeodesicLine {

  /** How far ahead and astern of its origin a line is searched: 20 000 km. */
  Distance SEARCH_SPAN = Distance.ofKilometres(20_000);

  /**
   * The rhumb line through a point on a course, on WGS84.
   *
   * <pre>{@code
   * Line line = Line.rhumb(landing, TrueBearing.ofDegrees(75));
   * double[] latLonCourse = new double[3];
   * for (double metres = 0; metres < 10_000; metres += 100) {
   *   line.pointAt(metres, latLonCourse, 0);
   * }
   * }</pre>
   *
   * @param origin a point of the line
   * @param course its true course
   * @return the line
   * @throws IllegalArgumentException if the point is a pole and the course is not along a meridian
   */
  static Line rhumb(Position origin, TrueBearing course) {
    return rhumb(Ellipsoid.WGS84, origin, course);
  }

  /**
   * The rhumb line through a point on a course.
   *
   * @param ellipsoid the figure of the earth
   * @param origin a point of the line
   * @param course its true course
   * @return the line
   * @throws IllegalArgumentException if the point is a pole and the course is not along a meridian
   */
  static Line rhumb(Ellipsoid ellipsoid, Position origin, TrueBearing course) {
    return RhumbLine.from(ellipsoid, origin, course);
  }

  /**
   * The geodesic that leaves a point on a course, on WGS84.
   *
   * <pre>{@code
   * Line sight = Line.geodesic(light, TrueBearing.ofDegrees(210));
   * Position fiveMilesOff = sight.pointAt(Distance.ofNauticalMiles(5));
   * }</pre>
   *
   * @param origin a point of the line
   * @param initialCourse the true course there
   * @return the line
   */
  static Line geodesic(Position origin, TrueBearing initialCourse) {
    return geodesic(Ellipsoid.WGS84, origin, initialCourse);
  }

  /**
   * The geodesic that leaves a point on a course.
   *
   * @param ellipsoid the figure of the earth
   * @param origin a point of the line
   * @param initialCourse the true course there
   * @return the line
   */
  static Line geodesic(Ellipsoid ellipsoid, Position origin, TrueBearing initialCourse) {
    return GeodesicLine.from(ellipsoid, origin, initialCourse);
  }

  /**
   * The figure of the earth that the line lies on.
   *
   * @return the ellipsoid
   */
  Ellipsoid ellipsoid();

  /**
   * Where distances along the line count from.
   *
   * @return the origin
   */
  Position origin();

  /**
   * The true course at the origin.
   *
   * @return the course
   */
  TrueBearing initialCourse();

  /**
   * The farthest ahead that the line can be followed.
   *
   * @return {@link #SEARCH_SPAN}, or the distance to the pole if a rhumb line ends there first
   */
  Distance farthestAhead();

  /**
   * The farthest astern that the line can be followed.
   *
   * @return a distance below 0: the opposite of {@link #SEARCH_SPAN}, or the distance to the pole
   */
  Distance farthestAstern();

  /**
   * Writes the point at a distance along, without allocating on a rhumb line.
   *
   * @param metres distance from the origin, metres, forward positive; NaN gives NaN
   * @param out receives latitude, longitude and course there, degrees; NaN where the line does not
   *     reach
   * @param offset where in {@code out} to write three numbers
   */
  void pointAt(double metres, double[] out, int offset);

  /**
   * The point at a distance along.
   *
   * @param along distance from the origin, forward positive
   * @return the point
   * @throws IllegalArgumentException if a rhumb line ends at a pole before that
   */
  Position pointAt(Distance along);

  /**
   * The true course at a distance along.
   *
   * @param along distance from the origin, forward positive
   * @return the course there
   * @throws IllegalArgumentException if a rhumb line ends at a pole before that
   */
  TrueBearing courseAt(Distance along);

  /**
   * The point of this line that is closest to a position, over the ellipsoid.
   *
   * <p>The whole line is searched, by bounds that miss no nearer point, which costs about three
   * times what {@link Leg#closestTo} does; if the leg will do, ask the leg. Where the distance
   * hardly changes for thousands of kilometres, as on the equator seen from a pole, it takes
   * thousands of times as long, and a point nearer by up to a hundred millionth of the distance may
   * be missed.
   *
   * @param position the position
   * @return the closest point within {@link #SEARCH_SPAN}, with the foot of the perpendicular good
   *     to a micrometre
   */
  default ClosestPoint closestTo(Position position) {
    return ClosestPoint.search(this, farthestAstern().metres(), farthestAhead().metres(), position);
  }

  /**
   * Where this line meets another.
   *
   * @param other the other line
   * @param span how far ahead and astern of their origins both are followed, above 0 and at most
   *     {@link #SEARCH_SPAN}
   * @return the crossings in their order along this line; perhaps none
   * @throws IllegalArgumentException if the span is out of range, or the lines lie on different
   *     ellipsoids
   */
  default Crossings crossings(Line other, Distance span) {
    Arguments.positive(span.metres(), "span", "metres");
    double most = Arguments.within(span.metres(), 0.0, SEARCH_SPAN.metres(), "span", "metres");
    return CrossingSearch.search(
        this,
        Math.max(-most, farthestAstern().metres()),
        Math.min(most, farthestAhead().metres()),
        other,
        Math.max(-most, other.farthestAstern().metres()),
        Math.min(most, other.farthestAhead().metres()));
  }
}
