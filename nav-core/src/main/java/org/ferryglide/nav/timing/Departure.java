package org.ferryglide.nav.timing;

import java.io.Serializable;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredRoute;

/**
 * One departure of a search: what comes of it, and what each condition says of it.
 *
 * <pre>{@code
 * if (departure.isFit()) {
 *   Instant arrival = departure.outcome().orElseThrow().arrival();
 * }
 * }</pre>
 */
public final class Departure implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double seconds;
  private final Outcome<SteeredRoute, NotPossible> outcome;
  private final List<Verdict> verdicts;

  Departure(double seconds, Outcome<SteeredRoute, NotPossible> outcome, List<Verdict> verdicts) {
    this.seconds = seconds;
    this.outcome = outcome;
    this.verdicts = List.copyOf(verdicts);
  }

  /**
   * When it starts.
   *
   * @return the departure
   */
  public Instant time() {
    return EpochSeconds.toInstant(seconds);
  }

  double seconds() {
    return seconds;
  }

  /**
   * What comes of it. The notes of the stream's own are left out for speed: {@link
   * org.ferryglide.nav.steer.CourseToSteer#solve(org.ferryglide.nav.steer.Route, Instant)} adds
   * them.
   *
   * @return the steered route, or why it is not possible
   */
  public Outcome<SteeredRoute, NotPossible> outcome() {
    return outcome;
  }

  /**
   * What each condition says, in the order of the search.
   *
   * @return one verdict for each condition; none if the passage is not possible; unmodifiable
   */
  public List<Verdict> verdicts() {
    return verdicts;
  }

  /**
   * Whether the passage is possible and every condition was checked and holds, with or without a
   * warning.
   *
   * @return true if one may leave then, as far as this search knows
   */
  public boolean isFit() {
    return outcome.isSolved() && verdicts.stream().allMatch(Verdict::holds);
  }

  /**
   * Whether the search can tell: false where the stream or the wind is not known, or a condition
   * was not checked.
   *
   * @return true if {@link #isFit} rests on data
   */
  public boolean isKnown() {
    return outcome.<Boolean>match(
        passage ->
            verdicts.stream().anyMatch(verdict -> verdict.answer() == Verdict.Answer.STOPPED)
                || verdicts.stream()
                    .noneMatch(verdict -> verdict.answer() == Verdict.Answer.NOT_CHECKED),
        why -> !why.isForWantOfData());
  }

  /**
   * The least margin of the conditions, as a share of the step from the limit that stops to the one
   * that warns; NaN if the passage is not possible or a condition was not checked.
   */
  double leastMargin() {
    double least = outcome.isSolved() ? Double.POSITIVE_INFINITY : Double.NaN;
    for (Verdict verdict : verdicts) {
      least = Math.min(least, verdict.marginOrNaN());
    }
    return least;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Departure that
        && seconds == that.seconds
        && outcome.equals(that.outcome)
        && verdicts.equals(that.verdicts);
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(seconds) + outcome.hashCode();
  }

  @Override
  public String toString() {
    return time() + ": " + outcome + (isFit() ? ", fit" : ", not fit");
  }
}
