package org.ferryglide.nav.timing;

import java.io.Serializable;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.steer.Arrivals;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredRoute;
import org.jspecify.annotations.Nullable;

/**
 * One departure of a search: its outcome, and what each condition says of it.
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
  private final boolean possible;
  private final List<Verdict> verdicts;
  private final double arrival;
  private final double crossStreamShare;
  private final double reserve;
  private final double effort;

  /** How the outcome is worked out once it is asked for; null where it is known. */
  private final transient @Nullable Departing way;

  private volatile @Nullable Outcome<SteeredRoute, NotPossible> outcome;

  Departure(double seconds, Outcome<SteeredRoute, NotPossible> outcome, List<Verdict> verdicts) {
    this.seconds = seconds;
    this.outcome = outcome;
    this.verdicts = List.copyOf(verdicts);
    this.way = null;
    SteeredRoute passage = outcome.solved().orElse(null);
    possible = passage != null;
    arrival = passage == null ? Double.NaN : passage.arrivalSeconds();
    crossStreamShare = passage == null ? Double.NaN : passage.crossStreamShare();
    reserve = passage == null ? Double.NaN : passage.reserve().metresPerSecond();
    effort = passage == null ? Double.NaN : passage.effort().metres();
  }

  /** A possible departure of a search without conditions, by what {@link Arrivals} measured. */
  Departure(double seconds, double[] figures, Departing way) {
    this.seconds = seconds;
    this.verdicts = List.of();
    this.way = way;
    possible = true;
    arrival = figures[Arrivals.ARRIVAL];
    crossStreamShare = figures[Arrivals.CROSS_STREAM_SHARE];
    reserve = figures[Arrivals.RESERVE];
    effort = figures[Arrivals.EFFORT];
  }

  private Object writeReplace() {
    return way == null ? this : new Departure(seconds, outcome(), verdicts);
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

  /** When the passage ends, seconds since 1970; NaN if it is not possible. */
  double arrival() {
    return arrival;
  }

  /** The share of the speed spent across the stream; NaN if it is not possible. */
  double crossStreamShare() {
    return crossStreamShare;
  }

  /** The speed to spare, metres a second; NaN if it is not possible. */
  double reserve() {
    return reserve;
  }

  /** The effort, metres; NaN if it is not possible. */
  double effort() {
    return effort;
  }

  /**
   * The outcome. The stream's own notes are left out for speed: {@link
   * org.ferryglide.nav.steer.CourseToSteer#solve(org.ferryglide.nav.steer.Route, Instant)} adds
   * them. Where a route is searched without conditions it is worked out when it is first asked for,
   * so that a long search keeps no tracks that nobody wants.
   *
   * @return the steered route, or why it is not possible
   */
  public Outcome<SteeredRoute, NotPossible> outcome() {
    Outcome<SteeredRoute, NotPossible> known = outcome;
    if (known == null) {
      known = Objects.requireNonNull(way).leaving(seconds); // the same whichever thread is first
      outcome = known;
    }
    return known;
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
    return possible && verdicts.stream().allMatch(Verdict::holds);
  }

  /**
   * Whether the search can tell: false where the stream or the wind is not known, or a condition
   * was not checked.
   *
   * @return true if {@link #isFit} rests on data
   */
  public boolean isKnown() {
    if (!possible) {
      return !outcome().why().filter(NotPossible::isDataMissing).isPresent();
    }
    return verdicts.stream().anyMatch(verdict -> verdict.answer() == Verdict.Answer.STOPPED)
        || verdicts.stream().noneMatch(verdict -> verdict.answer() == Verdict.Answer.NOT_CHECKED);
  }

  /**
   * The least margin of the conditions, as a share of the step from the limit that stops to the one
   * that warns; NaN if the passage is not possible or a condition was not checked.
   */
  double leastMargin() {
    double least = possible ? Double.POSITIVE_INFINITY : Double.NaN;
    for (Verdict verdict : verdicts) {
      least = Math.min(least, verdict.marginOrNaN());
    }
    return least;
  }

  /** By time, figures and verdicts, so that comparing two searches solves no route again. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Departure that
        && seconds == that.seconds
        && possible == that.possible
        && Double.compare(arrival, that.arrival) == 0
        && Double.compare(crossStreamShare, that.crossStreamShare) == 0
        && Double.compare(reserve, that.reserve) == 0
        && Double.compare(effort, that.effort) == 0
        && verdicts.equals(that.verdicts)
        && (possible || outcome().equals(that.outcome()));
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(seconds) + Double.hashCode(arrival);
  }

  @Override
  public String toString() {
    return time()
        + ": "
        + (possible ? "arriving " + EpochSeconds.toInstant(arrival) : outcome().toString())
        + (isFit() ? ", fit" : ", not fit");
  }
}
