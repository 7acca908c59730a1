package org.ferryglide.nav.timing;

import java.time.Instant;
import java.util.Objects;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.Route;
import org.ferryglide.nav.steer.SteeredRoute;

/**
 * Any way to work out a passage for a departure, so that a {@link DepartureSearch} can try it.
 *
 * <pre>{@code
 * Departing way = Departing.along(solver, route);
 * Departing afterLunch = departure -> solver.solve(route, departure.plus(lunch));
 * }</pre>
 */
@FunctionalInterface
public interface Departing {

  /**
   * The passage that leaves at a time.
   *
   * @param departure when it leaves
   * @return the passage, or why it is not possible
   */
  Outcome<SteeredRoute, NotPossible> leaving(Instant departure);

  /**
   * The same for a time in seconds.
   *
   * @param departureSeconds when it leaves, seconds since 1970-01-01T00:00:00Z
   * @return the passage, or why it is not possible
   */
  default Outcome<SteeredRoute, NotPossible> leaving(double departureSeconds) {
    return leaving(EpochSeconds.toInstant(departureSeconds));
  }

  /**
   * The same way, for one thread, with a workspace of its own.
   *
   * @return by default this object, which must then be safe to share between threads
   */
  default Departing forOneThread() {
    return this;
  }

  /**
   * A route steered leg after leg without a stop.
   *
   * @param solver how each leg is steered
   * @param route the route
   * @return the way; its answers leave out the stream's own notes
   */
  static Departing along(CourseToSteer solver, Route route) {
    return new AlongRoute(
        Objects.requireNonNull(solver, "solver"), Objects.requireNonNull(route, "route"));
  }
}
