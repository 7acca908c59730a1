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

  private static final int GRID_WAYS = 4;

  private final Eddies eddies;
  private final MadeGood madeGood;
  private final double goalX;
  private final double[] flow = new double[2];
  private boolean barred;
  private double fine;

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
    double[] best = best(random, starts, sides / 2);
    double half = strictTime(best);
    double[] finer = halved(best);
    sweep(finer, 150, 0.005);
    fine = strictTime(finer);
    return fine - (half - fine) / 3.0;
  }

  private double[] best(Random random, int starts, int sides) {
    List<double[]> held = new ArrayList<>();
    double least = NEVER;
    for (int i = 0; i < starts; i++) {
      double[] path = start(random, i, 10);
      sweep(path, 40, 0.4);
      least = Math.min(least, time(path));
      if (time(path) < 1.15 * least) {
        path = halved(path);
        sweep(path, 60, 0.15);
        held.add(path);
      }
    }
    for (double[] path : new GridStarts(this::side, goalX).ways(GRID_WAYS, 40)) {
      sweep(path, 60, 0.1);
      held.add(path);
    }
    held.sort(Comparator.comparingDouble(path -> time(path)));
    double[] best = held.get(0);
    least = NEVER;
    List<Double> seen = new ArrayList<>();
    for (double[] coarse : held) {
      double coarseTime = time(coarse);
      boolean again = false;
      for (double other : seen) {
        again |= Math.abs(other - coarseTime) < 1e-4 * coarseTime;
      }
      if (again || coarseTime > 1.06 * time(held.get(0)) || seen.size() >= 8) {
        continue;
      }
      seen.add(coarseTime);
      double[] path = coarse;
      double stride = 0.08;
      while (path.length / 2 - 1 < sides
          && time(path) < (path.length < 200 ? 1.02 : 1.004) * least) {
        path = halved(path);
        sweep(path, 100, stride);
        stride *= 0.5;
      }
      double found = strictTime(path);
      if (path.length / 2 - 1 == sides && found < least) {
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

  /** Moves every corner up and down, and at first to and fro, by strides that adapt. */
  private void sweep(double[] path, int sweeps, double firstStride) {
    int corners = path.length / 2;
    double[] strides = new double[path.length];
    java.util.Arrays.fill(strides, firstStride);
    double[] reached = new double[corners];
    for (int sweep = 0; sweep < sweeps; sweep++) {
      boolean any = false;
      for (int i = 1; i < corners; i++) {
        reached[i] = side(path, i - 1, reached[i - 1]);
      }
      for (int i = 1; i < corners - 1; i++) {
        reached[i] = side(path, i - 1, reached[i - 1]);
        for (int k = 0; k < 2; k++) {
          int at = 2 * i + k;
          double here = path[at];
          double now = side(path, i, side(path, i - 1, reached[i - 1]));
          double better = now;
          double place = here;
          double stride = strides[at];
          path[at] = here + stride;
          double up = side(path, i, side(path, i - 1, reached[i - 1]));
          path[at] = here - stride;
          double down = side(path, i, side(path, i - 1, reached[i - 1]));
          if (up < better) {
            better = up;
            place = here + stride;
          }
          if (down < better) {
            better = down;
            place = here - stride;
          }
          double bend = up - 2.0 * now + down;
          if (bend > 0.0) {
            double top = here + 1.7 * 0.5 * stride * (down - up) / bend; // a little beyond
            if (Math.abs(top - here) < 2.0 * stride) {
              path[at] = top;
              double there = side(path, i, side(path, i - 1, reached[i - 1]));
              if (there < better) {
                better = there;
                place = top;
              }
            }
          }
          path[at] = place;
          double moved = Math.abs(place - here);
          strides[at] =
              Math.max(1e-5, moved > 0.0 ? Math.min(firstStride, 1.5 * moved) : 0.4 * stride);
          any |= strides[at] > 2e-5;
        }
        reached[i] = side(path, i - 1, reached[i - 1]);
      }
      if (!any) {
        return;
      }
    }
  }

  /** The current triangle of a craft of speed 1 in calm air. */
  static double calm(double east, double north, double c, double s) {
    double across = north * c - east * s;
    return east * c + north * s + Math.sqrt(1.0 - across * across);
  }

  /** Infinite for a path that cannot be made. */
  private double strictTime(double[] path) {
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

  /** When the end of a side is reached, by the midpoint rule. */
  private double side(double x, double y, double toX, double toY, double started) {
    double dx = toX - x;
    double dy = toY - y;
    double length = Math.hypot(dx, dy);
    if (length < 1e-12) {
      return started;
    }
    double c = dx / length;
    double s = dy / length;
    int parts = Math.max(1, (int) Math.ceil(length / 0.12));
    double t = started;
    for (int k = 0; k < parts; k++) {
      double share = (k + 0.5) / parts;
      double each = length / parts;
      double guess = t;
      double v = Double.NaN;
      for (int twice = 0; twice < 2; twice++) {
        eddies.at(x + share * dx, y + share * dy, guess, flow);
        v = madeGood.speed(flow[0], flow[1], c, s);
        guess = t + 0.5 * each / v;
      }
      if (v > 0.05) {
        t += each / v;
        continue;
      }
      // no way, or hardly one: very slow, the more so the more is lacking, so that it can be left
      double across = flow[1] * c - flow[0] * s;
      double lacking = v >= 0.0 ? 0.0 : Math.sqrt(Math.max(0.0, across * across - 1.0));
      v = !Double.isNaN(v) ? v : flow[0] * c + flow[1] * s - lacking;
      barred |= !(v > 1e-3);
      t += each * (20.0 + 400.0 * Math.max(0.0, 0.05 - v));
    }
    return t;
  }
}
