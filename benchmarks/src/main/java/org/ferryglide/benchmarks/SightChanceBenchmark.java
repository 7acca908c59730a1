package org.ferryglide.benchmarks;

import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.special.Erf;
import org.ferryglide.nav.plane.Gaussian;
import org.ferryglide.nav.plane.SightChance;
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
 * What does the chance of coming within sight of a mark cost, beside a general quadrature to the
 * same accuracy? At most 20 µs is the aim.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SightChanceBenchmark extends InFixedHeap {
  private double sigmaX = 420.0;
  private double sigmaY = 160.0;
  private double offsetX = 150.0;
  private double offsetY = 230.0;
  private double radius = 500.0;

  /** Asserts that both quadratures agree. */
  @Setup
  public void prepare() {
    if (!(Math.abs(ellipse() - commonsMath()) < 1e-8)) {
      throw new IllegalStateException(ellipse() + " is not " + commonsMath());
    }
  }

  /** Passing by: two values of the normal distribution. */
  @Benchmark
  public double passing() {
    return SightChance.passing(sigmaX, offsetX, radius);
  }

  /** Marcum's Q function. */
  @Benchmark
  public double circleOffCentre() {
    return SightChance.withinCircle(sigmaX, sigmaX, offsetX, offsetY, radius);
  }

  /** An ellipse off centre. */
  @Benchmark
  public double ellipse() {
    return SightChance.withinCircle(sigmaX, sigmaY, offsetX, offsetY, radius);
  }

  /** The same by the iterated Gauss quadrature and the error function of Commons Math. */
  @Benchmark
  public double commonsMath() {
    double root = Math.sqrt(2.0);
    return new IterativeLegendreGaussIntegrator(10, 1e-10, 1e-10)
        .integrate(
            100_000,
            t -> {
              double chord = radius * Math.cos(t);
              double y = (radius * Math.sin(t) - offsetY) / sigmaY;
              double low = (-chord - offsetX) / (sigmaX * root);
              double high = (chord - offsetX) / (sigmaX * root);
              return Gaussian.density(y) / sigmaY * 0.5 * Erf.erf(low, high) * chord;
            },
            -Math.PI / 2,
            Math.PI / 2);
  }
}
