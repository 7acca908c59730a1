package org.ferryglide.benchmarks;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.Landing;
import org.ferryglide.nav.passage.LandingInReach;
import org.ferryglide.nav.passage.LaunchInterval;
import org.ferryglide.nav.passage.Party;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageBuilder;
import org.ferryglide.nav.passage.PassageLimits;
import org.ferryglide.nav.passage.PlanErrors;
import org.ferryglide.nav.passage.PlanSpread;
import org.ferryglide.nav.passage.PlannedHour;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.Variant;
import org.ferryglide.nav.passage.WayHome;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.passage.WhenToGo;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.Route;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.steer.SteeringLimits;
import org.ferryglide.nav.timing.Departing;
import org.ferryglide.nav.timing.DepartureSearch;
import org.ferryglide.nav.timing.Departures;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.Window;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How many bare solves of its five legs does a passage cost: with its checks, over a fortnight of
 * departures, for one run of the error model, with its ways home, what-ifs and launch interval?
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PassageBenchmark extends InFixedHeap {
  private static final Duration STEP = Duration.ofMinutes(5);
  private static final int RUNS = 200;

  private Instant start = Instant.parse("2026-06-14T00:00:00Z");
  private Instant departure = start.plus(Duration.ofHours(9));
  private Instant fortnight = start.plus(Duration.ofDays(14));
  private Craft craft = Craft.ofSpeed(Speed.ofKnots(3.5)).withRestEachHour(Duration.ofMinutes(5));
  private HourlyTable stream = new HourlyTable(start.getEpochSecond(), false, 1.5);
  private Position[] places = {
    Position.ofDegrees(46.10, -26.30),
    Position.ofDegrees(46.13, -26.27),
    Position.ofDegrees(46.15, -26.21),
    Position.ofDegrees(46.19, -26.20),
    Position.ofDegrees(46.20, -26.14),
    Position.ofDegrees(46.24, -26.12)
  };
  private Passage passage = passage();
  private Departing bare =
      Departing.along(
          CourseToSteer.with(craft, stream).withLimits(SteeringLimits.NONE), Route.of(legs()));
  private TimedPlan plan = TimedPlan.of(passage, departure).orElseThrow();
  private TimedPlan planByLandings =
      TimedPlan.of(
              passage.toBuilder()
                  .limits(
                      passage.limits().withTimeToLanding(Duration.ofHours(1), Duration.ofHours(2)))
                  .build(),
              departure)
          .orElseThrow();

  private Instant dark = plan.arrival().plusSeconds((long) plan.daylightLeftSeconds());
  private Instant halfWay = departure.plus(plan.route().duration().dividedBy(2));

  private Passage passage() {
    PassageBuilder builder =
        Passage.builder(
                "five legs",
                ZoneOffset.UTC,
                Party.of(craft)
                    .withLaunching(Duration.ofMinutes(15))
                    .withLanding(Duration.ofMinutes(10)))
            .from(WayPoint.of("0", places[0]).withLanding(Landing.atAnyLevel()));
    for (int i = 1; i < places.length; i++) {
      WayPoint place = WayPoint.of("" + i, places[i]);
      builder.to(i % 2 == 1 ? place.withLanding(Landing.atAnyLevel()) : place);
    }
    return builder.stream(stream)
        .dangers(
            List.of(
                Danger.point("rock", Position.ofDegrees(46.12, -26.22), Distance.ofMetres(300)),
                Danger.point("ledge", Position.ofDegrees(46.23, -26.22), Distance.ofMetres(300))))
        .lanes(List.of())
        .limits(
            PassageLimits.none()
                .withStream(Speed.ofKnots(1.5), Speed.ofKnots(2.5))
                .withReserve(Speed.ofKnots(1.0), Speed.ofKnots(0.5))
                .withTimeAfloat(Duration.ofHours(5), Duration.ofHours(8)))
        .build();
  }

  private List<Leg> legs() {
    List<Leg> legs = new ArrayList<>();
    passage.legs().forEach(leg -> legs.add(leg.leg()));
    return legs;
  }

  /** Five legs without checks, the yardstick. */
  @Benchmark
  public Outcome<SteeredRoute, NotPossible> bareSolve() {
    return bare.leaving(departure);
  }

  /**
   * The same legs with all checks, hours, sightings and widths, and all that a card reads of it.
   */
  @Benchmark
  public double planWithChecks() {
    return read(TimedPlan.of(passage, departure).orElseThrow());
  }

  /** Takes in every figure of a plan, so that nothing is left to be worked out when it is read. */
  private static double read(TimedPlan plan) {
    double sum = plan.daylightLeftSeconds() + plan.notChecked().size();
    for (Verdict verdict : plan.verdicts()) {
      sum += verdict.answer().hashCode() + verdict.figure().orElse(0.0);
      sum += verdict.margin().orElse(0.0) + verdict.when().map(EpochSeconds::of).orElse(0.0);
      sum += verdict.where().map(Position::latitudeDegrees).orElse(0.0);
    }
    for (PlannedLeg leg : plan.legs()) {
      sum += leg.heading().degrees() + leg.speedMadeGood().metresPerSecond();
      sum += EpochSeconds.of(leg.earliest());
      sum += EpochSeconds.of(leg.arrival()) + EpochSeconds.of(leg.latest());
      sum += leg.spread().eastVariance() + (leg.sighting().isPresent() ? 1.0 : 0.0);
      for (PlannedHour hour : leg.hours()) {
        sum += EpochSeconds.of(hour.span().from()) + hour.position().longitudeDegrees();
        sum += hour.heading().degrees() + hour.speedMadeGood().metresPerSecond();
        sum += hour.stream().map(Velocity::eastMetresPerSecond).orElse(0.0);
        sum += hour.levels().size();
      }
    }
    return sum;
  }

  /** A fortnight of departures every five minutes without checks, the yardstick. */
  @Benchmark
  public Departures fortnightBare() {
    return DepartureSearch.of(bare).withStep(STEP).between(start, fortnight);
  }

  /** The same fortnight with all checks. */
  @Benchmark
  public WhenToGo fortnightWithChecks() {
    return WhenToGo.search(passage, start, fortnight, STEP);
  }

  /** The same on all cores. */
  @Benchmark
  public WhenToGo fortnightInParallel() {
    return WhenToGo.searchInParallel(passage, start, fortnight, STEP);
  }

  /** Until when to go on and when home can be made, for all way points, with the reasons. */
  @Benchmark
  public WayHome waysHomeAndTurns() {
    return WayHome.of(plan, dark, WayHome.USUAL_STEP);
  }

  /** When home can be made, for all way points. */
  @Benchmark
  public List<Found<Window>> waysHome() {
    List<Found<Window>> home = new ArrayList<>();
    for (int i = 0; i < plan.legs().size(); i++) {
      home.add(WayHome.from(plan, i, dark, WayHome.USUAL_STEP));
    }
    return home;
  }

  /** Until when to go on, for all way points. */
  @Benchmark
  public List<Found<Window>> turns() {
    return WayHome.goingOn(plan, dark, WayHome.USUAL_STEP);
  }

  /** All what-ifs. */
  @Benchmark
  public List<Variant> whatIfs() {
    return Variant.sideBySide(passage, departure);
  }

  /** The launch interval. */
  @Benchmark
  public LaunchInterval launchInterval() {
    return LaunchInterval.of(plan);
  }

  /** One run of the error model, of two hundred. */
  @Benchmark
  @OperationsPerInvocation(RUNS)
  public PlanSpread errorRun() {
    return PlanSpread.of(plan, PlanErrors.usual(), RUNS, 1);
  }

  /** The same on all cores. */
  @Benchmark
  @OperationsPerInvocation(RUNS)
  public PlanSpread errorRunInParallel() {
    return PlanSpread.inParallel(plan, PlanErrors.usual(), RUNS, 1);
  }

  /** The landings in reach at one time, each with a heading and all checks of the way there. */
  @Benchmark
  public List<LandingInReach> landings() {
    return LandingInReach.from(planByLandings, halfWay);
  }

  /** The landings in reach every five minutes. */
  @Benchmark
  public Verdict timeToLandings() {
    return LandingInReach.check(planByLandings);
  }
}
