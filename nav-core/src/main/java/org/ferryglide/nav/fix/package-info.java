/**
 * Where am I: position lines, and the place on which they agree.
 *
 * <p>The one idea: every observation is a {@link PositionLine} with its own uncertainty, whatever
 * it was made of, and a fix is the place that all of them together make likeliest, with the region
 * that holds the true one.
 *
 * <pre>{@code
 * List<PositionLine> lines =
 *     List.of(
 *         BearingLine.ofMagnetic("tower", tower, MagneticBearing.ofDegrees(48), variation, 3.0),
 *         BearingLine.ofMagnetic("skerry", skerry, MagneticBearing.ofDegrees(121), variation, 3.0));
 * Fix fix = FixSolver.standard().solve(lines).orElseThrow();
 * fix.region().reach(); // in 95 of 100 cases the true position is no further away
 * }</pre>
 *
 * <p>Uncertainties are one standard deviation unless a name says otherwise, errors are taken to be
 * normally distributed, directions are true, east and north are metres on the plane that touches
 * the ellipsoid at the place.
 *
 * <p>Official charts and tables and one's own eyes come before anything computed here.
 *
 * <p>In the handbook: <a href="../teach/doc-files/reckoning.html">reckoning and fixing</a>.
 */
@NullMarked
package org.ferryglide.nav.fix;

import org.jspecify.annotations.NullMarked;
