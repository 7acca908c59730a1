package org.ferryglide.nav.geodesy;

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
public sealed interface Leg permits RhumbLeg, GeodesicLeg {

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
   * @return the course; true north if the leg has no length
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
   *     line carried on
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
   */
  TrueBearing courseAt(Distance fromStart);

  /**
   * The same line the other way round.
   *
   * @return the leg from {@link #end} to {@link #start}
   */
  Leg reverse();
}
