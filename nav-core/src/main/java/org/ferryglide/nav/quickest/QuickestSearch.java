package org.ferryglide.nav.quickest;

import org.ferryglide.nav.geodesy.Ellipsoid;
import org.jspecify.annotations.Nullable;

/**
 * Finds the quickest path from a place to a place, round obstacles if there are any.
 *
 * <pre>{@code
 * double[][] rows = QuickestSearch.path(motion, Obstacles.none(), start, goal, departure, 86400.0);
 * double seconds = rows == null ? Double.NaN : rows[rows.length - 1][QuickestSearch.TIME];
 * }</pre>
 *
 * <p>The craft of {@code motion} must be {@linkplain CraftMotion#isWindless windless}: the search
 * takes no account of wind.
 */
public final class QuickestSearch {
  /** Index in a row: seconds since the departure. */
  public static final int TIME = 0;

  /** Index in a row: latitude, radians. */
  public static final int LATITUDE = 1;

  /** Index in a row: longitude, radians, running on past the antimeridian. */
  public static final int LONGITUDE = 2;

  /** Index in a row: where the bow points, radians from true north. */
  public static final int HEADING = 3;

  private QuickestSearch() {}

  /**
   * The quickest path that was found.
   *
   * @param motion the craft, the stream and the wind
   * @param obstacles what must not be crossed
   * @param start latitude and longitude of the start, radians
   * @param goal latitude and longitude of the goal, radians
   * @param departure when it starts, seconds since 1970-01-01T00:00:00Z
   * @param horizon the longest it may take, seconds
   * @return rows of time, latitude, longitude and heading; the joint of two pieces may stand twice;
   *     null if nothing was found within the horizon
   */
  public static double @Nullable [][] path(
      CraftMotion motion,
      Obstacles obstacles,
      double[] start,
      double[] goal,
      double departure,
      double horizon) {
    double[][] rows =
        obstacles.isEmpty()
            ? inOpenWater(motion, start, goal, departure, horizon)
            : new PathsAroundObstacles(motion, obstacles, start, goal, departure, horizon)
                .quickest();
    return rows == null || rows[rows.length - 1][TIME] > horizon ? null : rows;
  }

  private static double @Nullable [][] inOpenWater(
      CraftMotion motion, double[] start, double[] goal, double departure, double horizon) {
    Extremals earth = new Extremals(motion, Ellipsoid.WGS84);
    ExtremalFan fan =
        new ExtremalFan(
            motion,
            Obstacles.none(),
            start[0],
            start[1],
            departure,
            horizon,
            Math.max(1e-6, earth.metres(start, goal)));
    ExtremalFan.@Nullable Arrival arrival = fan.quickestTo(goal[0], goal[1]);
    return arrival == null ? null : fan.path(arrival);
  }
}
