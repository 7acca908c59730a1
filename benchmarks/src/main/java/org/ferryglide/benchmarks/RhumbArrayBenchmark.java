package org.ferryglide.benchmarks;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What does a row of a large table of rhumb lines cost, on one processor and on all? */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class RhumbArrayBenchmark extends InFixedHeap {
  private static final int ROWS = 200_000;

  private final double[] lat1 = new double[ROWS];
  private final double[] lon1 = new double[ROWS];
  private final double[] lat2 = new double[ROWS];
  private final double[] lon2 = new double[ROWS];
  private final double[] out = new double[2 * ROWS];

  /** Draws the rows: any two points of the earth. */
  @Setup
  public void drawRows() {
    SplittableRandom random = new SplittableRandom(2);
    for (int i = 0; i < ROWS; i++) {
      lat1[i] = 180 * random.nextDouble() - 90;
      lon1[i] = 360 * random.nextDouble() - 180;
      lat2[i] = 180 * random.nextDouble() - 90;
      lon2[i] = 360 * random.nextDouble() - 180;
    }
  }

  /** A row on one processor. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] inverse() {
    RhumbLines.inverse(Ellipsoid.WGS84, lat1, lon1, lat2, lon2, 0, ROWS, out, 0);
    return out;
  }

  /** A row when all processors share the work. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] inverseInParallel() {
    RhumbLines.inverseInParallel(Ellipsoid.WGS84, lat1, lon1, lat2, lon2, 0, ROWS, out, 0);
    return out;
  }
}
