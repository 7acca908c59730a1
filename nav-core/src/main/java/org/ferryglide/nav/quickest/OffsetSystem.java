package org.ferryglide.nav.quickest;

/**
 * How the arrival depends on how far each place of a way is moved aside: first and second
 * derivatives, and the move that Newton's method makes of them. The matrix has three bands since a
 * place only changes the tracks on either side of it.
 *
 * <p>Derivatives are differences of the times themselves, so that whatever enters a time is in
 * them. Not thread-safe.
 */
final class OffsetSystem {
  /** A place moves by at most this share of a track in one round. */
  private static final double STRIDE = 0.7;

  private final TrackTimes times;
  private int n;

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

  OffsetSystem(TrackTimes times) {
    this.times = times;
  }

  private void fit() {
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

  /** First and second derivatives of the arrival by the offsets. */
  void measure(Way way) {
    n = way.along().length;
    fit();
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
      if (way.isFixed(i)) {
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
      if (way.isFixed(i)) {
        gradient[i] = 0.0;
        beside[i] = 0.0;
        if (i > 0) {
          beside[i - 1] = 0.0;
        }
        diagonal[i] = 1.0;
      }
    }
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
  boolean solve(double damping) {
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

  /** The greatest curvature by one place, seconds for a square metre. */
  double scale() {
    double scale = 0.0;
    for (int i = 1; i < n - 1; i++) {
      scale = Math.max(scale, Math.abs(diagonal[i]));
    }
    return scale;
  }

  /** What a share of the move would gain if the arrival ran straight on, seconds. */
  double predicted(double share) {
    double gain = 0.0;
    for (int i = 1; i < n - 1; i++) {
      gain -= share * move[i] * gradient[i];
    }
    return Math.abs(gain);
  }

  /** The way with its places moved by a share of the move. */
  Way moved(Way way, double share) {
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
