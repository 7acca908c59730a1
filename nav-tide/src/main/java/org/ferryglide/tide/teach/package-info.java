/**
 * Problems of tides and tidal streams as they are worked by hand from tables, with the slips that
 * people make in them.
 *
 * <pre>{@code
 * Problem problem =
 *     TideProblems.byTwelfths(
 *         new TideProblems.Water(370.0, Distance.ofMetres(1.2)),
 *         new TideProblems.Water(742.0, Distance.ofMetres(5.4)),
 *         540.0);
 * System.out.println(problem.working());
 * }</pre>
 *
 * <p>Official tide tables come first.
 *
 * <p>The handbook in {@link org.ferryglide.nav.teach} has tides and streams with formula, limits,
 * sources and a worked example.
 */
@NullMarked
package org.ferryglide.tide.teach;

import org.jspecify.annotations.NullMarked;
