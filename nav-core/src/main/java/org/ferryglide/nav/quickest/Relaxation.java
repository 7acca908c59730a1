package org.ferryglide.nav.quickest;

/**
 * Moves the places of a way sideways until no small move makes it quicker: Newton's method on the
 * offsets, whose matrix has three bands since a place only changes the tracks on either side of it.
 *
 * <p>Derivatives are differences of the times themselves, so that whatever enters a time is in
 * them. Not thread-safe.
 */
final class Relaxation {
  private static final int MOST_ROUNDS = 20;
  private static final int MOST_FRESH_STARTS = 3;
  private static final int HALVINGS = 12;

  /** A place moves by at most this share of a track in one round. */
  private static final double STRIDE = 0.7;

  /** Sweeps over the places one by one where Newton's method has got stuck. */
  private static final int LATER_SWEEPS = 15;

  /** A swept place goes this much farther than alone would be best, since its neighbours follow. */
  private static final double BEYOND = 1.6;

  private final TrackTimes times;

  /** A round that gains less than this share of the time is the last. */
  private double settledShare;

  /** Whether Newton's method got stuck. */
  private boolean stuck;

  /** When each place is reached. */
  private double[] reached = new double[0];

  private double[] gradient = new double[0];
  private double[] diagonal = new double[0];
  private double[] beside = new double[0];
  private double[] move = new double[0];
  private double[] pivots = new double[0];
  private double[] normalAlong = new double[0];
  private double[] normalRight = new double[0];

  /** Arrivals at the end of a track with its start, its end or both moved. */
  private double startAhead;

  private double startBack;
  private double endAhead;
  private double endBack;
  private double bothAhead;

  Relaxation(TrackTimes times) {
    this.times = times;
  }

  private void fit(int n) {
    if (reached.length < n) {
      reached = new double[n];
      gradient = new double[n];
      diagonal = new double[n];
      beside = new double[n];
      move = new double[n];
      pivots = new double[n];
      normalAlong = new double[n];
      normalRight = new double[n];
    }
  }

  /**
   * A settled way near the one given; itself, if it cannot be made.
   *
   * @param sweeps how often the places are swept first
   * @param share a round that gains less than this share of the time is the last
   */
  Way relaxed(Way way, int sweeps, double share) {
    times.setLenient(true);
    settledShare = share;
    Way best = settled(sweeps == 0 ? way : swept(way, sweeps));
    for (int again = 0; again < MOST_FRESH_STARTS && stuck; again++) {
      best = settled(swept(best, LATER_SWEEPS));
    }
    times.setLenient(false);
    return best;
  }

  /**
   * Moves each place by itself, by strides that adapt: slow to settle, but not to be stopped by
   * waters that cannot be crossed, nor by kinks. What a place does to the arrival is judged at the
   * next one: nobody who leaves it earlier on the same track arrives later.
   */
  private Way swept(Way way, int sweeps) {
    int n = way.along().length;
    fit(n);
    double[] a = way.along().clone();
    double[] r = way.right().clone();
    Way swept = new Way(a, r, way.notBefore(), way.pinned());
    for (int i = 0; i < n; i++) {
      move[i] = i > 0 ? 0.3 * way.metres(i - 1) : 0.0;
    }
    for (int sweep = 0; sweep < sweeps; sweep++) {
      reached[0] = 0.0;
      for (int i = 1; i + 1 < n; i++) {
        double left = Math.max(reached[i - 1], way.notBefore()[i - 1]);
        if (!isFixed(way, i)) {
          sweep(swept, i, left);
        }
        reached[i] = times.arrival(a[i - 1], r[i - 1], a[i], r[i], left);
      }
    }
    return swept;
  }

  private void sweep(Way way, int i, double left) {
    double[] a = way.along();
    double[] r = way.right();
    double along = a[i + 1] - a[i - 1];
    double right = r[i + 1] - r[i - 1];
    double length = Math.hypot(along, right);
    if (length == 0.0) {
      return;
    }
    double unitAlong = -right / length;
    double unitRight = along / length;
    double stride = move[i];
    double now = arrivalBeyond(way, i, left, a[i], r[i]);
    double plus = arrivalBeyond(way, i, left, a[i] + stride * unitAlong, r[i] + stride * unitRight);
    double minus =
        arrivalBeyond(way, i, left, a[i] - stride * unitAlong, r[i] - stride * unitRight);
    double best = now;
    double by = 0.0;
    if (plus < best) {
      best = plus;
      by = stride;
    }
    if (minus < best) {
      best = minus;
      by = -stride;
    }
    double bend = plus - 2.0 * now + minus;
    if (bend > 0.0 && bend < Double.POSITIVE_INFINITY) {
      double top = BEYOND * 0.5 * stride * (minus - plus) / bend;
      if (Math.abs(top) < 2.0 * stride) {
        double there = arrivalBeyond(way, i, left, a[i] + top * unitAlong, r[i] + top * unitRight);
        if (there < best) {
          by = top;
        }
      }
    }
    a[i] += by * unitAlong;
    r[i] += by * unitRight;
    move[i] = by == 0.0 ? 0.4 * stride : Math.min(length, 1.5 * Math.abs(by));
  }

  /** The arrival at the place after one that is moved; infinite if it cannot be reached. */
  private double arrivalBeyond(Way way, int i, double left, double along, double right) {
    double time = times.arrival(way.along()[i - 1], way.right()[i - 1], along, right, left);
    time = Math.max(time, way.notBefore()[i]);
    time = times.arrival(along, right, way.along()[i + 1], way.right()[i + 1], time);
    return Double.isNaN(time) ? Double.POSITIVE_INFINITY : time;
  }

  /** Newton's method; leaves in {@link #stuck} whether it ended before it settled. */
  private Way settled(Way way) {
    int n = way.along().length;
    fit(n);
    stuck = false;
    Way best = way;
    double time = best.arrival(times);
    if (Double.isNaN(time) || n < 3) {
      return way;
    }
    double damping = 0.0;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      measure(best);
      double scale = 0.0;
      for (int i = 1; i < n - 1; i++) {
        scale = Math.max(scale, Math.abs(diagonal[i]));
      }
      boolean gained = false;
      for (int attempt = 0; attempt < 8 && !gained; attempt++) {
        while (!solve(n, damping)) {
          damping = Math.max(4.0 * damping, 1e-4 * scale);
          if (!(damping < 1e9 * scale)) {
            stuck = true;
            return best; // nothing curves at all
          }
        }
        double share = 1.0;
        for (int h = 0; h < HALVINGS; h++) {
          Way trial = moved(best, share);
          double trialTime = trial.arrival(times);
          if (trialTime < time) {
            gained = true;
            double gain = time - trialTime;
            best = trial;
            time = trialTime;
            damping = share == 1.0 ? 0.25 * damping : damping;
            if (gain < settledShare * time) {
              return best;
            }
            break;
          }
          share *= h == 0 ? 0.5 : 0.35;
          if (predicted(n, share) < settledShare * time) {
            return best;
          }
        }
        if (!gained) {
          damping = Math.max(8.0 * damping, 1e-3 * scale);
        }
      }
      if (!gained) {
        stuck = true;
        return best;
      }
    }
    stuck = true;
    return best;
  }

  private double predicted(int n, double share) {
    double gain = 0.0;
    for (int i = 1; i < n - 1; i++) {
      gain -= share * move[i] * gradient[i];
    }
    return Math.abs(gain);
  }

  /** First and second derivatives of the arrival by the offsets. */
  private void measure(Way way) {
    int n = way.along().length;
    double[] a = way.along();
    double[] r = way.right();
    reached[0] = 0.0;
    for (int i = 0; i + 1 < n; i++) {
      double left = Math.max(reached[i], way.notBefore()[i]);
      reached[i + 1] = times.arrival(a[i], r[i], a[i + 1], r[i + 1], left);
    }
    for (int i = 1; i + 1 < n; i++) {
      double along = a[i + 1] - a[i - 1];
      double right = r[i + 1] - r[i - 1];
      double length = Math.hypot(along, right);
      normalAlong[i] = length == 0.0 ? 0.0 : -right / length;
      normalRight[i] = length == 0.0 ? 1.0 : along / length;
    }
    for (int i = 0; i < n; i++) {
      if (isFixed(way, i)) {
        normalAlong[i] = 0.0;
        normalRight[i] = 0.0;
      }
      gradient[i] = 0.0;
      diagonal[i] = 0.0;
      beside[i] = 0.0;
    }
    double weight = 1.0; // how much later the arrival is for a second lost before this track
    for (int i = n - 2; i >= 0; i--) {
      double left = Math.max(reached[i], way.notBefore()[i]);
      double delta = Math.max(0.05, Math.min(5.0, 0.01 * way.metres(i)));
      if (lookAround(way, i, left, delta)) {
        gradient[i] += weight * (startAhead - startBack) / (2.0 * delta);
        gradient[i + 1] += weight * (endAhead - endBack) / (2.0 * delta);
        double square = delta * delta;
        double now = reached[i + 1];
        diagonal[i] += weight * (startAhead - 2.0 * now + startBack) / square;
        diagonal[i + 1] += weight * (endAhead - 2.0 * now + endBack) / square;
        beside[i] = weight * (bothAhead - startAhead - endAhead + now) / square;
      }
      double tick = 1.0;
      double later = times.arrival(a[i], r[i], a[i + 1], r[i + 1], left + tick);
      double slope = Double.isNaN(later) ? 1.0 : (later - reached[i + 1]) / tick;
      weight *= Math.max(0.0, Math.min(4.0, slope));
      if (way.notBefore()[i] > reached[i]) {
        weight = 0.0;
      }
    }
    for (int i = 0; i < n; i++) {
      if (isFixed(way, i)) {
        gradient[i] = 0.0;
        beside[i] = 0.0;
        if (i > 0) {
          beside[i - 1] = 0.0;
        }
        diagonal[i] = 1.0;
      }
    }
  }

  private static boolean isFixed(Way way, int i) {
    return i == 0 || i == way.along().length - 1 || way.pinned()[i];
  }

  /** The arrivals at the end of a track with its ends moved sideways; false if one fails. */
  private boolean lookAround(Way way, int i, double left, double delta) {
    startAhead = arrival(way, i, left, delta, 0.0);
    startBack = arrival(way, i, left, -delta, 0.0);
    endAhead = arrival(way, i, left, 0.0, delta);
    endBack = arrival(way, i, left, 0.0, -delta);
    bothAhead = arrival(way, i, left, delta, delta);
    double sum = startAhead + startBack + endAhead + endBack + bothAhead;
    return !Double.isNaN(sum);
  }

  private double arrival(Way way, int i, double left, double start, double end) {
    return times.arrival(
        way.along()[i] + start * normalAlong[i],
        way.right()[i] + start * normalRight[i],
        way.along()[i + 1] + end * normalAlong[i + 1],
        way.right()[i + 1] + end * normalRight[i + 1],
        left);
  }

  /** Solves for the move; false if the matrix does not curve upward everywhere. */
  private boolean solve(int n, double damping) {
    double before = 0.0;
    double carried = 0.0;
    double pivot = 1.0;
    for (int i = 1; i < n - 1; i++) {
      double factor = i == 1 ? 0.0 : before / pivot;
      pivot = diagonal[i] + damping - factor * before;
      if (!(pivot > 1e-300) || !(pivot > 1e-9 * Math.abs(diagonal[i]))) {
        return false;
      }
      pivots[i] = pivot;
      carried = -gradient[i] - factor * carried;
      move[i] = carried;
      before = beside[i];
    }
    double after = 0.0;
    for (int i = n - 2; i >= 1; i--) {
      double coupling = i == n - 2 ? 0.0 : beside[i];
      after = (move[i] - coupling * after) / pivots[i];
      move[i] = after;
    }
    return true;
  }

  private Way moved(Way way, double share) {
    int n = way.along().length;
    double[] a = way.along().clone();
    double[] r = way.right().clone();
    for (int i = 1; i < n - 1; i++) {
      double most = STRIDE * Math.min(way.metres(i - 1), way.metres(i));
      double by = Math.max(-most, Math.min(most, share * move[i]));
      a[i] += by * normalAlong[i];
      r[i] += by * normalRight[i];
    }
    return new Way(a, r, way.notBefore(), way.pinned());
  }
}
