/**
 * The search for the quickest path of all, below the room that offers it; not exported.
 *
 * <p>The one idea to hold: the front of all places that can be reached by a given time spreads over
 * the water like a wave, and the quickest path is the one along which it first reaches the goal.
 * Craft, stream and wind are known here only through {@link
 * org.ferryglide.nav.quickest.CraftMotion}, so that the search can be exchanged without a change to
 * its callers, or to it when the craft learns something new:
 *
 * <pre>{@code
 * QuickestSearch search = new QuickestSearch(motion, Waters.open(), start, goal, departure, 86400.0);
 * List<FoundWay> ways = search.ways(1);
 * }</pre>
 */
@NullMarked
package org.ferryglide.nav.quickest;

import org.jspecify.annotations.NullMarked;
