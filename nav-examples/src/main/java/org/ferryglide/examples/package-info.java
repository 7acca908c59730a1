/** The main job from end to end, and small programs that use the library. */
@NullMarked
package org.ferryglide.examples;

import org.jspecify.annotations.NullMarked;
