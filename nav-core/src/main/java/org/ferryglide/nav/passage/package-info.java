/**
 * The passage: when to go, what happens hour by hour, and when to turn back.
 *
 * <p>The one idea to hold: the plan never says go. It says what would happen if everything were as
 * the tables have it, how far each thing is from the limits that the party has chosen, and what
 * could not be looked at. A check that could not be made never counts as one that holds.
 *
 * <pre>{@code
 * Passage passage =
 *     Passage.builder("Marrow Slip to Dunlathe", zone, party)
 *         .from(slip)
 *         .to(point)
 *         .to(dunlathe)
 *         .stream(stations)
 *         .build();
 * }</pre>
 *
 * <p>Official charts, tables, forecasts and the advice of the coastguard come first; local rules
 * and trained judgement decide.
 *
 * <p>In the handbook: <a href="../teach/doc-files/planning.html">planning</a>.
 */
@NullMarked
package org.ferryglide.nav.passage;

import org.jspecify.annotations.NullMarked;
