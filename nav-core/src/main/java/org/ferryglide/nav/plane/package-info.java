/**
 * The plane on which errors are counted: metres east and north of a place, the normal distribution,
 * and the weighing of two findings. An engine of the rooms above, not exported.
 */
@NullMarked
package org.ferryglide.nav.plane;

import org.jspecify.annotations.NullMarked;
