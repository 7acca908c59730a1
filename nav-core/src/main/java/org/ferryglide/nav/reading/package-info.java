/**
 * How text and files are read and doubted: marks and numbers read character by character, the
 * problems of a file gathered until it is refused, judgements of what looks wrong. Exported to
 * nav-tide alone; no user needs it.
 */
@NullMarked
package org.ferryglide.nav.reading;

import org.jspecify.annotations.NullMarked;
