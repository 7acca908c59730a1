/**
 * Legs over the earth: how far, on what course, what lies off them, where they meet.
 *
 * <p>The one idea: between two points there are two lines worth drawing. The {@link RhumbLeg} keeps
 * one true course, so that a paddler can steer it; the {@link GeodesicLeg} is the shortest, and
 * what a line of sight follows. Over a kayak's leg they differ by less than a compass can show
 * ({@link LegComparison} says by how much). Both are {@link Leg}s, measured on the WGS84 ellipsoid,
 * and every question is asked of both alike:
 *
 * <pre>{@code
 * RhumbLeg leg = RhumbLeg.between(landing, island);
 * leg.course().threeDigits(); // 075°
 * leg.length().inNauticalMiles(2); // 5.21 NM
 * leg.closestTo(rock).crossTrack(); // to starboard positive
 * leg.crossings(ferryRoute).points(); // in their order along the leg
 * leg.line().closestTo(rock); // the same for the line without ends
 * }</pre>
 *
 * <p>A shore followed is a {@link CoastStretch}: a distance and a time without one course. {@link
 * ClosestApproach} is for marks and for vessels that move. {@link GreatCircle} is the sphere of the
 * handbooks.
 *
 * <p>Conventions: latitude north positive, longitude east positive and wrapping, so that legs may
 * cross the date line; distances along count from the start; cross-track is positive to the right
 * of the course. These types hold values; the arithmetic is in {@link RhumbLines}, {@link
 * Geodesics} and {@link LegComparisons}, on doubles in degrees and metres.
 *
 * <p>In the handbook: <a href="../teach/doc-files/legs.html">legs</a>.
 */
@NullMarked
package org.ferryglide.nav.geodesy;

import org.jspecify.annotations.NullMarked;
