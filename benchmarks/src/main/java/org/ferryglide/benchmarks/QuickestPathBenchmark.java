package org.ferryglide.benchmarks;

import java.time.Instant;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.water.StreamField;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What does the quickest path across a channel 10 NM wide cost, whose stream is strongest in the
 * middle and turns with the tide? Beside it the straight answers for the same leg.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
    value = 1,
    jvmArgsAppend = {Heap.FIRST_SIZE, Heap.GREATEST_SIZE, Heap.YOUNG, Heap.TOUCHED, Heap.COLLECTOR})
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class QuickestPathBenchmark {
  private static final Position SHORE = Position.ofDegrees(46.0, -26.0);

  private Leg leg = RhumbLeg.from(SHORE, TrueBearing.ofDegrees(0), Distance.ofNauticalMiles(10));
  private Instant departure = Instant.parse("2026-06-14T10:00:00Z");
  private CourseToSteer solver =
      CourseToSteer.with(
          Craft.ofSpeed(Speed.ofKnots(3.5)), QuickestPathBenchmark.tidalChannel(leg, 1.2));

  /** An eastgoing parabola across the channel, its strength a sine of the tide's rhythm. */
  private static StreamField tidalChannel(Leg leg, double peakMetresPerSecond) {
    double south = leg.start().latitudeDegrees();
    double width = leg.end().latitudeDegrees() - south;
    return (latitude, longitude, seconds, out, offset) -> {
      double across = (latitude - south) / width;
      double shape = Math.max(0.0, 4.0 * across * (1.0 - across));
      out[offset] = peakMetresPerSecond * shape * Math.sin(seconds / 7115.0);
      out[offset + 1] = 0.0;
      return true;
    };
  }

  /** The quickest path of all. */
  @Benchmark
  public Outcome<SteeredLeg, NotPossible> quickestPath() {
    return solver.withStrategy(Strategy.quickest()).solve(leg, departure);
  }

  /** One heading held. */
  @Benchmark
  public Outcome<SteeredLeg, NotPossible> oneHeading() {
    return solver.solve(leg, departure);
  }

  /** The track held. */
  @Benchmark
  public Outcome<SteeredLeg, NotPossible> trackHeld() {
    return solver.withStrategy(Strategy.trackHeld()).solve(leg, departure);
  }
}
