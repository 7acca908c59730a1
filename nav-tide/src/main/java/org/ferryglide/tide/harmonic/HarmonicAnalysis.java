package org.ferryglide.tide.harmonic;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;

/**
 * Finds the harmonic constants of a place from a record, by least squares.
 *
 * <p>Options are immutable; each {@code with} method returns changed ones. By default the
 * constituents are those of the scheme that drift apart by 0.97 turns or more over the record, so
 * that a calendar year counts as a whole one; nodal corrections are those of every instant, and
 * there is no trend.
 *
 * <pre>{@code
 * ObservedSeries record = ObservedSeries.read("gauge.csv", reader);
 * HarmonicFit fit = HarmonicAnalysis.with(NodalScheme.schureman()).of(record);
 * HarmonicTide tide =
 *     HarmonicTide.of("Skarra", "gauge zero", fit.constants(), NodalConvention.AT_INSTANT);
 * }</pre>
 *
 * <p>A short record cannot separate constituents of nearly the same speed: those it cannot separate
 * are left out with a warning ({@link HarmonicFit#notes}), and what is found then holds their share
 * too. At Boston, M2 from fifteen days is up to 0.27 m wrong, most of it N2; months, or {@linkplain
 * #withInference inference}, cure it.
 *
 * <p>Foreman's own conventions of 1977 are {@code with(NodalScheme.foreman(latitude))
 * .withNodesOfTheCentre().withInferenceAfterFit()}; with them his example of Tuktoyaktuk comes out
 * to his printed digits.
 */
public final class HarmonicAnalysis implements Serializable {

  private static final long serialVersionUID = 1L;

  private final NodalScheme scheme;

  @SuppressWarnings("serial") // List.copyOf gives serializable lists
  private final List<Constituent> candidates;

  private final double rayleigh;
  private final boolean trend;
  private final boolean nodesOfTheCentre;

  @SuppressWarnings("serial") // List.copyOf gives serializable lists
  private final List<Inference> inferences;

  private final boolean inferenceAfterFit;

  private HarmonicAnalysis(
      NodalScheme scheme,
      List<Constituent> candidates,
      double rayleigh,
      boolean trend,
      boolean nodesOfTheCentre,
      List<Inference> inferences,
      boolean inferenceAfterFit) {
    this.scheme = scheme;
    this.candidates = candidates;
    this.rayleigh = rayleigh;
    this.trend = trend;
    this.nodesOfTheCentre = nodesOfTheCentre;
    this.inferences = inferences;
    this.inferenceAfterFit = inferenceAfterFit;
  }

  /**
   * Analysis with the constituents and nodal corrections of a scheme.
   *
   * @param scheme which scheme; the constants found belong to it
   * @return the options
   */
  public static HarmonicAnalysis with(NodalScheme scheme) {
    return new HarmonicAnalysis(
        Objects.requireNonNull(scheme, "scheme"),
        scheme.constituents(),
        Rayleigh.TELLS_APART,
        false,
        false,
        List.of(),
        false);
  }

  /**
   * Analysis for chosen constituents, whether or not the record is long enough for them.
   *
   * @param constituents the constituents, each once, each known to the scheme
   * @return the options
   * @throws IllegalArgumentException if the scheme does not know one
   */
  public HarmonicAnalysis withConstituents(List<Constituent> constituents) {
    requireKnown(constituents);
    return new HarmonicAnalysis(
        scheme,
        List.copyOf(constituents),
        0.0,
        trend,
        nodesOfTheCentre,
        inferences,
        inferenceAfterFit);
  }

  /**
   * Analysis for those of some candidates that the record is long enough for.
   *
   * @param constituents the candidates, the most important first: of two that cannot be told apart
   *     the first is kept
   * @param leastTurns how many turns two constituents, or one and the mean, must drift apart over
   *     the record to be told apart; 1 is the Rayleigh criterion, less asks for a quiet record
   * @return the options
   * @throws IllegalArgumentException if the scheme does not know a candidate, or {@code leastTurns}
   *     is not finite and above 0
   */
  public HarmonicAnalysis withCandidates(List<Constituent> constituents, double leastTurns) {
    requireKnown(constituents);
    return new HarmonicAnalysis(
        scheme,
        List.copyOf(constituents),
        Arguments.positive(leastTurns, "least turns apart", "turns"),
        trend,
        nodesOfTheCentre,
        inferences,
        inferenceAfterFit);
  }

  private void requireKnown(List<Constituent> constituents) {
    for (Constituent constituent : constituents) {
      if (!scheme.knows(constituent)) {
        throw CompoundNodes.unknown(constituent, scheme);
      }
    }
  }

  /**
   * Analysis with a straight line through time besides the mean. The line is kept apart from the
   * constants and never goes into a prediction.
   *
   * @return the options
   */
  public HarmonicAnalysis withTrend() {
    return new HarmonicAnalysis(
        scheme, candidates, rayleigh, true, nodesOfTheCentre, inferences, inferenceAfterFit);
  }

  /**
   * Analysis with the nodal corrections of the record's central time for the whole record, as
   * Foreman's; good for records up to a year.
   *
   * @return the options
   */
  public HarmonicAnalysis withNodesOfTheCentre() {
    return new HarmonicAnalysis(
        scheme, candidates, rayleigh, trend, true, inferences, inferenceAfterFit);
  }

  /**
   * Analysis that infers one more constituent, which the record is too short for, from one close to
   * it, as known from a longer record nearby; it is then not analysed for.
   *
   * <pre>{@code
   * analysis.withInference(Constituents.P1, Constituents.K1, 0.331, 7.07);
   * }</pre>
   *
   * @param inferred the constituent that cannot be told apart
   * @param from the constituent close to it, which the record is analysed for
   * @param amplitudeRatio amplitude of the inferred one divided by that of the other, above 0
   * @param lagDifferenceDegrees Greenwich phase lag of the inferred one less that of the other,
   *     degrees
   * @return the options
   * @throws IllegalArgumentException if the two are the same, the scheme does not know one of them,
   *     the ratio is not above 0, or a number is not finite
   */
  public HarmonicAnalysis withInference(
      Constituent inferred, Constituent from, double amplitudeRatio, double lagDifferenceDegrees) {
    requireKnown(List.of(inferred, from));
    List<Inference> more = new ArrayList<>(inferences);
    more.add(new Inference(inferred, from, amplitudeRatio, lagDifferenceDegrees));
    return new HarmonicAnalysis(
        scheme,
        candidates,
        rayleigh,
        trend,
        nodesOfTheCentre,
        List.copyOf(more),
        inferenceAfterFit);
  }

  /**
   * Inference by correcting the fit afterwards, as Foreman (1977) does, instead of within the fit.
   * Only for agreement with analyses made that way: within the fit is more exact, in a record with
   * gaps above all.
   *
   * @return the options
   */
  public HarmonicAnalysis withInferenceAfterFit() {
    return new HarmonicAnalysis(
        scheme, candidates, rayleigh, trend, nodesOfTheCentre, inferences, true);
  }

  /**
   * Analyses a record.
   *
   * @param record the record
   * @return what was found
   * @throws IllegalArgumentException if the record has fewer values than there are figures to find,
   *     it cannot tell some constituents apart, or a constituent to infer from is not analysed for
   */
  public HarmonicFit of(ObservedSeries record) {
    List<Constituent> wanted = new ArrayList<>(candidates);
    for (Inference inference : inferences) {
      wanted.remove(inference.inferred());
    }
    Rayleigh rule = Rayleigh.choose(wanted, record, rayleigh);
    List<Constituent> chosen = rayleigh > 0.0 ? rule.chosen : List.copyOf(wanted);
    for (Inference inference : inferences) {
      if (!chosen.contains(inference.from())) {
        throw new IllegalArgumentException(
            "a constituent to infer from must be analysed for, but "
                + inference.from()
                + " was not");
      }
    }
    if (chosen.isEmpty()) {
      throw new IllegalArgumentException(
          "a record must be long enough for at least one constituent, but was "
              + record.spanSeconds() / 3600.0
              + " hours");
    }
    return new FitMaker(this, record, chosen, rule).fit();
  }

  NodalScheme scheme() {
    return scheme;
  }

  List<Constituent> candidates() {
    return candidates;
  }

  boolean hasTrend() {
    return trend;
  }

  boolean hasNodesOfTheCentre() {
    return nodesOfTheCentre;
  }

  boolean infersAfterFit() {
    return inferenceAfterFit;
  }

  List<Inference> inferences() {
    return inferences;
  }
}
