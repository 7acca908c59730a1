package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * A stretch from one point to another, of known length, with a true course at every point of it.
 *
 * <p>A {@link RhumbLeg} keeps one course, which is what a paddler steers and what is straight on a
 * chart; a {@link GeodesicLeg} is the shortest line, and what a line of sight follows.
 *
 * <pre>{@code
 * Leg leg = RhumbLeg.between(landing, island);
 * leg.initialCourse().threeDigits(); // for example 075°
 * leg.length().inNauticalMiles(1); // for example 5.2 NM
 * }</pre>
 */
public sealed interface Leg extends Serializable permits RhumbLeg, GeodesicLeg {

  /**
   * The figure of the earth that the leg lies on.
   *
   * @return the ellipsoid; WGS84 unless the leg was made on another
   */
  Ellipsoid ellipsoid();

  /**
   * Where the leg begins.
   *
   * @return the start
   */
  Position start();

  /**
   * Where the leg ends.
   *
   * @return the end
   */
  Position end();

  /**
   * How long the leg is over the ground.
   *
   * @return the length, at least 0
   */
  Distance length();

  /**
   * The true course at the start.
   *
   * @return the course; true north on a leg between two equal points
   */
  TrueBearing initialCourse();

  /**
   * The true course at the end.
   *
   * @return the course on arrival, equal to the initial course on a rhumb line
   */
  TrueBearing finalCourse();

  /**
   * The point some way along.
   *
   * @param fromStart distance from the start; beyond the length, or negative, gives a point of the
   *     line extended
   * @return the point
   * @throws IllegalArgumentException if a rhumb line does not reach so far, because it ends at a
   *     pole
   */
  Position pointAt(Distance fromStart);

  /**
   * The true course some way along.
   *
   * @param fromStart distance from the start; may lie outside the leg
   * @return the course there
   * @throws IllegalArgumentException if a rhumb line does not reach so far, because it ends at a
   *     pole
   */
  TrueBearing courseAt(Distance fromStart);

  /**
   * The same line the other way round.
   *
   * @return the leg from {@link #end} to {@link #start}
   */
  Leg reverse();

  /**
   * The line this leg is part of, without ends, with the start as its origin.
   *
   * @return the line, prepared for many points
   */
  Line line();

  /**
   * Points at even distances, both ends included.
   *
   * @param spacing distance from each point to the next, above 0; the last stretch is what is left;
   *     where that would be under a micrometre, the stretch before it is so much longer instead
   * @return the start, the points between, and the end
   * @throws IllegalArgumentException if the spacing is not above 0, or there would be more than a
   *     million points
   */
  default List<Position> wayPoints(Distance spacing) {
    return LegParts.wayPoints(this, spacing);
  }

  /**
   * The point half way along.
   *
   * @return the point at half the length
   */
  default Position midpoint() {
    return pointAtFraction(0.5);
  }

  /**
   * The point at a fraction of the length.
   *
   * @param fraction 0 for the start, 1 for the end; in [0, 1]
   * @return the point
   * @throws IllegalArgumentException if the fraction is NaN or out of range
   */
  default Position pointAtFraction(double fraction) {
    return LegParts.pointAtFraction(this, fraction);
  }

  /**
   * The same leg cut into parts of equal length.
   *
   * @param parts how many, in [1, 1 000 000]
   * @return legs of the same kind, each beginning where the one before ends; unmodifiable
   * @throws IllegalArgumentException if the number is out of range
   */
  List<? extends Leg> split(int parts);

  /**
   * The point of this leg that is closest to a position, over the ellipsoid.
   *
   * @param position the position, for example a rock
   * @return the closest point, which may be an end of the leg; where the position lies abeam, the
   *     foot of the perpendicular good to a micrometre
   */
  default ClosestPoint closestTo(Position position) {
    return ClosestPoint.search(line(), 0.0, length().metres(), position);
  }

  /**
   * The point of this leg from which a position lies abeam, at right angles to the course.
   *
   * @param position the position, for example a rock
   * @return that point, or empty if the position is closest to an end of the leg
   */
  default Optional<ClosestPoint> abeamOf(Position position) {
    ClosestPoint closest = closestTo(position);
    return closest.place() == ClosestPoint.Place.ABEAM ? Optional.of(closest) : Optional.empty();
  }

  /**
   * Where this leg meets another.
   *
   * @param other the other leg
   * @return the crossings in their order along this leg, ends included; perhaps none
   * @throws IllegalArgumentException if the legs lie on different ellipsoids
   */
  default Crossings crossings(Leg other) {
    return CrossingSearch.search(this, other);
  }
}
