package org.ferryglide.nav.passage;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Arrivals;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.Reason;
import org.ferryglide.nav.steer.Route;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.steer.SteeringLimits;
import org.ferryglide.nav.timing.Departing;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;

/**
 * Works a passage out leg by leg, with its stops. No limit of reserve refuses a leg here: what is
 * too little is for the checks to say, beside everything else that is wrong.
 */
final class PassageSolver implements Departing {
  private final Passage passage;
  private final List<CourseToSteer> solvers = new ArrayList<>();
  private final List<Leg> legs = new ArrayList<>();
  private final boolean withNotes;
  private final Arrivals[] lean;

  private PassageSolver(Passage passage, boolean withNotes) {
    this.passage = passage;
    this.withNotes = withNotes;
    for (PassageLeg leg : passage.legs()) {
      CourseToSteer solver = solver(passage, leg.options());
      solvers.add(
          solver.withStrategy(
              KeptOut.of(solver.strategy(), passage, leg.leg().start(), leg.leg().end())));
      legs.add(leg.leg());
    }
    lean = new Arrivals[solvers.size()];
    for (int i = 0; i < lean.length; i++) {
      lean[i] = Arrivals.of(solvers.get(i));
    }
  }

  /** The whole answer, with what the stream has to say of itself. */
  static PassageSolver withNotes(Passage passage) {
    return new PassageSolver(passage, true);
  }

  /** For searches; one object serves one thread. */
  static PassageSolver lean(Passage passage) {
    return new PassageSolver(passage, false);
  }

  static CourseToSteer solver(Passage passage, LegOptions options) {
    Craft craft = passage.party().craft();
    if (options.speed().isPresent()) {
      craft = craft.withSpeed(options.speed().get());
    }
    if (options.isWithoutRests()) {
      craft = craft.withRestEachHour(java.time.Duration.ZERO);
    }
    CourseToSteer solver =
        CourseToSteer.with(craft, options.stream().orElse(passage.stream()))
            .withStrategy(options.strategy())
            .withLimits(SteeringLimits.NONE)
            .withLongestDuration(passage.longestDuration());
    WindField wind = passage.wind().orElse(null);
    return wind == null ? solver : solver.withWind(wind);
  }

  /** Lets the party paddle a leg at another speed from now on, metres a second. */
  void paddleAt(int leg, double metresPerSecond) {
    lean[leg].paddleAt(metresPerSecond);
  }

  CourseToSteer solver(int leg) {
    return solvers.get(leg);
  }

  @Override
  public Departing forOneThread() {
    return new PassageSolver(passage, withNotes);
  }

  @Override
  public Outcome<SteeredRoute, NotPossible> leaving(Instant departure) {
    return leaving(EpochSeconds.of(departure));
  }

  @Override
  public Outcome<SteeredRoute, NotPossible> leaving(double departureSeconds) {
    return from(0, departureSeconds);
  }

  /** Going on from a way point, stops of the later ones included. */
  Outcome<SteeredRoute, NotPossible> from(int wayPoint, double departureSeconds) {
    List<SteeredLeg> steered = new ArrayList<>();
    double time = departureSeconds;
    for (int i = wayPoint; i < legs.size(); i++) {
      Outcome<SteeredLeg, NotPossible> outcome =
          withNotes
              ? lean[i].steeredWithNotes(Route.ofLegs(legs.get(i)), time).map(PassageSolver::only)
              : lean[i].steered(legs.get(i), time);
      NotPossible why = outcome.why().orElse(null);
      if (why != null) {
        return Outcome.ofUnsolved(why.inLeg(i + 1));
      }
      SteeredLeg leg = outcome.orElseThrow();
      steered.add(leg);
      time = EpochSeconds.of(leg.arrival());
      Stop stop = i + 1 < legs.size() ? passage.wayPoints().get(i + 1).stop().orElse(null) : null;
      if (stop != null) {
        double until = afterStop(i + 1, stop, time);
        if (!(until < Double.POSITIVE_INFINITY)) {
          Leg next = passage.legs().get(i + 1).leg();
          return Outcome.ofUnsolved(
              NotPossible.because(Double.isNaN(until) ? Reason.NO_DATA : Reason.BEYOND_HORIZON)
                  .at(next.start(), EpochSeconds.toInstant(time))
                  .inLeg(i + 2));
        }
        time = until;
      }
    }
    return Outcome.ofSolved(SteeredRoute.of(steered));
  }

  private static SteeredLeg only(SteeredRoute route) {
    return route.legs().get(0);
  }

  /**
   * Departure and arrival of each leg alone, seconds since 1970.
   *
   * @return two for each leg; without any where it is not possible
   */
  double[] times(double departureSeconds) {
    double[] times = new double[2 * legs.size()];
    double time = departureSeconds;
    for (int i = 0; i < lean.length; i++) {
      Stop stop = i == 0 ? null : passage.wayPoints().get(i).stop().orElse(null);
      time = stop == null ? time : afterStop(i, stop, time);
      if (!(time < Double.POSITIVE_INFINITY)) {
        return new double[0];
      }
      times[2 * i] = time;
      time = toMicrosecond(lean[i].at(legs.get(i), time));
      times[2 * i + 1] = time;
    }
    return Double.isNaN(time) ? new double[0] : times;
  }

  /** A time as an instant holds it. */
  private static double toMicrosecond(double time) {
    return Double.isNaN(time) ? time : EpochSeconds.of(EpochSeconds.toInstant(time));
  }

  /** The end of a stop, the time to land and to launch included. */
  private double afterStop(int wayPoint, Stop stop, double arrival) {
    StreamField stream = passage.legs().get(wayPoint).options().stream().orElse(passage.stream());
    double ashore = arrival + seconds(passage.party().landing());
    Position place = passage.wayPoints().get(wayPoint).position();
    return Stops.of(stop).end(new Stops.Landed(passage, place, stream, ashore));
  }

  private static double seconds(java.time.Duration duration) {
    return Seconds.of(duration);
  }
}
