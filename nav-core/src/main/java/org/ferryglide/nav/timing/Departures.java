package org.ferryglide.nav.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.ferryglide.nav.basics.Edge;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.Window;

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
   * The conditions of the search, in the order of {@link Departure#verdicts}.
   *
   * @return the conditions; unmodifiable
   */
  public List<Condition> conditions() {
    return search.conditions();
  }

  /**
   * The windows in which one may leave: the passage is possible and every condition holds, with or
   * without a warning.
   *
   * <p>An edge lies inside the window, within a second of where it ends, except where the search
   * itself, or what it knows, begins or ends: there the window says that it is open. Gaps and
   * windows between two steps are looked for as {@link DepartureSearch} says.
   *
   * @return the windows, and the departures of which nothing is known for want of data
   */
  public Found<Window> windows() {
    Departing own = search.ownWay();
    List<Departure> looked = new Between(search, own).withWhatLiesBetween(all);
    List<Window> windows = new ArrayList<>();
    int last = looked.size() - 1;
    for (int i = 0; i <= last; i++) {
      if (!looked.get(i).isFit()) {
        continue;
      }
      int begin = i;
      while (i < last && looked.get(i + 1).isFit()) {
        i++;
      }
      boolean openBefore = begin == 0 || !looked.get(begin - 1).isKnown();
      boolean openAfter = i == last || !looked.get(i + 1).isKnown();
      double from =
          begin == 0
              ? looked.get(0).seconds()
              : edge(own, looked.get(begin), looked.get(begin - 1));
      double until =
          i == last ? looked.get(i).seconds() : edge(own, looked.get(i), looked.get(i + 1));
      windows.add(new Window(span(from, until), openBefore, openAfter));
    }
    return Found.of(windows, span(looked.get(0), looked.get(last)), seen(looked), List.of());
  }

  /** The spans from one known departure to the next. */
  private static List<TimeSpan> seen(List<Departure> looked) {
    List<TimeSpan> seen = new ArrayList<>();
    for (int i = 0; i < looked.size(); i++) {
      if (!looked.get(i).isKnown()) {
        continue;
      }
      int begin = i;
      while (i + 1 < looked.size() && looked.get(i + 1).isKnown()) {
        i++;
      }
      seen.add(span(looked.get(begin), looked.get(i)));
    }
    return seen;
  }

  private static TimeSpan span(Departure from, Departure until) {
    return span(from.seconds(), until.seconds());
  }

  private static TimeSpan span(double from, double until) {
    return TimeSpan.of(EpochSeconds.toInstant(from), EpochSeconds.toInstant(until));
  }

  /** The last fit time between a fit departure and one that is not. */
  private double edge(Departing own, Departure fit, Departure unfit) {
    return Edge.of(
        time -> search.attempt(own, time).isFit(), fit.seconds(), unfit.seconds(), REFINED_SECONDS);
  }

  /**
   * The fit departure that arrives first, refined to the second.
   *
   * @return the departure; empty if none is fit
   */
  public Optional<Departure> earliestArrival() {
    return best(Departure::arrival);
  }

  /**
   * The fit departure that takes the least effort, refined to the second.
   *
   * @return the departure; empty if none is fit
   */
  public Optional<Departure> leastEffort() {
    return best(Departure::effort);
  }

  /**
   * The fit departure that leaves the most reserve, refined to the second.
   *
   * @return the departure; empty if none is fit
   */
  public Optional<Departure> mostReserve() {
    return best(departure -> -departure.reserve());
  }

  private Optional<Departure> best(ToDoubleFunction<Departure> cost) {
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
    Departing own = search.ownWay();
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

  private static double cost(Departure departure, ToDoubleFunction<Departure> cost) {
    return departure.isFit() ? cost.applyAsDouble(departure) : UNFIT;
  }

  @Override
  public String toString() {
    return all.size() + " departures from " + all.get(0).time();
  }
}
