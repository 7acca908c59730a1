package org.ferryglide.nav.landfall;

/**
 * A side of the track, looking along it.
 *
 * <pre>{@code
 * Side turn = aim.side().opposite(); // which way to turn at the coast
 * }</pre>
 */
public enum Side {
  /** To the left of the track. */
  LEFT,
  /** To the right of the track. */
  RIGHT;

  /**
   * The other side: where the target lies from where one aims.
   *
   * @return right for left, left for right
   */
  public Side opposite() {
    return this == LEFT ? RIGHT : LEFT;
  }
}
