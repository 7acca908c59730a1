package org.ferryglide.benchmarks;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.Route;
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

/** How does a search over departures grow with their number and with the legs, each a mile? */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class DepartureCurveBenchmark extends InFixedHeap {
  private static final Instant START = Instant.parse("2026-06-14T00:00:00Z");

  /** Departures, five minutes apart. */
  @Param({"12", "144", "2016"})
  public int departures;

  /** Legs of the route. */
  @Param({"1", "4", "16"})
  public int legs;

  private DepartureSearch search;

  /** Lays a route northward through an hourly stream. */
  @Setup
  public void prepare() {
    HourlyTable stream = new HourlyTable(START.getEpochSecond(), false, 1.5);
    Position[] places = new Position[legs + 1];
    for (int i = 0; i <= legs; i++) {
      places[i] = Position.ofDegrees(46.0 + i / 60.0, i % 2 == 0 ? -26.0 : -25.995);
    }
    search =
        DepartureSearch.of(
                CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3.5)), stream),
                Route.ofRhumbLegs(places))
            .withStep(Duration.ofMinutes(5));
  }

  /** One search, on one core. */
  @Benchmark
  public Departures search() {
    return search.between(START, START.plus(Duration.ofMinutes(5L * (departures - 1))));
  }
}
