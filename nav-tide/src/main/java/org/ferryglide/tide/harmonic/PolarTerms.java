package org.ferryglide.tide.harmonic;

/**
 * Terms whose sizes and phases follow the moon's node within the stretch, as cubics in x, which
 * goes from -1 to 1 over it. One cosine a term is enough, where {@link DriftingTerms} take a sine
 * as well; but the size must stay clear of 0, where a phase is no cubic.
 */
final class PolarTerms extends Terms {
  /** Powers 0 to 3 of the size, then of the phase, turns. */
  private static final int WIDTH = 8;

  private static final int PHASE = 4;

  /** Coefficients of one term after another. */
  private final double[] powers;

  private final double halfLength;

  PolarTerms(
      double startSeconds, double endSeconds, double mean, double[] speeds, double[] powers) {
    super(startSeconds, endSeconds, 0.5 * (startSeconds + endSeconds), mean, speeds);
    this.powers = powers;
    this.halfLength = 0.5 * (endSeconds - startSeconds);
  }

  /**
   * Makes the coefficients.
   *
   * @param sizes cubics by power, then by term
   * @param phases the same, turns
   */
  static double[] powers(double[][] sizes, double[][] phases, int count) {
    double[] powers = new double[WIDTH * count];
    for (int i = 0; i < count; i++) {
      for (int j = 0; j < PHASE; j++) {
        powers[WIDTH * i + j] = sizes[j][i];
        powers[WIDTH * i + PHASE + j] = phases[j][i];
      }
    }
    return powers;
  }

  private double cubic(int at, double x) {
    return powers[at] + x * (powers[at + 1] + x * (powers[at + 2] + x * powers[at + 3]));
  }

  private double cubicRate(int at, double x) {
    return (powers[at + 1] + x * (2.0 * powers[at + 2] + x * 3.0 * powers[at + 3])) / halfLength;
  }

  @Override
  double value(double seconds) {
    double elapsed = seconds - epochSeconds;
    double x = elapsed / halfLength;
    double sum = 0.0;
    for (int i = 0; i < speeds.length; i++) {
      double turns = cubic(WIDTH * i + PHASE, x) + speeds[i] * elapsed;
      sum += cubic(WIDTH * i, x) * Turns.cos(turns);
    }
    return mean + sum;
  }

  @Override
  double rate(double seconds) {
    double elapsed = seconds - epochSeconds;
    double x = elapsed / halfLength;
    double sum = 0.0;
    for (int i = 0; i < speeds.length; i++) {
      int at = WIDTH * i;
      double turns = cubic(at + PHASE, x) + speeds[i] * elapsed;
      double radiansPerSecond = TWO_PI * (speeds[i] + cubicRate(at + PHASE, x));
      sum +=
          cubicRate(at, x) * Turns.cos(turns) - cubic(at, x) * radiansPerSecond * Turns.sin(turns);
    }
    return sum;
  }

  /** Bound on the magnitude of a cubic, or of a derivative of it, for x in [-1, 1]. */
  private double bound(int at, double w0, double w1, double w2, double w3) {
    return w0 * Math.abs(powers[at])
        + w1 * Math.abs(powers[at + 1])
        + w2 * Math.abs(powers[at + 2])
        + w3 * Math.abs(powers[at + 3]);
  }

  @Override
  double greatestRateChange() {
    double sum = 0.0;
    double square = halfLength * halfLength;
    for (int i = 0; i < speeds.length; i++) {
      int at = WIDTH * i;
      double size = bound(at, 1.0, 1.0, 1.0, 1.0);
      double change = bound(at, 0.0, 1.0, 2.0, 3.0) / halfLength;
      double changeOfChange = bound(at, 0.0, 0.0, 2.0, 6.0) / square;
      double turning =
          TWO_PI * (Math.abs(speeds[i]) + bound(at + PHASE, 0.0, 1.0, 2.0, 3.0) / halfLength);
      double turningFaster = TWO_PI * bound(at + PHASE, 0.0, 0.0, 2.0, 6.0) / square;
      sum += changeOfChange + 2.0 * change * turning + size * (turning * turning + turningFaster);
    }
    return sum;
  }

  @Override
  double greatestSwing() {
    double sum = 0.0;
    for (int i = 0; i < speeds.length; i++) {
      sum += bound(WIDTH * i, 1.0, 1.0, 1.0, 1.0);
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
      int at = WIDTH * i;
      double size = cubic(at, x);
      double sizeRate = cubicRate(at, x);
      double turns = cubic(at + PHASE, x);
      double turning = TWO_PI * cubicRate(at + PHASE, x);
      double cosine = Turns.cos(turns);
      double sine = Turns.sin(turns);
      out.real[i] = size * cosine;
      out.imaginary[i] = size * sine;
      out.realRate[i] = sizeRate * cosine - size * turning * sine;
      out.imaginaryRate[i] = sizeRate * sine + size * turning * cosine;
    }
  }
}
