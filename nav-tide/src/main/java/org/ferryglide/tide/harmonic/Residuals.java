package org.ferryglide.tide.harmonic;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;

/**
 * What an analysis left over: observed less fitted.
 *
 * <pre>{@code
 * double surge = residuals.largest(); // look at the record around residuals.largestAt()
 * }</pre>
 *
 * @param count how many values were fitted
 * @param rms root of the mean square, in the unit of the series
 * @param largest the residual that is largest in magnitude, with its sign
 * @param largestAt when it was observed
 * @param correlation of each residual with the next, in [-1, 1]; near 1 for slow weather, near 0
 *     for noise
 * @param explainedShare share of the record's variance that the fit explains, in [0, 1]
 */
record Residuals(
    int count,
    double rms,
    double largest,
    Instant largestAt,
    double correlation,
    double explainedShare)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts as an analysis found them.
   *
   * @param count how many values were fitted
   * @param rms root of the mean square
   * @param largest the residual largest in magnitude
   * @param largestAt when it was observed
   * @param correlation of each residual with the next
   * @param explainedShare share of variance explained
   */
  public Residuals {
    Objects.requireNonNull(largestAt, "largestAt");
  }
}
