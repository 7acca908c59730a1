/** Many rows shared out over the processors. An engine of the rooms above, not exported. */
@NullMarked
package org.ferryglide.nav.rows;

import org.jspecify.annotations.NullMarked;
