package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;

/**
 * A time at which the tide passes a level.
 *
 * <pre>{@code
 * for (TideCrossing crossing : search.crossings().items()) {
 *   System.out.println((crossing.rising() ? "covers " : "uncovers ") + crossing.time());
 * }
 * }</pre>
 *
 * @param time when the tide passes the level
 * @param rising true if it goes up through the level
 */
record TideCrossing(Instant time, boolean rising) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes both parts.
   *
   * @param time when the tide passes the level
   * @param rising true if it goes up through the level
   */
  public TideCrossing {
    Objects.requireNonNull(time, "time");
  }
}
