package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.time.Instant;
import java.util.Arrays;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.water.EpochSeconds;

/**
 * One departure of a search: what comes of it, and by how much it satisfies each condition.
 *
 * <pre>{@code
 * if (departure.isFit()) {
 *   Instant arrival = departure.outcome().orElseThrow().arrival();
 * }
 * }</pre>
 */
public final class Departure implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double time;
  private final Outcome<SteeredRoute, NotPossible> outcome;
  private final double[] margins;

  Departure(double time, Outcome<SteeredRoute, NotPossible> outcome, double[] margins) {
    this.time = time;
    this.outcome = outcome;
    this.margins = margins;
  }

  /**
   * When it starts.
   *
   * @return the departure
   */
  public Instant time() {
    return EpochSeconds.toInstant(time);
  }

  double seconds() {
    return time;
  }

  /**
   * What comes of it. The notes of the stream's own are left out for speed: {@link
   * CourseToSteer#solve(Route, Instant)} adds them.
   *
   * @return the steered route, or why it is not possible
   */
  public Outcome<SteeredRoute, NotPossible> outcome() {
    return outcome;
  }

  /**
   * By how much each condition is satisfied, in the order of the search.
   *
   * @return one margin for each condition; NaN if the passage is not possible or the margin not
   *     known
   */
  public double[] margins() {
    return margins.clone();
  }

  /**
   * Whether the passage is possible and every condition satisfied.
   *
   * @return true if one may leave then, as far as this search knows
   */
  public boolean isFit() {
    if (!outcome.isSolved()) {
      return false;
    }
    for (double margin : margins) {
      if (!(margin >= 0.0)) { // NaN fails
        return false;
      }
    }
    return true;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Departure that
        && time == that.time
        && outcome.equals(that.outcome)
        && Arrays.equals(margins, that.margins);
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(time) + outcome.hashCode();
  }

  @Override
  public String toString() {
    return time() + ": " + outcome + (isFit() ? ", fit" : ", not fit");
  }
}
