package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * A slow answer to the quickest path among {@link Eddies} that shares nothing with the library:
 * polygons in the plane, started in many shapes and from {@link GridStarts}, each corner moved both
 * ways by itself until no move helps, then halved and so on. Units are the patch's; the craft's
 * speed is 1.
 */
final class ManyStarts {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private static final int GRID_WAYS = 5;

  /** Sides are timed in parts of this length at most. */
  private static final double LONGEST_PART = 0.12;

  /** Relaxation ends when a round gains less than this share of the time: roughly, and at last. */
  private static final double ROUGH = 1e-4;

  private static final double SETTLED = 1e-7;

  /**
   * Parts so much shorter change the time of a polygon by less than this share if it is timed well.
   */
  private static final double WELL_TIMED = 1e-5;

  private static final int CLOSELY = 16;

  /** Where Gauss's rule looks first, as a share of a part. */
  private static final double FIRST = 0.5 - Math.sqrt(1.0 / 12.0);

  private final Eddies eddies;
  private final MadeGood madeGood;
  private final double goalX;
  private final double[] flow = new double[2];
  private final TentRelaxation relaxation = new TentRelaxation(this::side);
  private boolean barred;
  private double fine;
  private int closer = 1;

  /** The speed made good on a course of a cosine and sine in a stream; NaN if there is none. */
  interface MadeGood {
    double speed(double east, double north, double c, double s);
  }

  ManyStarts(Eddies eddies, MadeGood madeGood, double goalX) {
    this.eddies = eddies;
    this.madeGood = madeGood;
    this.goalX = goalX;
  }

  /**
   * The time of the best polygon, from so many random starts and the ways over a grid, as the limit
   * of ever more sides: halving them quarters what a polygon loses to the curve.
   */
  double quickest(Random random, int starts, int sides) {
    double[] best = lookedAtClosely(best(random, starts, sides / 2));
    double half = strictTime(best);
    double[] finer = lookedAtClosely(finer(best, 0.005, SETTLED));
    fine = strictTime(finer);
    closer = 1;
    return fine - (half - fine) / 3.0;
  }

  /**
   * A polygon that was timed well, or else the same settled anew in parts so much shorter, in which
   * all is timed from then on: where the craft hardly holds its course, a polygon can be led over
   * spots that no look falls on.
   */
  double[] lookedAtClosely(double[] path) {
    double time = time(path);
    int before = closer;
    closer = CLOSELY;
    if (Math.abs(time(path) - time) < WELL_TIMED * time) {
      closer = before;
      return path;
    }
    double[] settled = path.clone();
    relaxation.relax(settled, 40, 0.02, SETTLED);
    return settled;
  }

  /** Looks no closer than at first, for another polygon. */
  void lookAsAtFirst() {
    closer = 1;
  }

  /** Polygons of few sides, hardly settled: the ways over a grid and random ones. */
  List<double[]> rough(Random random, int starts, double... strides) {
    List<double[]> held = new ArrayList<>();
    double least = NEVER;
    GridStarts grid = new GridStarts(eddies, madeGood, goalX, 0.2, (x0, y0, x1, y1) -> false);
    for (double[] way : grid.ways(GRID_WAYS)) {
      for (double stride : strides) {
        double[] path = way.clone();
        relaxation.relax(path, 30, stride, ROUGH);
        least = Math.min(least, strictTime(path));
        held.add(path);
      }
    }
    for (int i = 0; i < starts; i++) {
      double[] path = start(random, i, 10);
      relaxation.relax(path, 30, 0.4, ROUGH);
      least = Math.min(least, strictTime(path));
      if (time(path) < 1.15 * least) {
        path = halved(path);
        relaxation.relax(path, 20, 0.15, ROUGH);
        held.add(path);
      }
    }
    held.sort(Comparator.comparingDouble(path -> time(path)));
    return held;
  }

  private double[] best(Random random, int starts, int sides) {
    List<double[]> held = rough(random, starts, 0.02, 0.1);
    double coarsest = NEVER;
    for (double[] path : held) {
      coarsest = Math.min(coarsest, strictTime(path));
    }
    double[] best = held.get(0);
    double least = NEVER;
    int enough = sides * 3 / 4;
    List<Double> seen = new ArrayList<>();
    for (double[] coarse : held) {
      double coarseTime = time(coarse);
      boolean again = false;
      for (double other : seen) {
        again |= Math.abs(other - coarseTime) < 1e-4 * coarseTime;
      }
      if (again || coarseTime > 1.06 * coarsest || seen.size() >= 8) {
        continue;
      }
      seen.add(coarseTime);
      double[] path = coarse;
      double stride = 0.08;
      while (path.length / 2 - 1 < enough
          && time(path) < (path.length < 200 ? 1.02 : 1.004) * least) {
        path = finer(path, stride, SETTLED);
        stride *= 0.5;
      }
      double found = strictTime(path);
      if (path.length / 2 - 1 >= enough && found < least) {
        least = found;
        best = path;
      }
    }
    return best;
  }

  /** The time of the same path as a polygon. */
  double polygon() {
    return fine;
  }

  private double[] start(Random random, int number, int sides) {
    double a = number == 0 ? 0.0 : 3.0 * random.nextGaussian();
    double b = number < 3 ? 0.0 : 1.5 * random.nextGaussian();
    double c = number < 6 ? 0.0 : 1.0 * random.nextGaussian();
    double[] path = new double[2 * (sides + 1)];
    for (int i = 0; i <= sides; i++) {
      double s = Math.PI * i / sides;
      path[2 * i] = goalX * i / sides;
      path[2 * i + 1] = a * Math.sin(s) + b * Math.sin(2 * s) + c * Math.sin(3 * s);
    }
    return path;
  }

  /** With every side halved, and settled anew until a round gains less than a share. */
  double[] finer(double[] path, double stride, double settled) {
    double[] finer = halved(path);
    relaxation.relax(finer, 40, stride, finer.length < 160 ? 1e-5 : settled);
    return finer;
  }

  private static double[] halved(double[] path) {
    int sides = path.length / 2 - 1;
    double[] finer = new double[2 * (2 * sides + 1)];
    for (int i = 0; i <= 2 * sides; i++) {
      for (int k = 0; k < 2; k++) {
        finer[2 * i + k] = i % 2 == 0 ? path[i + k] : 0.5 * (path[i - 1 + k] + path[i + 1 + k]);
      }
    }
    return finer;
  }

  /** The current triangle of a craft of speed 1 in calm air. */
  static double calm(double east, double north, double c, double s) {
    double across = north * c - east * s;
    return east * c + north * s + Math.sqrt(1.0 - across * across);
  }

  /** Infinite for a path that cannot be made. */
  double strictTime(double[] path) {
    barred = false;
    double t = time(path);
    return barred ? NEVER : t;
  }

  double time(double[] path) {
    double t = 0.0;
    for (int i = 0; i + 1 < path.length / 2; i++) {
      t = side(path, i, t);
    }
    return t;
  }

  private double side(double[] path, int i, double started) {
    int at = 2 * i;
    return side(path[at], path[at + 1], path[at + 2], path[at + 3], started);
  }

  /** When the end of a side is reached, by Gauss's rule of two points in each of its parts. */
  private double side(double x, double y, double toX, double toY, double started) {
    double dx = toX - x;
    double dy = toY - y;
    double length = Math.sqrt(dx * dx + dy * dy);
    if (length < 1e-12) {
      return started;
    }
    double c = dx / length;
    double s = dy / length;
    int parts = closer * Math.max(1, (int) Math.ceil(length / LONGEST_PART));
    double each = length / parts;
    double t = started;
    double slow = 1.0;
    if (eddies.tide != 0.0) {
      slow = slowness(x + FIRST * each * c, y + FIRST * each * s, c, s, t + FIRST * each);
    }
    for (int k = 0; k < parts; k++) {
      double at = (k + FIRST) * each;
      double first = slowness(x + at * c, y + at * s, c, s, t + FIRST * each * slow);
      at = (k + 1.0 - FIRST) * each;
      slow = slowness(x + at * c, y + at * s, c, s, t + (1.0 - FIRST) * each * first);
      t += 0.5 * each * (first + slow);
    }
    return t;
  }

  /** Time for a unit of length on a course of a cosine and sine. */
  private double slowness(double x, double y, double c, double s, double time) {
    eddies.at(x, y, time, flow);
    double v = madeGood.speed(flow[0], flow[1], c, s);
    if (v > 0.05) {
      return 1.0 / v;
    }
    // no way, or hardly one: very slow, the more so the more is lacking, so that it can be left
    double across = flow[1] * c - flow[0] * s;
    double lacking = v >= 0.0 ? 0.0 : Math.sqrt(Math.max(0.0, across * across - 1.0));
    v = !Double.isNaN(v) ? v : flow[0] * c + flow[1] * s - lacking;
    barred |= !(v > 1e-3);
    return 20.0 + 400.0 * Math.max(0.0, 0.05 - v);
  }
}
