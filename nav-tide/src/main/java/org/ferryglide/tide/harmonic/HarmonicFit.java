package org.ferryglide.tide.harmonic;

import java.io.Serializable;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.ferryglide.nav.note.Note;

/**
 * What an analysis found: constants to predict from, how certain each is, and what was left over.
 *
 * <pre>{@code
 * HarmonicFit fit = HarmonicAnalysis.with(NodalScheme.schureman()).of(record);
 * double metres = fit.found("M2").get().amplitude();
 * double surgeRms = fit.residualRms();
 * }</pre>
 */
public final class HarmonicFit implements Serializable {

  private static final long serialVersionUID = 1L;

  private final NodalScheme scheme;
  private final double mean;

  /** NaN without a trend. */
  private final double trendPerYear;

  @SuppressWarnings("serial") // List.copyOf gives serializable lists
  private final List<FittedConstant> fitted;

  private final Residuals residuals;

  @SuppressWarnings("serial") // List.copyOf gives serializable lists
  private final List<Constituent> leftOut;

  @SuppressWarnings("serial") // List.copyOf gives serializable lists
  private final List<Note> notes;

  HarmonicFit(
      NodalScheme scheme,
      double mean,
      OptionalDouble trendPerYear,
      List<FittedConstant> fitted,
      Residuals residuals,
      List<Constituent> leftOut,
      List<Note> notes) {
    this.scheme = scheme;
    this.mean = mean;
    this.trendPerYear = trendPerYear.orElse(Double.NaN);
    this.fitted = List.copyOf(fitted);
    this.residuals = residuals;
    this.leftOut = leftOut;
    this.notes = notes;
  }

  /**
   * The constants to predict from, inferred ones among them; a trend is never part of them.
   *
   * @return constants of the scheme that the record was analysed with, about the record's mean,
   *     with the notes of the analysis
   */
  public HarmonicConstants constants() {
    return HarmonicConstants.of(
            scheme,
            mean,
            fitted.stream().map(FittedConstant::constant).collect(Collectors.toList()))
        .withNotes(notes);
  }

  /**
   * Everything found, in the order of the candidates, inferred ones behind those they follow from.
   *
   * @return unmodifiable list
   */
  public List<FittedConstant> fitted() {
    return fitted;
  }

  /**
   * What was found for one constituent.
   *
   * @param name name of the constituent
   * @return what was found; empty if it was not analysed for
   */
  public Optional<FittedConstant> found(String name) {
    return ConstituentNames.find(
            name, fitted.stream().map(FittedConstant::constituent).collect(Collectors.toList()))
        .flatMap(
            constituent ->
                fitted.stream().filter(f -> f.constituent().equals(constituent)).findFirst());
  }

  /**
   * The mean of the record, with a trend at its centre.
   *
   * @return in the unit of the series
   */
  public double mean() {
    return mean;
  }

  /**
   * The trend, if one was asked for.
   *
   * @return in the unit of the series per 365.25 days, rising positive
   */
  public OptionalDouble trendPerYear() {
    return Double.isNaN(trendPerYear) ? OptionalDouble.empty() : OptionalDouble.of(trendPerYear);
  }

  /**
   * How many values were fitted.
   *
   * @return the number
   */
  public int count() {
    return residuals.count();
  }

  /**
   * What the fit left over, observed less fitted, as a whole.
   *
   * @return root of the mean square, in the unit of the series
   */
  public double residualRms() {
    return residuals.rms();
  }

  /**
   * The largest residual of the fit.
   *
   * @return the residual that is largest in magnitude, with its sign, in the unit of the series
   */
  public double largestResidual() {
    return residuals.largest();
  }

  /**
   * When {@link #largestResidual} was observed; look at the record around it.
   *
   * @return the instant
   */
  public Instant largestResidualAt() {
    return residuals.largestAt();
  }

  /**
   * Whether what is left over is slow weather or noise.
   *
   * @return correlation of each residual with the next, in [-1, 1]; near 1 for slow weather, near 0
   *     for noise
   */
  public double residualCorrelation() {
    return residuals.correlation();
  }

  /**
   * Share of the record's variance that the fit explains.
   *
   * @return in [0, 1]
   */
  public double explainedShare() {
    return residuals.explainedShare();
  }

  /**
   * Candidates that the record is too short, or its steps too long, to tell apart.
   *
   * @return unmodifiable list
   */
  public List<Constituent> leftOut() {
    return leftOut;
  }

  /**
   * What a user of the constants should know.
   *
   * @return unmodifiable list
   */
  public List<Note> notes() {
    return notes;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HarmonicFit that
        && scheme.equals(that.scheme)
        && Double.compare(mean, that.mean) == 0
        && Double.compare(trendPerYear, that.trendPerYear) == 0
        && fitted.equals(that.fitted)
        && residuals.equals(that.residuals)
        && leftOut.equals(that.leftOut)
        && notes.equals(that.notes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(scheme, mean, trendPerYear, fitted, residuals, leftOut, notes);
  }

  /** How many constants, and what they leave. */
  @Override
  public String toString() {
    return "fit of " + fitted.size() + " constants, " + residuals;
  }
}
