package org.ferryglide.nav.steer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.water.EpochSeconds;

/**
 * What a {@link DepartureSearch} found: every departure with its outcome, the windows, and the best
 * departures.
 *
 * <pre>{@code
 * for (Departure departure : departures.all()) { // ready to plot
 *   System.out.println(departure.time() + " " + departure.isFit());
 * }
 * Optional<Departure> easiest = departures.leastEffort();
 * }</pre>
 */
public final class Departures {
  /** To this the edges of windows and the best departures are refined, seconds. */
  private static final double REFINED_SECONDS = 1.0;

  /** What counts for a departure that is not fit, when the best is refined. */
  private static final double UNFIT = 1e30;

  private final DepartureSearch search;
  private final List<Departure> all;
  private final double step;

  Departures(DepartureSearch search, List<Departure> all, double step) {
    this.search = search;
    this.all = all;
    this.step = step;
  }

  /**
   * Every departure tried.
   *
   * @return in order of time; unmodifiable
   */
  public List<Departure> all() {
    return all;
  }

  /**
   * The conditions of the search, in the order of {@link Departure#margins}.
   *
   * @return the conditions; unmodifiable
   */
  public List<Condition> conditions() {
    return search.conditions();
  }

  /**
   * The windows in which one may leave: the passage is possible and every condition satisfied.
   *
   * <p>An edge lies inside the window, within a second of where it ends, except where the search
   * itself begins or ends. A window narrower than the search's step may be missed, and so may a
   * gap.
   *
   * @return in order of time; unmodifiable; empty if there is none
   */
  public List<TimeSpan> windows() {
    LegSolver own = search.newSolver();
    List<TimeSpan> windows = new ArrayList<>();
    double from = Double.NaN;
    for (int i = 0; i < all.size(); i++) {
      boolean fit = all.get(i).isFit();
      boolean before = i > 0 && all.get(i - 1).isFit();
      if (fit && !before) {
        from = i == 0 ? all.get(0).seconds() : edge(own, all.get(i), all.get(i - 1));
      }
      if (!fit && before) {
        windows.add(span(from, edge(own, all.get(i - 1), all.get(i))));
      }
    }
    if (!all.isEmpty() && all.get(all.size() - 1).isFit()) {
      windows.add(span(from, all.get(all.size() - 1).seconds()));
    }
    return Collections.unmodifiableList(windows);
  }

  private static TimeSpan span(double from, double until) {
    return TimeSpan.of(EpochSeconds.toInstant(from), EpochSeconds.toInstant(until));
  }

  /** The last fit time between a fit departure and one that is not. */
  private double edge(LegSolver own, Departure fit, Departure unfit) {
    double inside = fit.seconds();
    double outside = unfit.seconds();
    while (Math.abs(outside - inside) > REFINED_SECONDS) {
      double middle = 0.5 * (inside + outside);
      if (search.attempt(own, middle).isFit()) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return inside;
  }

  /**
   * The fit departure that arrives first, refined to the second.
   *
   * @return the departure; empty if none is fit
   */
  public Optional<Departure> earliestArrival() {
    return best(SteeredRoute::arrivalSeconds);
  }

  /**
   * The fit departure that takes the least effort, refined to the second.
   *
   * @return the departure; empty if none is fit
   */
  public Optional<Departure> leastEffort() {
    return best(passage -> passage.effort().metres());
  }

  /**
   * The fit departure that leaves the most reserve, refined to the second.
   *
   * @return the departure; empty if none is fit
   */
  public Optional<Departure> mostReserve() {
    return best(passage -> -passage.reserve().metresPerSecond());
  }

  private Optional<Departure> best(ToDoubleFunction<SteeredRoute> cost) {
    int least = -1;
    double leastCost = UNFIT;
    for (int i = 0; i < all.size(); i++) {
      double here = cost(all.get(i), cost);
      if (here < leastCost) {
        least = i;
        leastCost = here;
      }
    }
    if (least < 0) {
      return Optional.empty();
    }
    LegSolver own = search.newSolver();
    Departure found = all.get(least);
    double low = Math.max(all.get(0).seconds(), found.seconds() - step);
    double high = Math.min(all.get(all.size() - 1).seconds(), found.seconds() + step);
    List<Double> tries = new ArrayList<>();
    if (least > 0 && !all.get(least - 1).isFit()) {
      low = edge(own, found, all.get(least - 1));
      tries.add(low);
    }
    if (least < all.size() - 1 && !all.get(least + 1).isFit()) {
      high = edge(own, found, all.get(least + 1));
      tries.add(high);
    }
    if (high - low > REFINED_SECONDS) {
      tries.add(
          new BrentOptimizer(1e-12, REFINED_SECONDS / 4)
              .optimize(
                  new MaxEval(200),
                  GoalType.MINIMIZE,
                  new UnivariateObjectiveFunction(
                      seconds -> cost(search.attempt(own, seconds), cost)),
                  new SearchInterval(low, high, Math.min(high, Math.max(low, found.seconds()))))
              .getPoint());
    }
    for (double seconds : tries) {
      Departure other = search.attempt(own, seconds);
      if (cost(other, cost) < leastCost) {
        found = other;
        leastCost = cost(other, cost);
      }
    }
    return Optional.of(found);
  }

  private static double cost(Departure departure, ToDoubleFunction<SteeredRoute> cost) {
    return departure.isFit() ? cost.applyAsDouble(departure.outcome().orElseThrow()) : UNFIT;
  }

  @Override
  public String toString() {
    return all.size() + " departures from " + all.get(0).time();
  }
}
