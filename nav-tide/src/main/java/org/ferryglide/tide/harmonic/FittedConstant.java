package org.ferryglide.tide.harmonic;

import java.io.Serializable;
import java.util.Objects;

/**
 * What an analysis found for one constituent, and how certain it is.
 *
 * <p>The standard errors are one sigma. They are those of the fit to noise as strong as what the
 * fit left over in the constituent's own band of frequencies; weather near the tide's long periods
 * is far stronger than in the semi-diurnal band. Where the noise grows without end towards long
 * periods, as weather's does, the errors of SA and SSA come out too small: in records of a year
 * with such noise, 82 in 100 of these constants lay within the circle that should hold 95. No
 * standard error allows for constituents that were left out.
 *
 * <pre>{@code
 * for (FittedConstant found : fit.fitted()) {
 *   boolean clear = found.amplitude() > 2 * found.amplitudeStandardError();
 * }
 * }</pre>
 *
 * @param constituent which constituent
 * @param amplitude its amplitude, nodal correction taken out, in the unit of the series
 * @param lagDegrees its Greenwich phase lag, degrees, in [0, 360)
 * @param amplitudeStandardError standard error of the amplitude, in the unit of the series
 * @param lagStandardErrorDegrees standard error of the lag, degrees; infinite if the amplitude is 0
 * @param rawAmplitude the amplitude as it is at the record's centre, nodal correction left in
 * @param rawLagDegrees the lag counted from the record's centre, without V and u, degrees, in [0,
 *     360)
 * @param inferred whether it was inferred from another constituent
 */
public record FittedConstant(
    Constituent constituent,
    double amplitude,
    double lagDegrees,
    double amplitudeStandardError,
    double lagStandardErrorDegrees,
    double rawAmplitude,
    double rawLagDegrees,
    boolean inferred)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts as an analysis found them.
   *
   * @param constituent which constituent
   * @param amplitude its amplitude
   * @param lagDegrees its Greenwich phase lag
   * @param amplitudeStandardError standard error of the amplitude
   * @param lagStandardErrorDegrees standard error of the lag
   * @param rawAmplitude the amplitude with the nodal correction left in
   * @param rawLagDegrees the lag counted from the record's centre
   * @param inferred whether it was inferred
   */
  public FittedConstant {
    Objects.requireNonNull(constituent, "constituent");
  }

  /**
   * The constant to predict from.
   *
   * @return amplitude and Greenwich phase lag
   */
  public HarmonicConstant constant() {
    return new HarmonicConstant(constituent, amplitude, lagDegrees);
  }

  /**
   * How far the constituent stands out of the noise, as a ratio of powers.
   *
   * @return (amplitude divided by its standard error) squared; infinite without noise
   */
  public double signalToNoise() {
    double ratio = amplitude / amplitudeStandardError;
    return ratio * ratio;
  }
}
