package org.ferryglide.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Does a run fail when an agreement check does? This one always does; {@link BenchmarkTable} runs
 * it only when it is named, and must then return status 1.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
public class BrokenAgreementBenchmark {
  /** Disagrees. */
  @Setup
  public void agree() {
    throw new IllegalStateException("the solvers differ, as they are meant to here");
  }

  /** Never reached. */
  @Benchmark
  public double neverReached() {
    return 0.0;
  }
}
