package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.Seconds;

/**
 * How far a craft gets by when from a place, or from where and when it can still make a place: the
 * front of {@link Front}, with every way in it drawn straight. Not thread-safe.
 *
 * <pre>{@code
 * Reach reach = Reach.from(motion, Waters.open(), 50.1, -5.5, departure, 3600.0);
 * double seconds = reach.seconds(50.12, -5.5); // infinite beyond the hour
 * }</pre>
 */
public final class Reach {
  /** Squares from the middle to the rim. */
  private static final int ASIDE = 100;

  /** How many squares a move of the front goes at most: 32 directions. */
  private static final int MOVE_SQUARES = 3;

  /** The same where streams outrun the craft, which then gets on in few directions only: of 80. */
  private static final int MOVE_SQUARES_IN_TORRENTS = 5;

  /** How far the first area goes, as a share of how far still water carries; and how much wider. */
  private static final double FIRST = 1.6;

  /** The front is followed for so much longer, since squares that it half fills cannot be read. */
  private static final double BEYOND = 1.15;

  private static final double WIDER = 1.6;

  /** Streams of 175 craft speeds: an area so wide tells nothing of what the craft itself does. */
  private static final int MOST_WIDENINGS = 10;

  /** Squares are no smaller, so that degrees still tell their nodes apart, metres. */
  private static final double LEAST_SQUARE = 0.01;

  private final SearchGrid grid;
  private final StraightTimes times;
  private final Obstacles land;

  private Reach(SearchGrid grid, StraightTimes times, Obstacles land) {
    this.grid = grid;
    this.times = times;
    this.land = land;
  }

  /**
   * The places reached from a start.
   *
   * @param motion the craft, the stream and the wind
   * @param waters what must be kept out of
   * @param latitude of the start, degrees
   * @param longitude of the start, degrees
   * @param departure when it starts, seconds since 1970-01-01T00:00:00Z
   * @param within how long at most, seconds
   * @return the reach
   * @throws IllegalArgumentException if the area to be searched, 1.6 times as far as still water
   *     carries or wider if streams carry the craft further, goes beyond a pole or 180 degrees of
   *     longitude
   */
  public static Reach from(
      CraftMotion motion,
      Waters waters,
      double latitude,
      double longitude,
      double departure,
      double within) {
    return spread(motion, waters, latitude, longitude, departure, within, false);
  }

  /**
   * The places from which a goal can be reached by a time.
   *
   * @param motion the craft, the stream and the wind
   * @param waters what must be kept out of
   * @param latitude of the goal, degrees
   * @param longitude of the goal, degrees
   * @param arrival when it must be reached, seconds since 1970-01-01T00:00:00Z
   * @param within how long before at most, seconds
   * @return the reach
   * @throws IllegalArgumentException if the area to be searched, 1.6 times as far as still water
   *     carries or wider if streams carry the craft further, goes beyond a pole or 180 degrees of
   *     longitude
   */
  public static Reach backFrom(
      CraftMotion motion,
      Waters waters,
      double latitude,
      double longitude,
      double arrival,
      double within) {
    return spread(motion, waters, latitude, longitude, arrival - BEYOND * within, within, true);
  }

  private static Reach spread(
      CraftMotion motion,
      Waters waters,
      double latitude,
      double longitude,
      double departure,
      double within,
      boolean backward) {
    double radius = Math.max(FIRST * motion.calmSpeed() * within, ASIDE * LEAST_SQUARE);
    CourseSpeed speeds = new CourseSpeed(motion);
    int moveSquares = MOVE_SQUARES;
    for (int i = 0; ; i++) {
      refuseFarAway(latitude, radius, within);
      // a plane whose line runs one square to the north, and ends on the place for a way back
      double spacing = radius / ASIDE;
      double square = spacing / SearchPlane.metresPerLatitudeDegree(latitude);
      SearchPlane plane =
          backward
              ? new SearchPlane(latitude - square, longitude, latitude, longitude)
              : new SearchPlane(latitude, longitude, latitude + square, longitude);
      double between = Math.max(30.0, Math.min(600.0, within / 40.0));
      SearchGrid grid = new SearchGrid(plane, 1, ASIDE, ASIDE);
      Moves moves = new Moves(grid, moveSquares);
      NodeSpeeds nodes = new NodeSpeeds(motion, speeds, grid, moves, departure, between, false);
      double longest = BEYOND * within;
      Front front = new Front(nodes, motion, waters, departure, backward ? longest : Double.NaN);
      front.spread(longest, false);
      boolean torrents = nodes.fastest() > 2.0 * motion.calmSpeed();
      if (torrents && moveSquares == MOVE_SQUARES) {
        moveSquares = MOVE_SQUARES_IN_TORRENTS;
        continue;
      }
      if (i >= MOST_WIDENINGS || !touchesRim(grid, front, within)) {
        TrackTimes tracks = new TrackTimes(motion, speeds, waters, plane, departure);
        return new Reach(
            grid,
            new StraightTimes(front, grid, tracks, backward ? longest : Double.NaN),
            waters.land());
      }
      radius *= WIDER;
    }
  }

  /** Beyond a pole there is no latitude, and half round the earth the area meets itself. */
  private static void refuseFarAway(double latitude, double radius, double within) {
    double north = radius / SearchPlane.metresPerLatitudeDegree(latitude);
    double east = radius / SearchPlane.metresPerLongitudeDegree(latitude);
    if (!(Math.abs(latitude) + north <= 90.0 && east <= 180.0)) { // written so that NaN fails
      throw new IllegalArgumentException(
          "the time must be so short that the area searched ends short of the pole and of half"
              + " round the earth, but was "
              + Seconds.toDuration(within)
              + " from latitude "
              + latitude
              + ", with an area of "
              + Math.round(radius / 1000.0)
              + " km to each side");
    }
  }

  private static boolean touchesRim(SearchGrid grid, Front front, double within) {
    for (int node = 0; node < grid.nodes(); node++) {
      if (grid.fromRim(node) <= 1 && front.firstReached(node) <= within) {
        return true;
      }
    }
    return false;
  }

  /**
   * How long to a place, or back from it to the goal, by a straight track from the front.
   *
   * @param latitude degrees
   * @param longitude degrees
   * @return seconds; infinite where it is not reached
   */
  public double seconds(double latitude, double longitude) {
    return times.at(grid.plane.along(latitude, longitude), grid.plane.right(latitude, longitude));
  }

  /**
   * The line on which a time is reached, as polygons round what is within it; water within them
   * that is not reached has a line of its own.
   *
   * @param seconds the time
   * @return latitudes and longitudes in turn, degrees, of the corners of each polygon
   */
  public List<double[]> lines(double seconds) {
    ReachedArea area = new ReachedArea(grid, times, land, seconds);
    List<double[]> planar = new Contours(grid.columns, grid.rows, area).rings();
    List<double[]> lines = new ArrayList<>();
    for (double[] ring : planar) {
      double[] line = new double[ring.length];
      for (int i = 0; i < ring.length; i += 2) {
        double along = grid.along(0) + ring[i] * grid.spacing;
        double right = grid.right(0) + ring[i + 1] * grid.spacing;
        line[i] = grid.plane.latitude(along, right);
        line[i + 1] = grid.plane.longitude(along, right);
      }
      lines.add(line);
    }
    return lines;
  }
}
