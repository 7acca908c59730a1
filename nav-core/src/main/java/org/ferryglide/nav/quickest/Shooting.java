package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.jspecify.annotations.Nullable;

/**
 * Bends an extremal through the places of a way that is nearly the quickest, by multiple shooting:
 * the way is cut into stretches of equal time, an extremal is followed through each, and Newton's
 * method closes the gaps between them and the miss at the goal. Short stretches keep small errors
 * small where neighbouring extremals part quickly. In calm air only. Not thread-safe.
 */
final class Shooting {
  /** How far the extremal may be from closed, metres, and radians times a kilometre. */
  private static final double CLOSE_METRES = 1e-3;

  private static final int STRETCHES = 32;
  private static final int STEPS = 5;
  private static final int CORRECTIONS = 12;

  /** Latitude, longitude and heading, radians. */
  private static final int WIDTH = 3;

  /** Differences for the derivatives: metres, radians, and a share of the duration. */
  private static final double SHIFT_METRES = 0.5;

  private static final double TURN = 1e-4;
  private static final double LONGER = 1e-5;

  private final CraftMotion motion;
  private final Extremals extremals;
  private final double goalLatitude;
  private final double goalLongitude;
  private final double north;
  private final double east;
  private final double departure;
  private final double[] state = new double[Extremals.SIZE];
  private final double[] end = new double[WIDTH];

  /** The states at the start of each stretch; places in metres on the plane of the goal. */
  private final double[][] nodes = new double[STRETCHES][WIDTH];

  /** How each end depends on its start, row by row, and on the duration; and its gap. */
  private final double[][] slopes = new double[STRETCHES][WIDTH * (WIDTH + 2)];

  private double duration;

  /** Takes the goal in degrees. */
  Shooting(CraftMotion motion, double[] goal, double departure) {
    this.motion = motion;
    this.extremals = new Extremals(motion, Ellipsoid.WGS84);
    goalLatitude = Math.toRadians(goal[0]);
    goalLongitude = Math.toRadians(goal[1]);
    north = extremals.meridianRadius(goalLatitude);
    east = extremals.parallelRadius(goalLatitude);
    this.departure = departure;
  }

  /**
   * The extremal near a way.
   *
   * @param rows the way: times (s), latitudes, longitudes (degrees) and headings (radians)
   * @return rows of the same kind along the extremal; null if Newton's method does not settle
   */
  double @Nullable [][] through(double[][] rows) {
    duration = rows[rows.length - 1][FoundWay.TIME];
    int row = 0;
    for (int k = 0; k < STRETCHES; k++) {
      double time = duration * k / STRETCHES;
      while (row < rows.length - 2 && rows[row + 1][FoundWay.TIME] <= time) {
        row++;
      }
      double[] a = rows[row];
      double[] b = rows[row + 1];
      double share = (time - a[FoundWay.TIME]) / (b[FoundWay.TIME] - a[FoundWay.TIME]);
      nodes[k][0] = Math.toRadians(a[1] + share * (b[1] - a[1])) * north;
      nodes[k][1] = Math.toRadians(a[2] + share * (b[2] - a[2])) * east;
      double turn = Math.IEEEremainder(b[FoundWay.HEADING] - a[FoundWay.HEADING], 2.0 * Math.PI);
      nodes[k][2] = a[FoundWay.HEADING] + share * turn;
    }
    double before = Double.POSITIVE_INFINITY;
    for (int i = 0; i < CORRECTIONS; i++) {
      if (!measure()) {
        return null;
      }
      double gap = gap();
      if (gap < CLOSE_METRES) {
        return curve();
      }
      if (!(gap < 1e6) || (i > 6 && gap > before)) {
        return null;
      }
      before = gap;
      if (!correct()) {
        return null;
      }
    }
    return null;
  }

  /** Follows every stretch, with its slopes. */
  private boolean measure() {
    for (int k = 0; k < STRETCHES; k++) {
      double[] slope = slopes[k];
      double[] from = nodes[k];
      if (!follow(from, k, duration, null)) {
        return false;
      }
      double e0 = end[0];
      double e1 = end[1];
      double e2 = end[2];
      for (int j = 0; j < WIDTH + 1; j++) {
        double step = j == WIDTH ? LONGER * duration : j == 2 ? TURN : SHIFT_METRES;
        double held = j == WIDTH ? 0.0 : from[j];
        if (j < WIDTH) {
          from[j] += step;
        }
        boolean known = follow(from, k, j == WIDTH ? duration + step : duration, null);
        if (j < WIDTH) {
          from[j] = held;
        }
        if (!known) {
          return false;
        }
        slope[j] = (end[0] - e0) / step;
        slope[5 + j] = (end[1] - e1) / step;
        slope[10 + j] = Math.IEEEremainder(end[2] - e2, 2.0 * Math.PI) / step;
      }
      boolean last = k == STRETCHES - 1;
      slope[4] = e0 - (last ? goalLatitude * north : nodes[k + 1][0]);
      slope[9] = e1 - (last ? goalLongitude * east : nodes[k + 1][1]);
      slope[14] = last ? 0.0 : Math.IEEEremainder(e2 - nodes[k + 1][2], 2.0 * Math.PI);
    }
    return true;
  }

  private double gap() {
    double most = 0.0;
    for (double[] slope : slopes) {
      most = Math.max(most, Math.abs(slope[4]) + Math.abs(slope[9]) + 1e3 * Math.abs(slope[14]));
    }
    return most;
  }

  /** One Newton step: every state as far as the first heading and the duration decide it. */
  private boolean correct() {
    double[][] byHeading = new double[STRETCHES + 1][WIDTH];
    double[][] byDuration = new double[STRETCHES + 1][WIDTH];
    double[][] rest = new double[STRETCHES + 1][WIDTH];
    byHeading[0][2] = 1.0;
    for (int k = 0; k < STRETCHES; k++) {
      double[] slope = slopes[k];
      for (int r = 0; r < WIDTH; r++) {
        double h = 0.0;
        double d = slope[5 * r + 3];
        double g = slope[5 * r + 4];
        for (int j = 0; j < WIDTH; j++) {
          h += slope[5 * r + j] * byHeading[k][j];
          d += slope[5 * r + j] * byDuration[k][j];
          g += slope[5 * r + j] * rest[k][j];
        }
        byHeading[k + 1][r] = h;
        byDuration[k + 1][r] = d;
        rest[k + 1][r] = g;
      }
    }
    double[] h = byHeading[STRETCHES];
    double[] d = byDuration[STRETCHES];
    double[] g = rest[STRETCHES];
    double determinant = h[0] * d[1] - h[1] * d[0];
    if (!(Math.abs(determinant) > 0.0)) {
      return false;
    }
    double turn = (d[0] * g[1] - d[1] * g[0]) / determinant;
    double longer = (h[1] * g[0] - h[0] * g[1]) / determinant;
    double share = 1.0;
    for (int k = 0; k < STRETCHES; k++) {
      double swing = byHeading[k][2] * turn + byDuration[k][2] * longer + rest[k][2];
      share = Math.min(share, 0.5 / Math.abs(swing));
    }
    share = Math.min(share, 0.1 * duration / Math.abs(longer));
    for (int k = 0; k < STRETCHES; k++) {
      for (int j = 0; j < WIDTH; j++) {
        nodes[k][j] += share * (byHeading[k][j] * turn + byDuration[k][j] * longer + rest[k][j]);
      }
    }
    duration += share * longer;
    return duration > 0.0;
  }

  /** Follows an extremal through a stretch; leaves its end in {@link #end}. */
  private boolean follow(double[] from, int k, double lasting, @Nullable List<double[]> rows) {
    double start = lasting * k / STRETCHES;
    double until = lasting * (k + 1) / STRETCHES;
    extremals.launch(from[0] / north, from[1] / east, from[2], state, 0);
    double step = (until - start) / STEPS;
    double time = start;
    while (time < until) {
      keep(rows, time);
      double next = time + 1.5 * step > until ? until : time + step;
      double broken = motion.nextBreakAfter(departure + time) - departure;
      if (broken > time && broken < next) {
        next = broken;
      }
      if (!extremals.step(state, 0, departure + time, next - time)) {
        return false;
      }
      time = next;
    }
    end[0] = state[0] * north;
    end[1] = state[1] * east;
    end[2] = extremals.heading(state, 0);
    return true;
  }

  private void keep(@Nullable List<double[]> rows, double time) {
    if (rows != null) {
      rows.add(
          new double[] {
            time, Math.toDegrees(state[0]), Math.toDegrees(state[1]), extremals.heading(state, 0)
          });
    }
  }

  private double[][] curve() {
    List<double[]> rows = new ArrayList<>();
    for (int k = 0; k < STRETCHES; k++) {
      follow(nodes[k], k, duration, rows);
    }
    keep(rows, duration);
    double[] last = rows.get(rows.size() - 1);
    last[FoundWay.LATITUDE] = Math.toDegrees(goalLatitude);
    last[FoundWay.LONGITUDE] = Math.toDegrees(goalLongitude);
    return rows.toArray(new double[0][]);
  }
}
