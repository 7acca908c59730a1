/**
 * Legs over the earth: how far, on what course, and where along them.
 *
 * <p>The one idea: between two points there are two lines worth drawing. The {@link RhumbLeg} keeps
 * one true course, so that a paddler can steer it; the {@link GeodesicLeg} is the shortest. Over a
 * kayak's leg they differ by less than a compass can show. Both are measured on the WGS84
 * ellipsoid.
 *
 * <pre>{@code
 * RhumbLeg leg = RhumbLeg.between(Position.ofDegrees(50.105, -5.535), Position.ofDegrees(50.2, -5.43));
 * leg.course().threeDigits();
 * leg.length().inNauticalMiles(2);
 * }</pre>
 *
 * <p>Values stand at the surface; the arithmetic is in {@link RhumbLines} and {@link Geodesics}, on
 * doubles in degrees and metres. Longitudes wrap; legs may cross the date line and the equator.
 */
@NullMarked
package org.ferryglide.nav.geodesy;

import org.jspecify.annotations.NullMarked;
