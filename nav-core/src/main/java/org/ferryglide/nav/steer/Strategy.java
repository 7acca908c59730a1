package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.Obstacles;

/**
 * How a leg is steered.
 *
 * <pre>{@code
 * CourseToSteer solver = CourseToSteer.with(craft, stream).withStrategy(Strategy.trackHeld());
 * }</pre>
 */
public sealed interface Strategy extends Serializable
    permits Strategy.OneHeadingHeld,
        Strategy.TrackHeld,
        Strategy.HeadingEvery,
        Strategy.HeadingsAt,
        Strategy.BowOnTarget,
        Strategy.Quickest {

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
   * A new heading at even intervals from the departure, each bringing the craft back onto the line
   * by its end.
   *
   * @param interval time between changes, at least a second: an hour is usual
   * @return the strategy
   * @throws IllegalArgumentException if the interval is less than a second
   */
  static Strategy newHeadingEvery(Duration interval) {
    return new HeadingEvery(interval);
  }

  /**
   * A new heading at given times, each bringing the craft back onto the line by the next.
   *
   * @param times when to change, in order; those before the departure are left out of account
   * @return the strategy
   * @throws IllegalArgumentException if the times do not ascend
   */
  static Strategy newHeadingsAt(List<Instant> times) {
    return new HeadingsAt(times);
  }

  /**
   * The bow kept on the target, whatever the stream does: what comes of not laying off a course.
   *
   * @return the strategy
   */
  static Strategy bowOnTarget() {
    return BowOnTarget.INSTANCE;
  }

  /**
   * The quickest path of all through open water, in calm air: the heading changes all the time
   * where the stream varies from place to place. A craft that the wind changes is refused with
   * {@link Reason#WIND_NOT_ALLOWED_FOR}. See {@link Quickest} for how far the answer may be from
   * the best.
   *
   * @return the strategy
   */
  static Strategy quickest() {
    return new Quickest(List.of());
  }

  /**
   * The quickest path round obstacles, in calm air. Corners are passed at 2 m, so draw the
   * obstacles with the berth they need. An island of four corners takes a tenth to half a second,
   * one of sixty corners seconds, one of three hundred most of a minute.
   *
   * @param obstacles polygons that must not be crossed, each of at least three corners without the
   *     first one again at the end
   * @return the strategy
   * @throws IllegalArgumentException if a polygon has fewer than three corners or the same one
   *     twice running
   */
  static Strategy quickestAround(List<List<Position>> obstacles) {
    return new Quickest(obstacles);
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

  /**
   * A new heading at even intervals from the departure: between one heading held and the track
   * held. During each interval the craft strays from the line, at its end it is back on it; during
   * the last the heading leads to the end of the leg.
   *
   * <pre>{@code
   * Strategy strategy = Strategy.newHeadingEvery(Duration.ofHours(1));
   * }</pre>
   *
   * @param interval time between changes, at least a second
   */
  record HeadingEvery(Duration interval) implements Strategy {
    private static final long serialVersionUID = 1L;

    /**
     * Takes the interval; {@link Strategy#newHeadingEvery} reads better.
     *
     * @param interval time between changes, at least a second
     * @throws IllegalArgumentException if the interval is less than a second
     */
    public HeadingEvery {
      if (interval.compareTo(Duration.ofSeconds(1)) < 0) {
        throw new IllegalArgumentException(
            "interval between headings must be at least PT1S, but was " + interval);
      }
    }

    @Override
    public String words() {
      return "a new heading every " + interval;
    }
  }

  /**
   * A new heading at given times, back on the line at each of them.
   *
   * <pre>{@code
   * Strategy strategy = Strategy.newHeadingsAt(List.of(turnOfTheStream));
   * }</pre>
   *
   * @param times when to change, in order
   */
  record HeadingsAt(List<Instant> times) implements Strategy {
    private static final long serialVersionUID = 1L;

    /**
     * Takes the times, copied; {@link Strategy#newHeadingsAt} reads better.
     *
     * @param times when to change, in order
     * @throws IllegalArgumentException if the times do not ascend
     */
    public HeadingsAt {
      times = List.copyOf(times);
      for (int i = 1; i < times.size(); i++) {
        if (!times.get(i).isAfter(times.get(i - 1))) {
          throw new IllegalArgumentException(
              "times of new headings must ascend, but "
                  + times.get(i)
                  + " follows "
                  + times.get(i - 1));
        }
      }
    }

    @Override
    public String words() {
      return "new headings at given times";
    }
  }

  /**
   * The bow kept on the target: the craft is swept down-stream in a curve and comes up to the
   * target against the stream. It is always slower than the straight track and is here to show by
   * how much.
   *
   * <pre>{@code
   * Strategy strategy = Strategy.bowOnTarget();
   * }</pre>
   */
  enum BowOnTarget implements Strategy {
    /** The one there is. */
    INSTANCE;

    @Override
    public String words() {
      return "bow kept on the target";
    }
  }

  /**
   * The quickest path of all; see {@link #quickest} and {@link #quickestAround}.
   *
   * <p>Pontryagin's extremals are launched in every direction and their front is watched as it
   * sweeps over the end of the leg, so that the quickest is told from the paths that are only
   * quicker than their neighbours. Where that search fails or finds nothing quicker, one heading
   * held is the answer, with the note {@code steer.quickest-one-heading}.
   *
   * <p>The time is within 1e-4 of the closed forms for a uniform stream, a linear shear and a
   * parabolic channel.
   *
   * <p>Limit: among eddies the answer can be much slower than the best, because launched paths that
   * part widely before they reach the end of the leg are not looked between. Measured against a
   * front followed on a grid, as the share of cases more than 1 % slow and the worst: one eddy of
   * 0.95 to 1.5 times the craft's speed 12 of 200, 20 %; one to four eddies of 0.5 to 1.5 times 13
   * of 100, 86 %; five to eight 47 of 100, 113 %; eight to fifteen small ones 57 to 82 of 100, 73
   * %.
   *
   * @param obstacles polygons that must not be crossed
   * @see <a href="https://doi.org/10.1002/zamm.19310110205">Zermelo (1931), ZAMM 11, 114-124</a>
   */
  record Quickest(List<List<Position>> obstacles) implements Strategy {
    private static final long serialVersionUID = 1L;

    /**
     * Takes the obstacles, copied.
     *
     * @param obstacles polygons of at least three corners
     * @throws IllegalArgumentException if a polygon has fewer than three corners or the same one
     *     twice running
     */
    public Quickest {
      List<List<Position>> copies = new ArrayList<>();
      for (List<Position> obstacle : obstacles) {
        copies.add(List.copyOf(obstacle));
      }
      obstacles = List.copyOf(copies);
      Obstacles.of(obstacles);
    }

    @Override
    public String words() {
      return obstacles.isEmpty() ? "quickest path" : "quickest path round obstacles";
    }
  }
}
