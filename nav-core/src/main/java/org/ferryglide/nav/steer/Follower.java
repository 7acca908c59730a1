package org.ferryglide.nav.steer;

import java.util.List;

/**
 * Follows a craft along a leg under one {@link Strategy}. Keeps a workspace, so that one object
 * serves one thread; it may follow one leg after another.
 */
sealed interface Follower
    permits ConstantHeading, HeldTrack.TrackHolder, Pursuit, NewHeadings, QuickestPath {

  /**
   * Follows the craft from the start of a leg.
   *
   * @param frame the leg
   * @param departure when it starts, seconds since 1970
   * @param limit when it must be over, seconds since 1970
   */
  Followed follow(LegFrame frame, double departure, double limit);

  /** Refuses a leg with an end where nobody can be. */
  default void refuseEnds(LegFrame frame) {}

  /**
   * The quickest way and others that take little longer, quickest first.
   *
   * @param frame the leg
   * @param departure when it starts, seconds since 1970
   * @param limit when it must be over, seconds since 1970
   * @param most how many at most
   * @return none but from a strategy that looks for ways
   */
  default List<Followed> ways(LegFrame frame, double departure, double limit, int most) {
    return List.of();
  }

  /** Whether each segment of a track is followed on one heading. */
  default boolean holdsHeadings() {
    return false;
  }

  /**
   * The arrival alone, without a track or a reason.
   *
   * @param frame the leg
   * @param departure when it starts, seconds since 1970
   * @param limit when it must be over, seconds since 1970
   * @return seconds since 1970; NaN if the end is not reached
   */
  default double arrival(LegFrame frame, double departure, double limit) {
    GroundTrack track = follow(frame, departure, limit).track();
    return track == null ? Double.NaN : track.endSeconds();
  }

  /**
   * The same as {@link #follow}, but the track stands only until the next leg is followed.
   *
   * @param frame the leg
   * @param departure when it starts, seconds since 1970
   * @param limit when it must be over, seconds since 1970
   */
  default Followed passing(LegFrame frame, double departure, double limit) {
    return follow(frame, departure, limit);
  }
}
