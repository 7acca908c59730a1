package org.ferryglide.nav.steer;

import java.util.Arrays;
import org.ferryglide.nav.quickest.CraftMotion;
import org.ferryglide.nav.quickest.Obstacles;
import org.ferryglide.nav.quickest.QuickestSearch;
import org.jspecify.annotations.Nullable;

/**
 * The quickest path of all for a leg, as a track: what {@link QuickestSearch} finds, told in the
 * terms of this room. Works in radians; not thread-safe.
 */
final class QuickestPath {
  private static final double DEGREE = Math.toRadians(1.0);

  /** The end of a piece is looked at from just before, so that a jump there belongs to the next. */
  private static final double BEFORE_SEAM_SECONDS = 1e-3;

  private final CraftMotion motion;
  private final Obstacles obstacles;
  private final TrackRecorder recorder = new TrackRecorder();
  private final double[] flow = new double[CraftMotion.FLOW];
  private final double[] water = new double[2];
  private double @Nullable [][] rows;

  double arrival;
  double greatestCrossShare;
  double leastSpare;

  QuickestPath(Motion motion, Obstacles obstacles) {
    this.motion = new SearchedMotion(motion);
    this.obstacles = obstacles;
  }

  /** Solves; on success the track and the figures are set. */
  boolean solve(LegFrame frame, double departure, double longest) {
    double[] start = {frame.startLatitude * DEGREE, frame.startLongitude * DEGREE};
    double[] goal = {frame.endLatitude * DEGREE, frame.endLongitude * DEGREE};
    rows = QuickestSearch.path(motion, obstacles, start, goal, departure, longest);
    if (rows == null) {
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
      weigh();
      rates(next, departure + next[0] - BEFORE_SEAM_SECONDS, to);
      weigh();
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
    if (!motion.flow(latitude, row[2] / DEGREE, time, flow)) {
      Arrays.fill(flow, 0.0);
    }
    motion.throughWater(row[3], flow, water);
    double sine = Math.sin(row[1]);
    out[0] = (flow[1] + water[1]) / Earth.metresPerLatitudeDegree(sine);
    out[1] = (flow[0] + water[0]) / Earth.metresPerLongitudeDegree(sine);
  }

  /**
   * How much of the speed goes across the path, and how much is to spare, with the stream just
   * seen.
   */
  private void weigh() {
    double speed = motion.calmSpeed();
    double east = flow[0] + water[0];
    double north = flow[1] + water[1];
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

  /** The craft, the stream and the wind as the search asks for them. */
  private record SearchedMotion(Motion motion) implements CraftMotion {
    @Override
    public boolean flow(double latitude, double longitude, double time, double[] flow) {
      if (!motion.sample(latitude, longitude, time)) {
        return false;
      }
      flow[0] = motion.streamEast;
      flow[1] = motion.streamNorth;
      flow[2] = motion.windEast;
      flow[3] = motion.windNorth;
      return true;
    }

    @Override
    public void throughWater(double heading, double[] flow, double[] eastNorth) {
      motion.windEast = flow[2];
      motion.windNorth = flow[3];
      motion.head(Math.sin(heading), Math.cos(heading));
      eastNorth[0] = motion.waterEast;
      eastNorth[1] = motion.waterNorth;
    }

    @Override
    public double calmSpeed() {
      return motion.calmWaterSpeed();
    }

    @Override
    public boolean isWindless() {
      return !motion.windy;
    }

    @Override
    public boolean isUniform() {
      return motion.uniform;
    }

    @Override
    public double nextBreakAfter(double epochSeconds) {
      return motion.nextBreakAfter(epochSeconds);
    }
  }
}
