package org.ferryglide.benchmarks;

import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.basics.Angles;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What does reducing an angle cost beside everything that calls it? */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class BearingBenchmark extends InFixedHeap {
  private double angle = -123.4;

  /** An angle of either sign to [0, 360). */
  @Benchmark
  public double reduced() {
    return Angles.reduced(angle);
  }
}
