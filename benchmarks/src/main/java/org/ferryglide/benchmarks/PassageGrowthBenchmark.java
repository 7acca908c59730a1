package org.ferryglide.benchmarks;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.Party;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageBuilder;
import org.ferryglide.nav.passage.PassageLimits;
import org.ferryglide.nav.passage.PlanErrors;
import org.ferryglide.nav.passage.PlanSpread;
import org.ferryglide.nav.passage.TimedPlan;
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
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How does the price of a passage grow with its legs, its dangers and its departures, and what do
 * all cores make of it? Legs are a mile each, so that the time under way grows with them. The first
 * passage has five legs, two dangers and a day of departures; of the others one thing is more.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PassageGrowthBenchmark extends InFixedHeap {
  private static final Duration STEP = Duration.ofMinutes(5);
  private static final int DRAWS = 200;

  /** What is more than in the first. */
  @Param({"first", "legs10", "legs20", "dangers20", "days7"})
  private String growth;

  private int legs;
  private int dangers;
  private int days;

  private Instant start = Instant.parse("2026-06-14T00:00:00Z");
  private Instant departure = start.plus(Duration.ofHours(9));
  private Passage passage;
  private TimedPlan plan;
  private Departing bare;

  /** Builds the passage of so many legs and dangers. */
  @Setup(Level.Trial)
  public void build() {
    legs = grown("legs", 5);
    dangers = grown("dangers", 2);
    days = grown("days", 1);
    Craft craft = Craft.ofSpeed(Speed.ofKnots(3.5)).withRestEachHour(Duration.ofMinutes(5));
    HourlyTable stream = new HourlyTable(start.getEpochSecond(), false, 1.5);
    List<Position> places = new ArrayList<>();
    for (int i = 0; i <= legs; i++) {
      places.add(Position.ofDegrees(46.0 + i / 60.0, i % 2 == 0 ? -26.0 : -25.995));
    }
    PassageBuilder builder =
        Passage.builder("growing", ZoneOffset.UTC, Party.of(craft))
            .from(WayPoint.of("0", places.get(0)));
    for (int i = 1; i <= legs; i++) {
      builder.to(WayPoint.of("" + i, places.get(i)));
    }
    List<Danger> near = new ArrayList<>();
    for (int i = 0; i < dangers; i++) {
      Position rock = Position.ofDegrees(46.0 + i * legs / (60.0 * dangers), -25.97);
      near.add(Danger.point("rock " + i, rock, Distance.ofMetres(200)));
    }
    passage =
        builder.stream(stream)
            .dangers(near)
            .lanes(List.of())
            .limits(PassageLimits.none().withStream(Speed.ofKnots(1.5), Speed.ofKnots(2.5)))
            .build();
    plan = TimedPlan.of(passage, departure).orElseThrow();
    bare =
        Departing.along(
            CourseToSteer.with(craft, stream).withLimits(SteeringLimits.NONE),
            Route.ofRhumbLegs(places.toArray(new Position[0])));
  }

  private int grown(String what, int first) {
    return growth.startsWith(what) ? Integer.parseInt(growth.substring(what.length())) : first;
  }

  /** The yardstick of the same number of legs. */
  @Benchmark
  public Outcome<SteeredRoute, NotPossible> bareSolve() {
    return bare.leaving(departure);
  }

  /** A plan with its checks. */
  @Benchmark
  public Outcome<TimedPlan, NotPossible> planWithChecks() {
    return TimedPlan.of(passage, departure);
  }

  /** Some days of departures every five minutes, on one core. */
  @Benchmark
  public WhenToGo departures() {
    return WhenToGo.search(passage, start, start.plus(Duration.ofDays(days)), STEP);
  }

  /** The same on all cores. */
  @Benchmark
  public WhenToGo departuresInParallel() {
    return WhenToGo.searchInParallel(passage, start, start.plus(Duration.ofDays(days)), STEP);
  }

  /** Two hundred draws of the errors, on one core. */
  @Benchmark
  public PlanSpread draws() {
    return PlanSpread.of(plan, PlanErrors.usual(), DRAWS, 1);
  }

  /** The same on all cores. */
  @Benchmark
  public PlanSpread drawsInParallel() {
    return PlanSpread.inParallel(plan, PlanErrors.usual(), DRAWS, 1);
  }
}
