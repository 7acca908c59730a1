package org.ferryglide.nav.steer;

import org.ferryglide.nav.water.StreamField;
import org.jspecify.annotations.Nullable;

/**
 * The quickest path of all for a leg, as a track with what it asks of the craft. Works in radians;
 * not thread-safe.
 */
final class QuickestPath {
  private static final double DEGREE = Math.toRadians(1.0);

  /** The end of a piece is looked at from just before, so that a jump there belongs to the next. */
  private static final double BEFORE_SEAM_SECONDS = 1e-3;

  private final StreamField field;
  private final double speed;
  private final Obstacles obstacles;
  private final TrackRecorder recorder = new TrackRecorder();
  private final double[] flow = new double[2];
  private double @Nullable [][] rows;

  double arrival;
  double greatestCrossShare;
  double leastSpare;

  QuickestPath(StreamField field, double speedMetresPerSecond, Obstacles obstacles) {
    this.field = field;
    this.speed = speedMetresPerSecond;
    this.obstacles = obstacles;
  }

  /** Solves; on success the track and the figures are set. */
  boolean solve(LegFrame frame, double departure, double longest) {
    double[] start = {frame.startLatitude * DEGREE, frame.startLongitude * DEGREE};
    double[] goal = {frame.endLatitude * DEGREE, frame.endLongitude * DEGREE};
    if (obstacles.isEmpty()) {
      ExtremalFan fan =
          new ExtremalFan(
              field, speed, obstacles, start[0], start[1], departure, longest, frame.length);
      ExtremalFan.@Nullable Arrival free = fan.quickestTo(goal[0], goal[1]);
      rows = free == null ? null : fan.path(free);
    } else {
      rows =
          new PathsAroundObstacles(field, speed, obstacles, start, goal, departure, longest)
              .quickest();
    }
    if (rows == null || rows[rows.length - 1][0] > longest) {
      return false;
    }
    record(rows, departure);
    return true;
  }

  /** The pieces of the path, with the rates at both ends of each. */
  private void record(double[][] path, double departure) {
    recorder.clear();
    greatestCrossShare = 0.0;
    leastSpare = Double.POSITIVE_INFINITY;
    double[] from = new double[2];
    double[] to = new double[2];
    for (int i = 0; i + 1 < path.length; i++) {
      double[] row = path[i];
      double[] next = path[i + 1];
      if (!(next[0] > row[0])) {
        continue; // the joint of two pieces stands twice
      }
      rates(row, departure + row[0], from);
      weigh(row);
      rates(next, departure + next[0] - BEFORE_SEAM_SECONDS, to);
      weigh(next);
      recorder.add(
          departure + row[0],
          row[1] / DEGREE,
          row[2] / DEGREE,
          from[0],
          from[1],
          to[0],
          to[1],
          heading(row));
    }
    arrival = departure + path[path.length - 1][0];
  }

  private static double heading(double[] row) {
    return row[3] / DEGREE;
  }

  /** Rates in degrees a second where the stream is known, else as through still water. */
  private void rates(double[] row, double time, double[] out) {
    double latitude = row[1] / DEGREE;
    if (!field.sample(latitude, Earth.longitude(row[2] / DEGREE), time, flow, 0)) {
      flow[0] = 0.0;
      flow[1] = 0.0;
    }
    double sine = Math.sin(row[1]);
    out[0] = (flow[1] + speed * Math.cos(row[3])) / Earth.metresPerLatitudeDegree(sine);
    out[1] = (flow[0] + speed * Math.sin(row[3])) / Earth.metresPerLongitudeDegree(sine);
  }

  /**
   * How much of the speed goes across the path, and how much is to spare, with the stream just
   * seen.
   */
  private void weigh(double[] row) {
    double east = flow[0] + speed * Math.sin(row[3]);
    double north = flow[1] + speed * Math.cos(row[3]);
    double ground = Math.hypot(east, north);
    if (ground > 0.0) {
      double along = (flow[0] * east + flow[1] * north) / ground;
      double across = (flow[0] * north - flow[1] * east) / ground;
      greatestCrossShare = Math.max(greatestCrossShare, Math.abs(across) / speed);
      leastSpare = Math.min(leastSpare, speed - SteadyTriangle.leastWaterSpeed(along, across));
    }
  }

  GroundTrack track() {
    if (rows == null) {
      throw new IllegalStateException("nothing has been solved");
    }
    double[] end = rows[rows.length - 1];
    return recorder.finish(arrival, end[1] / DEGREE, end[2] / DEGREE, heading(end));
  }
}
