package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Finds the quickest ways from a place to a place.
 *
 * <p>A front of arrival times over the area tells which ways there are; the best few are relaxed,
 * and in calm air and open water an extremal is bent onto the goal from the best of them. The
 * earlier of the two is the answer, and how far they are apart tells how good it is.
 *
 * <pre>{@code
 * QuickestSearch search = new QuickestSearch(motion, Waters.open(), start, goal, departure, 86400.0);
 * List<FoundWay> ways = search.ways(3);
 * }</pre>
 */
public final class QuickestSearch {
  /** Waits of the front are in steps of half of this. */
  private static final double LONGEST_WAIT_SECONDS = 1800.0;

  private static final int[] TRACKS = {32, 64, 128};

  /** By how much the front's grid is finer where no way came out that can be made. */
  private static final int FINER = 4;

  /** The same where an answer doubts itself by more than this share of its time. */
  private static final int TWICE = 2;

  private static final double DOUBTFUL_SHARE = 3e-3;

  /** What a way may lose that was relaxed only once, as a share of its time: it is sought again. */
  private static final double UNKNOWN_SHARE = 0.01;

  /** A way found is looked along so closely, metres. */
  private static final double CLOSE_METRES = 5.0;

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
  private static final double MUCH_GAINED = 1e-3;

  /**
   * What may be left to gain, of the last gain: a third by the rule above, but up to 1.8 was
   * measured in wind.
   */
  private static final double LEFT_OF_GAIN = 2.0;

  /** Into so many times the tracks of the finest level at most. */
  private static final int MOST_TIMES_FINER = 4;

  /** How far aside a way is looked for among land when it is refined, as a share of the leg. */
  private static final double LATER_RIM_SHARE = 0.01;

  private static final int FIRST_SWEEPS = 6;

  /** So often a way is swept that must never leave what can be made. */
  private static final int STRICT_SWEEPS = 80;

  /** After the first relaxation ways are dropped that are slower than the best by more. */
  private static final double[] DROPPED_SHARE = {0.02, 0.004};

  /** Ways nearer each other than this share of the leg are one. */
  private static final double APART_SHARE = 0.02;

  private final CraftMotion motion;
  private final Waters waters;
  private final SearchPlane plane;
  private final double[] goal;
  private final double departure;
  private final double horizon;
  private final TrackTimes times;
  private final Relaxation relaxation;
  private final Sweeps sweeps;
  private final Corridor corridor;
  private final RoughWays roughWays;
  private final WayRows rows;

  /**
   * Sets the task.
   *
   * @param motion the craft, the stream and the wind
   * @param waters what must be kept out of
   * @param start latitude and longitude of the start, degrees
   * @param goal latitude and longitude of the goal, degrees, the latter within 180° of the start's
   * @param departure when it starts, seconds since 1970-01-01T00:00:00Z
   * @param horizon the longest it may take, seconds
   */
  public QuickestSearch(
      CraftMotion motion,
      Waters waters,
      double[] start,
      double[] goal,
      double departure,
      double horizon) {
    this.motion = motion;
    this.waters = waters;
    this.goal = goal.clone();
    this.departure = departure;
    this.horizon = horizon;
    CourseSpeed speeds = new CourseSpeed(motion);
    plane = new SearchPlane(start[0], start[1], goal[0], goal[1]);
    times = new TrackTimes(motion, speeds, waters, plane, departure);
    relaxation = new Relaxation(times);
    sweeps = new Sweeps(times);
    corridor = new Corridor(times, waters, plane);
    roughWays = new RoughWays(motion, waters, speeds, plane, departure);
    rows = new WayRows(motion, plane, times, this.goal, departure);
  }

  /**
   * The quickest ways that were found.
   *
   * @param most how many are wanted at most
   * @return the ways, the quickest first; empty if nothing was found within the horizon
   */
  public List<FoundWay> ways(int most) {
    List<FoundWay> found = ways(most, 1);
    if (found == null) {
      return Objects.requireNonNull(ways(most, FINER));
    }
    if (!found.isEmpty() && isDoubtful(found.get(0))) {
      List<FoundWay> again = ways(most, TWICE);
      if (again != null && !again.isEmpty() && again.get(0).seconds() < found.get(0).seconds()) {
        return again;
      }
    }
    return found;
  }

  /** Whether the front may have been deceived by a grid too coarse for the stream. */
  private static boolean isDoubtful(FoundWay way) {
    return way.errorSeconds() > DOUBTFUL_SHARE * way.seconds();
  }

  /** The ways by a grid so much finer; null if a finer one may find some. */
  private @Nullable List<FoundWay> ways(int most, int finer) {
    List<Way> rough = roughWays.within(horizon, finer);
    times.lookCloser(finer);
    List<Timed> ways = rough.isEmpty() ? List.of() : refined(rough);
    List<FoundWay> found = finished(ways, most);
    boolean entered = found.removeIf(way -> !isClear(way));
    if (rough.isEmpty() || !found.isEmpty() || (!ways.isEmpty() && !entered)) {
      return found;
    }
    return finer == FINER ? unrefined(rough, ways, most) : null;
  }

  /** Ways of the front as they are, where refined ones cut corners of what they keep out of. */
  private List<FoundWay> unrefined(List<Way> rough, List<Timed> refined, int most) {
    List<FoundWay> found = new ArrayList<>();
    for (Way way : rough) {
      double seconds = way.arrival(times);
      if (seconds <= horizon) { // false for NaN
        double best = refined.isEmpty() ? 0.95 * seconds : refined.get(0).seconds;
        found.add(new FoundWay(seconds, Math.abs(seconds - best), rows.places(way), false));
      }
    }
    found.removeIf(way -> !isClear(way));
    found.sort(Comparator.comparingDouble(FoundWay::seconds));
    return new ArrayList<>(found.subList(0, Math.min(most, found.size())));
  }

  private List<FoundWay> finished(List<Timed> ways, int most) {
    List<FoundWay> found = new ArrayList<>();
    for (int i = 0; i < ways.size(); i++) {
      Timed timed = ways.get(i);
      if (i >= most && timed.expected() > (1.0 + MUCH_GAINED) * ways.get(most - 1).expected()) {
        break; // what is left to refine does not bring it to the front
      }
      found.add(finished(timed.way.waits() ? tightened(timed) : timed));
    }
    found.removeIf(way -> way.seconds() > horizon);
    found.sort(Comparator.comparingDouble(FoundWay::seconds));
    return new ArrayList<>(found.subList(0, Math.min(most, found.size())));
  }

  /** Whether a way keeps out of gaps in the data and waters beyond limits however narrow. */
  private boolean isClear(FoundWay way) {
    double[][] rows = way.rows();
    for (int i = 0; i + 1 < rows.length; i++) {
      double[] from = rows[i];
      double[] to = rows[i + 1];
      double latitude = from[FoundWay.LATITUDE];
      double longitude = from[FoundWay.LONGITUDE];
      double north = to[FoundWay.LATITUDE] - latitude;
      double east = to[FoundWay.LONGITUDE] - longitude;
      double metres =
          Math.hypot(
              north * SearchPlane.metresPerLatitudeDegree(latitude),
              east * SearchPlane.metresPerLongitudeDegree(latitude));
      int looks = (int) Math.ceil(metres / CLOSE_METRES);
      double began = departure + from[FoundWay.TIME];
      double took = to[FoundWay.TIME] - from[FoundWay.TIME];
      for (int k = 0; k < looks; k++) {
        double share = (double) k / looks;
        if (!motion.isAllowed(
            latitude + share * north, longitude + share * east, began + share * took)) {
          return false;
        }
      }
    }
    return true;
  }

  private List<Timed> refined(List<Way> rough) {
    List<Timed> ways = new ArrayList<>();
    for (Way way : rough) {
      Timed timed = settled(way, way, 0);
      if (timed != null) {
        ways.add(timed);
      }
    }
    for (int level = 1; level < TRACKS.length; level++) {
      ways = finer(ways, level);
    }
    return ways.isEmpty() ? salvaged(rough) : ways;
  }

  /**
   * Ways through streams that outrun the craft and turn: where none came out that can be made, each
   * is relaxed in all numbers of tracks, since some lead to one that can.
   */
  private List<Timed> salvaged(List<Way> rough) {
    List<Timed> made = new ArrayList<>();
    for (Way way : rough) {
      for (int level = 0; level < TRACKS.length; level++) {
        times.stepAtMost(plane.length / STEPS[level]);
        Way even = way.evenly(TRACKS[level], times);
        Way relaxed = relaxation.relaxed(even, FIRST_SWEEPS, SETTLED_SHARE[0]);
        times.stepAtMost(plane.length / STEPS[TRACKS.length - 1]);
        double seconds = relaxed.arrival(times);
        if (!Double.isNaN(seconds)) {
          made.add(new Timed(relaxed, seconds, Double.NaN, way));
        }
      }
    }
    List<Timed> finest = finer(made, TRACKS.length - 1);
    if (!finest.isEmpty() || !made.isEmpty()) {
      return finest.isEmpty() ? made : finest;
    }
    for (Way way : rough) { // round a gap in the data the places of the front stay where they are
      Way relaxed = relaxation.relaxed(way, 0, SETTLED_SHARE[0]);
      double seconds = relaxed.arrival(times);
      if (!Double.isNaN(seconds)) {
        made.add(new Timed(relaxed, seconds, Double.NaN, way));
      }
    }
    made.sort(Comparator.comparingDouble(timed -> timed.seconds));
    return made;
  }

  private List<Timed> finer(List<Timed> ways, int level) {
    ways.sort(Comparator.comparingDouble(Timed::expected));
    List<Timed> next = new ArrayList<>();
    for (Timed timed : ways) {
      if (timed.expected() > (1.0 + DROPPED_SHARE[level - 1]) * ways.get(0).expected()) {
        break;
      }
      boolean other = true;
      for (Timed held : next) {
        other &= held.way.apart(timed.way) > APART_SHARE * plane.length;
      }
      if (other) {
        Timed settled = settled(timed.rough, timed.way, level);
        if (settled != null) {
          double gained = timed.seconds - settled.seconds;
          next.add(new Timed(settled.way, settled.seconds, gained, timed.rough));
        }
      }
    }
    next.sort(Comparator.comparingDouble(Timed::expected));
    return next;
  }

  /**
   * A way relaxed in so many tracks, timed leniently but for the last level; null if it cannot be
   * made in any number.
   */
  private @Nullable Timed settled(Way rough, Way way, int level) {
    times.stepAtMost(plane.length / STEPS[level]);
    Way begun = cut(way, level);
    int tracks = Math.max(TRACKS[level], begun.tracks());
    double width = level == 0 ? roughWays.rimMetres() : LATER_RIM_SHARE * plane.length;
    if (Double.isNaN(begun.lenientArrival(times))
        || (!waters.isOpen() && corridor.hasCornersWithin(begun, width))) {
      begun = corridor.narrowed(way, width, tracks);
    }
    Way relaxed = relaxation.relaxed(begun, level == 0 ? FIRST_SWEEPS : 0, SETTLED_SHARE[level]);
    boolean last = level == TRACKS.length - 1;
    double seconds = last ? relaxed.arrival(times) : relaxed.lenientArrival(times);
    if (last && Double.isNaN(seconds)) { // what chords cannot do, twice as many may
      relaxed = relaxation.relaxed(relaxed.evenly(2 * tracks, times), 0, SETTLED_SHARE[level]);
      seconds = relaxed.arrival(times);
    }
    if (last && Double.isNaN(seconds)) {
      relaxed = sweptStrictly(rough);
      seconds = relaxed.arrival(times);
    }
    return Double.isNaN(seconds) ? null : new Timed(relaxed, seconds, Double.NaN, rough);
  }

  /**
   * A way of the front brought near the best without ever leaving what can be made, which lenient
   * times lead beyond.
   */
  private Way sweptStrictly(Way rough) {
    int last = TRACKS.length - 1;
    Way even = rough.evenly(Math.max(TRACKS[last], rough.tracks()), times);
    if (Double.isNaN(even.arrival(times))) {
      return even;
    }
    Way swept = sweeps.swept(even, STRICT_SWEEPS);
    Way relaxed = relaxation.relaxed(swept, 0, SETTLED_SHARE[last]);
    return Double.isNaN(relaxed.arrival(times)) ? swept : relaxed;
  }

  /**
   * The way in as few tracks as do not spoil it, but in as many as it has where it is refined; as
   * it is where every number spoils it, since it winds too much from eddy to eddy.
   */
  private Way cut(Way way, int level) {
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
  private Timed tightened(Timed timed) {
    double[] notBefore = timed.way.notBefore().clone();
    Way way = new Way(timed.way.along(), timed.way.right(), notBefore, timed.way.pinned());
    double best = timed.seconds;
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
    return new Timed(way, best, timed.gained, timed.rough);
  }

  /** A way, its time, how much it gained when its tracks were last halved, and the front's. */
  private record Timed(Way way, double seconds, double gained, Way rough) {
    /** What it would take in ever more tracks: each halving gains a quarter of the last. */
    double expected() {
      return gained > 0.0 ? seconds - gained / 3.0 : seconds;
    }
  }

  private FoundWay finished(Timed timed) {
    if (motion.isWindless() && waters.isOpen() && !timed.way.waits()) {
      double[][] tracks = rows.places(timed.way);
      double[][] smooth = new Shooting(motion, goal, departure).through(rows.withHeadings(tracks));
      if (smooth != null) {
        double seconds = smooth[smooth.length - 1][FoundWay.TIME];
        return seconds > timed.seconds
            ? new FoundWay(timed.seconds, seconds - timed.seconds, tracks, false)
            : new FoundWay(seconds, timed.seconds - seconds, smooth, true);
      }
    }
    Timed last = lastRefined(timed);
    double error =
        Double.isNaN(last.gained)
            ? UNKNOWN_SHARE * last.seconds
            : LEFT_OF_GAIN * Math.abs(last.gained);
    if (!waters.isOpen() || last.way.waits()) {
      error += Corridor.NARROWEST_METRES / motion.calmSpeed();
    }
    return new FoundWay(last.seconds, error, rows.places(last.way), false);
  }

  /** The way in twice as many tracks, as long as the last halving of them still gained much. */
  private Timed lastRefined(Timed timed) {
    int last = TRACKS.length - 1;
    Timed best = timed;
    for (int finer = 2; finer <= MOST_TIMES_FINER; finer *= 2) {
      if (!(best.gained > MUCH_GAINED * best.seconds)) {
        return best;
      }
      Way even = best.way.evenly(2 * Math.max(TRACKS[last], best.way.tracks()), times);
      Way relaxed = relaxation.relaxed(even, 0, SETTLED_SHARE[last]);
      double seconds = relaxed.arrival(times);
      if (!(seconds < best.seconds)) {
        return best;
      }
      best = new Timed(relaxed, seconds, best.seconds - seconds, best.rough);
    }
    return best;
  }
}
