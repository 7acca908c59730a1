package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.WindAgainstStream;

/**
 * How a leg is steered.
 *
 * <pre>{@code
 * CourseToSteer solver = CourseToSteer.with(craft, stream).withStrategy(Strategy.trackHeld());
 * }</pre>
 */
public final class Strategy implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Strategy CONSTANT_HEADING = new Strategy(Kind.CONSTANT_HEADING);
  private static final Strategy TRACK_HELD = new Strategy(Kind.TRACK_HELD);
  private static final Strategy BOW_ON_TARGET = new Strategy(Kind.BOW_ON_TARGET);

  /** What a strategy does; each kind knows its words and how to follow a craft. */
  private enum Kind {
    CONSTANT_HEADING {
      @Override
      String words(Strategy strategy) {
        return "constant heading";
      }

      @Override
      Follower follower(Strategy strategy, Motion motion) {
        return new ConstantHeading(motion);
      }
    },
    TRACK_HELD {
      @Override
      String words(Strategy strategy) {
        return "track held";
      }

      @Override
      Follower follower(Strategy strategy, Motion motion) {
        return new HeldTrack.TrackHolder(motion);
      }
    },
    HEADING_EVERY {
      @Override
      String words(Strategy strategy) {
        return "a new heading every " + strategy.interval;
      }

      @Override
      Follower follower(Strategy strategy, Motion motion) {
        return NewHeadings.every(motion, Seconds.of(strategy.interval));
      }
    },
    HEADINGS_AT {
      @Override
      String words(Strategy strategy) {
        return "new headings at given times";
      }

      @Override
      Follower follower(Strategy strategy, Motion motion) {
        return NewHeadings.at(
            motion, strategy.times.stream().mapToDouble(EpochSeconds::of).toArray());
      }
    },
    BOW_ON_TARGET {
      @Override
      String words(Strategy strategy) {
        return "bow kept on the target";
      }

      @Override
      Follower follower(Strategy strategy, Motion motion) {
        return new Pursuit(motion);
      }
    },
    QUICKEST {
      @Override
      String words(Strategy strategy) {
        return strategy.room.isOpen() ? "quickest path" : "quickest path round obstacles";
      }

      @Override
      Follower follower(Strategy strategy, Motion motion) {
        return new QuickestPath(motion, strategy.room);
      }
    };

    abstract String words(Strategy strategy);

    abstract Follower follower(Strategy strategy, Motion motion);
  }

  private final Kind kind;
  private final Duration interval;
  private final List<Instant> times;
  private final SeaRoom room;

  private Strategy(Kind kind) {
    this(kind, Duration.ZERO, List.of(), SeaRoom.open());
  }

  private Strategy(Kind kind, Duration interval, List<Instant> times, SeaRoom room) {
    this.kind = kind;
    this.interval = interval;
    this.times = times;
    this.room = room;
  }

  /**
   * A constant heading for the whole leg, chosen so that the end point is hit; of several, the one
   * that arrives first.
   *
   * <p>In a stream that is the same everywhere nothing is faster, however the stream changes with
   * time; the price is straying from the line, so check dangers along {@link
   * SteeredLeg#groundTrack}.
   *
   * @return the strategy
   */
  public static Strategy constantHeading() {
    return CONSTANT_HEADING;
  }

  /**
   * The line of the leg held by turning with the stream, as along a transit: safe near dangers, and
   * when the stream is not what the table says.
   *
   * @return the strategy
   */
  public static Strategy trackHeld() {
    return TRACK_HELD;
  }

  /**
   * A new heading at even intervals from the departure: between a constant heading and the track
   * held. During each interval the craft strays from the line, at its end it is back on it; during
   * the last the heading leads to the end of the leg.
   *
   * @param interval time between changes, at least a second: an hour is usual
   * @return the strategy
   * @throws IllegalArgumentException if the interval is less than a second
   */
  public static Strategy newHeadingEvery(Duration interval) {
    if (interval.compareTo(Duration.ofSeconds(1)) < 0) {
      throw new IllegalArgumentException(
          "interval between headings must be at least PT1S, but was " + interval);
    }
    return new Strategy(Kind.HEADING_EVERY, interval, List.of(), SeaRoom.open());
  }

  /**
   * A new heading at given times, each bringing the craft back onto the line by the next.
   *
   * @param times when to change, in order; those before the departure are ignored
   * @return the strategy
   * @throws IllegalArgumentException if the times do not ascend
   */
  public static Strategy newHeadingsAt(List<Instant> times) {
    List<Instant> copy = List.copyOf(times);
    for (int i = 1; i < copy.size(); i++) {
      if (!copy.get(i).isAfter(copy.get(i - 1))) {
        throw new IllegalArgumentException(
            "times of new headings must ascend, but "
                + copy.get(i)
                + " follows "
                + copy.get(i - 1));
      }
    }
    return new Strategy(Kind.HEADINGS_AT, Duration.ZERO, copy, SeaRoom.open());
  }

  /**
   * The bow kept on the target, whatever the stream does: what happens when no course is laid off.
   * The craft is swept down-stream in a curve and comes up to the target against the stream. In a
   * steady stream that is slower than the straight track, unless the stream sets dead ahead or
   * astern, when both are the same.
   *
   * @return the strategy
   */
  public static Strategy bowOnTarget() {
    return BOW_ON_TARGET;
  }

  /**
   * The quickest path of all through open water, in stream and wind: the heading changes all the
   * time where they vary from place to place. The hardest stream is often where it leads, and where
   * the sea is worst: look at {@link SteeredLeg#greatestStreamShare}, and keep out of dangers with
   * {@link #quickestAround}.
   *
   * <p>A front of arrival times over the area shows which ways there are; the best few are relaxed,
   * and in calm air an extremal is bent along the best of them. Where the search fails or finds
   * nothing quicker, a constant heading is the answer, with the note {@code
   * steer.quickest-constant-heading} if the search found a slower way.
   *
   * <p>In calm air the time is within 1e-6 of the closed forms for still water (geodesics of up to
   * 60 NM and 84° of latitude), a uniform stream, a linear shear, a parabolic channel and water
   * that turns like a wheel. In 214 cases of random smooth eddies (one to fifteen of up to 1.8
   * times the craft's speed, steady or turning with a tide, in calm air or in wind with leeway) it
   * always had an answer, never 0.1 % slower than a relaxation from many starts that shares no code
   * with it and is itself within 0.02 % of its limit; in wind never 0.03 %, steady in calm air
   * never 0.001 %. A screening of ten thousand further cases found some twelve slower than that, by
   * up to 14 %, where ways wind from eddy to eddy or streams outrun the craft and turn: those found
   * are mended but three of 0.15 to 1.3 %, others may be left. In still water none of 1100 random
   * channels, harbours and groups of islands was missed or 0.1 % late. At jumps of the stream from
   * place to place it is rougher: 0.13 % late at a gate that opens. Where ways wind the search
   * takes ten times as long as else, or more. The note {@code steer.quickest-error} says how far
   * two refinements of the path are apart, {@code steer.greatest-stream} where it is hardest.
   *
   * @return the strategy
   * @see <a href="https://doi.org/10.1002/zamm.19310110205">Zermelo (1931), ZAMM 11, 114-124</a>
   */
  public static Strategy quickest() {
    return quickestAround(List.of());
  }

  /**
   * The quickest path round obstacles; see {@link #quickest}. It is a chain of straight tracks.
   * Corners are passed 2 m off the lines of their edges, so draw the obstacles with the berth they
   * need.
   *
   * @param obstacles polygons that must not be crossed, each of at least three corners without the
   *     first one again at the end
   * @return the strategy
   * @throws IllegalArgumentException if a polygon has fewer than three corners or the same one
   *     twice running
   */
  public static Strategy quickestAround(List<List<Position>> obstacles) {
    return quickestIn(SeaRoom.open().withObstacles(obstacles));
  }

  static Strategy quickestIn(SeaRoom room) {
    return new Strategy(
        Kind.QUICKEST, Duration.ZERO, List.of(), Objects.requireNonNull(room, "room"));
  }

  /**
   * The same quickest path, kept out of more obstacles; see {@link #quickestAround}.
   *
   * @param obstacles polygons that must not be crossed either
   * @return the strategy
   * @throws IllegalArgumentException if a polygon has fewer than three corners or the same one
   *     twice running
   * @throws IllegalStateException if this is not the quickest path
   */
  public Strategy withObstacles(List<List<Position>> obstacles) {
    return quickestIn(quickestRoom().withObstacles(obstacles));
  }

  /**
   * The same quickest path, kept out of an area for a time, such as a firing range; where that bars
   * the way, it may hold its place and wait.
   *
   * @param area at least three corners, the first not repeated at the end
   * @param when from when until when it may not be entered
   * @return the strategy
   * @throws IllegalArgumentException if the polygon has fewer than three corners or the same one
   *     twice running
   * @throws IllegalStateException if this is not the quickest path
   */
  public Strategy withClosure(List<Position> area, TimeSpan when) {
    return quickestIn(quickestRoom().withClosure(area, when));
  }

  /**
   * The same quickest path, kept out of waters where the stream runs faster than the party accepts;
   * of several rates the least counts.
   *
   * @param rate the greatest rate the path may meet
   * @return the strategy
   * @throws IllegalStateException if this is not the quickest path
   */
  public Strategy withGreatestStream(Speed rate) {
    return quickestIn(quickestRoom().withGreatestStream(rate));
  }

  /**
   * The same quickest path, kept out of waters where the wind is against the stream.
   *
   * @param rough the wind and stream from which that matters to the party
   * @return the strategy
   * @throws IllegalStateException if this is not the quickest path
   */
  public Strategy withoutWindAgainstStream(WindAgainstStream rough) {
    return quickestIn(quickestRoom().withoutWindAgainstStream(rough));
  }

  private SeaRoom quickestRoom() {
    if (!isQuickest()) {
      throw new IllegalStateException(
          "only the quickest path can be kept out of waters, but the strategy was " + words());
    }
    return room;
  }

  /** Where the quickest path may go; everywhere under any other strategy. */
  SeaRoom room() {
    return room;
  }

  /**
   * Whether this is the quickest path, the only strategy that can be kept out of waters.
   *
   * @return true if it is
   */
  public boolean isQuickest() {
    return kind == Kind.QUICKEST;
  }

  /**
   * The time between headings of {@link #newHeadingEvery}.
   *
   * @return at least a second; empty under any other strategy
   */
  public Optional<Duration> interval() {
    return kind == Kind.HEADING_EVERY ? Optional.of(interval) : Optional.empty();
  }

  /**
   * The times of {@link #newHeadingsAt}.
   *
   * @return ascending; none under any other strategy; unmodifiable
   */
  public List<Instant> times() {
    return times;
  }

  /**
   * A few words for a card: {@code constant heading}.
   *
   * @return the strategy's name
   */
  public String words() {
    return kind.words(this);
  }

  /** What follows a craft under this strategy. */
  Follower follower(Motion motion) {
    return kind.follower(this, motion);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Strategy that
        && kind == that.kind
        && interval.equals(that.interval)
        && times.equals(that.times)
        && room.equals(that.room);
  }

  @Override
  public int hashCode() {
    return Objects.hash(kind.name(), interval, times, room);
  }

  @Override
  public String toString() {
    return words();
  }
}
