package org.ferryglide.benchmarks;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.Geodesics;
import org.ferryglide.nav.geodesy.LegComparisons;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Is an array form ever slower than one call after another, where few rows are short lines or none?
 * {@link GeodesicBenchmark} has the short ones.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class LegRowsBenchmark extends InFixedHeap {
  private static final int ROWS = 8192;

  /** Which legs: half of them up to 20 km and half to 300 km; or anywhere. */
  @Param({"mixed", "far"})
  public String lines = "mixed";

  private final double[][] rows = new double[6][ROWS];
  private final double[] out = new double[LegComparisons.WIDTH_WITH_SEPARATION * ROWS];

  /** Draws the legs, fresh in each row. */
  @Setup
  public void draw() {
    SplittableRandom random = new SplittableRandom(1);
    double[] end = new double[RhumbLines.WIDTH];
    for (int i = 0; i < ROWS; i++) {
      rows[0][i] = 35 + 35 * random.nextDouble();
      rows[1][i] = 360 * random.nextDouble() - 180;
      rows[4][i] = 360 * random.nextDouble();
      double longest = random.nextBoolean() ? 20e3 : 300e3;
      rows[5][i] = 1000 + (longest - 1000) * random.nextDouble();
      RhumbLines.direct(rows[0][i], rows[1][i], rows[4][i], rows[5][i], end, 0);
      rows[2][i] = end[RhumbLines.LATITUDE];
      rows[3][i] = end[RhumbLines.LONGITUDE];
      if (lines.equals("far")) {
        rows[0][i] = 160 * random.nextDouble() - 80;
        rows[2][i] = 160 * random.nextDouble() - 80;
        rows[3][i] = 360 * random.nextDouble() - 180;
        rows[5][i] = 1e7 * random.nextDouble();
      }
    }
    for (double[][] both :
        new double[][][] {
          {rhumbInverseRows().clone(), rhumbInverseCalls().clone()},
          {rhumbDirectRows().clone(), rhumbDirectCalls().clone()},
          {geodesicInverseRows().clone(), geodesicInverseCalls().clone()},
          {geodesicDirectRows().clone(), geodesicDirectCalls().clone()},
          {comparisonRows().clone(), comparisonCalls().clone()},
          {separationRows().clone(), separationCalls().clone()},
        }) {
      agree(both[0], both[1]);
    }
  }

  /** To nine figures and more: the exact bounds are those of the tests. */
  private static void agree(double[] rows, double[] calls) {
    for (int i = 0; i < rows.length; i++) {
      if (!(Math.abs(Math.IEEEremainder(rows[i] - calls[i], 360.0))
              <= 1e-7 + 1e-10 * Math.abs(calls[i])
          || (Double.isNaN(rows[i]) && Double.isNaN(calls[i])))) {
        throw new IllegalStateException(
            "rows and calls differ: " + rows[i] + " and " + calls[i] + " at " + i);
      }
    }
  }

  /** Rhumb lines between two points, by the array form. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] rhumbInverseRows() {
    RhumbLines.inverse(Ellipsoid.WGS84, rows[0], rows[1], rows[2], rows[3], 0, ROWS, out, 0);
    return out;
  }

  /** The same, one call after another. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] rhumbInverseCalls() {
    for (int i = 0; i < ROWS; i++) {
      RhumbLines.inverse(
          Ellipsoid.WGS84,
          rows[0][i],
          rows[1][i],
          rows[2][i],
          rows[3][i],
          out,
          RhumbLines.WIDTH * i);
    }
    return out;
  }

  /** Ends of rhumb lines, by the array form. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] rhumbDirectRows() {
    RhumbLines.direct(Ellipsoid.WGS84, rows[0], rows[1], rows[4], rows[5], 0, ROWS, out, 0);
    return out;
  }

  /** The same, one call after another. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] rhumbDirectCalls() {
    for (int i = 0; i < ROWS; i++) {
      RhumbLines.direct(
          Ellipsoid.WGS84,
          rows[0][i],
          rows[1][i],
          rows[4][i],
          rows[5][i],
          out,
          RhumbLines.WIDTH * i);
    }
    return out;
  }

  /** Geodesics between two points, by the array form. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] geodesicInverseRows() {
    Geodesics.inverse(Ellipsoid.WGS84, rows[0], rows[1], rows[2], rows[3], 0, ROWS, out, 0);
    return out;
  }

  /** The same, one call after another. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] geodesicInverseCalls() {
    for (int i = 0; i < ROWS; i++) {
      Geodesics.inverse(
          Ellipsoid.WGS84,
          rows[0][i],
          rows[1][i],
          rows[2][i],
          rows[3][i],
          out,
          Geodesics.WIDTH * i);
    }
    return out;
  }

  /** Ends of geodesics, by the array form. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] geodesicDirectRows() {
    Geodesics.direct(Ellipsoid.WGS84, rows[0], rows[1], rows[4], rows[5], 0, ROWS, out, 0);
    return out;
  }

  /** The same, one call after another. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] geodesicDirectCalls() {
    for (int i = 0; i < ROWS; i++) {
      Geodesics.direct(
          Ellipsoid.WGS84,
          rows[0][i],
          rows[1][i],
          rows[4][i],
          rows[5][i],
          out,
          Geodesics.WIDTH * i);
    }
    return out;
  }

  /** Comparisons, by the array form. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] comparisonRows() {
    LegComparisons.compare(Ellipsoid.WGS84, rows[0], rows[1], rows[2], rows[3], 0, ROWS, out, 0);
    return out;
  }

  /** The same, one call after another. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] comparisonCalls() {
    for (int i = 0; i < ROWS; i++) {
      LegComparisons.compare(
          Ellipsoid.WGS84,
          rows[0][i],
          rows[1][i],
          rows[2][i],
          rows[3][i],
          out,
          LegComparisons.WIDTH * i);
    }
    return out;
  }

  /** Comparisons with separations, by the array form. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] separationRows() {
    LegComparisons.compareWithSeparation(
        Ellipsoid.WGS84, rows[0], rows[1], rows[2], rows[3], 0, ROWS, out, 0);
    return out;
  }

  /** The same, one call after another. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] separationCalls() {
    for (int i = 0; i < ROWS; i++) {
      LegComparisons.compareWithSeparation(
          Ellipsoid.WGS84,
          rows[0][i],
          rows[1][i],
          rows[2][i],
          rows[3][i],
          out,
          LegComparisons.WIDTH_WITH_SEPARATION * i);
    }
    return out;
  }
}
