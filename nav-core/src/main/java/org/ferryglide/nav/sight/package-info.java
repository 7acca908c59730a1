/**
 * What a mark in sight tells by itself: how far off it is, whether it can be seen at all, and on
 * which side of a line it puts the observer.
 *
 * <p>The one idea: one angle and one length known make a second length known; each figure here
 * comes with the conditions under which it holds.
 *
 * <pre>{@code
 * DistanceOff.byVerticalAngle(Distance.ofMetres(40), 0.5); // 40 m high, half a degree: 2.5 NM
 * Refraction.ONE_SEVENTH.horizon(Distance.ofMetres(0.9)); // seated in a kayak: 1.97 NM
 * BowBearings.abeam(run, 45, 90); // the distance run is the distance off abeam
 * }</pre>
 *
 * <p>Directions are true and distances are on the water unless a name says otherwise.
 *
 * <p>Official charts and light lists and one's own eyes come before anything computed here.
 *
 * <p>In the handbook: <a href="../teach/doc-files/reckoning.html">reckoning and fixing</a>.
 */
@NullMarked
package org.ferryglide.nav.sight;

import org.jspecify.annotations.NullMarked;
