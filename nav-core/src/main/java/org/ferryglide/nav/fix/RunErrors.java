package org.ferryglide.nav.fix;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The errors of the runs that lines were carried along, and what they share: the rows of a fix,
 * brought to errors that are independent and of size one.
 */
final class RunErrors {

  /** Shared errors that no real runs can have are halved until they can; this often at most. */
  private static final int MOST_HALVINGS = 60;

  private final int n;

  /** For each pair of lines the covariance of both runs' ends, four figures; null for none. */
  private final double[] @Nullable [] shared;

  private final boolean pairs;
  private final double[] lower;

  private RunErrors(int n, double[] @Nullable [] shared, boolean pairs) {
    this.n = n;
    this.shared = shared;
    this.pairs = pairs;
    this.lower = new double[n * n];
    for (int i = 0; i < n; i++) {
      lower[i * n + i] = 1.0; // until weighed
    }
  }

  /** The errors of these lines' runs; null if none was carried. */
  static @Nullable RunErrors of(List<PositionLine> lines) {
    int n = lines.size();
    double[] @Nullable [] shared = new double[n * n][];
    int carried = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        shared[i * n + j] = ofPair(lines.get(i), lines.get(j));
      }
      carried += shared[i * n + i] != null ? 1 : 0;
    }
    return carried == 0 ? null : new RunErrors(n, shared, carried > 1);
  }

  /** Adds up the runs of both from the latest back, as long as they are the same. */
  private static double @Nullable [] ofPair(PositionLine a, PositionLine b) {
    double[] sum = null;
    double[] one = new double[4];
    PositionLine first = a;
    PositionLine second = b;
    boolean same = true;
    while (same
        && first instanceof TransferredLine left
        && second instanceof TransferredLine right) {
      left.sharedError(right, one);
      sum = sum == null ? new double[4] : sum;
      for (int k = 0; k < one.length; k++) {
        sum[k] += one[k];
      }
      same = left.sameRun(right);
      first = left.original();
      second = right.original();
    }
    return sum;
  }

  /** Brings rows of unit errors of observation to unit errors of all, each by itself. */
  void widen(double[][] rows) {
    for (int i = 0; i < n; i++) {
      double scale = 1.0 / Math.sqrt(1.0 + covariance(rows, i, i));
      for (int k = 0; k < rows[i].length; k++) {
        rows[i][k] *= scale;
      }
    }
  }

  /** Weighs the errors by rows whose slopes tell what a run's error does to each line. */
  void weigh(double[][] rows) {
    double share = pairs ? 1.0 : 0.0;
    for (int i = 0; i < MOST_HALVINGS && !factor(rows, share); i++) {
      share *= 0.5;
    }
  }

  /** Writes rows with errors made independent of each other, as weighed last. */
  void whiten(double[][] rows, double[][] out) {
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < out[i].length; k++) {
        double value = rows[i][k];
        for (int j = 0; j < i; j++) {
          value -= lower[i * n + j] * out[j][k];
        }
        out[i][k] = value / lower[i * n + i];
      }
    }
  }

  /** Cholesky's factor of the covariance of all residuals; false if there is none. */
  private boolean factor(double[][] rows, double share) {
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double value = i == j ? 1.0 + covariance(rows, i, j) : 0.0;
        if (i != j && share > 0.0) {
          value = share * covariance(rows, i, j);
        }
        double whole = value;
        for (int k = 0; k < j; k++) {
          value -= lower[i * n + k] * lower[j * n + k];
        }
        if (i == j) {
          if (!(value > 1e-9 * whole)) { // each line's own error of observation is 1
            return false;
          }
          lower[i * n + i] = Math.sqrt(value);
        } else {
          lower[i * n + j] = value / lower[j * n + j];
        }
      }
    }
    return true;
  }

  private double covariance(double[][] rows, int i, int j) {
    double[] c = shared[i * n + j];
    if (c == null) {
      return 0.0;
    }
    double[] a = rows[i];
    double[] b = rows[j];
    return a[1] * (c[0] * b[1] + c[1] * b[2]) + a[2] * (c[2] * b[1] + c[3] * b[2]);
  }
}
