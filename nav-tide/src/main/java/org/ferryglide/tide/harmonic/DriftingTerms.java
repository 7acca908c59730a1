package org.ferryglide.tide.harmonic;

/**
 * Terms whose complex amplitudes follow the moon's node within the stretch, as cubics in x, which
 * goes from -1 to 1 over it.
 */
final class DriftingTerms extends Terms {
  /** Coefficients by power of x, then by term. */
  private final double[][] real;

  private final double[][] imaginary;
  private final double halfLength;

  DriftingTerms(
      double startSeconds,
      double endSeconds,
      double mean,
      double[] speeds,
      double[][] real,
      double[][] imaginary) {
    super(startSeconds, endSeconds, 0.5 * (startSeconds + endSeconds), mean, speeds);
    this.real = real;
    this.imaginary = imaginary;
    this.halfLength = 0.5 * (endSeconds - startSeconds);
  }

  private static double cubic(double[][] c, int i, double x) {
    return c[0][i] + x * (c[1][i] + x * (c[2][i] + x * c[3][i]));
  }

  private static double cubicRate(double[][] c, int i, double x) {
    return c[1][i] + x * (2.0 * c[2][i] + x * 3.0 * c[3][i]);
  }

  @Override
  double value(double seconds) {
    double elapsed = seconds - epochSeconds;
    double x = elapsed / halfLength;
    double sum = 0.0;
    for (int i = 0; i < speeds.length; i++) {
      double turns = speeds[i] * elapsed;
      sum += cubic(real, i, x) * Turns.cos(turns) - cubic(imaginary, i, x) * Turns.sin(turns);
    }
    return mean + sum;
  }

  @Override
  double rate(double seconds) {
    double elapsed = seconds - epochSeconds;
    double x = elapsed / halfLength;
    double sum = 0.0;
    for (int i = 0; i < speeds.length; i++) {
      double turns = speeds[i] * elapsed;
      double radiansPerSecond = TWO_PI * speeds[i];
      double alongCosine =
          cubicRate(real, i, x) / halfLength - radiansPerSecond * cubic(imaginary, i, x);
      double alongSine =
          cubicRate(imaginary, i, x) / halfLength + radiansPerSecond * cubic(real, i, x);
      sum += alongCosine * Turns.cos(turns) - alongSine * Turns.sin(turns);
    }
    return sum;
  }

  @Override
  double greatestRateChange() {
    double sum = 0.0;
    for (int i = 0; i < speeds.length; i++) {
      double radiansPerSecond = TWO_PI * speeds[i];
      double size = bound(i, 1.0, 1.0, 1.0, 1.0);
      double change = bound(i, 0.0, 1.0, 2.0, 3.0) / halfLength;
      double changeOfChange = bound(i, 0.0, 0.0, 2.0, 6.0) / (halfLength * halfLength);
      sum += (size * radiansPerSecond + 2.0 * change) * radiansPerSecond + changeOfChange;
    }
    return sum;
  }

  /** Bound on the magnitude of a cubic, or of a derivative of it, for x in [-1, 1]. */
  private double bound(int i, double... weights) {
    double sum = 0.0;
    for (int power = 0; power < weights.length; power++) {
      sum += weights[power] * Math.hypot(real[power][i], imaginary[power][i]);
    }
    return sum;
  }

  @Override
  double greatestSwing() {
    double sum = 0.0;
    for (int i = 0; i < speeds.length; i++) {
      sum += bound(i, 1.0, 1.0, 1.0, 1.0);
    }
    return sum;
  }

  @Override
  boolean isDrifting() {
    return true;
  }

  @Override
  void amplitudes(double seconds, Amplitudes out) {
    double x = (seconds - epochSeconds) / halfLength;
    for (int i = 0; i < speeds.length; i++) {
      out.real[i] = cubic(real, i, x);
      out.imaginary[i] = cubic(imaginary, i, x);
      out.realRate[i] = cubicRate(real, i, x) / halfLength;
      out.imaginaryRate[i] = cubicRate(imaginary, i, x) / halfLength;
    }
  }
}
