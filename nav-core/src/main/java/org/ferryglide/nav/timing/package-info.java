/**
 * When to go and when to turn: searches over departures, and the conditions they must meet.
 *
 * <p>The one idea to hold: everything here asks the same question again and again, "leaving then,
 * when does one arrive, and are the conditions met?", and finds where the answer changes. {@link
 * org.ferryglide.nav.timing.DepartureSearch} tries weeks of departures against {@linkplain
 * org.ferryglide.nav.timing.Condition conditions}, {@link org.ferryglide.nav.timing.PassageTiming}
 * finds one departure for a purpose, {@link org.ferryglide.nav.timing.TurnBack} the moment from
 * which home is out of reach:
 *
 * <pre>{@code
 * Departures departures =
 *     DepartureSearch.of(solver, route)
 *         .withCondition(Condition.during("daylight", daylight, Duration.ofHours(1)))
 *         .between(firstOfJune, fifteenthOfJune);
 * departures.windows(); // when one may leave
 * }</pre>
 *
 * <p>What was not checked never counts as holding. Times are instants, in the kernels seconds since
 * 1970-01-01T00:00:00Z. A window is only as good as the tables behind it: leave early in it, look
 * at the sea, and mind the forecast and the coastguard's advice.
 *
 * <p>In the handbook: <a href="../teach/doc-files/planning.html">planning</a>.
 */
@NullMarked
package org.ferryglide.nav.timing;

import org.jspecify.annotations.NullMarked;
