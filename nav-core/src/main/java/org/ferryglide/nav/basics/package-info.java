/**
 * What every package of both modules rests on: checks of arguments, turns of angles, instants and
 * durations as seconds, many rows shared out over the processors. Exported to nav-tide alone; no
 * user needs it.
 */
@NullMarked
package org.ferryglide.nav.basics;

import org.jspecify.annotations.NullMarked;
