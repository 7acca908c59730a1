/**
 * Where the log leads, and how far off that may be.
 *
 * <p>The one idea: a position is worth nothing without its uncertainty. Every way of finding one
 * ends in an {@link EstimatedPosition}, a place with a {@link Covariance}, so that the reckoning, a
 * fix and the chance of finding the next mark all state it in the same way.
 *
 * <pre>{@code
 * DeadReckoning reckoning = DeadReckoning.of(slip, log, noon, streamField);
 * EstimatedPosition now =
 *     reckoning
 *         .estimatedPosition(EstimatedPosition.exactly(slip), ErrorModel.usual())
 *         .orElseThrow();
 * now.covariance().ellipse(0.95); // the ellipse that holds the true position in 95 of 100 cases
 * }</pre>
 *
 * <p>Uncertainties are one standard deviation unless a name says otherwise, errors are taken to be
 * normally distributed, directions are true, east and north are metres on the plane that touches
 * the ellipsoid at the place. Figures marked common practice have no source and are meant to be
 * replaced by one's own.
 *
 * <p>Official charts and tables and one's own eyes come before anything computed here.
 *
 * <p>In the handbook: <a href="../teach/doc-files/reckoning.html">reckoning</a> and <a
 * href="../teach/doc-files/uncertainty.html">uncertainty</a>.
 */
@NullMarked
package org.ferryglide.nav.reckon;

import org.jspecify.annotations.NullMarked;
