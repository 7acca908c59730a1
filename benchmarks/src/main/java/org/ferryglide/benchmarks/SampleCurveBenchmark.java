package org.ferryglide.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ferryglide.tide.harmonic.Constituents;
import org.ferryglide.tide.harmonic.HarmonicConstant;
import org.ferryglide.tide.harmonic.HarmonicConstants;
import org.ferryglide.tide.harmonic.HarmonicPredictor;
import org.ferryglide.tide.harmonic.NodalConvention;
import org.ferryglide.tide.harmonic.NodalScheme;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How do heights at even steps grow with their number and with the constituents? */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SampleCurveBenchmark extends InFixedHeap {
  private static final double NEW_YEAR_2026 = 1767225600.0;

  /** Constituents, the first of the 37. */
  @Param({"4", "12", "37"})
  public int constituents;

  /** Heights, a minute apart. */
  @Param({"10", "1000", "100000"})
  public int samples;

  private HarmonicPredictor predictor;
  private double[] out;

  /** Invented constants. */
  @Setup
  public void prepare() {
    List<HarmonicConstant> list = new ArrayList<>();
    for (int i = 0; i < constituents; i++) {
      list.add(new HarmonicConstant(Constituents.STANDARD_37.get(i), 3.0 / (i + 1), 77.0 * i));
    }
    predictor =
        HarmonicPredictor.of(
            HarmonicConstants.of(NodalScheme.schureman(), 4.0, list), NodalConvention.MID_YEAR);
    out = new double[samples];
  }

  /** All heights. */
  @Benchmark
  public double[] fill() {
    predictor.fill(NEW_YEAR_2026, 60.0, samples, out, 0);
    return out;
  }
}
