package org.ferryglide.nav.timing;

import java.time.Instant;
import java.util.Objects;
import java.util.function.DoublePredicate;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Edge;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.steer.Arrivals;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.Reason;
import org.ferryglide.nav.steer.Route;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.LocalStream;
import org.ferryglide.nav.water.StreamMoment;

/**
 * One departure for a purpose: the latest that arrives in time, the next that is possible, the one
 * that meets slack water; and the least speed, and for how long a course stays right.
 *
 * <pre>{@code
 * PassageTiming timing = PassageTiming.of(solver, route);
 * Instant latest = timing.arrivingBy(sunset).orElseThrow().departure();
 * String next = timing.nextDeparture(now, tomorrow).match(Instant::toString, NotPossible::message);
 * }</pre>
 *
 * <p>Each is a search in steps for the first change of a yes or no, then a bisection. Departures
 * that are possible for less than five minutes may be missed.
 */
public final class PassageTiming {
  private static final double STEP_SECONDS = 300.0;
  private static final double REFINED_SECONDS = 0.01;

  /** A craft that arrives earlier than this before a slack does not arrive at it. */
  private static final double AT_SLACK_SECONDS = 60.0;

  private static final double REFINED_KNOTS = 1e-3;
  private static final double STEP_KNOTS = 0.25;
  private static final double FASTEST_KNOTS = 20.0;
  private static final double LAUNCH_STEP_SECONDS = 60.0;
  private static final double LAUNCH_REFINED_SECONDS = 1.0;
  private static final double LONGEST_LAUNCH_SECONDS = 12.0 * 3600.0;

  private final CourseToSteer solver;
  private final Route route;

  private PassageTiming(CourseToSteer solver, Route route) {
    this.solver = solver;
    this.route = route;
  }

  /**
   * Questions about a route.
   *
   * @param solver how each leg is steered
   * @param route the route
   * @return the questions
   */
  public static PassageTiming of(CourseToSteer solver, Route route) {
    return new PassageTiming(
        Objects.requireNonNull(solver, "solver"), Objects.requireNonNull(route, "route"));
  }

  /**
   * The latest departure that arrives by a time.
   *
   * @param arrival when to be there at the latest
   * @return the route steered from that departure; it arrives at the time asked for, unless the
   *     stream allows only earlier departures; not possible if there is none within the longest
   *     duration for each leg
   */
  public Outcome<SteeredRoute, NotPossible> arrivingBy(Instant arrival) {
    Arrivals arrivals = Arrivals.of(solver);
    double latest = EpochSeconds.of(arrival);
    double longest = route.legs().size() * Seconds.of(solver.longestDuration());
    DoublePredicate inTime = departure -> arrivals.at(route, departure) <= latest; // NaN is not
    if (inTime.test(latest)) { // a route without length
      return solver.solve(route, arrival);
    }
    for (double back = STEP_SECONDS; back <= longest + STEP_SECONDS; back += STEP_SECONDS) {
      if (inTime.test(latest - back)) {
        double yes = Edge.of(inTime, latest - back, latest - back + STEP_SECONDS, REFINED_SECONDS);
        return solver.solve(route, EpochSeconds.toInstant(yes));
      }
    }
    NotPossible late = NotPossible.because(Reason.BEYOND_HORIZON).at(route.end(), arrival);
    return arrivals
        .steered(route, latest - longest)
        .match(tooLate -> Outcome.ofUnsolved(late), Outcome::ofUnsolved);
  }

  /**
   * The first departure that arrives at slack water at the end of the route.
   *
   * @param from when to leave at the earliest
   * @param until when to arrive at the latest
   * @return the route steered, arriving within a minute before a slack; not possible if there is
   *     none, with the reason of the first slack that cannot be met, or {@link Reason#NO_DATA} if
   *     no slack is found and the stream is not known for all of the time
   */
  public Outcome<SteeredRoute, NotPossible> arrivingAtSlack(Instant from, Instant until) {
    NotPossible first = null;
    Found<StreamMoment> slacks =
        LocalStream.of(solver.stream(), route.end()).slackWaters(from, until);
    for (StreamMoment slack : slacks) {
      Outcome<SteeredRoute, NotPossible> outcome = arrivingBy(slack.time());
      SteeredRoute steered = outcome.solved().orElse(null);
      if (steered != null
          && !steered.departure().isBefore(from)
          && steered.arrivalSeconds() > EpochSeconds.of(slack.time()) - AT_SLACK_SECONDS) {
        return outcome;
      }
      if (first == null) {
        first = outcome.why().orElse(null);
      }
    }
    if (first != null) {
      return Outcome.ofUnsolved(first);
    }
    Reason reason = slacks.isEmpty() && !slacks.isWhole() ? Reason.NO_DATA : Reason.BEYOND_HORIZON;
    return Outcome.ofUnsolved(NotPossible.because(reason).at(route.end(), until));
  }

  /**
   * The first possible departure: what makes a route possible that is not possible now.
   *
   * @param from when to leave at the earliest
   * @param until when to leave at the latest
   * @return the departure, to a hundredth of a second; if there is none, why the first is not
   *     possible
   */
  public Outcome<Instant, NotPossible> nextDeparture(Instant from, Instant until) {
    TimeSpan within = TimeSpan.of(from, until);
    Arrivals arrivals = Arrivals.of(solver);
    double first = EpochSeconds.of(from);
    double last = EpochSeconds.of(until);
    Outcome<SteeredRoute, NotPossible> now = arrivals.steered(route, first);
    if (now.isSolved()) {
      return Outcome.ofSolved(within.from());
    }
    DoublePredicate possible = departure -> !Double.isNaN(arrivals.at(route, departure));
    for (double before = first; before < last; before += STEP_SECONDS) {
      double departure = Math.min(last, before + STEP_SECONDS);
      if (possible.test(departure)) {
        return Outcome.ofSolved(
            EpochSeconds.toInstant(Edge.of(possible, departure, before, REFINED_SECONDS)));
      }
    }
    return now.map(never -> within.from());
  }

  /**
   * The least paddling speed that arrives by a time, all else about the craft the same.
   *
   * @param departure when it starts
   * @param arriveBy when to be there; the departure plus the longest duration asks for the least
   *     speed that makes the route possible at all
   * @return the speed while paddling, rounded up to a thousandth of a knot, of those up to 20
   *     knots; with the track held, some faster speeds may not be possible, because they meet the
   *     stream elsewhere
   */
  public Outcome<Speed, NotPossible> leastSpeed(Instant departure, Instant arriveBy) {
    double start = EpochSeconds.of(departure);
    double latest = EpochSeconds.of(arriveBy);
    DoublePredicate fastEnough = knots -> atSpeed(knots).at(route, start) <= latest;
    if (fastEnough.test(0.0)) {
      return Outcome.ofSolved(Speed.ZERO);
    }
    for (double knots = STEP_KNOTS; knots <= FASTEST_KNOTS; knots += STEP_KNOTS) {
      if (fastEnough.test(knots)) {
        return Outcome.ofSolved(
            Speed.ofKnots(Edge.of(fastEnough, knots, knots - STEP_KNOTS, REFINED_KNOTS)));
      }
    }
    NotPossible late = NotPossible.because(Reason.BEYOND_HORIZON).at(route.end(), arriveBy);
    return atSpeed(FASTEST_KNOTS)
        .steered(route, start)
        .match(tooLate -> Outcome.ofUnsolved(late), Outcome::ofUnsolved);
  }

  private Arrivals atSpeed(double knots) {
    return Arrivals.of(solver.withCraft(solver.craft().withSpeed(Speed.ofKnots(knots))));
  }

  /**
   * For how long about a departure its first course to steer stays right.
   *
   * @param departure the departure whose course to steer is wanted
   * @param degrees by how much the course to steer may be out, degrees, above 0
   * @return the launch times about that departure whose own first course to steer is within that,
   *     to the second and no more than 12 hours either way; not possible if the departure itself is
   *     not
   * @throws IllegalArgumentException if {@code degrees} is not above 0
   */
  public Outcome<TimeSpan, NotPossible> launchInterval(Instant departure, double degrees) {
    Arguments.positive(degrees, "tolerance of the heading", "degrees");
    Arrivals arrivals = Arrivals.of(solver);
    double middle = EpochSeconds.of(departure);
    return arrivals
        .steered(route, middle)
        .map(
            steered -> {
              double heading = firstHeading(steered);
              DoublePredicate right =
                  launch ->
                      arrivals
                          .steered(route, launch)
                          .<Boolean>match(
                              other ->
                                  Math.abs(Angles.turn(heading, firstHeading(other))) <= degrees,
                              why -> false);
              return TimeSpan.of(
                  EpochSeconds.toInstant(lastRight(right, middle, -LAUNCH_STEP_SECONDS)),
                  EpochSeconds.toInstant(lastRight(right, middle, LAUNCH_STEP_SECONDS)));
            });
  }

  private static double firstHeading(SteeredRoute steered) {
    return steered.legs().get(0).courseToSteer().degrees();
  }

  private static double lastRight(DoublePredicate right, double from, double step) {
    double yes = from;
    while (Math.abs(yes + step - from) <= LONGEST_LAUNCH_SECONDS) {
      if (!right.test(yes + step)) {
        return Edge.of(right, yes, yes + step, LAUNCH_REFINED_SECONDS);
      }
      yes += step;
    }
    return yes;
  }

  @Override
  public String toString() {
    return "timing of " + route;
  }
}
