package org.ferryglide.tide.harmonic;

/** Terms whose amplitudes and phases do not change: those of a year, or held for good. */
final class SteadyTerms extends Terms {
  private final double[] sizes;

  /** Phases at the epoch, turns. */
  private final double[] phases;

  SteadyTerms(
      double startSeconds,
      double endSeconds,
      double epochSeconds,
      double mean,
      double[] speeds,
      double[] sizes,
      double[] phases) {
    super(startSeconds, endSeconds, epochSeconds, mean, speeds);
    this.sizes = sizes;
    this.phases = phases;
  }

  @Override
  double value(double seconds) {
    double elapsed = seconds - epochSeconds;
    double sum = 0.0;
    for (int i = 0; i < sizes.length; i++) {
      sum += sizes[i] * Turns.cos(phases[i] + speeds[i] * elapsed);
    }
    return mean + sum;
  }

  @Override
  double rate(double seconds) {
    double elapsed = seconds - epochSeconds;
    double sum = 0.0;
    for (int i = 0; i < sizes.length; i++) {
      sum -= sizes[i] * speeds[i] * Turns.sin(phases[i] + speeds[i] * elapsed);
    }
    return TWO_PI * sum;
  }

  @Override
  double greatestRateChange() {
    double sum = 0.0;
    for (int i = 0; i < sizes.length; i++) {
      sum += sizes[i] * (TWO_PI * speeds[i]) * (TWO_PI * speeds[i]);
    }
    return sum;
  }

  @Override
  double greatestSwing() {
    double sum = 0.0;
    for (double size : sizes) {
      sum += size;
    }
    return sum;
  }

  @Override
  boolean isDrifting() {
    return false;
  }

  @Override
  void amplitudes(double seconds, Amplitudes out) {
    for (int i = 0; i < sizes.length; i++) {
      out.real[i] = sizes[i] * Turns.cos(phases[i]);
      out.imaginary[i] = sizes[i] * Turns.sin(phases[i]);
      out.realRate[i] = 0.0;
      out.imaginaryRate[i] = 0.0;
    }
  }
}
