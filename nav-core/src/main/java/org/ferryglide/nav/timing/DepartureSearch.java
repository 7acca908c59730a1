package org.ferryglide.nav.timing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.Route;
import org.ferryglide.nav.steer.SteeredRoute;

/**
 * Tries a passage at every departure over hours or weeks, and finds when one may leave and when
 * best.
 *
 * <pre>{@code
 * Departures departures =
 *     DepartureSearch.of(solver, route)
 *         .withCondition(Condition.during("daylight", daylight, Duration.ofHours(1)))
 *         .withStep(Duration.ofMinutes(5))
 *         .between(firstOfJune, fifteenthOfJune);
 * departures.windows(); // when one may leave
 * departures.earliestArrival(); // the departure that arrives first
 * }</pre>
 *
 * <p>Edges are refined to the second. Gaps and windows narrower than a step are looked for wherever
 * the margins of three departures in a row, or the share of speed they spend across the stream,
 * leave room for one; a passage that turns impossible for a few minutes without a sign of it at the
 * steps on either side can still be missed. Searches do not change once made, and may run on all
 * cores at once.
 *
 * <p>A search is not serializable, since its conditions and its way of departing may be any code:
 * send the solver, the route and the times, which are, and make the search where it is to run.
 */
public final class DepartureSearch {
  /** The most departures one search may try. */
  private static final int MOST_DEPARTURES = 1_000_000;

  private final Departing way;
  private final List<Condition> conditions;
  private final Duration step;
  private final boolean parallel;

  private DepartureSearch(
      Departing way, List<Condition> conditions, Duration step, boolean parallel) {
    this.way = way;
    this.conditions = conditions;
    this.step = step;
    this.parallel = parallel;
  }

  /**
   * A search without conditions, every ten minutes, on one core.
   *
   * @param solver how each leg is steered
   * @param route the route
   * @return the search; the {@code with} methods give changed copies
   */
  public static DepartureSearch of(CourseToSteer solver, Route route) {
    return of(
        Departing.along(
            Objects.requireNonNull(solver, "solver"), Objects.requireNonNull(route, "route")));
  }

  /**
   * A search without conditions, every ten minutes, on one core.
   *
   * @param way how the passage of a departure is worked out
   * @return the search; the {@code with} methods give changed copies
   */
  public static DepartureSearch of(Departing way) {
    return new DepartureSearch(
        Objects.requireNonNull(way, "way"), List.of(), Duration.ofMinutes(10), false);
  }

  /**
   * The same search with one more condition.
   *
   * @param condition what a passage must satisfy
   * @return the changed search
   */
  public DepartureSearch withCondition(Condition condition) {
    List<Condition> more = new ArrayList<>(conditions);
    more.add(Objects.requireNonNull(condition, "condition"));
    return new DepartureSearch(way, Collections.unmodifiableList(more), step, parallel);
  }

  /**
   * The same search with another step.
   *
   * @param step time between departures, at least a second
   * @return the changed search
   * @throws IllegalArgumentException if the step is less than a second
   */
  public DepartureSearch withStep(Duration step) {
    if (step.compareTo(Duration.ofSeconds(1)) < 0) {
      throw new IllegalArgumentException("step must be at least PT1S, but was " + step);
    }
    return new DepartureSearch(way, conditions, step, parallel);
  }

  /**
   * The same search on all the cores of the common pool.
   *
   * @return the changed search, which finds the same
   */
  public DepartureSearch onAllCores() {
    return new DepartureSearch(way, conditions, step, true);
  }

  /**
   * The conditions.
   *
   * @return in the order in which they were added; unmodifiable
   */
  public List<Condition> conditions() {
    return conditions;
  }

  /**
   * Tries every departure in a span of time.
   *
   * @param from first departure
   * @param until last departure, tried if a step falls on it
   * @return every departure with its outcome
   * @throws IllegalArgumentException if {@code until} is before {@code from}, or there are more
   *     than a million steps
   */
  public Departures between(Instant from, Instant until) {
    double first = EpochSeconds.of(from);
    double seconds = Seconds.of(step);
    double steps = Math.floor((EpochSeconds.of(until) - first) / seconds + 1e-9);
    if (!(steps >= 0.0 && steps < MOST_DEPARTURES)) {
      throw new IllegalArgumentException(
          "the last departure must not be before the first, nor more than "
              + MOST_DEPARTURES
              + " steps later, but they were from "
              + from
              + " until "
              + until);
    }
    int count = (int) steps + 1;
    Departure[] all = new Departure[count];
    if (parallel) {
      // each part of the search has a workspace of its own
      int parts = Math.min(count, 4 * Runtime.getRuntime().availableProcessors());
      IntStream.range(0, parts)
          .parallel()
          .forEach(
              part -> {
                int begin = (int) ((long) count * part / parts);
                int end = (int) ((long) count * (part + 1) / parts);
                tryEach(all, begin, end, first, seconds);
              });
    } else {
      tryEach(all, 0, count, first, seconds);
    }
    return new Departures(this, Collections.unmodifiableList(Arrays.asList(all)), seconds);
  }

  private void tryEach(Departure[] all, int begin, int end, double first, double seconds) {
    Departing own = way.forOneThread();
    for (int i = begin; i < end; i++) {
      all[i] = attempt(own, first + i * seconds);
    }
  }

  /** One departure, by seconds since 1970. */
  Departure attempt(Departing own, double departure) {
    if (conditions.isEmpty() && own instanceof AlongRoute.OneThread along) {
      return along.measured(departure);
    }
    Outcome<SteeredRoute, NotPossible> outcome = own.leaving(departure);
    List<Verdict> verdicts = new ArrayList<>(conditions.size());
    outcome
        .solved()
        .ifPresent(
            passage -> {
              for (Condition condition : conditions) {
                verdicts.add(condition.check(passage));
              }
            });
    return new Departure(departure, outcome, verdicts);
  }

  /** The way with a workspace of its own, for refinements. */
  Departing ownWay() {
    return way.forOneThread();
  }
}
