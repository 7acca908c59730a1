package org.ferryglide.nav.timing;

import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.steer.Arrivals;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.Route;
import org.ferryglide.nav.steer.SteeredRoute;

/**
 * A route steered leg after leg without a stop: the one way of departing whose figures alone are
 * cheaper than the whole answer. Safe to share between threads; what it makes for one thread is
 * not.
 */
final class AlongRoute implements Departing {
  private final CourseToSteer solver;
  private final Route route;

  AlongRoute(CourseToSteer solver, Route route) {
    this.solver = solver;
    this.route = route;
  }

  @Override
  public Outcome<SteeredRoute, NotPossible> leaving(Instant departure) {
    return leaving(EpochSeconds.of(departure));
  }

  @Override
  public Outcome<SteeredRoute, NotPossible> leaving(double departureSeconds) {
    return Arrivals.of(solver).steered(route, departureSeconds);
  }

  @Override
  public OneThread forOneThread() {
    return new OneThread(this, Arrivals.of(solver));
  }

  /** The same way with a workspace. */
  static final class OneThread implements Departing {
    private final AlongRoute way;
    private final Arrivals arrivals;
    private final double[] figures = new double[Arrivals.WIDTH];

    private OneThread(AlongRoute way, Arrivals arrivals) {
      this.way = way;
      this.arrivals = arrivals;
    }

    @Override
    public Outcome<SteeredRoute, NotPossible> leaving(Instant departure) {
      return leaving(EpochSeconds.of(departure));
    }

    @Override
    public Outcome<SteeredRoute, NotPossible> leaving(double departureSeconds) {
      return arrivals.steered(way.route, departureSeconds);
    }

    /**
     * The departure with its figures alone: a fortnight's tracks are not kept unless they are asked
     * for.
     */
    Departure measured(double departureSeconds) {
      NotPossible why = arrivals.measure(way.route, departureSeconds, figures, 0).orElse(null);
      return why == null
          ? new Departure(departureSeconds, figures, way)
          : new Departure(departureSeconds, Outcome.ofUnsolved(why), List.of());
    }
  }
}
