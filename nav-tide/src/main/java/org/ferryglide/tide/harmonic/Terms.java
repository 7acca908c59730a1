package org.ferryglide.tide.harmonic;

/**
 * The cosines of a series over a stretch of time short enough for their amplitudes to be simple:
 * the series is the real part of the sum of c(t) exp(2πi w (t - epoch)).
 */
abstract class Terms {
  static final double TWO_PI = 2.0 * Math.PI;

  final double startSeconds;
  final double endSeconds;
  final double epochSeconds;
  final double mean;

  /** Speeds w, turns a second. */
  final double[] speeds;

  Terms(double startSeconds, double endSeconds, double epochSeconds, double mean, double[] speeds) {
    this.startSeconds = startSeconds;
    this.endSeconds = endSeconds;
    this.epochSeconds = epochSeconds;
    this.mean = mean;
    this.speeds = speeds;
  }

  boolean contains(double seconds) {
    return seconds >= startSeconds && seconds < endSeconds;
  }

  /** The series, in its unit. */
  abstract double value(double seconds);

  /** How fast the series changes, in its unit a second. */
  abstract double rate(double seconds);

  /** A bound on the magnitude of the second derivative, in the unit per second squared. */
  abstract double greatestRateChange();

  /** A bound on how far the series can be from its mean. */
  abstract double greatestSwing();

  /** Whether the amplitudes change within the stretch. */
  abstract boolean isDrifting();

  /** Writes c and its derivative per second at a time, real and imaginary parts, one per term. */
  abstract void amplitudes(double seconds, Amplitudes out);

  /** Room for the complex amplitudes of all terms. */
  static final class Amplitudes {
    final double[] real;
    final double[] imaginary;
    final double[] realRate;
    final double[] imaginaryRate;

    Amplitudes(int terms) {
      real = new double[terms];
      imaginary = new double[terms];
      realRate = new double[terms];
      imaginaryRate = new double[terms];
    }
  }
}
