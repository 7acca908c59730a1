package org.ferryglide.tide.harmonic;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How strong the residual noise is in the band of each species, compared with white noise of the
 * same variance: the power of the residuals at frequencies between the fitted ones. The median
 * stands for the mean, so that single lines of the tide that were not fitted do not count as noise.
 * A band with few frequencies left, as in a short record, is never much quieter than white noise.
 */
final class NoiseBands {
  /** Speed of the mean lunar day, about which a species' constituents lie, degrees an hour. */
  private static final double LUNAR_DAY_SPEED = 14.4920521;

  private static final double HALF_WIDTH = 1.8;
  private static final double LONG_PERIOD_WIDTH = 2.0;

  /** Nearer than this to a fitted constituent, in turns over the record, the fit leaves nothing. */
  private static final double TURNS_APART = 0.7;

  private static final int MOST_FREQUENCIES = 60;

  /** The median of so many powers is within a third of the truth two times in three. */
  private static final int ENOUGH_FREQUENCIES = 16;

  /** Median of a power of noise, which is exponentially distributed, as a share of its mean. */
  private static final double MEDIAN_OF_MEAN = Math.log(2.0);

  private final ObservedSeries record;
  private final double[] residuals;
  private final double variance;
  private final List<Constituent> fitted;
  private final Map<Integer, Double> strengths = new HashMap<>();

  NoiseBands(ObservedSeries record, double[] residuals, double variance, List<Constituent> fitted) {
    this.record = record;
    this.residuals = residuals;
    this.variance = variance;
    this.fitted = fitted;
  }

  /** Power of the noise about a constituent, as a multiple of that of white noise. */
  double strengthAbout(Constituent constituent) {
    int band = (int) Math.round(Math.abs(constituent.speedDegreesPerHour()) / LUNAR_DAY_SPEED);
    return strengths.computeIfAbsent(band, this::strength);
  }

  private double strength(int band) {
    double least = band == 0 ? 0.0 : band * LUNAR_DAY_SPEED - HALF_WIDTH;
    double most = band == 0 ? LONG_PERIOD_WIDTH : band * LUNAR_DAY_SPEED + HALF_WIDTH;
    double step = 360.0 * 3600.0 / record.spanSeconds();
    double stride = Math.max(step, (most - least) / MOST_FREQUENCIES);
    double[] powers = new double[2 * MOST_FREQUENCIES];
    int count = 0;
    for (double speed = least + 0.5 * stride; speed < most; speed += stride) {
      if (isBetween(speed)) {
        powers[count++] = power(speed);
      }
    }
    double white = 2.0 * variance / residuals.length;
    if (count == 0 || !(white > 0.0)) {
      return 1.0;
    }
    Arrays.sort(powers, 0, count);
    double strength = powers[count / 2] / MEDIAN_OF_MEAN / white;
    // the median of a few powers may be small by chance: it counts for less the fewer there are
    return strength >= 1.0
        ? strength
        : Math.pow(strength, Math.min(1.0, (double) count / ENOUGH_FREQUENCIES));
  }

  private boolean isBetween(double speed) {
    return Rayleigh.turnsApart(speed, 0.0, record.spanSeconds()) >= TURNS_APART
        && fitted.stream()
            .allMatch(
                c ->
                    Rayleigh.turnsApart(speed, c.speedDegreesPerHour(), record.spanSeconds())
                        >= TURNS_APART);
  }

  /** Variance of a cosine's or sine's coefficient fitted to the residuals at a speed. */
  private double power(double speedDegreesPerHour) {
    double speed = speedDegreesPerHour / (360.0 * 3600.0);
    double first = record.epochSeconds(0);
    double real = 0.0;
    double imaginary = 0.0;
    for (int k = 0; k < residuals.length; k++) {
      double turns = speed * (record.epochSeconds(k) - first);
      real += residuals[k] * Turns.cos(turns);
      imaginary += residuals[k] * Turns.sin(turns);
    }
    double scale = 2.0 / residuals.length;
    return 0.5 * scale * scale * (real * real + imaginary * imaginary);
  }
}
