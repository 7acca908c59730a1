package org.ferryglide.tide.harmonic;

import java.util.function.BiConsumer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Least squares by normal equations, whose rows are made as they are needed, and once more for the
 * residuals and a refinement of the solution. Columns should be of about the same size.
 */
final class LeastSquares {
  /** Beyond this the solution has lost half of its digits. */
  private static final double GREATEST_CONDITION = 1e10;

  private static final double PIVOT = 1e-11;

  final double[] solution;
  final double[][] inverse;
  final double[] residuals;

  private LeastSquares(double[] solution, double[][] inverse, double[] residuals) {
    this.solution = solution;
    this.inverse = inverse;
    this.residuals = residuals;
  }

  /**
   * Solves for the columns.
   *
   * @param columns how many there are
   * @param values what the columns are fitted to
   * @param row writes the columns of one row
   * @throws IllegalArgumentException if the columns cannot be told apart
   */
  static LeastSquares solve(int columns, double[] values, BiConsumer<Integer, double[]> row) {
    double[][] normal = new double[columns][columns];
    double[] right = new double[columns];
    double[] x = new double[columns];
    for (int k = 0; k < values.length; k++) {
      row.accept(k, x);
      for (int i = 0; i < columns; i++) {
        double[] normalRow = normal[i];
        double xi = x[i];
        for (int j = 0; j <= i; j++) {
          normalRow[j] += xi * x[j];
        }
        right[i] += xi * values[k];
      }
    }
    for (int i = 0; i < columns; i++) {
      for (int j = 0; j < i; j++) {
        normal[j][i] = normal[i][j];
      }
    }
    RealMatrix matrix = new Array2DRowRealMatrix(normal, false);
    CholeskyDecomposition cholesky = decompose(matrix);
    RealMatrix inverse = cholesky.getSolver().getInverse();
    if (!(matrix.getNorm() * inverse.getNorm() <= GREATEST_CONDITION)) {
      throw indistinct();
    }
    double[] solution = cholesky.getSolver().solve(new ArrayRealVector(right, false)).toArray();
    double[] residuals = new double[values.length];
    leaveOver(solution, values, row, residuals, right);
    double[] refinement = cholesky.getSolver().solve(new ArrayRealVector(right, false)).toArray();
    for (int i = 0; i < columns; i++) {
      solution[i] += refinement[i];
    }
    leaveOver(solution, values, row, residuals, right);
    return new LeastSquares(solution, inverse.getData(), residuals);
  }

  /** Residuals of a solution, and what they project onto the columns. */
  private static void leaveOver(
      double[] solution,
      double[] values,
      BiConsumer<Integer, double[]> row,
      double[] residuals,
      double[] projected) {
    double[] x = new double[solution.length];
    java.util.Arrays.fill(projected, 0.0);
    for (int k = 0; k < values.length; k++) {
      row.accept(k, x);
      double fitted = 0.0;
      for (int i = 0; i < x.length; i++) {
        fitted += solution[i] * x[i];
      }
      residuals[k] = values[k] - fitted;
      for (int i = 0; i < x.length; i++) {
        projected[i] += x[i] * residuals[k];
      }
    }
  }

  private static CholeskyDecomposition decompose(RealMatrix matrix) {
    try {
      return new CholeskyDecomposition(
          matrix, CholeskyDecomposition.DEFAULT_RELATIVE_SYMMETRY_THRESHOLD, PIVOT);
    } catch (NonPositiveDefiniteMatrixException e) {
      throw indistinct();
    }
  }

  private static IllegalArgumentException indistinct() {
    return new IllegalArgumentException(
        "a record must tell all its constituents apart, but cannot tell some of these apart; choose"
            + " fewer, or by the Rayleigh criterion");
  }
}
