package org.ferryglide.nav.steer;

import java.io.Serializable;

/**
 * How a leg is steered.
 *
 * <pre>{@code
 * CourseToSteer solver = CourseToSteer.with(craft, stream).withStrategy(Strategy.trackHeld());
 * }</pre>
 */
public sealed interface Strategy extends Serializable
    permits Strategy.OneHeadingHeld, Strategy.TrackHeld {

  /**
   * One heading held from start to end.
   *
   * @return the strategy
   */
  static Strategy oneHeading() {
    return OneHeadingHeld.INSTANCE;
  }

  /**
   * The track held throughout, as along a transit.
   *
   * @return the strategy
   */
  static Strategy trackHeld() {
    return TrackHeld.INSTANCE;
  }

  /**
   * A few words for a card: {@code one heading held}.
   *
   * @return the strategy's name
   */
  String words();

  /**
   * One heading held for the whole leg, chosen so that the end point is hit; of several, the one
   * that arrives first.
   *
   * <p>In a stream that is the same everywhere nothing is faster, however the stream changes with
   * time; the price is straying from the line, so check dangers along {@link
   * SteeredLeg#groundTrack}.
   *
   * <pre>{@code
   * Strategy strategy = Strategy.oneHeading();
   * }</pre>
   */
  enum OneHeadingHeld implements Strategy {
    /** The one there is. */
    INSTANCE;

    @Override
    public String words() {
      return "one heading held";
    }
  }

  /**
   * The line of the leg held by turning with the stream, as along a transit: safe near dangers, and
   * when the stream is not what the table says.
   *
   * <pre>{@code
   * Strategy strategy = Strategy.trackHeld();
   * }</pre>
   */
  enum TrackHeld implements Strategy {
    /** The one there is. */
    INSTANCE;

    @Override
    public String words() {
      return "track held";
    }
  }
}
