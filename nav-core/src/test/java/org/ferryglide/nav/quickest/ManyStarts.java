package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * A slow answer to the quickest path among {@link Eddies} that shares nothing with the library:
 * polygons in the plane, started in many shapes, each corner moved both ways by itself until no
 * move helps, then halved and so on. Units are the patch's; the craft's speed is 1.
 */
final class ManyStarts {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private final Eddies eddies;
  private final double goalX;
  private final double[] flow = new double[2];
  private boolean barred;
  private double halfAsFine;

  ManyStarts(Eddies eddies, double goalX) {
    this.eddies = eddies;
    this.goalX = goalX;
  }

  /** The time of the best polygon of so many sides, from so many random starts. */
  double quickest(Random random, int starts, int sides) {
    List<double[]> held = new ArrayList<>();
    for (int i = 0; i < starts; i++) {
      double[] path = start(random, i, 10);
      sweep(path, 40, 0.4);
      held.add(path);
    }
    held.sort(Comparator.comparingDouble(path -> time(path)));
    double best = NEVER;
    List<Double> seen = new ArrayList<>();
    for (double[] coarse : held) {
      double coarseTime = time(coarse);
      boolean again = false;
      for (double other : seen) {
        again |= Math.abs(other - coarseTime) < 1e-4 * coarseTime;
      }
      if (again || coarseTime > 1.06 * time(held.get(0)) || seen.size() >= 10) {
        continue;
      }
      seen.add(coarseTime);
      double[] path = coarse;
      double stride = 0.15;
      double before = NEVER;
      for (int n = 20; n <= sides; n *= 2) {
        path = halved(path);
        sweep(path, n > 40 ? 150 : 80, stride);
        stride *= 0.5;
        if (time(path) > 1.02 * best) {
          break;
        }
        before = n < sides ? strictTime(path) : before;
      }
      double found = strictTime(path);
      if (found < best) {
        best = found;
        halfAsFine = before;
      }
    }
    return best;
  }

  /** The time of the same path with half as many sides. */
  double halfAsFine() {
    return halfAsFine;
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

  /** When the end of a side is reached, by the midpoint rule. */
  private double side(double[] path, int i, double started) {
    double dx = path[2 * i + 2] - path[2 * i];
    double dy = path[2 * i + 3] - path[2 * i + 1];
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
        eddies.at(path[2 * i] + share * dx, path[2 * i + 1] + share * dy, guess, flow);
        double across = flow[1] * c - flow[0] * s;
        v = flow[0] * c + flow[1] * s + Math.sqrt(1.0 - across * across);
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
