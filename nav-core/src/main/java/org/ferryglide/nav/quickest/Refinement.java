package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Makes the best of a front's ways: each is relaxed in few tracks, the best in more and more, and
 * those that are slower or the same as a better one are dropped on the way. Not thread-safe.
 */
final class Refinement {
  private static final int[] TRACKS = {32, 64, 128};

  /** Waits of the front are in steps of half of this. */
  private static final double LONGEST_WAIT_SECONDS = 1800.0;

  /** Cut into tracks too few for its bends a way takes longer by more than this. */
  private static final double SPOILT = 1.005;

  /** Steps in which tracks are timed, on the line from start to goal. */
  private static final int[] STEPS = {64, 64, 128};

  /** What a round of relaxation must gain to be followed by another, as a share of the time. */
  private static final double[] SETTLED_SHARE = {1e-5, 1e-6, 1e-8};

  /**
   * Halving all tracks gains a quarter of what it gained before: where the last gained more than
   * this share of the time, they are halved once more.
   */
  static final double MUCH_GAINED = 1e-3;

  /** Into so many times the tracks of the finest level at most. */
  private static final int MOST_TIMES_FINER = 4;

  /** How far aside a way is looked for among land when it is refined, as a share of the leg. */
  private static final double LATER_RIM_SHARE = 0.01;

  private static final int FIRST_SWEEPS = 6;

  /** So many rounds of tents a way is moved at most that must never leave what can be made. */
  private static final int TENT_ROUNDS = 60;

  /** The same for a way that winds from eddy to eddy, where Newton's method gets stuck. */
  private static final int WINDING_ROUNDS = 20;

  /** A round of them that gains less than this share of the time is the last. */
  private static final double TENTS_SETTLED_SHARE = 1e-5;

  /** After the first relaxation ways are dropped that are slower than the best by more. */
  private static final double[] DROPPED_SHARE = {0.02, 0.004};

  /** Where other ways are wanted too, those are that take so much longer at most. */
  private static final double OTHERS_SHARE = 0.02;

  /** Ways nearer each other than this share of the leg are one, once they are refined. */
  private static final double APART_SHARE = 0.02;

  /** Before, in few tracks, those near each other may yet settle on different sides of a stream. */
  private static final double SAME_SHARE = 0.004;

  private final TrackTimes times;
  private final Waters waters;
  private final SearchPlane plane;
  private final RoughWays roughWays;
  private final Relaxation relaxation;
  private final Tents tents;
  private final Corridor corridor;

  /** Whether ways are wanted that are longer than the best. */
  private boolean others;

  /** Whether some way that was looked at last winds. */
  private boolean winding;

  Refinement(
      TrackTimes times,
      Waters waters,
      SearchPlane plane,
      RoughWays roughWays,
      LandCorners corners) {
    this.times = times;
    this.waters = waters;
    this.plane = plane;
    this.roughWays = roughWays;
    relaxation = new Relaxation(times);
    tents = new Tents(times);
    corridor = new Corridor(times, corners);
  }

  /** Keeps ways too that are no more than a little longer than the best. */
  void keepOthers() {
    others = true;
  }

  /** Whether some way refined last needed more tracks than others, since it winds. */
  boolean isWinding() {
    return winding;
  }

  /** The best of some ways in the most tracks, the quickest first; none if none can be made. */
  List<TimedWay> refined(List<Way> rough) {
    winding = false;
    List<TimedWay> ways = new ArrayList<>();
    for (Way way : rough) {
      TimedWay timed = settled(way, way, 0);
      if (timed != null) {
        ways.add(timed);
      }
    }
    for (int level = 1; level < TRACKS.length; level++) {
      ways = finer(ways, level);
    }
    return distinct(ways.isEmpty() ? salvaged(rough) : ways);
  }

  /**
   * Ways through streams that outrun the craft and turn: where none came out that can be made, each
   * is relaxed in all numbers of tracks, since some lead to one that can.
   */
  private List<TimedWay> salvaged(List<Way> rough) {
    List<TimedWay> made = new ArrayList<>();
    for (Way way : rough) {
      for (int level = 0; level < TRACKS.length; level++) {
        times.stepAtMost(plane.length / STEPS[level]);
        Way even = way.evenly(TRACKS[level], times);
        Way relaxed = relaxation.relaxed(even, FIRST_SWEEPS, SETTLED_SHARE[0]);
        times.stepAtMost(plane.length / STEPS[TRACKS.length - 1]);
        double seconds = relaxed.arrival(times);
        if (!Double.isNaN(seconds)) {
          made.add(new TimedWay(relaxed, seconds, Double.NaN, way));
        }
      }
    }
    List<TimedWay> finest = finer(made, TRACKS.length - 1);
    if (!finest.isEmpty() || !made.isEmpty()) {
      return finest.isEmpty() ? made : finest;
    }
    for (Way way : rough) { // round a gap in the data the places of the front stay where they are
      Way relaxed = relaxation.relaxed(way, 0, SETTLED_SHARE[0]);
      double seconds = relaxed.arrival(times);
      if (!Double.isNaN(seconds)) {
        made.add(new TimedWay(relaxed, seconds, Double.NaN, way));
      }
    }
    made.sort(Comparator.comparingDouble(timed -> timed.seconds()));
    return made;
  }

  private List<TimedWay> finer(List<TimedWay> ways, int level) {
    ways.sort(Comparator.comparingDouble(TimedWay::expected));
    List<TimedWay> next = new ArrayList<>();
    for (TimedWay timed : ways) {
      double longer = others ? OTHERS_SHARE : DROPPED_SHARE[level - 1];
      // in few tracks, times beyond what can be made tell little
      boolean isLong = timed.expected() > (1.0 + longer) * ways.get(0).expected();
      if (isLong && !(level == 1 && isHardlyMade(timed.rough()))) {
        continue;
      }
      winding |= winds(timed.way(), level - 1);
      if (isOther(timed, next, SAME_SHARE)) {
        TimedWay settled = settled(timed.rough(), timed.way(), level);
        if (settled != null) {
          // what a time beyond what can be made seems to lose is no gain
          boolean known = level > 1 || !Double.isNaN(timed.way().arrival(times));
          double gained = known ? timed.seconds() - settled.seconds() : Double.NaN;
          next.add(new TimedWay(settled.way(), settled.seconds(), gained, timed.rough()));
        }
      }
    }
    next.sort(Comparator.comparingDouble(TimedWay::expected));
    return next;
  }

  private boolean isOther(TimedWay timed, List<TimedWay> held, double share) {
    for (TimedWay one : held) {
      if (one.way().apart(timed.way()) <= share * plane.length) {
        return false;
      }
    }
    return true;
  }

  /** Those of the ways that are none of the better ones over again. */
  private List<TimedWay> distinct(List<TimedWay> ways) {
    List<TimedWay> distinct = new ArrayList<>();
    for (TimedWay way : ways) {
      if (isOther(way, distinct, APART_SHARE)) {
        distinct.add(way);
      }
    }
    return distinct;
  }

  /**
   * A way relaxed in so many tracks, timed leniently but for the last level; null if it cannot be
   * made in any number.
   */
  private @Nullable TimedWay settled(Way rough, Way way, int level) {
    times.stepAtMost(plane.length / STEPS[level]);
    Way begun = cut(way, level);
    int tracks = Math.max(TRACKS[level], begun.tracks());
    double width = level == 0 ? roughWays.rimMetres() : LATER_RIM_SHARE * plane.length;
    if (Double.isNaN(begun.lenientArrival(times))
        || (!waters.isOpen() && corridor.hasCornersWithin(begun, width))) {
      begun = corridor.narrowed(way, width, tracks);
    }
    Way relaxed = relaxation.relaxed(begun, level == 0 ? FIRST_SWEEPS : 0, SETTLED_SHARE[level]);
    if (winds(relaxed, level) || (level == 0 && isHardlyMade(rough))) {
      relaxed = tented(relaxed);
    }
    boolean last = level == TRACKS.length - 1;
    double seconds = last ? relaxed.arrival(times) : relaxed.lenientArrival(times);
    if (last && Double.isNaN(seconds)) {
      relaxed = madeAfterAll(relaxed.evenly(2 * tracks, times), rough);
      seconds = relaxed.arrival(times);
    }
    return Double.isNaN(seconds) ? null : new TimedWay(relaxed, seconds, Double.NaN, rough);
  }

  /**
   * The better of two ways where lenient times lead beyond what can be made: the one relaxed, in
   * more tracks, since what chords cannot do twice as many may; and the one of the front.
   */
  private Way madeAfterAll(Way finer, Way rough) {
    int last = TRACKS.length - 1;
    Way one = strictly(relaxation.relaxed(finer, 0, SETTLED_SHARE[last]));
    Way other = strictly(rough.evenly(Math.max(TRACKS[last], rough.tracks()), times));
    return other.arrival(times) >= one.arrival(times) || Double.isNaN(other.arrival(times))
        ? one
        : other;
  }

  /** A way that can be made brought near the best by tents, and by Newton's method if it can. */
  private Way strictly(Way way) {
    if (Double.isNaN(way.arrival(times))) {
      return way;
    }
    Way settled = tents.settled(way, TENT_ROUNDS, TENTS_SETTLED_SHARE);
    Way relaxed = relaxation.relaxed(settled, 0, SETTLED_SHARE[TRACKS.length - 1]);
    return relaxed.arrival(times) <= settled.arrival(times) ? relaxed : settled; // false for NaN
  }

  /** Whether a way of open water needs more tracks than others, since it winds. */
  private boolean winds(Way way, int level) {
    return waters.isOpen() && way.tracks() > TRACKS[level];
  }

  /** Whether a way of the front in open water cannot be made as it is. */
  private boolean isHardlyMade(Way rough) {
    return waters.isOpen() && Double.isNaN(rough.arrival(times));
  }

  private Way tented(Way way) {
    boolean before = times.setLenient(true);
    Way settled = tents.settled(way, WINDING_ROUNDS, TENTS_SETTLED_SHARE);
    times.setLenient(before);
    return settled;
  }

  /**
   * The way in as few tracks as do not spoil it, but in as many as it has where it is refined; as
   * it is where every number spoils it, since it winds too much from eddy to eddy.
   */
  private Way cut(Way way, int level) {
    if (level > 0 && winds(way, level - 1)) {
      return way.halved();
    }
    if (level == TRACKS.length - 1) {
      return way.evenly(TRACKS[level], times);
    }
    double enough = SPOILT * way.lenientArrival(times);
    Way even = way;
    for (int finer = level; finer < TRACKS.length; finer++) {
      even = way.evenly(TRACKS[finer], times);
      if (!(even.lenientArrival(times) > enough)) {
        return even;
      }
    }
    return way.tracks() > TRACKS[level] ? way : even;
  }

  /** The same way with no wait longer than it need be. */
  TimedWay tightened(TimedWay timed) {
    double[] notBefore = timed.way().notBefore().clone();
    Way way = new Way(timed.way().along(), timed.way().right(), notBefore, timed.way().pinned());
    double best = timed.seconds();
    for (int i = 0; i < notBefore.length; i++) {
      double low = Math.max(0.0, notBefore[i] - 2.0 * LONGEST_WAIT_SECONDS);
      double high = notBefore[i];
      while (high - low > 0.1) {
        notBefore[i] = 0.5 * (low + high);
        double seconds = way.arrival(times);
        if (seconds <= best) {
          high = notBefore[i];
          best = seconds;
        } else {
          low = notBefore[i];
        }
      }
      notBefore[i] = high;
    }
    return new TimedWay(way, best, timed.gained(), timed.rough());
  }

  /** The way in twice as many tracks, as long as the last halving of them still gained much. */
  TimedWay lastRefined(TimedWay timed) {
    TimedWay best = timed;
    for (int finer = 2; finer <= MOST_TIMES_FINER; finer *= 2) {
      if (!(best.gained() > MUCH_GAINED * best.seconds())) {
        return best;
      }
      Way settled = strictly(best.way().halved());
      double seconds = settled.arrival(times);
      if (!(seconds < best.seconds())) {
        return best;
      }
      best = new TimedWay(settled, seconds, best.seconds() - seconds, best.rough());
    }
    return best;
  }
}
