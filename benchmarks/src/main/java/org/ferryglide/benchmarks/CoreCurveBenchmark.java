package org.ferryglide.benchmarks;

import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.LegComparisons;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** How do comparisons of rhumb line and geodesic grow with the legs, and what do cores take off? */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class CoreCurveBenchmark extends InFixedHeap {
  /** Legs of 1 to 20 km. */
  @Param({"10000", "100000", "400000"})
  public int legs;

  /** Threads of the pool. */
  @Param({"1", "2"})
  public int cores;

  private ForkJoinPool pool;
  private final double[][] rows = new double[4][];
  private double[] out;

  /** Draws the legs. */
  @Setup
  public void prepare() {
    SplittableRandom random = new SplittableRandom(1);
    for (int k = 0; k < 4; k++) {
      rows[k] = new double[legs];
    }
    for (int i = 0; i < legs; i++) {
      rows[0][i] = 35 + 35 * random.nextDouble();
      rows[1][i] = 358 * random.nextDouble() - 179;
      rows[2][i] = rows[0][i] + 0.2 * random.nextDouble() - 0.1;
      rows[3][i] = rows[1][i] + 0.2 * random.nextDouble() - 0.1;
    }
    out = new double[LegComparisons.WIDTH * legs];
    pool = new ForkJoinPool(cores);
  }

  /** Ends the threads. */
  @TearDown
  public void close() {
    pool.shutdown();
  }

  /** All comparisons. */
  @Benchmark
  public double[] compareOnCores() throws InterruptedException, ExecutionException {
    pool.submit(
            () ->
                LegComparisons.compareInParallel(
                    Ellipsoid.WGS84, rows[0], rows[1], rows[2], rows[3], 0, legs, out, 0))
        .get();
    return out;
  }
}
