package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Judges a time by {@link ManyStarts} for less: each of its ways is refined only until it is sure
 * that it is not quicker by a share. Halving all sides gains a quarter of what it gained before,
 * and so less in all than it gained last. The time that is judged only tells when to stop.
 */
final class Screening {
  /** A way that can be quicker by less than this share is not refined further. */
  private static final double OF_NO_ACCOUNT = 8e-4;

  /** With fewer sides than this, gains do not yet shrink as they should. */
  private static final int FEW_SIDES = 80;

  /** Ways are dropped that are slower than the time by more: with few sides, more, and many. */
  private static final double[] DROPPED = {1.06, 1.02, 1.004};

  /** Rough ways nearer each other than this are one; no eddy is smaller than 0.4. */
  private static final double APART = 0.2;

  private static final int LOOKS = 24;

  private static final double SETTLED = 1e-6;

  private final ManyStarts reference;

  Screening(ManyStarts reference) {
    this.reference = reference;
  }

  /**
   * By what share a time is longer than the best that the reference finds, at most; not above 0 if
   * it finds nothing as quick; positive infinity if the time is and the reference finds a way.
   */
  double loss(double time, Random random, int starts, int sides) {
    double most = Double.NEGATIVE_INFINITY;
    List<double[]> seen = new ArrayList<>();
    for (double[] way : reference.rough(random, starts, 0.02, 0.1)) {
      boolean again = false;
      for (double[] other : seen) {
        again |= apart(way, other) < APART;
      }
      if (!again) {
        seen.add(way);
        most = Math.max(most, loss(time, way, sides));
      }
    }
    return most;
  }

  /** How far two polygons are apart at most, at equal shares of their lengths. */
  private static double apart(double[] one, double[] other) {
    double most = 0.0;
    for (int i = 1; i < LOOKS; i++) {
      double[] a = at(one, (double) i / LOOKS);
      double[] b = at(other, (double) i / LOOKS);
      most = Math.max(most, Math.hypot(a[0] - b[0], a[1] - b[1]));
    }
    return most;
  }

  private static double[] at(double[] path, double share) {
    double[] passed = new double[path.length / 2];
    for (int i = 1; i < passed.length; i++) {
      passed[i] =
          passed[i - 1]
              + Math.hypot(path[2 * i] - path[2 * i - 2], path[2 * i + 1] - path[2 * i - 1]);
    }
    double wanted = share * passed[passed.length - 1];
    int i = 1;
    while (passed[i] < wanted) {
      i++;
    }
    double part = (wanted - passed[i - 1]) / (passed[i] - passed[i - 1]);
    return new double[] {
      path[2 * i - 2] + part * (path[2 * i] - path[2 * i - 2]),
      path[2 * i - 1] + part * (path[2 * i + 1] - path[2 * i - 1])
    };
  }

  private double loss(double time, double[] way, int sides) {
    double[] path = way;
    double stride = 0.08;
    double now = reference.time(path);
    while (true) {
      int count = path.length / 2 - 1;
      if (now > DROPPED[count < 40 ? 0 : count < 100 ? 1 : 2] * time) {
        return Double.NEGATIVE_INFINITY;
      }
      double before = now;
      path = reference.finer(path, stride, SETTLED);
      stride *= 0.5;
      now = reference.time(path);
      double gained = Math.max(0.0, before - now);
      count = path.length / 2 - 1;
      if (count >= FEW_SIDES && now - gained > (1.0 - OF_NO_ACCOUNT) * time) {
        return time / (now - gained) - 1.0;
      }
      if (count >= sides * 3 / 4) {
        double loss = time / (now - gained / 3.0) - 1.0;
        return loss > OF_NO_ACCOUNT ? closeLoss(time, path, gained) : loss;
      }
    }
  }

  /** The same of a polygon that seems quicker: it may owe that to spots that no look fell on. */
  private double closeLoss(double time, double[] path, double gained) {
    double[] close = reference.lookedAtClosely(path);
    double now = reference.strictTime(close);
    double left = gained;
    if (close != path) {
      double[] finer = reference.finer(close, 0.005, SETTLED);
      left = Math.max(0.0, now - reference.strictTime(finer));
      now -= left;
    }
    reference.lookAsAtFirst();
    return now < Double.POSITIVE_INFINITY
        ? time / (now - left / 3.0) - 1.0
        : Double.NEGATIVE_INFINITY;
  }
}
