package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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
  /** By how much the front's grid is finer where no way came out that can be made. */
  private static final int FINER = 4;

  /** The same where ways wind, or an answer doubts itself by more than a share of its time. */
  private static final int TWICE = 2;

  private static final double DOUBTFUL_SHARE = 3e-3;

  /** By how much closer a way is looked at that leads through what is not allowed. */
  private static final int CLOSE_LOOKS = 16;

  /** What a way may lose that was relaxed only once, as a share of its time: it is sought again. */
  private static final double UNKNOWN_SHARE = 0.01;

  /** A way found is looked along so closely, metres. */
  private static final double CLOSE_METRES = 5.0;

  /**
   * What may be left to gain, of the last gain: a third by the rule above, but up to 1.8 was
   * measured in wind.
   */
  private static final double LEFT_OF_GAIN = 2.0;

  private final CraftMotion motion;
  private final Waters waters;
  private final SearchPlane plane;
  private final double[] goal;
  private final double departure;
  private final double horizon;
  private final TrackTimes times;
  private final RoughWays roughWays;
  private final Refinement refinement;
  private final WayRows rows;

  /** The shortest way round land, if it is found; empty in open water. */
  private final List<Way> roundLand;

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
    roughWays = new RoughWays(motion, waters, speeds, plane, departure);
    LandCorners corners = new LandCorners(waters, plane);
    refinement = new Refinement(times, waters, plane, roughWays, corners);
    roundLand = waters.land().isEmpty() ? List.of() : ShortestWay.of(waters.land(), corners, plane);
    rows = new WayRows(motion, plane, times, this.goal, departure);
  }

  /**
   * The quickest ways that were found.
   *
   * @param most how many are wanted at most
   * @return the ways, the quickest first; empty if nothing was found within the horizon
   */
  public List<FoundWay> ways(int most) {
    Sought sought = sought(most, 1);
    if (sought.isLedAstray()) {
      Sought finer = sought(most, FINER);
      return finer.isLedAstray() ? unrefined(finer, most) : finer.found();
    }
    List<FoundWay> found = sought.found();
    boolean nothing = found.isEmpty();
    if (nothing ? !waters.land().isEmpty() : sought.winding() || isDoubtful(found.get(0))) {
      List<FoundWay> again = sought(most, TWICE).found();
      if (!again.isEmpty() && (nothing || again.get(0).seconds() < found.get(0).seconds())) {
        return again;
      }
    }
    return found;
  }

  /**
   * The quickest way and others, round other sides of land or streams, that take up to 2 % longer.
   *
   * @param most how many are wanted at most
   * @return the ways, the quickest first; empty if nothing was found within the horizon
   */
  public List<FoundWay> alternatives(int most) {
    refinement.keepOthers();
    return ways(most);
  }

  /** Whether the front may have been deceived by a grid too coarse for the stream. */
  private static boolean isDoubtful(FoundWay way) {
    return way.errorSeconds() > DOUBTFUL_SHARE * way.seconds();
  }

  /**
   * What a grid gave.
   *
   * @param rough the front's ways
   * @param refined those refined of them
   * @param found those of these that keep out of what is not allowed
   * @param entered whether others did not, since they were not looked at closely enough
   * @param winding whether some wind from eddy to eddy, which asks for a finer grid
   */
  private record Sought(
      List<Way> rough,
      List<TimedWay> refined,
      List<FoundWay> found,
      boolean entered,
      boolean winding) {
    boolean isLedAstray() {
      return found.isEmpty() && (refined.isEmpty() ? !rough.isEmpty() : entered);
    }
  }

  private Sought sought(int most, int finer) {
    List<Way> rough = roughWays.within(horizon, finer);
    rough.addAll(roundLand);
    times.lookCloser(finer);
    Sought sought = refined(rough, most);
    if (sought.found().isEmpty() && sought.entered()) {
      times.lookCloser(CLOSE_LOOKS);
      sought = refined(rough, most);
    }
    return sought;
  }

  private Sought refined(List<Way> rough, int most) {
    List<TimedWay> refined = refinement.refined(rough);
    List<FoundWay> found = finished(refined, most);
    boolean entered = found.removeIf(way -> !isClear(way));
    return new Sought(rough, refined, found, entered, refinement.isWinding());
  }

  /** Ways of the front as they are, where refined ones cut corners of what they keep out of. */
  private List<FoundWay> unrefined(Sought sought, int most) {
    List<TimedWay> refined = sought.refined();
    List<FoundWay> found = new ArrayList<>();
    for (Way way : sought.rough()) {
      double seconds = way.arrival(times);
      if (seconds <= horizon) { // false for NaN
        double best = refined.isEmpty() ? 0.95 * seconds : refined.get(0).seconds();
        found.add(new FoundWay(seconds, Math.abs(seconds - best), rows.places(way), false));
      }
    }
    found.removeIf(way -> !isClear(way));
    found.sort(Comparator.comparingDouble(FoundWay::seconds));
    return new ArrayList<>(found.subList(0, Math.min(most, found.size())));
  }

  private List<FoundWay> finished(List<TimedWay> ways, int most) {
    List<FoundWay> found = new ArrayList<>();
    for (int i = 0; i < ways.size(); i++) {
      TimedWay timed = ways.get(i);
      if (i >= most
          && timed.expected() > (1.0 + Refinement.MUCH_GAINED) * ways.get(most - 1).expected()) {
        break; // what is left to refine does not bring it to the front
      }
      found.add(finished(timed.way().waits() ? refinement.tightened(timed) : timed));
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

  private FoundWay finished(TimedWay timed) {
    if (motion.isWindless() && waters.isOpen() && !timed.way().waits()) {
      double[][] tracks = rows.places(timed.way());
      double[][] smooth = new Shooting(motion, goal, departure).through(rows.withHeadings(tracks));
      if (smooth != null && isClear(new FoundWay(0.0, 0.0, smooth, true))) {
        double seconds = smooth[smooth.length - 1][FoundWay.TIME];
        return seconds > timed.seconds()
            ? new FoundWay(timed.seconds(), seconds - timed.seconds(), tracks, false)
            : new FoundWay(seconds, timed.seconds() - seconds, smooth, true);
      }
    }
    TimedWay last = refinement.lastRefined(timed);
    double error =
        Double.isNaN(last.gained())
            ? UNKNOWN_SHARE * last.seconds()
            : LEFT_OF_GAIN * Math.abs(last.gained());
    if (!waters.isOpen() || last.way().waits()) {
      error += Corridor.NARROWEST_METRES / motion.calmSpeed();
    }
    return new FoundWay(last.seconds(), error, rows.places(last.way()), false);
  }
}
