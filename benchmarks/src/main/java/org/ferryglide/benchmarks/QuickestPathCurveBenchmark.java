package org.ferryglide.benchmarks;

import java.time.Instant;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.Strategy;
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

/** How does the cost of a quickest path grow with the length of the leg and with its coasts? */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class QuickestPathCurveBenchmark extends InFixedHeap {
  /** Length of the leg, nautical miles. */
  @Param({"5", "10", "20", "40"})
  private double miles = 10;

  /** Corners of the islands on the way; without any the water is open. */
  @Param({"0", "30", "100", "300", "1000", "3000"})
  private int corners;

  private Leg leg = QuickestPathWaters.leg(miles);
  private CourseToSteer solver =
      CourseToSteer.with(
          Craft.ofSpeed(Speed.ofKnots(3.5)), QuickestPathWaters.tidalWaters(leg.start()));
  private final Instant departure = Instant.parse("2026-06-14T10:00:00Z");

  /** Lays the leg among its islands. */
  @Setup
  public void lay() {
    leg = QuickestPathWaters.leg(miles);
    solver =
        solver.withStrategy(
            corners == 0
                ? Strategy.quickest()
                : Strategy.quickestAround(QuickestPathWaters.islands(leg, corners)));
  }

  /** The quickest path. */
  @Benchmark
  public Outcome<SteeredLeg, NotPossible> quickestPath() {
    return solver.solve(leg, departure);
  }
}
