package org.ferryglide.nav.steer;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.water.EpochSeconds;

/**
 * Tries a route at every departure over hours or weeks, and finds when one may leave and when best.
 *
 * <pre>{@code
 * Departures departures =
 *     DepartureSearch.of(solver, route)
 *         .withCondition(Condition.during("daylight", daylight))
 *         .withStep(Duration.ofMinutes(5))
 *         .between(firstOfJune, fifteenthOfJune);
 * departures.windows(); // when one may leave
 * departures.earliestArrival(); // the departure that arrives first
 * }</pre>
 *
 * <p>What is narrower than a step can be missed; what is found is refined to the second. Searches
 * do not change once made, and may run on all cores at once.
 */
public final class DepartureSearch {
  /** The most departures one search may try. */
  private static final int MOST_DEPARTURES = 1_000_000;

  private final CourseToSteer solver;
  private final Route route;
  private final List<Condition> conditions;
  private final Duration step;
  private final boolean parallel;

  private DepartureSearch(
      CourseToSteer solver,
      Route route,
      List<Condition> conditions,
      Duration step,
      boolean parallel) {
    this.solver = solver;
    this.route = route;
    this.conditions = conditions;
    this.step = step;
    this.parallel = parallel;
  }

  /**
   * A search without conditions, every ten minutes, on one core.
   *
   * @param solver how each leg is steered
   * @param route the route
   * @return the search; the {@code with} methods change it
   */
  public static DepartureSearch of(CourseToSteer solver, Route route) {
    return new DepartureSearch(
        Objects.requireNonNull(solver, "solver"),
        Objects.requireNonNull(route, "route"),
        List.of(),
        Duration.ofMinutes(10),
        false);
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
    return new DepartureSearch(solver, route, Collections.unmodifiableList(more), step, parallel);
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
    return new DepartureSearch(solver, route, conditions, step, parallel);
  }

  /**
   * The same search on all cores, or on one.
   *
   * @param parallel true for all the cores of the common pool
   * @return the changed search, which finds the same
   */
  public DepartureSearch withParallel(boolean parallel) {
    return new DepartureSearch(solver, route, conditions, step, parallel);
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
   * Tries every departure of a time.
   *
   * @param from first departure
   * @param until last departure, tried if a step falls on it
   * @return every departure with its outcome
   * @throws IllegalArgumentException if {@code until} is before {@code from}, or there are more
   *     than a million steps
   */
  public Departures between(Instant from, Instant until) {
    double first = EpochSeconds.of(from);
    double seconds = step.toMillis() / 1000.0;
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
      // a solver keeps room to work in, so each part of the search has its own
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
    LegSolver own = new LegSolver(solver);
    for (int i = begin; i < end; i++) {
      all[i] = attempt(own, first + i * seconds);
    }
  }

  /** One departure, by seconds since 1970. */
  Departure attempt(LegSolver own, double departure) {
    Outcome<SteeredRoute, NotPossible> outcome = own.solve(route, departure, false);
    double[] margins = new double[conditions.size()];
    Arrays.fill(margins, Double.NaN);
    outcome
        .solved()
        .ifPresent(
            passage -> {
              for (int i = 0; i < margins.length; i++) {
                margins[i] = conditions.get(i).margin(passage);
              }
            });
    return new Departure(departure, outcome, margins);
  }

  /** Room to work in for refinements. */
  LegSolver newSolver() {
    return new LegSolver(solver);
  }
}
