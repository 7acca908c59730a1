package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.List;

/**
 * Writes a way as rows of {@link FoundWay}: places with their times, and headings for those who
 * bend an extremal along it. Not thread-safe.
 */
final class WayRows {
  private final CraftMotion motion;
  private final SearchPlane plane;
  private final TrackTimes times;
  private final double[] goal;
  private final double departure;

  /** Takes the latitude and longitude of the goal in degrees. */
  WayRows(
      CraftMotion motion, SearchPlane plane, TrackTimes times, double[] goal, double departure) {
    this.motion = motion;
    this.plane = plane;
    this.times = times;
    this.goal = goal;
    this.departure = departure;
  }

  /** Rows of the places of a way, the last with its arrival. */
  double[][] places(Way way) {
    List<double[]> rows = new ArrayList<>();
    double time = 0.0;
    for (int i = 0; i <= way.tracks(); i++) {
      double latitude = plane.latitude(way.along()[i], way.right()[i]);
      double longitude = plane.longitude(way.along()[i], way.right()[i]);
      if (!isLast(rows, latitude, longitude)) { // a corner may be a place of the way twice
        rows.add(new double[] {time, latitude, longitude, Double.NaN});
      }
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

  private static boolean isLast(List<double[]> rows, double latitude, double longitude) {
    if (rows.isEmpty()) {
      return false;
    }
    double[] last = rows.get(rows.size() - 1);
    return last[FoundWay.LATITUDE] == latitude && last[FoundWay.LONGITUDE] == longitude;
  }

  /** The same places with the headings there: from halves of the tracks on either side. */
  double[][] withHeadings(double[][] tracks) {
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
}
