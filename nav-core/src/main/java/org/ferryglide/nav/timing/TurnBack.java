package org.ferryglide.nav.timing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.Edge;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Arrivals;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.Reason;
import org.ferryglide.nav.steer.Route;
import org.ferryglide.nav.steer.SteeredRoute;

/**
 * Turning back under streams that change: the point of no return, the point of equal time, and how
 * far out one can go and be home in time.
 *
 * <p>The way home from a moment on the way out is a rhumb leg from where the craft then is to the
 * last way point passed, then the legs before it in reverse, each steered as the solver is set.
 *
 * <pre>{@code
 * SteeredRoute out = solver.solve(route, departure).orElseThrow();
 * Outcome<TurnPoint, NotPossible> last = TurnBack.pointOfNoReturn(solver, out, sunset);
 * Outcome<TurnPoint, NotPossible> equal = TurnBack.equalTime(solver, out);
 * }</pre>
 */
public final class TurnBack {
  /** How often the way out is looked at, seconds, unless that makes more than a thousand looks. */
  private static final double STEP_SECONDS = 300.0;

  private static final double REFINED_SECONDS = 0.1;
  private static final double REFINED_METRES = 1.0;
  private static final int RADIUS_PARTS = 60;

  private TurnBack() {}

  /**
   * The latest moment at which one can turn back and still be home by a time.
   *
   * <p>Earlier moments can fail even so, where the stream bars the way home for a while: look at
   * {@link #homeFrom} when streams outrun the craft.
   *
   * @param solver how the legs home are steered
   * @param out the way out
   * @param homeBy when to be home
   * @return the turn, refined to a tenth of a second, at the destination itself if there is time
   *     for all of the way; not possible if there is time for none of it
   */
  public static Outcome<TurnPoint, NotPossible> pointOfNoReturn(
      CourseToSteer solver, SteeredRoute out, Instant homeBy) {
    Arrivals own = Arrivals.of(solver);
    double latest = EpochSeconds.of(homeBy);
    double from = out.departureSeconds();
    double until = out.arrivalSeconds();
    double step = step(from, until);
    double later = until;
    for (int i = 0; later > from || i == 0; i++) {
      double time = Math.max(from, until - i * step);
      if (home(own, out, time) <= latest) {
        double turn =
            i == 0 ? time : Edge.of(t -> home(own, out, t) <= latest, time, later, REFINED_SECONDS);
        return barredAtOnce(own, out, turn)
            ? Outcome.ofUnsolved(whyNotHome(own, out, turn + REFINED_SECONDS))
            : Outcome.ofSolved(turnPoint(own, out, turn));
      }
      later = time;
    }
    return Outcome.ofUnsolved(
        NotPossible.because(Reason.BEYOND_HORIZON).at(out.route().start(), out.departure()));
  }

  /**
   * The first moment at which going on takes as long as going home.
   *
   * @param solver how the legs home are steered
   * @param out the way out
   * @return the moment, refined to a tenth of a second; not possible if there is none, because the
   *     way home is barred or always the shorter
   */
  public static Outcome<TurnPoint, NotPossible> equalTime(CourseToSteer solver, SteeredRoute out) {
    Arrivals own = Arrivals.of(solver);
    double from = out.departureSeconds();
    double until = out.arrivalSeconds();
    double step = step(from, until);
    double before = from;
    for (double time = from; time < until + step; time += step) {
      double now = Math.min(time, until);
      if (home(own, out, now) >= until) {
        double turn =
            now == from
                ? now
                : Edge.of(t -> home(own, out, t) >= until, now, before, REFINED_SECONDS);
        double home = home(own, out, turn);
        return Double.isInfinite(home)
            ? Outcome.ofUnsolved(whyNotHome(own, out, turn))
            : Outcome.ofSolved(turnPoint(own, out, turn));
      }
      before = now;
    }
    return Outcome.ofUnsolved(
        NotPossible.because(Reason.BEYOND_HORIZON).at(out.route().end(), out.arrival()));
  }

  /**
   * When one is home after turning back at a moment.
   *
   * @param solver how the legs home are steered
   * @param out the way out
   * @param turn when to turn
   * @return the way home, or why there is none
   * @throws IllegalArgumentException if the turn is before the departure or after the arrival
   */
  public static Outcome<SteeredRoute, NotPossible> homeFrom(
      CourseToSteer solver, SteeredRoute out, Instant turn) {
    return solver.solve(wayHome(out, turn), turn);
  }

  /**
   * How far one can go out on a course and be back by a time, turning at once.
   *
   * @param solver how both legs are steered
   * @param start where it starts and ends
   * @param course the course out
   * @param departure when it starts
   * @param homeBy when to be home
   * @return the farthest turn, refined to a metre; not possible if no distance can be gone and come
   *     back from, with the reason of the shortest tried
   */
  public static Outcome<TurnPoint, NotPossible> radius(
      CourseToSteer solver, Position start, TrueBearing course, Instant departure, Instant homeBy) {
    Arrivals own = Arrivals.of(solver);
    double time = EpochSeconds.of(departure);
    double latest = EpochSeconds.of(homeBy);
    double fastest =
        solver.craft().speed().metresPerSecond()
            + solver.stream().maxRate().map(Speed::metresPerSecond).orElse(5.0);
    double farthest = Math.max(0.0, latest - time) * fastest / 2.0;
    double step = farthest / RADIUS_PARTS;
    if (!(step > REFINED_METRES / RADIUS_PARTS)) {
      return Outcome.ofUnsolved(NotPossible.because(Reason.BEYOND_HORIZON).at(start, departure));
    }
    for (int i = RADIUS_PARTS; i > 0; i--) {
      if (back(own, start, course, time, i * step) <= latest) {
        double distance =
            Edge.of(
                metres -> back(own, start, course, time, metres) <= latest,
                i * step,
                (i + 1) * step,
                REFINED_METRES);
        return Outcome.ofSolved(radiusPoint(own, start, course, time, distance));
      }
    }
    return own.steered(Route.ofLegs(RhumbLeg.from(start, course, Distance.ofMetres(step))), time)
        .match(
            out -> Outcome.ofUnsolved(NotPossible.because(Reason.BEYOND_HORIZON)),
            Outcome::ofUnsolved);
  }

  private static double step(double from, double until) {
    return Math.max((until - from) / 1000.0, Math.min(STEP_SECONDS, Math.max(1.0, until - from)));
  }

  /** When one is home after turning at a time; infinite if the way home is barred. */
  private static double home(Arrivals own, SteeredRoute out, double turn) {
    double inside = inside(out, turn);
    double arrival = own.at(wayHome(out, EpochSeconds.toInstant(inside)), inside);
    return Double.isNaN(arrival) ? Double.POSITIVE_INFINITY : arrival;
  }

  private static double inside(SteeredRoute out, double turn) {
    return Math.min(out.arrivalSeconds(), Math.max(out.departureSeconds(), turn));
  }

  private static NotPossible whyNotHome(Arrivals own, SteeredRoute out, double turn) {
    double inside = inside(out, turn);
    return own.steered(wayHome(out, EpochSeconds.toInstant(inside)), inside)
        .why()
        .orElseThrow(IllegalStateException::new);
  }

  /** Whether home is out of reach as soon as the start is left, where one always is at home. */
  private static boolean barredAtOnce(Arrivals own, SteeredRoute out, double turn) {
    return turn <= out.departureSeconds() + REFINED_SECONDS
        && Double.isInfinite(home(own, out, turn + REFINED_SECONDS));
  }

  private static Route wayHome(SteeredRoute out, Instant turn) {
    Position here = out.at(turn);
    List<Leg> legs = new ArrayList<>();
    int passed = 0;
    while (passed < out.legs().size() - 1 && turn.isAfter(out.timeAt(passed + 1))) {
      passed++;
    }
    legs.add(RhumbLeg.between(here, out.route().legs().get(passed).start()));
    for (int i = passed - 1; i >= 0; i--) {
      legs.add(out.route().legs().get(i).reverse());
    }
    return Route.of(legs);
  }

  private static TurnPoint turnPoint(Arrivals own, SteeredRoute out, double turn) {
    Instant time = EpochSeconds.toInstant(turn);
    Position here = out.at(time);
    return new TurnPoint(
        time,
        here,
        RhumbLeg.between(here, out.route().start()).length(),
        EpochSeconds.toInstant(home(own, out, turn)));
  }

  /** When one is back from so far out; infinite if that is not possible. */
  private static double back(
      Arrivals own, Position start, TrueBearing course, double departure, double metres) {
    RhumbLeg leg = RhumbLeg.from(start, course, Distance.ofMetres(metres));
    double back = own.at(leg.reverse(), own.at(leg, departure));
    return Double.isNaN(back) ? Double.POSITIVE_INFINITY : back;
  }

  private static TurnPoint radiusPoint(
      Arrivals own, Position start, TrueBearing course, double departure, double metres) {
    RhumbLeg leg = RhumbLeg.from(start, course, Distance.ofMetres(metres));
    double turn = own.at(leg, departure);
    return new TurnPoint(
        EpochSeconds.toInstant(turn),
        leg.end(),
        leg.length(),
        EpochSeconds.toInstant(back(own, start, course, departure, metres)));
  }
}
