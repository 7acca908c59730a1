/**
 * Will I find it: the chance of finding a mark at the end of a leg, aiming off so as to know on
 * which side one has missed it, and what to do when it is not there.
 *
 * <p>The one idea: a covariance and a course say how likely each side is, before one looks, and
 * after nothing was seen.
 *
 * <pre>{@code
 * AimOff aim = AimOff.to(leg, budget.covariance().standardDeviationAcross(course), 0.95, side);
 * TargetChance chance = TargetChance.of(budget.covariance(), course, visibility);
 * chance.whenPassing(); // 0.59, going on until it must be abeam
 * }</pre>
 *
 * <p>Uncertainties are one standard deviation unless a name says otherwise, errors are taken to be
 * normally distributed, offsets from a target are to its right positive.
 *
 * <p>Official charts and one's own eyes come before anything computed here.
 *
 * <p>In the handbook: <a href="../teach/doc-files/landfall.html">landfall</a>.
 */
@NullMarked
package org.ferryglide.nav.landfall;

import org.jspecify.annotations.NullMarked;
