package org.ferryglide.nav.steer;

import java.time.Instant;
import java.util.function.DoublePredicate;
import org.ferryglide.nav.bearing.Angles;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Arguments;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.water.EpochSeconds;

/**
 * The further questions of {@link CourseToSteer}. Each is a search in steps for the first change of
 * a yes or no, then a bisection: whether a passage is possible jumps, so that nothing smoother
 * fits.
 */
final class Questions {
  private static final double STEP_SECONDS = 300.0;
  private static final double REFINED_SECONDS = 0.01;
  private static final double AT_SLACK_SECONDS = 60.0;
  private static final double REFINED_KNOTS = 1e-3;
  private static final double STEP_KNOTS = 0.25;
  private static final double FASTEST_KNOTS = 20.0;
  private static final double LAUNCH_STEP_SECONDS = 60.0;
  private static final double LONGEST_LAUNCH_SECONDS = 12.0 * 3600.0;

  private Questions() {}

  static Outcome<SteeredRoute, NotPossible> arrivingBy(
      CourseToSteer options, Route route, Instant arrival) {
    LegSolver solver = new LegSolver(options);
    double latest = EpochSeconds.of(arrival);
    double longest = route.legs().size() * options.longestDuration().toMillis() / 1000.0;
    DoublePredicate inTime =
        departure ->
            solver
                .solve(route, departure, false)
                .match(steered -> steered.arrivalSeconds() <= latest, why -> false);
    if (inTime.test(latest)) { // a route without length
      return solver.solve(route, latest, true);
    }
    for (double back = STEP_SECONDS; back <= longest + STEP_SECONDS; back += STEP_SECONDS) {
      if (inTime.test(latest - back)) {
        double yes = edge(inTime, latest - back, latest - back + STEP_SECONDS, REFINED_SECONDS);
        return solver.solve(route, yes, true);
      }
    }
    Outcome<SteeredRoute, NotPossible> earliest = solver.solve(route, latest - longest, false);
    return earliest.isSolved()
        ? Outcome.ofUnsolved(NotPossible.because(Reason.BEYOND_HORIZON))
        : earliest;
  }

  static Outcome<SteeredRoute, NotPossible> arrivingAtSlack(
      CourseToSteer options, Route route, TimeSpan within) {
    for (SlackWater slack :
        SlackWater.between(options.stream(), route.end(), within.from(), within.until())) {
      SteeredRoute steered = arrivingBy(options, route, slack.time()).solved().orElse(null);
      if (steered != null
          && !steered.departure().isBefore(within.from())
          && steered.arrivalSeconds() > EpochSeconds.of(slack.time()) - AT_SLACK_SECONDS) {
        return Outcome.ofSolved(steered);
      }
    }
    return Outcome.ofUnsolved(
        NotPossible.because(Reason.BEYOND_HORIZON).at(route.end(), within.until()));
  }

  static Outcome<Speed, NotPossible> leastSpeed(
      CourseToSteer options, Route route, Instant departure, Instant arriveBy) {
    double start = EpochSeconds.of(departure);
    double latest = EpochSeconds.of(arriveBy);
    DoublePredicate fastEnough =
        knots ->
            new LegSolver(options.withCraft(options.craft().withSpeed(Speed.ofKnots(knots))))
                .solve(route, start, false)
                .match(steered -> steered.arrivalSeconds() <= latest, why -> false);
    if (fastEnough.test(0.0)) {
      return Outcome.ofSolved(Speed.ZERO);
    }
    for (double knots = STEP_KNOTS; knots <= FASTEST_KNOTS; knots += STEP_KNOTS) {
      if (fastEnough.test(knots)) {
        return Outcome.ofSolved(
            Speed.ofKnots(edge(fastEnough, knots, knots - STEP_KNOTS, REFINED_KNOTS)));
      }
    }
    return new LegSolver(options.withCraft(options.craft().withSpeed(Speed.ofKnots(FASTEST_KNOTS))))
        .solve(route, start, false)
        .match(
            late -> Outcome.ofUnsolved(NotPossible.because(Reason.BEYOND_HORIZON)),
            Outcome::ofUnsolved);
  }

  static Outcome<Instant, NotPossible> nextDeparture(
      CourseToSteer options, Route route, TimeSpan within) {
    LegSolver solver = new LegSolver(options);
    double first = EpochSeconds.of(within.from());
    double last = EpochSeconds.of(within.until());
    Outcome<SteeredRoute, NotPossible> now = solver.solve(route, first, false);
    if (now.isSolved()) {
      return Outcome.ofSolved(within.from());
    }
    DoublePredicate possible = departure -> solver.solve(route, departure, false).isSolved();
    for (double before = first; before < last; before += STEP_SECONDS) {
      double departure = Math.min(last, before + STEP_SECONDS);
      if (possible.test(departure)) {
        return Outcome.ofSolved(
            EpochSeconds.toInstant(edge(possible, departure, before, REFINED_SECONDS)));
      }
    }
    return now.map(never -> within.from());
  }

  static Outcome<TimeSpan, NotPossible> launchInterval(
      CourseToSteer options, Leg leg, Instant departure, double degrees) {
    Arguments.positive(degrees, "tolerance of the heading", "degrees");
    LegSolver solver = new LegSolver(options);
    double middle = EpochSeconds.of(departure);
    return solver
        .solve(leg, middle, false)
        .map(
            steered -> {
              double heading = steered.courseToSteer().degrees();
              DoublePredicate right =
                  launch ->
                      solver
                          .solve(leg, launch, false)
                          .match(
                              other ->
                                  Math.abs(Angles.turn(heading, other.courseToSteer().degrees()))
                                      <= degrees,
                              why -> false);
              return TimeSpan.of(
                  EpochSeconds.toInstant(lastYes(right, middle, -LAUNCH_STEP_SECONDS)),
                  EpochSeconds.toInstant(lastYes(right, middle, LAUNCH_STEP_SECONDS)));
            });
  }

  private static double lastYes(DoublePredicate right, double from, double step) {
    double yes = from;
    while (Math.abs(yes + step - from) <= LONGEST_LAUNCH_SECONDS) {
      if (!right.test(yes + step)) {
        return edge(right, yes, yes + step, 1.0);
      }
      yes += step;
    }
    return yes;
  }

  /** Where yes turns to no, on the side of yes. */
  static double edge(DoublePredicate asked, double yes, double no, double refined) {
    double inside = yes;
    double outside = no;
    while (Math.abs(outside - inside) > refined) {
      double middle = 0.5 * (inside + outside);
      if (asked.test(middle)) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return inside;
  }
}
