package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
  /** Squares between start and goal, and beyond and beside them as shares of these. */
  private static final double[][] GRIDS = {
    {64, 0.35, 0.6}, {44, 0.9, 1.2}, {30, 2.0, 2.4}, {18, 4.5, 5.0}, {10, 10.0, 10.0}
  };

  /** In wind a move costs more to time, so that the grid is coarser. */
  private static final double IN_WIND = 0.75;

  /** The flow of a node is asked for so often while still water is crossed, between two bounds. */
  private static final int LOOKS = 24;

  private static final double SHORTEST_BETWEEN_SECONDS = 60.0;
  private static final double LONGEST_BETWEEN_SECONDS = 900.0;

  /** How many squares a move of the front goes at most. */
  private static final int MOVE_SQUARES = 4;

  /** A way nearer the rim than this may be better beyond it, squares. */
  private static final int RIM = 3;

  private static final int MOST_WAYS = 5;

  /** Waits of the front are in steps of half of this. */
  private static final double LONGEST_WAIT_SECONDS = 1800.0;

  private static final int[] TRACKS = {32, 64, 128};

  /** Cut into tracks too few for its bends a way takes longer by more than this. */
  private static final double SPOILT = 1.005;

  /** Steps in which tracks are timed, on the line from start to goal. */
  private static final int[] STEPS = {64, 64, 128};

  /** What a round of relaxation must gain to be followed by another, as a share of the time. */
  private static final double[] SETTLED_SHARE = {1e-5, 1e-6, 1e-8};

  /** How far aside a way is looked for among land when it is refined, as a share of the leg. */
  private static final double LATER_RIM_SHARE = 0.01;

  private static final int FIRST_SWEEPS = 6;

  /** After the first relaxation ways are dropped that are slower than the best by more. */
  private static final double[] DROPPED_SHARE = {0.02, 0.004};

  /** Ways nearer each other than this share of the leg are one. */
  private static final double APART_SHARE = 0.02;

  private final CraftMotion motion;
  private final Waters waters;
  private final CourseSpeed speeds;
  private final SearchPlane plane;
  private final double[] goal;
  private final double departure;
  private final double horizon;
  private final TrackTimes times;
  private final Relaxation relaxation;
  private final Corridor corridor;

  /** How far from a rough way a settled one is looked for among land, metres. */
  private double rimMetres;

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
    speeds = new CourseSpeed(motion);
    plane = new SearchPlane(start[0], start[1], goal[0], goal[1]);
    times = new TrackTimes(motion, speeds, waters, plane, departure);
    relaxation = new Relaxation(times);
    corridor = new Corridor(times, waters, plane);
  }

  /**
   * The quickest ways that were found.
   *
   * @param most how many are wanted at most
   * @return the ways, the quickest first; empty if nothing was found within the horizon
   */
  public List<FoundWay> ways(int most) {
    List<Way> rough = rough();
    if (rough.isEmpty()) {
      return List.of();
    }
    List<Timed> ways = new ArrayList<>();
    for (Way way : rough) {
      Timed timed = settled(way, 0);
      if (timed != null) {
        ways.add(timed);
      }
    }
    for (int level = 1; level < TRACKS.length; level++) {
      ways = finer(ways, level);
    }
    List<FoundWay> found = new ArrayList<>();
    for (Timed timed : ways) {
      if (found.size() < most && timed.seconds <= horizon) {
        found.add(finished(timed.way.waits() ? tightened(timed) : timed));
      }
    }
    found.sort(Comparator.comparingDouble(FoundWay::seconds));
    return found;
  }

  private List<Timed> finer(List<Timed> ways, int level) {
    ways.sort(Comparator.comparingDouble(timed -> timed.seconds));
    List<Timed> next = new ArrayList<>();
    for (Timed timed : ways) {
      if (timed.seconds > (1.0 + DROPPED_SHARE[level - 1]) * ways.get(0).seconds) {
        break;
      }
      boolean other = true;
      for (Timed held : next) {
        other &= held.way.apart(timed.way) > APART_SHARE * plane.length;
      }
      if (other) {
        Timed settled = settled(timed.way, level);
        if (settled != null) {
          next.add(new Timed(settled.way, settled.seconds, timed.seconds - settled.seconds));
        }
      }
    }
    next.sort(Comparator.comparingDouble(timed -> timed.seconds));
    return next;
  }

  /**
   * A way relaxed in so many tracks, timed leniently but for the last level; null if it cannot be
   * made in any number.
   */
  private @Nullable Timed settled(Way way, int level) {
    times.stepAtMost(plane.length / STEPS[level]);
    Way begun = cut(way, level);
    int tracks = Math.max(TRACKS[level], begun.tracks());
    double width = level == 0 ? rimMetres : LATER_RIM_SHARE * plane.length;
    if (isBroken(begun) || (!waters.isOpen() && corridor.hasCornersWithin(begun, width))) {
      begun = corridor.narrowed(way, width, tracks);
    }
    Way relaxed = relaxation.relaxed(begun, level == 0 ? FIRST_SWEEPS : 0, SETTLED_SHARE[level]);
    boolean last = level == TRACKS.length - 1;
    times.setLenient(!last);
    double seconds = relaxed.arrival(times);
    times.setLenient(false);
    if (last && Double.isNaN(seconds)) { // what chords cannot do, twice as many may
      relaxed = relaxation.relaxed(relaxed.evenly(2 * tracks, times), 0, SETTLED_SHARE[level]);
      seconds = relaxed.arrival(times);
    }
    return Double.isNaN(seconds) ? null : new Timed(relaxed, seconds, Double.NaN);
  }

  /** The way in as few tracks as do not spoil it, but in as many as it has where it is refined. */
  private Way cut(Way way, int level) {
    if (level == TRACKS.length - 1) {
      return way.evenly(TRACKS[level], times);
    }
    times.setLenient(true);
    double seconds = way.arrival(times);
    Way even = way.evenly(TRACKS[level], times);
    for (int finer = level + 1; finer < TRACKS.length; finer++) {
      times.setLenient(true); // evenly ends it
      if (!(even.arrival(times) > SPOILT * seconds)) {
        break;
      }
      even = way.evenly(TRACKS[finer], times);
    }
    times.setLenient(false);
    return even;
  }

  /** Whether a way leads through what is not known, or may not be entered. */
  private boolean isBroken(Way way) {
    times.setLenient(true);
    double seconds = way.arrival(times);
    times.setLenient(false);
    return Double.isNaN(seconds);
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
    return new Timed(way, best, timed.gained);
  }

  /** A way, its time, and how much it gained when its tracks were last halved. */
  private record Timed(Way way, double seconds, double gained) {}

  private FoundWay finished(Timed timed) {
    double[][] tracks = places(timed.way);
    double error = Double.isNaN(timed.gained) ? 0.001 * timed.seconds : Math.abs(timed.gained);
    if (!motion.isWindless() || !waters.isOpen() || timed.way.waits()) {
      return new FoundWay(timed.seconds, error / 3.0, tracks, false);
    }
    double[][] smooth = new Shooting(motion, goal, departure).through(withHeadings(tracks));
    if (smooth == null) {
      return new FoundWay(timed.seconds, error / 3.0, tracks, false);
    }
    double seconds = smooth[smooth.length - 1][FoundWay.TIME];
    if (seconds > timed.seconds) {
      return new FoundWay(timed.seconds, seconds - timed.seconds, tracks, false);
    }
    return new FoundWay(seconds, timed.seconds - seconds, smooth, true);
  }

  /** Rows of the places of a way, the last with its arrival. */
  private double[][] places(Way way) {
    List<double[]> rows = new ArrayList<>();
    double time = 0.0;
    for (int i = 0; i <= way.tracks(); i++) {
      double latitude = plane.latitude(way.along()[i], way.right()[i]);
      double longitude = plane.longitude(way.along()[i], way.right()[i]);
      rows.add(new double[] {time, latitude, longitude, Double.NaN});
      if (i < way.tracks()) {
        if (way.notBefore()[i] > time) {
          time = way.notBefore()[i];
          rows.add(new double[] {time, latitude, longitude, Double.NaN});
        }
        time =
            times.arrival(
                way.along()[i], way.right()[i], way.along()[i + 1], way.right()[i + 1], time);
      }
    }
    double[] last = rows.get(rows.size() - 1);
    last[FoundWay.LATITUDE] = goal[0];
    last[FoundWay.LONGITUDE] = goal[1];
    return rows.toArray(new double[0][]);
  }

  /** The same places with the headings there: from halves of the tracks on either side. */
  private double[][] withHeadings(double[][] tracks) {
    int n = tracks.length;
    double[] middle = new double[n - 1];
    for (int i = 0; i + 1 < n; i++) {
      middle[i] = heading(tracks[i], tracks[i + 1]);
    }
    for (int i = 0; i < n; i++) {
      int before = Math.max(0, Math.min(i - 1, n - 3));
      double turn = Math.IEEEremainder(middle[before + 1] - middle[before], 2.0 * Math.PI);
      tracks[i][FoundWay.HEADING] = middle[before] + turn * (i - before - 0.5);
    }
    return tracks;
  }

  /** The heading half way along a track. */
  private double heading(double[] from, double[] to) {
    double latitude = 0.5 * (from[FoundWay.LATITUDE] + to[FoundWay.LATITUDE]);
    double longitude = 0.5 * (from[FoundWay.LONGITUDE] + to[FoundWay.LONGITUDE]);
    double north = to[FoundWay.LATITUDE] - from[FoundWay.LATITUDE];
    double east = to[FoundWay.LONGITUDE] - from[FoundWay.LONGITUDE];
    double course =
        Math.atan2(
            east * SearchPlane.metresPerLongitudeDegree(latitude),
            north * SearchPlane.metresPerLatitudeDegree(latitude));
    double[] flow = new double[CraftMotion.FLOW];
    double time = 0.5 * (from[FoundWay.TIME] + to[FoundWay.TIME]);
    if (!motion.flow(latitude, longitude, departure + time, flow)) {
      return course;
    }
    double across = flow[0] * Math.cos(course) - flow[1] * Math.sin(course);
    return course - Math.asin(Math.max(-1.0, Math.min(1.0, across / motion.calmSpeed())));
  }

  /** The ways that a front finds, in an area that is widened until it holds them. */
  private List<Way> rough() {
    double still = plane.length / motion.calmSpeed();
    double between =
        Math.max(SHORTEST_BETWEEN_SECONDS, Math.min(LONGEST_BETWEEN_SECONDS, still / LOOKS));
    List<Way> held = List.of();
    double heldTime = Double.POSITIVE_INFINITY;
    for (double[] size : GRIDS) {
      int parts = (int) Math.round(motion.isWindless() ? size[0] : IN_WIND * size[0]);
      SearchGrid grid =
          new SearchGrid(
              plane, parts, (int) Math.ceil(size[1] * parts), (int) Math.ceil(size[2] * parts));
      Moves moves = new Moves(grid, MOVE_SQUARES);
      NodeSpeeds nodes = new NodeSpeeds(motion, speeds, grid, moves, departure, between);
      rimMetres = 2.0 * grid.spacing;
      Front front = new Front(nodes, motion, waters, departure, Double.NaN);
      front.spread(Math.min(horizon, 1.03 * heldTime), true);
      if (!front.reachedGoal()) {
        continue;
      }
      List<Way> ways = Ways.of(nodes, front, motion, waters, departure, MOST_WAYS);
      List<Way> all = new ArrayList<>(held);
      all.addAll(ways);
      held = all;
      heldTime = Math.min(heldTime, front.goalTime());
      int rim = Integer.MAX_VALUE;
      for (int node : front.nodesTo(front.goalLabel())) {
        rim = Math.min(rim, grid.fromRim(node));
      }
      if (rim >= RIM) {
        break;
      }
    }
    return held;
  }
}
