package org.ferryglide.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicMask;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.fix.BearingLine;
import org.ferryglide.nav.fix.CockedHat;
import org.ferryglide.nav.fix.Fix;
import org.ferryglide.nav.fix.FixSolver;
import org.ferryglide.nav.position.Position;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What does a three-bearing fix cost, with covariance and notes, beside a general least-squares
 * solver over the same geodesics, and what with its cocked hat, whose corners are solved one by one
 * when asked for? At most 20 µs is the aim of both.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FixBenchmark extends InFixedHeap {
  private static final double[][] MARKS = {
    {56.331, -6.170, 27.0}, {56.285, -6.130, 113.5}, {56.290, -6.265, 253.0}
  };

  private List<BearingLine> lines;
  private FixSolver solver;

  /** Makes the lines and asserts that both solvers agree to a millimetre. */
  @Setup
  public void prepare() {
    lines = List.of(line(0), line(1), line(2));
    solver = FixSolver.standard();
    Fix fix = solver.solve(lines).orElseThrow();
    double[] peer = commonsMath();
    double metres =
        Geodesic.WGS84.Inverse(
                fix.position().latitudeDegrees(),
                fix.position().longitudeDegrees(),
                peer[0],
                peer[1],
                GeodesicMask.DISTANCE)
            .s12;
    if (!(metres < 0.001)) {
      throw new IllegalStateException("the solvers differ by " + metres + " m");
    }
  }

  private static BearingLine line(int i) {
    return BearingLine.of(
        "mark",
        Position.ofDegrees(MARKS[i][0], MARKS[i][1]),
        TrueBearing.ofDegrees(MARKS[i][2]),
        3.0);
  }

  /** The fix with all that goes with it. */
  @Benchmark
  public Fix threeBearingFix() {
    return solver.solve(lines).orElseThrow();
  }

  /** The fix and the cocked hat of its lines. */
  @Benchmark
  public CockedHat threeBearingFixAndCockedHat() {
    return solver.solve(lines).orElseThrow().cockedHat().orElseThrow();
  }

  /** Levenberg-Marquardt of Commons Math with the same geodesics, derivatives by differences. */
  @Benchmark
  public double[] commonsMath() {
    LeastSquaresProblem problem =
        new LeastSquaresBuilder()
            .start(new double[] {56.30, -6.20})
            .model(FixBenchmark::azimuths)
            .target(new double[3])
            .lazyEvaluation(false)
            .maxEvaluations(100)
            .maxIterations(100)
            .build();
    return new LevenbergMarquardtOptimizer()
        .withCostRelativeTolerance(1e-14)
        .withParameterRelativeTolerance(1e-13)
        .optimize(problem)
        .getPoint()
        .toArray();
  }

  private static Pair<RealVector, RealMatrix> azimuths(RealVector point) {
    double lat = point.getEntry(0);
    double lon = point.getEntry(1);
    double[] values = new double[3];
    double[][] jacobian = new double[3][2];
    double step = 1e-6;
    for (int i = 0; i < 3; i++) {
      double at = off(lat, lon, i);
      values[i] = at;
      jacobian[i][0] = (off(lat + step, lon, i) - off(lat - step, lon, i)) / (2 * step);
      jacobian[i][1] = (off(lat, lon + step, i) - off(lat, lon - step, i)) / (2 * step);
    }
    return new Pair<>(new ArrayRealVector(values), new Array2DRowRealMatrix(jacobian));
  }

  private static double off(double lat, double lon, int i) {
    double azimuth =
        Geodesic.WGS84.Inverse(lat, lon, MARKS[i][0], MARKS[i][1], GeodesicMask.AZIMUTH).azi1;
    return Math.IEEEremainder(azimuth - MARKS[i][2], 360.0);
  }
}
