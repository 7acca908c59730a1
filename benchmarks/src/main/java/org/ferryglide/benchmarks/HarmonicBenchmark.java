package org.ferryglide.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ferryglide.tide.harmonic.Constituent;
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
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What does one height cost from 37 constituents: in a year of one-minute heights, alone from a
 * prepared predictor, and as the plain sum of cosines?
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class HarmonicBenchmark extends InFixedHeap {
  private static final int MINUTES = 365 * 1440;
  private static final double NEW_YEAR_2026 = 1767225600.0;
  private static final double DAY_SECONDS = 86400.0;

  private HarmonicPredictor midYear = predictor(NodalConvention.MID_YEAR);
  private HarmonicPredictor atInstant = predictor(NodalConvention.AT_INSTANT);
  private double[] year = new double[MINUTES];
  private double[] amplitudes = new double[0];
  private double[] phasesRadians = new double[0];
  private double[] speedsRadiansPerSecond = new double[0];
  private double instant = NEW_YEAR_2026 + 1234567.0;

  private static HarmonicPredictor predictor(NodalConvention convention) {
    return HarmonicPredictor.of(constants(), convention);
  }

  /** Invented constants of a large mixed tide. */
  private static HarmonicConstants constants() {
    List<HarmonicConstant> list = new ArrayList<>();
    double amplitude = 3.0;
    double lag = 17.0;
    for (Constituent constituent : Constituents.STANDARD_37) {
      list.add(new HarmonicConstant(constituent, amplitude, lag));
      amplitude = Math.max(0.8 * amplitude, 0.02);
      lag += 77.0;
    }
    return HarmonicConstants.of(NodalScheme.schureman(), 4.0, list);
  }

  /** What the plain sum needs, corrections of the middle of 2026. */
  @Setup
  public void prepareThePlainSum() {
    HarmonicConstants constants = constants();
    int count = constants.list().size();
    amplitudes = new double[count];
    phasesRadians = new double[count];
    speedsRadiansPerSecond = new double[count];
    double[] corrections = new double[2 * count];
    constants
        .scheme()
        .corrections(NEW_YEAR_2026 + 182.5 * DAY_SECONDS, constants.constituents(), corrections);
    for (int i = 0; i < count; i++) {
      HarmonicConstant constant = constants.list().get(i);
      Constituent constituent = constant.constituent();
      amplitudes[i] = constant.amplitude() * corrections[2 * i];
      phasesRadians[i] =
          Math.toRadians(
              NodalScheme.schureman().argumentDegrees(constituent, NEW_YEAR_2026)
                  + corrections[2 * i + 1]
                  - constant.greenwichLagDegrees());
      speedsRadiansPerSecond[i] = Math.toRadians(constituent.speedDegreesPerHour() / 3600.0);
    }
  }

  /** A year of minutes in the mid-year convention, per height. */
  @Benchmark
  @OperationsPerInvocation(MINUTES)
  public double[] yearMidYear() {
    midYear.fill(NEW_YEAR_2026, 60.0, MINUTES, year, 0);
    return year;
  }

  /** A year of minutes with the corrections of every instant, per height. */
  @Benchmark
  @OperationsPerInvocation(MINUTES)
  public double[] yearAtInstant() {
    atInstant.fill(NEW_YEAR_2026, 60.0, MINUTES, year, 0);
    return year;
  }

  /** A year of minutes as the plain sum of cosines, per height. */
  @Benchmark
  @OperationsPerInvocation(MINUTES)
  public double[] yearPlainSum() {
    for (int minute = 0; minute < MINUTES; minute++) {
      year[minute] = plainSum(60.0 * minute);
    }
    return year;
  }

  /** One height from a prepared predictor, mid-year convention. */
  @Benchmark
  public double oneMidYear() {
    return midYear.value(instant);
  }

  /** One height from a prepared predictor, corrections of the instant. */
  @Benchmark
  public double oneAtInstant() {
    return atInstant.value(instant);
  }

  /** One height as the plain sum of cosines. */
  @Benchmark
  public double onePlainSum() {
    return plainSum(instant - NEW_YEAR_2026);
  }

  private double plainSum(double elapsedSeconds) {
    double sum = 4.0;
    for (int i = 0; i < amplitudes.length; i++) {
      sum +=
          amplitudes[i] * Math.cos(phasesRadians[i] + speedsRadiansPerSecond[i] * elapsedSeconds);
    }
    return sum;
  }
}
