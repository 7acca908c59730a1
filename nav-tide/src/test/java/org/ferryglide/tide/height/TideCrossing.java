package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.Instant;

/** A time at which the tide passes a level, and whether it goes up through it. */
record TideCrossing(Instant time, boolean rising) implements Serializable {
  private static final long serialVersionUID = 1L;
}
