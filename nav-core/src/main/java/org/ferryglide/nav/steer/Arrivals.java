package org.ferryglide.nav.steer;

import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.note.Outcome;

/**
 * The lean form of a {@link CourseToSteer}, for searches that try thousands of departures: times of
 * arrival in seconds, without notes or reasons, and without a track unless limits below one ask
 * what it demands of the craft. The times are those of the whole answer to the last bit.
 *
 * <p>It keeps room to work in, so that one object serves one thread.
 *
 * <pre>{@code
 * Arrivals arrivals = Arrivals.of(solver);
 * for (double departure = first; departure < last; departure += 600.0) {
 *   double arrival = arrivals.at(leg, departure); // NaN where it is not possible
 * }
 * }</pre>
 */
public final class Arrivals {
  private final LegSolver solver;

  private Arrivals(LegSolver solver) {
    this.solver = solver;
  }

  /**
   * Room for one thread to work in.
   *
   * @param solver how legs are steered
   * @return the lean form of the solver
   */
  public static Arrivals of(CourseToSteer solver) {
    return new Arrivals(new LegSolver(solver));
  }

  /**
   * When the end of a leg is reached.
   *
   * @param leg the leg, within 89 degrees of the equator
   * @param departureSeconds when it starts, seconds since 1970-01-01T00:00:00Z
   * @return seconds since 1970-01-01T00:00:00Z; NaN if it is not possible, or for NaN
   * @throws IllegalArgumentException as {@link CourseToSteer#solve(Leg, java.time.Instant)} does
   */
  public double at(Leg leg, double departureSeconds) {
    if (Double.isNaN(departureSeconds)) {
      return Double.NaN; // not possible before this leg, nor after it
    }
    return solver.arrival(leg, departureSeconds);
  }

  /**
   * When the end of a route is reached.
   *
   * @param route the legs, within 89 degrees of the equator
   * @param departureSeconds when it starts, seconds since 1970-01-01T00:00:00Z
   * @return seconds since 1970-01-01T00:00:00Z; NaN if it is not possible, or for NaN
   * @throws IllegalArgumentException as {@link CourseToSteer#solve(Leg, java.time.Instant)} does
   */
  public double at(Route route, double departureSeconds) {
    double time = departureSeconds;
    for (Leg leg : route.legs()) {
      time = at(leg, time);
      if (Double.isNaN(time)) {
        break;
      }
    }
    return time;
  }

  /**
   * The whole answer for a leg, without what the stream has to say of itself.
   *
   * @param leg the leg, within 89 degrees of the equator
   * @param departureSeconds when it starts, seconds since 1970-01-01T00:00:00Z
   * @return the steered leg, or why it is not possible
   * @throws IllegalArgumentException as {@link CourseToSteer#solve(Leg, java.time.Instant)} does
   */
  public Outcome<SteeredLeg, NotPossible> steered(Leg leg, double departureSeconds) {
    return solver.solve(leg, departureSeconds, false);
  }

  /**
   * The whole answer for a route, without what the stream has to say of itself.
   *
   * @param route the legs, within 89 degrees of the equator
   * @param departureSeconds when it starts, seconds since 1970-01-01T00:00:00Z
   * @return the steered route, or why it is not possible
   * @throws IllegalArgumentException as {@link CourseToSteer#solve(Leg, java.time.Instant)} does
   */
  public Outcome<SteeredRoute, NotPossible> steered(Route route, double departureSeconds) {
    return solver.solve(route, departureSeconds, false);
  }

  /**
   * The whole answer for a route, with what the stream has to say of itself.
   *
   * @param route the legs, within 89 degrees of the equator
   * @param departureSeconds when it starts, seconds since 1970-01-01T00:00:00Z
   * @return what {@link CourseToSteer#solve(Route, java.time.Instant)} answers
   * @throws IllegalArgumentException as {@link CourseToSteer#solve(Leg, java.time.Instant)} does
   */
  public Outcome<SteeredRoute, NotPossible> steeredWithNotes(Route route, double departureSeconds) {
    return solver.solve(route, departureSeconds, true);
  }
}
