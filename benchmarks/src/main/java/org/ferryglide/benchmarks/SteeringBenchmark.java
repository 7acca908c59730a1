package org.ferryglide.benchmarks;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince54Integrator;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.plane.SteadyTriangle;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.CurrentTriangle;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.Route;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.steer.SteeringLimits;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.timing.DepartureSearch;
import org.ferryglide.nav.timing.Departures;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What do a steady triangle, a five-leg passage and a fortnight's search of departures cost, and
 * what would the same path cost with Commons Math's integrator and solver?
 *
 * <p>The peer follows one leg of the passage with Dormand and Prince's pair from Commons Math, to
 * the same error, stopped at each break point, and finds the heading with its bracketing solver;
 * {@code oneLeg} is the same leg here.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SteeringBenchmark extends InFixedHeap {
  private static final Instant DEPARTURE = Instant.parse("2026-06-02T06:10:00Z");

  /** Whether the hourly table is held in steps or read in straight lines. */
  @State(Scope.Benchmark)
  public static class Passage {
    /** Steps or straight lines. */
    @Param({"true", "false"})
    public boolean steps;

    HourlyTable stream;
    CourseToSteer oneHeading;
    CourseToSteer trackHeld;
    Route route;
    RhumbLeg leg;

    /** Five legs of 1.5 to 6 NM among invented islands, in a stream of up to 2 kn. */
    @Setup
    public void layOff() {
      stream = new HourlyTable(EpochSeconds.of(Instant.parse("2026-05-31T00:00:00Z")), steps, 2.0);
      oneHeading =
          CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3.5)), stream)
              .withLimits(SteeringLimits.NONE);
      trackHeld = oneHeading.withStrategy(Strategy.trackHeld());
      Position a = Position.ofDegrees(55.0, -6.0);
      Position b = Position.ofDegrees(55.08, -5.95);
      Position c = Position.ofDegrees(55.10, -5.80);
      Position d = Position.ofDegrees(55.02, -5.78);
      Position e = Position.ofDegrees(54.99, -5.90);
      Position f = Position.ofDegrees(54.97, -5.93);
      route = Route.ofRhumbLegs(a, b, c, d, e, f);
      leg = RhumbLeg.between(a, b);
    }
  }

  private double course = 37.0;
  private double waterSpeed = 1.8;
  private double streamEast = 0.7;
  private double streamNorth = -0.4;
  private final double[] out = new double[2];
  private TrueBearing bearing = TrueBearing.ofDegrees(37.0);
  private Craft craft = Craft.ofSpeed(Speed.ofMetresPerSecond(1.8));
  private Velocity velocity = Velocity.ofEastAndNorth(0.7, -0.4);

  /** The steady triangle on doubles. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.NANOSECONDS)
  public double triangleKernel() {
    SteadyTriangle.solve(course, waterSpeed, streamEast, streamNorth, out, 0);
    return out[0] + out[1];
  }

  /** The steady triangle on values. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.NANOSECONDS)
  public Outcome<CurrentTriangle, NotPossible> triangleOnValues() {
    return CurrentTriangle.solve(bearing, craft, velocity);
  }

  /** Peer: the steady triangle with Commons Math's bracketing solver instead of the arc sine. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.NANOSECONDS)
  public double triangleByCommonsMath() {
    double radians = Math.toRadians(course);
    double sine = Math.sin(radians);
    double cosine = Math.cos(radians);
    double across = streamEast * cosine - streamNorth * sine;
    double along = streamEast * sine + streamNorth * cosine;
    double angle =
        new BracketingNthOrderBrentSolver(1e-12, 5)
            .solve(100, x -> across + waterSpeed * Math.sin(x), -1.5, 1.5);
    return angle + along + waterSpeed * Math.cos(angle);
  }

  /** Five legs, one heading held on each. */
  @Benchmark
  public Outcome<SteeredRoute, NotPossible> fiveLegsOneHeading(Passage passage) {
    return passage.oneHeading.solve(passage.route, DEPARTURE);
  }

  /** Five legs, the track held on each. */
  @Benchmark
  public Outcome<SteeredRoute, NotPossible> fiveLegsTrackHeld(Passage passage) {
    return passage.trackHeld.solve(passage.route, DEPARTURE);
  }

  /** One leg, one heading held. */
  @Benchmark
  public Object oneLeg(Passage passage) {
    return passage.oneHeading.solve(passage.leg, DEPARTURE);
  }

  /** Peer: the same leg with Commons Math's integrator and solver, by the miss abeam the end. */
  @Benchmark
  public double oneLegByCommonsMath(Passage passage) {
    double speed = 3.5 * Speed.METRES_PER_SECOND_PER_KNOT;
    double[] end = new double[2];
    double[] arrival = new double[1];
    double heading =
        new BracketingNthOrderBrentSolver(1e-9, 5)
            .solve(
                60,
                angle -> missAbeam(passage, speed, angle, end, arrival),
                Math.toRadians(passage.leg.course().degrees() - 50.0),
                Math.toRadians(passage.leg.course().degrees() + 50.0));
    return heading + arrival[0];
  }

  /** Follows a heading until the end of the leg is abeam; how far off it then is, metres. */
  private static double missAbeam(
      Passage passage, double speed, double heading, double[] state, double[] arrival) {
    double[] flow = new double[2];
    FirstOrderDifferentialEquations motion =
        new FirstOrderDifferentialEquations() {
          @Override
          public int getDimension() {
            return 2;
          }

          @Override
          public void computeDerivatives(double t, double[] y, double[] rates) {
            passage.stream.sample(y[0], y[1], t, flow, 0);
            rates[0] =
                Math.toDegrees(
                    (speed * Math.cos(heading) + flow[1])
                        / Ellipsoid.WGS84.meridianRadiusMetres(y[0]));
            rates[1] =
                Math.toDegrees(
                    (speed * Math.sin(heading) + flow[0])
                        / (Ellipsoid.WGS84.primeVerticalRadiusMetres(y[0])
                            * Math.cos(Math.toRadians(y[0]))));
          }
        };
    double course = Math.toRadians(passage.leg.course().degrees());
    double latitude = passage.leg.end().latitudeDegrees();
    double longitude = passage.leg.end().longitudeDegrees();
    double parallel = 111_320.0 * Math.cos(Math.toRadians(latitude));
    state[0] = passage.leg.start().latitudeDegrees();
    state[1] = passage.leg.start().longitudeDegrees();
    double time = EpochSeconds.of(DEPARTURE);
    double left = Double.POSITIVE_INFINITY;
    DormandPrince54Integrator integrator = new DormandPrince54Integrator(1e-3, 3600, 1e-9, 0.0);
    double[] before = new double[2];
    while (left > 0.0) {
      double next = passage.stream.nextBreakAfter(time);
      before[0] = state[0];
      before[1] = state[1];
      integrator.integrate(motion, time + 1e-6, state, next - 1e-6, state);
      left = left(state, latitude, longitude, parallel, course);
      if (left > 0.0) {
        time = next;
      } else {
        double startTime = time;
        double farther = left(before, latitude, longitude, parallel, course);
        double guess = time + (next - time) * farther / (farther - left);
        for (int i = 0; i < 4; i++) { // to the end abeam, as the speed there goes
          integrator.integrate(motion, startTime + 1e-6, before, guess, state);
          left = left(state, latitude, longitude, parallel, course);
          guess += left / speed;
        }
        arrival[0] = guess;
        break;
      }
    }
    return (state[1] - longitude) * parallel * Math.cos(course)
        - (state[0] - latitude) * 111_320.0 * Math.sin(course);
  }

  private static double left(
      double[] state, double latitude, double longitude, double parallel, double course) {
    return (latitude - state[0]) * 111_320.0 * Math.cos(course)
        + (longitude - state[1]) * parallel * Math.sin(course);
  }

  /** Fourteen days of departures every five minutes, five legs, one core. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public Departures fortnightOneHeading(Passage passage) {
    return fortnight(passage.oneHeading, passage.route, false);
  }

  /** The same with the track held. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public Departures fortnightTrackHeld(Passage passage) {
    return fortnight(passage.trackHeld, passage.route, false);
  }

  /** The same with one heading held, on all cores. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public Departures fortnightOneHeadingAllCores(Passage passage) {
    return fortnight(passage.oneHeading, passage.route, true);
  }

  private static Departures fortnight(CourseToSteer solver, Route route, boolean parallel) {
    Instant from = Instant.parse("2026-06-01T00:00:00Z");
    DepartureSearch search = DepartureSearch.of(solver, route).withStep(Duration.ofMinutes(5));
    return (parallel ? search.onAllCores() : search).between(from, from.plus(Duration.ofDays(14)));
  }
}
