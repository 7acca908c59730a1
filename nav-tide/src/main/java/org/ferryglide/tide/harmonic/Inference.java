package org.ferryglide.tide.harmonic;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;

/**
 * How a constituent that a record is too short for follows from one close to it, as known from a
 * longer record nearby.
 *
 * <pre>{@code
 * Inference p1 = new Inference(Constituents.P1, Constituents.K1, 0.331, 7.07);
 * }</pre>
 *
 * @param inferred the constituent that cannot be told apart
 * @param from the constituent close to it, which the record is analysed for
 * @param amplitudeRatio amplitude of the inferred one divided by that of the other, above 0
 * @param lagDifferenceDegrees Greenwich phase lag of the inferred one less that of the other,
 *     degrees
 */
record Inference(
    Constituent inferred, Constituent from, double amplitudeRatio, double lagDifferenceDegrees)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param inferred the constituent that cannot be told apart
   * @param from the constituent close to it
   * @param amplitudeRatio amplitude of the inferred one divided by that of the other
   * @param lagDifferenceDegrees lag of the inferred one less that of the other, degrees
   * @throws IllegalArgumentException if the two are the same, the ratio is not above 0, or a number
   *     is not finite
   */
  public Inference {
    Objects.requireNonNull(inferred, "inferred");
    Objects.requireNonNull(from, "from");
    if (inferred.equals(from)) {
      throw new IllegalArgumentException(
          "a constituent must be inferred from another, but " + inferred + " was from itself");
    }
    amplitudeRatio = Arguments.positive(amplitudeRatio, "amplitude ratio", "times");
    lagDifferenceDegrees = Arguments.finite(lagDifferenceDegrees, "lag difference", "degrees");
  }
}
