package org.ferryglide.nav.steer;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.note.Outcome;

/**
 * The lean form of a {@link CourseToSteer}, for searches that try thousands of departures: times of
 * arrival in seconds, without notes or reasons, and without a track unless limits below one ask
 * what it demands of the craft. The times are those of the whole answer to the last bit.
 *
 * <p>It keeps a workspace, so that one object serves one thread.
 *
 * <pre>{@code
 * Arrivals arrivals = Arrivals.of(solver);
 * for (double departure = first; departure < last; departure += 600.0) {
 *   double arrival = arrivals.at(leg, departure); // NaN where it is not possible
 * }
 * }</pre>
 */
public final class Arrivals {
  /** Where {@link #measure} writes the arrival, seconds since 1970-01-01T00:00:00Z. */
  public static final int ARRIVAL = 0;

  /** Where it writes what {@link SteeredRoute#crossStreamShare} gives, in [0, 1]. */
  public static final int CROSS_STREAM_SHARE = 1;

  /** Where it writes what {@link SteeredRoute#reserve} gives, metres a second. */
  public static final int RESERVE = 2;

  /** Where it writes what {@link SteeredRoute#effort} gives, metres. */
  public static final int EFFORT = 3;

  /** How many figures {@link #measure} writes. */
  public static final int WIDTH = 4;

  private final LegSolver solver;
  private final double[] leg = new double[WIDTH];

  private Arrivals(LegSolver solver) {
    this.solver = solver;
  }

  /**
   * A workspace for one thread.
   *
   * @param solver how legs are steered
   * @return the lean form of the solver
   */
  public static Arrivals of(CourseToSteer solver) {
    return new Arrivals(new LegSolver(solver));
  }

  /**
   * Lets the craft paddle at another speed from now on, for example where an error of the speed is
   * drawn thousands of times: what was prepared for the legs is kept.
   *
   * @param metresPerSecond speed through the water between rests, metres a second, at least 0
   * @throws IllegalArgumentException if the speed is NaN, infinite or negative
   */
  public void paddleAt(double metresPerSecond) {
    solver.paddleAt(Arguments.notNegative(metresPerSecond, "paddling speed", "metres a second"));
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
   * The figures of a route by which departures are compared, without its tracks.
   *
   * <pre>{@code
   * double[] figures = new double[Arrivals.WIDTH];
   * boolean possible = arrivals.measure(route, departure, figures, 0).isEmpty();
   * double reserve = figures[Arrivals.RESERVE];
   * }</pre>
   *
   * @param route the legs, within 89 degrees of the equator
   * @param departureSeconds when it starts, seconds since 1970-01-01T00:00:00Z
   * @param out receives {@value #WIDTH} figures, those of {@link #steered(Route, double)} to the
   *     last bit; NaN if the route is not possible
   * @param offset where in {@code out} to write
   * @return why it is not possible; empty if it is
   * @throws IllegalArgumentException as {@link CourseToSteer#solve(Leg, java.time.Instant)} does
   */
  public Optional<NotPossible> measure(
      Route route, double departureSeconds, double[] out, int offset) {
    double time = departureSeconds;
    double share = 0.0;
    double reserve = Double.POSITIVE_INFINITY;
    double effort = 0.0;
    List<Leg> legs = route.legs();
    for (int i = 0; i < legs.size(); i++) {
      NotPossible why = solver.measure(legs.get(i), time, leg, 0);
      if (why != null) {
        Arrays.fill(out, offset, offset + WIDTH, Double.NaN);
        return Optional.of(why.inLeg(i + 1));
      }
      time = leg[ARRIVAL];
      share = Math.max(share, leg[CROSS_STREAM_SHARE]);
      reserve = Math.min(reserve, leg[RESERVE]);
      effort += leg[EFFORT];
    }
    out[offset + ARRIVAL] = time;
    out[offset + CROSS_STREAM_SHARE] = share;
    out[offset + RESERVE] = reserve;
    out[offset + EFFORT] = effort;
    return Optional.empty();
  }

  /**
   * The whole answer for a leg, without the notes of the stream.
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
   * The whole answer for a route, without the notes of the stream.
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
   * The whole answer for a route, with the notes of the stream.
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
