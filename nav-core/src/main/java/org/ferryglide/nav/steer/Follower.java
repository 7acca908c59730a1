package org.ferryglide.nav.steer;

/**
 * Follows a craft along a leg under one {@link Strategy}. Keeps room to work in, so that one object
 * serves one thread; it may follow one leg after another.
 */
sealed interface Follower
    permits OneHeading, HeldTrack.TrackHolder, Pursuit, NewHeadings, QuickestPath {

  /**
   * Follows the craft from the start of a leg.
   *
   * @param frame the leg
   * @param departure when it starts, seconds since 1970
   * @param limit when it must be over, seconds since 1970
   */
  Followed follow(LegFrame frame, double departure, double limit);
}
