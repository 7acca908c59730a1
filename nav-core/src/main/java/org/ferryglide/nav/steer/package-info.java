/**
 * Which way to point the bow so that paddling and stream together follow the leg.
 *
 * <p>The one idea to hold: the craft moves through the water, the water moves over the ground, and
 * a leg is laid off over the ground. A course to steer is the heading for which the two add up to
 * the leg. With one steady stream that is the current triangle ({@link
 * org.ferryglide.nav.steer.CurrentTriangle}); with a stream that changes by the hour and from place
 * to place it is {@link org.ferryglide.nav.steer.CourseToSteer}, which follows the craft over the
 * ellipsoid under one of several {@linkplain org.ferryglide.nav.steer.Strategy strategies}:
 *
 * <pre>{@code
 * CourseToSteer solver = CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3.5)), stream);
 * String line =
 *     solver
 *         .solve(leg, departure)
 *         .match(
 *             steered -> steered.courseToSteer().threeDigits() + ", there by " + steered.arrival(),
 *             notPossible -> "not possible: " + notPossible.message());
 * }</pre>
 *
 * <p>"Not possible" is an answer, not an exception: every solver returns an {@link
 * org.ferryglide.nav.note.Outcome} of exactly two cases. A plan that spends too much of the craft's
 * speed against the stream is refused too, within {@link org.ferryglide.nav.steer.SteeringLimits}
 * that the caller may move.
 *
 * <p>When to go and when to turn back are questions for the package {@code timing}; what it asks
 * thousands of times goes through {@link org.ferryglide.nav.steer.Arrivals}. Crossing a separation
 * scheme is {@link org.ferryglide.nav.steer.SeparationCrossing}.
 *
 * <p>Headings are true. Leeway and ferry angle are positive to starboard, distances off the line
 * positive to the right. The stream is named by where it goes, the wind by where it comes from.
 * Times are instants, in the kernels seconds since 1970-01-01T00:00:00Z.
 *
 * <p>What is computed here is only as good as the stream it is given, and tables predict what
 * weather then moves. Check every course against the official charts and tables, the forecast, the
 * coastguard's advice and a look at the sea.
 *
 * <p>In the handbook: <a href="../teach/doc-files/steering.html">steering</a>.
 */
@NullMarked
package org.ferryglide.nav.steer;

import org.jspecify.annotations.NullMarked;
