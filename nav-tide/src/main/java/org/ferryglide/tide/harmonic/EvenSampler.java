package org.ferryglide.tide.harmonic;

import java.util.concurrent.atomic.AtomicReference;

/**
 * Values of a series at even steps, by blocks: each block is summed up at 24 Chebyshev points only,
 * and all its samples are interpolated from those.
 *
 * <p>A block is symmetrical about its middle. Its even part, the cosines, and its odd part, the
 * sines, are interpolated apart from 12 points of one half, and added for the later half and
 * subtracted for the earlier. A cosine of speed w interpolated at n Chebyshev points of [-H, H] is
 * off by at most (wH)^n / (2^(n-1) n!), which is what the length of a block is chosen by.
 *
 * <p>From block to block the cosines advance by one rotation, started afresh with every batch of
 * blocks.
 *
 * @see <a href="https://doi.org/10.1137/1.9781611975949">Trefethen, Approximation Theory and
 *     Approximation Practice (2019), chapters 2 to 8</a>
 */
final class EvenSampler {
  /** Chebyshev points of one half of a block. */
  private static final int POINTS = 12;

  private static final int ALL_POINTS = 2 * POINTS;

  /** What interpolation may be off by, summed over all constituents, in the unit of the series. */
  private static final double TOLERANCE = 1e-10;

  /** Room for node factors above 1 in the estimate of the error. */
  private static final double GREATEST_FACTOR = 2.0;

  private static final double GREATEST_HALF_SECONDS = 12 * 3600.0;
  private static final int GREATEST_HALF_SAMPLES = 720;

  /** Blocks that are summed up together. */
  private static final int BATCH = 32;

  private final double stepSeconds;
  private final double[] speeds;

  /** Samples in half a block; 0 if one by one is faster. */
  private final int half;

  /** By term and point: cosine, sine, and both times the point's distance from the middle. */
  private final double[] cosines;

  private final double[] sines;
  private final double[] timesCosines;
  private final double[] timesSines;

  /** By point and sample: what the point's even or odd part counts for. */
  private final double[][] evenWeights;

  private final double[][] oddWeights;

  /** Advance from block to block, by term. */
  private final double[] stepCosines;

  private final double[] stepSines;

  /** Workspace between uses; a caller that finds it taken makes another. */
  private final AtomicReference<Workspace> spare = new AtomicReference<>();

  private EvenSampler(double stepSeconds, double[] speeds, int half) {
    this.stepSeconds = stepSeconds;
    this.speeds = speeds;
    this.half = half;
    int count = speeds.length;
    cosines = new double[count * POINTS];
    sines = new double[count * POINTS];
    timesCosines = new double[count * POINTS];
    timesSines = new double[count * POINTS];
    evenWeights = new double[POINTS][half];
    oddWeights = new double[POINTS][half];
    stepCosines = new double[count];
    stepSines = new double[count];
    for (int i = 0; i < count; i++) {
      double advance = speeds[i] * (2 * half * stepSeconds);
      stepCosines[i] = Turns.cos(advance);
      stepSines[i] = Turns.sin(advance);
      for (int j = 0; j < POINTS; j++) {
        double time = point(j) * half * stepSeconds;
        double cosine = Turns.cos(speeds[i] * time);
        double sine = Turns.sin(speeds[i] * time);
        cosines[i * POINTS + j] = cosine;
        sines[i * POINTS + j] = sine;
        timesCosines[i * POINTS + j] = time * cosine;
        timesSines[i * POINTS + j] = time * sine;
      }
    }
    weigh();
  }

  /** Chebyshev point in (0, 1), the largest first. */
  private static double point(int j) {
    return Math.cos(Math.PI * (2 * j + 1) / (2 * ALL_POINTS));
  }

  /** Lagrange's polynomials through the points, as sums of products of Chebyshev polynomials. */
  private void weigh() {
    for (int m = 0; m < half; m++) {
      double angle = Math.acos((m + 0.5) / half);
      for (int j = 0; j < POINTS; j++) {
        double even = 0.5;
        double odd = 0.0;
        for (int k = 1; k < ALL_POINTS; k++) {
          double term =
              Math.cos(k * angle) * Math.cos(k * Math.PI * (2 * j + 1) / (2 * ALL_POINTS));
          if (k % 2 == 0) {
            even += term;
          } else {
            odd += term;
          }
        }
        evenWeights[j][m] = 2.0 * even / POINTS;
        oddWeights[j][m] = 2.0 * odd / POINTS;
      }
    }
  }

  static EvenSampler of(HarmonicConstants constants, double stepSeconds) {
    int count = constants.list().size();
    double[] speeds = new double[count];
    double[] sizes = new double[count];
    for (int i = 0; i < count; i++) {
      HarmonicConstant constant = constants.list().get(i);
      speeds[i] = constant.constituent().speedDegreesPerHour() / (360.0 * 3600.0);
      sizes[i] = GREATEST_FACTOR * constant.amplitude();
    }
    int half = (int) Math.min(halfLength(speeds, sizes) / stepSeconds, GREATEST_HALF_SAMPLES);
    return new EvenSampler(stepSeconds, speeds, half > ALL_POINTS ? half : 0);
  }

  /** The longest half block, seconds, that keeps the bound on the error. */
  private static double halfLength(double[] speeds, double[] sizes) {
    double least = 0.0;
    double most = GREATEST_HALF_SECONDS;
    for (int halving = 0; halving < 40; halving++) {
      double middle = 0.5 * (least + most);
      if (errorBound(speeds, sizes, middle) <= TOLERANCE) {
        least = middle;
      } else {
        most = middle;
      }
    }
    return least;
  }

  private static double errorBound(double[] speeds, double[] sizes, double halfSeconds) {
    double sum = 0.0;
    for (int i = 0; i < speeds.length; i++) {
      double term = 2.0 * sizes[i];
      for (int n = 1; n <= ALL_POINTS; n++) {
        term *= Terms.TWO_PI * Math.abs(speeds[i]) * halfSeconds / (2.0 * n);
      }
      sum += term;
    }
    return sum;
  }

  double stepSeconds() {
    return stepSeconds;
  }

  /** Fills samples that all belong to one stretch of terms, the first at a time. */
  void fill(Terms terms, double startSeconds, double[] out, int from, int to) {
    int block = 2 * half;
    if (block == 0 || to - from < block) {
      for (int i = from; i < to; i++) {
        out[i] = terms.value(startSeconds + (i - from) * stepSeconds);
      }
      return;
    }
    Workspace work = spare.getAndSet(null);
    if (work == null) {
      work = new Workspace(speeds.length, half);
    }
    for (int first = from; first < to; first += BATCH * block) {
      int blocks = Math.min(BATCH, (to - first + block - 1) / block);
      double middle = startSeconds + (first - from + half - 0.5) * stepSeconds;
      sumUp(terms, middle, blocks, work);
      for (int b = 0; b < blocks; b++) {
        interpolate(terms.mean, work, b, out, first + b * block, to);
      }
    }
    spare.set(work);
  }

  /** Even and odd parts of a batch of blocks at the points. */
  private void sumUp(Terms terms, double middle, int blocks, Workspace work) {
    boolean drifting = terms.isDrifting();
    advance(terms, middle, blocks, work);
    for (int j = 0; j < POINTS; j++) {
      double[] even = work.even[j];
      double[] odd = work.odd[j];
      for (int b = 0; b < BATCH; b++) {
        even[b] = 0.0;
        odd[b] = 0.0;
      }
      for (int i = 0; i < speeds.length; i++) {
        double cosine = cosines[i * POINTS + j];
        double sine = sines[i * POINTS + j];
        double[] real = work.real[i];
        double[] imaginary = work.imaginary[i];
        for (int b = 0; b < BATCH; b++) {
          even[b] += cosine * real[b];
          odd[b] -= sine * imaginary[b];
        }
        if (drifting) {
          double timesCosine = timesCosines[i * POINTS + j];
          double timesSine = timesSines[i * POINTS + j];
          double[] realRate = work.realRate[i];
          double[] imaginaryRate = work.imaginaryRate[i];
          for (int b = 0; b < BATCH; b++) {
            even[b] -= timesSine * imaginaryRate[b];
            odd[b] += timesCosine * realRate[b];
          }
        }
      }
    }
  }

  /** Complex amplitudes of every term in the middle of every block of a batch. */
  private void advance(Terms terms, double middle, int blocks, Workspace work) {
    double blockSeconds = 2 * half * stepSeconds;
    Terms.Amplitudes amplitudes = work.amplitudes;
    if (!terms.isDrifting()) {
      terms.amplitudes(middle, amplitudes);
    }
    for (int i = 0; i < speeds.length; i++) {
      double turns = speeds[i] * (middle - terms.epochSeconds);
      work.cosine[i] = Turns.cos(turns);
      work.sine[i] = Turns.sin(turns);
    }
    for (int b = 0; b < blocks; b++) {
      if (terms.isDrifting()) {
        terms.amplitudes(middle + b * blockSeconds, amplitudes);
      }
      for (int i = 0; i < speeds.length; i++) {
        double cosine = work.cosine[i];
        double sine = work.sine[i];
        work.real[i][b] = amplitudes.real[i] * cosine - amplitudes.imaginary[i] * sine;
        work.imaginary[i][b] = amplitudes.real[i] * sine + amplitudes.imaginary[i] * cosine;
        if (terms.isDrifting()) {
          work.realRate[i][b] =
              amplitudes.realRate[i] * cosine - amplitudes.imaginaryRate[i] * sine;
          work.imaginaryRate[i][b] =
              amplitudes.realRate[i] * sine + amplitudes.imaginaryRate[i] * cosine;
        }
        work.cosine[i] = cosine * stepCosines[i] - sine * stepSines[i];
        work.sine[i] = cosine * stepSines[i] + sine * stepCosines[i];
      }
    }
  }

  /** Samples of one block from its points; the last block of a stretch may be cut short. */
  private void interpolate(double mean, Workspace work, int b, double[] out, int first, int to) {
    double[] later = work.later;
    double[] earlier = work.earlier;
    for (int m = 0; m < half; m++) {
      later[m] = mean;
      earlier[m] = 0.0;
    }
    for (int j = 0; j < POINTS; j += 4) {
      add(later, evenWeights, j, work.even, b);
      add(earlier, oddWeights, j, work.odd, b);
    }
    int middle = first + half;
    int early = Math.min(half, to - first);
    for (int m = 0; m < early; m++) {
      int mirror = half - 1 - m;
      out[first + m] = later[mirror] - earlier[mirror];
    }
    int late = Math.min(half, to - middle);
    for (int m = 0; m < late; m++) {
      out[middle + m] = later[m] + earlier[m];
    }
  }

  /** Four points at once; the loop is one that the compiler turns into vector instructions. */
  private static void add(double[] sum, double[][] weights, int j, double[][] parts, int b) {
    double[] weight0 = weights[j];
    double[] weight1 = weights[j + 1];
    double[] weight2 = weights[j + 2];
    double[] weight3 = weights[j + 3];
    double part0 = parts[j][b];
    double part1 = parts[j + 1][b];
    double part2 = parts[j + 2][b];
    double part3 = parts[j + 3][b];
    for (int m = 0; m < sum.length; m++) {
      sum[m] += weight0[m] * part0 + weight1[m] * part1 + weight2[m] * part2 + weight3[m] * part3;
    }
  }

  /** What one call works in. */
  private static final class Workspace {
    final Terms.Amplitudes amplitudes;
    final double[] cosine;
    final double[] sine;
    final double[][] real;
    final double[][] imaginary;
    final double[][] realRate;
    final double[][] imaginaryRate;
    final double[][] even = new double[POINTS][BATCH];
    final double[][] odd = new double[POINTS][BATCH];
    final double[] later;
    final double[] earlier;

    Workspace(int terms, int half) {
      amplitudes = new Terms.Amplitudes(terms);
      cosine = new double[terms];
      sine = new double[terms];
      real = new double[terms][BATCH];
      imaginary = new double[terms][BATCH];
      realRate = new double[terms][BATCH];
      imaginaryRate = new double[terms][BATCH];
      later = new double[half];
      earlier = new double[half];
    }
  }
}
